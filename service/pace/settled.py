"""The log settled: what every entry brought, what is done of each page, and the days it tells of."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import pairwise

from service.errors import BadLog
from service.pace.entry import NO_DETAILS, PERCENT, Details, Entry
from service.pace.standing import Standing, check_order, standing_entries

DAY = timedelta(days=1)
#: A percent is told roundly: this share of the page less than before is no contradiction.
ROUNDING = 0.01


@dataclass(frozen=True, slots=True)
class Brought:
    """What one entry that stands brought: `stitches` new crosses, from `first` to `last`.

    `first` is None where the log does not say from when they are: they count as done, and say
    nothing of the pace. `done` is what was done of the page or piece after it.
    """

    entry: Entry
    stitches: int
    first: date | None
    last: date
    done: int


@dataclass(frozen=True, slots=True)
class SettledLog:
    """All that the log says. `brought` is by day; rests are pairs of first and last day."""

    brought: tuple[Brought, ...]
    rests: tuple[tuple[date, date], ...]

    @property
    def of_game(self) -> tuple[Brought, ...]:
        """What was stitched on the game's own piece."""
        return tuple(one for one in self.brought if not one.entry.is_other)

    @property
    def last_day(self) -> date | None:
        """The last day that the log tells of the game's piece; None where it tells of none."""
        return max((one.last for one in self.of_game), default=None)

    def done_on(self, page: int) -> int:
        """The crosses logged on a page."""
        return sum(one.stitches for one in self.brought if one.entry.page == page)

    def details_on(self, page: int) -> Details:
        """The details logged on a page."""
        total = NO_DETAILS
        for one in self.brought:
            if one.entry.page == page:
                total += one.entry.details
        return total

    def is_rest(self, day: date) -> bool:
        """Whether the host rests from the game's piece on that day."""
        return any(first <= day <= last for first, last in self.rests)


def settle_log(entries: Iterable[Entry], totals: Mapping[int, int | None]) -> SettledLog:
    """What the entries, in the order of their numbers, come to.

    `totals` are the crosses of the pages that are logged, None where they are not known.

    Raises:
        BadLog: entries that contradict one another, more stitches than a page has, a percent of a
            page whose stitches are not known, rests that overlap.
    """
    standing = standing_entries(entries)
    check_order(standing)
    rests = _rests(standing)
    brought: list[Brought] = []
    done: dict[tuple[int | None, str], int] = {}
    latest: dict[str, date] = {}
    for one in standing:
        entry = one.entry
        if entry.is_rest:
            continue
        thing = (entry.page, entry.piece)
        total = None if entry.page is None else totals.get(entry.page)
        new = _new_stitches(entry, done.get(thing, 0), total)
        done[thing] = done.get(thing, 0) + new
        if total is not None and done[thing] > total:
            raise BadLog(
                f"{entry.where} makes {done[thing]:,} stitches of the {total:,} that the page has",
                "check the count, or correct the stitches on the page",
            )
        # All pages of the game share the days: "since last time" is since any of them.
        first = _first_day(entry, latest.get(entry.piece))
        brought.append(Brought(entry, new, first, entry.day, done[thing]))
        latest[entry.piece] = entry.day
    return SettledLog(tuple(brought), rests)


def up_to(log: SettledLog, day: date) -> SettledLog:
    """The log as it stood at the end of `day`; rests to come stay, since they were planned."""
    return replace(log, brought=tuple(one for one in log.brought if one.last <= day))


def _new_stitches(entry: Entry, before: int, total: int | None) -> int:
    """The crosses that are new with this entry."""
    if entry.how in {"on the day", "since last time"}:
        return entry.amount
    if entry.how == "so far":
        if entry.amount < before:
            raise BadLog(
                f"{entry.where} says {entry.amount:,} stitches so far and {before:,} were logged "
                "before",
                "check the count, or correct the entry that had too many",
            )
        return entry.amount - before
    if total is None:
        raise BadLog(
            f"{entry.where} tells percent and the stitches of the page are not known",
            "tell how many stitches the page has first",
        )
    now = (total * entry.amount + 50 * PERCENT) // (100 * PERCENT)
    if now < before - max(1, ROUNDING * total):
        raise BadLog(
            f"{entry.where} says {entry.amount / PERCENT:g} %, {now:,} stitches, and {before:,} "
            "were logged before",
            "check the percent, or correct the entry that had too many",
        )
    return max(0, now - before)


def _first_day(entry: Entry, latest: date | None) -> date | None:
    """The first day that the entry's new stitches are of."""
    if entry.how == "on the day":
        return entry.day
    after = None if latest is None else min(latest + DAY, entry.day)
    if entry.first is None:
        return after
    return entry.first if after is None else max(after, entry.first)


def _rests(standing: Sequence[Standing]) -> tuple[tuple[date, date], ...]:
    rests = sorted(
        (one.entry.first, one.entry.day)
        for one in standing
        if one.entry.is_rest and one.entry.first
    )
    for (_, last), (first, _) in pairwise(rests):
        if first <= last:
            raise BadLog(
                f"the rest from {first} begins before the one until {last} ends",
                "make them one, or correct one of them",
            )
    return tuple(rests)
