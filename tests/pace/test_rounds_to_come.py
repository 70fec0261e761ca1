"""When the next round must open, the rounds to come, and what it would take: counted by hand."""

from __future__ import annotations

from datetime import timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.errors import BadLog
from service.pace.forecast import Finish, NotEnough
from service.pace.rounds import Needed, Opening, RoundPlan, needed, next_opening, rounds_to_come
from tests.pace.logs import daily, day, rest, seen, settled

EVEN = settled(daily([100] * 28))
UNEVEN = settled(daily([100, 0, 300, 50, 0, 220, 160, 90] * 7))


def test_a_round_closes_with_its_margin_before_the_page_is_finished() -> None:
    """3,000 left of 4,000, 100 a day: finished on day 58, half of it on day 38."""
    finish, opening = next_opening(seen(EVEN), 3_000, 4_000, RoundPlan(4, 2))
    assert isinstance(finish, Finish)
    assert finish.middle == day(58)
    # Half of 4,000 is 2,000: 1,000 more than were done, ten days on.
    assert opening == Opening(day(38), day(52), day(42), too_late=False)


def test_it_opens_no_later_than_the_latest_day_though_little_is_seen() -> None:
    _, opening = next_opening(seen(EVEN), 3_000, 4_000, RoundPlan(20, 3))
    assert opening == Opening(day(35), day(35), day(55), too_late=False)


def test_where_the_latest_day_has_passed_it_opens_today_and_that_is_said() -> None:
    _, opening = next_opening(seen(EVEN), 300, 4_000, RoundPlan(7, 1))
    assert opening is not None
    assert (opening.sensible, opening.latest, opening.too_late) == (day(29), day(23), True)


def test_the_latest_opening_is_reckoned_from_the_earliest_finish_not_the_middle() -> None:
    finish, opening = next_opening(seen(UNEVEN), 2_000, 4_000, RoundPlan(3, 1))
    assert isinstance(finish, Finish)
    assert opening is not None
    assert finish.earliest < finish.middle
    assert opening.latest == finish.earliest - timedelta(days=4)


@pytest.mark.parametrize(("round_days", "margin"), [(0, 1), (366, 1), (2, -1), (2, 366)])
def test_a_plan_that_cannot_be_is_refused(round_days: int, margin: int) -> None:
    with pytest.raises(BadLog, match="give a round of 1 to 365 days"):
        RoundPlan(round_days, margin)


def test_the_calendar_of_even_pages_at_an_even_pace_is_counted_by_hand() -> None:
    rounds = rounds_to_come(seen(EVEN), (300, 1_000), [1_000] * 3, RoundPlan(2, 1), 9)
    finishes = [one.finish for one in rounds]
    assert [one.middle for one in finishes if isinstance(one, Finish)] == [
        day(41),
        day(51),
        day(61),
    ]
    assert [one.number for one in rounds] == [1, 2, 3]
    # The page in hand is finished on day 31: the first round opened late or opens today, on day 29.
    assert [one.latest for one in rounds] == [day(28), day(38), day(48)]
    assert [one.opens for one in rounds] == [day(29), day(36), day(46)]


def test_the_calendar_widens_with_every_round() -> None:
    rounds = rounds_to_come(seen(UNEVEN), (2_000, 4_000), [4_000] * 20, RoundPlan(), 20)
    widths = [
        (one.finish.latest - one.finish.earliest).days
        for one in rounds
        if isinstance(one.finish, Finish) and one.finish.latest
    ]
    assert len(widths) == 20
    assert all(before <= after for before, after in pairwise(widths))
    assert widths[-1] > 5 * widths[0]


def test_pages_of_different_size_widen_the_range_until_the_last_one() -> None:
    plan = RoundPlan()
    even = rounds_to_come(seen(EVEN), (0, 1_000), [1_000] * 4, plan, 4)
    uneven = rounds_to_come(seen(EVEN), (0, 1_000), [400, 1_600, 1_700, 300], plan, 4)
    width = [
        [(one.finish.latest - one.finish.earliest).days for one in rounds]  # type: ignore[union-attr,operator]
        for rounds in (even, uneven)
    ]
    assert width[0] == [0, 0, 0, 0]
    # Once all four are stitched it does not matter in which order they were.
    assert min(width[1][:3]) > 5
    assert width[1][3] == 0


def test_no_more_rounds_than_pages_or_than_wished() -> None:
    plan = RoundPlan()
    assert len(rounds_to_come(seen(EVEN), (5, 10), [10] * 5, plan, 3)) == 3
    assert rounds_to_come(seen(EVEN), (5, 10), [], plan, 3) == ()


def test_the_calendar_ends_where_nothing_more_can_be_told() -> None:
    rounds = rounds_to_come(seen(EVEN), (5, 10), [500_000] * 9, RoundPlan(), 9)
    assert isinstance(rounds[-1].finish, NotEnough)
    assert len(rounds) == 2


# What would it take.


def test_what_it_takes_counts_today_and_the_day_itself_and_leaves_rests_out() -> None:
    log = settled([*daily([100] * 28), rest(31, 34)])
    found = needed(1_200, day(38), day(29), seen(log))
    assert found == Needed(day(38), 1_200, 6, 200, 2)
    assert needed(90, day(29), day(29), seen(log)).a_day == 90


def test_without_a_pace_what_it_takes_is_told_without_comparing() -> None:
    found = needed(700, day(7), day(1), NotEnough("Nothing is logged yet."))
    assert (found.days, found.a_day, found.times_the_pace) == (7, 100, None)


@pytest.mark.parametrize(
    ("by", "says"),
    [(28, "give a later day"), (29 + 7_305, "give an earlier day"), (32, "every day until")],
)
def test_a_day_that_cannot_be_is_refused(by: int, says: str) -> None:
    log = settled([*daily([100] * 28), rest(29, 40)])
    with pytest.raises(BadLog, match=says):
        needed(700, day(by), day(29), seen(log))


@given(st.integers(0, 100_000), st.integers(1, 400))
def test_as_many_a_day_as_it_takes_are_enough_and_one_fewer_are_not(
    stitches: int, days: int
) -> None:
    found = needed(stitches, day(29 + days - 1), day(29), seen(EVEN))
    assert found.days == days
    assert found.a_day * days == pytest.approx(stitches)
