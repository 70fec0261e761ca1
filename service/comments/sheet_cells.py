"""Cells of spreadsheets as the text that a table of the same comments would hold.

A date stays a day, a time is told as exactly as its cell shows it: where no seconds are shown and
none are kept, it stands for the whole minute.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Protocol

from service.comments.csv_records import Record

#: Of a row at most so many cells are read.
MOST_COLUMNS = 200
#: Both formats' programs hold no more rows in a sheet.
MOST_ROWS = 1_048_576
#: Beyond this a spreadsheet keeps no whole number as it is: it has 15 digits.
_EXACT = 10**15


class Book(Protocol):
    """The sheets of a spreadsheet."""

    @property
    def names(self) -> tuple[str, ...]:
        """The sheets that are shown, in their order."""

    @property
    def rounded(self) -> Rounded:
        """The numbers met so far that cannot be what was written."""

    def rows(self, name: str) -> Iterator[Record]:
        """The rows of a sheet that are not empty, numbered from 1; `name` is one of `names`."""


@dataclass(slots=True)
class Rounded:
    """Numbers of more than 15 digits: how many there were, and the row of the first."""

    count: int = 0
    first: int = 0

    def met(self, row: int) -> str:
        """Remember one. It is read as an empty cell: as an id it would join strangers."""
        self.first = self.first or row
        self.count += 1
        return ""

    def notes(self) -> Iterator[str]:
        """What the host should know of them."""
        if self.count:
            yield (
                f"Numbers of more than 15 digits: {self.count}, left out, because a spreadsheet "
                f"rounds them (first: row {self.first}); export as CSV if they are ids."
            )


def number_text(number: float, row: int, rounded: Rounded) -> str:
    """A number as it is written; "" for one that the spreadsheet has rounded."""
    if isinstance(number, int):
        return str(number)
    if not abs(number) < _EXACT:
        return rounded.met(row)
    return str(int(number)) if number.is_integer() else repr(number)


def day_text(day: date) -> str:
    """A day without a time."""
    return day.isoformat()


def moment_text(moment: datetime, *, seconds_shown: bool) -> str:
    """A day with its time."""
    return f"{moment.date().isoformat()} {clock_text(moment.time(), seconds_shown=seconds_shown)}"


def clock_text(clock: time, *, seconds_shown: bool) -> str:
    """A time of day."""
    if not seconds_shown and not clock.second and not clock.microsecond:
        return clock.isoformat("minutes")
    return clock.isoformat()


def length_text(length: timedelta) -> str:
    """A length of time as hours, minutes and seconds: some programs keep times of day so."""
    minutes, seconds = divmod(int(length.total_seconds()), 60)
    return f"{minutes // 60:02}:{minutes % 60:02}:{seconds:02}"


def row_of(number: int, cells: list[str]) -> Record | None:
    """A row without its empty end; None where all of it is empty."""
    while cells and not cells[-1]:
        cells.pop()
    return Record(number, tuple(cells)) if cells else None
