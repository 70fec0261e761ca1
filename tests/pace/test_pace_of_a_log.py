"""How the pace is told: empty days, weekends, one big weekend, rests, updates, and the minimum."""

from __future__ import annotations

import math
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.pace.estimate import Pace, pace_of
from service.pace.stretches import Stretch, stretches_of
from service.pace.weekdays import weekdays_of
from tests.pace.logs import daily, day, rest, settled, updates


def pace(stitches: list[int]) -> Pace:
    found = pace_of(stretches_of(settled(daily(stitches))))
    assert found is not None
    return found


@pytest.mark.parametrize("days", [0, 1, 9])
def test_below_the_stated_minimum_there_is_no_pace(days: int) -> None:
    assert pace_of(stretches_of(settled(daily([100] * days)))) is None
    assert pace_of(stretches_of(settled(updates((10, 500), (20, 500))))) is None
    assert pace_of(stretches_of(settled(updates((3, 500), (6, 500), (9, 500))))) is None
    assert pace_of(stretches_of(settled(updates((3, 500), (6, 500), (10, 500))))) is not None


def test_days_without_stitches_count() -> None:
    assert pace([100, 0] * 14).rate == pytest.approx(50, rel=0.02)
    assert pace([0, 0, 0, 0, 0, 0, 100] * 4).rate == pytest.approx(100 / 7)


def test_only_the_last_eight_weeks_are_told() -> None:
    slow_then_fast = [10] * 70 + [200] * 56
    found = pace(slow_then_fast)
    assert (found.rate, found.days, found.variance) == (200, 56, 0)
    assert found.since == day(71)


def test_where_updates_are_further_apart_the_last_eight_of_them_are_told() -> None:
    told = updates(*((14 * number, 1_400) for number in range(1, 13)))
    found = pace_of(stretches_of(settled(told)))
    assert found is not None
    assert (found.rate, found.days, found.degrees) == (100, 112, 7)


def test_updates_of_one_steady_pace_have_no_variance_however_long_they_are() -> None:
    told = updates((4, 400), (10, 1_000), (13, 1_300 - 1_000), (21, 800), (30, 900))
    told[1] = told[1].__class__(10, day(10), "since last time", 600, page=41)
    found = pace_of(stretches_of(settled(told)))
    assert found is not None
    assert found.rate == 100
    assert found.variance == pytest.approx(0)


def test_weekends_alone_are_seen_as_a_habit_and_do_no_harm() -> None:
    weekend = [0, 0, 0, 0, 0, 300, 400]
    found = pace(weekend * 4)
    assert found.rate == 100
    assert found.variance == pytest.approx(0)
    assert found.by_weekday == pytest.approx((0, 0, 0, 0, 0, 3, 4), abs=0.01)


def test_one_big_weekend_is_counted_as_the_next_biggest_and_that_is_said() -> None:
    usual = [100, 120, 80, 100, 110, 90, 100] * 6
    before = pace(usual)
    usual[19] += 1_500
    usual[20] += 1_200
    found = pace(usual)
    assert found.big
    assert not before.big
    assert found.rate == pytest.approx(before.rate, rel=0.02)
    # Without that it would say half as much again.
    assert sum(usual[-42:]) / 42 > 1.5 * before.rate


def test_a_big_weekend_every_week_is_a_habit() -> None:
    found = pace([20, 20, 20, 20, 20, 600, 500] * 5)
    assert not found.big
    assert found.rate == pytest.approx(1_200 / 7)


def test_one_big_update_is_counted_as_the_next_biggest() -> None:
    told = updates((7, 700), (14, 650), (21, 4_000), (28, 720), (35, 690))
    found = pace_of(stretches_of(settled(told)))
    assert found is not None
    assert found.big
    assert found.rate == pytest.approx((700 + 650 + 720 + 720 + 690) / 35)


def test_a_rest_that_is_told_does_not_slow_the_pace() -> None:
    stitches = [100] * 14 + [0] * 7 + [100] * 14
    assert pace(stitches).rate == 80
    rested = pace_of(stretches_of(settled([*daily(stitches), rest(15, 21)])))
    assert rested is not None
    assert (rested.rate, rested.days) == (100, 28)


def test_fewer_than_three_weeks_are_rough() -> None:
    assert pace([100, 150] * 8).rough
    assert not pace([100, 150] * 11).rough


def test_an_even_log_has_no_weekdays_that_stand_out() -> None:
    weeks = [
        [Stretch(day(7 * w + d), 1, 100 + (d * 7 + w * 5) % 6) for d in range(1, 8)]
        for w in range(4)
    ]
    assert weekdays_of(weeks).drawn == 0
    assert weekdays_of(weeks).shares == (1.0,) * 7
    longer = [*weeks, [Stretch(day(31), 3, 100)]]
    assert weekdays_of(longer).shares == (1.0,) * 7


@given(st.lists(st.integers(0, 2_000), min_size=10, max_size=90), st.integers(2, 9))
def test_a_log_told_in_larger_units_is_the_same_pace(stitches: list[int], times: int) -> None:
    """Nothing in it is a number of stitches: ten times as many are ten times the pace."""
    if not any(stitches[:-9]):
        stitches[0] = 1
    small, large = pace(stitches), pace([each * times for each in stitches])
    assert math.isclose(large.rate, times * small.rate)
    assert math.isclose(large.variance, times**2 * small.variance, rel_tol=1e-6, abs_tol=1e-6)
    assert large.by_weekday == pytest.approx(small.by_weekday)
    assert sum(small.by_weekday) == pytest.approx(7)
    assert all(share >= -1e-9 for share in small.by_weekday)


def test_the_limits_of_a_steady_pace_are_that_pace() -> None:
    found = Pace(100, 0, 7, 56, date(2026, 1, 1), (1.0,) * 7)
    assert found.limits(0.95) == (100, 100)
