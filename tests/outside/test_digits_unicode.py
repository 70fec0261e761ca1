"""Digits of every script against the Unicode Character Database.

Source: Unicode Standard, section 4.6 "Numeric Value": characters of General_Category Nd form runs
of ten, zero to nine, for positional decimal notation. Their values come from `unicodedata.decimal`
of the Python that runs this (Unicode 14 and later).
"""

from __future__ import annotations

import sys
import unicodedata

import pytest

from service.ballots.normal import plain_of
from tests.ballots.heard import heard

DIGITS = [
    chr(code) for code in range(sys.maxunicode + 1) if unicodedata.category(chr(code)) == "Nd"
]
ZEROS = [digit for digit in DIGITS if unicodedata.decimal(digit) == 0]


def written(number: int, zero: str) -> str:
    """The number in the digits that begin with this zero."""
    return "".join(chr(ord(zero) + int(digit)) for digit in str(number))


def script_of(zero: str) -> str:
    return unicodedata.name(zero).removesuffix(" DIGIT ZERO").lower()


def test_the_database_has_the_scripts_that_viewers_write() -> None:
    scripts = {script_of(zero) for zero in ZEROS}
    assert len(ZEROS) >= 65
    assert {
        "arabic-indic",
        "extended arabic-indic",
        "devanagari",
        "fullwidth",
        "bengali",
        "thai",
    } <= (scripts)


def test_every_digit_is_levelled_to_its_value() -> None:
    wrong = [digit for digit in DIGITS if plain_of(digit).text != str(unicodedata.decimal(digit))]
    assert wrong == []


@pytest.mark.parametrize("zero", ZEROS, ids=script_of)
def test_a_page_in_the_digits_of_any_script_counts(zero: str) -> None:
    assert heard(written(42, zero)) == "counts 42"
    assert heard(f"page {written(7, zero)} please") == "counts 7"
    assert heard(written(5063, zero)) != "counts 63"


@pytest.mark.parametrize(("sign", "number"), [("①", 1), ("㉓", 23), ("㊷", 42), ("⑫", 12)])
def test_a_circled_number_is_the_number_that_unicode_gives_it(sign: str, number: int) -> None:
    assert unicodedata.numeric(sign) == number
    assert heard(sign) == f"counts {number}"
