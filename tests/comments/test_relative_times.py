""" "N units ago": at least N and less than N + 1 units before the page was copied."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.relative_times import months_before
from service.comments.spans import Answer, Span
from service.comments.times import read_time
from tests.comments.conftest import TICK

COPIED = datetime(2026, 3, 31, 12, 0, tzinfo=UTC)
UNITS = {"second": 1, "minute": 60, "hour": 3600, "day": 86400, "week": 604800}


def ago(text: str) -> Span:
    found = read_time(text, UTC, COPIED)
    assert found is not None
    return found


@given(st.sampled_from(sorted(UNITS)), st.integers(0, 500))
def test_n_units_ago_is_from_n_to_n_plus_one(unit: str, number: int) -> None:
    size = timedelta(seconds=UNITS[unit])
    plural = "" if number == 1 else "s"
    found = ago(f"{number} {unit}{plural} ago")
    assert found == Span(COPIED - (number + 1) * size + TICK, COPIED - number * size)


@given(st.sampled_from(sorted(UNITS)), st.integers(0, 500))
def test_more_units_ago_is_before_fewer(unit: str, number: int) -> None:
    """Of one copying, "3 hours ago" is at least 3 and "2 hours ago" less than 3: surely before."""
    longer, shorter = ago(f"{number + 1} {unit}s ago"), ago(f"{number} {unit}s ago")
    assert longer.is_before(shorter) is Answer.YES
    assert shorter.is_before(longer) is Answer.NO
    assert longer.latest + TICK == shorter.earliest  # and no instant is between them


@pytest.mark.parametrize(
    ("text", "like"),
    [
        ("an hour ago", "1 hour ago"),
        ("a day ago", "1 day ago"),
        ("vor einer Stunde", "1 hour ago"),
        ("il y a une semaine", "1 week ago"),
        ("hace un día", "1 day ago"),
        ("un'ora fa", "1 hour ago"),
        ("há uma hora", "1 hour ago"),
        ("een dag geleden", "1 day ago"),
        ("för en timme sedan", "1 hour ago"),
        ("godzinę temu", "1 hour ago"),
        ("over 2 weeks ago", "2 weeks ago"),
        ("3 DAYS AGO", "3 days ago"),
        ("3 days ago", "3 days ago"),
        ("vor 3 Tagen", "3 days ago"),
        ("3 日前", "3 days ago"),
        ("3日前", "3 days ago"),
        ("قبل ٣ أيام", "3 days ago"),
        ("3d ago", "3 days ago"),
        ("3d", "3 days ago"),
        ("3 Std.", "3 hours ago"),
        ("2w", "2 weeks ago"),
    ],
)
def test_one_length_is_read_in_many_ways(text: str, like: str) -> None:
    assert ago(text) == ago(like)


def test_about_two_hours_may_be_rounded_up_or_down() -> None:
    hour = timedelta(hours=1)
    assert ago("about 2 hours ago") == Span(COPIED - 3 * hour + TICK, COPIED - hour)


def test_a_short_form_that_means_two_units_covers_both() -> None:
    # "m" is minutes on one page and months on another.
    found = ago("5 m")
    assert found.earliest <= COPIED - timedelta(days=150)
    assert found.latest == COPIED - timedelta(minutes=5)


@pytest.mark.parametrize("text", ["just now", "gerade eben", "à l’instant", "たった今"])
def test_just_now_is_within_minutes(text: str) -> None:
    assert ago(text) == Span(COPIED - timedelta(minutes=5), COPIED)


@given(st.integers(1, 40), st.integers(0, 5000))
def test_a_month_holds_however_a_page_counts_it(months: int, hours: int) -> None:
    """By the calendar, as 30 days, or as a twelfth of a year: whichever the page used."""
    posted = COPIED - timedelta(days=30 * months, hours=hours % 720)
    found = ago(f"{months} months ago")
    assert found.latest >= COPIED - timedelta(days=30 * months)
    assert found.earliest <= COPIED - timedelta(days=(months + 1) * 365.25 / 12)
    assert found.earliest <= months_before(COPIED, months + 1)
    assert found.latest >= months_before(COPIED, months)
    assert found.earliest <= posted <= found.latest


@pytest.mark.parametrize(
    ("months", "expected"),
    [
        pytest.param(1, datetime(2026, 2, 28, 12, tzinfo=UTC), id="a shorter month"),
        pytest.param(2, datetime(2026, 1, 31, 12, tzinfo=UTC), id="as long a month"),
        pytest.param(25, datetime(2024, 2, 29, 12, tzinfo=UTC), id="a leap year"),
    ],
)
def test_calendar_months_end_where_the_month_does(months: int, expected: datetime) -> None:
    assert months_before(COPIED, months) == expected


def test_a_year_ago_covers_leap_years() -> None:
    found = ago("1 year ago")
    assert found.latest == datetime(2025, 3, 31, 12, tzinfo=UTC)
    assert found.earliest <= datetime(2024, 3, 31, 12, tzinfo=UTC)
