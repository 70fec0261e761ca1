"""The mapping of columns: shown so that it can be given again, changed, and refused where wrong."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.column_names import names_of
from service.comments.formats import Source
from service.comments.intake import read_export
from service.errors import BadExport, NoTextColumn
from tests.comments.conftest import COPIED, Read

TABLES = [
    pytest.param("author,posted,text\nGran T,2026-02-27T12:00:09Z,12\n", id="headers"),
    pytest.param("2026-02-27T12:00:09Z;Gran T;12\n2026-02-27T12:00:10Z;Annie;8\n", id="no headers"),
    pytest.param(
        "Name,Date,Time,Comment\nGran T,27/02/2026,12:00:09,12\n", id="days and times apart"
    ),
    pytest.param(
        "Text,Text,Name\n,12,Gran T\nshort,a longer text 8,Annie\n", id="two headers alike"
    ),
    pytest.param(",Name,\n2026-02-27,Gran T,12 is mine\n", id="headers that are empty"),
    pytest.param("  Name ,  Comment \nGran T,12\n", id="spaces around headers"),
    pytest.param('"Comment\nof a voter",Name\n12,Gran T\n', id="a line break in a header"),
    pytest.param("foo;bar;baz\n2026-02-27;Gran T;12\n2026-02-28;Annie;8\n", id="strange headers"),
    pytest.param('[{"who": "Gran T", "note": {"raw": "12"}}]', id="JSON"),
    pytest.param('{"a": 1}\n{"who": "Gran T", "note": {"raw": "12"}}\n', id="JSON Lines"),
    pytest.param('[["12"], ["I like 8"]]', id="JSON of nothing but words"),
]


@pytest.mark.parametrize("table", TABLES)
def test_the_mapping_that_is_shown_reads_the_same_again(read: Read, table: str) -> None:
    first = read(table)
    again = read(table, columns=first.mapping)
    assert first.comments
    assert again.comments == first.comments
    assert again.mapping == first.mapping


@given(st.lists(st.text(max_size=6), max_size=6))
def test_columns_are_called_so_that_no_two_are_alike(headers: list[str]) -> None:
    names = names_of(headers)
    assert len(set(names)) == len(names) == len(headers)
    assert all(name == name.strip() != "" for name in names)


@given(st.lists(st.sampled_from(["12", "Gran T", "text", "author", "", "no, 8"]), min_size=4))
def test_a_mapping_of_any_table_can_be_given_again(cells: list[str]) -> None:
    rows = [cells[place : place + 2] for place in range(0, len(cells) - 1, 2)]
    content = "\n".join(";".join(row) for row in rows).encode()
    source = Source("x.csv", "UTC", COPIED, (), "table")
    try:
        first = read_export(content, source)
    except BadExport:
        return
    if not first.comments:
        return  # a table of headers alone
    again = read_export(content, Source("x.csv", "UTC", COPIED, first.mapping, "table"))
    assert (again.comments, again.mapping) == (first.comments, first.mapping)


def test_a_column_can_be_said_to_be_missing(read: Read) -> None:
    table = "name,posted,text\nGran T,2026-02-27T12:00:09Z,12\n"
    export = read(table, columns=(("author", "-"), ("posted", "-")))
    assert [one.author for one in export.comments] == [""]
    assert dict(export.mapping) == {"text": "text"}
    assert export.comments[0].posted.latest == COPIED


def test_a_field_of_json_can_be_said_to_be_missing(read: Read) -> None:
    export = read('[{"who": "Gran T", "text": "12"}]', columns=(("author", "-"),))
    assert [(one.author, one.text) for one in export.comments] == [("", "12")]


def test_a_table_without_a_text_cannot_be_read(read: Read) -> None:
    with pytest.raises(NoTextColumn, match="columns seen: name, text"):
        read("name,text\nGran T,12\n", columns=(("text", "-"),))


@pytest.mark.parametrize(
    ("columns", "sentence"),
    [
        pytest.param(
            {"posted": "who"}, "'who' was named for posted, but it holds no times", id="no time"
        ),
        pytest.param({"text": "when"}, "'when' was named for text, but it holds times", id="times"),
        pytest.param(
            {"posted": "clock"}, "it holds only times of day.*posted=Date [+] Time", id="no day"
        ),
        pytest.param({"id": "video"}, "the same for every comment [(]'v1'[)]", id="one id for all"),
        pytest.param(
            {"text": "say", "author": "say"}, "for text and for author", id="twice the same"
        ),
        pytest.param({"text": "sya"}, "there is no column 'sya'.*who, when", id="a slip"),
        pytest.param({"text": "9"}, "there is no column '9'", id="a number too high"),
        pytest.param({"posted": "when + sya"}, "no column 'when [+] sya'", id="half a pair"),
    ],
)
def test_columns_mapped_wrongly_are_refused_in_one_sentence(
    read: Read, columns: dict[str, str], sentence: str
) -> None:
    table = "who,when,clock,video,say\n" + "".join(
        f"{name},2026-02-27,12:0{place},v1,{place} please\n"
        for place, name in enumerate(("Gran T", "Annie", "Bo"))
    )
    with pytest.raises(BadExport, match=sentence):
        read(table, columns=tuple(columns.items()))


def test_fields_of_json_mapped_wrongly_are_refused(read: Read) -> None:
    with pytest.raises(BadExport, match="'who' was named for posted, but it holds no times"):
        read('[{"who": "Gran T", "text": "12"}]', columns=(("posted", "who"),))
