"""Dates and times as people, tables and pages write them, each as wide as it is told."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.dates import order_of
from service.comments.spans import Span
from service.comments.times import Kind, read_time, read_when, zone_of
from service.errors import BadTime

BERLIN = zone_of("Europe/Berlin")
COPIED = datetime(2026, 3, 5, 12, 0, tzinfo=UTC)
TICK = timedelta(microseconds=1)


def utc(day: int, hour: int, minute: int = 0, second: int = 0, month: int = 2) -> datetime:
    return datetime(2026, month, day, hour, minute, second, tzinfo=UTC)


def minute_from(start: datetime) -> Span:
    return Span(start, start + timedelta(minutes=1) - TICK)


@pytest.mark.parametrize(
    "text",
    [
        "2026-02-27T18:05:09Z",
        "2026-02-27 18:05:09 UTC",
        "2026-02-27T19:05:09+0100",
        "Fri, 27 Feb 2026 18:05:09 GMT",
        "27 Feb 2026 13:05:09 EST",
        "Feb 27, 2026 7:05:09 PM",
        "27.02.2026 19:05:09",
        "27.2.26, 19:05:09",
        "27/02/2026 19:05:09",
        "2026/02/27 19:05:09",
        "19:05:09, 27 Feb 2026",
        "Fri Feb 27 2026 19:05:09 GMT+0100 (Central European Standard Time)",
        "1772215509",
        "1772215509000",
        "1772215509000000",
        "1772215509.0",
    ],
)
def test_one_instant_is_read_however_it_is_written(text: str) -> None:
    assert read_time(text, BERLIN, COPIED) == Span.at(utc(27, 18, 5, 9))


@pytest.mark.parametrize(
    "text",
    [
        "2026-02-27T18:05Z",
        "27. Februar 2026 um 19:05 Uhr",
        "27 février 2026 à 19h05",
        "27 de febrero de 2026, 19:05",
        "27 febbraio 2026 alle 19:05",
        "27 de fev. de 2026 às 19:05",
        "27 februari 2026 om 19:05",
        "27 lutego 2026 19:05",
        "27 feb. 2026 kl. 19.05",
        "February 27th, 2026 at 7:05 pm",
        "2026年2月27日 19:05",
        "٢٧/٠٢/٢٠٢٦ ١٩:٠٥",
    ],
)
def test_a_time_without_seconds_is_any_second_of_that_minute(text: str) -> None:
    assert read_time(text, BERLIN, COPIED) == minute_from(utc(27, 18, 5))


@pytest.mark.parametrize(
    "text",
    ["2026-02-27", "27.02.2026", "27/2/2026", "2/27/2026", "27 Feb 2026", "Feb 27", "27 février"],
)
def test_a_date_is_the_whole_local_day(text: str) -> None:
    assert read_time(text, BERLIN, COPIED) == Span(utc(26, 23), utc(27, 23) - TICK)


def test_a_date_without_a_year_is_the_latest_such_day() -> None:
    last_may = datetime(2025, 5, 3, 22, tzinfo=UTC)
    found = read_time("May 4", BERLIN, COPIED)
    assert found == Span(last_may, last_may + timedelta(days=1) - TICK)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        pytest.param("yesterday", 4, id="English"),
        pytest.param("gestern", 4, id="German"),
        pytest.param("hier", 4, id="French"),
        pytest.param("l’altro ieri", 3, id="Italian, the day before"),
        pytest.param("I GÅR", 4, id="Swedish, in capitals"),
        pytest.param("昨日", 4, id="Japanese"),
    ],
)
def test_yesterday_is_the_whole_local_day_before(text: str, day: int) -> None:
    found = read_time(text, BERLIN, COPIED)
    assert found == Span(utc(day - 1, 23, month=3), utc(day, 23, month=3) - TICK)


def test_today_ends_with_the_copying() -> None:
    assert read_time("today", BERLIN, COPIED) == Span(utc(4, 23, month=3), COPIED)


def test_yesterday_with_a_time_of_day_is_that_minute() -> None:
    found = read_time("gestern um 14:05", BERLIN, COPIED)
    assert found == minute_from(utc(4, 13, 5, month=3))


def test_yesterday_is_the_day_of_the_copier() -> None:
    # Half past eleven at night in London is the next day in Auckland.
    copied = datetime(2026, 3, 5, 23, 30, tzinfo=UTC)
    auckland = read_time("yesterday", zone_of("Pacific/Auckland"), copied)
    assert auckland == Span(utc(4, 11, month=3), utc(5, 11, month=3) - TICK)


def test_a_date_whose_order_cannot_be_told_is_both_days() -> None:
    when = read_when("3/4/2026", BERLIN, COPIED)
    assert when is not None
    assert when.doubt == "day or month first"
    fourth_of_march, third_of_april = utc(3, 23, month=3), utc(2, 22, month=4)
    assert when.span == Span(fourth_of_march, third_of_april + timedelta(days=1) - TICK)


@pytest.mark.parametrize(
    ("texts", "expected"),
    [
        pytest.param(["3/4/2026", "13/2/2026"], "day first", id="a day above twelve first"),
        pytest.param(
            ["3/4/2026", "2/13/2026 18:00"], "month first", id="a day above twelve second"
        ),
        pytest.param(["3/4/2026", "12/12/2026"], None, id="nothing tells"),
        pytest.param(["27/2/2026", "2/27/2026"], None, id="they disagree"),
    ],
)
def test_a_column_of_dates_tells_their_order(texts: list[str], expected: str | None) -> None:
    assert order_of(texts) == expected


@pytest.mark.parametrize(
    "text",
    [
        "",
        "12",
        "12:47",
        "page 12",
        "42!!!",
        "2026",
        "18 count",
        "2026-02-30",
        "32.1.2026",
        "27.02.2026 25:00",
        "27.02.2026 13:00 pm",
        "2026-02-27 18:05:09 IST",
        "99999 years ago",
        "9999-12-31 23:59:59 -05:00",
        "0000000000",
        "in 3 days",
        "a" * 100,
    ],
)
def test_what_is_no_time_is_none(text: str) -> None:
    assert read_time(text, BERLIN, COPIED) is None


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("2026-02-27T18:05:09Z", "exact"),
        ("2026-02-27 18:05", "local"),
        ("2026-02-27", "day"),
        ("3 days ago", "relative"),
        ("3d", "bare"),
        ("1772215509", "number"),
    ],
)
def test_how_a_time_was_told_is_kept(text: str, kind: Kind) -> None:
    when = read_when(text, BERLIN, COPIED)
    assert when is not None
    assert when.kind == kind


def test_a_time_of_copying_without_a_zone_is_refused() -> None:
    with pytest.raises(BadTime, match="no zone"):
        read_time("yesterday", BERLIN, COPIED.replace(tzinfo=None))


@given(st.text(max_size=90))
def test_no_text_breaks_the_reading_of_times(text: str) -> None:
    span = read_time(text, BERLIN, COPIED)
    assert span is None or span.earliest <= span.latest


@given(
    st.from_regex(
        r"\A[0-9]{1,4}[-/. :T]{1,2}[0-9]{1,3}[-/. :]?[0-9]{0,4} ?[0-9:.]{0,8}[ zZ+-]{0,2}[0-9:]{0,5}\Z"
    )
)
def test_nothing_that_looks_like_a_time_breaks_the_reading(text: str) -> None:
    span = read_time(text, BERLIN, COPIED)
    assert span is None or span.earliest <= span.latest
