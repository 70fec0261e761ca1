"""The calendar file against RFC 5545 (September 2009) and RFC 7986 (October 2016), read line by line.

The lines are unfolded and read here by the RFC's own rules; the icalendar library reads them too.
"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar

from service.announce.calendar import Closing, calendar_of

CLOSING = Closing(
    game="harbour",
    made=datetime(2026, 2, 1, 9, tzinfo=UTC),
    round=2,
    title="The harbour mystery, round 2: voting closes",
    details="Choose one of these 2 pages: 3; 11. Żółw, 漢字 & more\nto the end.",
    told=datetime(2026, 3, 1, 18, tzinfo=UTC),
    closes=datetime(2026, 3, 29, 1, 30, tzinfo=ZoneInfo("Atlantic/Faroe")),
)
LINE = re.compile(r"[A-Z-]+(?:;[A-Z-]+=[^;:\"]+)*:.*", re.DOTALL)


def lines_of(content: bytes) -> list[str]:
    """The content lines, unfolded (section 3.1)."""
    assert content.endswith(b"\r\n")
    for physical in content.split(b"\r\n"):
        assert len(physical) <= 75
        assert b"\r" not in physical
        assert b"\n" not in physical
    return content.replace(b"\r\n ", b"").replace(b"\r\n\t", b"").decode().split("\r\n")[:-1]


def value_of(lines: list[str], name: str) -> str:
    [found] = [line for line in lines if re.match(f"{name}[:;]", line)]
    return found.partition(":")[2]


def text_of(value: str) -> str:
    """A value of type TEXT (section 3.3.11)."""
    return re.sub(r"\\([\\;,nN])", lambda found: "\n" if found[1] in "nN" else found[1], value)


def test_the_file_has_what_the_standard_asks_for() -> None:
    lines = lines_of(calendar_of(CLOSING))
    assert (lines[0], lines[-1]) == ("BEGIN:VCALENDAR", "END:VCALENDAR")
    assert all(LINE.fullmatch(line) for line in lines)
    # Section 3.6: PRODID and VERSION once; section 3.6.1: UID and DTSTAMP once, DTSTART.
    assert value_of(lines, "VERSION") == "2.0"
    assert value_of(lines, "PRODID")
    assert value_of(lines, "DTSTAMP") == "20260301T180000Z"
    # 01:30 on Faroe is 01:30 UTC too until the clocks change, which they do at 01:00 UTC that day;
    # at 01:30 local time they have been skipped, so the zone's offset before the change holds.
    assert value_of(lines, "DTSTART") == "20260329T013000Z"
    assert text_of(value_of(lines, "SUMMARY")) == CLOSING.title
    assert text_of(value_of(lines, "DESCRIPTION")) == CLOSING.details
    assert not any(line.startswith("BEGIN:VALARM") for line in lines)


def test_times_are_in_utc_so_no_zone_need_be_described() -> None:
    """Form 2 of DATE-TIME (section 3.3.5)."""
    lines = lines_of(calendar_of(CLOSING))
    times = [line for line in lines if line.startswith(("DTSTART", "DTSTAMP"))]
    assert len(times) == 2
    assert all(re.fullmatch(r"\w+:\d{8}T\d{6}Z", line) for line in times)
    assert "BEGIN:VTIMEZONE" not in lines


def test_a_reminder_is_an_alarm_that_displays() -> None:
    """Section 3.6.6: ACTION, DESCRIPTION and TRIGGER; a TRIGGER before the start is negative."""
    lines = lines_of(calendar_of(CLOSING, alarm=timedelta(hours=2)))
    begin, end = lines.index("BEGIN:VALARM"), lines.index("END:VALARM")
    alarm = lines[begin + 1 : end]
    assert value_of(alarm, "ACTION") == "DISPLAY"
    assert value_of(alarm, "TRIGGER") == "-PT2H"
    assert text_of(value_of(alarm, "DESCRIPTION")) == CLOSING.title


def test_the_uid_is_the_closings_own_and_stays() -> None:
    """Section 3.8.4.7: globally unique and persistent; RFC 7986, section 5.3: no host's name."""
    renamed = replace(CLOSING, title="Another name", closes=CLOSING.closes + timedelta(days=1))
    assert renamed.uid == CLOSING.uid
    others = [
        replace(CLOSING, round=3),
        replace(CLOSING, game="harbour-2"),
        replace(CLOSING, made=CLOSING.made + timedelta(seconds=1)),
    ]
    assert len({CLOSING.uid, *(other.uid for other in others)}) == 4
    assert "@" not in value_of(lines_of(calendar_of(CLOSING)), "UID")


def test_the_same_closing_is_the_same_file() -> None:
    assert calendar_of(CLOSING) == calendar_of(replace(CLOSING))


@given(st.text(st.characters(exclude_categories=["Cs", "Cc"]), min_size=1, max_size=300))
def test_any_words_come_out_as_they_went_in(words: str) -> None:
    content = calendar_of(replace(CLOSING, title=words))
    assert text_of(value_of(lines_of(content), "SUMMARY")) == words
    [event] = Calendar.from_ical(content).walk("VEVENT")
    assert str(event["SUMMARY"]) == words


@pytest.mark.parametrize(
    "words", ["BEGIN:VEVENT\r\nX:1", "a\nb", "a\rb", "back\\slash, comma; semi"]
)
def test_no_words_begin_a_line_of_their_own(words: str) -> None:
    lines = lines_of(calendar_of(replace(CLOSING, details=words, title=words)))
    assert [line.partition(":")[0] for line in lines].count("BEGIN") == 2
    assert not any(line.startswith("X:") for line in lines)
