"""The stitch log as a plain table (CSV, RFC 4180), out and in again without a loss.

One row an entry, a header above. A cell of the host's own words that a spreadsheet would take for
a formula begins with an apostrophe in the table, which is taken away again when it is read.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal, InvalidOperation
from typing import TypeVar

from service.errors import BadLog
from service.pace.entry import HOWS, PERCENT, Details, Entry, How

COLUMNS = (
    *("entry", "day", "how", "page", "piece", "stitches", "percent", "first day"),
    *("fractional", "backstitch", "beads", "corrects", "taken back", "note"),
)
#: A cell that begins so would be taken for a formula by a spreadsheet.
FORMULAS = ("=", "+", "-", "@", "\t", "\r", "\n", "'")
_WORDS = frozenset(("piece", "note"))
_DELIMITERS = (",", ";", "\t")
#: A log of more rows is none of one person.
MOST_ROWS = 20_000


_Read = TypeVar("_Read")


@dataclass(frozen=True, slots=True)
class _Row:
    line: int
    cells: Mapping[str, str]

    def trouble(self, what: str, todo: str) -> BadLog:
        return BadLog(f"line {self.line}: {what}", todo)


def table_of(entries: Iterable[Entry]) -> str:
    """All entries as a table, those that were corrected too, in the order of their numbers."""
    with io.StringIO(newline="") as held:
        writer = csv.writer(held)
        writer.writerow(COLUMNS)
        for entry in entries:
            cells = _cells(entry)
            writer.writerow([_shown(column, cells[column]) for column in COLUMNS])
        return held.getvalue()


def entries_of(text: str, start: int = 1) -> tuple[Entry, ...]:
    """The entries of a table, numbered from `start` on.

    The columns may stand in any order and those that are not needed be left out; `day` and one of
    `stitches` and `percent` must be there. Without `how` a row with percent tells percent, one
    with a first day and neither page nor piece a rest, any other the stitches on its day.
    `corrects` names the `entry` of a row above; without a column `entry`, the row's number.

    Raises:
        BadLog: no such table, or a row that cannot be, by its line.
    """
    numbers: dict[str, int] = {}
    found: list[Entry] = []
    for row in _rows(text):
        number = start + len(found)
        found.append(_entry(row, number, numbers))
        _number_row(row, row.cells.get("entry") or str(len(found)), numbers, number)
    if not found:
        raise BadLog("the table has no row below its header", "hand in a log that has entries")
    return tuple(found)


def _number_row(row: _Row, name: str, numbers: dict[str, int], number: int) -> None:
    """Note the number that the row of that name has in the log."""
    if name in numbers:
        raise row.trouble(f"there are two entries {name}", "number each row once")
    numbers[name] = number


def _cells(entry: Entry) -> dict[str, str]:
    percent = entry.how == "percent"
    details = entry.details
    counted = not entry.taken_back and not entry.is_rest
    return {
        "entry": str(entry.number),
        "day": entry.day.isoformat(),
        "how": entry.how,
        "page": "" if entry.page is None else str(entry.page),
        "piece": entry.piece,
        "stitches": str(entry.amount) if counted and not percent else "",
        "percent": _percent_shown(entry.amount) if counted and percent else "",
        "first day": "" if entry.first is None else entry.first.isoformat(),
        "fractional": str(details.fractional or ""),
        "backstitch": str(details.backstitch or ""),
        "beads": str(details.beads or ""),
        "corrects": "" if entry.corrects is None else str(entry.corrects),
        "taken back": "yes" if entry.taken_back else "",
        "note": entry.note,
    }


def _percent_shown(hundredths: int) -> str:
    return f"{Decimal(hundredths) / PERCENT:f}"


def _shown(column: str, cell: str) -> str:
    return f"'{cell}" if column in _WORDS and cell.startswith(FORMULAS) else cell


def _rows(text: str) -> Iterator[_Row]:
    first_line = text.lstrip().partition("\n")[0]
    delimiter = max(_DELIMITERS, key=first_line.count)
    reader = csv.reader(
        io.StringIO(text.removeprefix("\ufeff"), newline=""), delimiter=delimiter, strict=True
    )
    columns: list[str] = []
    try:
        for number, cells in enumerate(reader):
            if not any(cell.strip() for cell in cells):
                continue
            if not columns:
                columns = _columns(cells)
                continue
            if number > MOST_ROWS:
                raise BadLog(f"the table has more than {MOST_ROWS:,} rows", "hand it in in parts")
            row = _Row(reader.line_num, dict(zip(columns, map(_plain, cells), strict=False)))
            if len(cells) > len(columns):
                raise row.trouble("it has more cells than the header", "quote cells with a comma")
            yield row
    except csv.Error as trouble:
        raise BadLog(
            f"line {reader.line_num}: this is no table ({trouble})", "save it as CSV again"
        ) from None


def _columns(cells: list[str]) -> list[str]:
    columns = [" ".join(cell.casefold().split()) for cell in cells]
    for column in columns:
        if column not in COLUMNS:
            raise BadLog(
                f"the table has a column {column!r}", f"use the columns {', '.join(COLUMNS)}"
            )
        if columns.count(column) > 1:
            raise BadLog(f"the table has two columns {column!r}", "leave one out")
    if "day" not in columns:
        raise BadLog("the table has no column 'day'", "begin with a line that names the columns")
    return columns


def _plain(cell: str) -> str:
    """The cell without the apostrophe that keeps a spreadsheet from calculating."""
    return cell.strip().removeprefix("'")


def _entry(row: _Row, number: int, numbers: Mapping[str, int]) -> Entry:
    percent = row.cells.get("percent", "")
    page = _number(row, "page")
    first = _day(row, "first day") if row.cells.get("first day") else None
    piece = row.cells.get("piece", "")
    how = _how(row, is_rest=first is not None and page is None and not piece)
    taken_back = _is_yes(row)
    amount = _percent(row, percent) if how == "percent" else _number(row, "stitches")
    if amount is None and how != "rest" and not taken_back and not _has_details(row):
        raise row.trouble("neither stitches nor percent are told", "tell one of them, if only 0")
    corrects = row.cells.get("corrects", "")
    if corrects and corrects not in numbers:
        raise row.trouble(f"it corrects entry {corrects}, which is not above", "correct its number")
    return Entry(
        number=number,
        day=_day(row, "day"),
        how=how,
        amount=amount or 0,
        page=page,
        piece=piece,
        details=Details(
            *(_number(row, name) or 0 for name in ("fractional", "backstitch", "beads"))
        ),
        first=first,
        corrects=numbers[corrects] if corrects else None,
        taken_back=taken_back,
        note=row.cells.get("note", ""),
    )


def _has_details(row: _Row) -> bool:
    return any(row.cells.get(name) for name in ("fractional", "backstitch", "beads"))


def _how(row: _Row, *, is_rest: bool) -> How:
    told = " ".join(row.cells.get("how", "").casefold().split())
    if told:
        for how in HOWS:
            if told == how:
                return how
        raise row.trouble(f"it is told as {told!r}", f"give one of {', '.join(HOWS)}")
    if row.cells.get("percent"):
        return "percent"
    return "rest" if is_rest else "on the day"


def _is_yes(row: _Row) -> bool:
    told = row.cells.get("taken back", "").casefold()
    if told not in {"", "yes", "no"}:
        raise row.trouble(f"taken back is {told!r}", "give yes, or leave it empty")
    return told == "yes"


def _number(row: _Row, column: str) -> int | None:
    return _read(row, column, _whole, "a whole number")


def _day(row: _Row, column: str) -> date:
    day = _read(row, column, date.fromisoformat, "a day such as 2026-03-01")
    if day is None:
        raise row.trouble(f"there is no {column}", "give it as in 2026-03-01")
    return day


def _read(row: _Row, column: str, read: Callable[[str], _Read], kind: str) -> _Read | None:
    cell = row.cells.get(column, "")
    if not cell:
        return None
    try:
        return read(cell)
    except ValueError:
        raise row.trouble(f"{column} is {cell[:40]!r}", f"give {kind}") from None


def _whole(cell: str) -> int:
    if not (cell.removeprefix("-").isascii() and cell.removeprefix("-").isdigit()):
        raise ValueError
    if len(cell) > 12:
        raise ValueError
    return int(cell)


def _percent(row: _Row, cell: str) -> int | None:
    """Percent as hundredths; a comma may part them too."""
    if not cell:
        return None
    told = cell.removesuffix("%").strip().replace(",", ".")
    try:
        value = Decimal(told) * PERCENT
    except InvalidOperation:
        value = Decimal("NaN")
    if not value.is_finite() or value != value.to_integral_value() or abs(value) > 1_000_000:
        raise row.trouble(f"percent is {cell[:40]!r}", "give a number such as 69.4")
    return int(value)
