"""Which pages are joined to a page."""

from __future__ import annotations

import pytest

from service.chart.grid import Cell, Chart, Joined

# 1 2 3 / 4 5 6 / 7 8 9
SQUARE = Chart(3, 3)
# 1 . 2 / 3 4 5 / 6 . 7
WITH_HOLES = Chart(3, 3, no_page=frozenset({Cell(2, 1), Cell(2, 3)}))
# 1 2 3 / 6 5 4 / 7 8 9
FORTH = Chart(3, 3, back_and_forth=True)


def joined_as(chart: Chart, joined: Joined) -> Chart:
    return Chart(
        chart.columns,
        chart.rows,
        back_and_forth=chart.back_and_forth,
        no_page=chart.no_page,
        joined=joined,
    )


@pytest.mark.parametrize(
    ("chart", "page", "by_edge", "by_corner_too"),
    [
        pytest.param(SQUARE, 1, {2, 4}, {2, 4, 5}, id="corner"),
        pytest.param(SQUARE, 4, {1, 5, 7}, {1, 2, 5, 7, 8}, id="side"),
        pytest.param(SQUARE, 5, {2, 4, 6, 8}, {1, 2, 3, 4, 6, 7, 8, 9}, id="inside"),
        pytest.param(SQUARE, 3, {2, 6}, {2, 5, 6}, id="the end of a row is not joined to the next"),
        pytest.param(WITH_HOLES, 1, {3}, {3, 4}, id="a cell without a page joins nothing"),
        pytest.param(WITH_HOLES, 4, {3, 5}, {1, 2, 3, 5, 6, 7}, id="holes above and below"),
        pytest.param(FORTH, 3, {2, 4}, {2, 4, 5}, id="the turn of back and forth is an edge"),
        pytest.param(FORTH, 1, {2, 6}, {2, 5, 6}, id="back and forth: the page below is 6"),
        pytest.param(Chart(1, 1), 1, set(), set(), id="a single page"),
        pytest.param(Chart(4, 1), 2, {1, 3}, {1, 3}, id="a single row"),
    ],
)
def test_joined_pages_share_an_edge_or_if_the_game_says_so_a_corner(
    chart: Chart, page: int, by_edge: set[int], by_corner_too: set[int]
) -> None:
    assert joined_as(chart, "edge").neighbours(page) == by_edge
    assert joined_as(chart, "edge or corner").neighbours(page) == by_corner_too


def test_edges_stay_edges_where_corners_join_too() -> None:
    assert joined_as(SQUARE, "edge or corner").edge_neighbours(5) == {2, 4, 6, 8}
