"""Instants as viewers read them: weekday, place, and UTC beside it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest

from service.announce.instants import instant_in_words

# Weekdays by any calendar: 1 March 2026 is a Sunday, 1 January 2027 a Friday.
CASES = {
    "the same hour as UTC": (
        datetime(2026, 3, 1, 18, tzinfo=UTC),
        "Atlantic/Faroe",
        "Sunday 1 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC)",
    ),
    "summer time": (
        datetime(2026, 7, 1, 18, 5, tzinfo=UTC),
        "Atlantic/Faroe",
        "Wednesday 1 July 2026 at 19:05 Faroe time (Wednesday 18:05 UTC)",
    ),
    "another day in UTC": (
        datetime(2026, 3, 1, 7, tzinfo=UTC),
        "Pacific/Honolulu",
        "Saturday 28 February 2026 at 21:00 Honolulu time (Sunday 1 March at 07:00 UTC)",
    ),
    "another year in UTC": (
        datetime(2026, 12, 31, 20, tzinfo=UTC),
        "Pacific/Auckland",
        "Friday 1 January 2027 at 09:00 Auckland time (Thursday 31 December 2026 at 20:00 UTC)",
    ),
    "half an hour off": (
        datetime(2026, 3, 1, 18, tzinfo=UTC),
        "Asia/Kolkata",
        "Sunday 1 March 2026 at 23:30 Kolkata time (Sunday 18:00 UTC)",
    ),
    "a place of two words in a region": (
        datetime(2026, 3, 1, 18, tzinfo=UTC),
        "America/Argentina/Buenos_Aires",
        "Sunday 1 March 2026 at 15:00 Buenos Aires time (Sunday 18:00 UTC)",
    ),
    "UTC once only": (
        datetime(2026, 3, 1, 18, tzinfo=UTC),
        "Etc/UTC",
        "Sunday 1 March 2026 at 18:00 UTC",
    ),
    "a zone without a place": (
        datetime(2026, 3, 1, 18, tzinfo=UTC),
        "Etc/GMT+2",
        "Sunday 1 March 2026 at 16:00 UTC-02:00 (Sunday 18:00 UTC)",
    ),
    "seconds where there are any": (
        datetime(2026, 3, 1, 18, 0, 7, tzinfo=UTC),
        "Atlantic/Faroe",
        "Sunday 1 March 2026 at 18:00:07 Faroe time (Sunday 18:00:07 UTC)",
    ),
    "given in another zone": (
        datetime(2026, 3, 1, 19, tzinfo=timezone(timedelta(hours=1))),
        "Atlantic/Faroe",
        "Sunday 1 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC)",
    ),
}


@pytest.mark.parametrize(("at", "zone", "words"), CASES.values(), ids=CASES.keys())
def test_an_instant_in_words(at: datetime, zone: str, words: str) -> None:
    assert instant_in_words(at, ZoneInfo(zone)) == words


def test_the_hour_that_comes_twice_is_told_apart_by_utc() -> None:
    # Faroe clocks go back from 02:00 to 01:00 on 25 October 2026, at 01:00 UTC.
    first, second = (datetime(2026, 10, 25, hour, 30, tzinfo=UTC) for hour in (0, 1))
    zone = ZoneInfo("Atlantic/Faroe")
    assert instant_in_words(first, zone) == (
        "Sunday 25 October 2026 at 01:30 Faroe time (Sunday 00:30 UTC)"
    )
    assert instant_in_words(second, zone) == (
        "Sunday 25 October 2026 at 01:30 Faroe time (Sunday 01:30 UTC)"
    )
