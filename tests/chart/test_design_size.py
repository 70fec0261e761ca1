"""Charts made from stitches, and how many stitches each page holds."""

from __future__ import annotations

import pytest

from service.chart.grid import Cell, Chart, DesignSize, chart_of_design


@pytest.mark.parametrize(
    ("wide", "high", "columns", "rows"),
    [
        pytest.param(640, 560, 8, 7, id="whole pages only"),
        pytest.param(641, 560, 9, 7, id="one stitch more needs a column"),
        pytest.param(640, 561, 8, 8, id="one stitch more needs a row"),
        pytest.param(80, 80, 1, 1, id="one page"),
        pytest.param(3, 2, 1, 1, id="smaller than a page"),
    ],
)
def test_a_design_is_cut_into_as_many_pages_as_it_needs(
    wide: int, high: int, columns: int, rows: int
) -> None:
    chart = chart_of_design(DesignSize(wide, high, 80, 80))
    assert (chart.columns, chart.rows) == (columns, rows)


def test_the_last_column_and_row_may_be_smaller() -> None:
    # 70 + 70 + 10 wide, 90 + 20 high.
    chart = chart_of_design(DesignSize(150, 110, 70, 90))
    assert [chart.stitches_on(page) for page in chart.pages] == [
        70 * 90,
        70 * 90,
        10 * 90,
        70 * 20,
        70 * 20,
        10 * 20,
    ]


def test_the_smaller_pages_are_right_and_below_wherever_the_numbers_start() -> None:
    chart = chart_of_design(DesignSize(150, 110, 70, 90), order="down", start="bottom right")
    # Numbered 6 4 2 / 5 3 1.
    assert [chart.stitches_on(page) for page in chart.pages] == [
        10 * 20,
        10 * 90,
        70 * 20,
        70 * 90,
        70 * 20,
        70 * 90,
    ]


def test_overlap_is_stitched_once_and_counted_once() -> None:
    plain = chart_of_design(DesignSize(150, 110, 70, 90))
    guided = chart_of_design(DesignSize(150, 110, 70, 90, overlap=3))
    assert guided.page_count == plain.page_count
    counted = [guided.stitches_on(page) for page in guided.pages]
    assert counted == [plain.stitches_on(page) for page in plain.pages]
    assert sum(stitches or 0 for stitches in counted) == 150 * 110


def test_the_stitches_of_a_cell_without_a_page_are_on_no_page() -> None:
    chart = chart_of_design(DesignSize(150, 110, 70, 90), no_page=frozenset({Cell(3, 1)}))
    assert chart.page_count == 5
    assert sum(chart.stitches_on(page) or 0 for page in chart.pages) == 150 * 110 - 10 * 90


def test_a_chart_of_columns_and_rows_does_not_know_its_stitches() -> None:
    assert Chart(9, 7).stitches_on(1) is None


def test_everything_else_about_the_chart_is_kept() -> None:
    chart = chart_of_design(
        DesignSize(150, 110, 70, 90),
        order="down",
        start="top right",
        back_and_forth=True,
        no_page=frozenset({Cell(1, 1)}),
        joined="edge or corner",
    )
    assert chart == Chart(
        columns=3,
        rows=2,
        order="down",
        start="top right",
        back_and_forth=True,
        no_page=frozenset({Cell(1, 1)}),
        joined="edge or corner",
        size=DesignSize(150, 110, 70, 90),
    )
