"""How many stitches each page has: from the design's size, or as the host told them by hand."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from service.chart.grid import Chart
from service.errors import BadChart, PageNotOnChart

#: No page holds more: its longer side would be over two metres on fabric of 18 to the inch.
MOST_ON_A_PAGE = 2_000_000


@dataclass(frozen=True, slots=True)
class PageTold:
    """What the host told of one page: crosses, and details as counts of their own.

    None is not told. `crosses` may be fewer than the page has room for, where it is not a full
    cover. Fractional stitches, backstitch and beads are no part of the crosses.
    """

    crosses: int | None = None
    fractional: int | None = None
    backstitch: int | None = None
    beads: int | None = None


NOTHING_TOLD = PageTold()


@dataclass(frozen=True, slots=True)
class ToldStitches:
    """Stitches entered by hand: of single pages, and of `every` page that nothing else tells."""

    every: int | None = None
    pages: Mapping[int, PageTold] = field(default_factory=dict)

    def of(self, page: int) -> PageTold:
        """What was told of that page."""
        return self.pages.get(page, NOTHING_TOLD)


def check_told(chart: Chart, told: ToldStitches) -> None:
    """Whether such pages can be.

    Raises:
        BadChart: a count below 0 or too large, more crosses than the page has room for.
        PageNotOnChart: there is no such page.
    """
    if told.every is not None:
        _check_count("every page", "stitches", told.every, 1)
    for page, one in told.pages.items():
        if page not in chart.pages:
            raise PageNotOnChart(page, chart.page_count)
        if one.crosses is not None:
            _check_count(f"page {page}", "stitches", one.crosses, 1)
            room = chart.stitches_on(page)
            if room is not None and one.crosses > room:
                raise BadChart(
                    f"page {page} is said to have {one.crosses:,} stitches and has room for "
                    f"{room:,}",
                    "count again, without the rows and columns repeated from other pages",
                )
        for what in ("fractional", "backstitch", "beads"):
            count = getattr(one, what)
            if count is not None:
                _check_count(f"page {page}", what, count, 0)


def stitches_on(chart: Chart, told: ToldStitches, page: int) -> int | None:
    """The crosses of a page; None where nobody told and the design's size is not known.

    What was told of the page goes before the design's size, that before `every`. In a design's
    size the last column and row are as narrow and low as they are, and rows and columns that
    pages repeat as a guide are counted once, on the page they belong to.

    Raises:
        PageNotOnChart: there is no such page.
    """
    room = chart.stitches_on(page)
    by_hand = told.of(page).crosses
    if by_hand is not None:
        return by_hand
    return told.every if room is None else room


def stitches_on_all(chart: Chart, told: ToldStitches, pages: Iterable[int]) -> int | None:
    """The crosses of all those pages together; None where one of them is not known."""
    total = 0
    for page in pages:
        here = stitches_on(chart, told, page)
        if here is None:
            return None
        total += here
    return total


def _check_count(where: str, what: str, count: int, least: int) -> None:
    if not least <= count <= MOST_ON_A_PAGE:
        raise BadChart(
            f"{where} is said to have {count:,} {what}",
            f"give a whole number from {least} to {MOST_ON_A_PAGE:,}",
        )
