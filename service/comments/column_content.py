"""What a column holds, told from what stands in it: times, names, ids or the comments' words."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime

from service.comments.formats import Meaning
from service.comments.times import read_when

_ANY_DAY = datetime(2100, 1, 1, tzinfo=UTC)
_CODE = re.compile(r"[\w.:/@#-]*\d[\w.:/@#-]*")
_CLOCK = re.compile(r"\d{1,2}[:.h]\d{2}(?:[:.]\d{2})?(?: ?[apAP]\.?[mM]\.?)?")
#: The share of a column's values that must be alike for the column to be of that kind.
_MOST = 0.8
_TIMES_LOOKED_AT = 40


@dataclass(frozen=True, slots=True)
class Column:
    """A column's place, counted from 0, and what stands in it in the first rows."""

    place: int
    values: tuple[str, ...]

    @property
    def filled(self) -> list[str]:
        """The values that are not empty."""
        return [value for value in self.values if value]

    def _mostly(self, kept: Sequence[str]) -> bool:
        return bool(kept) and len(kept) >= _MOST * len(self.filled)

    @property
    def holds_times(self) -> bool:
        """Whether most values are times; bare numbers are not taken for any."""
        tried = self.filled[:_TIMES_LOOKED_AT]
        return bool(tried) and sum(map(_is_time, tried)) >= _MOST * len(tried)

    @property
    def holds_clocks(self) -> bool:
        """Whether most values are times of day."""
        return self._mostly([value for value in self.filled if _CLOCK.fullmatch(value)])

    @property
    def holds_numbers(self) -> bool:
        """Whether most values are whole numbers."""
        return self._mostly([value for value in self.filled if value.isdecimal()])

    @property
    def counts_rows(self) -> bool:
        """Whether it numbers the rows, from 0 or 1 on."""
        return (
            any(
                self.values
                == tuple(str(number) for number in range(first, first + len(self.values)))
                for first in (0, 1)
            )
            and len(self.values) > 2
        )

    @property
    def holds_codes(self) -> bool:
        """Whether most values are single words with digits, such as ids and addresses."""
        codes = [value for value in self.filled if _CODE.fullmatch(value) and len(value) > 3]
        return self._mostly(codes) or self._mostly(
            [value for value in self.filled if value.startswith(("http://", "https://"))]
        )

    @property
    def holds_names(self) -> bool:
        """Whether most values could be names: a few words without digits or full sentences."""
        return self._mostly(
            [
                value
                for value in self.filled
                if len(value.split()) <= 4 and not re.search(r"\d|[.!?,]$|\n", value)
            ]
        )

    @property
    def talk(self) -> float:
        """How much the values are like comments: long, of many words, with digits and breaks."""
        filled = self.filled
        if not filled:
            return 0.0
        total = sum(
            min(len(value), 100) / 10
            + len(value.split())
            + (3 if any(sign.isdigit() for sign in value) else 0)
            + (5 if "\n" in value else 0)
            for value in filled
        )
        return total / len(filled)


def may_be_time(value: str) -> bool:
    """Whether a value can be read as a time at all, be it a bare number."""
    return read_when(value, UTC, _ANY_DAY) is not None


def _is_time(value: str) -> bool:
    when = read_when(value, UTC, _ANY_DAY)
    return when is not None and when.kind not in {"number", "bare"}


def is_header(rows: Sequence[Sequence[str]]) -> bool:
    """Whether the first row, whose names say nothing, is unlike those below it."""
    if len(rows) < 2:
        return False
    for place, first in enumerate(rows[0]):
        below = Column(place, tuple(row[place].strip() for row in rows[1:] if place < len(row)))
        name = first.strip()
        if not name or not below.filled:
            continue
        if below.holds_times and not _is_time(name):
            return True
        if below.holds_numbers and not any(sign.isdigit() for sign in name):
            return True
    return False


@dataclass(slots=True)
class Choosing:
    """Columns on their way to a meaning: those taken, and those known to be none of a comment's.

    `without` are the meanings that no column has, because the caller says so.
    """

    columns: list[Column]
    places: dict[Meaning, int] = field(default_factory=dict)
    not_free: set[int] = field(default_factory=set)
    without: set[Meaning] = field(default_factory=set)

    def take(self, meaning: Meaning, place: int) -> None:
        """Let the column at `place` be the one of `meaning`."""
        self.places[meaning] = place
        self.not_free.add(place)

    def lacks(self, meaning: Meaning) -> bool:
        """Whether a column of this meaning is still looked for."""
        return meaning not in self.places and meaning not in self.without

    def free(self) -> list[Column]:
        """The columns that may still be anything."""
        return [column for column in self.columns if column.place not in self.not_free]


def by_content(choosing: Choosing, *, has_header: bool) -> None:
    """Fill in what the headers left open from what stands in the columns."""
    for column in choosing.free():
        if not column.filled or column.counts_rows:
            choosing.not_free.add(column.place)
    _take_times(choosing)
    if not has_header:
        _take_codes(choosing)
    if choosing.lacks("text"):
        _take_text(choosing)
    if choosing.lacks("author") and "text" in choosing.places:
        _take_author(choosing)


def _take_times(choosing: Choosing) -> None:
    """The fullest column of times is the posting; a sparser one after it is the edit."""
    times = sorted(
        (column for column in choosing.free() if column.holds_times),
        key=lambda column: (-len(column.filled), column.place),
    )
    for meaning, column in zip(_missing(choosing, "posted", "edited"), times, strict=False):
        choosing.take(meaning, column.place)
    for column in times:
        choosing.not_free.add(column.place)


def _take_codes(choosing: Choosing) -> None:
    """Ids: of comments where no two are alike, of what they answer, of authors."""
    codes = [column for column in choosing.free() if column.holds_codes]
    own = next(
        (one for one in codes if len(set(one.values)) == len(one.values) and all(one.values)), None
    )
    if own and choosing.lacks("id"):
        choosing.take("id", own.place)
        codes.remove(own)
    answered = next((one for one in codes if own and set(one.filled) <= set(own.values)), None)
    if answered and choosing.lacks("reply_to"):
        choosing.take("reply_to", answered.place)
        codes.remove(answered)
    # A lone column of codes may be the comments themselves ("pg42").
    if codes and len(choosing.free()) > len(codes) + 1 and choosing.lacks("author_id"):
        choosing.take("author_id", codes[0].place)


def _take_text(choosing: Choosing) -> None:
    free = choosing.free()
    words = [column for column in free if not column.holds_numbers]
    numbers = [column for column in free if column.holds_numbers]
    named = "author" in choosing.places
    only_names = len(words) == 1 and words[0].holds_names and not named
    if words and not (only_names and numbers):
        choosing.take("text", max(words, key=lambda column: column.talk).place)
    elif numbers and (words or named or "posted" in choosing.places):
        # Comments that are nothing but page numbers.
        choosing.take("text", numbers[-1].place)


def _take_author(choosing: Choosing) -> None:
    """The column most like names. One of a few values for all rows is a kind, not an author."""
    named = [
        column
        for column in choosing.free()
        if not column.holds_numbers
        and not column.holds_codes
        and (len(column.filled) < 8 or 3 * len(set(column.filled)) >= len(column.filled))
    ]
    if named:
        choosing.take("author", min(named, key=lambda column: column.talk).place)


def _missing(choosing: Choosing, *meanings: Meaning) -> list[Meaning]:
    return [meaning for meaning in meanings if choosing.lacks(meaning)]
