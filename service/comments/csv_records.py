"""Records of a table of comma-separated values, with the line each begins on.

RFC 4180 (October 2005), section 2, through Python's csv; what that library swallows in silence
(a quotation mark that is never closed) is told apart here, so that no comment is lost in it.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

#: How many quotation marks that never close are looked behind, one by one.
_MOST_OPEN_QUOTES = 50


@dataclass(frozen=True, slots=True)
class Record:
    """One record: the line it begins on, counted from 1, and its cells, or why it has none."""

    line: int
    cells: tuple[str, ...]
    problem: str = ""
    raw: str = ""


class _Feed:
    """Lines from one on, which remembers how far it was read and whether it was read out."""

    __slots__ = ("ended", "lines", "place")

    def __init__(self, lines: Sequence[str], place: int) -> None:
        self.lines = lines
        self.place = place
        self.ended = False

    def __iter__(self) -> _Feed:
        return self

    def __next__(self) -> str:
        if self.place >= len(self.lines):
            self.ended = True
            raise StopIteration
        self.place += 1
        return self.lines[self.place - 1]


def records_of(lines: Sequence[str], delimiter: str) -> Iterator[Record]:
    """The records in `lines` (with their ends), without those that are empty lines."""
    start, open_quotes = 0, 0
    while start < len(lines):
        feed = _Feed(lines, start)
        for record in _until_broken(feed, delimiter):
            yield record
            if record.problem:
                start = record.line
                open_quotes += 1
                break
        else:
            return
        if open_quotes >= _MOST_OPEN_QUOTES and start < len(lines):
            rest = "".join(lines[start : start + 3])
            yield Record(start + 1, (), "too many quotation marks before it never close", rest)
            return


def _until_broken(feed: _Feed, delimiter: str) -> Iterator[Record]:
    reader = csv.reader(feed, delimiter=delimiter)
    while True:
        begins = feed.place
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error:
            limit = f"a field is longer than {csv.field_size_limit():,} characters"
            yield Record(begins + 1, (), limit, feed.lines[begins])
            return
        if feed.ended:
            why = "the quotation mark that opens here is never closed; the file may be cut off"
            yield Record(begins + 1, (), why, feed.lines[begins])
            return
        if any(cells):
            yield Record(begins + 1, tuple(cells))
