"""An export's bytes as text, whatever encoding they are in; what is no text is named."""

from __future__ import annotations

import codecs
import io
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial
from itertools import chain

from service.comments.content import Content, Held, beginning_of, reader_of
from service.errors import BadExport, BinaryExport, EmptyExport


@dataclass(frozen=True, slots=True)
class Decoded:
    """An export's text, and sentences on how its bytes were read where that is worth saying."""

    text: str
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Encoding:
    """How an export's bytes are read as text; `notes` are sentences on it worth saying.

    `is_broken` says that some of them fit no text and are shown as U+FFFD.
    """

    name: str
    notes: tuple[str, ...] = ()
    is_broken: bool = False

    @property
    def errors(self) -> str:
        """What is done with bytes that fit no text, as the codecs name it."""
        return "replace" if self.is_broken else "strict"


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
_CONTROL_BYTES = bytes([*range(9), *range(0x0E, 0x1B), *range(0x1C, 0x20), 0x7F])
_BLANKS = "\0\ufeff \t\r\n\v\f\x1c\x1d\x1e\x1f\x85\xa0\u200b\u2028\u2029"
#: In a text, at most this share of characters, or a single one, is no character of a text.
_MOST_CONTROLS = 0.02
#: How many of the first bytes tell what they are.
_LOOKED_AT = 4096
#: The characters of the longest line that is read; a longer one is no line of an export.
LONGEST_LINE = 5_000_000


def decode(content: bytes, name: str) -> Decoded:
    """The text of `content`, without a byte-order mark.

    UTF-8, UTF-16 and UTF-32, with a mark or told by their zero bytes, else Windows-1252.
    Raises EmptyExport where nothing or only white space is in it, BinaryExport where it is no text.
    """
    encoding = encoding_of(Held(content), name)
    return Decoded("".join(texts_of(Held(content), encoding)), encoding.notes)


def encoding_of(content: Content, name: str) -> Encoding:
    """How the bytes are to be read, found in pieces. Raises as `decode` does."""
    beginning = beginning_of(content, _LOOKED_AT)
    if not beginning:
        raise EmptyExport(name)
    kind = _kind_of(beginning)
    if kind:
        raise BinaryExport(name, kind)
    encoding = _with_mark(content, beginning) or _without_mark(content, beginning)
    signs = controls = 0
    is_empty = True
    for text in texts_of(content, encoding):
        signs += len(text)
        controls += _controls_in(text)
        is_empty = is_empty and not text.strip(_BLANKS)
    if is_empty:
        raise EmptyExport(name)
    if controls > max(1, _MOST_CONTROLS * signs):
        raise BinaryExport(name)
    return encoding


def texts_of(content: Content, encoding: Encoding) -> Iterator[str]:
    """The text in pieces, without a byte-order mark."""
    decoder = codecs.getincrementaldecoder(encoding.name)(encoding.errors)
    is_first = True
    for piece in chain(content.pieces(), (b"",)):
        text = decoder.decode(piece, final=not piece)
        if is_first:
            text = text.lstrip("\ufeff")
        is_first = is_first and not text
        if text:
            yield text


def lines_in(content: Content, encoding: Encoding, name: str) -> Iterator[str]:
    """The lines of the text with their ends: CRLF, LF or CR, and no other sign ends a line.

    Raises BadExport at a line that is longer than any of an export.
    """
    text = io.TextIOWrapper(reader_of(content), encoding.name, encoding.errors, newline="")
    is_first = True
    for number, line in enumerate(iter(partial(text.readline, LONGEST_LINE), ""), 1):
        if len(line) >= LONGEST_LINE:
            raise BadExport(
                name,
                f"this line has more than {LONGEST_LINE:,} characters",
                "export the comments again, one to a line or a record",
                f"line {number}",
            )
        if is_first:
            is_first = False
            yield line.lstrip("\ufeff")
        else:
            yield line


def _controls_in(text: str) -> int:
    """How many of the characters are none of a text."""
    if not text.isascii():
        return len(_CONTROLS.findall(text))
    # The same, many times as fast: a large export is looked through before it is read.
    return len(text) - len(text.encode("ascii").translate(None, _CONTROL_BYTES))


def _kind_of(content: bytes) -> str:
    """What the bytes are by the mark that such files begin with, or ""."""
    for offset, mark, kind in _KINDS:
        if content.startswith(mark, offset):
            return kind
    if content.startswith(b"PK\x03\x04"):
        return next((kind for mark, kind in _ZIPPED if mark in content), "a zip archive")
    for mark, kind in _SHORT_KINDS:
        if content.startswith(mark) and b"\0" in content[:64]:
            return kind
    return ""


def _with_mark(content: Content, beginning: bytes) -> Encoding | None:
    marks = (
        (codecs.BOM_UTF8, "utf-8"),
        (codecs.BOM_UTF32_LE, "utf-32"),
        (codecs.BOM_UTF32_BE, "utf-32"),
        (codecs.BOM_UTF16_LE, "utf-16"),
        (codecs.BOM_UTF16_BE, "utf-16"),
    )
    for mark, encoding in marks:
        if beginning.startswith(mark):
            return _as(encoding, _first_bad(content, encoding))
    return None


def _without_mark(content: Content, beginning: bytes) -> Encoding:
    zeros_first, zeros_second = beginning[::2].count(0), beginning[1::2].count(0)
    if zeros_first + zeros_second > len(beginning) // 5:
        encoding = "utf-16-be" if zeros_first > zeros_second else "utf-16-le"
        return _as(encoding, _first_bad(content, encoding))
    bad = _first_bad(content, "utf-8")
    cut_off = (
        bad is not None and content.size - bad.place <= 3 and bad.why == "unexpected end of data"
    )
    if bad is None or cut_off or _is_mostly_utf8(content):
        return _as("utf-8", bad)
    note = "The file is no UTF-8 and was read as Windows-1252; look at letters with accents."
    return Encoding("cp1252", (note,), is_broken=True)


@dataclass(frozen=True, slots=True)
class _Bad:
    """The first byte that fits no text of an encoding, counted from 0, and why."""

    place: int
    why: str


def _first_bad(content: Content, encoding: str) -> _Bad | None:
    decoder = codecs.getincrementaldecoder(encoding)()
    done = 0
    for piece in chain(content.pieces(), (b"",)):
        waiting = len(decoder.getstate()[0])
        try:
            decoder.decode(piece, final=not piece)
        except UnicodeDecodeError as error:
            return _Bad(done - waiting + error.start, error.reason)
        done += len(piece)
    return None


def _as(encoding: str, bad: _Bad | None) -> Encoding:
    if bad is None:
        return Encoding(encoding)
    note = (
        f"Some bytes are no {encoding[:6].upper()} (the first is byte {bad.place + 1}); "
        "they are shown as \ufffd. The file may be cut off."
    )
    return Encoding(encoding, (note,), is_broken=True)


def _is_mostly_utf8(content: Content) -> bool:
    """Text that is UTF-8 but for a few broken places, as when two files were joined."""
    good = bad = 0
    for text in texts_of(content, Encoding("utf-8", is_broken=True)):
        broken = text.count("\ufffd")
        bad += broken
        good += sum(1 for sign in text if sign > "\x7f") - broken
    return good >= 10 * bad
