"""A round's comments and the host's rulings in JSON."""

from __future__ import annotations

from datetime import datetime
from typing import Literal

from pydantic import Field

from service.api.shapes import In, Out, Page, SpanOut, Words, example
from service.api.tally_models import EvidenceOut
from service.ballots.reading import NoneReason, Outcome, Reading
from service.counting.result import Cause
from service.counting.round import Ruling

_SPAN = {"earliest": "2026-03-02T09:12:00Z", "latest": "2026-03-02T09:12:00Z"}
_READING = {
    "outcome": "look",
    "pages": [12, 40],
    "reason": None,
    "why": "several pages, and none is preferred",
    "evidence": [
        {"start": 0, "end": 2, "text": "12", "page": 12, "rule": "stands by itself"},
        {
            "start": 6,
            "end": 8,
            "text": "40",
            "page": 40,
            "rule": "beside words that say nothing the reader knows",
        },
    ],
}

Filter = Literal["look", "set-aside", "counts"]


class ReadingOut(Out):
    """What one comment says: the outcome, its pages, and the words they were read from."""

    model_config = example(_READING)

    outcome: Outcome
    pages: list[int]
    reason: NoneReason | None
    why: str
    evidence: list[EvidenceOut]

    @classmethod
    def of(cls, reading: Reading) -> ReadingOut:
        """The reading for JSON."""
        return cls(
            outcome=reading.outcome,
            pages=list(reading.pages),
            reason=reading.reason,
            why=reading.why,
            evidence=[EvidenceOut.of(evidence) for evidence in reading.evidence],
        )


class RulingIn(In):
    """The host's decision on one comment. No pages: it chooses nothing."""

    model_config = example({"pages": [12], "reason": "she wrote it twice, 40 is her age"})

    pages: list[Page] = Field(default=[], max_length=10_000)
    reason: Words
    withdraws: bool = Field(default=False, description="It takes back the voter's earlier ballot.")
    in_time: bool | None = Field(
        default=None, description="Decides whether a comment of unsure time was in time."
    )

    def to_ruling(self, now: datetime) -> Ruling:
        """The ruling, made now."""
        return Ruling(tuple(self.pages), self.reason, now, self.withdraws, self.in_time)


class RulingOut(Out):
    """A ruling that was made."""

    pages: list[int]
    reason: str
    at: datetime
    withdraws: bool
    in_time: bool | None

    @classmethod
    def of(cls, ruling: Ruling) -> RulingOut:
        """The ruling for JSON."""
        return cls(
            pages=list(ruling.pages),
            reason=ruling.reason,
            at=ruling.at,
            withdraws=ruling.withdraws,
            in_time=ruling.in_time,
        )


class CommentOut(Out):
    """One comment: how it was read, what was ruled, and what became of it.

    `counts` comments carry no cause; `needs_look` are those that only the host can settle.
    """

    model_config = example(
        {
            "key": "c9d8e7f6a5b4c3d2",
            "author": "Odd",
            "text": "12 or 40",
            "written": _SPAN,
            "is_host": False,
            "reading": _READING,
            "rulings": [],
            "counts": False,
            "needs_look": True,
            "cause": "needs a look",
            "why": "several pages, and none is preferred",
            "pages": [12, 40],
        }
    )

    key: str
    author: str
    text: str
    written: SpanOut
    is_host: bool
    reading: ReadingOut
    rulings: list[RulingOut]
    counts: bool
    needs_look: bool
    cause: Cause | None
    why: str
    pages: list[int]
