"""Spreadsheets for tests: .xlsx as a library writes them, .ods as office programs do."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Mapping, Sequence
from typing import Any
from xml.sax.saxutils import escape, quoteattr

from openpyxl import Workbook

ODS_TYPE = "application/vnd.oasis.opendocument.spreadsheet"
_OASIS = "urn:oasis:names:tc:opendocument:xmlns:"
_NAMESPACES = " ".join(f'xmlns:{name}="{_OASIS}{name}:1.0"' for name in ("office", "table", "text"))


def xlsx(rows: Sequence[Sequence[Any]], **others: Sequence[Sequence[Any]]) -> bytes:
    """A workbook with one sheet of these rows and the sheets named; (value, format) formats a cell."""
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    for title, content in {"Sheet": rows, **others}.items():
        if title != "Sheet":
            sheet = book.create_sheet(title)
        for number, row in enumerate(content, 1):
            for column, told in enumerate(row, 1):
                value, form = told if isinstance(told, tuple) else (told, None)
                cell = sheet.cell(number, column)
                if value is not None:
                    cell.value = value
                if form:
                    cell.number_format = form
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def zipped(files: Mapping[str, str | bytes]) -> bytes:
    """A zip archive of these files; the type of a document stands first and uncompressed."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in files.items():
            how = zipfile.ZIP_STORED if name == "mimetype" else zipfile.ZIP_DEFLATED
            archive.writestr(name, content, how)
    return out.getvalue()


def ods_of(content: str) -> bytes:
    """A document with this content.xml."""
    return zipped({"mimetype": ODS_TYPE, "content.xml": content})


def ods(rows: str, **others: str) -> bytes:
    """A document with one sheet of these rows (as XML) and the sheets named."""
    sheets = "".join(
        f'<table:table table:name="{name}"><table:table-column/>{content}</table:table>'
        for name, content in {"Sheet": rows, **others}.items()
    )
    return ods_of(
        f'<?xml version="1.0" encoding="UTF-8"?><office:document-content {_NAMESPACES}>'
        f"<office:body><office:spreadsheet>{sheets}</office:spreadsheet></office:body>"
        "</office:document-content>"
    )


def row(*cells: str, times: int = 1) -> str:
    """A row, repeated."""
    told = f' table:number-rows-repeated="{times}"' if times > 1 else ""
    return f"<table:table-row{told}>{''.join(cells)}</table:table-row>"


def cell(kind: str, shown: str = "", times: int = 1, **told: str) -> str:
    """A cell of a type with what it shows, each line a paragraph, and its values."""
    values = "".join(f" office:{name.replace('_', '-')}={quoteattr(told[name])}" for name in told)
    again = f' table:number-columns-repeated="{times}"' if times > 1 else ""
    words = "".join(f"<text:p>{escape(line)}</text:p>" for line in shown.split("\n"))
    return f'<table:table-cell office:value-type="{kind}"{values}{again}>{words}</table:table-cell>'


def words(*texts: str) -> str:
    """A row of texts."""
    return row(*(cell("string", text) for text in texts))


def empty(times: int) -> str:
    """Empty cells, as programs write them up to the sheet's last column."""
    return f'<table:table-cell table:number-columns-repeated="{times}"/>'
