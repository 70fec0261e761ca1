"""The prize in JSON: what everybody may read of it, and the winners' claims for the host."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated

from pydantic import Field

from service.api.shapes import In, MomentIn, Out, SpanOut, Words, example
from service.comments.spans import Span
from service.mystery.prize import CAUTION, MOST_CLAIM_DAYS, ClaimState, Prize
from service.store.tables_mystery import PrizeRow, WinnerRow
from service.store.winners import Cause, claim_of

_PRIZE = {
    "offer": "a skein of the guild's own thread",
    "choose_from": "the colour card on the guild's wall",
    "claim_days": 14,
}
_WINNER = {
    "number": 1,
    "key": "c0f1e2d3c4b5a697",
    "author": "Maren",
    "written": {"earliest": "2026-03-02T09:12:00Z", "latest": "2026-03-02T09:12:00Z"},
    "cause": "first",
    "reason": "",
    "announced": "2026-03-05T18:00:00Z",
    "announcement": "The windy island's mystery: the piece is named.",
    "claim": {
        "claim_by": "2026-03-19T18:00:00Z",
        "state": "to be claimed",
        "asked_for": "",
        "asked_at": None,
        "sent_at": None,
        "passed_on": None,
    },
}


class PrizeIn(In):
    """A prize for the first right guesser. Mind the caution in the answer before you promise it."""

    model_config = example(_PRIZE)

    offer: Words = Field(description="What the first right guesser may have.")
    choose_from: Annotated[str, Field(max_length=500)] = Field(
        default="", description="Where it may be chosen from."
    )
    claim_days: int = Field(
        default=14, ge=1, le=MOST_CLAIM_DAYS, description="Days from the announcement to claim it."
    )

    def to_prize(self) -> Prize:
        """The prize itself."""
        return Prize(self.offer, self.choose_from, self.claim_days)


class AskedForIn(In):
    """What the winner asked for. No address: Loopstart needs none and should keep none."""

    model_config = example({"asked_for": "the sea green one", "at": "2026-03-06T09:00"})

    asked_for: Words
    at: MomentIn | None = None


class SentIn(In):
    """When the prize was sent; now, where it is left out."""

    model_config = example({"at": "2026-03-07T10:00"})

    at: MomentIn | None = None


class PassOnIn(In):
    """The passing on of a prize; before its time is over only if the winner `declined` it."""

    model_config = example({"declined": "she has enough thread"})

    declined: Words | None = Field(
        default=None, description="How the winner declined it; it is not announced."
    )


class PrizeOut(Out):
    """What is offered to the first right guesser, and what to mind with it."""

    model_config = example(_PRIZE | {"caution": CAUTION})

    offer: str
    choose_from: str
    claim_days: int
    caution: str = CAUTION

    @classmethod
    def of(cls, row: PrizeRow) -> PrizeOut:
        """The prize for JSON."""
        return cls(offer=row.offer, choose_from=row.choose_from, claim_days=row.claim_days)


class ClaimOut(Out):
    """A winner's claim."""

    claim_by: datetime
    state: ClaimState
    asked_for: str
    asked_at: datetime | None
    sent_at: datetime | None
    passed_on: datetime | None


class WinnerOut(Out):
    """A winner as announced, with the words to paste. `claim` is empty in a game without prize."""

    model_config = example(_WINNER)

    number: int
    key: str
    author: str
    written: SpanOut
    cause: Cause
    reason: str
    announced: datetime
    announcement: str
    claim: ClaimOut | None

    @classmethod
    def of(cls, row: WinnerRow, now: datetime) -> WinnerOut:
        """The winner for JSON."""
        kept = claim_of(row)
        claim = kept and ClaimOut(
            claim_by=kept.claim_by,
            state=kept.state_at(now),
            asked_for=kept.asked_for,
            asked_at=kept.asked_at,
            sent_at=kept.sent_at,
            passed_on=kept.passed_on,
        )
        return cls(
            number=row.number,
            key=row.key,
            author=row.author,
            written=SpanOut.of(Span(row.written_earliest, row.written_latest)),
            cause=row.cause,
            reason=row.reason,
            announced=row.at,
            announcement=row.announcement,
            claim=claim,
        )


class PrizeForHostOut(Out):
    """The prize, if there is one, and the winners as they were announced, the last one last."""

    model_config = example({"prize": _PRIZE | {"caution": CAUTION}, "winners": [_WINNER]})

    prize: PrizeOut | None
    winners: list[WinnerOut]
