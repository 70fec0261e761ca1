"""Dates and local date-times as people and tables write them, in several languages."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta, timezone
from typing import Literal

from service.comments.calendar_words import DAYS_BACK, day_names, month_names

Order = Literal["day first", "month first"]
_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class WrittenTime:
    """A date as written, with the time of day and the offset from UTC where they stand beside it.

    `days` are the days that it may mean: two where "3/4/2026" leaves open which is the month.
    `clock` is the time of day since midnight, `lasts` how long such a time stands: a minute where
    no seconds are written, nothing where they are.
    """

    days: tuple[date, ...]
    clock: timedelta | None = None
    lasts: timedelta = timedelta(0)
    offset: timezone | None = None


_CLOCK = (
    r"(?P<hour>\d{1,2})(?:(?::|\s?h\s?|(?P<dot>\.))(?P<minute>\d{2})"
    r"(?:[:.](?P<second>\d{2})(?:[.,](?P<fraction>\d{1,9}))?)?)?"
    r"(?P<uhr> ?uhr| ?h)?(?: ?(?P<half>[ap])\.? ?m\.?)?"
)
_JOINER = r"at|um|à|a las|a la|às|as|alle|alle ore|ore|om|kl\.?|klo|o|ob|в|о|·|-|–|—"
_OFFSET = re.compile(
    r"(?<=\d|m) ?(?:(?P<zulu>z|utc|gmt|ut)|(?:utc|gmt)?(?P<sign>[+-])(?P<hours>\d{1,2}):?"
    r"(?P<minutes>\d{2})?|(?P<letters>e[sd]t|c[sd]t|m[sd]t|p[sd]t))(?: ?\([^)]*\))?$"
)
#: RFC 5322 (October 2008), section 4.3; other letters name no one zone.
_LETTERS = {"est": -5, "edt": -4, "cst": -6, "cdt": -5, "mst": -7, "mdt": -6, "pst": -8, "pdt": -7}
_CLOCK_LAST = re.compile(rf"^(?P<date>.+?)(?:,? (?P<joiner>{_JOINER}) |,? |(?<=\d)t){_CLOCK}$")
_CLOCK_FIRST = re.compile(rf"^{_CLOCK}(?P<joiner>)(?:,? (?:{_JOINER}) |,? )(?P<date>.+)$")
_YEAR_FIRST = re.compile(r"(\d{4})([-/.])(\d{1,2})\2(\d{1,2})\.?")
_YEAR_LAST = re.compile(r"(\d{1,2})([-/.]) ?(\d{1,2})\2 ?(\d{4}|\d{2})")
_EAST_ASIAN = re.compile(r"(\d{4}) ?[年년] ?(\d{1,2}) ?[月월] ?(\d{1,2}) ?[日일]")
_DAY_MONTH = re.compile(
    r"(\d{1,2})(?:\.|st|nd|rd|th|er|º|°)?(?: de| d')? ?-?([^\W\d]+)\.?"
    r"(?:,? (?:de |del )?|-)?(\d{4})?(?: ?г\.?)?"
)
_MONTH_DAY = re.compile(r"([^\W\d]+)\.? (\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?")


def read_written(words: str, today: date | None, order: Order | None = None) -> WrittenTime | None:
    """The date and time that `words` (lower case, plain single spaces) write, or None.

    `today` is the local day of copying, for "yesterday at 14:05" and for dates without a year,
    which are the latest such day up to then; without it they are no dates. `order` settles dates
    like 3/4/2026.
    """
    words, offset = _split_offset(words)
    for rest, clock, lasts in _split_clock(words):
        days = _days(_without_weekday(rest), today, order)
        if days:
            return WrittenTime(days, clock, lasts, offset)
    if offset is not None:
        return None
    days = _days(_without_weekday(words), today, order)
    return WrittenTime(days) if days else None


def _split_offset(words: str) -> tuple[str, timezone | None]:
    found = _OFFSET.search(words)
    # "27-02-2026" ends in a year, not in an offset: an offset follows a time of day.
    if not found or not re.search(r"\d[:h.]\d\d|[ap]\.?m", words[: found.start()]):
        return words, None
    if found["letters"]:
        distance = timedelta(hours=_LETTERS[found["letters"]])
    elif found["zulu"]:
        distance = timedelta(0)
    else:
        distance = timedelta(hours=int(found["hours"]), minutes=int(found["minutes"] or 0))
        distance = -distance if found["sign"] == "-" else distance
    if abs(distance) >= _DAY:
        return words, None
    return words[: found.start()], timezone(distance)


def _split_clock(words: str) -> Iterator[tuple[str, timedelta, timedelta]]:
    """What is left beside a time of day at the end or the beginning, and that time."""
    for form in (_CLOCK_LAST, _CLOCK_FIRST):
        found = form.match(words)
        clock = _clock(found) if found else None
        if found and clock is not None:
            yield found["date"], clock, timedelta(seconds=0 if found["second"] else 60)


def _clock(found: re.Match[str]) -> timedelta | None:
    if not (found["minute"] or found["half"] or found["uhr"]):
        return None
    if found["dot"] and not (found["joiner"] or found["uhr"] or found["half"]):
        return None  # "27 2.26" is no time of day
    hour, minute, second = (int(found[part] or 0) for part in ("hour", "minute", "second"))
    if found["half"]:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if found["half"] == "p" else 0)
    if hour > 23 or minute > 59 or second > 59:
        return None
    micro = int((found["fraction"] or "")[:6].ljust(6, "0"))
    return timedelta(hours=hour, minutes=minute, seconds=second, microseconds=micro)


def _without_weekday(words: str) -> str:
    first, _, rest = words.partition(" ")
    return rest if rest and first.rstrip(".,") in day_names() else words


def _days(words: str, today: date | None, order: Order | None) -> tuple[date, ...]:
    """The days that a date may mean; none where it is no date."""
    words = words.strip(" ,·")
    if words in DAYS_BACK:
        return () if today is None else (today - DAYS_BACK[words] * _DAY,)
    for form in (_YEAR_FIRST, _EAST_ASIAN):
        found = form.fullmatch(words)
        if found:
            return _real((found[1], found[form.groups - 1], found[form.groups]))
    found = _YEAR_LAST.fullmatch(words)
    if found:
        return _either_order(found, order)
    return _named_month(words, today)


def _either_order(found: re.Match[str], order: Order | None) -> tuple[date, ...]:
    first, mark, second, year = found.groups()
    year = year if len(year) == 4 else f"20{year}"
    day_first, month_first = _real((year, second, first)), _real((year, first, second))
    # With dots the day stands first wherever such dates are in use (Unicode CLDR's patterns).
    if mark == "." or order == "day first":
        return day_first
    if order == "month first":
        return month_first
    return tuple(sorted({*day_first, *month_first}))


def _named_month(words: str, today: date | None) -> tuple[date, ...]:
    found = _DAY_MONTH.fullmatch(words)
    day, name, year = found.groups() if found else ("", "", None)
    if not found:
        found = _MONTH_DAY.fullmatch(words)
        name, day, year = found.groups() if found else ("", "", None)
    month = month_names().get(name or "")
    if not month:
        return ()
    if year:
        return _real((year, str(month), day))
    if today is None:
        return ()
    # Without a year: this year's, or where that is still to come, the year before's.
    found_days = [
        *_real((str(today.year), str(month), day)),
        *_real((str(today.year - 1), str(month), day)),
    ]
    return tuple(day for day in found_days if day <= today + _DAY)[:1]


def _real(parts: tuple[str, str, str]) -> tuple[date, ...]:
    try:
        return (date(int(parts[0]), int(parts[1]), int(parts[2])),)
    except ValueError:
        return ()


def order_of(texts: list[str]) -> Order | None:
    """The order of day and month that a column of dates shows, None where nothing tells."""
    seen: set[Order] = set()
    for text in texts:
        found = re.match(r"\s*(\d{1,2})[-/](\d{1,2})[-/]\d{2,4}\b", text)
        if found and int(found[1]) > 12 >= int(found[2]):
            seen.add("day first")
        if found and int(found[2]) > 12 >= int(found[1]):
            seen.add("month first")
    return seen.pop() if len(seen) == 1 else None


def wall_clock(day: date, clock: timedelta) -> datetime:
    """The naive local time of a day and a time since midnight."""
    return datetime(day.year, day.month, day.day) + clock  # noqa: DTZ001 - a wall clock has no zone
