"""The route that reads one text: how would this be read?"""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter
from pydantic import Field

from service.api.chart_models import ChartIn
from service.api.comment_models import ReadingOut
from service.api.problem_models import problems
from service.api.shapes import In, Languages, example
from service.api.wiring import host_only
from service.ballots.reader import read_vote
from service.ballots.reading import Question

router = APIRouter(
    prefix="/api", tags=["counting"], dependencies=[host_only], responses=problems(401, 403, 422)
)


class ReadIn(In):
    """One text, and what the round asks."""

    model_config = example(
        {"text": "12 or 40", "chart": {"columns": 9, "rows": 7}, "choices": 1, "languages": ["en"]}
    )

    text: Annotated[str, Field(max_length=100_000)]
    chart: ChartIn
    choices: int = Field(default=1, ge=1)
    languages: Languages = Field(default=["en"])


@router.post("/read", summary="Read one text as a vote")
def post_read(asked: ReadIn) -> ReadingOut:
    """What the text says as a vote, and the words it was read from. Nothing is kept."""
    question = Question(asked.chart.to_chart(), asked.choices, tuple(asked.languages))
    return ReadingOut.of(read_vote(asked.text, question))
