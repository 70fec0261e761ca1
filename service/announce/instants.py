"""An instant in words: the day and the time where the game is played, in UTC and elsewhere."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, tzinfo
from zoneinfo import ZoneInfo

from babel import Locale
from babel.dates import format_date, format_datetime, get_timezone_location

from service.counting.wording import how_many

ENGLISH = "en_GB"
_DAY = "EEEE d MMMM"


def instant_in_words(
    at: datetime, zone: ZoneInfo, also: Sequence[ZoneInfo] = (), locale: str = ENGLISH
) -> str:
    """An aware instant with its weekday in `zone`, in UTC and in the zones of `also`.

    "Sunday 1 March 2026 at 18:00 Lisbon time (Sunday 18:00 UTC)"; where it is another day there,
    that day in full. UTC tells apart the two hours that a zone calls the same when clocks go back.
    Seconds are shown only where there are any. Another `locale` gives the days' names and the
    order of a date as Unicode CLDR has them.
    """
    here = _whole(at, zone, locale)
    others: list[tzinfo] = [] if _is_utc(zone) else [UTC]
    others += [one for one in also if one.key != zone.key and not _is_utc(one)]
    told = [_elsewhere(at, zone, one, locale) for one in dict.fromkeys(others)]
    return f"{here} ({'; '.join(told)})" if told else here


def day_in_words(day: date, *, year: bool = True) -> str:
    """A day with its weekday: "Sunday 1 March 2026"."""
    return format_date(day, f"{_DAY} y" if year else _DAY, locale=ENGLISH)


def short_day(day: date, *, year: bool = False) -> str:
    """A day for where there is little room: "1 Mar", "1 Mar 2026"."""
    return format_date(day, "d MMM y" if year else "d MMM", locale=ENGLISH)


def local_in_words(at: datetime, zone: ZoneInfo) -> str:
    """An aware instant in one zone, without its name: "Sunday 1 March 2026 at 18:00"."""
    return f"{_formatted(at, zone, f'{_DAY} y')} at {_clock(at, zone)}"


def zone_in_words(at: datetime, zone: ZoneInfo, locale: str = ENGLISH) -> str:
    """The zone by its place, "Buenos Aires time"; one without a place by its offset from UTC."""
    if _is_utc(zone):
        return "UTC"
    area, _, place = zone.key.partition("/")
    if not place or area == "Etc":
        return f"UTC{_formatted(at, zone, 'xxx')}"
    if _is_english(locale):
        return f"{place.rpartition('/')[2].replace('_', ' ')} time"
    return str(get_timezone_location(zone, locale=locale, return_city=True))


def time_left(now: datetime, until: datetime) -> str:
    """How long there is from `now` to `until`, cut down: "2 days and 3 hours", "50 minutes"."""
    minutes = max(0, int((until - now).total_seconds() // 60))
    days, hours = minutes // 1440, minutes % 1440 // 60
    if days:
        more = f" and {how_many(hours, 'hour')}" if hours and days < 7 else ""
        return f"{how_many(days, 'day')}{more}"
    if hours:
        more = f" and {how_many(minutes % 60, 'minute')}" if minutes % 60 and hours < 6 else ""
        return f"{how_many(hours, 'hour')}{more}"
    return how_many(minutes, "minute") if minutes else "less than a minute"


def _whole(at: datetime, zone: ZoneInfo, locale: str) -> str:
    """The day in full and the time, with the zone's name."""
    named = zone_in_words(at, zone, locale)
    if _is_english(locale):
        return f"{local_in_words(at, zone)} {named}"
    day = format_date(at.astimezone(zone).date(), "full", locale=locale)
    return f"{day}, {_clock(at, zone)} {named}"


def _elsewhere(at: datetime, zone: ZoneInfo, other: tzinfo, locale: str) -> str:
    """The time in another zone, with the weekday; with the whole day where it is another one."""
    local, there = at.astimezone(zone), at.astimezone(other)
    named = zone_in_words(at, other, locale) if isinstance(other, ZoneInfo) else "UTC"
    if local.date() == there.date():
        day = _formatted(at, other, "EEEE", locale)
    elif _is_english(locale):
        year = " y" if local.year != there.year else ""
        day = f"{_formatted(at, other, _DAY + year)} at"
    else:
        day = f"{format_date(there.date(), 'full', locale=locale)},"
    return f"{day} {_clock(at, other)} {named}"


def _is_english(locale: str) -> bool:
    return Locale.parse(locale).language == "en"


def _is_utc(zone: ZoneInfo) -> bool:
    return zone.key.removeprefix("Etc/") in {"UTC", "UCT", "Zulu", "Universal"}


def _clock(at: datetime, zone: tzinfo) -> str:
    return _formatted(at, zone, "HH:mm:ss" if at.second else "HH:mm")


def _formatted(at: datetime, zone: tzinfo, pattern: str, locale: str = ENGLISH) -> str:
    return format_datetime(at, pattern, tzinfo=zone, locale=locale)
