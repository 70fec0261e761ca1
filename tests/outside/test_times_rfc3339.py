"""Instants against RFC 3339, Date and Time on the Internet: Timestamps (July 2002)."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from service.comments.spans import Span
from service.comments.times import read_instant, read_time
from service.errors import BadTime

COPIED = datetime(2026, 3, 5, tzinfo=UTC)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param(
            "1985-04-12T23:20:50.52Z",
            datetime(1985, 4, 12, 23, 20, 50, 520_000, tzinfo=UTC),
            id="a fraction of a second",
        ),
        pytest.param(
            "1996-12-19T16:39:57-08:00",
            datetime(1996, 12, 20, 0, 39, 57, tzinfo=UTC),
            id="eight hours behind UTC",
        ),
        pytest.param(
            "1937-01-01T12:00:27.87+00:20",
            datetime(1937, 1, 1, 11, 40, 27, 870_000, tzinfo=UTC),
            id="twenty minutes before UTC",
        ),
    ],
)
def test_the_examples_of_section_5_8(text: str, expected: datetime) -> None:
    assert read_instant(text) == expected
    assert read_time(text, UTC, COPIED) == Span.at(expected)


def test_the_equivalent_instants_of_section_5_8() -> None:
    """ "Note that this is equivalent to 1996-12-20T00:39:57Z in UTC."."""
    assert read_instant("1996-12-19T16:39:57-08:00") == read_instant("1996-12-20T00:39:57Z")


def test_the_leap_second_of_section_5_8_is_one_instant_in_both_writings() -> None:
    """Between 23:59:59 and the next year; that year's first instant comes after it."""
    leap = read_instant("1990-12-31T23:59:60Z")
    assert leap == read_instant("1990-12-31T15:59:60-08:00")
    assert read_instant("1990-12-31T23:59:59Z") < leap < read_instant("1991-01-01T00:00:00Z")


@pytest.mark.parametrize(
    "text",
    [
        "1990-12-31T23:58:60Z",
        "1990-12-30T23:59:60Z",
        "1990-12-31T23:59:60+01:00",
        "1990-12-31T23:59:61Z",
    ],
)
def test_a_leap_second_comes_at_the_end_of_a_month_in_utc_only(text: str) -> None:
    """Section 5.7: "60 at the end of months in which a leap second occurs"."""
    with pytest.raises(BadTime):
        read_instant(text)


@pytest.mark.parametrize("text", ["1985-04-12t23:20:50.52z", "1985-04-12 23:20:50.52Z"])
def test_lower_case_and_a_space_stand_for_t_and_z(text: str) -> None:
    """Section 5.6, notes."""
    assert read_instant(text) == read_instant("1985-04-12T23:20:50.52Z")


def test_an_unknown_local_offset_is_utc() -> None:
    """Section 4.3: -00:00 says that the time in UTC is known."""
    assert read_instant("1985-04-12T23:20:50-00:00") == read_instant("1985-04-12T23:20:50Z")


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("1985-04-12T23:20:50", id="no offset"),
        pytest.param("1985-04-12T23:20Z", id="no seconds"),
        pytest.param("19850412T232050Z", id="no separators"),
        pytest.param("1985-04-12T23:20:50,5Z", id="a comma before the fraction"),
        pytest.param("1985-W15-5T23:20:50Z", id="a week date"),
        pytest.param("1985-04-12T24:00:00Z", id="hour 24 (section 5.6: 00 to 23)"),
        pytest.param("1985-04-12T23:20:50+0800", id="an offset without its colon"),
        pytest.param("1985-02-29T23:20:50Z", id="no leap year (section 5.7)"),
    ],
)
def test_other_forms_of_iso_8601_are_not_of_this_profile(text: str) -> None:
    """Section 5.6, the grammar."""
    with pytest.raises(BadTime):
        read_instant(text)


def test_many_digits_of_a_second_are_read() -> None:
    """Section 5.6: time-secfrac has one digit or more."""
    found = read_instant("1985-04-12T23:20:50.123456789Z")
    assert found - read_instant("1985-04-12T23:20:50Z") == timedelta(microseconds=123_456)
