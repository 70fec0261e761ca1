"""Words broken into lines: none is lost before the cut, none is wider than its room."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.announce.text_fit import broken, cut, width_of


def test_words_are_broken_between_words() -> None:
    assert broken("one two three", 10, 60, 3) == ["one two", "three"]
    assert broken("", 10, 60, 3) == []


def test_what_is_too_long_ends_with_dots() -> None:
    assert broken("one two three four five six", 10, 60, 2) == ["one two", "three four…"]
    assert broken("Floccinaucinihilipilification", 10, 60, 1) == ["Floccinau…"]
    assert cut("short", 10, 60) == "short"
    assert cut("one two three", 10, 60) == "one two…"


def test_letters_are_counted_as_wide_as_they_are() -> None:
    assert width_of("ill", 10) < width_of("new", 10) < width_of("漢字か", 10)
    # A combining accent takes no room of its own.
    assert width_of("e\u0301", 10) == width_of("e", 10)


@given(st.text(), st.integers(20, 300), st.integers(1, 4))
def test_no_line_is_wider_than_its_room(words: str, room: int, lines: int) -> None:
    found = broken(words, 10, room, lines)
    assert len(found) <= lines
    for line in found:
        assert width_of(line, 10) <= room or len(line.rstrip("…")) <= 1
    if not found or not found[-1].endswith("…"):
        assert "".join(found).replace(" ", "") == "".join(words.split())


@pytest.mark.parametrize("words", ["a" * 300, "مرحبا " * 40, "e\u0301" * 300])
def test_a_name_of_any_length_fits(words: str) -> None:
    for line in broken(words, 20, 200, 2):
        assert width_of(line, 20) <= 200
