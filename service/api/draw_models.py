"""Draws in JSON: the sources named beforehand, and what is told of them afterwards."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import Field

from service.api.shapes import In, MomentIn, Out, Words, example
from service.comments.times import read_moment
from service.counting.sources import MOST_SOURCES, DrawInput, DrawSource, IfLate, Told
from service.store.draw_sources import sources_of
from service.store.tables import RoundRow

_NAME = "the six numbers of the island lottery of 7 March, without the extra number"
_Number = Annotated[str, Field(min_length=1, max_length=201, examples=["34"])]


class DrawSourceIn(In):
    """A source of numbers that nobody knows before the voting ends."""

    model_config = example({"name": _NAME, "expected": "2026-03-07T20:00", "if_late": "left out"})

    name: Words = Field(description="Which numbers, so that everybody finds the same.")
    expected: MomentIn
    if_late: IfLate = Field(
        default="left out",
        description="Where they are late or cancelled: leave the source out, or wait for its next.",
    )

    def to_source(self, zone: ZoneInfo) -> DrawSource:
        """The source; its time in the game's zone.

        Raises:
            BadTime: a time that cannot be.
        """
        return DrawSource(self.name.strip(), read_moment(self.expected, zone), self.if_late)


#: The sources of a draw in their order.
Sources = Annotated[
    list[DrawSourceIn],
    Field(
        max_length=MOST_SOURCES,
        description="The sources of the draw, in the order in which they make its key. None: the "
        "round's own value draws, whose SHA-256 is published at the opening.",
    ),
]


class DrawnIn(In):
    """The numbers of one source, as its drawing gave them; or the reason why it is left out."""

    model_config = example({"source": 1, "numbers": ["9", "18", "26", "34", "41", "45"]})

    source: int = Field(ge=1, le=MOST_SOURCES, description="Its place in the rules, from 1.")
    numbers: list[_Number] = Field(default=[], max_length=100)
    reason: Annotated[str, Field(max_length=500)] = Field(
        default="", description="Why it is left out; or a word on its numbers."
    )

    def to_told(self) -> Told:
        """What is told."""
        return Told(tuple(self.numbers), self.reason.replace("\x00", " "))


class DrawSourceOut(Out):
    """A source, and its numbers once they are told."""

    name: str
    expected: datetime
    if_late: IfLate
    numbers: list[str] | None = Field(description="Null until they are told.")
    left_out: str | None = Field(description="Why it is left out, where it is.")


class DrawOut(Out):
    """How a tie would be drawn, and what is known of it."""

    model_config = example(
        {
            "sources": [
                {
                    "name": _NAME,
                    "expected": "2026-03-07T20:00:00Z",
                    "if_late": "left out",
                    "numbers": ["9", "18", "26", "34", "41", "45"],
                    "left_out": None,
                }
            ],
            "commitment": "c0" * 32,
        }
    )

    sources: list[DrawSourceOut]
    commitment: str | None = Field(
        description="SHA-256 of the round's own value, from the opening on."
    )

    @classmethod
    def of(cls, row: RoundRow, known: DrawInput) -> DrawOut:
        """The draw of a round, for everybody."""
        told = dict(known.told)
        return cls(
            sources=[
                _source(source, told.get(place))
                for place, source in enumerate(sources_of(row), start=1)
            ],
            commitment=row.commitment,
        )


def _source(source: DrawSource, told: Told | None) -> DrawSourceOut:
    return DrawSourceOut(
        name=source.name,
        expected=source.expected,
        if_late=source.if_late,
        numbers=None if told is None else list(told.numbers),
        left_out=None if told is None or told.numbers else told.reason,
    )
