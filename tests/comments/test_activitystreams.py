"""ActivityStreams 2.0 as it is met: authors in several forms, activities, marks of deletion."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any

import pytest

from service.comments.spans import Span
from service.errors import BadExport
from tests.comments.conftest import COPIED, Read

CONTEXT = "https://www.w3.org/ns/activitystreams"
NOON = Span.at(datetime(2026, 2, 27, 12, 0, tzinfo=UTC))


def note(**fields: Any) -> dict[str, Any]:
    return {"type": "Note", "content": "<p>12</p>", "published": "2026-02-27T12:00:00Z", **fields}


def collection(*items: Any, **fields: Any) -> str:
    return json.dumps({"@context": CONTEXT, "type": "Collection", "items": list(items), **fields})


@pytest.mark.parametrize(
    ("by", "name", "own"),
    [
        pytest.param("https://hall.example/people/moth-hole", "moth-hole", "https://hall.example/people/moth-hole", id="a link"),
        pytest.param("https://hall.example/@bo/", "bo", "https://hall.example/@bo/", id="a handle"),
        pytest.param("https://hall.example/people/%E7%B3%B8?x=1#y", "糸", "https://hall.example/people/%E7%B3%B8?x=1#y", id="letters written as bytes"),
        pytest.param("https://joe.example", "joe.example", "https://joe.example", id="a host"),
        pytest.param({"type": "Person", "id": "https://hall.example/1", "name": "Gran T"}, "Gran T", "https://hall.example/1", id="an object"),
        pytest.param({"type": "Person", "name": "Gran T"}, "Gran T", None, id="an object without an id"),
        pytest.param({"type": "Person", "preferredUsername": "grant"}, "grant", None, id="a user name"),
        pytest.param({"type": "Person", "nameMap": {"de": "Oma T"}}, "Oma T", None, id="a name by language"),
        pytest.param(["https://hall.example/bo", {"type": "Person", "name": "Sally"}], "bo & Sally", "https://hall.example/bo", id="two writers"),
        pytest.param({"type": "Link", "href": "https://hall.example/bo"}, "bo", "https://hall.example/bo", id="a link object"),
        pytest.param(None, "", None, id="nobody"),
    ],
)  # fmt: skip
def test_who_wrote_a_note(read: Read, by: Any, name: str, own: str | None) -> None:
    comment = read(collection(note(attributedTo=by))).comments[0]
    assert (comment.author, comment.author_id) == (name, own)


def test_a_name_told_once_is_known_everywhere(read: Read) -> None:
    own = "https://hall.example/people/gran-t"
    export = read(
        collection(
            note(attributedTo=own),
            note(attributedTo={"type": "Person", "id": own, "name": "Gran T"}),
        )
    )
    assert [one.author for one in export.comments] == ["Gran T", "Gran T"]


@pytest.mark.parametrize(
    ("answers", "expected"),
    [
        pytest.param("https://hall.example/notes/1", "https://hall.example/notes/1", id="a link"),
        pytest.param({"id": "https://hall.example/notes/1"}, "https://hall.example/notes/1", id="an object"),
        pytest.param([{"type": "Note"}, "https://hall.example/notes/1"], "https://hall.example/notes/1", id="several"),
        pytest.param({"type": "Note", "content": "old"}, None, id="an object without an id"),
    ],
)  # fmt: skip
def test_what_a_note_answers(read: Read, answers: Any, expected: str | None) -> None:
    assert read(collection(note(inReplyTo=answers))).comments[0].reply_to == expected


@pytest.mark.parametrize(
    ("fields", "text"),
    [
        pytest.param({"content": "<p>12 &amp; <del>13</del></p>"}, "12 & ~~13~~", id="HTML"),
        pytest.param({"content": "I <3 12", "mediaType": "text/plain"}, "I <3 12", id="plain text"),
        pytest.param(
            {"content": None, "contentMap": {"de": "<p>zwölf</p>"}}, "zwölf", id="by language"
        ),
        pytest.param({"content": None, "name": "arduino"}, "arduino", id="a vote in a poll"),
    ],
)
def test_a_note_s_words(read: Read, fields: dict[str, Any], text: str) -> None:
    assert read(collection(note(**fields))).comments[0].text == text


def test_an_activity_hands_its_actor_and_time_to_the_note(read: Read) -> None:
    activity = {
        "type": "Create",
        "actor": "https://hall.example/bo",
        "published": "2026-02-27T12:00:00Z",
        "object": {"type": "Note", "content": "12"},
    }
    comment = read(collection(activity)).comments[0]
    assert (comment.author, comment.posted, comment.place) == ("bo", NOON, "/items/0/object")


def test_replies_inside_notes_answer_them(read: Read) -> None:
    replies = {"type": "Collection", "items": [note(content="14")]}
    export = read(collection(note(id="https://hall.example/1", replies=replies)))
    assert [(one.text, one.reply_to) for one in export.comments] == [
        ("12", None),
        ("14", "https://hall.example/1"),
    ]


def test_pages_inside_a_collection_are_read_in_order(read: Read) -> None:
    page = {
        "type": "CollectionPage",
        "items": [note(content="1")],
        "next": {"type": "CollectionPage", "items": [note(content="2")]},
    }
    whole = json.dumps({"@context": CONTEXT, "type": "Collection", "first": page, "totalItems": 2})
    assert [one.text for one in read(whole).comments] == ["1", "2"]


def test_what_the_comments_are_about_is_no_comment(read: Read) -> None:
    video = {
        "@context": CONTEXT,
        "type": "Video",
        "name": "Sixty-three pages",
        "replies": {"type": "Collection", "items": [note()]},
    }
    export = read(json.dumps(video))
    assert [one.text for one in export.comments] == ["12"]
    assert any("are about: 1" in one for one in export.notes)


def test_what_cannot_be_read_is_shown_or_told(read: Read) -> None:
    export = read(
        collection(
            "https://hall.example/notes/7",
            5,
            note(content=42),
            note(content="<p></p>"),
            {"type": "Tombstone", "formerType": "Note", "deleted": "2026-02-28T00:00:00Z"},
            {"type": "Like", "object": "https://hall.example/notes/7"},
            note(),
            totalItems=9,
        )
    )
    assert [one.text for one in export.comments] == ["12"]
    assert [(one.place, one.why) for one in export.unreadable] == [
        ("/items/0", "only a link, not the comment itself"),
        ("/items/1", "neither a comment nor a link to one"),
        ("/items/2", "its content is no text"),
        ("/items/3", "a comment without words"),
    ]
    told = " ".join(export.notes)
    assert "Comments deleted at their source, which left only a mark: 1." in told
    assert "counts but does not hold: 2" in told
    assert "no comments (likes, follows, people): 1" in told


@pytest.mark.parametrize(
    ("updated", "expected"),
    [
        pytest.param("2026-02-27T13:00:00Z", Span.at(datetime(2026, 2, 27, 13, tzinfo=UTC)), id="edited"),
        pytest.param("2026-02-27T12:00:00Z", None, id="updated when published"),
        pytest.param(None, None, id="never"),
        pytest.param("some time", Span(NOON.earliest, COPIED), id="some time"),
    ],
)  # fmt: skip
def test_when_a_note_was_edited(read: Read, updated: str | None, expected: Span | None) -> None:
    assert read(collection(note(updated=updated))).comments[0].edited == expected


def test_types_may_be_written_out(read: Read) -> None:
    export = read(
        json.dumps(
            {
                "@context": ["https://hall.example/own", f"{CONTEXT}.jsonld"],
                "@type": f"{CONTEXT}#OrderedCollection",
                "orderedItems": note(type=["as:Note", "Other"]),
            }
        )
    )
    assert export.format == "activitystreams"
    assert [one.text for one in export.comments] == ["12"]


def test_a_collection_without_its_context_is_known_by_its_form(read: Read) -> None:
    assert read(json.dumps({"type": "Collection", "items": [note()]})).format == "activitystreams"


def test_a_collection_that_only_links_to_its_pages_is_one_sentence(read: Read) -> None:
    whole = {"@context": CONTEXT, "type": "Collection", "first": "https://hall.example/1"}
    with pytest.raises(BadExport, match="only links to its comments: hand in the collection"):
        read(json.dumps(whole))


def test_an_empty_collection_holds_no_comments(read: Read) -> None:
    export = read(collection())
    assert (export.comments, export.notes) == ((), ("The export holds no comments.",))


@pytest.mark.parametrize(
    "name", ["mediaType", "type", "id", "published", "updated", "name", "replies", "totalItems"]
)
@pytest.mark.parametrize("value", [[], {}, [[]], 7, None, True, [{"a": []}]])
def test_a_field_of_another_kind_breaks_nothing(read: Read, name: str, value: Any) -> None:
    """Found by random documents: a list where a word belongs."""
    export = read(collection({**note(), name: value}, note(content="14")))
    assert export.comments[-1].text == "14"
