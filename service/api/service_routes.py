"""Routes about the service itself: whether it is well, and what its problems mean."""

from __future__ import annotations

from typing import Literal

from fastapi import APIRouter, Request

from service.api.problem_models import ProblemKindOut, problems
from service.api.problems import address_of, status_of, title_of
from service.api.shapes import Out, example
from service.api.wiring import Parts
from service.errors import LoopstartError, NotFound

router = APIRouter(prefix="/api", tags=["the service"])


class HealthOut(Out):
    """Whether the service is well."""

    model_config = example({"status": "ready", "version": "0.1.0"})

    status: Literal["ready", "not set up"]
    version: str


@router.get("/health", summary="Whether the service is well")
def get_health(request: Request, parts: Parts) -> HealthOut:
    """Answers `ready` once the database stands with this version's tables."""
    ready = parts.database.is_ready()
    return HealthOut(status="ready" if ready else "not set up", version=request.app.version)


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
