"""The route that tells how far a long request is."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query
from pydantic import Field

from service.api.problem_models import problems
from service.api.shapes import Out, example
from service.api.wiring import HostOrCollector, Parts

router = APIRouter(prefix="/api/progress", tags=["comments"], responses=problems(401, 403, 422))

Watch = Annotated[
    str | None,
    Query(
        min_length=8,
        max_length=64,
        pattern=r"^[A-Za-z0-9_-]+$",
        description="A name of the caller's choice, to ask /api/progress about this request.",
    ),
]


class ProgressOut(Out):
    """How far a request is: what it does and how many comments are done, of how many."""

    model_config = example({"step": "storing", "done": 240000, "total": 1000000})

    step: str = Field(description="waiting, reading, storing, merging, counting or done.")
    done: int
    total: int = Field(description="0 where it is not known yet.")


@router.get("/{watch}", summary="How far a request is")
def get_progress(watch: str, parts: Parts, caller: HostOrCollector) -> ProgressOut:
    """What the request that was sent with this `watch` is doing."""
    del caller
    step, done, total = parts.progress.of(watch)
    return ProgressOut(step=step, done=done, total=total)
