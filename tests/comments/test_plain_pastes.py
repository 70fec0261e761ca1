"""Lists pasted without any times: one comment a line, or names before colons."""

from __future__ import annotations

import pytest

from tests.comments.conftest import COPIED, Read


@pytest.mark.parametrize(
    ("paste", "expected"),
    [
        pytest.param(
            "12 please\n14\n\nPage 7, thanks\nlol: 44\n",
            [("", "12 please"), ("", "14"), ("", "Page 7, thanks"), ("", "lol: 44")],
            id="one a line",
        ),
        pytest.param(
            "Gran T: page 12\nAnnie: 8, or:\n9 if taken\nBo : 14\n",
            [("Gran T", "page 12"), ("Annie", "8, or:\n9 if taken"), ("Bo", "14")],
            id="names before colons",
        ),
        pytest.param(
            "My vote: 12\nPage: 8\nvote: 14\n",
            [("", "My vote: 12"), ("", "Page: 8"), ("", "vote: 14")],
            id="what is no name",
        ),
        pytest.param(
            "糸と風： 16\nAnnie: 8\n", [("糸と風", "16"), ("Annie", "8")], id="a wide colon"
        ),
    ],
)
def test_a_list_without_times_is_read_as_one(
    read: Read, paste: str, expected: list[tuple[str, str]]
) -> None:
    export = read(paste)
    assert export.format == "pasted"
    assert [(one.author, one.text) for one in export.comments] == expected
    assert all(one.posted.latest == COPIED for one in export.comments)
    assert all(one.posted.earliest.year == 1970 for one in export.comments)
    assert "The paste tells no times" in export.notes[0]
