"""Whatever is handed in: comments, or one error of the tree; nothing else, and nothing unkeepable."""

from __future__ import annotations

import csv
import io
import json

from hypothesis import given
from hypothesis import strategies as st

from service.comments.formats import FORMATS, Export, Format, Source
from service.comments.identity import merge_batch
from service.comments.intake import read_export
from service.errors import BadExport
from tests.comments.conftest import COPIED, EXPORTS, TRIED

WHOLE = [path.read_bytes() for path in sorted(EXPORTS.iterdir())]
FORMS = st.sampled_from([None, *FORMATS])
ZONES = st.sampled_from(["UTC", "Europe/Berlin", "Pacific/Apia"])


def check(content: bytes, source: Source) -> Export | None:
    """Read it; what comes out can be kept, shown, and merged with itself."""
    try:
        export = read_export(content, source)
    except BadExport as error:
        str(error).encode()
        return None
    for comment in export.comments:
        assert comment.text.strip() == comment.text != ""
        for kept in (comment.text, comment.author, comment.id, comment.author_id, comment.reply_to):
            assert "\0" not in (kept or "")
            (kept or "").encode()
        assert comment.place
    for unreadable in export.unreadable:
        assert len(unreadable.text) < 500
        f"{unreadable.place}{unreadable.text}{unreadable.why}".encode()
    " ".join((*export.notes, *(name for pair in export.mapping for name in pair))).encode()
    first = merge_batch((), export.comments, source.copied_at)
    again = merge_batch(first.new, tuple(reversed(export.comments)), source.copied_at)
    assert (again.new, again.edited) == ((), ())
    return export


@given(st.binary(max_size=300), FORMS, ZONES)
@TRIED
def test_any_bytes(content: bytes, form: Format | None, zone: str) -> None:
    check(content, Source("x", zone, COPIED, (), form))


@given(st.text(max_size=300), FORMS, ZONES)
@TRIED
def test_any_text(text: str, form: Format | None, zone: str) -> None:
    check(text.encode("utf-8", "replace"), Source("x", zone, COPIED, (), form))


TOKENS = st.sampled_from(
    (
        b'"',
        b"\n",
        b"\r",
        b",",
        b";",
        b"\t",
        b"{",
        b"}",
        b"[",
        b"]",
        b"\0",
        b"\xff",
        b"\xe2\x80",
        b"3 days ago\n",
        b"Reply\n",
        b"12\n",
        b"yesterday\n",
        b"(edited)",
        b"[deleted]\n",
        b"null",
        b"<p>",
        b"<![x[",
        b"&#x110000;",
        b"\\ud800",
        b"1e999",
        b"9" * 25,
        b'"type":"Tombstone",',
        b"0001-01-01T00:00:00Z",
        b"9999-12-31 23:59",
        b"99999 years ago\n",
        b"\xe2\x80\xae",
    )
)
CHANGES = st.lists(st.tuples(st.floats(0, 1), st.integers(0, 30), TOKENS), min_size=1, max_size=12)


@given(st.sampled_from(WHOLE), st.floats(0, 1), st.floats(0, 1), CHANGES, FORMS)
@TRIED
def test_exports_cut_and_broken_anywhere(
    content: bytes,
    first: float,
    last: float,
    changes: list[tuple[float, int, bytes]],
    form: Format | None,
) -> None:
    broken = bytearray(content)
    for where, gone, put in changes:
        place = int(where * len(broken))
        broken[place : place + gone] = put
    start, end = sorted((int(first * len(broken)), int(last * len(broken))))
    check(bytes(broken[start:end]), Source("x", "Europe/Berlin", COPIED, (), form))


WORDS = st.sampled_from(
    (*("12", "text", "author", "id", "replies", "items", "time", "3 days ago", "<b>"),)
)
JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | WORDS | st.text(max_size=5),
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(WORDS | st.text(max_size=4), inner, max_size=5)
    ),
    max_leaves=25,
)
STREAM_KEYS = st.sampled_from(
    (
        "@context",
        "type",
        "items",
        "orderedItems",
        "first",
        "next",
        "object",
        "actor",
        "content",
        "contentMap",
        "attributedTo",
        "inReplyTo",
        "replies",
        "published",
        "updated",
        "id",
        "name",
        "totalItems",
        "mediaType",
    )
)
STREAM_WORDS = st.sampled_from(
    (
        "https://www.w3.org/ns/activitystreams",
        "Note",
        "Collection",
        "OrderedCollection",
        "Create",
        "Tombstone",
        "Person",
        "Video",
        "https://hall.example/1",
        "http://[",
        "<p>12</p>",
        "text/plain",
    )
)
STREAMS = st.recursive(
    st.none() | st.integers() | STREAM_WORDS,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(STREAM_KEYS, inner, max_size=6),
    max_leaves=25,
).map(lambda value: {"@context": "https://www.w3.org/ns/activitystreams", "items": [value]})


@given(JSON)
@TRIED
def test_any_json(value: object) -> None:
    check(json.dumps(value).encode(), Source("x.json", "UTC", COPIED, (), "json"))


@given(st.lists(JSON, max_size=4))
@TRIED
def test_any_json_lines(values: list[object]) -> None:
    lines = "\n".join(map(json.dumps, values))
    check(lines.encode(), Source("x.jsonl", "UTC", COPIED, (), "json lines"))


@given(STREAMS)
@TRIED
def test_any_activitystreams(value: object) -> None:
    check(json.dumps(value).encode(), Source("x", "UTC", COPIED))


LINES = st.sampled_from(
    (
        "Gran T",
        "Host",
        "3 days ago",
        "5d",
        "yesterday",
        "just now (edited)",
        "Annie · 2 days ago",
        "12",
        "7",
        "1.2K",
        "👍 3",
        "Reply",
        "3 replies",
        "Translate",
        "Show more",
        "Like",
        "",
        "·",
        "This comment was removed",
        "Pinned by the host",
        "edited",
        "Antworten",
        "hello there",
        "edited 2 days ago",
        "2 d · Like · Reply",
        "Bo: 14",
        "27 Feb 2026",
    )
)


@given(st.lists(LINES, min_size=1, max_size=25))
@TRIED
def test_any_page(lines: list[str]) -> None:
    export = check("\n".join(lines).encode(), Source("x", "UTC", COPIED, (), "pasted"))
    if export is None:
        assert not any(lines)
        return
    shown = "\n".join(
        [f"{one.author}\n{one.text}" for one in export.comments]
        + [f"{one.text}\n{one.why}" for one in export.unreadable]
        + list(export.notes)
    )
    # What people write, and what nobody here knows, is never dropped.
    for line in lines:
        if line in {"hello there", "Bo: 14"}:
            assert line.partition(": ")[2] in shown


CELLS = st.text(
    st.characters(exclude_categories=["Cs", "Cc"], include_characters="\n\t,;\"'|"), max_size=25
).map(str.strip)
ROWS = st.lists(st.tuples(CELLS, CELLS.filter(bool)), min_size=1, max_size=8)


@given(ROWS, st.sampled_from([",", ";", "\t"]), st.sampled_from(["utf-8", "utf-8-sig", "utf-16"]))
@TRIED
def test_every_table_that_is_written_is_read_back(
    rows: list[tuple[str, str]], delimiter: str, encoding: str
) -> None:
    out = io.StringIO()
    writer = csv.writer(out, delimiter=delimiter)
    writer.writerow(["author", "text"])
    writer.writerows(rows)
    source = Source("x.csv", "UTC", COPIED, (("text", "text"), ("author", "author")), "table")
    export = read_export(out.getvalue().encode(encoding), source)
    assert [(one.author, one.text) for one in export.comments] == [
        (" ".join(author.split()), text) for author, text in rows
    ]
    assert export.unreadable == ()
