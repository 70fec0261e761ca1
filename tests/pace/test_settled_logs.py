"""What entries come to: by day, since last time, so far, percent; corrected, and in order."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.errors import BadLog
from service.pace.entry import Details, Entry
from service.pace.settled import up_to
from service.pace.standing import check_handed_in, standing_entries
from service.pace.stretches import stretches_of
from tests.pace.logs import PAGE, daily, day, entry, rest, settled, updates


def test_days_updates_totals_and_percent_come_to_the_same() -> None:
    by_day = daily([100, 0, 200, 50])
    since = updates((3, 300), (4, 50))
    so_far = [entry(3, 300, "so far"), entry(4, 350, "so far")]
    percent = [entry(3, 3_000, "percent"), entry(4, 3_500, "percent")]
    for log in (by_day, since, so_far, percent):
        assert settled(log, 1_000).done_on(PAGE) == 350
        assert settled(log[:-1], 1_000).done_on(PAGE) == 300


def test_a_percent_is_of_the_page_and_rounded_to_whole_stitches() -> None:
    log = settled([entry(1, 6_963, "percent")], 4_900)
    assert log.done_on(PAGE) == 3_412
    # Told roundly, it may be a little less than the stitches that were counted: then nothing is new.
    log = settled([entry(1, 3_412), entry(2, 6_900, "percent")], 4_900)
    assert log.done_on(PAGE) == 3_412


def test_since_last_time_reaches_back_to_the_day_after_the_last_entry_of_any_page() -> None:
    log = settled([entry(3, 100), entry(9, 600, "since last time", page=42)])
    assert [(one.first, one.last) for one in log.brought] == [(day(3), day(3)), (day(4), day(9))]


def test_the_first_total_counts_as_done_and_tells_no_pace_unless_its_first_day_is_told() -> None:
    unknown = settled([entry(5, 900, "so far"), entry(8, 1_200, "so far")])
    assert unknown.done_on(PAGE) == 1_200
    assert [(one.last, one.days, one.stitches) for one in stretches_of(unknown)] == [
        (day(8), 3, 300)
    ]
    known = settled([entry(5, 900, "so far", first=day(2)), entry(8, 1_200, "so far")])
    assert [one.days for one in stretches_of(known)] == [4, 3]


def test_days_between_entries_of_single_days_are_days_without_stitches() -> None:
    stretches = stretches_of(settled(daily([100, 0, 0, 50])))
    assert [(one.days, one.stitches) for one in stretches] == [(1, 100), (1, 0), (1, 0), (1, 50)]


def test_days_of_rest_are_not_among_the_days_unless_something_was_stitched_on_one() -> None:
    log = settled([entry(1, 100), entry(4, 30), entry(6, 50), rest(3, 5)])
    assert [(one.last, one.stitches) for one in stretches_of(log)] == [
        (day(1), 100),
        (day(2), 0),
        (day(4), 30),
        (day(6), 50),
    ]
    told = settled([*updates((4, 400), (14, 500)), rest(6, 12)])
    assert [one.days for one in stretches_of(told)] == [4, 3]


def test_stitches_on_two_pages_in_hand_are_one_pace_and_other_pieces_none_of_it() -> None:
    log = settled(
        [
            entry(1, 100),
            replace(entry(1, 40, page=42), number=2),
            replace(entry(1, 900, page=None, piece="A runner"), number=3),
        ]
    )
    assert [one.stitches for one in stretches_of(log)] == [140]
    assert (log.done_on(PAGE), log.done_on(42)) == (100, 40)


@given(st.lists(st.integers(0, 500), min_size=1, max_size=40))
def test_stretches_hold_every_stitch_and_every_day_once(stitches: list[int]) -> None:
    stretches = stretches_of(settled(daily(stitches)))
    first = next(n for n, each in enumerate(stitches, 1) if each or n == len(stitches))
    assert sum(one.stitches for one in stretches) == sum(stitches)
    assert sum(one.days for one in stretches) == len(stitches) - first + 1


def test_the_log_as_it_stood_on_a_day_keeps_the_rests_that_were_planned() -> None:
    log = settled([*daily([100, 200, 300]), rest(9, 12)])
    earlier = up_to(log, day(2))
    assert earlier.done_on(PAGE) == 300
    assert earlier.rests == ((day(9), day(12)),)


# Corrections.


def test_a_later_entry_stands_for_an_earlier_one_and_may_be_corrected_itself() -> None:
    log = [*daily([100, 200]), replace(entry(2, 250), number=3, corrects=2)]
    assert settled(log).done_on(PAGE) == 350
    log.append(replace(entry(3, 260), number=4, corrects=3))
    assert settled(log).done_on(PAGE) == 360
    assert [one.entry.number for one in standing_entries(log)] == [1, 4]
    # The entries that were corrected are still there.
    assert [one.amount for one in log] == [100, 200, 250, 260]


def test_an_entry_that_is_taken_back_is_nothing() -> None:
    log = [*daily([100, 200]), replace(entry(2, 0), number=3, corrects=2, taken_back=True)]
    assert settled(log).done_on(PAGE) == 100
    again = [*log, replace(entry(2, 180), number=4)]
    assert settled(again).done_on(PAGE) == 280


def test_a_correction_of_an_early_total_moves_what_the_next_one_brought() -> None:
    log = [entry(3, 300, "so far"), entry(6, 700, "so far")]
    corrected = [*log, replace(entry(3, 350, "so far"), number=7, corrects=3)]
    assert [one.stitches for one in settled(corrected).brought] == [350, 350]


def test_a_forgotten_day_may_be_filled_in() -> None:
    log = [entry(1, 100), entry(5, 50), replace(entry(3, 70), number=6)]
    assert [one.last for one in settled(log).brought] == [day(1), day(3), day(5)]


WRONG: list[Any] = [
    pytest.param([entry(1, 5), replace(entry(1, 6), number=2)], "second of that day", id="twice"),
    pytest.param(
        [*updates((5, 100)), replace(entry(3, 20), number=6)], "out of order", id="within an update"
    ),
    pytest.param(
        [entry(5, 100), replace(entry(3, 20, "since last time"), number=6)],
        "already tells of",
        id="an update before a day",
    ),
    pytest.param([entry(1, 4_901)], "4,901 stitches of the 4,900", id="more than the page has"),
    pytest.param([*daily([4_000, 901])], "4,901 stitches of", id="together more"),
    pytest.param(
        [entry(1, 300), entry(2, 200, "so far")], "200 stitches so far and 300", id="less"
    ),
    pytest.param([entry(1, 3_000), entry(2, 1_000, "percent")], "says 10 %", id="less percent"),
    pytest.param([replace(entry(1, 5), corrects=7)], "no entry 7", id="corrects nothing"),
    pytest.param(
        [
            entry(1, 5),
            replace(entry(1, 6), number=2, corrects=1),
            replace(entry(1, 7), number=3, corrects=1),
        ],
        "was corrected by entry 2",
        id="corrected already",
    ),
    pytest.param(
        [*updates((3, 10), (6, 20)), replace(entry(9, 5, "since last time"), corrects=3)],
        "out of order",
        id="a correction that jumps over another entry",
    ),
    pytest.param([rest(3, 6), rest(6, 9, 901)], "begins before the one until", id="rests"),
]


@pytest.mark.parametrize(("log", "says"), WRONG)
def test_a_log_that_contradicts_itself_is_refused_in_one_sentence(
    log: list[Entry], says: str
) -> None:
    with pytest.raises(BadLog, match=says) as told:
        settled(log, 4_900)
    assert "\n" not in str(told.value)


def test_percent_of_a_page_whose_stitches_are_not_known_asks_for_them() -> None:
    with pytest.raises(BadLog, match="tell how many stitches the page has"):
        settled([entry(1, 500, "percent")], None)


def test_entries_handed_in_together_come_in_the_order_of_their_days() -> None:
    runner = replace(entry(2, 7, page=None, piece="A runner"), number=9)
    check_handed_in([entry(1, 5), entry(4, 5), runner, rest(2, 3)])
    with pytest.raises(BadLog, match="stands after that of 2026-03-05, so the days are out of"):
        check_handed_in([entry(4, 5), entry(1, 5)])


def test_details_are_kept_beside_the_crosses() -> None:
    log = settled(
        [entry(1, 100, details=Details(backstitch=30)), entry(2, 0, details=Details(1, 2, 3))]
    )
    assert log.done_on(PAGE) == 100
    assert log.details_on(PAGE) == Details(1, 32, 3)


def test_days_and_numbers_of_the_calendar_are_plain() -> None:
    assert day(1) == date(2026, 3, 2)
    assert day(1).weekday() == 0
