"""Records of a table of comma-separated values, with the line each begins on.

RFC 4180 (October 2005), section 2, through Python's csv; what that library swallows in silence
(a quotation mark that is never closed) is told apart here, so that no comment is lost in it.
"""

from __future__ import annotations

import csv
from collections import deque
from collections.abc import Iterable, Iterator
from itertools import islice
from typing import NamedTuple

#: How many quotation marks that never close are looked behind, one by one.
_MOST_OPEN_QUOTES = 50


class Record(NamedTuple):
    """One record: the line it begins on, counted from 1, and its cells, or why it has none."""

    line: int
    cells: tuple[str, ...]
    problem: str = ""
    raw: str = ""


class _Feed:
    """Lines one after the other, of which those of the record at hand can be read again."""

    __slots__ = ("_again", "_lines", "ended", "place", "read")

    def __init__(self, lines: Iterable[str]) -> None:
        self._lines = iter(lines)
        self._again: deque[str] = deque()
        #: The lines that were read since the record at hand began.
        self.read: list[str] = []
        #: How many lines were read.
        self.place = 0
        self.ended = False

    def __iter__(self) -> _Feed:
        return self

    def __next__(self) -> str:
        if self._again:
            line = self._again.popleft()
        else:
            try:
                line = next(self._lines)
            except StopIteration:
                self.ended = True
                raise
        self.place += 1
        self.read.append(line)
        return line

    def go_back(self) -> None:
        """Have all lines of the record at hand but its first read again."""
        again = self.read[1:]
        self._again.extendleft(reversed(again))
        self.place -= len(again)
        self.read = []
        self.ended = False


def records_of(lines: Iterable[str], delimiter: str) -> Iterator[Record]:
    """The records in `lines` (with their ends), without those that are empty lines."""
    feed = _Feed(lines)
    for _ in range(_MOST_OPEN_QUOTES):
        for record in _until_broken(feed, delimiter):
            yield record
            if record.problem:
                feed.go_back()
                break
        else:
            return
    rest = list(islice(feed, 3))
    if rest:
        line = feed.place - len(rest) + 1
        yield Record(line, (), "too many quotation marks before it never close", "".join(rest))


def _until_broken(feed: _Feed, delimiter: str) -> Iterator[Record]:
    reader = csv.reader(feed, delimiter=delimiter)
    while True:
        feed.read.clear()
        begins = feed.place + 1
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error:
            limit = f"a field is longer than {csv.field_size_limit():,} characters"
            yield Record(begins, (), limit, feed.read[0])
            return
        if feed.ended:
            why = "the quotation mark that opens here is never closed; the file may be cut off"
            yield Record(begins, (), why, feed.read[0])
            return
        if any(cells):
            yield Record(begins, tuple(cells))
