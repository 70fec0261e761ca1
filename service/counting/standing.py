"""Which of one voter's comments stands, where their order can be told, and since when.

A comment's time is a span, so the order of two comments is sure only where one span ends before
the other begins. Whatever is decided here holds in every order that the spans allow.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime

from service.comments.spans import Span
from service.counting.round import Standing

_BEFORE_ALL = datetime.min.replace(tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Said:
    """What one comment of a voter said in time: the pages it chose; none where it took back."""

    key: str
    written: Span
    pages: tuple[int, ...]

    @property
    def takes_back(self) -> bool:
        """Whether it withdraws what the voter said before."""
        return not self.pages


@dataclass(frozen=True, slots=True)
class Stands:
    """What stands of all that a voter said: one ballot, or none.

    `unclear` are the comments whose order cannot be told and would decide; then nothing stands.
    """

    ballot: Said | None
    unclear: tuple[Said, ...] = ()


def what_stands(said: Sequence[Said], standing: Standing) -> Stands:
    """The ballot that stands: the latest, or the first, after the voter's last withdrawal.

    A withdrawal takes back every earlier ballot, whichever stands; the next one is then the first.
    Comments whose order cannot be told are unclear only where they would leave different pages.
    """
    if len(said) == 1:
        return Stands(None if said[0].takes_back else said[0])
    may_stand = _may_be_last(said) if standing == "latest" else _may_be_first(said)
    if len({frozenset(one.pages) for one in may_stand}) > 1:
        backs = _withdrawals_beside(may_stand, said) if standing == "first" else []
        return Stands(None, tuple(sorted(may_stand + backs, key=_order)))
    if may_stand[0].takes_back:
        return Stands(None)
    pick = max if standing == "latest" else min
    return Stands(pick(may_stand, key=_order))


def given_since(page: int, said: Sequence[Said], standing: Standing) -> Span:
    """Since when the voter's vote for `page` has been given without a break.

    `page` must be on the ballot that stands of `said`. Naming a page again changes nothing; taking
    it back does, and so does, where the latest ballot stands, a ballot without it.
    """
    if len(said) == 1:
        return said[0].written
    giving = [one.written for one in said if page in one.pages]
    if len(giving) == 1:
        return giving[0]
    breaks = [
        one.written
        for one in said
        if one.takes_back or (standing == "latest" and page not in one.pages)
    ]
    soonest = max((at.earliest for at in breaks), default=_BEFORE_ALL)
    last = max((at.latest for at in breaks), default=_BEFORE_ALL)
    return Span(
        min(max(at.earliest, soonest) for at in giving if at.latest >= soonest),
        min(at.latest for at in giving if at.earliest > last),
    )


def _order(one: Said) -> tuple[datetime, datetime, str]:
    return one.written.earliest, one.written.latest, one.key


def _may_be_last(said: Sequence[Said]) -> list[Said]:
    last_begins = max(one.written.earliest for one in said)
    return [one for one in said if one.written.latest >= last_begins]


def _may_be_first(said: Sequence[Said]) -> list[Said]:
    """The ballots that may be the first one after the last withdrawal.

    A withdrawal among them means that it may also be the last word of all.
    """
    backs = [one.written for one in said if one.takes_back]
    ballots = [one for one in said if not one.takes_back]
    begins = max((at.earliest for at in backs), default=_BEFORE_ALL)
    ends = max((at.latest for at in backs), default=_BEFORE_ALL)
    # A ballot may follow the last withdrawal at once, with all others before or after both: it is
    # enough that their spans meet. A ballot surely after all withdrawals must come before the
    # other such ballots.
    first_ends = min(
        (one.written.latest for one in ballots if one.written.earliest > ends),
        default=None,
    )
    may = [
        one
        for one in ballots
        if (one.written.earliest <= ends and one.written.latest >= begins)
        or (
            one.written.latest > ends and (first_ends is None or one.written.earliest <= first_ends)
        )
    ]
    if first_ends is None:
        may += [one for one in said if one.takes_back and one.written.latest == ends]
    return may


def _withdrawals_beside(may_stand: list[Said], said: Sequence[Said]) -> list[Said]:
    """The other withdrawals that may have come on either side of a ballot that may stand."""
    keys = {one.key for one in may_stand}
    ballots = [one for one in may_stand if not one.takes_back]
    return [
        back
        for back in said
        if back.takes_back and back.key not in keys and _meets_any(back, ballots)
    ]


def _meets_any(back: Said, others: list[Said]) -> bool:
    return any(
        back.written.latest >= one.written.earliest and one.written.latest >= back.written.earliest
        for one in others
    )
