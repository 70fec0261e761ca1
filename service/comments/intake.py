"""An export's bytes made into comments: the format is found by content."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

from service.comments.content import Content, Held, beginning_of
from service.comments.decoding import encoding_of, lines_in, texts_of
from service.comments.feeds import declares_encoding, in_utf8, is_feed, read_feed
from service.comments.formats import FORMATS, Export, Format, OpenExport, Source
from service.comments.json_documents import read_json
from service.comments.json_lines import open_json_lines
from service.comments.json_values import parsed
from service.comments.pasted import has_time_lines, read_pasted
from service.comments.spreadsheets import kind_of_spreadsheet, may_be_spreadsheet, read_spreadsheet
from service.comments.tables import has_times, layout_of, lines_of, open_table
from service.comments.times import zone_of
from service.errors import BadExport, ExportTooLarge

_JSON_START = re.compile(r'\{\s*["}]|\[\s*[\[{"\]]')
_ONLY_NULLS = re.compile(r"null|\[\s*null\s*(?:,\s*null\s*)*\]")
_MARKUP_START = re.compile(
    r"<(?:\?xml|!doctype|html|head|body|feed|rss|[a-z]+[^<>]* xmlns)", re.IGNORECASE
)
_WITHOUT_COLUMNS = frozenset({"pasted", "activitystreams", "feed"})
_WITHOUT_PLACES = frozenset({"table", "pasted", "feed"})
#: So many bytes tell a spreadsheet, or XML that says what encoding it is in.
_MARKS_WITHIN = 200
_TABLE_NAMES = (".csv", ".tsv", ".tab")
_LINES_LOOKED_AT = 20
_TEXT_LOOKED_AT = 200_000
#: The share of rows with the usual number of cells that makes a table of unnamed columns.
_EVEN = 0.9
#: How many characters at least tell the format; all of them where there are fewer.
_BEGINNING = 1_000_000


def read_export(content: bytes, source: Source) -> Export:
    """The comments that an export holds, in its own order.

    The format is told by content, `source.format` overrules it. Raises EmptyExport, BinaryExport,
    NoTextColumn, another BadExport, and BadTime for a zone that there is not. What cannot be read
    inside is among `unreadable`.
    """
    return open_export(Held(content), source).whole()


def open_export(content: Content, source: Source, most_at_once: int | None = None) -> OpenExport:
    """The same, opened to be read: tables and JSON Lines come one comment at a time.

    The other formats can only be read whole: ExportTooLarge where they have more than
    `most_at_once` megabytes.
    """
    zone_of(source.zone)
    beginning = beginning_of(content, _MARKS_WITHIN)
    if may_be_spreadsheet(beginning):
        held = _whole(content, source, most_at_once)
        if kind_of_spreadsheet(held) and source.format in {None, "spreadsheet"}:
            return OpenExport.of(read_spreadsheet(held, source))
    if source.format == "spreadsheet":
        what = "this is no spreadsheet that can be read"
        raise BadExport(source.name, what, "hand in an .xlsx or .ods file, or leave out the format")
    if declares_encoding(beginning):
        content = Held(in_utf8(_whole(content, source, most_at_once)))
    return _open_text(content, source, most_at_once)


def _open_text(content: Content, source: Source, most_at_once: int | None) -> OpenExport:
    """The same of what is no spreadsheet."""
    encoding = encoding_of(content, source.name)
    form = format_of("".join(_within(texts_of(content, encoding))), source)
    if form in _BY_LINES:
        opened = _BY_LINES[form](lines_in(content, encoding, source.name), source)
    else:
        _check_size(content, source, most_at_once)
        opened = OpenExport.of(_READERS[form]("".join(texts_of(content, encoding)), source))

    def notes() -> tuple[str, ...]:
        return (*encoding.notes, *opened.notes(), *_in_vain(opened.format, source))

    return replace(opened, notes=notes)


def _in_vain(form: Format, source: Source) -> Iterator[str]:
    """What the caller said that says nothing about this format."""
    if source.columns and form in _WITHOUT_COLUMNS:
        yield "Columns were named, but this format has none."
    if source.at is not None and form in _WITHOUT_PLACES:
        yield "A place inside the export was named, but this format has none."


def _whole(content: Content, source: Source, most_at_once: int | None) -> bytes:
    _check_size(content, source, most_at_once)
    return b"".join(content.pieces())


def _check_size(content: Content, source: Source, most_at_once: int | None) -> None:
    """Raise ExportTooLarge for more megabytes than may be read at once."""
    if most_at_once is not None and content.size > most_at_once * 1_000_000:
        raise ExportTooLarge(most_at_once, source.name)


def _within(texts: Iterable[str]) -> Iterator[str]:
    """The pieces of the beginning that tells the format."""
    signs = 0
    for text in texts:
        yield text
        signs += len(text)
        if signs >= _BEGINNING:
            return


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
    "json": read_json,
    "activitystreams": read_json,
    "feed": read_feed,
    "pasted": read_pasted,
}
_BY_LINES: dict[Format, Callable[[Iterable[str], Source], OpenExport]] = {
    "table": open_table,
    "json lines": open_json_lines,
}
