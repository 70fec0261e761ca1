"""The chart of a record: which cell carries which page, and which pages are joined."""

from __future__ import annotations

from typing import Any

Cell = tuple[int, int]

_OVER_AN_EDGE = ((0, -1), (-1, 0), (1, 0), (0, 1))
_OVER_A_CORNER = ((-1, -1), (1, -1), (-1, 1), (1, 1))


class Pages:
    """The pages of a chart by their numbers, from 1 on in the order in which they are printed."""

    def __init__(self, chart: dict[str, Any]) -> None:
        empty = {tuple(cell) for cell in chart["no_page"]}
        cells = [cell for cell in _cells_in_order(chart) if cell not in empty]
        self._cell_of = dict(enumerate(cells, start=1))
        self._page_at = {cell: page for page, cell in self._cell_of.items()}
        self._corners = chart["joined"] == "edge or corner"

    def __contains__(self, page: int) -> bool:
        """Whether the chart has that page."""
        return page in self._cell_of

    def over_an_edge(self, page: int) -> set[int]:
        """The pages that share an edge with this one."""
        return self._over(page, _OVER_AN_EDGE)

    def joined_to(self, page: int) -> set[int]:
        """The pages joined to this one, as the game says joined."""
        return self._over(page, _OVER_AN_EDGE + (_OVER_A_CORNER if self._corners else ()))

    def _over(self, page: int, steps: tuple[Cell, ...]) -> set[int]:
        column, row = self._cell_of[page]
        beside = [(column + right, row + down) for right, down in steps]
        return {self._page_at[cell] for cell in beside if cell in self._page_at}


def _cells_in_order(chart: dict[str, Any]) -> list[Cell]:
    columns = list(range(1, chart["columns"] + 1))
    rows = list(range(1, chart["rows"] + 1))
    if chart["start"].endswith("right"):
        columns.reverse()
    if chart["start"].startswith("bottom"):
        rows.reverse()
    across = chart["order"] == "across"
    cells = []
    for turn, line in enumerate(rows if across else columns):
        places = columns if across else rows
        # Every second line runs back, also where one before it carries no page.
        if chart["back_and_forth"] and turn % 2:
            places = places[::-1]
        cells += [(place, line) if across else (line, place) for place in places]
    return cells
