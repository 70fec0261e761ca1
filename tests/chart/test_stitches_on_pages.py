"""How many stitches a page has: by the design's size, by hand, and where nobody knows."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.chart.grid import ORDERS, Cell, Chart, DesignSize, Order, chart_of_design
from service.chart.stitches import (
    MOST_ON_A_PAGE,
    PageTold,
    ToldStitches,
    check_told,
    stitches_on,
    stitches_on_all,
)
from service.errors import BadChart, PageNotOnChart

#: 65 x 50 stitches on pages of 20 x 30: four columns, the last 5 wide; two rows, the last 20 high.
SMALL = chart_of_design(DesignSize(65, 50, 20, 30))
NOTHING = ToldStitches()


def test_the_last_column_and_row_are_as_narrow_and_low_as_they_are() -> None:
    counted = [stitches_on(SMALL, NOTHING, page) for page in SMALL.pages]
    assert counted == [600, 600, 600, 150, 400, 400, 400, 100]


def test_they_are_the_same_pages_however_these_are_numbered() -> None:
    turned = chart_of_design(
        DesignSize(65, 50, 20, 30), order="down", start="bottom right", back_and_forth=True
    )
    # From the bottom right: column 4 upwards, column 3 downwards, and so on.
    assert [stitches_on(turned, NOTHING, page) for page in turned.pages] == [
        *(100, 150),
        *(600, 400),
        *(400, 600),
        *(600, 400),
    ]


def test_rows_and_columns_repeated_as_a_guide_are_counted_once() -> None:
    for overlap in (0, 2, 5, 19):
        chart = chart_of_design(DesignSize(65, 50, 20, 30, overlap))
        assert stitches_on_all(chart, NOTHING, chart.pages) == 65 * 50


def test_a_cell_without_a_page_has_no_stitches() -> None:
    chart = chart_of_design(DesignSize(65, 50, 20, 30), no_page=frozenset({Cell(4, 2), Cell(1, 1)}))
    assert [stitches_on(chart, NOTHING, page) for page in chart.pages] == [
        600,
        600,
        150,
        400,
        400,
        400,
    ]


@given(
    st.integers(1, 300),
    st.integers(1, 300),
    st.integers(1, 90),
    st.integers(1, 90),
    st.sampled_from(ORDERS),
)
def test_all_pages_together_have_the_stitches_of_the_design(
    wide: int, high: int, page_wide: int, page_high: int, order: Order
) -> None:
    size = DesignSize(wide, high, max(page_wide, wide // 40 + 1), max(page_high, high // 40 + 1))
    chart = chart_of_design(size, order=order)
    assert stitches_on_all(chart, NOTHING, chart.pages) == wide * high


def test_what_is_told_by_hand_goes_before_the_design_and_that_before_every_page() -> None:
    told = ToldStitches(every=555, pages={1: PageTold(crosses=480), 2: PageTold(beads=9)})
    assert [stitches_on(SMALL, told, page) for page in (1, 2, 4)] == [480, 600, 150]
    plain = Chart(4, 2)
    assert [stitches_on(plain, told, page) for page in (1, 2, 4)] == [480, 555, 555]


def test_where_nobody_knows_a_page_neither_it_nor_all_are_known() -> None:
    plain = Chart(4, 2)
    told = ToldStitches(pages={1: PageTold(crosses=480)})
    assert stitches_on(plain, told, 1) == 480
    assert stitches_on(plain, told, 2) is None
    assert stitches_on_all(plain, told, [1]) == 480
    assert stitches_on_all(plain, told, [1, 2]) is None
    with pytest.raises(PageNotOnChart):
        stitches_on(plain, told, 9)


WRONG: list[Any] = [
    pytest.param(ToldStitches(every=0), "every page is said to have 0 stitches", id="none"),
    pytest.param(ToldStitches(every=MOST_ON_A_PAGE + 1), "every page", id="too many"),
    pytest.param(
        ToldStitches(pages={1: PageTold(crosses=0)}), "page 1 is said to", id="a page of none"
    ),
    pytest.param(ToldStitches(pages={1: PageTold(beads=-1)}), "-1 beads", id="below 0"),
    pytest.param(ToldStitches(pages={4: PageTold(crosses=151)}), "has room for 150", id="no room"),
]


@pytest.mark.parametrize(("told", "says"), WRONG)
def test_stitches_that_cannot_be_are_refused(told: ToldStitches, says: str) -> None:
    with pytest.raises(BadChart, match=says):
        check_told(SMALL, told)


def test_a_page_that_is_not_there_is_refused() -> None:
    with pytest.raises(PageNotOnChart):
        check_told(SMALL, ToldStitches(pages={9: PageTold(crosses=5)}))
    check_told(SMALL, ToldStitches(every=600, pages={4: PageTold(150, 0, 0, 0)}))
