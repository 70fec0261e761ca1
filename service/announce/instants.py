"""An instant in words: the day and the time where the game is played, and in UTC."""

from __future__ import annotations

from datetime import UTC, date, datetime, tzinfo
from zoneinfo import ZoneInfo

from babel.dates import format_date, format_datetime

_LOCALE = "en_GB"
_DAY = "EEEE d MMMM"


def instant_in_words(at: datetime, zone: ZoneInfo) -> str:
    """An aware instant with its weekday in `zone` and in UTC.

    "Sunday 1 March 2026 at 18:00 Lisbon time (Sunday 18:00 UTC)"; where it is another day in UTC,
    that day in full. UTC tells apart the two hours that a zone calls the same when clocks go back.
    Seconds are shown only where there are any.
    """
    local, utc = at.astimezone(zone), at.astimezone(UTC)
    words = f"{_formatted(at, zone, f'{_DAY} y')} at {_clock(at, zone)}"
    if _is_utc(zone):
        return f"{words} UTC"
    if local.date() == utc.date():
        day = _formatted(at, UTC, "EEEE")
    else:
        year = " y" if local.year != utc.year else ""
        day = f"{_formatted(at, UTC, _DAY + year)} at"
    return f"{words} {zone_in_words(at, zone)} ({day} {_clock(at, UTC)} UTC)"


def day_in_words(day: date, *, year: bool = True) -> str:
    """A day with its weekday: "Sunday 1 March 2026"."""
    return format_date(day, f"{_DAY} y" if year else _DAY, locale=_LOCALE)


def short_day(day: date, *, year: bool = False) -> str:
    """A day for where there is little room: "1 Mar", "1 Mar 2026"."""
    return format_date(day, "d MMM y" if year else "d MMM", locale=_LOCALE)


def zone_in_words(at: datetime, zone: ZoneInfo) -> str:
    """The zone by its place, "Buenos Aires time"; one without a place by its offset from UTC."""
    area, _, place = zone.key.partition("/")
    if not place or area == "Etc":
        return f"UTC{_formatted(at, zone, 'xxx')}"
    return f"{place.rpartition('/')[2].replace('_', ' ')} time"


def _is_utc(zone: ZoneInfo) -> bool:
    return zone.key.removeprefix("Etc/") in {"UTC", "UCT", "Zulu", "Universal"}


def _clock(at: datetime, zone: tzinfo) -> str:
    return _formatted(at, zone, "HH:mm:ss" if at.second else "HH:mm")


def _formatted(at: datetime, zone: tzinfo, pattern: str) -> str:
    return format_datetime(at, pattern, tzinfo=zone, locale=_LOCALE)
