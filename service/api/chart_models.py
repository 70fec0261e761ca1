"""The chart in JSON."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from service.api.shapes import In, Out, example
from service.chart.grid import Cell, Chart, Corner, DesignSize, Joined, Order, chart_of_design
from service.errors import BadChart

_CELL = Field(description="Column and row, counted from 1 at the top left.", strict=False)


class ChartIn(In):
    """A chart by its pages (`columns`, `rows`) or by its stitches (design's and page's size)."""

    model_config = example(
        {"columns": 9, "rows": 7, "order": "across", "start": "top left", "no_page": [[9, 7]]}
    )

    columns: int | None = None
    rows: int | None = None
    stitches_wide: int | None = Field(default=None, description="The design's width in stitches.")
    stitches_high: int | None = Field(default=None, description="The design's height.")
    page_wide: int | None = Field(default=None, description="A full page's width in stitches.")
    page_high: int | None = Field(default=None, description="A full page's height.")
    overlap: int = Field(
        default=0, description="Rows and columns of the neighbouring page repeated as a guide."
    )
    order: Order = "across"
    start: Corner = "top left"
    back_and_forth: bool = False
    no_page: list[Annotated[tuple[int, int], _CELL]] = Field(default=[], max_length=10_000)
    joined: Joined = "edge"

    def to_chart(self) -> Chart:
        """The chart itself.

        Raises:
            BadChart: it cannot be, or it is given neither or both ways.
        """
        no_page = frozenset(Cell(column, row) for column, row in self.no_page)
        if size := self._size():
            return chart_of_design(
                size,
                order=self.order,
                start=self.start,
                back_and_forth=self.back_and_forth,
                no_page=no_page,
                joined=self.joined,
            )
        if self.columns is None or self.rows is None:
            raise BadChart(
                "the chart's size is missing",
                "give columns and rows, or the design's and the page's size in stitches",
            )
        return Chart(
            self.columns,
            self.rows,
            self.order,
            self.start,
            self.back_and_forth,
            no_page,
            self.joined,
        )

    def _size(self) -> DesignSize | None:
        sides = (self.stitches_wide, self.stitches_high, self.page_wide, self.page_high)
        if all(side is None for side in sides):
            return None
        wide, high, page_wide, page_high = sides
        if wide is None or high is None or page_wide is None or page_high is None:
            raise BadChart(
                "the chart's size in stitches is incomplete",
                "give stitches_wide, stitches_high, page_wide and page_high together",
            )
        if self.columns is not None or self.rows is not None:
            raise BadChart(
                "the chart's size is given in pages and in stitches", "give one of the two"
            )
        return DesignSize(wide, high, page_wide, page_high, self.overlap)


class DesignSizeOut(Out):
    """The design's and a full page's size, in stitches."""

    stitches_wide: int
    stitches_high: int
    page_wide: int
    page_high: int
    overlap: int


class ChartOut(Out):
    """A chart, with how many pages it has; they are numbered 1 to `page_count`."""

    model_config = example(
        {
            "columns": 9,
            "rows": 7,
            "page_count": 63,
            "order": "across",
            "start": "top left",
            "back_and_forth": False,
            "no_page": [],
            "joined": "edge",
            "size": None,
        }
    )

    columns: int
    rows: int
    page_count: int
    order: Order
    start: Corner
    back_and_forth: bool
    no_page: list[tuple[int, int]]
    joined: Joined
    size: DesignSizeOut | None

    @classmethod
    def of(cls, chart: Chart) -> ChartOut:
        """The chart for JSON."""
        size = chart.size
        return cls(
            columns=chart.columns,
            rows=chart.rows,
            page_count=chart.page_count,
            order=chart.order,
            start=chart.start,
            back_and_forth=chart.back_and_forth,
            no_page=[(cell.column, cell.row) for cell in sorted(chart.no_page)],
            joined=chart.joined,
            size=None
            if size is None
            else DesignSizeOut(
                stitches_wide=size.stitches_wide,
                stitches_high=size.stitches_high,
                page_wide=size.page_wide,
                page_high=size.page_high,
                overlap=size.overlap,
            ),
        )
