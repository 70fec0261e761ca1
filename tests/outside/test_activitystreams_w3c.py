"""ActivityStreams 2.0 against the W3C's own examples (Core and Vocabulary, 23 May 2017).

The small documents are those of the Recommendations and of the W3C's test files, by their
numbers there (ex5, ex66 and so on); the values checked are the ones printed in them.
"""

from __future__ import annotations

import json
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from service.comments.formats import Export, Source
from service.comments.intake import read_export
from service.comments.spans import Span
from service.comments.times import read_time

CONTEXT = "https://www.w3.org/ns/activitystreams"
COPIED = datetime(2026, 3, 5, tzinfo=UTC)
PUBLISHED = Span.at(datetime(2014, 12, 12, 12, 12, 12, tzinfo=UTC))


def read(document: dict[str, Any]) -> Export:
    whole = json.dumps({"@context": CONTEXT, **document}).encode()
    return read_export(whole, Source("w3c.json", "UTC", COPIED))


def simple_note(**fields: Any) -> dict[str, Any]:
    """The Recommendation's "A Simple Note", with content in place of its name."""
    return {"type": "Note", "content": "A Simple Note", **fields}


def test_ex5_a_collection_of_two_notes() -> None:
    export = read(
        {
            "summary": "Sally's notes",
            "type": "Collection",
            "totalItems": 2,
            "items": [
                {"type": "Note", "name": "A Simple Note"},
                {"type": "Note", "name": "Another Simple Note"},
            ],
        }
    )
    assert export.format == "activitystreams"
    assert [one.text for one in export.comments] == ["A Simple Note", "Another Simple Note"]
    assert not any("does not hold" in note for note in export.notes)


def test_ex6_an_ordered_collection_keeps_its_order() -> None:
    items = [{"type": "Note", "name": name} for name in ("A Simple Note", "Another Simple Note")]
    export = read({"type": "OrderedCollection", "totalItems": 2, "orderedItems": items})
    assert [one.text for one in export.comments] == ["A Simple Note", "Another Simple Note"]


@pytest.mark.parametrize(
    ("kind", "name"), [("OrderedCollection", "items"), ("Collection", "orderedItems")]
)
def test_a_list_under_the_other_kind_s_name_is_read_and_told(kind: str, name: str) -> None:
    """A fail case of the W3C's test files; no comment is lost for it here."""
    export = read({"type": kind, name: [simple_note()]})
    assert [one.text for one in export.comments] == ["A Simple Note"]
    assert any("under the other kind's name: 1" in note for note in export.notes)


def test_ex66_two_writers_a_link_and_a_person() -> None:
    export = read(
        {
            "type": "Image",
            "name": "My cat taking a nap",
            "attributedTo": ["http://joe.example.org", {"type": "Person", "name": "Sally"}],
            "replies": {
                "type": "Collection",
                "items": [
                    simple_note(
                        attributedTo=["http://joe.example.org", {"type": "Person", "name": "Sally"}]
                    )
                ],
            },
        }
    )
    comment = export.comments[0]
    assert (comment.author, comment.author_id) == (
        "joe.example.org & Sally",
        "http://joe.example.org",
    )


def test_ex83_in_reply_to_an_object() -> None:
    export = read(
        {
            "summary": "A simple note",
            "type": "Note",
            "content": "This is all there is.",
            "inReplyTo": {
                "summary": "Previous note",
                "type": "Note",
                "content": "What else is there?",
            },
        }
    )
    assert [(one.text, one.reply_to) for one in export.comments] == [
        ("This is all there is.", None)
    ]


def test_ex84_in_reply_to_a_link() -> None:
    export = read(
        {
            "summary": "A simple note",
            "type": "Note",
            "content": "This is all there is.",
            "inReplyTo": "http://example.org/posts/1",
        }
    )
    assert export.comments[0].reply_to == "http://example.org/posts/1"


def test_ex112_a_note_with_its_replies() -> None:
    own = "http://www.test.example/notes/1"
    export = read(
        {
            "summary": "A simple note",
            "type": "Note",
            "id": own,
            "content": "I am fine.",
            "replies": {
                "type": "Collection",
                "totalItems": 1,
                "items": [
                    {
                        "summary": "A response to the note",
                        "type": "Note",
                        "content": "I am glad to hear it.",
                        "inReplyTo": own,
                    }
                ],
            },
        }
    )
    assert [(one.id, one.text, one.reply_to) for one in export.comments] == [
        (own, "I am fine.", None),
        (None, "I am glad to hear it.", own),
    ]


def test_ex145_and_ex158_published_and_updated() -> None:
    stamp = "2014-12-12T12:12:12Z"
    assert read(simple_note(published=stamp)).comments[0].posted == PUBLISHED
    comment = read(simple_note(updated=stamp)).comments[0]
    assert comment.edited == PUBLISHED
    assert comment.written == PUBLISHED


def test_ex184_a_tombstone_is_no_comment() -> None:
    export = read(
        {
            "type": "OrderedCollection",
            "totalItems": 3,
            "name": "Vacation photos 2016",
            "orderedItems": [
                {"type": "Note", "id": "http://image.example/1", "content": "one"},
                {
                    "type": "Tombstone",
                    "formerType": "Note",
                    "id": "http://image.example/2",
                    "deleted": "2016-03-17T00:00:00Z",
                },
                {"type": "Note", "id": "http://image.example/3", "content": "three"},
            ],
        }
    )
    assert [one.id for one in export.comments] == [
        "http://image.example/1",
        "http://image.example/3",
    ]
    assert any("left only a mark: 1" in note for note in export.notes)


def test_a_number_as_content_is_unreadable() -> None:
    """A fail case of the W3C's test files."""
    export = read({"type": "Collection", "items": [simple_note(content=1), simple_note()]})
    assert [one.text for one in export.comments] == ["A Simple Note"]
    assert [(one.place, one.why) for one in export.unreadable] == [
        ("/items/0", "its content is no text")
    ]


def test_ex191_the_replies_of_a_poll_are_its_votes() -> None:
    """A Question with oneOf; three replies by sally, joe and john, whose names are the votes."""
    question = "http://polls.example.org/question/1"
    replies = [("sally", "arduino"), ("joe", "arduino"), ("john", "raspberry pi")]
    export = read(
        {
            "id": question,
            "type": "Question",
            "content": "I'd like to build a robot to feed my cat. Which platform is best?",
            "oneOf": [{"name": "arduino"}, {"name": "raspberry pi"}],
            "replies": {
                "type": "Collection",
                "totalItems": 3,
                "items": [
                    {
                        "attributedTo": f"http://{who}.example.org",
                        "inReplyTo": question,
                        "name": said,
                    }
                    for who, said in replies
                ],
            },
        }
    )
    assert [(one.author, one.text, one.reply_to) for one in export.comments] == [
        (f"{who}.example.org", said, question) for who, said in replies
    ]


def test_core_section_2_3_seconds_may_be_left_out() -> None:
    """ "date-time" of RFC 3339 with optional seconds: any second of that minute is meant."""
    start = datetime(2014, 12, 12, 12, 12, tzinfo=UTC)
    minute = Span(start, start + timedelta(minutes=1) - timedelta(microseconds=1))
    assert read_time("2014-12-12T12:12Z", UTC, COPIED) == minute
    assert read(simple_note(published="2014-12-12T12:12Z")).comments[0].posted == minute
