"""Tables and JSON Lines read comment by comment: nothing is asked for before it is needed."""

from __future__ import annotations

import json
import tracemalloc
from collections.abc import Iterator
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.comment import Comment
from service.comments.content import PIECE
from service.comments.csv_records import records_of
from service.comments.decoding import decode, encoding_of, lines_in
from service.comments.formats import Source, Unreadable
from service.comments.intake import open_export, read_export
from service.comments.tables import lines_of
from service.errors import BadExport, BinaryExport, ExportTooLarge

COPIED = datetime(2026, 3, 4, 18, 0, tzinfo=UTC)
ROW = "Maren,2026-03-01T18:00:{second:02}Z,page {page} please\n"


class Pieces:
    """Bytes in pieces of a given size, which count how many were asked for."""

    def __init__(self, content: bytes, size: int = PIECE) -> None:
        self.content = content
        self.asked = 0
        self._size = size

    @property
    def size(self) -> int:
        return len(self.content)

    def pieces(self) -> Iterator[bytes]:
        self.asked = 0
        for start in range(0, len(self.content), self._size):
            self.asked += 1
            yield self.content[start : start + self._size]


def source(name: str = "comments.csv") -> Source:
    return Source(name, "Atlantic/Faroe", COPIED)


def table(rows: int) -> bytes:
    lines = [ROW.format(second=place % 60, page=place % 63 + 1) for place in range(rows)]
    return ("Name,Time,Comment\n" + "".join(lines)).encode()


def lines(rows: int) -> bytes:
    return "".join(
        json.dumps({"name": "Maren", "time": "2026-03-01T18:00:00Z", "text": f"page {place}"})
        + "\n"
        for place in range(rows)
    ).encode()


@pytest.mark.parametrize("export", [table(9_000), lines(9_000)], ids=["table", "JSON Lines"])
def test_the_first_comment_comes_before_the_export_was_read_to_its_end(export: bytes) -> None:
    content = Pieces(export, 20_000)
    opened = open_export(content, source("comments"))
    assert isinstance(next(opened.items), Comment)
    first = content.asked
    assert sum(1 for _ in opened.items) == 8_999
    assert first < content.asked - 5


@pytest.mark.parametrize("export", [table(9_000), lines(9_000)], ids=["table", "JSON Lines"])
def test_what_is_held_does_not_grow_with_the_export(export: bytes) -> None:
    opened = open_export(Pieces(export, 20_000), source("comments"))
    next(opened.items)
    tracemalloc.start()
    try:
        assert sum(isinstance(one, Comment) for one in opened.items) == 8_999
        _, most = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    # Nine thousand comments held at once take some nine megabytes.
    assert most < 4_000_000


def test_json_lines_that_hold_comments_late_are_read_too() -> None:
    replies = [{"name": "Tove", "time": "2026-03-02T19:00:00Z", "text": "page 9"}] * 2
    late = {"name": "Odd", "time": "2026-03-02T18:00:00Z", "text": "7", "replies": replies}
    export = lines(6_000) + json.dumps(late).encode() + b"\n[1, 2]\nno JSON\n"
    read = read_export(export, source("comments.jsonl"))
    assert [one.text for one in read.comments[6_000:]] == ["7", "page 9", "page 9"]
    assert [one.place for one in read.unreadable] == ["line 6002", "line 6003"]


def test_a_file_without_a_line_of_json_is_given_up_early() -> None:
    content = Pieces(b'{"broken\n' * 300_000, 100_000)
    with pytest.raises(BadExport, match="no line is JSON"):
        open_export(content, Source("x", "UTC", COPIED, format="json lines"))
    assert content.asked < 10


def test_formats_that_are_read_whole_keep_to_their_limit() -> None:
    page = b'{"comments": [' + b" " * 1_000_000 + b'{"text": "7", "author": "Maren"}]}'
    with pytest.raises(ExportTooLarge):
        open_export(Pieces(page), source("x.json"), most_at_once=1)
    assert len(open_export(Pieces(page), source("x.json"), most_at_once=2).whole().comments) == 1


def test_a_line_without_an_end_is_refused_before_it_is_held() -> None:
    content = Pieces(b"Name,Time,Comment\n" + b"x" * 12_000_000)
    with pytest.raises(BadExport, match=r"line 2: this line has more than 5,000,000"):
        list(open_export(content, source()).items)


@pytest.mark.parametrize(
    "encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "utf-32", "cp1252"]
)
@pytest.mark.parametrize("size", [1, 3, 7, 4096])
def test_the_size_of_the_pieces_never_shows(encoding: str, size: int) -> None:
    text = "Name,Time,Comment\r\nÅse,2026-03-01T18:00:00Z,“page 7” é\r\nBo,,8\rLis,,9\n" * 40
    raw = text.encode(encoding)
    whole = decode(raw, "x")
    content = Pieces(raw, size)
    found = encoding_of(content, "x")
    assert found.notes == whole.notes
    assert list(lines_in(content, found, "x")) == lines_of(whole.text)
    assert whole.text == text


@given(st.binary(min_size=1, max_size=60), st.integers(1, 9))
def test_broken_bytes_are_told_alike_in_any_pieces(tail: bytes, size: int) -> None:
    raw = "Åse wrote: page 7, très joli, größer\n".encode() * 3 + tail
    try:
        whole = decode(raw, "x")
    except BinaryExport:
        with pytest.raises(BinaryExport):
            encoding_of(Pieces(raw, size), "x")
        return
    found = encoding_of(Pieces(raw, size), "x")
    assert found.notes == whole.notes
    assert "".join(lines_in(Pieces(raw, size), found, "x")) == whole.text


def test_quotation_marks_that_never_close_cost_their_own_record_only() -> None:
    rows = ['a,"open\n', *[f"b,{place}\n" for place in range(20_000)]]
    records = list(records_of(iter(rows), ","))
    assert records[0].problem.startswith("a field is longer")
    assert (records[1].line, records[1].cells) == (2, ("b", "0"))
    assert (records[-1].line, records[-1].cells) == (20_001, ("b", "19999"))


def test_rows_and_unreadable_rows_come_in_the_order_of_the_table() -> None:
    export = b"Name,Time,Comment\nMaren,,7\nOdd,,\nTove,,9\n"
    found = list(open_export(Pieces(export), source()).items)
    assert [type(one) for one in found] == [Comment, Unreadable, Comment]
    assert [one.place for one in found] == ["line 2", "line 3", "line 4"]
