"""Lines that are JSON without being comments: none is dropped in silence."""

from __future__ import annotations

import pytest

from service.comments.formats import Format
from tests.comments.conftest import Read

ANN = '{"author": "Ann", "text": "12", "time": "2026-02-27T12:00:00Z"}'
BOB = '{"author": "Bob", "text": "13", "time": "2026-02-27T12:00:00Z"}'
NO_OBJECT = "no JSON object, so no comment can be told from it"


@pytest.mark.parametrize(
    "line", ["[1]", '"vote 13"', "42", "null", "true", "[]", '["13", "14"]', "[[1], null]"]
)
@pytest.mark.parametrize("place", [0, 1, 2], ids=["first", "between", "last"])
def test_a_line_that_is_no_object_is_shown(read: Read, line: str, place: int) -> None:
    lines = [ANN, BOB]
    lines.insert(place, line)
    export = read("\n".join(lines) + "\n")
    assert export.format == "json lines"
    assert [one.text for one in export.comments] == ["12", "13"]
    assert [(one.place, one.text, one.why) for one in export.unreadable] == [
        (f"line {place + 1}", line, NO_OBJECT)
    ]


def test_what_cannot_be_read_is_shown_in_the_order_of_the_lines(read: Read) -> None:
    export = read("\n".join([ANN, "[1]", "{broken", '{"author": "Cai", "text": ""}', "42", BOB]))
    assert [one.place for one in export.unreadable] == ["line 2", "line 3", "line 4", "line 5"]


def test_a_line_may_hold_a_list_of_comments(read: Read) -> None:
    export = read(f"[{ANN}, {BOB}]\n[{ANN}]\n", name="x.jsonl")
    assert [one.text for one in export.comments] == ["12", "13", "12"]
    assert export.unreadable == ()


def test_a_line_between_notes_does_not_hide_what_they_are(read: Read) -> None:
    note = '{"type": "Note", "attributedTo": "https://hall.example/bo", "content": "12"}'
    export = read(f"{note}\nnull\n{note}\n")
    assert export.format == "activitystreams"
    assert [one.place for one in export.unreadable] == ["line 2"]


def test_lines_without_any_object_hold_no_comments(read: Read) -> None:
    export = read("42\nnull\n", form="json lines")
    assert (export.comments, export.notes) == ((), ("The export holds no comments.",))
    assert [one.place for one in export.unreadable] == ["line 1", "line 2"]


@pytest.mark.parametrize("form", [None, "json", "json lines"])
@pytest.mark.parametrize("whole", ["null", "null\n", "[null]", "[null, null]"])
def test_null_is_no_comment(read: Read, whole: str, form: Format | None) -> None:
    export = read(whole, form=form)
    assert (export.comments, export.notes) == ((), ("The export holds no comments.",))


def test_a_paste_of_numbers_in_brackets_stays_a_paste(read: Read) -> None:
    assert read("[12]\n[14]\nnull and void\n").format == "pasted"
