"""Where a game stands on a day: its chart, its pages and its log, and what follows from them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import Literal

from service.chart.grid import Chart
from service.chart.stitches import ToldStitches, stitches_on
from service.errors import BadLog
from service.pace.forecast import Finish, NotEnough, Outlook, finish_of, outlook
from service.pace.progress import (
    ChartProgress,
    PageProgress,
    Update,
    chart_progress,
    left_in_all,
    page_progress,
    updates_of,
)
from service.pace.rounds import (
    Needed,
    Opening,
    RoundPlan,
    RoundToCome,
    needed,
    next_opening,
    rounds_to_come,
)
from service.pace.settled import SettledLog

Aim = Literal["page", "chart"]
_UNKNOWN = (
    "The stitches of the chart's pages are not all known: tell them by hand, or the design's size."
)


@dataclass(frozen=True)
class Situation:
    """A game as of a day: `stitched` pages, those `in_hand`, and the log until then."""

    chart: Chart
    told: ToldStitches
    stitched: frozenset[int]
    in_hand: tuple[int, ...]
    log: SettledLog
    as_of: date

    @cached_property
    def totals(self) -> dict[int, int | None]:
        """The crosses of every page of the chart."""
        return {page: stitches_on(self.chart, self.told, page) for page in self.chart.pages}

    def page(self, page: int) -> PageProgress:
        """How far a page is."""
        total, told = self.totals[page], self.told.of(page)
        return page_progress(self.log, page, total, told, stitched=page in self.stitched)

    @cached_property
    def pages_in_hand(self) -> tuple[PageProgress, ...]:
        """How far the pages in hand are, the one put in hand last coming last."""
        return tuple(self.page(page) for page in self.in_hand)

    @cached_property
    def details_to_come(self) -> tuple[PageProgress, ...]:
        """The stitched pages whose crosses are done and whose details are not."""
        told = sorted(self.stitched & set(self.told.pages))
        return tuple(page for page in map(self.page, told) if page.details_to_come)

    @property
    def whole_chart(self) -> ChartProgress:
        """How far the chart is."""
        return chart_progress(self.log, self.totals, self.stitched)

    @property
    def updates(self) -> tuple[Update, ...]:
        """What each entry on the game's piece brought."""
        return updates_of(self.log, self.totals, self.stitched)

    def outlook(self, confidence: float) -> Outlook | NotEnough:
        """What the log says of the days to come."""
        return outlook(self.log, self.as_of, confidence)

    def next_round(
        self, plan: RoundPlan, confidence: float
    ) -> tuple[Finish | NotEnough, Opening | None]:
        """When all pages in hand are finished, and when the next round is to open."""
        amount = self._in_hand()
        if isinstance(amount, NotEnough):
            return amount, None
        seen = self.outlook(confidence)
        if isinstance(seen, NotEnough):
            return seen, None
        finish, opening = next_opening(seen, *amount, plan)
        return finish, opening if self._unstitched() else None

    def calendar(
        self, plan: RoundPlan, confidence: float, most: int
    ) -> tuple[RoundToCome, ...] | NotEnough:
        """The rounds to come, with the finish of the page that each chooses."""
        amount = self._in_hand()
        seen = self.outlook(confidence)
        if isinstance(amount, NotEnough):
            return amount
        if isinstance(seen, NotEnough):
            return seen
        sizes = self._sizes()
        if isinstance(sizes, NotEnough):
            return sizes
        return rounds_to_come(seen, amount, sizes, plan, most)

    def chart_finish(self, confidence: float) -> Finish | NotEnough:
        """When the whole chart is finished."""
        seen, left = self.outlook(confidence), self._left_of_chart()
        if isinstance(seen, NotEnough):
            return seen
        return left if isinstance(left, NotEnough) else finish_of(seen, left)

    def needed(self, aim: Aim, by: date, confidence: float) -> Needed:
        """What it would take to finish the pages in hand, or the chart, by the end of a day.

        Raises:
            BadLog: the stitches are not known, no page is in hand, or the day cannot be.
        """
        left: int | NotEnough
        if aim == "chart":
            left = self._left_of_chart()
        else:
            amount = self._in_hand()
            left = amount if isinstance(amount, NotEnough) else amount[0]
        if isinstance(left, NotEnough):
            what, _, todo = left.why.rstrip(".").partition(": ")
            raise BadLog(what, todo or "put a page in hand first")
        return needed(left, by, self.as_of, self.outlook(confidence))

    def _in_hand(self) -> tuple[int, int] | NotEnough:
        """The stitches left on the pages in hand, and all of theirs."""
        if not self.in_hand:
            return NotEnough("No page is in hand: put one in hand first.")
        left = left_in_all(self.pages_in_hand)
        if left is None:
            unknown = next(page.page for page in self.pages_in_hand if page.total is None)
            return NotEnough(
                f"The stitches of page {unknown} are not known: tell them by hand, or the "
                "design's size."
            )
        return left, sum(page.total or 0 for page in self.pages_in_hand)

    def _unstitched(self) -> list[int]:
        taken = self.stitched | set(self.in_hand)
        return [page for page in self.chart.pages if page not in taken]

    def _sizes(self) -> list[int] | NotEnough:
        sizes = [self.totals[page] for page in self._unstitched()]
        known = [size for size in sizes if size is not None]
        return known if len(known) == len(sizes) else NotEnough(_UNKNOWN)

    def _left_of_chart(self) -> int | NotEnough:
        sizes, left = self._sizes(), left_in_all(self.pages_in_hand)
        if isinstance(sizes, NotEnough) or left is None:
            return NotEnough(_UNKNOWN)
        return sum(sizes) + left
