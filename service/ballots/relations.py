"""Pages told from another page, and what ranges, sums and broken digits may mean."""

from __future__ import annotations

from service.chart.grid import Cell, Chart

_STEPS = {"above": (0, -1), "below": (0, 1)}


def told_from(chart: Chart, page: int, relation: str) -> tuple[int, ...]:
    """The pages that stand so to `page` on this chart: above, below, later, earlier, beside."""
    if not 1 <= page <= chart.page_count:
        return ()
    if relation in {"later", "earlier"}:
        other = page + (1 if relation == "later" else -1)
        return (other,) if 1 <= other <= chart.page_count else ()
    if relation in _STEPS:
        right, down = _STEPS[relation]
        cell = chart.cell_of(page)
        other_page = chart.page_at(Cell(cell.column + right, cell.row + down))
        return () if other_page is None else (other_page,)
    return tuple(sorted(chart.edge_neighbours(page)))


def page_at(chart: Chart, row: int, column: int) -> tuple[int, ...]:
    """The page in this row and column, -1 the last, -2 the one before it; none where there is none."""
    row = chart.rows + 1 + row if row < 0 else row
    column = chart.columns + 1 + column if column < 0 else column
    if not (1 <= row <= chart.rows and 1 <= column <= chart.columns):
        return ()
    page = chart.page_at(Cell(column, row))
    return () if page is None else (page,)
