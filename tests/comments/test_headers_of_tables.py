"""Headers that do not stand in the first line, and headers that say the same twice."""

from __future__ import annotations

import pytest

from tests.comments.conftest import Read

ROWS = "Ann,12,2026-03-01T12:00:00Z\nBob,page 14,2026-03-01T13:00:00Z\n"
HEADER = "author,text,posted\n"
TITLES = [
    pytest.param("Export of comments\nGenerated 2026-03-05\n\n", 3, [1, 2], id="two lines and an empty one"),
    pytest.param("Comments\n", 1, [1], id="a word that may be a header"),
    pytest.param("Export of comments,,\nGenerated,2026-03-05,\n,,\n", 3, [1, 2], id="filled up with empty cells"),
    pytest.param("Video,The island's quilt\nComments,2\n", 2, [1, 2], id="names and values"),
    pytest.param("a\nb\nc\nd\ne\nf\ng\nh\ni\n", 9, list(range(1, 10)), id="in the tenth line"),
]  # fmt: skip


@pytest.mark.parametrize(("titles", "above", "passed_over"), TITLES)
@pytest.mark.parametrize("name", ["x.csv", "x"])
def test_a_header_below_title_lines_is_found(
    read: Read, titles: str, above: int, passed_over: list[int], name: str
) -> None:
    export = read(titles + HEADER + ROWS, name=name)
    assert [(one.author, one.text, one.place) for one in export.comments] == [
        ("Ann", "12", f"line {above + 2}"),
        ("Bob", "page 14", f"line {above + 3}"),
    ]
    assert export.mapping == (("text", "text"), ("author", "author"), ("posted", "posted"))
    assert export.unreadable == ()
    [told] = [note for note in export.notes if "passed over" in note]
    assert [line for line in range(1, 11) if f"line {line} (" in told] == passed_over


def test_title_lines_above_two_columns(read: Read) -> None:
    export = read("Made by,The guild\n\nname;comment\nAnn;12\nBob;13, or 14\n", name="x.csv")
    assert [(one.author, one.text) for one in export.comments] == [
        ("Ann", "12"),
        ("Bob", "13, or 14"),
    ]


def test_a_header_that_the_host_named_is_found_below_title_lines(read: Read) -> None:
    export = read(
        "Export\nfoo,bar\nAnn,12\nBob,14\n",
        name="x.csv",
        columns=(("text", "bar"), ("author", "foo")),
    )
    assert [(one.author, one.text) for one in export.comments] == [("Ann", "12"), ("Bob", "14")]


@pytest.mark.parametrize(
    "table",
    [
        pytest.param(HEADER + "author,text,2026-03-01T12:00:00Z\n" + ROWS, id="a comment of such words"),
        pytest.param("foo,text,bar\nname,date,comment\n" + ROWS, id="one known name in the first line"),
        pytest.param("".join(f"{sign}\n" for sign in "abcdefghij") + HEADER + ROWS, id="in the eleventh line"),
        pytest.param(ROWS * 2 + HEADER, id="below comments"),
    ],
)  # fmt: skip
def test_what_is_no_title_line_is_not_passed_over(read: Read, table: str) -> None:
    export = read(table, name="x.csv")
    assert not [note for note in export.notes if "passed over" in note]
    lines = len(table.splitlines()) - table.startswith(("author", "foo"))
    assert len(export.comments) + len(export.unreadable) == lines


@pytest.mark.parametrize(
    ("header", "taken", "words"),
    [
        pytest.param(
            "author,text,text", "12", ["text", "column 2", "column 3"], id="the same name"
        ),
        pytest.param("author,comment,text", "13", ["'text'", "'comment'"], id="two names"),
        pytest.param("text,author,user", "Ann", ["'author'", "'user'"], id="two authors"),
    ],
)
def test_of_two_columns_of_one_meaning_the_note_says_which_was_taken(
    read: Read, header: str, taken: str, words: list[str]
) -> None:
    export = read(f"{header}\nAnn,12,13\nBob,14,15\n")
    [told] = [note for note in export.notes if "was taken" in note]
    assert all(word in told for word in words)
    assert told.index(words[-2]) < told.index(words[-1])
    if taken != "Ann":
        assert export.comments[0].text == taken


@pytest.mark.parametrize(
    "table",
    [
        pytest.param("author,text,comment\nAnn,12,\nBob,14,\n", id="an empty one"),
        pytest.param("author,date,time,text\nAnn,2026-03-01,12:00,12\n", id="the time of day"),
        pytest.param("author,author id,text,id,reply to\nAnn,a1,12,c1,\nBob,b1,14,c2,c1\n", id="each its own"),
    ],
)  # fmt: skip
def test_columns_that_do_not_compete_are_not_told(read: Read, table: str) -> None:
    assert not [note for note in read(table).notes if "was taken" in note]


def test_what_the_host_named_needs_no_note(read: Read) -> None:
    export = read("author,text,comment\nAnn,12,13\nBob,14,15\n", columns=(("text", "comment"),))
    assert [one.text for one in export.comments] == ["13", "15"]
    assert not [note for note in export.notes if "was taken" in note]
