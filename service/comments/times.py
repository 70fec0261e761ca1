"""A comment's time, read from what its source says, as a span no narrower than it tells."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, tzinfo
from typing import Literal

from service.comments.dates import Order, WrittenTime, read_written, wall_clock
from service.comments.instants import (
    Doubt,
    LocalTime,
    local_day,
    local_time,
    read_instant,
    zone_of,
)
from service.comments.relative_times import plain, read_elapsed
from service.comments.spans import Span
from service.errors import BadTime

__all__ = ["Kind", "When", "read_instant", "read_moment", "read_time", "read_when", "zone_of"]

#: exact: with its offset; local: set into the zone; day: a whole local day; relative: told from
#: the copying; bare: relative without a word for "ago"; number: seconds since 1970.
Kind = Literal["exact", "local", "day", "relative", "bare", "number"]
_LONGEST = 80
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
#: How numbers of seconds, thousandths and millionths since 1970 look, from 2001 to 2286.
_EPOCH_DIGITS = {10: 1, 13: 1000, 16: 1_000_000}


@dataclass(frozen=True, slots=True)
class When:
    """A time that was read: its span, how it was told, and what widened it."""

    span: Span
    kind: Kind
    doubt: Doubt = ""


def read_time(text: str, zone: tzinfo, copied_at: datetime) -> Span | None:
    """The span of a time as a source writes it, or None where `text` is no time.

    `zone` is for times without an offset, `copied_at` (aware) for "3 days ago" and "yesterday".
    """
    when = read_when(text, zone, copied_at)
    return when.span if when else None


def read_when(
    text: str, zone: tzinfo, copied_at: datetime, order: Order | None = None
) -> When | None:
    """As `read_time`, with how it was told; `order` settles dates like 3/4/2026."""
    if copied_at.tzinfo is None:
        raise BadTime(str(copied_at), "the time of copying has no zone", "give it with its offset")
    try:
        return When(Span.at(read_instant(text)), "exact")
    except BadTime:
        pass
    words = plain(_plain_digits(text)) if len(text) <= _LONGEST else ""
    if not words:
        return None
    try:
        digits, _, fraction = words.partition(".")
        if digits.isascii() and digits.isdigit() and (not fraction or fraction.isdigit()):
            return _since_1970(digits, fraction)
        elapsed = read_elapsed(words, copied_at)
        if elapsed:
            return When(elapsed.span, "bare" if elapsed.bare else "relative")
        written = read_written(words, copied_at.astimezone(zone).date(), order)
        return _set_into(zone, written, copied_at) if written else None
    except (OverflowError, ValueError):
        return None  # beyond the ends of the calendar


def read_moment(text: str, zone: tzinfo) -> datetime:
    """The one instant of an opening or a closing, in UTC: RFC 3339, or a local time in `zone`.

    BadTime where it is neither, and where the clocks showed that local time twice or never.
    """
    try:
        return read_instant(text)
    except BadTime:
        written = read_written(plain(text), None) if len(text) <= _LONGEST else None
    if not written or written.clock is None or len(written.days) != 1:
        raise BadTime(
            text,
            "this is no point in time",
            "write it like 2026-03-01T18:00 (local) or 2026-03-01T18:00:00Z",
        )
    try:
        wall = wall_clock(written.days[0], written.clock)
        if written.offset is not None:
            return wall.replace(tzinfo=written.offset).astimezone(UTC)
        found = local_time(wall, zone)
    except (OverflowError, ValueError):
        raise BadTime(text, "there is no such instant", "check the year") from None
    if found.doubt:
        often = "twice" if found.doubt == "repeated hour" else "never"
        raise BadTime(
            text,
            f"the clocks in {zone} show this local time {often}",
            "give it with its offset, as in 2026-03-01T18:00:00+01:00",
        )
    return found.span.earliest


def _since_1970(digits: str, fraction: str) -> When | None:
    """Seconds, thousandths or millionths since 1970, told apart by how many digits they have."""
    parts = _EPOCH_DIGITS.get(len(digits))
    if not parts or digits[0] == "0" or not fraction.isascii():
        return None
    micro = int(digits) * (1_000_000 // parts) + int((fraction or "0").ljust(6, "0")[:6]) // parts
    return When(Span.at(_EPOCH + timedelta(microseconds=micro)), "number")


def _set_into(zone: tzinfo, written: WrittenTime, copied_at: datetime) -> When | None:
    if written.offset is not None and written.clock is not None:
        found = [
            local_time(wall_clock(day, written.clock), written.offset, written.lasts)
            for day in written.days
        ]
        kind: Kind = "exact"
    elif written.clock is not None:
        found = [
            local_time(wall_clock(day, written.clock), zone, written.lasts) for day in written.days
        ]
        kind = "local"
    else:
        found = [_until_copied(local_day(day, zone), copied_at) for day in written.days]
        kind = "day"
    doubt: Doubt = "day or month first" if len(found) > 1 else found[0].doubt
    span = Span(min(one.span.earliest for one in found), max(one.span.latest for one in found))
    return When(span, kind, doubt)


def _until_copied(day: LocalTime, copied_at: datetime) -> LocalTime:
    """The part of the day of copying that had passed; another day as it is."""
    if day.span.earliest <= copied_at < day.span.latest:
        return LocalTime(Span(day.span.earliest, copied_at), day.doubt)
    return day


def _plain_digits(text: str) -> str:
    """The digits of every script as 0 to 9, other characters as they are."""
    if text.isascii():
        return text
    return "".join(str(unicodedata.decimal(sign)) if sign.isdecimal() else sign for sign in text)
