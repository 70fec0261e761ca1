"""Which of one voter's comments stands, in every order that their times allow, and since when."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timezone

Span = tuple[datetime, datetime]

_BEFORE_ALL = datetime.min.replace(tzinfo=timezone.utc)


@dataclass(frozen=True)
class Said:
    """What a comment said in time: its pages, none where it took back what came before.

    `place` is that of the comment in the record.
    """

    place: int
    written: Span
    pages: tuple[int, ...]

    @property
    def earliest(self) -> datetime:
        """The first instant at which it may have been written."""
        return self.written[0]

    @property
    def latest(self) -> datetime:
        """The last instant at which it may have been written."""
        return self.written[1]


def what_stands(said: list[Said], standing: str) -> tuple[Said | None, list[Said]]:
    """The ballot that stands, and those comments whose order cannot be told and would decide."""
    if len(said) == 1:
        return (said[0] if said[0].pages else None), []
    may = _may_be_last(said) if standing == "latest" else _may_be_first(said)
    if len({frozenset(one.pages) for one in may}) > 1:
        if standing == "first":
            ballots = [one for one in may if one.pages]
            may += [
                back
                for back in said
                if not back.pages and back not in may and any(_meet(back, one) for one in ballots)
            ]
        return None, may
    if not may[0].pages:
        return None, []
    pick: Callable[..., Said] = max if standing == "latest" else min
    return pick(may, key=lambda one: (one.earliest, one.latest, one.place)), []


def given_since(page: int, said: list[Said], standing: str) -> Span:
    """Since when the vote for a page was given without a break.

    Naming it again changes nothing; taking it back does, and so does, where the latest ballot
    stands, a ballot without it.
    """
    giving = [one for one in said if page in one.pages]
    if len(giving) == 1:
        return giving[0].written
    breaks = [
        one for one in said if not one.pages or (standing == "latest" and page not in one.pages)
    ]
    soonest = max((one.earliest for one in breaks), default=_BEFORE_ALL)
    last = max((one.latest for one in breaks), default=_BEFORE_ALL)
    return (
        min(max(one.earliest, soonest) for one in giving if one.latest >= soonest),
        min(one.latest for one in giving if one.earliest > last),
    )


def _may_be_last(said: list[Said]) -> list[Said]:
    last_begins = max(one.earliest for one in said)
    return [one for one in said if one.latest >= last_begins]


def _may_be_first(said: list[Said]) -> list[Said]:
    """The ballots that may be the first after the last withdrawal, or that withdrawal itself."""
    backs = [one for one in said if not one.pages]
    ballots = [one for one in said if one.pages]
    begins = max((one.earliest for one in backs), default=_BEFORE_ALL)
    ends = max((one.latest for one in backs), default=_BEFORE_ALL)
    sure = [one.latest for one in ballots if one.earliest > ends]
    may = [
        one
        for one in ballots
        if (one.earliest <= ends and one.latest >= begins)
        or (one.latest > ends and (not sure or one.earliest <= min(sure)))
    ]
    return may if sure else may + [one for one in backs if one.latest == ends]


def _meet(one: Said, other: Said) -> bool:
    return one.latest >= other.earliest and other.latest >= one.earliest
