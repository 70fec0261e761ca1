"""Logs for the tests of the pace, told as a host would tell them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from itertools import count

from service.pace.entry import Entry, How
from service.pace.forecast import Finish, NotEnough, Outlook, finish_of, outlook
from service.pace.settled import SettledLog, settle_log

#: A Monday.
MONDAY = date(2026, 3, 2)
PAGE = 41


def day(number: int) -> date:
    """The day with that number; 1 is a Monday."""
    return MONDAY + timedelta(days=number - 1)


def entry(number: int, amount: int, how: How = "on the day", **other: object) -> Entry:
    """An entry of the day `number`, which is also its number in the log."""
    told: dict[str, object] = {"number": number, "page": PAGE} | other
    return Entry(day=day(number), how=how, amount=amount, **told)  # type: ignore[arg-type]


def daily(stitches: Sequence[int]) -> list[Entry]:
    """A log by day, from day 1 on; days without stitches have no entry but the last one does."""
    last = len(stitches)
    return [entry(n, each) for n, each in enumerate(stitches, 1) if each or n == last]


def updates(*told: tuple[int, int]) -> list[Entry]:
    """A log of totals since last time: (day, stitches) each, the first one from day 1 on."""
    return [
        entry(at, stitches, "since last time", first=day(1) if place == 0 else None)
        for place, (at, stitches) in enumerate(told)
    ]


def rest(first: int, last: int, number: int = 900) -> Entry:
    """A rest on those days."""
    return Entry(number, day(last), "rest", first=day(first))


def settled(entries: Iterable[Entry], total: int | None = None) -> SettledLog:
    """The log settled, on pages of so many stitches."""
    told = tuple(entries)
    return settle_log(told, {one.page: total for one in told if one.page is not None})


def numbered(entries: Iterable[Entry]) -> list[Entry]:
    """The same entries with numbers from 1 on."""
    numbers = count(1)
    return [
        Entry(
            next(numbers), one.day, one.how, one.amount, one.page, one.piece, one.details, one.first
        )
        for one in entries
    ]


def seen(log: SettledLog, today: date | None = None, confidence: float = 0.8) -> Outlook:
    """The outlook on the day after the log, which must have one."""
    assert log.last_day is not None
    found = outlook(log, today or log.last_day + timedelta(days=1), confidence)
    assert isinstance(found, Outlook), found
    return found


def finish(log: SettledLog, left: int, confidence: float = 0.8) -> Finish:
    """When so many stitches more are done, which must be told."""
    found = finish_of(seen(log, confidence=confidence), left)
    assert not isinstance(found, NotEnough), found
    return found
