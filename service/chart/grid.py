"""The grid of a chart: which cell carries which page, and which pages are joined."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, get_args

from service.errors import BadChart, PageNotOnChart

Order = Literal["across", "down"]
Corner = Literal["top left", "top right", "bottom left", "bottom right"]
Joined = Literal["edge", "edge or corner"]

ORDERS: tuple[Order, ...] = get_args(Order)
CORNERS: tuple[Corner, ...] = get_args(Corner)
JOINED: tuple[Joined, ...] = get_args(Joined)

#: The largest charts sold have a few hundred pages; more cells than this are a slip of typing.
MOST_CELLS = 10_000
#: A longer side would be metres of cloth on the finest fabric.
MOST_STITCHES = 100_000

_Steps = tuple[tuple[int, int], ...]
_OVER_AN_EDGE: _Steps = ((0, -1), (-1, 0), (1, 0), (0, 1))
_OVER_A_CORNER: _Steps = ((-1, -1), (1, -1), (-1, 1), (1, 1))


@dataclass(frozen=True, slots=True, order=True)
class Cell:
    """A place on the grid, counted from 1 at the top left: `column` to the right, `row` down."""

    column: int
    row: int


@dataclass(frozen=True, slots=True)
class DesignSize:
    """A design's size and a full page's size, in stitches.

    `overlap` columns and rows of a page repeat its neighbour's as a guide; they are stitched
    once and counted once. Page sizes are given without the overlap.

    Raises:
        BadChart: a size below 1 or above 100,000 stitches, an overlap below 0 or as large as
            the page.
    """

    stitches_wide: int
    stitches_high: int
    page_wide: int
    page_high: int
    overlap: int = 0

    def __post_init__(self) -> None:
        for what, stitches in (
            ("the design's width", self.stitches_wide),
            ("the design's height", self.stitches_high),
            ("the page's width", self.page_wide),
            ("the page's height", self.page_high),
        ):
            if not 1 <= stitches <= MOST_STITCHES:
                raise BadChart(
                    f"{what} is {stitches} stitches",
                    f"give a whole number from 1 to {MOST_STITCHES}",
                )
        smaller = min(self.page_wide, self.page_high)
        if not 0 <= self.overlap < smaller:
            raise BadChart(
                f"the overlap is {self.overlap} stitches on pages of {self.page_wide} x "
                f"{self.page_high}",
                f"give a whole number from 0 to {smaller - 1}",
            )

    @property
    def columns(self) -> int:
        """How many pages the design is wide; the last may be narrower."""
        return -(-self.stitches_wide // self.page_wide)

    @property
    def rows(self) -> int:
        """How many pages the design is high; the last may be lower."""
        return -(-self.stitches_high // self.page_high)

    def stitches_in(self, cell: Cell) -> int:
        """The stitches of a full cover of that cell, those repeated as a guide left out."""
        before_wide = (cell.column - 1) * self.page_wide
        before_high = (cell.row - 1) * self.page_high
        wide = min(self.page_wide, self.stitches_wide - before_wide)
        high = min(self.page_high, self.stitches_high - before_high)
        return wide * high


@dataclass(frozen=True, slots=True)
class Chart:
    """A printed chart: a grid of `columns` x `rows` cells, numbered by the way it is printed.

    Numbers run `across` (row by row) or `down` (column by column) from the corner `start` and,
    where `back_and_forth`, turn round at the end of every line. Cells in `no_page` carry no page
    and no number. `joined` says which pages count as joined. `size` is known where the chart was
    made from the design's stitches.

    Raises:
        BadChart: no columns or rows, more than 10,000 cells, a cell outside the grid, no page
            left, a size that gives another grid, an unknown order, corner or kind of joining.
    """

    columns: int
    rows: int
    order: Order = "across"
    start: Corner = "top left"
    back_and_forth: bool = False
    no_page: frozenset[Cell] = frozenset()
    joined: Joined = "edge"
    size: DesignSize | None = None

    def __post_init__(self) -> None:
        _check_grid(self)
        _check_choice("order of the pages", self.order, ORDERS)
        _check_choice("corner where the numbers start", self.start, CORNERS)
        _check_choice("kind of joining", self.joined, JOINED)
        _check_no_page(self)

    @property
    def page_count(self) -> int:
        """How many pages there are; they are numbered 1 to this."""
        return self.columns * self.rows - len(self.no_page)

    @property
    def pages(self) -> range:
        """All page numbers, ascending."""
        return range(1, self.page_count + 1)

    def page_at(self, cell: Cell) -> int | None:
        """The page in that cell; None where it carries none or lies outside the grid."""
        return _numbering(self).page_at.get(cell)

    def cell_of(self, page: int) -> Cell:
        """The cell that carries `page`.

        Raises:
            PageNotOnChart: there is no such page.
        """
        if not 1 <= page <= self.page_count:
            raise PageNotOnChart(page, self.page_count)
        return _numbering(self).cells[page - 1]

    def neighbours(self, page: int) -> frozenset[int]:
        """The pages joined to `page`, as this game says: by an edge, or by an edge or a corner.

        Raises:
            PageNotOnChart: there is no such page.
        """
        steps = _OVER_AN_EDGE
        if self.joined == "edge or corner":
            steps += _OVER_A_CORNER
        return self._pages_over(page, steps)

    def edge_neighbours(self, page: int) -> frozenset[int]:
        """The pages that share an edge with `page`, whatever the game calls joined.

        Raises:
            PageNotOnChart: there is no such page.
        """
        return self._pages_over(page, _OVER_AN_EDGE)

    def stitches_on(self, page: int) -> int | None:
        """The stitches of a full cover of `page`; None where the design's size is not known.

        Raises:
            PageNotOnChart: there is no such page.
        """
        cell = self.cell_of(page)
        return None if self.size is None else self.size.stitches_in(cell)

    def _pages_over(self, page: int, steps: _Steps) -> frozenset[int]:
        here = self.cell_of(page)
        page_at = _numbering(self).page_at
        beside = (Cell(here.column + right, here.row + down) for right, down in steps)
        return frozenset(page_at[cell] for cell in beside if cell in page_at)


def chart_of_design(
    size: DesignSize,
    *,
    order: Order = "across",
    start: Corner = "top left",
    back_and_forth: bool = False,
    no_page: frozenset[Cell] = frozenset(),
    joined: Joined = "edge",
) -> Chart:
    """The chart that a design of that size is printed on.

    Pages are cut from the design's top left, so the last column and row may be smaller,
    wherever the numbers start.

    Raises:
        BadChart: as for Chart.
    """
    return Chart(size.columns, size.rows, order, start, back_and_forth, no_page, joined, size)


def corner_page(chart: Chart, corner: Corner) -> int | None:
    """The page in that corner of the grid; None where the corner's cell carries none."""
    high, side = corner.split()
    column = 1 if side == "left" else chart.columns
    row = 1 if high == "top" else chart.rows
    return chart.page_at(Cell(column, row))


def centre_pages(chart: Chart) -> tuple[int, ...]:
    """The pages of the one, two or four cells in the grid's centre, ascending.

    Cells without a page are left out, so there may be none.
    """
    columns = {(chart.columns + 1) // 2, chart.columns // 2 + 1}
    rows = {(chart.rows + 1) // 2, chart.rows // 2 + 1}
    found = (chart.page_at(Cell(column, row)) for column in columns for row in rows)
    return tuple(sorted(page for page in found if page is not None))


@dataclass(frozen=True, slots=True)
class _Numbering:
    """Both ways between pages and cells: `cells[page - 1]`, `page_at[cell]`."""

    cells: tuple[Cell, ...]
    page_at: dict[Cell, int]


# A chart is asked for its pages with every comment, and made anew with every request.
@lru_cache(maxsize=64)
def _numbering(chart: Chart) -> _Numbering:
    cells = tuple(cell for cell in _cells_in_order(chart) if cell not in chart.no_page)
    return _Numbering(cells, {cell: page for page, cell in enumerate(cells, start=1)})


def _cells_in_order(chart: Chart) -> Iterator[Cell]:
    """All cells as the numbers run, those without a page too."""
    columns = range(1, chart.columns + 1)
    rows = range(1, chart.rows + 1)
    if chart.start.endswith("right"):
        columns = columns[::-1]
    if chart.start.startswith("bottom"):
        rows = rows[::-1]
    across = chart.order == "across"
    lines, places = (rows, columns) if across else (columns, rows)
    for turn, line in enumerate(lines):
        # Lines turn by their place on the paper, also where a line before has no page at all.
        backwards = chart.back_and_forth and turn % 2 == 1
        for place in places[::-1] if backwards else places:
            yield Cell(place, line) if across else Cell(line, place)


def _check_grid(chart: Chart) -> None:
    for what, count in (("columns", chart.columns), ("rows", chart.rows)):
        if count < 1:
            raise BadChart(f"the chart has {count} {what}", f"give a number of {what} from 1 up")
    if chart.columns * chart.rows > MOST_CELLS:
        raise BadChart(
            f"a chart of {chart.columns} columns and {chart.rows} rows has "
            f"{chart.columns * chart.rows} cells",
            f"give columns and rows that make at most {MOST_CELLS}",
        )
    size = chart.size
    if size is not None and (size.columns, size.rows) != (chart.columns, chart.rows):
        raise BadChart(
            f"the chart has {chart.columns} columns and {chart.rows} rows but the design's size "
            f"makes {size.columns} and {size.rows}",
            "give only one of the two, or make them agree",
        )


def _check_choice(what: str, chosen: str, known: tuple[str, ...]) -> None:
    if chosen not in known:
        raise BadChart(f"the {what} is {chosen!r}", f"give one of {', '.join(known)}")


def _check_no_page(chart: Chart) -> None:
    for cell in sorted(chart.no_page):
        if not (1 <= cell.column <= chart.columns and 1 <= cell.row <= chart.rows):
            raise BadChart(
                f"the cell in column {cell.column}, row {cell.row} is said to carry no page but "
                "is not on the chart",
                f"name columns from 1 to {chart.columns} and rows from 1 to {chart.rows}",
            )
    if chart.page_count < 1:
        raise BadChart("no cell of the chart carries a page", "leave at least one page")
