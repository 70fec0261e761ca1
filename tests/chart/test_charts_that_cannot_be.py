"""Charts that are refused, each with one sentence that says what to do."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from service.chart.grid import Cell, Chart, DesignSize
from service.errors import BadChart

# Words that no type checker lets through still come in from a stored row or a script's option.
UNKNOWN: Any = "spiral"
EVERY_CELL = frozenset({Cell(1, 1), Cell(2, 1)})


@pytest.mark.parametrize(
    ("made", "sentence"),
    [
        pytest.param(
            lambda: Chart(0, 7),
            "the chart has 0 columns: give a number of columns from 1 up.",
            id="0 columns",
        ),
        pytest.param(
            lambda: Chart(9, -7),
            "the chart has -7 rows: give a number of rows from 1 up.",
            id="rows below 0",
        ),
        pytest.param(
            lambda: Chart(101, 100),
            "a chart of 101 columns and 100 rows has 10100 cells: "
            "give columns and rows that make at most 10000.",
            id="more than 10,000 cells",
        ),
        pytest.param(
            lambda: Chart(9, 7, no_page=frozenset({Cell(3, 3), Cell(10, 1)})),
            "the cell in column 10, row 1 is said to carry no page but is not on the chart: "
            "name columns from 1 to 9 and rows from 1 to 7.",
            id="a cell outside",
        ),
        pytest.param(
            lambda: Chart(9, 7, no_page=frozenset({Cell(0, 1)})),
            "the cell in column 0, row 1 is said to carry no page but is not on the chart: "
            "name columns from 1 to 9 and rows from 1 to 7.",
            id="a cell counted from 0",
        ),
        pytest.param(
            lambda: Chart(2, 1, no_page=EVERY_CELL),
            "no cell of the chart carries a page: leave at least one page.",
            id="no page left",
        ),
        pytest.param(
            lambda: Chart(9, 7, order=UNKNOWN),
            "the order of the pages is 'spiral': give one of across, down.",
            id="an unknown order",
        ),
        pytest.param(
            lambda: Chart(9, 7, start=UNKNOWN),
            "the corner where the numbers start is 'spiral': "
            "give one of top left, top right, bottom left, bottom right.",
            id="an unknown corner",
        ),
        pytest.param(
            lambda: Chart(9, 7, joined=UNKNOWN),
            "the kind of joining is 'spiral': give one of edge, edge or corner.",
            id="an unknown kind of joining",
        ),
        pytest.param(
            lambda: Chart(9, 7, size=DesignSize(640, 560, 80, 80)),
            "the chart has 9 columns and 7 rows but the design's size makes 8 and 7: "
            "give only one of the two, or make them agree.",
            id="grid and size differ",
        ),
        pytest.param(
            lambda: DesignSize(-640, 560, 80, 80),
            "the design's width is -640 stitches: give a whole number from 1 to 100000.",
            id="negative stitches",
        ),
        pytest.param(
            lambda: DesignSize(640, 0, 80, 80),
            "the design's height is 0 stitches: give a whole number from 1 to 100000.",
            id="no height",
        ),
        pytest.param(
            lambda: DesignSize(640, 560, 0, 80),
            "the page's width is 0 stitches: give a whole number from 1 to 100000.",
            id="pages without width",
        ),
        pytest.param(
            lambda: DesignSize(640, 560, 80, 100_001),
            "the page's height is 100001 stitches: give a whole number from 1 to 100000.",
            id="a page of metres",
        ),
        pytest.param(
            lambda: DesignSize(640, 560, 70, 90, overlap=70),
            "the overlap is 70 stitches on pages of 70 x 90: give a whole number from 0 to 69.",
            id="overlap as large as the page",
        ),
        pytest.param(
            lambda: DesignSize(640, 560, 70, 90, overlap=-1),
            "the overlap is -1 stitches on pages of 70 x 90: give a whole number from 0 to 69.",
            id="overlap below 0",
        ),
    ],
)
def test_a_chart_that_cannot_be_is_refused_in_one_sentence(
    made: Callable[[], object], sentence: str
) -> None:
    with pytest.raises(BadChart) as refused:
        made()
    assert str(refused.value) == sentence


def test_a_design_of_far_too_many_pages_is_refused_before_any_page_is_made() -> None:
    # Ten thousand million cells would not fit into memory.
    with pytest.raises(BadChart, match=r"give columns and rows that make at most 10000\.$"):
        Chart(100_000, 100_000)


def test_the_largest_chart_allowed_still_works() -> None:
    chart = Chart(100, 100)
    assert chart.page_count == 10_000
    assert chart.neighbours(10_000) == {9_900, 9_999}


def test_the_largest_overlap_allowed_is_one_less_than_the_page() -> None:
    assert DesignSize(640, 560, 70, 90, overlap=69).columns == 10
