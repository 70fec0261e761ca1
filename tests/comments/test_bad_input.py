"""What is no export of comments: one sentence, nothing half read, and no more memory than it has."""

from __future__ import annotations

import json
import tracemalloc

import pytest

from service.errors import BadExport, LoopstartError
from tests.comments.conftest import Read
from tests.comments.sheets import xlsx

LONG = "x" * 200_000
ATOM = '<feed xmlns="http://www.w3.org/2005/Atom"><entry><content>{}</content></entry></feed>'


@pytest.mark.parametrize(
    "export",
    [
        pytest.param(json.dumps([{"author": "A", "text": LONG}]), id="JSON"),
        pytest.param(json.dumps({"author": "A", "text": LONG}) + "\n{}\n", id="JSON Lines"),
        pytest.param(ATOM.format(LONG), id="a feed"),
        pytest.param(f"A\n3 days ago\n{LONG}\nReply\n", id="a page"),
        pytest.param(f"{LONG}\n", id="a list"),
        pytest.param(f'author,text\nA,"{LONG}"\n', id="a table"),
        pytest.param(
            json.dumps(
                {
                    "@context": "https://www.w3.org/ns/activitystreams",
                    "items": [{"type": "Note", "content": LONG}],
                }
            ),
            id="ActivityStreams",
        ),
    ],
)
def test_what_is_longer_than_any_comment_is_shown_and_not_read(read: Read, export: str) -> None:
    found = read(export)
    assert found.comments == ()
    assert all(len(one.text) < 200 for one in found.unreadable)
    assert "longer than 131,072 char" in found.unreadable[0].why or (
        "more than 131,072 char" in found.unreadable[0].why
    )


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(b"x" * 4_000_000, id="one line"),
        pytest.param(b'[{"text": "' + b"x" * 4_000_000, id="JSON that is never closed"),
        pytest.param(b'{"text": "' + b"x" * 4_000_000 + b'"}\n', id="a line of JSON Lines"),
        pytest.param(b'author,text\nA,"' + b"x" * 4_000_000, id="a quotation never closed"),
        pytest.param(b"author,text\n" + b"x" * 4_000_000 + b",12\n", id="a cell"),
        pytest.param(ATOM.format("x" * 4_000_000).encode()[:-20], id="a feed that is cut off"),
    ],
)
def test_a_line_without_end_takes_a_few_times_its_own_size(read: Read, content: bytes) -> None:
    tracemalloc.start()
    try:
        assert read(content).comments == ()
    except BadExport as error:
        assert str(error).count("\n") == 0  # noqa: PT017 - either is right
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 8 * len(content)


@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "utf-16-be", "utf-8-sig", "cp1252"])
def test_a_table_in_any_of_the_usual_encodings_is_read(read: Read, encoding: str) -> None:
    table = 'author,posted,text\r\nZoë,2026-02-27 12:00,"12\r\nplease, José"\r\n'
    assert [(one.author, one.text) for one in read(table.encode(encoding)).comments] == [
        ("Zoë", "12\nplease, José")
    ]


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(xlsx([["author", "text"], ["A", "12"]])[:-30], id="a spreadsheet cut off"),
        pytest.param(b'[{"author": "A", "text": "12"}, {"auth', id="JSON cut off"),
        pytest.param(ATOM.format("12").encode()[:-3], id="a feed cut off"),
        pytest.param(b"\x89PNG\r\n\x1a\n" + b"\0" * 99, id="a picture"),
        pytest.param(b"[" * 10_000 + b"]" * 10_000, id="JSON nested 10,000 deep"),
        pytest.param(b'{"a":' * 10_000 + b"1" + b"}" * 10_000, id="objects nested 10,000 deep"),
    ],
)
def test_nothing_is_read_of_what_is_cut_off_or_no_export(read: Read, content: bytes) -> None:
    with pytest.raises(LoopstartError) as raised:
        read(content)
    assert str(raised.value).startswith("comments")
    assert "\n" not in str(raised.value)
