"""When the page is finished: plain cases by hand, laws of the range, and what cannot be told."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from service.errors import BadLog
from service.pace.calendar import HORIZON, DaysToCome
from service.pace.forecast import Finish, NotEnough, finish_of, outlook
from tests.pace.logs import daily, day, entry, finish, rest, seen, settled, updates

LOGS = st.lists(st.integers(0, 600), min_size=10, max_size=70)


def test_an_even_pace_is_finished_on_the_day_that_anybody_would_count() -> None:
    log = settled(daily([100] * 28))
    for left, days in ((1, 1), (100, 1), (101, 2), (1_000, 10)):
        assert finish(log, left) == Finish(day(28 + days), day(28 + days), day(28 + days))


def test_a_day_of_rest_to_come_is_passed_over() -> None:
    log = settled([*daily([100] * 28), rest(31, 37)])
    assert finish(log, 200).middle == day(30)
    assert finish(log, 300).middle == day(38)
    assert finish(log, 300).earliest == day(38)


def test_who_stitches_on_weekends_alone_finishes_on_one() -> None:
    log = settled(daily([0, 0, 0, 0, 0, 300, 400] * 4))
    assert finish(log, 300).middle == day(34)
    assert finish(log, 301).middle == day(35)
    assert finish(log, 701).middle == day(41)
    for left in range(50, 3_000, 170):
        told = finish(log, left)
        assert {told.earliest.weekday(), told.middle.weekday()} <= {5, 6}


def test_the_log_of_the_references_gives_its_range() -> None:
    """The log of ten days of which the limits are checked in tests/outside: 1,125 stitches left are
    12 days in the middle, by hand: 1,125 / 95 = 11.8."""
    log = settled(daily([120, 0, 85, 200, 150, 0, 95, 110, 130, 60]))
    told = finish(log, 1_125)
    assert told.middle == day(22)
    # By hand, with t = 1.3830 and s = 62.8: 95 h +- 86.9 sqrt(h + h^2 / 10) is 1,125 at 8.3 and 18.5,
    # so the range is from the day after the 8th to the 18th.
    assert (told.earliest, told.latest) == (day(19), day(28))


@given(LOGS, st.integers(1, 9_000))
def test_the_middle_lies_within_the_range(stitches: list[int], left: int) -> None:
    assume(sum(stitches[-7:]) > 0)
    log = settled(daily(stitches))
    found = outlook(log, day(len(stitches) + 1))
    assume(not isinstance(found, NotEnough))
    told = finish_of(seen(log), left)
    assume(not isinstance(told, NotEnough))
    assert isinstance(told, Finish)
    assert told.earliest <= told.middle
    assert told.latest is None or told.middle <= told.latest


@given(LOGS, st.integers(1, 5_000), st.integers(1, 3_000))
def test_more_stitches_left_are_finished_no_sooner(
    stitches: list[int], left: int, more: int
) -> None:
    log = settled(daily(stitches))
    assume(not isinstance(outlook(log, day(len(stitches) + 1)), NotEnough))
    one, other = finish_of(seen(log), left), finish_of(seen(log), left + more)
    assume(isinstance(one, Finish) and isinstance(other, Finish))
    assert isinstance(one, Finish)
    assert isinstance(other, Finish)
    assert one.earliest <= other.earliest
    assert one.middle <= other.middle
    assert one.latest is None or other.latest is None or one.latest <= other.latest


@given(LOGS, st.integers(1, 9_000))
def test_a_higher_confidence_is_a_wider_range_around_the_same_middle(
    stitches: list[int], left: int
) -> None:
    log = settled(daily(stitches))
    assume(not isinstance(outlook(log, day(len(stitches) + 1)), NotEnough))
    told = [finish_of(seen(log, confidence=each), left) for each in (0.5, 0.8, 0.95)]
    assume(all(isinstance(each, Finish) for each in told))
    narrow, usual, wide = [each for each in told if isinstance(each, Finish)]
    assert narrow.middle == usual.middle == wide.middle
    assert wide.earliest <= usual.earliest <= narrow.earliest
    latest = [each.latest for each in (narrow, usual, wide)]
    known = [each for each in latest if each is not None]
    assert known == sorted(known)
    assert latest[: len(known)] == known


def test_an_uneven_pace_may_have_no_latest_day() -> None:
    told = finish(settled(daily([100] + [0] * 7 + [900] + [0] * 4 + [100])), 4_000)
    assert told.latest is None
    assert told.earliest < told.middle


def test_what_is_not_logged_as_finished_is_finished_today_at_the_earliest() -> None:
    log = settled(daily([100] * 28))
    late = seen(log, today=day(40))
    told = finish_of(late, 300)
    assert told == Finish(day(40), day(40), day(40))


def test_nothing_left_is_finished_today() -> None:
    log = settled(daily([100] * 28))
    assert finish_of(seen(log), 0) == Finish(day(29), day(29), day(29))


def test_more_than_20_years_ahead_is_not_told() -> None:
    log = settled(daily([1] * 28))
    told = finish_of(seen(log), HORIZON + 1)
    assert isinstance(told, NotEnough)
    assert "20 years" in told.why
    assert isinstance(finish_of(seen(log), HORIZON), Finish)


def test_where_there_is_not_enough_log_it_says_so_in_a_sentence() -> None:
    nothing = outlook(settled([]), day(1))
    few = outlook(settled(daily([100] * 9)), day(10))
    idle = outlook(settled([entry(1, 500), *daily([0] * 80)[-1:]]), day(81))
    old = outlook(settled(daily([100] * 28)), day(51))
    rested = outlook(settled([*daily([100] * 28), rest(29, 48)]), day(51))
    for told, words in (
        (nothing, "Nothing is logged of the game's piece yet."),
        (few, "it tells of 9 of the 10 days that are needed"),
        (idle, "Nothing was stitched on the game's piece since"),
        (old, "Nothing is logged since 2026-03-29, which is 22 days"),
    ):
        assert isinstance(told, NotEnough)
        assert words in told.why
        assert told.why.endswith(".")
    assert not isinstance(rested, NotEnough)
    assert not isinstance(outlook(settled(daily([100] * 28)), day(50)), NotEnough)


def test_who_tells_an_update_a_month_is_not_silent_after_four_weeks() -> None:
    log = settled(updates((30, 3_000), (60, 2_800), (90, 3_100)))
    assert not isinstance(outlook(log, day(90 + 61)), NotEnough)
    told = outlook(log, day(90 + 62))
    assert isinstance(told, NotEnough)
    assert "which is 61 days" in told.why


@pytest.mark.parametrize("confidence", [0.49, 1, -1, float("nan")])
def test_a_range_that_cannot_be_told_is_refused(confidence: float) -> None:
    with pytest.raises(BadLog, match=r"ask for 0\.5 to 0\.99"):
        outlook(settled(daily([100] * 28)), day(29), confidence)


def test_updates_give_a_range_too() -> None:
    log = settled(updates((7, 400), (15, 1_200), (20, 350), (30, 1_050)))
    told = finish(log, 1_000)
    assert told.earliest < told.middle < (told.latest or told.middle)
    assert told.middle == day(30) + timedelta(days=10)


def test_days_to_come_are_counted_by_what_they_are_worth() -> None:
    days = DaysToCome(day(1), (0.5, 0.5, 1, 1, 1, 1.5, 1.5), [(day(3), day(4))])
    assert days.shares[:7] == [0.5, 0.5, 0, 0, 1, 1.5, 1.5]
    assert [days.number_of(worth) for worth in (0, 0.5, 0.6, 1, 1.1, 5)] == [0, 1, 2, 2, 5, 7]
    assert [days.nearest_to(worth) for worth in (0.2, 0.3, 1.4, 1.6)] == [0, 1, 4, 5]
    assert days.from_working_day(3) == 5
    assert days.number_of(1e9) is None
