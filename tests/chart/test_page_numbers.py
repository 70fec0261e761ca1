"""Which cell carries which page, drawn as the printed chart is laid on a table."""

from __future__ import annotations

import pytest

from service.chart.grid import Cell, Chart, Corner, Order, centre_pages, corner_page
from service.errors import PageNotOnChart


def drawn(chart: Chart) -> str:
    """The chart's numbers as rows of text, a dot for a cell without a page."""
    rows = []
    for row in range(1, chart.rows + 1):
        pages = [chart.page_at(Cell(column, row)) for column in range(1, chart.columns + 1)]
        rows.append(" ".join("." if page is None else str(page) for page in pages))
    return " / ".join(rows)


@pytest.mark.parametrize(
    ("order", "start", "back_and_forth", "expected"),
    [
        pytest.param("across", "top left", False, "1 2 3 / 4 5 6", id="as one reads"),
        pytest.param("across", "top right", False, "3 2 1 / 6 5 4", id="across from top right"),
        pytest.param("across", "bottom left", False, "4 5 6 / 1 2 3", id="across from bottom left"),
        pytest.param(
            "across", "bottom right", False, "6 5 4 / 3 2 1", id="across from bottom right"
        ),
        pytest.param("down", "top left", False, "1 3 5 / 2 4 6", id="down"),
        pytest.param("down", "top right", False, "5 3 1 / 6 4 2", id="down from top right"),
        pytest.param("down", "bottom left", False, "2 4 6 / 1 3 5", id="down from bottom left"),
        pytest.param("down", "bottom right", False, "6 4 2 / 5 3 1", id="down from bottom right"),
        pytest.param("across", "top left", True, "1 2 3 / 6 5 4", id="back and forth"),
        pytest.param("across", "top right", True, "3 2 1 / 4 5 6", id="forth from top right"),
        pytest.param("across", "bottom left", True, "6 5 4 / 1 2 3", id="forth from bottom left"),
        pytest.param("down", "top left", True, "1 4 5 / 2 3 6", id="down and up"),
        pytest.param("down", "top right", True, "5 4 1 / 6 3 2", id="down and up from top right"),
        pytest.param("down", "bottom right", True, "6 3 2 / 5 4 1", id="up and down"),
    ],
)
def test_numbers_run_as_the_chart_is_printed(
    *, order: Order, start: Corner, back_and_forth: bool, expected: str
) -> None:
    chart = Chart(3, 2, order=order, start=start, back_and_forth=back_and_forth)
    assert drawn(chart) == expected


@pytest.mark.parametrize(
    ("chart", "expected"),
    [
        pytest.param(
            Chart(3, 2, no_page=frozenset({Cell(2, 1)})), "1 . 2 / 3 4 5", id="a hole above"
        ),
        pytest.param(
            Chart(3, 3, no_page=frozenset({Cell(1, 1), Cell(3, 3)}), back_and_forth=True),
            ". 1 2 / 5 4 3 / 6 7 .",
            id="two corners missing, back and forth",
        ),
        pytest.param(
            Chart(
                2,
                3,
                no_page=frozenset({Cell(1, 2), Cell(2, 2)}),
                back_and_forth=True,
            ),
            "1 2 / . . / 3 4",
            id="an empty row still turns the numbers",
        ),
        pytest.param(
            Chart(2, 2, "down", "bottom right", no_page=frozenset({Cell(2, 2)})),
            "3 1 / 2 .",
            id="the first cell carries none",
        ),
    ],
)
def test_numbering_skips_cells_without_a_page(chart: Chart, expected: str) -> None:
    assert drawn(chart) == expected


def test_a_page_and_its_cell_lead_to_one_another() -> None:
    chart = Chart(9, 7)
    assert chart.page_count == 63
    assert list(chart.pages) == list(range(1, 64))
    # Row 5 of 9 columns begins after 36 pages.
    assert chart.cell_of(42) == Cell(column=6, row=5)
    assert chart.page_at(Cell(column=6, row=5)) == 42


def test_cells_off_the_grid_carry_no_page() -> None:
    chart = Chart(9, 7)
    outside = [Cell(0, 1), Cell(10, 1), Cell(1, 0), Cell(1, 8), Cell(-1, -1)]
    assert [chart.page_at(cell) for cell in outside] == [None] * 5


@pytest.mark.parametrize("page", [0, -1, 64, 999])
def test_a_page_that_is_not_on_the_chart_is_refused_with_the_numbers_there_are(page: int) -> None:
    chart = Chart(9, 7)
    for ask in (chart.cell_of, chart.neighbours, chart.edge_neighbours, chart.stitches_on):
        with pytest.raises(PageNotOnChart) as refused:
            ask(page)
        assert str(refused.value) == (f"page {page} is not on the chart: name a page from 1 to 63.")
        assert (refused.value.page, refused.value.page_count) == (page, 63)


@pytest.mark.parametrize(
    ("chart", "corners"),
    [
        pytest.param(Chart(9, 7), (1, 9, 55, 63), id="as one reads"),
        pytest.param(Chart(9, 7, "down", "bottom right"), (63, 7, 57, 1), id="up from the right"),
        pytest.param(Chart(9, 7, back_and_forth=True), (1, 9, 55, 63), id="odd rows end right"),
        pytest.param(Chart(9, 6, back_and_forth=True), (1, 9, 54, 46), id="even rows end left"),
        pytest.param(Chart(1, 4), (1, 1, 4, 4), id="one column: left and right are one"),
        pytest.param(Chart(1, 1), (1, 1, 1, 1), id="one page is every corner"),
        pytest.param(
            Chart(3, 3, no_page=frozenset({Cell(3, 1)})), (1, None, 6, 8), id="a corner missing"
        ),
    ],
)
def test_the_corners_are_told_from_the_grid(
    chart: Chart, corners: tuple[int | None, int | None, int | None, int | None]
) -> None:
    asked: tuple[Corner, ...] = ("top left", "top right", "bottom left", "bottom right")
    assert tuple(corner_page(chart, corner) for corner in asked) == corners


@pytest.mark.parametrize(
    ("chart", "centre"),
    [
        pytest.param(Chart(9, 7), (32,), id="odd by odd: one"),
        pytest.param(Chart(4, 3), (6, 7), id="even by odd: two side by side"),
        pytest.param(Chart(3, 4), (5, 8), id="odd by even: two above one another"),
        pytest.param(Chart(4, 4), (6, 7, 10, 11), id="even by even: four"),
        pytest.param(Chart(1, 1), (1,), id="a single page"),
        pytest.param(Chart(1, 2), (1, 2), id="two pages"),
        pytest.param(Chart(4, 4, start="bottom right"), (6, 7, 10, 11), id="ascending anyhow"),
        pytest.param(
            Chart(4, 4, no_page=frozenset({Cell(2, 2), Cell(3, 3)})), (6, 9), id="two of four"
        ),
        pytest.param(Chart(3, 3, no_page=frozenset({Cell(2, 2)})), (), id="an empty centre"),
    ],
)
def test_the_centre_is_told_from_the_grid(chart: Chart, centre: tuple[int, ...]) -> None:
    assert centre_pages(chart) == centre
