"""JSON whose list or fields cannot be found by themselves: the caller names them."""

from __future__ import annotations

import json
from typing import Any

import pytest

from service.comments.formats import Source
from service.comments.intake import read_export
from service.errors import BadExport, NoTextColumn
from tests.comments.conftest import COPIED

THREAD = {
    "badges": [{"name": "a", "text": "who came first"}] * 5,
    "data": {"comments": [{"n": "Gran T", "w": {"parts": [{"v": "12"}, {"x": 1}]}}]},
}


def texts(
    value: Any, at: str | None = None, columns: tuple[tuple[str, str], ...] = ()
) -> list[tuple[str, str, str]]:
    content = value if isinstance(value, str) else json.dumps(value)
    export = read_export(content.encode(), Source("x", "UTC", COPIED, columns, at=at))
    assert export.unreadable == ()
    return [(one.place, one.author, one.text) for one in export.comments]


def test_the_list_and_the_fields_are_named() -> None:
    columns = (("author", "n"), ("text", "/w/parts/0/v"))
    assert texts(THREAD, "/data/comments", columns) == [("/data/comments/0", "Gran T", "12")]


def test_a_list_that_looks_like_none_of_comments_is_read_where_it_is_named() -> None:
    value = {"comments": [{"author": "A", "text": "8"}], "more": [{"q": "12 now"}, {"q": "14"}]}
    assert texts(value, "/more") == [("/more/0", "", "12 now"), ("/more/1", "", "14")]


def test_a_post_that_is_named_is_read_with_its_answers() -> None:
    value = {"posts": [{"author": "A", "text": "8", "comments": [{"author": "B", "text": "9"}]}]}
    assert [text for _, _, text in texts(value, "/posts")] == ["8", "9"]


def test_the_pointer_is_followed_on_each_line_of_json_lines() -> None:
    lines = '{"a": {"author": "A", "text": "8"}}\n{"a": {"author": "B", "text": "9"}}\n{"b": {}}\n'
    export = read_export(lines.encode(), Source("x", "UTC", COPIED, at="/a"))
    assert [(one.place, one.text) for one in export.comments] == [
        ("line 1, /a", "8"),
        ("line 2, /a", "9"),
    ]
    assert [(one.place, one.why) for one in export.unreadable] == [
        ("line 3", "nothing stands at '/a'")
    ]


def test_notes_of_activitystreams_are_read_where_they_are_named() -> None:
    value = {
        "@context": "https://www.w3.org/ns/activitystreams",
        "items": [{"type": "Note", "content": "8"}],
        "extra": {"items": [{"type": "Note", "content": "<p>12</p>"}]},
    }
    assert [text for _, _, text in texts(value, "/extra/items")] == ["12"]


@pytest.mark.parametrize(
    ("at", "sentence"),
    [
        pytest.param(
            "/data/coments",
            r"nothing stands at '/data/coments': name one of these: /badges \(5\), "
            r"/data/comments \(1\)\.",
            id="a slip",
        ),
        pytest.param("data", "'data' is no JSON Pointer: write it like", id="no slash"),
        pytest.param("/~2", "'/~2' is no JSON Pointer", id="an escape that there is not"),
        pytest.param("/data/comments/7", "nothing stands at", id="an index too high"),
        pytest.param("/data/comments/x", "nothing stands at", id="no index"),
        pytest.param("/data/comments/0/n", "no list and no object stands at", id="a text"),
        pytest.param("/data/comments/0/n/0", "nothing stands at", id="through a text"),
        pytest.param("/data/comments/-", "nothing stands at", id="behind the last"),
    ],
)
def test_a_pointer_that_leads_nowhere_is_one_sentence(at: str, sentence: str) -> None:
    with pytest.raises(BadExport, match=sentence):
        texts(THREAD, at)


def test_a_field_s_pointer_that_leads_nowhere_is_one_sentence() -> None:
    with pytest.raises(BadExport, match="no comment has a field '/w/parts/7'"):
        texts(THREAD, "/data/comments", (("text", "/w/parts/7"),))
    with pytest.raises(BadExport, match="'/~x' is no JSON Pointer"):
        texts(THREAD, "/data/comments", (("text", "/~x"),))


def test_where_no_text_is_found_the_sentence_says_how_to_name_one() -> None:
    with pytest.raises(NoTextColumn, match=r"--columns text=FIELD.*--at /data"):
        texts({"a": [{"b": 1, "c": 2}]})


def test_fields_whose_names_hold_dots_are_shown_as_pointers() -> None:
    value = [{"the.text": "12", "a": {"author": "A"}}, {"the.text": "8", "a": {"author": "B"}}]
    export = read_export(json.dumps(value).encode(), Source("x", "UTC", COPIED))
    assert dict(export.mapping) == {"text": "/the.text", "author": "a.author"}
    assert texts(value, columns=export.mapping) == [("/0", "A", "12"), ("/1", "B", "8")]
