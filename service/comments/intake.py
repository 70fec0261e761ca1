"""An export's bytes made into comments: the format is found by content."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

from service.comments.decoding import decode
from service.comments.feeds import in_utf8, is_feed, read_feed
from service.comments.formats import FORMATS, Export, Format, Source
from service.comments.json_documents import read_json, read_json_lines
from service.comments.json_values import parsed
from service.comments.pasted import has_time_lines, read_pasted
from service.comments.spreadsheets import kind_of_spreadsheet, read_spreadsheet
from service.comments.tables import has_times, layout_of, lines_of, read_table
from service.comments.times import zone_of
from service.errors import BadExport

_JSON_START = re.compile(r'\{\s*["}]|\[\s*[\[{"\]]')
_ONLY_NULLS = re.compile(r"null|\[\s*null\s*(?:,\s*null\s*)*\]")
_MARKUP_START = re.compile(
    r"<(?:\?xml|!doctype|html|head|body|feed|rss|[a-z]+[^<>]* xmlns)", re.IGNORECASE
)
_WITHOUT_COLUMNS = frozenset({"pasted", "activitystreams", "feed"})
_TABLE_NAMES = (".csv", ".tsv", ".tab")
_LINES_LOOKED_AT = 20
_TEXT_LOOKED_AT = 200_000
#: The share of rows with the usual number of cells that makes a table of unnamed columns.
_EVEN = 0.9


def read_export(content: bytes, source: Source) -> Export:
    """The comments that an export holds, in its own order.

    The format is told by content, `source.format` overrules it. Raises EmptyExport, BinaryExport,
    NoTextColumn, another BadExport, and BadTime for a zone that there is not. What cannot be read
    inside is among `unreadable`.
    """
    zone_of(source.zone)
    if kind_of_spreadsheet(content) and source.format in {None, "spreadsheet"}:
        return read_spreadsheet(content, source)
    if source.format == "spreadsheet":
        what = "this is no spreadsheet that can be read"
        raise BadExport(source.name, what, "hand in an .xlsx or .ods file, or leave out the format")
    decoded = decode(in_utf8(content), source.name)
    export = _READERS[format_of(decoded.text, source)](decoded.text, source)
    unused = ("Columns were named, but this format has none.",)
    without_columns = source.columns and export.format in _WITHOUT_COLUMNS
    notes = (*decoded.notes, *export.notes, *(unused if without_columns else ()))
    if source.at is not None and export.format in {"table", "pasted", "feed"}:
        notes = (*notes, "A place inside the export was named, but this format has none.")
    return replace(export, notes=notes)


def format_of(text: str, source: Source) -> Format:
    """The format of an export's text; the file's name only settles what the content leaves open.

    Raises BadExport for markup, which is no format of exports, and for an unknown `source.format`.
    """
    if source.format is not None:
        if source.format not in FORMATS:
            raise BadExport(
                source.name,
                f"there is no format {source.format!r}",
                f"name one of {', '.join(FORMATS)}",
            )
        return source.format
    start = text.lstrip()
    if is_feed(start):
        return "feed"
    if _MARKUP_START.match(start):
        raise BadExport(
            source.name,
            "this is a page's markup, not its comments",
            "open the page and paste its text, or export the comments as CSV or JSON",
        )
    if _JSON_START.match(start):
        return "json lines" if _is_json_lines(text, source) else "json"
    if _ONLY_NULLS.fullmatch(start.rstrip()):
        return "json"
    if _is_lines_of_objects(text):
        return "json lines"
    return "table" if _is_table(text, source) else "pasted"


def _is_table(text: str, source: Source) -> bool:
    """Whether a text is a table rather than a pasted page: by its headers, else its even rows."""
    beginning = text[:_TEXT_LOOKED_AT]
    lines = lines_of(beginning)
    layout = layout_of(lines)
    columned = layout.columns > 1
    if columned and (layout.hits > 1 or source.columns):
        return True
    if columned and layout.even >= _EVEN and (layout.delimiter == "\t" or layout.hits):
        return True
    if columned and layout.even >= _EVEN and has_times(lines, layout):
        return True
    named_so = source.name.casefold().endswith(_TABLE_NAMES) or bool(source.columns)
    return named_so and not has_time_lines(beginning, source)


def _is_json_lines(text: str, source: Source) -> bool:
    """Whether most of the first lines are JSON on their own, and the whole is not."""
    lines = [line for line in text.split("\n", 5 * _LINES_LOOKED_AT) if line.strip()]
    lines = lines[:_LINES_LOOKED_AT]
    if len(lines) < 2:
        return source.name.casefold().endswith((".jsonl", ".ndjson"))
    whole = sum(1 for line in lines if _is_json(line.strip()))
    return 2 * whole >= len(lines)


def _is_lines_of_objects(text: str) -> bool:
    """Whether JSON objects, a line each, stand below a first line that is another JSON value."""
    beginning = text[:_TEXT_LOOKED_AT].split("\n", 5 * _LINES_LOOKED_AT)
    lines = [line.strip() for line in beginning if line.strip()][:_LINES_LOOKED_AT]
    objects = sum(1 for line in lines if line.startswith("{") and _is_json(line))
    others = [line for line in lines if not line.startswith("{")]
    return 0 < len(lines) <= 2 * objects and all(_is_value(line) for line in others)


def _is_json(line: str) -> bool:
    return line.startswith(("{", "[")) and _is_value(line)


def _is_value(line: str) -> bool:
    try:
        parsed(line, "")
    except BadExport:
        return False
    return True


_READERS: dict[Format, Callable[[str, Source], Export]] = {
    "table": read_table,
    "json": read_json,
    "json lines": read_json_lines,
    "activitystreams": read_json,
    "feed": read_feed,
    "pasted": read_pasted,
}
