"""Sheets of .xlsx spreadsheets (ECMA-376, Office Open XML), through the library openpyxl."""

from __future__ import annotations

import io
import re
import warnings
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from datetime import date, datetime, time, timedelta
from itertools import islice
from typing import Any

from openpyxl import load_workbook
from openpyxl.utils.escape import unescape

from service.comments.csv_records import Record
from service.comments.sheet_cells import (
    MOST_COLUMNS,
    MOST_ROWS,
    Rounded,
    clock_text,
    day_text,
    length_text,
    moment_text,
    number_text,
    row_of,
)

#: Among so many rows the widest is looked for; a later one may be a little wider.
_ROWS_LOOKED_AT = 500
_WIDER = 5
_AT_ONCE = 500
#: In a format of numbers: texts and colours, which are no letters of a date.
_QUOTED = re.compile(r'"[^"]*"|\\.|\[[^\]]*\]')


class XlsxBook:
    """A workbook's sheets. Whatever openpyxl stumbles over, it raises."""

    def __init__(self, content: bytes) -> None:
        self.rounded = Rounded()
        with _quiet():
            self._book = load_workbook(
                io.BytesIO(content), read_only=True, data_only=True, keep_links=False
            )
        self._sheets: dict[str, Any] = {
            sheet.title: sheet for sheet in self._book.worksheets if sheet.sheet_state == "visible"
        }

    @property
    def names(self) -> tuple[str, ...]:
        """The sheets that are shown, in their order."""
        return tuple(self._sheets)

    def rows(self, name: str) -> Iterator[Record]:
        """The rows of a sheet that are not empty, numbered from 1."""
        sheet = self._sheets[name]
        sheet.reset_dimensions()  # what the file says of its size need not be true
        widths = [0]
        for rows in _in_pieces(sheet.iter_rows(max_row=_ROWS_LOOKED_AT, max_col=MOST_COLUMNS)):
            widths.extend(len(self._texts(0, cells)) for cells in rows)
        width = min(max(widths) + _WIDER, MOST_COLUMNS)
        self.rounded.count = 0  # those rows come again
        number = 0
        gap: object = None
        for rows in _in_pieces(sheet.iter_rows(max_row=MOST_ROWS, max_col=width)):
            for cells in rows:
                number += 1
                if cells is gap:  # a row that is not there is one and the same each time
                    continue
                row = row_of(number, self._texts(number, cells))
                gap = gap if row else cells
                if row:
                    yield row

    def _texts(self, number: int, cells: Iterable[Any]) -> list[str]:
        texts = ["" if cell.value is None else self._text(number, cell) for cell in cells]
        while texts and not texts[-1]:
            texts.pop()
        return texts

    def _text(self, number: int, cell: Any) -> str:
        """What a cell holds, as text; "" for an error such as #N/A."""
        value = cell.value
        if cell.data_type == "e":
            return ""
        if isinstance(value, str):
            return str(unescape(value)) if "_x" in value else value
        if isinstance(value, bool):
            return "true" if value else "false"
        if isinstance(value, int | float):
            return number_text(value, number, self.rounded)
        return _time_text(value, _QUOTED.sub("", str(cell.number_format)).casefold())


def _time_text(value: object, shown: str) -> str:
    """A date or time as its format of numbers (lower case, without texts) shows it."""
    seconds = "s" in shown or "h" not in shown
    if isinstance(value, datetime):
        midnight = value.time() == time()
        if midnight and "h" not in shown:
            return day_text(value.date())
        return moment_text(value, seconds_shown=seconds)
    if isinstance(value, date):
        return day_text(value)
    if isinstance(value, time):
        return clock_text(value, seconds_shown=seconds)
    return length_text(value) if isinstance(value, timedelta) else str(value)


def _in_pieces(rows: Iterable[Any]) -> Iterator[list[Any]]:
    """Rows, so many at once, without the library's warnings about what is odd in a file."""
    rows = iter(rows)
    while True:
        with _quiet():
            piece = list(islice(rows, _AT_ONCE))
        if not piece:
            return
        yield piece


@contextmanager
def _quiet() -> Iterator[None]:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        yield
