"""Fields and lists named by JSON Pointer, against RFC 6901 (April 2013), section 5.

The RFC's document stands as a comment in a list; each pointer of its table names the comment's
text. The two rows that are no scalar name lists.
"""

from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any

import pytest

from service.comments.formats import Export, Source
from service.comments.intake import read_export
from service.comments.json_values import pointer

DOCUMENT: dict[str, Any] = {
    "foo": ["bar", "baz"],
    "": 0,
    "a/b": 1,
    "c%d": 2,
    "e^f": 3,
    "g|h": 4,
    "i\\j": 5,
    'k"l': 6,
    " ": 7,
    "m~n": 8,
}
TABLE = [
    ("/foo/0", "bar"),
    ("/", "0"),
    ("/a~1b", "1"),
    ("/c%d", "2"),
    ("/e^f", "3"),
    ("/g|h", "4"),
    ("/i\\j", "5"),
    ('/k"l', "6"),
    ("/ ", "7"),
    ("/m~0n", "8"),
]


def read(value: Any, at: str | None = None, text: str | None = None) -> Export:
    columns = (("text", text),) if text else ()
    source = Source("x", "UTC", datetime(2026, 3, 5, tzinfo=UTC), columns, at=at)
    return read_export(json.dumps(value).encode(), source)


@pytest.mark.parametrize(("name", "words"), TABLE)
def test_section_5_each_pointer_names_its_value(name: str, words: str) -> None:
    export = read([DOCUMENT], text=name)
    assert [(one.place, one.text) for one in export.comments] == [("/0", words)]
    again = read([DOCUMENT], text=dict(export.mapping)["text"])
    assert again.comments == export.comments


@pytest.mark.parametrize(("name", "words"), TABLE)
def test_section_5_a_pointer_may_begin_at_the_root(name: str, words: str) -> None:
    export = read({"all": [DOCUMENT]}, text=f"/all/0{name}")
    assert [(one.place, one.text) for one in export.comments] == [("/all/0", words)]


def test_section_5_the_whole_and_a_list() -> None:
    assert [one.text for one in read([DOCUMENT], at="", text="/ ").comments] == ["7"]
    inside = read(DOCUMENT, at="/foo").comments
    assert [(one.place, one.text) for one in inside] == [("/foo/0", "bar"), ("/foo/1", "baz")]


def test_section_3_names_are_escaped() -> None:
    """Section 3: ~ is written as ~0 and / as ~1."""
    assert pointer(("a/b", "m~n", 0)) == "/a~1b/m~0n/0"


def test_section_4_a_tilde_is_undone_once() -> None:
    """Section 4: "~01" is "~1", not "/"."""
    assert [one.text for one in read([{"~1": "right", "/": "wrong"}], text="/~01").comments] == [
        "right"
    ]
