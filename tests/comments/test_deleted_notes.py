"""Notes that were deleted at their source: no comments, but named.

W3C Recommendation "Activity Vocabulary", 23 May 2017, section 3.1 (Activity Types): Delete
"indicates that the actor has deleted the object"; Undo that the actor is undoing the object, most
often an activity. Section 3.3 (Object and Link Types): a Tombstone "represents a content object
that has been deleted" and can stand at its place in a collection.
"""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.comments.conftest import Read

ONE, TWO = "https://hall.example/notes/1", "https://hall.example/notes/2"
BO = "https://hall.example/people/bo"
GONE = "Comments deleted at their source, which left only a mark: {}."


def created(own: str, content: str, **fields: Any) -> dict[str, Any]:
    note = {"type": "Note", "id": own, "content": content, "published": "2026-02-27T12:00:00Z"}
    return {"type": "Create", "actor": BO, "object": note | fields}


def collection(*items: Any) -> str:
    context = "https://www.w3.org/ns/activitystreams"
    return json.dumps({"@context": context, "type": "Collection", "items": items})


def deleted(*objects: Any, **fields: Any) -> dict[str, Any]:
    held = list(objects) if len(objects) > 1 else objects[0]
    return {"type": "Delete", "actor": BO, "object": held} | fields


TOMBSTONE = {"type": "Tombstone", "id": ONE, "formerType": "Note"}
MARKS = [
    pytest.param(deleted(ONE), id="a link"),
    pytest.param(deleted({"type": "Note", "id": ONE}), id="an object"),
    pytest.param(deleted({"type": "Link", "href": ONE}), id="a link object"),
    pytest.param(deleted(TOMBSTONE), id="a mark in the activity"),
    pytest.param(deleted(ONE, "https://hall.example/notes/9"), id="several"),
    pytest.param(TOMBSTONE, id="a mark alone"),
    pytest.param({"@type": "as:Delete", "object": {"@id": ONE}}, id="names written out"),
]


@pytest.mark.parametrize("mark", MARKS)
@pytest.mark.parametrize("before", [0, 1], ids=["after it", "before it"])
def test_a_deleted_note_is_named_and_no_comment(read: Read, mark: Any, before: int) -> None:
    shown = [created(ONE, "page 13"), created(TWO, "page 14")]
    export = read(collection(*([mark, *shown] if before else [*shown, mark])))
    assert [one.text for one in export.comments] == ["page 14"]
    place = f"/items/{before}/object"
    told = [note for note in export.notes if "deleted" in note and "left out" in note]
    assert len(told) == 1
    assert all(words in told[0] for words in (": 1 ", place, "bo", "page 13"))
    assert export.unreadable == ()


def test_what_left_only_a_mark_is_counted_once(read: Read) -> None:
    unknown = "https://hall.example/notes/9"
    export = read(
        collection(
            created(ONE, "13"),
            deleted(ONE),
            TOMBSTONE,
            deleted(unknown),
            {"type": "Tombstone", "id": unknown},
            {"type": "Tombstone"},
        )
    )
    assert GONE.format(2) in export.notes


def test_all_words_of_a_deleted_note_are_gone_and_its_answers_stay(read: Read) -> None:
    answer = {"type": "Note", "id": TWO, "attributedTo": BO, "content": "me too, 14"}
    update = created(ONE, "page 15") | {"type": "Update"}
    export = read(collection(created(ONE, "page 13", replies=[answer]), update, deleted(ONE)))
    assert [(one.text, one.reply_to) for one in export.comments] == [("me too, 14", ONE)]


@pytest.mark.parametrize(
    "undone",
    ["https://hall.example/acts/5", deleted(ONE, id="https://hall.example/acts/5")],
    ids=["by its link", "whole"],
)
def test_a_deletion_that_was_undone_takes_no_note_away(read: Read, undone: Any) -> None:
    own = "https://hall.example/acts/5"
    undo = {"type": "Undo", "actor": BO, "object": undone}
    export = read(collection(created(ONE, "13"), deleted(ONE, id=own), undo))
    assert [one.text for one in export.comments] == ["13"]


def test_a_deletion_in_another_line_counts_too(read: Read) -> None:
    export = read(
        "\n".join(map(json.dumps, [created(ONE, "13"), created(TWO, "14"), deleted(ONE)]))
    )
    assert [one.text for one in export.comments] == ["14"]


def test_a_note_without_an_id_is_not_taken_for_a_deleted_one(read: Read) -> None:
    note = {"type": "Note", "attributedTo": BO, "content": "13"}
    export = read(collection(note, {"type": "Tombstone"}, deleted({"type": "Note"})))
    assert [one.text for one in export.comments] == ["13"]


def test_of_many_deleted_notes_the_first_are_named(read: Read) -> None:
    owns = [f"https://hall.example/notes/{number}" for number in range(23)]
    [told] = read(collection(*(created(own, "13") for own in owns), deleted(*owns))).notes[:1]
    assert (told.count("/items/"), told[-13:]) == (20, " and 3 more).")
