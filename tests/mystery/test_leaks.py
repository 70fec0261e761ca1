"""Texts that would give the answer away are stopped."""

from __future__ import annotations

import pytest

from service.mystery.answer import Answer, GuessRules
from service.mystery.leaks import is_lost_in_talk, names_answer

RULES = GuessRules(
    Answer("The Skarnvik Ferry", "Maud Quellish", ("Last Boat Over", "Café Übersee"))
)


@pytest.mark.parametrize(
    "text",
    [
        "Well done everybody, it was The Skarnvik Ferry!",
        "the skarnvik ferry",
        "Skarnvik is lovely in spring",
        "skarnvick",
        "last boat over",
        "The Last Boat Over by somebody",
        "lastboatover.svg",
        "/files/last-boat-over.png",
        "https://hall.example/last%20boat%20over",
        "https://hall.example/?q=last+boat+over",
        "https://hall.example/caf%C3%A9%20%C3%9Cbersee",
        "100%25 last%20boat%20over",
        "Caf&eacute; &Uuml;bersee",
        "cafe ubersee",
        "Cafe Uebersee",
        "by Maud Quellish",
        "Quellish",
        "a Maud Quelish design",
        "#SkarnvikFerry",
        "S k a r n v i k",
    ],
)
def test_a_text_that_names_the_answer_is_stopped(text: str) -> None:
    assert names_answer(text, RULES)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "Page 12 has won with 14 votes. Voting for the next page opens on Sunday, 1 March.",
        "Round 3 is open: choose a page joined to page 12 until Monday 18:00 UTC.",
        "Somebody named the piece! The prize is one hank of hand-dyed thread.",
        "The boat in the middle is nearly done.",
        "The guild's hall is open over the weekend, the last table is by the door.",
        "Seal: 2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb",
    ],
)
def test_a_text_that_tells_nothing_passes(text: str) -> None:
    assert not names_answer(text, RULES)


def test_an_answer_without_a_designer_can_be_looked_for() -> None:
    rules = GuessRules(Answer("Lanterns"))
    assert names_answer("so many lanterns!", rules)
    assert not names_answer("so many boats", rules)


@pytest.mark.parametrize(
    "title", ["12", "63", "Page 12", "the page", "Pages", "A", "The", "x", "It", "IT!", "É", "１２"]
)
def test_a_name_that_every_vote_would_say_is_lost_in_talk(title: str) -> None:
    assert is_lost_in_talk(Answer(title), page_count=63)
    assert is_lost_in_talk(Answer("The Skarnvik Ferry", aliases=(title,)), page_count=63)


@pytest.mark.parametrize(
    "title",
    ["The Edge", "The Vote", "Tie", "Stitched", "64", "1066", "The Cage", "Over and Under", "梅",
     "Page Boy", "The Skarnvik Ferry", "Room 12", "0"],
)  # fmt: skip
def test_a_name_that_stands_out_at_all_is_not_lost_in_talk(title: str) -> None:
    assert not is_lost_in_talk(Answer(title, "A. Page"), page_count=63)
