"""Columns as the caller names them: by header, by number, or that there is none."""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.comments.column_content import Choosing, Column, may_be_time
from service.comments.entries import clean, shortened
from service.comments.formats import MEANINGS, Meaning, Source
from service.comments.meanings import spelled
from service.errors import BadExport

#: Named for a meaning that no column has.
NO_COLUMN = "-"
#: Between a column of dates and one of times of day.
_AND_CLOCK = " + "
_NUMBER = re.compile(r"(?:column )?(\d{1,5})", re.ASCII)


def names_of(headers: Sequence[str]) -> tuple[str, ...]:
    """What the columns are called: by their headers, and by number where that does not tell them."""
    names: list[str] = []
    for place, header in enumerate(headers, 1):
        name = " ".join(clean(header).split())
        if name in names:
            name = f"{name} (column {place})"
        names.append(name or f"column {place}")
    return tuple(names)


def is_number(header: str) -> bool:
    """Whether the caller's name for a column is its number, as 2 or as "column 2"."""
    return all(_NUMBER.fullmatch(part) for part in header.split(_AND_CLOCK))


def headers_named(source: Source) -> frozenset[str]:
    """The headers that the caller named; not numbers, nor what stands for no column."""
    parts = (part for _, header in source.columns for part in header.split(_AND_CLOCK))
    return frozenset(part for part in parts if part != NO_COLUMN and not is_number(part))


def meaning_called(meaning: str, name: str) -> Meaning:
    """The meaning that the caller named; BadExport, about the export `name`, for another word."""
    for known in MEANINGS:
        if meaning == known:
            return known
    raise BadExport(name, f"a column cannot mean {meaning!r}", f"name one of {', '.join(MEANINGS)}")


def take_named(choosing: Choosing, names: Sequence[str], source: Source) -> int | None:
    """Take the columns that the caller named; the column with the time of day, if one was named.

    Raises BadExport where a column is not there, or plainly holds something else.
    """
    clock = None
    for called, header in source.columns:
        meaning = meaning_called(called, source.name)
        if header == NO_COLUMN and NO_COLUMN not in names:
            choosing.without.add(meaning)
            continue
        places = _places_of(header, names, source.name, pair=meaning == "posted")
        choosing.take(meaning, places[0])
        if len(places) > 1:
            clock = places[1]
            choosing.not_free.add(clock)
        else:
            check_holds(meaning, names[places[0]], choosing.columns[places[0]], source.name)
    _check_text_is_alone(choosing, names, source)
    return clock


def check_holds(meaning: Meaning, header: str, column: Column, name: str) -> None:
    """Raise BadExport where a column or field that the caller named cannot mean what she says."""
    filled = column.filled
    if not filled:
        return
    told = f"{header!r} was named for {meaning}, but it holds"
    if meaning == "posted" and column.holds_clocks:
        what, todo = "only times of day", "name the days too, as in posted=Date + Time"
    elif meaning == "posted" and not any(map(may_be_time, filled)):
        what, todo = f"no times (the first is {shortened(filled[0])!r})", "name another for posted"
    elif meaning == "text" and len(filled) > 1 and column.holds_times and all(map(_told, filled)):
        what, todo = f"times (the first is {shortened(filled[0])!r})", "name another for text"
    elif meaning == "id" and len(filled) > 2 and len(set(filled)) == 1:
        what = f"the same for every comment ({shortened(filled[0])!r})"
        todo = "name another for id, or - for none"
    else:
        return
    raise BadExport(name, f"{told} {what}", todo)


def _told(value: str) -> bool:
    """Whether a time is told in numbers: in words, people say such things in comments."""
    return any(sign.isdigit() for sign in value)


def _check_text_is_alone(choosing: Choosing, names: Sequence[str], source: Source) -> None:
    for meaning, place in choosing.places.items():
        if meaning != "text" and place == choosing.places.get("text"):
            raise BadExport(
                source.name,
                f"{names[place]!r} was named for text and for {meaning}",
                "name a column of its own for each",
            )


def _places_of(header: str, names: Sequence[str], name: str, *, pair: bool) -> tuple[int, ...]:
    """Which column the caller named: by its header, else by its number from 1; two for `pair`."""
    place = _place_of(header, names)
    if place is not None:
        return (place,)
    day, _, clock = header.partition(_AND_CLOCK)
    both = (_place_of(day, names), _place_of(clock, names))
    if pair and both[0] is not None and both[1] is not None:
        return (both[0], both[1])
    raise BadExport(
        name, f"there is no column {header!r}", f"name one of these: {', '.join(names)}"
    )


def _place_of(header: str, names: Sequence[str]) -> int | None:
    for alike in (str, str.casefold, spelled):
        for place, each in enumerate(names):
            if alike(each) == alike(header):
                return place
    numbered = _NUMBER.fullmatch(header)
    if numbered and 1 <= int(numbered[1]) <= len(names):
        return int(numbered[1]) - 1
    return None
