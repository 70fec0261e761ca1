"""A text's words as names are compared."""

from __future__ import annotations

import pytest

from service.mystery.names import fold, forms_of, words_of


@pytest.mark.parametrize(
    ("text", "folded"),
    [
        ("The Night Ferry!", "thenightferry"),
        ("Café", "cafe"),
        ("Cafe\u0301", "cafe"),
        ("STRASSE", "strasse"),
        ("Straße", "strasse"),
        ("Łódź", "lodz"),
        ("Smørrebrød", "smorrebrod"),
        ("œuvre", "oeuvre"),
        ("１２", "12"),
        ("٤٢", "42"),
        ("ferryyyy", "ferry"),
        ("1000", "1000"),
        ("🎉", ""),
        ("ガ", "ガ"),
        ("か\u3099", "が"),
        ("नौका", "नौका"),
        ("soft\u00adhyphen", "softhyphen"),
        ("Ёлка", "елка"),
    ],
)
def test_names_are_folded(text: str, folded: str) -> None:
    assert fold(text) == folded


@pytest.mark.parametrize(
    ("text", "forms"),
    [
        ("night-ferry", ["night", "ferry"]),
        ("tollkeeper's geese", ["tollkeepers", "geese"]),
        ("salt & rope", ["salt", "and", "rope"]),
        ("salt + rope", ["salt", "plus", "rope"]),
        ("'quoted'", ["quoted"]),
        ("snake_case", ["snake", "case"]),
        ("@anna.b hello", ["annab", "hello"]),
        ("月夜の舟", ["月", "夜", "の", "舟"]),
        ("3️⃣ boats", ["3", "boats"]),
    ],
)
def test_a_text_falls_into_words(text: str, forms: list[str]) -> None:
    assert [word.form for word in words_of(text)] == forms


@pytest.mark.parametrize(
    ("name", "forms"),
    [
        ("The Night Ferry", ("night", "ferry")),
        ("A Quiet Word", ("quiet", "word")),
        ("The", ("the",)),
        ("Das Haus", ("das", "haus")),
    ],
)
def test_a_leading_english_article_is_no_part_of_a_name(name: str, forms: tuple[str, ...]) -> None:
    assert forms_of(name) == forms


def test_a_word_knows_its_writing() -> None:
    plain, capital, shout, handle = words_of("ferry Ferry's FERRY @ferry")
    assert (plain.capital, capital.capital, shout.shout, handle.handle) == (False, True, True, True)
    assert (capital.form, capital.bare) == ("ferrys", "ferry")
