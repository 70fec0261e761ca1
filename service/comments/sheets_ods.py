"""Sheets of .ods spreadsheets: OASIS OpenDocument 1.3 (27 April 2021), part 3, sections 9 and 19.

Read as a stream through defusedxml: the libraries for this format hold the whole document in
memory several times over, or write every repeated row out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date, datetime, time
from functools import cached_property
from xml.etree.ElementTree import Element
from zipfile import ZipFile

from defusedxml.ElementTree import iterparse

from service.comments.csv_records import Record
from service.comments.sheet_cells import (
    MOST_COLUMNS,
    MOST_ROWS,
    Rounded,
    clock_text,
    day_text,
    moment_text,
    number_text,
    row_of,
)

_OASIS = "{urn:oasis:names:tc:opendocument:xmlns:"
_OFFICE, _TABLE, _TEXT = (f"{_OASIS}{name}:1.0}}" for name in ("office", "table", "text"))
_CELLS = frozenset({f"{_TABLE}table-cell", f"{_TABLE}covered-table-cell"})
#: Notes beside a cell and in its text, which are no part of it.
_BESIDE = frozenset({f"{_OFFICE}annotation", f"{_TEXT}note", f"{_TEXT}ruby-text"})
_MOST_SPACES = 1000
_DURATION = re.compile(r"PT(\d{1,4})H(\d{1,2})M(\d{1,2})(?:[.,]\d+)?S")
_SECONDS = re.compile(r"\d:\d\d:\d\d(?!\d)")
_MINUTES = re.compile(r"\d:\d\d")


class OdsBook:
    """A document's sheets. Raises ParseError for broken XML, DefusedXmlException for a bomb."""

    def __init__(self, archive: ZipFile) -> None:
        self._archive = archive
        self.rounded = Rounded()

    @cached_property
    def names(self) -> tuple[str, ...]:
        """The sheets, in their order."""
        found: list[str] = []
        depth = 0
        for event, element in self._events():
            if element.tag == f"{_TABLE}table":
                depth += 1 if event == "start" else -1
                if event == "start" and depth == 1:
                    found.append(_name(element, len(found)))
            if event == "end" and element.tag == f"{_TABLE}table-row":
                element.clear()
        return tuple(found)

    def rows(self, name: str) -> Iterator[Record]:
        """The rows of a sheet that are not empty, numbered from 1."""
        number, seen, depth = 1, 0, 0
        inside = False
        for event, element in self._events():
            if element.tag == f"{_TABLE}table":
                depth += 1 if event == "start" else -1
                if event == "start" and depth == 1:
                    inside = _name(element, seen) == name
                    seen += 1
                elif inside and depth == 0:
                    return
            elif event == "end" and element.tag == f"{_TABLE}table-row" and depth == 1:
                times = _count(element, "number-rows-repeated") if inside else 0
                cells = _cells(element, number, self.rounded) if inside else []
                for row in range(number, min(number + times, MOST_ROWS + 1) if cells else number):
                    record = row_of(row, list(cells))
                    if record:
                        yield record
                number += times
                element.clear()

    def _events(self) -> Iterator[tuple[str, Element]]:
        with self._archive.open("content.xml") as content:
            yield from iterparse(content, events=("start", "end"), forbid_dtd=True)


def _name(table: Element, place: int) -> str:
    return table.get(f"{_TABLE}name") or f"sheet {place + 1}"


def _count(element: Element, name: str) -> int:
    """How often a row or cell stands there; it is written once."""
    told = element.get(f"{_TABLE}{name}", "1")
    return int(told) if re.fullmatch(r"[1-9]\d{0,6}", told) else 1


def _cells(row: Element, number: int, rounded: Rounded) -> list[str]:
    cells: list[str] = []
    for cell in row.iter():
        if cell.tag not in _CELLS:
            continue
        text = "" if cell.tag.endswith("covered-table-cell") else _text(cell, number, rounded)
        times = min(_count(cell, "number-columns-repeated"), MOST_COLUMNS - len(cells))
        cells.extend([text] * times)
    while cells and not cells[-1]:
        cells.pop()
    return cells


def _text(cell: Element, number: int, rounded: Rounded) -> str:
    """What a cell holds by its type (section 19.387, office:value-type)."""
    kind = cell.get(f"{_OFFICE}value-type", "")
    if kind in {"float", "percentage", "currency"}:
        told = cell.get(f"{_OFFICE}value", "")
        return number_text(int(told) if told.isdecimal() else float(told), number, rounded)
    if kind == "date":
        return _date_text(cell.get(f"{_OFFICE}date-value", ""), _words(cell))
    if kind == "time":
        return _clock_text(cell.get(f"{_OFFICE}time-value", ""), _words(cell))
    if kind == "boolean":
        return cell.get(f"{_OFFICE}boolean-value", "")
    return _words(cell) or cell.get(f"{_OFFICE}string-value", "")


def _date_text(told: str, shown: str) -> str:
    if "T" not in told:
        return day_text(date.fromisoformat(told))
    return moment_text(datetime.fromisoformat(told), seconds_shown=_shows_seconds(shown))


def _clock_text(told: str, shown: str) -> str:
    found = _DURATION.fullmatch(told)
    if not found:
        return shown
    hour, minute, second = map(int, found.groups())
    if hour > 23 or minute > 59 or second > 59:
        return f"{hour:02}:{minute:02}:{second:02}"
    return clock_text(time(hour, minute, second), seconds_shown=_shows_seconds(shown))


def _shows_seconds(shown: str) -> bool:
    """Whether what a cell shows tells seconds; where it shows no time at all, nothing is known."""
    return bool(_SECONDS.search(shown)) or not _MINUTES.search(shown)


def _words(cell: Element) -> str:
    """The paragraphs of a cell, a line each (section 5.1.3)."""
    lines = ["".join(_pieces(part)) for part in cell if part.tag == f"{_TEXT}p"]
    return "\n".join(lines)


def _pieces(element: Element) -> Iterator[str]:
    """The text inside an element, with its spaces, tabs and line breaks (section 6.1)."""
    yield element.text or ""
    for part in element:
        if part.tag == f"{_TEXT}s":
            told = part.get(f"{_TEXT}c", "1")
            yield " " * (min(int(told), _MOST_SPACES) if re.fullmatch(r"\d{1,9}", told) else 1)
        elif part.tag == f"{_TEXT}tab":
            yield "\t"
        elif part.tag == f"{_TEXT}line-break":
            yield "\n"
        elif part.tag not in _BESIDE:
            yield from _pieces(part)
        yield part.tail or ""
