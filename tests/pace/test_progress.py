"""How far page and chart are, in total, by update, a day and by piece."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.chart.grid import Chart
from service.chart.stitches import PageTold, ToldStitches
from service.errors import BadLog
from service.pace.entry import Details
from service.pace.forecast import Finish, NotEnough
from service.pace.progress import since
from service.pace.rounds import RoundPlan
from service.pace.situation import Situation
from tests.pace.logs import daily, day, entry, settled

TOLD = ToldStitches(every=1_000)
PIECES = [
    entry(1, 300),
    replace(entry(2, 900, "since last time", page=None, piece="The winter runner"), number=2),
    replace(entry(3, 200), number=3),
    replace(entry(3, 100, page=None, piece="Basket"), number=4),
    replace(entry(9, 50), number=5),
]


def situation(
    entries: list[object],
    *,
    stitched: tuple[int, ...] = (),
    told: ToldStitches = TOLD,
    today: int = 30,
) -> Situation:
    log = settled(entries, told.every)  # type: ignore[arg-type]
    in_hand = () if 41 in stitched else (41,)
    return Situation(Chart(9, 7), told, frozenset(stitched), in_hand, log, day(today))


def test_page_and_chart_in_percent() -> None:
    here = situation([*daily([250, 150])], stitched=(40, 50))
    [page] = here.pages_in_hand
    assert (page.done, page.total, page.left, page.percent) == (400, 1_000, 600, 40)
    chart = here.whole_chart
    assert (chart.pages_done, chart.pages) == (2, 63)
    assert (chart.done, chart.total) == (2_400, 63_000)
    assert chart.percent == pytest.approx(100 * 2_400 / 63_000)


def test_where_stitches_are_not_known_the_chart_is_told_in_pages() -> None:
    here = situation(daily([5])[:1], stitched=(1, 2, 3), told=ToldStitches())  # type: ignore[arg-type]
    assert here.whole_chart.done is None
    assert here.whole_chart.percent == pytest.approx(100 * 3 / 63)
    assert here.pages_in_hand[0].percent is None
    assert here.pages_in_hand[0].state == "in work"
    finish, opening = here.next_round(RoundPlan(), 0.8)
    assert isinstance(finish, NotEnough)
    assert "The stitches of page 41 are not known" in finish.why
    assert opening is None
    with pytest.raises(BadLog, match="stitches of page 41 are not known: tell them by hand"):
        here.needed("page", day(60), 0.8)


def test_a_page_called_stitched_has_all_its_crosses_whatever_was_logged() -> None:
    here = situation([*daily([250])], stitched=(41,))
    assert (here.page(41).done, here.page(41).state) == (1_000, "done")
    assert here.whole_chart.done == 1_000


def test_crosses_done_and_details_to_come() -> None:
    told = ToldStitches(1_000, {41: PageTold(backstitch=60, beads=10)})
    details = entry(2, 0, details=Details(backstitch=20, beads=10))
    here = situation([entry(1, 1_000), details], told=told)
    [page] = here.pages_in_hand
    assert page.state == "crosses done, details to come"
    assert page.details_to_come == ("backstitch",)
    stitched = situation([entry(1, 1_000), details], told=told, stitched=(41,))
    assert [one.page for one in stitched.details_to_come] == [41]
    more = replace(entry(3, 0, details=Details(backstitch=40)), number=3)
    assert situation([entry(1, 1_000), details, more], told=told).pages_in_hand[0].state == "done"


def test_every_update_tells_what_it_brought_and_how_far_that_took_page_and_chart() -> None:
    here = situation([*daily([250, 0, 150])], stitched=(1, 2))
    assert [(one.day, one.stitches, one.done, one.percent) for one in here.updates] == [
        (day(1), 250, 250, 25),
        (day(3), 150, 400, 40),
    ]
    # Two pages were stitched before anything was logged.
    assert [one.chart_percent for one in here.updates] == [
        pytest.approx(100 * 2_250 / 63_000),
        pytest.approx(100 * 2_400 / 63_000),
    ]


def test_totals_by_piece_since_a_day() -> None:
    told = since(settled(PIECES), day(2), day(5))
    assert [(one.piece, one.stitches) for one in told.pieces] == [
        ("", 200),
        ("Basket", 100),
        ("The winter runner", 900),
    ]
    assert (told.of_game, told.in_all) == (200, 1_200)
    assert told.share == pytest.approx(1 / 6)
    assert told.a_day == 50


def test_without_a_stitch_there_is_no_share() -> None:
    told = since(settled([]), day(2), day(5))
    assert (told.in_all, told.share, told.a_day) == (0, None, 0)
    with pytest.raises(BadLog, match="is before"):
        since(settled([]), day(5), day(2))


@given(st.lists(st.tuples(st.sampled_from(["", "A", "B"]), st.integers(0, 90)), max_size=30))
def test_the_totals_of_the_pieces_are_all_that_was_logged(told: list[tuple[str, int]]) -> None:
    entries = [
        entry(n, each, page=None if piece else 41, piece=piece)
        for n, (piece, each) in enumerate(told, 1)
    ]
    found = since(settled(entries), day(1), day(30))
    assert found.in_all == sum(each for _, each in told)
    assert found.of_game == sum(each for piece, each in told if not piece)


def test_the_chart_is_finished_after_all_that_is_left_of_it() -> None:
    here = situation(
        [*daily([100] * 28)], stitched=tuple(range(1, 41)), told=ToldStitches(2_900), today=29
    )
    finish = here.chart_finish(0.8)
    assert isinstance(finish, Finish)
    # 100 left on page 41 and 22 pages of 2,900, at 100 a day.
    assert finish.middle == day(28 + 1 + 22 * 29)
    assert here.needed("chart", day(28 + 1 + 22 * 29), 0.8).a_day == pytest.approx(100)
    calendar = here.calendar(RoundPlan(), 0.8, 3)
    assert not isinstance(calendar, NotEnough)
    assert len(calendar) == 3


def test_on_the_last_page_there_is_no_next_round() -> None:
    others = tuple(page for page in range(1, 64) if page != 41)
    here = situation([*daily([10] * 28)], stitched=others, today=29)
    finish, opening = here.next_round(RoundPlan(), 0.8)
    assert isinstance(finish, Finish)
    assert opening is None
    assert here.calendar(RoundPlan(), 0.8, 9) == ()


def test_without_a_page_in_hand_that_is_said() -> None:
    here = situation([*daily([10] * 28)], stitched=(41,), today=29)
    finish, _ = here.next_round(RoundPlan(), 0.8)
    assert finish == NotEnough("No page is in hand: put one in hand first.")
    assert here.calendar(RoundPlan(), 0.8, 9) == finish
