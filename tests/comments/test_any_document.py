"""Spreadsheets, feeds and pointers, broken anywhere: comments, or one error of the tree."""

from __future__ import annotations

import io
import json
import zipfile

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.formats import Source
from tests.comments.conftest import COPIED, TRIED
from tests.comments.sheets import cell, empty, ods, row, words, xlsx, zipped
from tests.comments.test_any_bytes import JSON, check

HEAD = ["author", "posted", "text"]
BOOK = xlsx(
    [HEAD, ["A", (46080.5, "d/m/yy h:mm"), "12"], ["B", 1e300, True], [None, "#N/A", -3.5]],
    Other=[["x"], ["=1+1"]],
)
DOCUMENT = ods(
    words(*HEAD)
    + row(
        cell("string", "A"),
        cell("date", "x", date_value="2026-02-27"),
        cell("float", "1", value="1"),
    )
    + row(empty(3), times=5)
    + row(
        cell("time", "12:00", time_value="PT12H00M00S"), cell("boolean", "x", boolean_value="true")
    )
)
FEED = (
    b'<?xml version="1.0"?><feed xmlns="http://www.w3.org/2005/Atom" '
    b'xmlns:thr="http://purl.org/syndication/thread/1.0"><author><name>H</name></author>'
    b"<entry><id>1</id><updated>2026-02-27T12:00:00Z</updated><content type='html'>&lt;p>12</content>"
    b"</entry><entry><id>2</id><thr:in-reply-to ref='1'/><content type='xhtml'><p>8</p></content>"
    b"<published>2026-02-27T12:00:00Z</published></entry></feed>"
)
TOKENS = st.sampled_from(
    (
        *(
            b"<",
            b">",
            b'"',
            b"&",
            b"&amp;",
            b"&x;",
            b"<entry>",
            b"</entry>",
            b"<item>",
            b"\0",
            b"\xff",
        ),
        *(b"<!DOCTYPE x [<!ENTITY x 'y'>]>", b"<![CDATA[", b"xmlns=''", b"type='text'", b"/", b"-"),
        *(
            b"9999999999",
            b"PT99H99M99S",
            b"2026-99-99",
            b"T25:00",
            b"1e999",
            b"nan",
            b"A0",
            b"r='A1'",
        ),
        *(b"table:number-rows-repeated='1048577'", b"<t>", b"<v>", b"t='s'", b"t='d'", b"s='7'"),
    )
)
CHANGES = st.lists(st.tuples(st.floats(0, 1), st.integers(0, 20), TOKENS), min_size=1, max_size=8)


def broken(content: bytes, changes: list[tuple[float, int, bytes]]) -> bytes:
    changed = bytearray(content)
    for where, gone, put in changes:
        place = int(where * len(changed))
        changed[place : place + gone] = put
    return bytes(changed)


def inside(data: bytes, changes: list[tuple[float, int, bytes]], which: int) -> bytes:
    """The archive with one of its files of XML broken, and packed again."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        files: dict[str, str | bytes] = {name: archive.read(name) for name in archive.namelist()}
    names = sorted(name for name in files if name.endswith((".xml", ".rels")))
    name = names[which % len(names)]
    content = files[name]
    assert isinstance(content, bytes)
    return zipped(files | {name: broken(content, changes)})


@given(st.sampled_from([BOOK, DOCUMENT]), CHANGES, st.floats(0.2, 1))
@TRIED
def test_spreadsheets_broken_outside(
    data: bytes, changes: list[tuple[float, int, bytes]], cut: float
) -> None:
    content = broken(data, changes)
    check(content[: int(cut * len(content))], Source("x", "Europe/Berlin", COPIED))


@given(st.sampled_from([BOOK, DOCUMENT]), CHANGES, st.integers(0, 20))
@TRIED
def test_spreadsheets_broken_inside(
    data: bytes, changes: list[tuple[float, int, bytes]], which: int
) -> None:
    check(inside(data, changes, which), Source("x", "Europe/Berlin", COPIED))


@given(CHANGES, st.floats(0.2, 1))
@TRIED
def test_feeds_broken_anywhere(changes: list[tuple[float, int, bytes]], cut: float) -> None:
    content = broken(FEED, changes)
    check(content[: int(cut * len(content))], Source("x", "UTC", COPIED, (), "feed"))
    check(content, Source("x", "UTC", COPIED))


POINTERS = st.text("/~01ab-texuho ", max_size=8) | st.sampled_from(["/0", "/text", "/items/0/text"])


@given(JSON, POINTERS, POINTERS | st.none(), st.sampled_from(["text", "author", "posted"]))
@TRIED
def test_any_pointers_into_any_json(value: object, name: str, at: str | None, meaning: str) -> None:
    source = Source("x.json", "UTC", COPIED, ((meaning, name),), "json", at)
    check(json.dumps(value).encode(), source)


@pytest.mark.parametrize("depth", [900, 10_000, 200_000])
@pytest.mark.parametrize("form", ["[", '{"replies":', '[{"text":"12","replies":'])
def test_json_nested_deeply_is_read_or_one_sentence(depth: int, form: str) -> None:
    closing = "".join({"[": "]", "{": "}"}.get(sign, "") for sign in reversed(form))
    content = form * depth + '"12"' + closing * depth
    for text in (content, form * depth, f'{content}\n{{"text": "8"}}\n'):
        check(text.encode(), Source("x", "UTC", COPIED))
