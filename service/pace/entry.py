"""One entry of the stitch log, as the host wrote it. Nothing is overwritten: entries correct others."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal, get_args

from service.errors import BadLog

How = Literal["on the day", "since last time", "so far", "percent", "rest"]
HOWS: tuple[How, ...] = get_args(How)
#: These tell of all days since the entry before, not of their own day alone.
OVER_DAYS: frozenset[How] = frozenset(("since last time", "so far", "percent"))

#: More stitches than anybody makes between two entries; a slip of typing.
MOST_AT_ONCE = 2_000_000
#: Percent are kept as whole hundredths: 69.4 % is 6,940.
PERCENT = 100
OLDEST_DAY = date(2000, 1, 1)
#: A rest of more days is a slip of typing.
LONGEST_REST = 1_000


@dataclass(frozen=True, slots=True)
class Details:
    """Stitches that are no crosses, as counts of their own, never added to them."""

    fractional: int = 0
    backstitch: int = 0
    beads: int = 0

    def __add__(self, other: Details) -> Details:
        """Both together."""
        return Details(
            self.fractional + other.fractional,
            self.backstitch + other.backstitch,
            self.beads + other.beads,
        )

    @property
    def any(self) -> bool:
        """Whether there are any."""
        return self != NO_DETAILS


NO_DETAILS = Details()


@dataclass(frozen=True, slots=True)
class Entry:
    """What the host wrote: on `day`, `amount` on a page of the game or on another piece.

    `amount` counts crosses: those of the day alone, those since the entry before, or all of the
    page so far; with `percent` it is how much of the page is done, in hundredths of a percent.
    `page` is None for another `piece`, and for a rest, which lasts from `first` to `day` and has
    no amount. `first` of another entry is the first day that it tells of, where the log does not.
    `corrects` is the number of an entry that this one stands for from now on; with `taken_back`
    nothing stands for it.
    """

    number: int
    day: date
    how: How
    amount: int = 0
    page: int | None = None
    piece: str = ""
    details: Details = NO_DETAILS
    first: date | None = None
    corrects: int | None = None
    taken_back: bool = False
    note: str = ""

    @property
    def is_rest(self) -> bool:
        """Whether it says that nothing is stitched on the game's piece on those days."""
        return self.how == "rest"

    @property
    def is_other(self) -> bool:
        """Whether it is of another piece than the game's."""
        return self.page is None and not self.is_rest

    @property
    def what(self) -> str:
        """What it is of, as a sentence names it."""
        if self.is_rest:
            return "the rest"
        return f"page {self.page}" if self.page is not None else f"“{self.piece}”"

    @property
    def where(self) -> str:
        """The entry, as a sentence names it."""
        return f"the entry of {self.day} for {self.what}"


def check_entry(entry: Entry, today: date) -> None:
    """Whether such an entry can be, whatever else is in the log.

    Raises:
        BadLog: a day to come or long ago, a count below 0 or too large, a percent above 100, both
            a page and another piece or neither, a rest with stitches or without its days.
    """
    if entry.taken_back:
        return
    if entry.how not in HOWS:
        raise BadLog(f"an entry is said to be {entry.how!r}", f"give one of {', '.join(HOWS)}")
    _check_days(entry, today)
    if entry.is_rest:
        _check_rest(entry, today)
        return
    if (entry.page is None) == (not entry.piece.strip()):
        raise BadLog(
            f"the entry of {entry.day} names both a page and another piece, or neither",
            "name the page of the game, or the other piece",
        )
    if entry.is_other and entry.how not in {"on the day", "since last time"}:
        raise BadLog(
            f"{entry.where} is told as {entry.how!r}",
            "of another piece tell stitches on the day or since last time",
        )
    _check_amounts(entry)


def _check_days(entry: Entry, today: date) -> None:
    if entry.day > today and not entry.is_rest:
        raise BadLog(
            f"{entry.where} is still to come (today is {today})",
            "log a day once it has been stitched",
        )
    first = entry.first or entry.day
    if not OLDEST_DAY <= first <= entry.day:
        raise BadLog(
            f"{entry.where} begins on {first}",
            f"give a first day from {OLDEST_DAY} to the entry's own day",
        )


def _check_rest_days(entry: Entry, today: date) -> None:
    if entry.first is None or (entry.day - entry.first).days >= LONGEST_REST:
        raise BadLog(
            f"the rest until {entry.day} has no first day, or one long before",
            f"give its first and its last day, at most {LONGEST_REST:,} days apart",
        )
    if (entry.first - today).days > LONGEST_REST:
        raise BadLog(f"the rest from {entry.first} is years ahead", "check the year")


def _check_rest(entry: Entry, today: date) -> None:
    _check_rest_days(entry, today)
    if entry.amount or entry.details.any or entry.page is not None or entry.piece:
        raise BadLog(
            f"the rest until {entry.day} has stitches, a page or a piece",
            "log what was stitched as an entry of its own",
        )


def _check_amounts(entry: Entry) -> None:
    details = entry.details
    named = {
        "stitches": 0 if entry.how == "percent" else entry.amount,
        "fractional stitches": details.fractional,
        "backstitches": details.backstitch,
        "beads": details.beads,
    }
    for what, count in named.items():
        if not 0 <= count <= MOST_AT_ONCE:
            raise BadLog(
                f"{entry.where} says {count:,} {what}",
                f"give a whole number from 0 to {MOST_AT_ONCE:,}",
            )
    if entry.how == "percent" and not 0 <= entry.amount <= 100 * PERCENT:
        raise BadLog(f"{entry.where} says {entry.amount / PERCENT:g} %", "give 0 to 100 percent")
    if entry.how == "on the day" and entry.first not in (None, entry.day):
        raise BadLog(
            f"{entry.where} tells of several days",
            "say that it is since last time, or leave the first day out",
        )
