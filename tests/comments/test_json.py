"""JSON: the list of comments is found wherever it is, and what is broken is named."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any

import pytest

from service.comments.spans import Span
from service.errors import BadExport, NoTextColumn
from tests.comments.conftest import COPIED, Read

NOON = Span.at(datetime(2026, 2, 27, 12, 0, tzinfo=UTC))
TWO = [
    {"author": "Gran T", "text": "12", "time": "2026-02-27T12:00:00Z"},
    {"author": "Annie", "text": "8", "time": "2026-02-27T12:00:00Z"},
]


def as_json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)


@pytest.mark.parametrize(
    "value",
    [
        pytest.param(TWO, id="a list"),
        pytest.param({"comments": TWO}, id="in an object"),
        pytest.param({"page": {"data": {"thread": {"items": TWO}}}}, id="deep inside"),
        pytest.param([[TWO]], id="in lists of lists"),
        pytest.param(
            {"badges": [{"name": "x"}, {"name": "y"}, {"name": "z"}], "all": TWO},
            id="beside another list",
        ),
        pytest.param({"pages": [{"comments": TWO[:1]}, {"comments": TWO[1:]}]}, id="page by page"),
        pytest.param({"edges": [{"node": one} for one in TWO]}, id="each in a wrapper"),
        pytest.param({"found": {"k1": TWO[0], "k2": TWO[1]}}, id="by their ids"),
        pytest.param(
            [
                {
                    "user": {"display_name": one["author"]},
                    "content": {"raw": one["text"]},
                    "created": {"at": one["time"]},
                }
                for one in TWO
            ],
            id="fields in objects",
        ),
        pytest.param(
            [
                {"autor": one["author"], "kommentar": one["text"], "datum": one["time"]}
                for one in TWO
            ],
            id="German names",
        ),
        pytest.param(
            [{"x": one["time"], "y": one["author"], "z": f"{one['text']}"} for one in TWO],
            id="names that say nothing",
        ),
        pytest.param([{**one, "text": int(one["text"])} for one in TWO], id="numbers as words"),
        pytest.param([{**one, "time": 1772193600} for one in TWO], id="seconds since 1970"),
        pytest.param([{**one, "time": 1772193600000} for one in TWO], id="thousandths since 1970"),
        pytest.param(
            [
                {**one, "text": [{"text": one["text"][:1]}, {"text": one["text"][1:]}]}
                for one in TWO
            ],
            id="words in pieces",
        ),
    ],
)
def test_the_comments_are_found_at_any_depth(read: Read, value: Any) -> None:
    export = read(as_json(value))
    assert export.format == "json"
    assert [(one.author, one.text, one.posted) for one in export.comments] == [
        ("Gran T", "12", NOON),
        ("Annie", "8", NOON),
    ]
    assert export.unreadable == ()


def test_replies_inside_comments_answer_them(read: Read) -> None:
    export = read(
        as_json(
            [
                {
                    "id": "c1",
                    "author": {"name": "Gran T", "id": "a-1"},
                    "text": "12",
                    "replies": [
                        {
                            "id": "c2",
                            "author": {"name": "Annie", "id": "a-2"},
                            "text": "me too",
                            "replies": {
                                "items": [{"id": "c3", "author": {"name": "Bo"}, "text": "9"}]
                            },
                        }
                    ],
                },
                {"id": "c4", "author": {"name": "Cy"}, "text": "14", "parent": {"id": "c1"}},
            ]
        )
    )
    assert [(one.id, one.author, one.reply_to) for one in export.comments] == [
        ("c1", "Gran T", None),
        ("c2", "Annie", "c1"),
        ("c3", "Bo", "c2"),
        ("c4", "Cy", "c1"),
    ]
    assert export.comments[2].place == "/0/replies/0/replies/items/0"
    assert export.comments[1].author_id == "a-2"


def test_fields_take_their_meaning_from_the_objects_they_stand_in(read: Read) -> None:
    comment = {
        "author": {"profile": {"name": "Gran T", "key": "a-1"}, "joined": "2020-01-01T00:00:00Z"},
        "text": {"lang": "en", "raw": "12"},
        "posted": {"iso": "2026-02-27T12:00:00Z"},
        "edited": {"value": "2026-02-27T13:00:00Z"},
        "video": {"id": "v-9"},
    }
    found = read(as_json([comment])).comments[0]
    assert (found.author, found.author_id, found.text) == ("Gran T", "a-1", "12")
    assert (found.posted, found.id) == (NOON, None)
    assert found.edited == Span.at(datetime(2026, 2, 27, 13, tzinfo=UTC))


def test_an_id_in_a_wrapper_is_the_comment_s(read: Read) -> None:
    export = read(as_json([{"kind": "x", "node": {"id": "c7", "author": "Gran T", "text": "12"}}]))
    assert [one.id for one in export.comments] == ["c7"]


def test_the_words_of_a_quoted_comment_are_not_its_own(read: Read) -> None:
    export = read(
        as_json(
            [
                {
                    "author": "Gran T",
                    "text": "14",
                    "parent": {"id": "c9", "author": "Bo", "text": "12"},
                }
            ]
        )
    )
    assert [(one.author, one.text, one.reply_to) for one in export.comments] == [
        ("Gran T", "14", "c9")
    ]


def test_a_post_above_its_comments_is_shown_and_not_read_as_a_vote(read: Read) -> None:
    post = {"author": "Guild", "text": "Choose, 1 to 63!", "comments": TWO}
    export = read(as_json({"posts": [post]}))
    assert [one.text for one in export.comments] == ["12", "8"]
    assert [(one.place, one.text) for one in export.unreadable] == [
        ("/posts/0", "Choose, 1 to 63!")
    ]
    assert "post" in export.unreadable[0].why


def test_plain_words_are_preferred_and_html_is_read_as_seen(read: Read) -> None:
    plain = read(as_json([{"author": "Gran T", "html": "<p>1<b>2</b></p>", "text": "I <3 12"}]))
    assert plain.comments[0].text == "I <3 12"
    markup = read(as_json([{"author": "Gran T", "html": "<p><del>14</del> 12</p>"}]))
    assert markup.comments[0].text == "~~14~~ 12"
    found = read(as_json([{"author": "Gran T", "text": "that&#39;s 12<br>please"}]))
    assert found.comments[0].text == "that's 12\nplease"
    assert any("HTML" in note for note in found.notes)


@pytest.mark.parametrize(
    ("edited", "expected"),
    [
        (False, None),
        (None, None),
        (True, Span(NOON.earliest, COPIED)),
        (1772197200, Span.at(datetime(2026, 2, 27, 13, tzinfo=UTC))),
    ],
)
def test_what_an_edit_field_says(read: Read, edited: object, expected: Span | None) -> None:
    export = read(as_json([{**TWO[0], "edited": edited}]))
    assert export.comments[0].edited == expected


def test_the_caller_s_fields_overrule(read: Read) -> None:
    value = [{"text": "not this", "note": {"de": "12"}, "author": "Gran T", "nick": "GT"}]
    for name in ("note.de", "/note/de", "de"):
        export = read(as_json(value), columns=(("text", name), ("author", "nick")))
        assert [(one.author, one.text) for one in export.comments] == [("GT", "12")]
    assert export.mapping == (("text", "note.de"), ("author", "nick"))


def test_a_field_that_is_not_there_is_one_sentence(read: Read) -> None:
    with pytest.raises(
        BadExport, match=r"no comment has a field 'words': name one of these: author, text"
    ):
        read(as_json([{"author": "a", "text": "12"}]), columns=(("text", "words"),))


def test_texts_without_authors_are_voters_of_their_own(read: Read) -> None:
    export = read(as_json(["12", "page 7"]))
    assert [(one.author, one.text, one.place) for one in export.comments] == [
        ("", "12", "/0"),
        ("", "page 7", "/1"),
    ]
    assert any("voter of its own" in note for note in export.notes)


def test_one_comment_alone_is_read(read: Read) -> None:
    assert [one.text for one in read(as_json(TWO[0])).comments] == ["12"]


@pytest.mark.parametrize("value", [[], {}, {"comments": []}, [[]]])
def test_json_without_comments_is_an_export_without_comments(read: Read, value: object) -> None:
    export = read(as_json(value))
    assert export.comments == ()
    assert export.notes == ("The export holds no comments.",)


@pytest.mark.parametrize("value", [[{"a": 1, "b": 2}], {"name": "x", "views": 7}, {"a": "b"}])
def test_json_without_texts_is_one_sentence(read: Read, value: object) -> None:
    with pytest.raises(NoTextColumn, match="no column holds the comments' text"):
        read(as_json(value))


@pytest.mark.parametrize(
    ("text", "line"),
    [
        pytest.param(
            '[\n{"author": "A", "text": "12"},\n{"author": "B",\n', "line 4", id="cut off"
        ),
        pytest.param('{"comments": [', "line 1", id="cut off at once"),
        pytest.param('[\n{"author": "A" "text": "12"}\n]', "line 2", id="a comma missing"),
        pytest.param('{"comments": []} and more', "line 1", id="something behind it"),
    ],
)
def test_broken_json_is_named_with_its_line(read: Read, text: str, line: str) -> None:
    with pytest.raises(BadExport, match="the JSON is broken or cut off here") as error:
        read(text, name="x.json")
    assert error.value.where == line
    assert str(error.value).startswith(f"x.json, {line}: ")


@pytest.mark.parametrize(
    "text", ["[" * 10_000 + "]" * 10_000, '{"a":' * 10_000 + "1" + "}" * 10_000]
)
def test_json_nested_ten_thousand_deep_is_one_sentence(read: Read, text: str) -> None:
    with pytest.raises(BadExport, match="nested too deep"):
        read(text)


def test_a_number_of_thousands_of_digits_is_one_sentence(read: Read) -> None:
    with pytest.raises(BadExport, match="a number that is too long"):
        read('[{"author": "A", "text": ' + "9" * 5000 + "}]")


def test_half_characters_and_nul_are_shown_as_such(read: Read) -> None:
    export = read('[{"author": "A\\ud800", "k\\u0000y": "x", "text": "12 \\u0000\\ud83d\\ude0a"}]')
    assert (export.comments[0].author, export.comments[0].text) == ("A\ufffd", "12 \ufffd😊")


def test_json_lines_are_read_line_by_line(read: Read) -> None:
    lines = [as_json(TWO[0]), "", '{"author": "B", "text": "13"', as_json(TWO[1]), "5"]
    export = read("\n".join(lines))
    assert export.format == "json lines"
    assert [(one.text, one.place) for one in export.comments] == [("12", "line 1"), ("8", "line 4")]
    assert [(one.place, one.text) for one in export.unreadable] == [
        ("line 3", lines[2]),
        ("line 5", "5"),
    ]
    assert "broken" in export.unreadable[0].why


def test_one_json_line_is_read_where_the_name_says_so(read: Read) -> None:
    assert read(as_json(TWO[0]) + "\n", name="x.jsonl").format == "json lines"


def test_json_lines_may_hold_replies(read: Read) -> None:
    one = {"id": "c1", **TWO[0], "replies": [{"author": "Bo", "text": "14"}]}
    export = read(as_json(one) + "\r\n" + as_json(TWO[1]) + "\r\n")
    assert [(one.text, one.reply_to, one.place) for one in export.comments] == [
        ("12", None, "line 1"),
        ("14", "c1", "line 1, /replies/0"),
        ("8", None, "line 2"),
    ]


def test_lines_none_of_which_is_json_are_one_sentence(read: Read) -> None:
    with pytest.raises(BadExport, match="no line is JSON"):
        read("{a\n{b\n", form="json lines")
