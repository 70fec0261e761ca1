"""Which pages a round may choose, so that the stitched pages stay joined."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from service.chart.grid import Chart
from service.errors import BadRules, PageNotOnChart

NextFrom = Literal["the previous page", "any stitched page"]
NEXT_FROM: tuple[NextFrom, ...] = get_args(NextFrom)


@dataclass(frozen=True, slots=True)
class Votable:
    """The pages a round may choose; `why` is a sentence for host and viewers.

    `widened` says that the game's own rule left no page and a wider one stands in for it.
    `pages` is empty only where the whole chart is stitched or in hand.
    """

    pages: frozenset[int]
    widened: bool
    why: str


def votable_pages(
    chart: Chart, stitched: frozenset[int], next_from: NextFrom, previous: int | None
) -> Votable:
    """The pages the next round may choose, once `stitched` are stitched or in hand.

    With nothing stitched it is round 1: all pages. Later, the unstitched pages joined to
    `previous` (the page chosen last, None where that is not known) or to any stitched page, as
    `next_from` says. Where the previous page has no unstitched neighbour, is not known or is no
    longer stitched, the round widens to any stitched page; where cells without a page cut the
    chart in parts and this part is done, to every page left. Both are said in `why`.

    Raises:
        PageNotOnChart: a stitched page or `previous` is not on the chart.
        BadRules: `next_from` is not one of the two.
    """
    if next_from not in NEXT_FROM:
        raise BadRules(
            f"the next page is to come from {next_from!r}", f"give one of {', '.join(NEXT_FROM)}"
        )
    _check_pages(chart, stitched if previous is None else stitched | {previous})
    left = frozenset(chart.pages) - stitched
    if not left:
        return Votable(
            left,
            widened=False,
            why="Every page of the chart is stitched or in hand, so there is none left to choose.",
        )
    if not stitched:
        return Votable(
            left, widened=False, why="No page is stitched yet, so any page may be chosen."
        )
    if next_from == "any stitched page":
        return _from_any(chart, stitched, left)
    return _from_previous(chart, stitched, left, previous)


def _from_previous(
    chart: Chart, stitched: frozenset[int], left: frozenset[int], previous: int | None
) -> Votable:
    if previous is None:
        return _from_any(chart, stitched, left, "It is not known which page was chosen last")
    if previous not in stitched:
        return _from_any(
            chart, stitched, left, f"Page {previous}, chosen last, is not stitched now"
        )
    pages = chart.neighbours(previous) & left
    if pages:
        return Votable(
            pages,
            widened=False,
            why=f"The next page must share {_border(chart)} with page {previous}, chosen last.",
        )
    return _from_any(
        chart,
        stitched,
        left,
        f"No unstitched page shares {_border(chart)} with page {previous}, chosen last",
    )


def _from_any(
    chart: Chart, stitched: frozenset[int], left: frozenset[int], dead_end: str = ""
) -> Votable:
    """Joined to any stitched page; `dead_end` says why the game's own rule gave none."""
    pages = left & _joined_to(chart, stitched)
    to_any = f"{_border(chart)} with a page that is stitched or in hand"
    if not pages:
        why = f"No page left shares {to_any}, so any page left may be chosen."
        return Votable(left, widened=True, why=why)
    rule = f"the next page must share {to_any}."
    if dead_end:
        return Votable(pages, widened=True, why=f"{dead_end}, so {rule}")
    return Votable(pages, widened=False, why=rule[0].upper() + rule[1:])


def _joined_to(chart: Chart, stitched: frozenset[int]) -> frozenset[int]:
    return frozenset().union(*(chart.neighbours(page) for page in stitched))


def _border(chart: Chart) -> str:
    return "an edge" if chart.joined == "edge" else "an edge or a corner"


def _check_pages(chart: Chart, pages: frozenset[int]) -> None:
    for page in sorted(pages):
        if page not in chart.pages:
            raise PageNotOnChart(page, chart.page_count)
