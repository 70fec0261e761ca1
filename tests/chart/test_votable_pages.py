"""Which pages a round may choose, and the sentence that says so."""

from __future__ import annotations

from typing import Any

import pytest

from service.chart.grid import Cell, Chart, Joined
from service.chart.votable import NextFrom, Votable, votable_pages
from service.errors import BadRules, PageNotOnChart

#  1  2  3  4
#  5  6  7  8
#  9 10 11 12
CHART = Chart(4, 3)
PREVIOUS: NextFrom = "the previous page"
ANY: NextFrom = "any stitched page"


def pages(*numbers: int) -> frozenset[int]:
    return frozenset(numbers)


@pytest.mark.parametrize("next_from", [PREVIOUS, ANY])
def test_the_first_round_may_choose_any_page(next_from: NextFrom) -> None:
    assert votable_pages(CHART, pages(), next_from, None) == Votable(
        frozenset(range(1, 13)),
        widened=False,
        why="No page is stitched yet, so any page may be chosen.",
    )


@pytest.mark.parametrize(
    ("stitched", "previous", "expected"),
    [
        pytest.param(pages(6), 6, pages(2, 5, 7, 10), id="one page in the middle"),
        pytest.param(pages(1), 1, pages(2, 5), id="a corner"),
        pytest.param(pages(6, 7), 7, pages(3, 8, 11), id="the page before is not chosen again"),
        pytest.param(pages(1, 12), 12, pages(8, 11), id="older pages do not matter"),
    ],
)
def test_the_next_page_is_joined_to_the_previous_one(
    stitched: frozenset[int], previous: int, expected: frozenset[int]
) -> None:
    votable = votable_pages(CHART, stitched, PREVIOUS, previous)
    assert votable == Votable(
        expected,
        widened=False,
        why=f"The next page must share an edge with page {previous}, chosen last.",
    )


@pytest.mark.parametrize("previous", [1, 12, None])
def test_the_next_page_is_joined_to_any_stitched_one(previous: int | None) -> None:
    votable = votable_pages(CHART, pages(1, 12), ANY, previous)
    assert votable == Votable(
        pages(2, 5, 8, 11),
        widened=False,
        why="The next page must share an edge with a page that is stitched or in hand.",
    )


@pytest.mark.parametrize(
    ("joined", "expected", "border"),
    [
        pytest.param("edge", pages(2, 5), "an edge", id="edge"),
        pytest.param("edge or corner", pages(2, 5, 6), "an edge or a corner", id="corner too"),
    ],
)
def test_joined_is_what_the_game_says_in_the_pages_and_in_the_words(
    joined: Joined, expected: frozenset[int], border: str
) -> None:
    chart = Chart(4, 3, joined=joined)
    for next_from in (PREVIOUS, ANY):
        votable = votable_pages(chart, pages(1), next_from, 1)
        assert votable.pages == expected
        assert f"share {border} with" in votable.why


def test_a_dead_end_widens_to_any_stitched_page_and_says_so() -> None:
    # 1 is shut in by 2 and 5.
    votable = votable_pages(CHART, pages(1, 2, 5), PREVIOUS, 1)
    assert votable == Votable(
        pages(3, 6, 9),
        widened=True,
        why="No unstitched page shares an edge with page 1, chosen last, so the next page must "
        "share an edge with a page that is stitched or in hand.",
    )


def test_a_corner_is_no_dead_end_where_corners_join() -> None:
    votable = votable_pages(Chart(4, 3, joined="edge or corner"), pages(1, 2, 5), PREVIOUS, 1)
    assert (votable.pages, votable.widened) == (pages(6), False)


def test_a_game_begun_elsewhere_widens_where_the_page_chosen_last_is_not_known() -> None:
    votable = votable_pages(CHART, pages(1), PREVIOUS, None)
    assert votable == Votable(
        pages(2, 5),
        widened=True,
        why="It is not known which page was chosen last, so the next page must share an edge "
        "with a page that is stitched or in hand.",
    )


def test_a_previous_page_unpicked_again_widens_to_the_stitched_ones() -> None:
    votable = votable_pages(CHART, pages(1), PREVIOUS, 12)
    assert votable == Votable(
        pages(2, 5),
        widened=True,
        why="Page 12, chosen last, is not stitched now, so the next page must share an edge "
        "with a page that is stitched or in hand.",
    )


def test_with_everything_unpicked_again_any_page_may_be_chosen() -> None:
    votable = votable_pages(CHART, pages(), PREVIOUS, 12)
    assert (votable.pages, votable.widened) == (frozenset(range(1, 13)), False)


# 1 . 2 / 3 . 4: the empty column cuts the chart in two.
TWO_PARTS = Chart(3, 2, no_page=frozenset({Cell(2, 1), Cell(2, 2)}))


@pytest.mark.parametrize("next_from", [PREVIOUS, ANY])
def test_a_finished_part_of_a_divided_chart_widens_to_every_page_left(next_from: NextFrom) -> None:
    votable = votable_pages(TWO_PARTS, pages(1, 3), next_from, 3)
    assert votable == Votable(
        pages(2, 4),
        widened=True,
        why="No page left shares an edge with a page that is stitched or in hand, "
        "so any page left may be chosen.",
    )


def test_a_divided_chart_stays_in_its_part_while_that_has_pages() -> None:
    assert votable_pages(TWO_PARTS, pages(1), ANY, 1).pages == pages(3)


@pytest.mark.parametrize("next_from", [PREVIOUS, ANY])
@pytest.mark.parametrize("chart", [CHART, Chart(1, 1)], ids=["twelve pages", "one page"])
def test_a_finished_chart_has_nothing_left_and_says_so(chart: Chart, next_from: NextFrom) -> None:
    votable = votable_pages(chart, frozenset(chart.pages), next_from, 1)
    assert votable == Votable(
        frozenset(),
        widened=False,
        why="Every page of the chart is stitched or in hand, so there is none left to choose.",
    )


@pytest.mark.parametrize(
    ("stitched", "previous", "wrong"),
    [
        pytest.param(pages(1, 13), 1, 13, id="a stitched page"),
        pytest.param(pages(1), 99, 99, id="the previous page"),
        pytest.param(pages(), 99, 99, id="the previous page, nothing stitched"),
        pytest.param(pages(0, 1), None, 0, id="page 0"),
    ],
)
def test_pages_off_the_chart_are_refused(
    stitched: frozenset[int], previous: int | None, wrong: int
) -> None:
    with pytest.raises(PageNotOnChart) as refused:
        votable_pages(CHART, stitched, ANY, previous)
    assert str(refused.value) == (f"page {wrong} is not on the chart: name a page from 1 to 12.")


def test_an_unknown_rule_for_the_next_page_is_refused() -> None:
    unknown: Any = "the prettiest page"
    with pytest.raises(BadRules) as refused:
        votable_pages(CHART, pages(1), unknown, 1)
    assert str(refused.value) == (
        "the next page is to come from 'the prettiest page': "
        "give one of the previous page, any stitched page."
    )
