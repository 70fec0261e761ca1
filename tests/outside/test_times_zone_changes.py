"""Local times against the IANA time zone database (release 2026f, through the tzdata package).

Repeated and skipped local times: PEP 495 (2015); RFC 5545 (September 2009), section 3.3.5, reads
a repeated time as its first occurrence and a skipped one with the offset before the gap.
"""

from __future__ import annotations

import zoneinfo
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

import pytest

from service.comments.instants import local_day, local_time
from service.comments.spans import Span
from service.comments.times import read_time, zone_of

COPIED = datetime(2030, 1, 1, tzinfo=UTC)


@pytest.fixture(autouse=True)
def zones_of_the_package() -> Iterator[None]:
    """The operating system's zones may be older than the package's."""
    zoneinfo.reset_tzpath(to=[])
    zoneinfo.ZoneInfo.clear_cache()
    yield
    zoneinfo.reset_tzpath()
    zoneinfo.ZoneInfo.clear_cache()


def utc(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


#: Zone, its offset in hours at the beginning of the year, its other one, and the instants in UTC
#: at which they take turns in 2026 and 2027.
CHANGES = [
    ("Europe/Berlin", 1, 2, ["2026-03-29T01:00", "2026-10-25T01:00", "2027-03-28T01:00", "2027-10-31T01:00"]),
    ("Atlantic/Faroe", 0, 1, ["2026-03-29T01:00", "2026-10-25T01:00", "2027-03-28T01:00", "2027-10-31T01:00"]),
    ("Europe/London", 0, 1, ["2026-03-29T01:00", "2026-10-25T01:00", "2027-03-28T01:00", "2027-10-31T01:00"]),
    ("America/New_York", -5, -4, ["2026-03-08T07:00", "2026-11-01T06:00", "2027-03-14T07:00", "2027-11-07T06:00"]),
    ("America/St_Johns", -3.5, -2.5, ["2026-03-08T05:30", "2026-11-01T04:30", "2027-03-14T05:30", "2027-11-07T04:30"]),
    ("Australia/Sydney", 11, 10, ["2026-04-04T16:00", "2026-10-03T16:00", "2027-04-03T16:00", "2027-10-02T16:00"]),
    ("Australia/Adelaide", 10.5, 9.5, ["2026-04-04T16:30", "2026-10-03T16:30", "2027-04-03T16:30", "2027-10-02T16:30"]),
    ("Australia/Lord_Howe", 11, 10.5, ["2026-04-04T15:00", "2026-10-03T15:30", "2027-04-03T15:00", "2027-10-02T15:30"]),
    ("Pacific/Auckland", 13, 12, ["2026-04-04T14:00", "2026-09-26T14:00", "2027-04-03T14:00", "2027-09-25T14:00"]),
    ("Pacific/Chatham", 13.75, 12.75, ["2026-04-04T14:00", "2026-09-26T14:00", "2027-04-03T14:00", "2027-09-25T14:00"]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("zone", "before", "after", "instants"), CHANGES, ids=[zone for zone, *_ in CHANGES]
)
def test_local_times_around_a_change_of_the_clocks(
    zone: str, before: float, after: float, instants: list[str]
) -> None:
    """A minute on either side of each change is one instant, at the offset of that side."""
    for change in map(utc, instants):
        for side, offset in ((-1, before), (1, after)):
            # Far enough away to be neither repeated nor skipped.
            instant = change + side * timedelta(minutes=61)
            wall = (instant + timedelta(hours=offset)).isoformat(" ")[:19]
            assert read_time(wall, zone_of(zone), COPIED) == Span.at(instant)
        before, after = after, before


REPEATED = [
    ("Europe/Berlin", "2026-10-25 02:30:00", "2026-10-25T00:30", "2026-10-25T01:30"),
    ("Atlantic/Faroe", "2026-10-25 01:30:00", "2026-10-25T00:30", "2026-10-25T01:30"),
    ("America/New_York", "2026-11-01 01:30:00", "2026-11-01T05:30", "2026-11-01T06:30"),
    ("Australia/Sydney", "2026-04-05 02:30:00", "2026-04-04T15:30", "2026-04-04T16:30"),
    ("Australia/Lord_Howe", "2026-04-05 01:45:00", "2026-04-04T14:45", "2026-04-04T15:15"),
    ("America/Santiago", "2026-04-04 23:30:00", "2026-04-05T02:30", "2026-04-05T03:30"),
]
SKIPPED = [
    ("Europe/Berlin", "2026-03-29 02:30:00", "2026-03-29T00:30", "2026-03-29T01:30"),
    ("Atlantic/Faroe", "2026-03-29 01:30:00", "2026-03-29T00:30", "2026-03-29T01:30"),
    ("America/New_York", "2026-03-08 02:30:00", "2026-03-08T06:30", "2026-03-08T07:30"),
    ("Australia/Sydney", "2026-10-04 02:30:00", "2026-10-03T15:30", "2026-10-03T16:30"),
    ("Australia/Lord_Howe", "2026-10-04 02:15:00", "2026-10-03T15:15", "2026-10-03T15:45"),
    ("America/Santiago", "2026-09-06 00:30:00", "2026-09-06T03:30", "2026-09-06T04:30"),
    ("Pacific/Apia", "2011-12-30 12:00:00", "2011-12-29T22:00", "2011-12-30T22:00"),
]


@pytest.mark.parametrize(
    ("zone", "wall", "first", "last"),
    REPEATED + SKIPPED,
    ids=[f"{zone} {wall}" for zone, wall, *_ in REPEATED + SKIPPED],
)
def test_a_repeated_or_skipped_local_time_covers_both_readings(
    zone: str, wall: str, first: str, last: str
) -> None:
    assert read_time(wall, zone_of(zone), COPIED) == Span(utc(first), utc(last))


@pytest.mark.parametrize(("zone", "wall", "first", "last"), REPEATED)
def test_a_repeated_time_is_told_as_one(zone: str, wall: str, first: str, last: str) -> None:
    """RFC 5545 takes the first; both are kept here, since a comment may be of the second."""
    found = local_time(datetime.fromisoformat(wall), zone_of(zone))
    assert found.doubt == "repeated hour"
    assert found.span == Span(utc(first), utc(last))


@pytest.mark.parametrize(("zone", "wall", "first", "last"), SKIPPED)
def test_a_skipped_time_is_told_as_one(zone: str, wall: str, first: str, last: str) -> None:
    """RFC 5545 takes the offset before the gap, which is the later of the two instants."""
    found = local_time(datetime.fromisoformat(wall), zone_of(zone))
    assert found.doubt == "skipped hour"
    assert found.span == Span(utc(first), utc(last))


def test_lord_howe_repeats_half_an_hour_only() -> None:
    found = read_time("2026-04-05 01:15:00", zone_of("Australia/Lord_Howe"), COPIED)
    assert found == Span.at(utc("2026-04-04T14:15"))


def test_the_repeated_time_of_pep_495() -> None:
    """New York, 2 November 2014, 01:30: the instants that the PEP prints in seconds since 1970."""
    found = read_time("2014-11-02 01:30:00", zone_of("America/New_York"), COPIED)
    assert found == Span(
        datetime.fromtimestamp(1414906200, UTC), datetime.fromtimestamp(1414909800, UTC)
    )


@pytest.mark.parametrize(
    ("wall", "offset"),
    [
        pytest.param("2007-11-04 01:30:00", -4, id="01:30 happened twice: the first, EDT"),
        pytest.param("2007-03-11 02:30:00", -5, id="02:30 did not happen: as EST, 03:30 EDT"),
    ],
)
def test_the_examples_of_rfc_5545_are_one_of_the_readings(wall: str, offset: int) -> None:
    """Section 3.3.5, America/New_York."""
    found = read_time(wall, zone_of("America/New_York"), COPIED)
    instant = utc(wall) - timedelta(hours=offset)
    assert found is not None
    assert instant in {found.earliest, found.latest}


@pytest.mark.parametrize(
    ("zone", "day", "hours"),
    [
        ("Europe/Berlin", "2026-03-29", 23),
        ("Europe/Berlin", "2026-10-25", 25),
        ("Australia/Lord_Howe", "2026-04-05", 24.5),
        ("America/Santiago", "2026-09-06", 23),
        ("Asia/Kolkata", "2026-03-29", 24),
    ],
)
def test_a_local_day_is_as_long_as_the_clocks_make_it(zone: str, day: str, hours: float) -> None:
    found = read_time(day, zone_of(zone), COPIED)
    assert found is not None
    length = found.latest - found.earliest + timedelta(microseconds=1)
    assert length == timedelta(hours=hours)


def test_a_day_that_an_island_skipped_is_wide() -> None:
    """Samoa had no 30 December 2011: it went from the 29th to the 31st (tz database, Pacific/Apia)."""
    found = local_day(datetime(2011, 12, 30, tzinfo=UTC).date(), zone_of("Pacific/Apia"))
    assert found.doubt == "skipped hour"
    assert found.span.earliest <= utc("2011-12-30T10:00") <= found.span.latest


@pytest.mark.parametrize(
    ("zone", "noon_utc"),
    [("America/Vancouver", "2026-12-01T19:00"), ("America/Edmonton", "2026-12-01T18:00")],
)
def test_zones_that_lately_changed_their_law(zone: str, noon_utc: str) -> None:
    """tz news for 2026b (22 April 2026) and 2026c (8 July 2026): they stay at summer's offset."""
    found = read_time("2026-12-01 12:00:00", zone_of(zone), COPIED)
    assert found == Span.at(utc(noon_utc))
