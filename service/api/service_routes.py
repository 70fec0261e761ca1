"""Routes about the service itself: whether it is well, and what its problems mean."""

from __future__ import annotations

from contextlib import suppress
from typing import Any, Literal

from fastapi import APIRouter, Request
from sqlalchemy.exc import DatabaseError

from service.api.metrics import OpenMetrics
from service.api.problem_models import ProblemKindOut, problems
from service.api.problems import address_of, status_of, title_of
from service.api.shapes import Out, example
from service.api.wiring import Parts, host_only
from service.errors import LoopstartError, NotFound

router = APIRouter(prefix="/api", tags=["the service"])
_EXAMPLE: dict[str, Any] = {
    "schema": {
        "type": "string",
        "examples": [
            "# TYPE loopstart_requests_running gauge\nloopstart_requests_running 1.0\n# EOF\n"
        ],
    }
}


class HealthOut(Out):
    """Whether the service is well."""

    model_config = example({"status": "ready", "version": "0.1.0"})

    status: Literal["ready", "not set up", "no database"]
    version: str


class ReadyOut(Out):
    """The service can do its work."""

    model_config = example({"ready": True})

    ready: Literal[True]


@router.get("/health", summary="Whether the service is well")
def get_health(request: Request, parts: Parts) -> HealthOut:
    """Answers as long as the service runs; `ready` while the database has this version's tables.

    A service without its database need not be started anew: it finds it again by itself.
    """
    status: Literal["ready", "not set up", "no database"] = "no database"
    with suppress(DatabaseError):
        status = "ready" if parts.database.is_ready() else "not set up"
    return HealthOut(status=status, version=request.app.version)


@router.get("/ready", summary="Whether requests can be answered", responses=problems(503))
def get_ready(parts: Parts) -> ReadyOut:
    """Answers 200 while the database can be read, else 503: for what shares out requests."""
    parts.database.check_ready()
    return ReadyOut(ready=True)


@router.get(
    "/metrics",
    summary="Figures of the running service",
    response_class=OpenMetrics,
    dependencies=[host_only],
    responses={200: {"content": {OpenMetrics.media_type: _EXAMPLE}}, **problems(401, 403)},
)
def get_metrics(parts: Parts) -> OpenMetrics:
    """Requests by method, route and status, how long they took, and what the process uses.

    In the OpenMetrics text format, version 1.0.0. Where several processes serve, it is the sum of
    all, without what each of them uses.
    """
    return OpenMetrics(parts.metrics.text())


@router.get("/problems", summary="Every kind of problem this service answers with")
def get_problems() -> list[ProblemKindOut]:
    """The kinds of problem by their address, which an answer gives as `type`."""
    return [_shown(kind) for kind in _kinds(LoopstartError)]


@router.get(
    "/problems/{kind}", summary="What one kind of problem means", responses=problems(404, 422)
)
def get_problem(kind: str) -> ProblemKindOut:
    """What a `type` means."""
    for known in _kinds(LoopstartError):
        if address_of(known).rsplit("/", 1)[1] == kind:
            return _shown(known)
    raise NotFound("kind of problem", kind, "see /api/problems for those there are")


def _kinds(parent: type[LoopstartError]) -> list[type[LoopstartError]]:
    """The errors below `parent`, as the tree is drawn."""
    below = [kind for child in parent.__subclasses__() for kind in (child, *_kinds(child))]
    return list(dict.fromkeys(below))


def _shown(kind: type[LoopstartError]) -> ProblemKindOut:
    meaning = " ".join((kind.__doc__ or "").split())
    return ProblemKindOut(
        type=address_of(kind), title=title_of(kind), status=status_of(kind), meaning=meaning
    )
