"""Spreadsheets of comments, .xlsx and .ods, read as tables.

Both are zip archives of XML. How much may come out of one is bounded before anything is read: a
few kilobytes can be packed to become gigabytes.
"""

from __future__ import annotations

import io
import zlib
from collections.abc import Iterator
from dataclasses import replace
from itertools import islice
from typing import Literal
from xml.etree.ElementTree import ParseError
from zipfile import BadZipFile, ZipFile

from defusedxml.common import DefusedXmlException

from service.comments.columns import header_hits, lines_above_header
from service.comments.formats import Export, Source
from service.comments.sheet_cells import Book
from service.comments.sheets_ods import OdsBook
from service.comments.tables import Grid, read_records
from service.errors import BadExport, EmptyExport

_ZIP = b"PK\x03\x04"
_ODS = b"application/vnd.oasis.opendocument.spreadsheet"
_MEGABYTE = 1_000_000
_MOST_FILES = 5000
#: What a sheet may come to, unpacked: it is read row by row.
_LARGEST_SHEET = 300
#: What is kept in memory whole: the words that cells share.
_LARGEST_WORDS = 60
#: Everything else that is read: names of sheets, formats of numbers.
_LARGEST_REST = 5
_LOOKED_AT = 100
_MOST_SHEETS = 50
_TODO = "save it again without a password, or export the sheet as CSV"


def may_be_spreadsheet(beginning: bytes) -> bool:
    """Whether these bytes begin as a zip archive does, which every spreadsheet is."""
    return beginning.startswith(_ZIP)


def kind_of_spreadsheet(content: bytes) -> Literal["xlsx", "ods", ""]:
    """Which spreadsheet these bytes are by what is inside, or ""; one that is cut off counts."""
    if not may_be_spreadsheet(content):
        return ""
    if content[30:84] == b"mimetype" + _ODS:
        return "ods"
    try:
        with ZipFile(io.BytesIO(content)) as archive:
            names = {one.filename for one in archive.infolist()[:_MOST_FILES]}
    except (BadZipFile, ValueError, OSError, NotImplementedError):
        names = {"xl/workbook.xml"} if b"xl/" in content[:4096] else set()
    return "xlsx" if "xl/workbook.xml" in names else ""


def read_spreadsheet(content: bytes, source: Source) -> Export:
    """The comments of one sheet: the one named in `source.at`, else the likeliest.

    Raises BadExport where the archive is cut off, locked, too large or broken, or has no such
    sheet; EmptyExport; and as `read_table`.
    """
    try:
        with ZipFile(io.BytesIO(content)) as archive:
            _check_sizes(archive, source.name)
            kind = kind_of_spreadsheet(content)
            return _read(OdsBook(archive) if kind == "ods" else _xlsx(content), source)
    except BadExport:
        raise
    except DefusedXmlException:
        what = "the spreadsheet defines entities, which no spreadsheet needs"
        raise BadExport(source.name, what, _TODO) from None
    except (BadZipFile, ParseError, zlib.error, EOFError, KeyError):
        what = "the spreadsheet is cut off, locked or broken"
        raise BadExport(source.name, what, _TODO) from None
    except Exception as error:  # noqa: BLE001 - openpyxl raises whatever it stumbles over
        what = f"the spreadsheet is broken ({type(error).__name__})"
        raise BadExport(source.name, what, _TODO) from None


def _xlsx(content: bytes) -> Book:
    # Loaded when it is needed: its library takes much memory, and most exports are no spreadsheets.
    from service.comments.sheets_xlsx import XlsxBook  # noqa: PLC0415

    return XlsxBook(content)


def _check_sizes(archive: ZipFile, name: str) -> None:
    """Refuse what would unpack to too much. What an archive tells of sizes is what can be read."""
    files = archive.infolist()
    if len(files) > _MOST_FILES:
        raise BadExport(name, f"the spreadsheet holds {len(files):,} files", _TODO)
    for one in files:
        path = one.filename.casefold()
        if not path.endswith((".xml", ".rels")):
            continue  # pictures and programs are never unpacked
        most = _LARGEST_REST
        if path == "content.xml" or path.startswith("xl/worksheets/"):
            most = _LARGEST_SHEET
        elif path.endswith("sharedstrings.xml"):
            most = _LARGEST_WORDS
        if one.file_size > most * _MEGABYTE:
            raise BadExport(
                name,
                f"the spreadsheet unpacks to {one.file_size // _MEGABYTE:,} MB in one place, "
                f"and {most} MB are read",
                "export the sheet as CSV",
            )


def _read(book: Book, source: Source) -> Export:
    names = book.names
    if source.at is not None and source.at not in names:
        raise BadExport(
            source.name,
            f"there is no sheet {source.at!r}",
            f"name one of these: {', '.join(names[:_MOST_SHEETS])}",
        )
    chosen = source.at if source.at is not None else _likeliest(book, source)
    book.rounded.count = 0  # what was only looked at does not count
    export = read_records(book.rows(chosen), source, Grid("spreadsheet", "row")).whole()
    return replace(export, notes=(*_notes(chosen, names), *export.notes, *book.rounded.notes()))


def _likeliest(book: Book, source: Source) -> str:
    """The sheet with the most headers of comments; the first that is not empty where none has any."""
    found: dict[str, int] = {}
    for name in book.names[:_MOST_SHEETS]:
        rows = [record.cells for record in islice(book.rows(name), _LOOKED_AT)]
        if rows:
            found[name] = header_hits(rows[lines_above_header(rows)])
    if not found:
        raise EmptyExport(source.name)
    return max(found, key=lambda name: found[name])


def _notes(chosen: str, names: tuple[str, ...]) -> Iterator[str]:
    others = [name for name in names if name != chosen]
    if others:
        yield f"Of several sheets {chosen!r} was read, not {' or '.join(map(repr, others[:10]))}."
