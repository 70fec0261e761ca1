"""Tables against RFC 4180, Common Format and MIME Type for CSV Files (October 2005), section 2.

The RFC's own examples, read as records; what Python's csv does silently is told apart.
"""

from __future__ import annotations

import pytest

from service.comments.csv_records import records_of
from service.comments.tables import lines_of


def cells(text: str) -> list[tuple[str, ...]]:
    return [record.cells for record in records_of(lines_of(text), ",")]


def test_rule_1_each_record_is_on_a_line_of_its_own() -> None:
    assert cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == [("aaa", "bbb", "ccc"), ("zzz", "yyy", "xxx")]


def test_rule_2_the_last_record_may_have_no_line_break() -> None:
    assert cells("aaa,bbb,ccc\r\nzzz,yyy,xxx") == cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")


def test_rule_3_a_header_is_a_record_like_the_others() -> None:
    text = "field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"
    assert cells(text)[0] == ("field_name", "field_name", "field_name")
    assert len(cells(text)) == 3


def test_rule_4_spaces_are_part_of_a_field() -> None:
    assert cells("a, b ,c") == [("a", " b ", "c")]


def test_rule_5_fields_may_be_quoted() -> None:
    assert cells('"aaa","bbb","ccc"\r\nzzz,yyy,xxx') == [
        ("aaa", "bbb", "ccc"),
        ("zzz", "yyy", "xxx"),
    ]


def test_rule_6_line_breaks_and_commas_may_be_quoted() -> None:
    assert cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx') == [
        ("aaa", "b\r\nbb", "ccc"),
        ("zzz", "yyy", "xxx"),
    ]
    assert cells('"a,aa",b') == [("a,aa", "b")]


def test_rule_7_a_quotation_mark_is_doubled() -> None:
    assert cells('"aaa","b""bb","ccc"') == [("aaa", 'b"bb', "ccc")]


def test_a_record_knows_the_line_it_begins_on() -> None:
    records = list(records_of(lines_of('a,"1\r\n2\r\n3"\r\n\r\nb,4\r\n'), ","))
    assert [(record.line, record.cells) for record in records] == [
        (1, ("a", "1\r\n2\r\n3")),
        (5, ("b", "4")),
    ]


@pytest.mark.parametrize("end", ["\r\n", "\n", "\r"])
def test_other_line_breaks_are_read_too(end: str) -> None:
    """Beyond the RFC, which knows CRLF only; common practice, no source."""
    assert cells(f"aaa,bbb{end}zzz,yyy{end}") == [("aaa", "bbb"), ("zzz", "yyy")]


@pytest.mark.parametrize("sign", ["\u2028", "\x0b", "\x0c", "\x85"])
def test_no_other_sign_ends_a_line(sign: str) -> None:
    assert cells(f"a{sign}b,c") == [(f"a{sign}b", "c")]


def test_a_quotation_mark_that_is_never_closed_breaks_the_grammar() -> None:
    """The grammar of section 2 has no record with an open quotation mark; csv reads it silently."""
    records = list(records_of(lines_of('aaa,bbb\r\nccc,"ddd\r\neee,fff\r\n'), ","))
    assert [(record.line, record.cells) for record in records] == [
        (1, ("aaa", "bbb")),
        (2, ()),
        (3, ("eee", "fff")),
    ]
    assert "never closed" in records[1].problem
