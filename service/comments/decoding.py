"""An export's bytes as text, whatever encoding they are in; what is no text is named."""

from __future__ import annotations

import codecs
import re
from dataclasses import dataclass

from service.errors import BinaryExport, EmptyExport


@dataclass(frozen=True, slots=True)
class Decoded:
    """An export's text, and sentences on how its bytes were read where that is worth saying."""

    text: str
    notes: tuple[str, ...] = ()


_KINDS: tuple[tuple[int, bytes, str], ...] = (
    (0, b"\x89PNG\r\n\x1a\n", "a picture (PNG)"),
    (0, b"\xff\xd8\xff", "a picture (JPEG)"),
    (0, b"GIF87a", "a picture (GIF)"),
    (0, b"GIF89a", "a picture (GIF)"),
    (8, b"WEBP", "a picture (WebP)"),
    (0, b"II*\x00", "a picture (TIFF)"),
    (0, b"MM\x00*", "a picture (TIFF)"),
    (0, b"\x00\x00\x01\x00", "a picture (icon)"),
    (4, b"ftypavif", "a picture (AVIF)"),
    (4, b"ftyphei", "a picture (HEIC)"),
    (4, b"ftyp", "a video"),
    (0, b"\x1aE\xdf\xa3", "a video"),
    (0, b"OggS", "a sound recording"),
    (0, b"ID3", "a sound recording"),
    (0, b"fLaC", "a sound recording"),
    (8, b"WAVE", "a sound recording"),
    (0, b"%PDF-", "a PDF document"),
    (0, b"{\\rtf", "a rich-text document"),
    (0, b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "an old spreadsheet or document"),
    (0, b"\x1f\x8b", "a gzip archive"),
    (0, b"BZh", "a bzip2 archive"),
    (0, b"\xfd7zXZ\x00", "an xz archive"),
    (0, b"7z\xbc\xaf\x27\x1c", "a 7z archive"),
    (0, b"Rar!\x1a\x07", "a rar archive"),
    (0, b"(\xb5/\xfd", "a zstd archive"),
    (257, b"ustar", "a tar archive"),
    (0, b"SQLite format 3\x00", "a database"),
    (0, b"\x7fELF", "a program"),
    (0, b"\xca\xfe\xba\xbe", "a program"),
    (0, b"\xcf\xfa\xed\xfe", "a program"),
)
#: Letters that begin texts too: only with NUL bytes soon after them are they what they say.
_SHORT_KINDS = ((b"MZ", "a program"), (b"BM", "a picture (BMP)"))
_ZIPPED = (
    (b"opendocument.spreadsheet", "a spreadsheet (.ods)"),
    (b"opendocument.text", "a text document (.odt)"),
    (b"xl/", "a spreadsheet (.xlsx)"),
    (b"word/", "a text document (.docx)"),
)
_CONTROLS = re.compile(r"[\x00-\x08\x0e-\x1a\x1c-\x1f\x7f\ufffd]")
#: In a text, at most this share of characters, or a single one, is no character of a text.
_MOST_CONTROLS = 0.02


def decode(content: bytes, name: str) -> Decoded:
    """The text of `content`, without a byte-order mark.

    UTF-8, UTF-16 and UTF-32, with a mark or told by their zero bytes, else Windows-1252.
    Raises EmptyExport where nothing or only white space is in it, BinaryExport where it is no text.
    """
    if not content:
        raise EmptyExport(name)
    kind = _kind_of(content)
    if kind:
        raise BinaryExport(name, kind)
    decoded = _with_mark(content) or _without_mark(content)
    text = decoded.text.lstrip("\ufeff")
    if not text.strip("\0\ufeff \t\r\n\v\f\x1c\x1d\x1e\x1f\x85\xa0\u200b\u2028\u2029"):
        raise EmptyExport(name)
    if len(_CONTROLS.findall(text)) > max(1, _MOST_CONTROLS * len(text)):
        raise BinaryExport(name)
    return Decoded(text, decoded.notes)


def _kind_of(content: bytes) -> str:
    """What the bytes are by the mark that such files begin with, or ""."""
    for offset, mark, kind in _KINDS:
        if content.startswith(mark, offset):
            return kind
    if content.startswith(b"PK\x03\x04"):
        beginning = content[:4096]
        return next((kind for mark, kind in _ZIPPED if mark in beginning), "a zip archive")
    for mark, kind in _SHORT_KINDS:
        if content.startswith(mark) and b"\0" in content[:64]:
            return kind
    return ""


def _with_mark(content: bytes) -> Decoded | None:
    marks = (
        (codecs.BOM_UTF8, "utf-8"),
        (codecs.BOM_UTF32_LE, "utf-32"),
        (codecs.BOM_UTF32_BE, "utf-32"),
        (codecs.BOM_UTF16_LE, "utf-16"),
        (codecs.BOM_UTF16_BE, "utf-16"),
    )
    for mark, encoding in marks:
        if content.startswith(mark):
            return _as(content, encoding)
    return None


def _without_mark(content: bytes) -> Decoded:
    zeros_first, zeros_second = content[:4096:2].count(0), content[1:4096:2].count(0)
    if zeros_first + zeros_second > len(content[:4096]) // 5:
        return _as(content, "utf-16-be" if zeros_first > zeros_second else "utf-16-le")
    try:
        return Decoded(content.decode("utf-8"))
    except UnicodeDecodeError as error:
        if len(content) - error.start <= 3 and error.reason == "unexpected end of data":
            return _as(content, "utf-8")
    return _mostly_utf8(content) or _windows(content)


def _as(content: bytes, encoding: str) -> Decoded:
    try:
        return Decoded(content.decode(encoding))
    except UnicodeDecodeError as error:
        note = (
            f"Some bytes are no {encoding[:6].upper()} (the first is byte {error.start + 1}); "
            "they are shown as \ufffd. The file may be cut off."
        )
        return Decoded(content.decode(encoding, "replace"), (note,))


def _mostly_utf8(content: bytes) -> Decoded | None:
    """Text that is UTF-8 but for a few broken places, as when two files were joined."""
    text = content.decode("utf-8", "replace")
    bad = text.count("\ufffd")
    good = sum(1 for sign in text if sign > "\x7f") - bad
    return _as(content, "utf-8") if good >= 10 * bad else None


def _windows(content: bytes) -> Decoded:
    note = "The file is no UTF-8 and was read as Windows-1252; look at letters with accents."
    return Decoded(content.decode("cp1252", "replace"), (note,))
