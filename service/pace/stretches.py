"""The days that the log tells of, cut into stretches: one day each, or an update's several days."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from service.pace.entry import OVER_DAYS
from service.pace.settled import DAY, Brought, SettledLog


@dataclass(frozen=True, slots=True)
class Stretch:
    """`stitches` on the game's piece in `days` days, the last of them `last`.

    Days of rest are not among the days, unless something was stitched on one.
    """

    last: date
    days: int
    stitches: float


def stretches_of(log: SettledLog) -> tuple[Stretch, ...]:
    """The stretches from the first day that the log tells of to the last, without a gap.

    Stitches on any page of the game count together. Between entries of single days the days
    without one are days without stitches; days after the last entry are not known and not among
    them.
    """
    found: list[Stretch] = []
    before: date | None = None
    for last, ending in _by_last_day(log.of_game):
        stitches = sum(one.stitches for one in ending)
        first = _first_of(ending, before)
        if first is None:
            # Nobody said from when these are: they tell nothing of the pace.
            before = last
            continue
        if before is not None:
            found += _empty_days(log, before + DAY, first - DAY)
        days = sum(1 for day in _days(first, last) if not log.is_rest(day))
        if days or stitches:
            found.append(Stretch(last, max(days, 1), stitches))
        before = last
    return tuple(found)


def _by_last_day(brought: Sequence[Brought]) -> list[tuple[date, list[Brought]]]:
    by_day: dict[date, list[Brought]] = {}
    for one in brought:
        by_day.setdefault(one.last, []).append(one)
    return sorted(by_day.items())


def _first_of(ending: Sequence[Brought], before: date | None) -> date | None:
    """The first day of what ends on one day; the days before it that are told already are not its."""
    firsts = [one.first for one in ending]
    if any(one.entry.how in OVER_DAYS and one.first is None for one in ending):
        return None
    known = [first for first in firsts if first is not None]
    first = min(known)
    return first if before is None else max(first, before + DAY)


def _empty_days(log: SettledLog, first: date, last: date) -> list[Stretch]:
    return [Stretch(day, 1, 0) for day in _days(first, last) if not log.is_rest(day)]


def _days(first: date, last: date) -> list[date]:
    return [first + number * DAY for number in range((last - first).days + 1)]
