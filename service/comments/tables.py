"""Tables of comments: values separated by commas, semicolons, tabs or bars."""

from __future__ import annotations

import io
import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import chain, islice

from service.comments.column_content import Column
from service.comments.column_names import headers_named
from service.comments.columns import ColumnMap, header_hits, lines_above_header, map_columns
from service.comments.comment import Comment
from service.comments.csv_records import Record, records_of
from service.comments.entries import Times, comment_of, shortened
from service.comments.formats import Export, Format, OpenExport, Source, Unreadable
from service.comments.plain_rows import PlainRows
from service.comments.told import Told, told_of

_DELIMITERS = (",", ";", "\t", "|")
_SAMPLE_LINES = 200
#: How many rows tell which column holds what.
_ROWS_LOOKED_AT = 500
_SEPARATOR_LINE = re.compile(r"sep=(.)\s*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Layout:
    """How a text looks as a table: delimiter, columns, headers known, and how even its rows are."""

    delimiter: str
    columns: int
    hits: int
    even: float


def lines_of(text: str) -> list[str]:
    """The lines of a text with their ends: CRLF, LF or CR, and no other sign ends a line."""
    return list(io.StringIO(text, newline=""))


def layout_of(lines: Sequence[str]) -> Layout:
    """The table that the first lines make with the delimiter that fits best."""
    sample = lines[:_SAMPLE_LINES]
    named = _SEPARATOR_LINE.fullmatch(sample[0]) if sample else None
    if named:
        return _layout(sample[1:], named[1])
    layouts = [_layout(sample, delimiter) for delimiter in _DELIMITERS]
    return max(layouts, key=lambda one: (one.columns > 1, one.hits, one.even, one.columns))


def _layout(sample: Sequence[str], delimiter: str) -> Layout:
    rows = [record.cells for record in records_of(sample, delimiter) if record.cells]
    if not rows:
        return Layout(delimiter, 0, 0, 0.0)
    rows = rows[lines_above_header(rows) :]
    widths = [len(row) for row in rows]
    columns = max(set(widths), key=lambda width: (widths.count(width), width))
    return Layout(delimiter, columns, header_hits(rows[0]), widths.count(columns) / len(widths))


def has_times(lines: Sequence[str], layout: Layout) -> bool:
    """Whether a column of the table that the first lines make holds times, below its header."""
    rows = [one.cells for one in records_of(lines[:_SAMPLE_LINES], layout.delimiter) if one.cells]
    below = rows[lines_above_header(rows) + 1 :] or rows
    columns = (
        Column(place, tuple(row[place].strip() for row in below if place < len(row)))
        for place in range(layout.columns)
    )
    return any(column.holds_times for column in columns)


def read_table(text: str, source: Source) -> Export:
    """The comments of a table. Raises NoTextColumn, and BadExport for a column not there.

    Rows that cannot be read are among `unreadable`, with the line they begin on.
    """
    return open_table(lines_of(text), source).whole()


def open_table(lines: Iterable[str], source: Source) -> OpenExport:
    """The same of lines with their ends, row by row. Raises as `read_table`, before any row."""
    lines = iter(lines)
    sample = list(islice(lines, _SAMPLE_LINES))
    delimiter = layout_of(sample).delimiter
    if sample and _SEPARATOR_LINE.fullmatch(sample[0]):
        sample[0] = "\n"  # so that the lines after it keep their numbers
    records = records_of(chain(sample, lines), delimiter)
    return read_records(records, source, Grid("table", "line", delimiter))


@dataclass(frozen=True, slots=True)
class Grid:
    """What rows stand in: the export's format, what its rows are counted as, what parts cells."""

    format: Format
    unit: str
    delimiter: str = ""

    @property
    def gap(self) -> str:
        """What is put between cells where a row is shown."""
        return self.delimiter or " | "


def read_records(records: Iterator[Record], source: Source, grid: Grid) -> OpenExport:
    """The comments in the records of a table, row by row. Raises as `read_table`, before any."""
    first = list(islice(records, _ROWS_LOOKED_AT))
    if not grid.delimiter:  # a sheet has no ends of rows: the widest of them is its width
        width = max((len(record.cells) for record in first), default=0)
        first = [_padded(record, width) for record in first]
        records = (_padded(record, width) for record in records)
    titles = _titles(first, source)
    first = [record for record in first if record not in titles]
    rows = [record.cells for record in first if record.cells]
    columns = map_columns(rows or [("",)], source)
    if columns.has_header:
        head = next(record for record in first if record.cells)
        first.remove(head)
    times = Times(replace(source, zone="UTC") if columns.in_utc else source, columns.order)

    def notes() -> tuple[str, ...]:
        return (*_title_notes(titles, grid), *_column_notes(columns), *times.notes())

    both = chain(first, records)
    items, told = _read(both, columns, times, grid), _told(both, columns, times, grid)
    return OpenExport(grid.format, columns.pairs, items, notes, told, columns.names)


def _padded(record: Record, width: int) -> Record:
    return Record(record.line, record.cells + ("",) * (width - len(record.cells)))


def _titles(first: Sequence[Record], source: Source) -> list[Record]:
    """The records above the header, which are none of the table's."""
    readable = [record for record in first if record.cells]
    rows = [record.cells for record in readable]
    return readable[: lines_above_header(rows, headers_named(source))]


def _read(
    records: Iterable[Record], columns: ColumnMap, times: Times, grid: Grid
) -> Iterator[Comment | Unreadable]:
    for record in records:
        yield _read_one(record, columns, times, grid)


def _told(
    records: Iterable[Record], columns: ColumnMap, times: Times, grid: Grid
) -> Iterator[Told | Unreadable]:
    """The same as tuples of text: the plain rows quickly, the others as ever."""
    plain = PlainRows(columns, times)
    for record in records:
        told = None
        if not record.problem:
            told = plain.told(record.cells, f"{grid.unit} {record.line}")
        if told is not None:
            yield told
            continue
        one = _read_one(record, columns, times, grid)
        yield one if isinstance(one, Unreadable) else told_of(one)


def _read_one(record: Record, columns: ColumnMap, times: Times, grid: Grid) -> Comment | Unreadable:
    place = f"{grid.unit} {record.line}"
    if record.problem:
        return Unreadable(place, shortened(record.raw), record.problem)
    cells = _fitted(record.cells, columns, grid)
    if cells is None:
        why = f"the row has {len(record.cells)} columns where {len(columns.names)} were expected"
        return Unreadable(place, shortened(grid.gap.join(record.cells)), why)
    return comment_of(columns.fields(cells), place, times)


def _fitted(cells: Sequence[str], columns: ColumnMap, grid: Grid) -> Sequence[str] | None:
    """The row with as many cells as the table has, or None where it cannot be told how.

    Empty cells at the end may be missing. Where the words stand last, what is too much was cut
    off them by a delimiter in them that should have been quoted.
    """
    width, text = len(columns.names), columns.places["text"]
    if len(cells) <= text:
        return None
    if len(cells) <= width:
        return cells
    if not any(cells[width:]):
        return cells[:width]
    if grid.delimiter and columns.has_header and text == width - 1:
        return (*cells[:text], grid.delimiter.join(cells[text:]))
    return None


def _title_notes(titles: Sequence[Record], grid: Grid) -> Iterator[str]:
    if titles:
        passed = ", ".join(
            f"{grid.unit} {one.line} ({shortened(grid.gap.join(one.cells).rstrip(grid.gap))})"
            for one in titles
        )
        yield f"Above the header there are lines that were passed over: {passed}."


def _column_notes(columns: ColumnMap) -> Iterator[str]:
    if not columns.has_header:
        yield "The table has no headers; its columns were told by what stands in them."
    for meaning, others in columns.rivals:
        taken, *passed = (
            f"column {place + 1} ({columns.names[place]!r})"
            for place in (columns.places[meaning], *others)
        )
        yield f"Several columns may hold the {meaning}: {taken} was taken, not {' or '.join(passed)}."
    if columns.in_utc:
        yield f"The header {columns.names[columns.places['posted']]!r} says that times are in UTC."
    if "author" not in columns.places and "author_id" not in columns.places:
        yield "No column tells the authors: every comment counts as a voter of its own."
