"""Times told from the moment of copying: "3 days ago", "vor 2 Stunden", "il y a un mois".

The patterns are Unicode CLDR's, read through Babel, in every language listed here.
"""

from __future__ import annotations

import re
from calendar import monthrange
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import lru_cache
from typing import Any

from babel import Locale

from service.comments.calendar_words import AT_LEAST, NOW, ONES, ROUGHLY
from service.comments.spans import Span

#: Whose relative times are known. A page is copied in one of them, which one is not asked.
LANGUAGES = (
    *("en", "fr", "fr_CA", "de", "es", "it", "pt", "pt_PT", "nl", "sv", "pl", "ja"),
    *(
        "da",
        "nb",
        "nn",
        "is",
        "fo",
        "fi",
        "et",
        "lv",
        "lt",
        "cs",
        "sk",
        "sl",
        "hr",
        "hu",
        "ro",
        "bg",
    ),
    *("ru", "uk", "el", "tr", "ar", "he", "hi", "th", "vi", "id", "ms", "ko", "zh", "zh_Hant"),
    *("ca", "eu", "gl", "ga", "gd", "cy"),
)
#: Whose bare short forms ("3d") are known: in more languages one letter would mean anything.
_BARE = frozenset({"en", "fr", "de", "es", "it", "pt", "nl", "sv", "pl", "ja"})
_SECONDS = {"second": 1, "minute": 60, "hour": 3600, "day": 86400, "week": 604800}
_MONTHS = {"month": 1, "quarter": 3, "year": 12}
_UNITS = (*_SECONDS, *_MONTHS)
_WIDTHS = ("", "-short", "-narrow")
_NUMBER = re.compile(r"\d{1,5}")
_DAY = timedelta(days=1)
#: A span holds both its ends, and "less than" leaves its end out.
_TICK = timedelta(microseconds=1)
#: Pages differ in how long "just now" lasts; none known to us goes beyond this.
_JUST_NOW = timedelta(minutes=5)


@dataclass(frozen=True, slots=True)
class Elapsed:
    """How long ago: `bare` where only the length is told ("3d"), without a word for "ago"."""

    span: Span
    bare: bool = False


def read_elapsed(words: str, copied_at: datetime) -> Elapsed | None:
    """How long before `copied_at`, or None. `words` is lower case with single plain spaces.

    "N units ago" is at least N and less than N+1 units before the copying, so that "3 hours ago"
    is before "2 hours ago" on one page. Where a short form stands for two units in different
    languages ("3 m"), the span covers both.
    """
    if words in NOW:
        return Elapsed(Span(copied_at - _JUST_NOW, copied_at))
    words = AT_LEAST.sub("", words)
    rough = ROUGHLY.match(words)
    if rough:
        words = words[rough.end() :]
    for pattern, number in _ways(words):
        units, bare = _patterns().get(_compact(pattern), (frozenset(), False))
        if units:
            return _covering(units, number, copied_at, bare=bare, rough=bool(rough))
    return None


def _ways(words: str) -> Iterator[tuple[str, int]]:
    """The words with their number taken out, in each way that it may be told."""
    found = _NUMBER.search(words)
    if found:
        yield words[: found.start()] + "{0}" + words[found.end() :], int(found.group())
        return
    parts = words.replace("un'", "un ").split(" ")
    for place, part in enumerate(parts):
        if part in ONES:
            yield " ".join([*parts[:place], "{0}", *parts[place + 1 :]]), 1
    yield words, 1


def _covering(
    units: frozenset[str], number: int, copied_at: datetime, *, bare: bool, rough: bool
) -> Elapsed | None:
    try:
        ends = [_ends(unit, number, copied_at, rough=rough) for unit in units]
    except (OverflowError, ValueError):
        return None
    return Elapsed(Span(min(first for first, _ in ends), max(last for _, last in ends)), bare)


def _ends(unit: str, number: int, copied_at: datetime, *, rough: bool) -> tuple[datetime, datetime]:
    """The earliest and the latest instant that is `number` units before the copying."""
    least = max(number - 1, 0) if rough else number
    if unit in _SECONDS:
        size = timedelta(seconds=_SECONDS[unit])
        return copied_at - (number + 1) * size + _TICK, copied_at - least * size
    # Some pages count months by the calendar, some as 30 days, some as a twelfth of a year;
    # the calendar's month may begin on another day where the writer lives.
    months, more = least * _MONTHS[unit], (number + 1) * _MONTHS[unit]
    days = 365 * least if unit == "year" else 30 * months
    latest = max(months_before(copied_at, months), copied_at - days * _DAY)
    longest = copied_at - timedelta(days=365.25 * more / 12)
    return min(months_before(copied_at, more), longest) - _DAY, latest


def months_before(moment: datetime, months: int) -> datetime:
    """The same day and time `months` calendar months earlier, or the last day of that month."""
    year, month = divmod(moment.year * 12 + moment.month - 1 - months, 12)
    if not 0 < year < 10_000:
        return datetime.min.replace(tzinfo=moment.tzinfo)
    last_day = monthrange(year, month + 1)[1]
    return moment.replace(year=year, month=month + 1, day=min(moment.day, last_day))


@lru_cache(maxsize=1)
def _patterns() -> dict[str, tuple[frozenset[str], bool]]:
    """Each pattern of every language, with the units it may stand for and whether it is bare."""
    told: dict[str, set[str]] = {}
    bare: dict[str, set[str]] = {}
    for code in LANGUAGES:
        data: Any = Locale.parse(code)._data  # noqa: SLF001 - Babel shows these patterns nowhere else
        for unit in _UNITS:
            for pattern in _past_forms(data, unit):
                told.setdefault(_compact(pattern), set()).add(unit)
            for pattern in _length_forms(data, unit) if code in _BARE else ():
                bare.setdefault(_compact(pattern), set()).add(unit)
    known = {pattern: (frozenset(units), True) for pattern, units in bare.items()}
    known.update({pattern: (frozenset(units), False) for pattern, units in told.items()})
    return known


def _past_forms(data: Any, unit: str) -> Iterator[str]:
    for width in _WIDTHS:
        for form, pattern in data["date_fields"].get(unit + width, {}).get("past", {}).items():
            words = plain(pattern)
            if words.startswith(("-", "−", "+")):  # a bare number with a sign says too little
                continue
            yield words
            if form == "one" and "{0} " in words:
                yield words.replace("{0} ", "")  # Polish and others leave out the one


def _length_forms(data: Any, unit: str) -> Iterator[str]:
    for width, forms in data["unit_patterns"].get(f"duration-{unit}", {}).items():
        for form, pattern in forms.items() if width != "compound" else ():
            if form != "per" and "{0}" in pattern:
                yield plain(pattern)
    for words in _past_forms(data, unit):
        if words.startswith("{0}") and words.endswith(" ago"):
            yield words.removesuffix(" ago")  # English pages write "3mo" as well


def _compact(words: str) -> str:
    """Without spaces and full stops, which pages put into short forms as they like."""
    return words.replace(" ", "").replace(".", "")


_SPACES = re.compile(r"[\s\u200e\u200f\u061c\u2066-\u2069\ufeff]+")


def plain(text: str) -> str:
    """Lower case, one plain apostrophe, single plain spaces, no marks of direction."""
    return _SPACES.sub(" ", text.replace("’", "'")).strip().casefold()
