"""How far the page and the chart are: in total, by update, a day, and by piece."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from service.chart.stitches import NOTHING_TOLD, PageTold
from service.errors import BadLog
from service.pace.entry import NO_DETAILS, Details
from service.pace.settled import SettledLog


@dataclass(frozen=True, slots=True)
class PageProgress:
    """A page: `done` of `total` crosses, and its details. `total` is None where it is not known."""

    page: int
    done: int
    total: int | None
    details: Details = NO_DETAILS
    told: PageTold = NOTHING_TOLD

    @property
    def left(self) -> int | None:
        """The crosses still to be made."""
        return None if self.total is None else max(0, self.total - self.done)

    @property
    def percent(self) -> float | None:
        """How much of the page's crosses are done, 0 to 100."""
        return None if self.total is None else 100 * self.done / self.total

    @property
    def details_to_come(self) -> tuple[str, ...]:
        """Which details are told of the page and not all made yet."""
        made = {
            "fractional stitches": (self.told.fractional, self.details.fractional),
            "backstitch": (self.told.backstitch, self.details.backstitch),
            "beads": (self.told.beads, self.details.beads),
        }
        return tuple(what for what, (told, done) in made.items() if told and done < told)

    @property
    def state(self) -> str:
        """In words: in work, done, or crosses done and details to come."""
        if self.total is None or self.done < self.total:
            return "in work"
        return "crosses done, details to come" if self.details_to_come else "done"


@dataclass(frozen=True, slots=True)
class ChartProgress:
    """The chart: `done` of `total` crosses; where these are not known, pages alone.

    A page that is called stitched counts in full, whatever was logged on it.
    """

    pages_done: int
    pages: int
    done: int | None
    total: int | None

    @property
    def percent(self) -> float:
        """How much of the chart is done, 0 to 100: of its crosses, or else of its pages."""
        if self.done is not None and self.total:
            return 100 * self.done / self.total
        return 100 * self.pages_done / self.pages


@dataclass(frozen=True, slots=True)
class Update:
    """What one day of the log brought, on the game's piece, and how far that took it."""

    day: date
    page: int
    stitches: int
    done: int
    percent: float | None
    chart_percent: float | None


@dataclass(frozen=True, slots=True)
class PieceTotal:
    """The stitches on one piece in some days; `piece` is "" for the game's own."""

    piece: str
    stitches: int
    details: Details


@dataclass(frozen=True, slots=True)
class Since:
    """What was stitched from `first` to `last`, both included, on every piece."""

    first: date
    last: date
    pieces: tuple[PieceTotal, ...]

    @property
    def of_game(self) -> int:
        """The stitches on the game's piece."""
        return sum(one.stitches for one in self.pieces if not one.piece)

    @property
    def in_all(self) -> int:
        """The stitches on all pieces."""
        return sum(one.stitches for one in self.pieces)

    @property
    def share(self) -> float | None:
        """The part of all stitches that the game's piece had, 0 to 1; None without any."""
        return self.of_game / self.in_all if self.in_all else None

    @property
    def a_day(self) -> float:
        """Stitches a day on the game's piece."""
        return self.of_game / ((self.last - self.first).days + 1)


def page_progress(
    log: SettledLog, page: int, total: int | None, told: PageTold, *, stitched: bool
) -> PageProgress:
    """How far a page is. One that is called `stitched` has all its crosses."""
    done = log.done_on(page)
    if stitched and total is not None:
        done = total
    return PageProgress(page, done, total, log.details_on(page), told)


def chart_progress(
    log: SettledLog,
    totals: Mapping[int, int | None],
    stitched: frozenset[int],
) -> ChartProgress:
    """How far the chart is. `totals` are the crosses of all its pages."""
    known = [total for total in totals.values() if total is not None]
    if len(known) < len(totals):
        return ChartProgress(len(stitched), len(totals), None, None)
    done = sum(
        total if page in stitched else log.done_on(page)
        for page, total in totals.items()
        if total is not None
    )
    return ChartProgress(len(stitched), len(totals), done, sum(known))


def updates_of(
    log: SettledLog, totals: Mapping[int, int | None], stitched: frozenset[int]
) -> tuple[Update, ...]:
    """Every entry on the game's piece with what it brought, by day.

    Pages that are stitched and were never logged count as done before the first entry.
    """
    chart = sum(total for total in totals.values() if total is not None)
    is_known = all(total is not None for total in totals.values())
    found: list[Update] = []
    logged = {one.entry.page for one in log.of_game}
    in_all = sum(totals.get(page) or 0 for page in stitched - logged)
    for one in log.of_game:
        page = one.entry.page
        if page is None:
            continue
        in_all += one.stitches
        total = totals.get(page)
        percent = 100 * one.done / total if total else None
        of_chart = 100 * in_all / chart if is_known and chart else None
        found.append(Update(one.last, page, one.stitches, one.done, percent, of_chart))
    return tuple(found)


def since(log: SettledLog, first: date, last: date) -> Since:
    """What the entries from `first` to `last` brought, the game's piece first, then by name.

    Raises:
        BadLog: the last day is before the first.
    """
    if last < first:
        raise BadLog(f"{last} is before {first}", "give a first day that is not after the last")
    stitches: dict[str, int] = {"": 0}
    details: dict[str, Details] = {"": NO_DETAILS}
    for one in log.brought:
        if first <= one.last <= last:
            piece = one.entry.piece
            stitches[piece] = stitches.get(piece, 0) + one.stitches
            details[piece] = details.get(piece, NO_DETAILS) + one.entry.details
    names: Sequence[str] = sorted(stitches, key=lambda piece: (bool(piece), piece.casefold()))
    return Since(
        first, last, tuple(PieceTotal(piece, stitches[piece], details[piece]) for piece in names)
    )


def left_in_all(pages: Iterable[PageProgress]) -> int | None:
    """The crosses left on those pages together; None where one is not known."""
    left = 0
    for page in pages:
        if page.left is None:
            return None
        left += page.left
    return left
