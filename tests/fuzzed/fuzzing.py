"""Schemathesis over the whole API: everything that it finds, and how much was asked."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Any

import schemathesis
from hypothesis import HealthCheck, Phase, settings
from schemathesis import Case, Response
from schemathesis.core.failures import FailureGroup
from schemathesis.engine import events, from_schema
from schemathesis.specs.openapi.schemas import OpenApiSchema

from tests.fuzzed.splicing import document_of, splice
from tests.fuzzed.world import App

Json = Any
#: A request may fit its shape and yet be about a page that is not on the chart: that is told by 422.
_FITS = ["2xx", "401", "403", "404", "409", "413", "422", "429"]


@dataclass
class Findings:
    """What was found, an example of each kind; how often each status was answered."""

    kinds: dict[tuple[str, str, int | None], str] = field(default_factory=dict)
    answers: Counter[int] = field(default_factory=Counter)
    errors: list[str] = field(default_factory=list)

    def add(self, failure: BaseException, response: Response | None, asked: str) -> None:
        """Note a failure of a check, with what was asked and answered."""
        operation = getattr(failure, "operation", "")
        status, content = (response.status_code, response.content) if response else (None, b"")
        shown = f"{failure}\n{asked[:2000]}\n{content[:500]!r}"
        self.kinds.setdefault((operation, type(failure).__name__, status), shown)

    def told(self) -> str:
        """All of it, in words."""
        kinds = [f"{' '.join(map(str, kind))}\n{shown}" for kind, shown in self.kinds.items()]
        return "\n\n".join([*kinds, *self.errors])


def schema_of(
    app: App, caller: str, document: Json, examples: int, seed: int, mode: str = "all"
) -> OpenApiSchema:
    """The API's document as schemathesis has it, its requests signed in as the caller.

    `mode` is which data it makes: right ("positive"), wrong ("negative"), or both.
    """
    token = app.world.tokens[caller]
    config = schemathesis.Config.from_dict(
        {
            "seed": seed,
            "headers": {"Authorization": f"Bearer {token}"} if token else {},
            "continue-on-failure": True,
            "cache": {"enabled": False},
            "generation": {
                "max-examples": examples,
                "mode": mode,
                "no-shrink": True,
                "database": "none",
            },
            "checks": {"positive_data_acceptance": {"expected-statuses": _FITS}},
            "phases": {"coverage": {"unexpected-methods": ["DELETE"]}},
            "request-timeout": 300,
        }
    )
    shown = document_of(app.world, document)
    schema = schemathesis.openapi.from_dict(shown, config=config)
    schema.app = app
    splice(schema, app.world, shown)
    return schema


def fuzz(schema: OpenApiSchema, phase: str, found: Findings) -> None:
    """Each operation by itself: at the ends of every value ("coverage"), or drawn ("fuzzing")."""
    for name in ("examples", "coverage", "fuzzing", "stateful"):
        schema.config.phases.get_by_name(name=name).enabled = name == phase
    for event in from_schema(schema).execute():
        if isinstance(event, events.NonFatalError | events.FatalError):
            found.errors.append(f"{event} {getattr(event, 'value', '')}")
        elif isinstance(event, events.ScenarioFinished):
            _note(event, found)


def _note(event: events.ScenarioFinished, found: Findings) -> None:
    recorder = event.recorder
    for interaction in recorder.interactions.values():
        if interaction.response is not None:
            found.answers[interaction.response.status_code] += 1
    for key, checks in recorder.checks.items():
        for check in checks:
            if check.failure_info is not None:
                told = check.failure_info
                found.add(told.failure, recorder.interactions[key].response, told.code_sample)


def play(app: App, schema: OpenApiSchema, scenarios: int, steps: int, found: Findings) -> None:
    """One operation after another, each with what the ones before it answered."""

    class Played(schema.as_state_machine()):  # type: ignore[misc]
        def setup(self) -> None:
            app.renew()

        def validate_response(
            self, response: Response, case: Case[Any], *_: Any, **__: Any
        ) -> None:
            found.answers[response.status_code] += 1
            try:
                super().validate_response(response, case)
            except FailureGroup as group:
                for failure in group.exceptions:
                    found.add(failure, response, case.as_curl_command())

    Played.run(
        settings=settings(
            max_examples=scenarios,
            stateful_step_count=steps,
            deadline=None,
            database=None,
            phases=[Phase.generate],
            suppress_health_check=list(HealthCheck),
        )
    )
