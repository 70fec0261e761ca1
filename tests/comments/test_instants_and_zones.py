"""Instants, openings and closings, zones: what is read, and the sentence where it is not."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.times import read_instant, read_moment, zone_of
from service.errors import BadTime


@pytest.mark.parametrize(
    "text",
    [
        "",
        "2026-03-01",
        "2026-03-01T18:00:00",
        "2026-03-01T18:00Z",
        "20260301T180000Z",
        "2026-03-01T18:00:00+0100",
        "2026-03-01T24:00:00Z",
        "2026-02-29T18:00:00Z",
        "2026-03-01T18:00:00+24:00",
        "2026-03-01T18:00:00+01:60",
        "2026-03-01T18:00:60Z",
        "2026-03-01T23:59:60Z",
        "0001-01-01T00:00:00+01:00",
        "２０２６-03-01T18:00:00Z",
        "2026-03-01T18:00:00Z and more",
    ],
)
def test_what_is_no_instant_with_an_offset_is_refused(text: str) -> None:
    with pytest.raises(BadTime) as error:
        read_instant(text)
    assert error.value.text == text
    assert repr(text) in str(error.value)


def test_digits_beyond_the_sixth_of_a_second_are_cut_off() -> None:
    cut = read_instant("2026-03-01T18:00:00.1234569Z")
    assert cut == datetime(2026, 3, 1, 18, 0, 0, 123456, tzinfo=UTC)


@given(
    st.datetimes(datetime(2000, 1, 2), datetime(2199, 12, 30)),  # noqa: DTZ001
    st.integers(-23 * 60, 23 * 60),
)
def test_every_instant_is_read_back_in_every_offset(utc: datetime, minutes: int) -> None:
    instant = utc.replace(tzinfo=UTC)
    sign, away = ("-", -minutes) if minutes < 0 else ("+", minutes)
    local = (utc + timedelta(minutes=minutes)).isoformat()
    assert read_instant(f"{local}{sign}{away // 60:02}:{away % 60:02}") == instant


@pytest.mark.parametrize(
    "name",
    ["", "Mars/Phobos", "Europe", "../etc/passwd", "/etc/localtime", "a\0b", "Euröpe/Berlin"],
)
def test_a_zone_that_there_is_not_is_one_sentence(name: str) -> None:
    with pytest.raises(BadTime, match="there is no such time zone") as error:
        zone_of(name)
    assert "Europe/Berlin" in error.value.todo


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        pytest.param("2026-03-01T18:00:00Z", datetime(2026, 3, 1, 18, tzinfo=UTC), id="with Z"),
        pytest.param("2026-03-01T18:00", datetime(2026, 3, 1, 17, tzinfo=UTC), id="winter"),
        pytest.param("2026-07-01 18:00", datetime(2026, 7, 1, 16, tzinfo=UTC), id="summer"),
        pytest.param(
            "2026-03-01T18:00+05:00", datetime(2026, 3, 1, 13, tzinfo=UTC), id="no seconds"
        ),
        pytest.param("1.3.2026 18:00", datetime(2026, 3, 1, 17, tzinfo=UTC), id="with dots"),
    ],
)
def test_an_opening_is_an_instant_or_a_local_time(text: str, expected: datetime) -> None:
    assert read_moment(text, zone_of("Europe/Berlin")) == expected


@pytest.mark.parametrize(
    ("text", "why"),
    [
        pytest.param("2026-10-25T02:30", "twice", id="shown twice"),
        pytest.param("2026-03-29T02:30", "never", id="skipped"),
        pytest.param("2026-03-01", "no point in time", id="a day"),
        pytest.param("3/4/2026 18:00", "no point in time", id="day or month first"),
        pytest.param("yesterday", "no point in time", id="a word"),
        pytest.param("9999-12-31T23:59-05:00", "no such instant", id="the end of the calendar"),
        pytest.param("tea time", "no point in time", id="no time"),
    ],
)
def test_a_closing_that_is_not_one_instant_is_refused(text: str, why: str) -> None:
    with pytest.raises(BadTime, match=why):
        read_moment(text, zone_of("Europe/Berlin"))
