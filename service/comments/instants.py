"""Instants as RFC 3339 writes them, and local times set into a zone."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, timezone, tzinfo
from typing import Literal
from zoneinfo import ZoneInfo

from service.comments.spans import Span
from service.errors import BadTime

_RFC3339 = re.compile(
    r"(\d{4})-(\d{2})-(\d{2})[Tt ](\d{2}):(\d{2}):(\d{2})(?:\.(\d+))?"
    r"(?:([Zz])|([+-])(\d{2}):(\d{2}))",
    re.ASCII,
)
#: How nearly all exports write instants.
PLAIN_INSTANT = "2026-03-01T18:00:00Z"
_TODO = "write it like 2026-03-01T18:00:00Z or 2026-03-01T19:00:00+01:00"
_DAY = timedelta(days=1)
_TICK = timedelta(microseconds=1)

Doubt = Literal["", "repeated hour", "skipped hour", "day or month first"]


@dataclass(frozen=True, slots=True)
class LocalTime:
    """A local time's span, and what made it wider than the writing says."""

    span: Span
    doubt: Doubt = ""


def zone_of(name: str) -> ZoneInfo:
    """The zone of an IANA name such as Europe/Berlin; BadTime where there is none."""
    try:
        return ZoneInfo(name)
    except (KeyError, ValueError, OSError):
        # Besides unknown names: paths out of the zone data, folders in it, NUL characters.
        raise BadTime(
            name, "there is no such time zone", "give an IANA name such as Europe/Berlin or UTC"
        ) from None


def read_instant(text: str) -> datetime:
    """The instant that `text` names, in UTC. BadTime where it names none.

    RFC 3339 (July 2002), section 5.6; a leap second (sections 5.6 and 5.7) is taken as the last
    microsecond before the minute ends, so that it stays before what follows it.
    Digits of a second beyond the sixth are cut off.
    """
    if len(text) == len(PLAIN_INSTANT) and text[4:20:3] == PLAIN_INSTANT[4:20:3]:
        # Nearly all exports write instants just so, and this reads them several times as fast.
        try:
            return datetime.fromisoformat(text)
        except ValueError:
            pass  # a leap second, or none at all: told below
    found = _RFC3339.fullmatch(text.strip())
    if not found:
        raise BadTime(text, "this is no instant with an offset", _TODO)
    year, month, day, hour, minute, second = (int(part) for part in found.groups()[:6])
    fraction, zulu, sign, offset_hours, offset_minutes = found.groups()[6:]
    try:
        offset = _offset(zulu, sign, offset_hours, offset_minutes)
        if second == 60:
            return _leap_second(datetime(year, month, day, hour, minute, 59, 999999, offset))
        micro = int((fraction or "")[:6].ljust(6, "0"))
        return datetime(year, month, day, hour, minute, second, micro, offset).astimezone(UTC)
    except (ValueError, OverflowError):
        raise BadTime(text, "there is no such instant", _TODO) from None


def _offset(zulu: str | None, sign: str, hours: str, minutes: str) -> timezone:
    if zulu:
        return UTC
    if int(hours) > 23 or int(minutes) > 59:
        raise ValueError(hours)
    distance = timedelta(hours=int(hours), minutes=int(minutes))
    return timezone(-distance if sign == "-" else distance)


def _leap_second(moment: datetime) -> datetime:
    utc = moment.astimezone(UTC)
    # Leap seconds come at the end of a UTC month only (RFC 3339, section 5.7).
    if (utc.hour, utc.minute) != (23, 59) or (utc + _TICK).day != 1:
        raise ValueError("no leap second")
    return utc


def local_time(wall: datetime, zone: tzinfo, lasts: timedelta = timedelta(0)) -> LocalTime:
    """The span of a local time without offset that stands for `lasts` from `wall` on.

    A time that the clocks showed twice covers both; one that they skipped covers both ways of
    reading it (RFC 5545, section 3.3.5, takes the offset before the gap; others the one after).
    Raises OverflowError at the ends of the calendar.
    """
    before = wall.replace(tzinfo=zone, fold=0).astimezone(UTC)
    after = wall.replace(tzinfo=zone, fold=1).astimezone(UTC)
    doubt: Doubt = ""
    if before != after:
        doubt = "repeated hour" if before < after else "skipped hour"
    end = max(before, after) + max(lasts - _TICK, timedelta(0))
    return LocalTime(Span(min(before, after), end), doubt)


def local_day(day: date, zone: tzinfo) -> LocalTime:
    """The span of a whole local day. Raises OverflowError at the ends of the calendar."""
    midnight = datetime.combine(day, time())
    start = midnight.replace(tzinfo=zone).astimezone(UTC)
    end = (midnight + _DAY).replace(tzinfo=zone).astimezone(UTC) - _TICK
    if start <= end:
        return LocalTime(Span(start, end))
    # The whole day was skipped, as on an island that changed sides of the date line.
    other = midnight.replace(tzinfo=zone, fold=1).astimezone(UTC)
    return LocalTime(Span(min(other, start), start + _DAY - _TICK), "skipped hour")
