"""An export's bytes: encodings that hosts' tools write, and files that are no text."""

from __future__ import annotations

import pytest

from service.comments.decoding import decode
from service.errors import BinaryExport, EmptyExport

TEXT = "author,text\nJürgen,Seite 12 – danke 🧵\n"


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(TEXT.encode(), id="UTF-8"),
        pytest.param(TEXT.encode("utf-8-sig"), id="UTF-8 with a mark"),
        pytest.param(TEXT.encode("utf-16"), id="UTF-16 with a mark"),
        pytest.param(
            "\ufeff".encode("utf-16-be") + TEXT.encode("utf-16-be"), id="UTF-16 big end first"
        ),
        pytest.param(TEXT.encode("utf-16-le"), id="UTF-16 without a mark"),
        pytest.param(TEXT.encode("utf-16-be"), id="UTF-16 big end first, without a mark"),
        pytest.param(TEXT.encode("utf-32"), id="UTF-32"),
    ],
)
def test_unicode_is_read_in_every_encoding_without_a_note(content: bytes) -> None:
    decoded = decode(content, "comments.csv")
    assert (decoded.text, decoded.notes) == (TEXT, ())


def test_windows_1252_is_read_with_a_note() -> None:
    text = "author,text\nJürgen,Seite 12 – danke, café, 5 €\n"
    decoded = decode(text.encode("cp1252"), "comments.csv")
    assert decoded.text == text
    assert "Windows-1252" in decoded.notes[0]


def test_a_file_cut_off_in_a_character_keeps_the_rest() -> None:
    whole = "author,text\nGran T,12 🧵".encode()
    decoded = decode(whole[:-2], "comments.csv")
    assert decoded.text == "author,text\nGran T,12 \ufffd"
    assert "cut off" in decoded.notes[0]


def test_a_few_broken_bytes_do_not_make_utf_8_into_windows_1252() -> None:
    decoded = decode("é".encode() * 30 + b"\xff" + "é".encode(), "comments.csv")
    assert decoded.text == "é" * 30 + "\ufffdé"
    assert "byte 61" in decoded.notes[0]


def test_an_odd_number_of_bytes_of_utf_16_is_read_as_far_as_it_goes() -> None:
    decoded = decode(TEXT.encode("utf-16")[:-1], "comments.csv")
    assert decoded.text.startswith("author,text\nJürgen")
    assert decoded.notes


@pytest.mark.parametrize(
    ("beginning", "kind"),
    [
        (b"\x89PNG\r\n\x1a\n\x00\x00", "PNG"),
        (b"\xff\xd8\xff\xe0\x00\x10JFIF", "JPEG"),
        (b"GIF89a\x01\x00", "GIF"),
        (b"RIFF\x10\x00\x00\x00WEBPVP8 ", "WebP"),
        (b"BM\x36\x00\x00\x00\x00\x00", "BMP"),
        (b"%PDF-1.7\n", "PDF"),
        (b"PK\x03\x04\x14\x00data", "a zip archive"),
        (b"PK\x03\x04\x14\x00\x06\x00[Content_Types].xml xl/workbook.xml", ".xlsx"),
        (b"PK\x03\x04mimetypeapplication/vnd.oasis.opendocument.spreadsheet", ".ods"),
        (b"PK\x03\x04\x14\x00word/document.xml", ".docx"),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "old spreadsheet"),
        (b"\x1f\x8b\x08\x00", "gzip"),
        (b"7z\xbc\xaf\x27\x1c", "7z"),
        (b"\x00\x00\x00\x20ftypisom", "video"),
        (b"SQLite format 3\x00", "database"),
        (b"\x7fELF\x02", "program"),
        (b"MZ\x90\x00\x03\x00", "program"),
        (b"{\\rtf1 hello}", "rich-text"),
    ],
)
def test_a_file_that_is_no_text_is_named(beginning: bytes, kind: str) -> None:
    with pytest.raises(BinaryExport) as error:
        decode(beginning + bytes(range(64)), "comments")
    assert kind in error.value.kind
    assert str(error.value).startswith("comments: this is ")
    assert "CSV or JSON" in error.value.todo


@pytest.mark.parametrize(
    "content", [bytes(range(256)) * 4, b"\x01\x02\x03\x04" * 20, b"\x00\x01a\x02" * 9]
)
def test_bytes_that_are_nothing_known_are_no_text_either(content: bytes) -> None:
    with pytest.raises(BinaryExport, match="this is not text"):
        decode(content, "comments")


@pytest.mark.parametrize(
    "words", ["MZ, 12 please\n", "BM 14\n", "PK is my vote: 12\n", "GIF? 12\n"]
)
def test_words_that_begin_like_a_file_are_words(words: str) -> None:
    assert decode(words.encode(), "comments").text == words


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(b"", id="nothing"),
        pytest.param(b" \r\n\t\n", id="white space"),
        pytest.param(b"\xef\xbb\xbf", id="a mark alone"),
        pytest.param("\ufeff \n".encode("utf-16"), id="marks and spaces in UTF-16"),
        pytest.param("\u00a0\u2028\u200b".encode(), id="spaces of other kinds"),
    ],
)
def test_a_file_with_nothing_in_it_is_one_sentence(content: bytes) -> None:
    with pytest.raises(EmptyExport, match="comments: the file is empty: hand in an export"):
        decode(content, "comments")
