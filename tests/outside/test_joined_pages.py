"""Joined pages against lattices that other people define and publish.

Sources:
- libpysal 4.14, `libpysal.weights.lat2W` ("Create a W object for a regular lattice"): rook
  contiguity is joined by an edge, queen contiguity by an edge or a corner. Its units are counted
  from 0 by rows, so unit 0 is page 1. Its lattice of a single cell is empty:
  asking it for unit 0 raises KeyError.
- networkx 3.6, `grid_2d_graph` (edges) and `strong_product` of two paths (edges and corners: the
  king's graph, MathWorld, "King Graph").
"""

from __future__ import annotations

import itertools

import networkx as nx
import pytest
from libpysal.weights import lat2W

from service.chart.grid import CORNERS, ORDERS, Cell, Chart, Corner, Joined, Order

SIDES = range(1, 13)
SIZES = [(rows, columns) for rows in SIDES for columns in SIDES]
LONG = [(1, 63), (63, 1), (2, 50), (20, 31), (31, 20), (40, 40)]


def pairs(chart: Chart) -> int:
    """How many pairs of joined pages there are."""
    return sum(len(chart.neighbours(page)) for page in chart.pages) // 2


def joined_cells(chart: Chart) -> set[frozenset[tuple[int, int]]]:
    """The joined pairs by their places (row and column from 0), whatever the numbers."""

    def place(page: int) -> tuple[int, int]:
        cell = chart.cell_of(page)
        return cell.row - 1, cell.column - 1

    return {
        frozenset((place(page), place(other)))
        for page in chart.pages
        for other in chart.neighbours(page)
    }


def graph_of(rows: int, columns: int, joined: Joined) -> nx.Graph[tuple[int, int]]:
    if joined == "edge":
        return nx.grid_2d_graph(rows, columns)
    return nx.strong_product(nx.path_graph(rows), nx.path_graph(columns))


@pytest.mark.parametrize(("joined", "rook"), [("edge", True), ("edge or corner", False)])
def test_joined_pages_are_libpysals_rook_and_queen_neighbours(
    *, joined: Joined, rook: bool
) -> None:
    for rows, columns in SIZES + LONG:
        if (rows, columns) == (1, 1):
            continue
        chart = Chart(columns, rows, joined=joined)
        published = lat2W(rows, columns, rook=rook).neighbors
        assert {page: chart.neighbours(page) for page in chart.pages} == {
            unit + 1: frozenset(other + 1 for other in others) for unit, others in published.items()
        }, f"{rows} rows, {columns} columns"


def test_a_chart_of_one_page_joins_nothing_where_libpysal_has_no_unit() -> None:
    with pytest.raises(KeyError):
        lat2W(1, 1)[0]
    assert Chart(1, 1, joined="edge or corner").neighbours(1) == frozenset()


@pytest.mark.parametrize("joined", ["edge", "edge or corner"])
def test_joined_pages_are_the_edges_of_networkx_grids(joined: Joined) -> None:
    for rows, columns in SIZES + LONG:
        expected = {frozenset(edge) for edge in graph_of(rows, columns, joined).edges}
        assert joined_cells(Chart(columns, rows, joined=joined)) == expected, (rows, columns)


@pytest.mark.parametrize("joined", ["edge", "edge or corner"])
@pytest.mark.parametrize("start", CORNERS)
@pytest.mark.parametrize("order", ORDERS)
@pytest.mark.parametrize("back_and_forth", [False, True], ids=["one way", "back and forth"])
def test_the_way_of_numbering_changes_no_joined_pair(
    *, order: Order, start: Corner, back_and_forth: bool, joined: Joined
) -> None:
    for rows, columns in [(1, 1), (1, 6), (7, 9), (8, 8), (6, 5)]:
        chart = Chart(
            columns,
            rows,
            order=order,
            start=start,
            back_and_forth=back_and_forth,
            joined=joined,
        )
        expected = {frozenset(edge) for edge in graph_of(rows, columns, joined).edges}
        assert joined_cells(chart) == expected, (rows, columns)


@pytest.mark.parametrize("joined", ["edge", "edge or corner"])
def test_cells_without_a_page_are_nodes_taken_out_of_the_networkx_grid(joined: Joined) -> None:
    rows, columns = 4, 5
    places = list(itertools.product(range(rows), range(columns)))
    for taken_out in itertools.combinations(places, 3):
        graph = graph_of(rows, columns, joined)
        graph.remove_nodes_from(taken_out)
        no_page = frozenset(Cell(column + 1, row + 1) for row, column in taken_out)
        chart = Chart(columns, rows, no_page=no_page, joined=joined)
        assert joined_cells(chart) == {frozenset(edge) for edge in graph.edges}, taken_out


@pytest.mark.parametrize(
    ("rows", "columns", "by_edge", "by_corner_too"),
    [
        pytest.param(1, 5, 4, 4, id="1 x 5"),
        pytest.param(2, 2, 4, 6, id="2 x 2"),
        pytest.param(3, 3, 12, 20, id="3 x 3"),
        pytest.param(4, 5, 31, 55, id="4 x 5"),
        pytest.param(7, 9, 110, 206, id="7 x 9"),
        pytest.param(9, 7, 110, 206, id="9 x 7"),
        pytest.param(8, 8, 112, 210, id="8 x 8"),
        pytest.param(10, 10, 180, 342, id="10 x 10"),
    ],
)
def test_the_number_of_joined_pairs(
    rows: int, columns: int, by_edge: int, by_corner_too: int
) -> None:
    # The closed forms R(C-1) + C(R-1) and, added for corners, 2(R-1)(C-1), worked out by hand.
    assert pairs(Chart(columns, rows)) == by_edge
    assert pairs(Chart(columns, rows, joined="edge or corner")) == by_corner_too


def test_square_charts_joined_by_corners_too_have_the_pairs_of_oeis_a002943() -> None:
    # OEIS A002943, a(n) = 2n(2n+1), edges of the king's graph of n+1 by n+1; its terms from memory.
    terms = [0, 6, 20, 42, 72, 110, 156, 210, 272, 342]
    squares = [Chart(side, side, joined="edge or corner") for side in range(1, 11)]
    assert [pairs(chart) for chart in squares] == terms


def test_the_share_of_joined_pairs_is_the_one_in_libpysals_docstring() -> None:
    # libpysal.weights.lat2W, docstring, Examples: "%.3f" % lat2W(3, 3).pct_nonzero is '29.630'.
    chart = Chart(3, 3)
    assert f"{100 * 2 * pairs(chart) / chart.page_count**2:.3f}" == "29.630"


@pytest.mark.parametrize(
    ("joined", "corner", "side", "inner"),
    [
        pytest.param("edge", 2, 3, 4, id="edge"),
        pytest.param("edge or corner", 3, 5, 8, id="edge or corner"),
    ],
)
def test_corners_sides_and_inner_pages_have_the_published_numbers_of_neighbours(
    joined: Joined, corner: int, side: int, inner: int
) -> None:
    # networkx, its own tests of generators.lattice, TestGrid2DGraph, degree distribution of an
    # m x n grid: 4 corners, 2(m+n) - 8 sides, (m-2)(n-2) inner; checked there for 5 x 6.
    chart = Chart(6, 5, joined=joined)
    counts = [len(chart.neighbours(page)) for page in chart.pages]
    assert {n: counts.count(n) for n in set(counts)} == {corner: 4, side: 14, inner: 12}
