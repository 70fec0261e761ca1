"""Requests that reach deep: what is there, and bodies that are right but for a place or two.

What is made up by the document alone names games that there are not, and times that are none.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from copy import deepcopy
from pathlib import Path
from typing import Any

from hypothesis import strategies as st
from schemathesis import BaseSchema, Case, HookContext
from schemathesis.core.parameters import ParameterLocation
from schemathesis.transport.serialization import contains_binary

from tests.fuzzed.world import World

Json = Any
EXPORTS = Path(__file__).parent.parent / "corpus" / "exports"
FILES = [path.read_bytes() for path in sorted(EXPORTS.iterdir())]
#: Around the time of the world; where clocks are put forward; where calendars begin and end.
MOMENTS = (
    *("2026-03-10T22:00:00Z", "2026-03-10T21:00", "2026-03-01T18:30:00Z", "2026-03-29T01:30"),
    *("2026-10-25T01:30", "0001-01-01T00:00:00+14:00", "9999-12-31T23:59:59-12:00", "2026-04-01"),
)
DAYS = ("2026-03-01", "2026-03-10", "2026-04-01", "2000-01-01", "2200-01-01", "0001-01-01")
#: Numbers at the ends of what databases and programs count with.
NUMBERS = (0, 1, 2, 63, 64, 2**31, 2**63, -1)
#: What a field of that name may well hold.
TOLD: Mapping[str, Sequence[Json]] = {
    **dict.fromkeys(("opens", "closes", "guesses_open", "guesses_close", "at"), MOMENTS),
    **dict.fromkeys(("copied_at", "expected"), MOMENTS),
    **dict.fromkeys(("today", "by", "day", "first", "from", "to"), DAYS),
    **dict.fromkeys(("pages", "stitched", "votable"), ([], [13], [14, 13], [99], [13, 13])),
    **dict.fromkeys(("page", "number", "source", "choices", "previous", "offset"), NUMBERS),
    "zone": ("UTC", "Atlantic/Faroe", "Europe/Berlin", "../etc/passwd", "Nowhere/At_All"),
    "tie_breaks": (["runoff", "draw"], ["draw"], ["lowest number"], ["host"], []),
}


def document_of(world: World, document: Json) -> Json:
    """The API's own document, with values that there are as the examples of its parameters."""
    shown = deepcopy(document)
    for methods in shown["paths"].values():
        for operation in methods.values():
            for parameter in operation.get("parameters", []):
                if known := world.known.get(parameter["name"]):
                    parameter["examples"] = {"known": {"value": known[0]}}
    return shown


def splice(schema: BaseSchema, world: World, document: Json) -> None:
    """Let the schema's cases be drawn with what is known, and what they are made of with it."""
    examples = dict(_examples_in(document))

    @schema.hook
    def flatmap_case(context: HookContext, case: Case[Any]) -> st.SearchStrategy[Case[Any]]:
        del context
        label = f"{case.method.upper()} {case.path}"
        return _spliced(case, world, examples.get(label))


@st.composite
def _spliced(draw: st.DrawFn, case: Case[Any], world: World, example: Json) -> Case[Any]:
    # What is wrong on purpose stays so: else a mended request would have to be refused.
    meta = case.meta
    wrong = meta is not None and meta.generation.mode.is_negative
    if meta is not None and meta.is_negative_at(ParameterLocation.PATH):
        return case
    for place in (case.path_parameters,) if wrong else (case.path_parameters, case.query):
        for name in sorted(place):
            if (values := world.known.get(name) or TOLD.get(name)) and draw(st.integers(0, 3)):
                place[name] = draw(st.sampled_from(values))
    if isinstance(case.body, dict) and not wrong:
        body: dict[str, Json] = case.body
        if example is not None and draw(st.integers(0, 3)):
            body = _with_some_of(draw, example, body)
        _tell(draw, body, world)
        if "file" in body and draw(st.booleans()):
            body["file"] = draw(st.sampled_from(FILES))
        case.body = body
        if meta is not None and contains_binary(body):
            # The library takes any changed body with bytes for a wrong one: it stays what it was.
            meta.update_validated_hash(ParameterLocation.BODY, case._hash_container(body))
            meta.clear_dirty(ParameterLocation.BODY)
    return case


def _with_some_of(draw: st.DrawFn, example: Json, made_up: dict[str, Json]) -> dict[str, Json]:
    body: dict[str, Json] = deepcopy(example)
    some = st.lists(st.sampled_from(sorted(made_up)), max_size=2) if made_up else st.just([])
    return body | {name: made_up[name] for name in draw(some)}


def _tell(draw: st.DrawFn, body: dict[str, Json], world: World) -> None:
    """Put what is known into fields by their names, at any depth."""
    for name in sorted(body):
        values = world.known.get(name) or TOLD.get(name)
        if values and draw(st.booleans()):
            body[name] = draw(st.sampled_from(values))
        inside = body[name] if isinstance(body[name], list) else [body[name]]
        for each in inside:
            if isinstance(each, dict):
                _tell(draw, each, world)


def _examples_in(document: Json) -> Any:
    for path, methods in document["paths"].items():
        for method, operation in methods.items():
            for media in operation.get("requestBody", {}).get("content", {}).values():
                if found := _example_of(document, media["schema"]):
                    yield f"{method.upper()} {path}", found


def _example_of(document: Json, schema: Json) -> Json:
    for part in schema.get("anyOf", [schema]):
        if "$ref" in part:
            return _example_of(document, document["components"]["schemas"][part["$ref"][21:]])
        if part.get("examples"):
            return part["examples"][0]
    return None
