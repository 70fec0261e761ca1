"""More turns of phrase around a title: earlier tries, needs of the day, designers, slips."""

from __future__ import annotations

import pytest

from service.mystery.answer import Answer, GuessRules, Wants
from service.mystery.guess import read_guess

ANSWER = Answer("The Night Ferry", "Maud Ferrisk", ("Lantern by the Stove", "Wool Mittens"))


def outcome(text: str, wants: Wants = "title", names: int = 1) -> str:
    return read_guess(text, GuessRules(ANSWER, wants, names)).outcome


@pytest.mark.parametrize(
    "text",
    [
        "The Night Ferry is what I'm putting down.",
        "Night Ferry is what I'm going with",
        "Last week I'd have sworn it was Hobnail Row. So: The Night Ferry.",
        "Lantern by the Stovve!",
    ],
)
def test_an_offered_title_is_right(text: str) -> None:
    assert outcome(text) == "right"


@pytest.mark.parametrize(
    "text",
    [
        "cold today, need wool mittens and a hot drink before bed",
        "sorry, I have to be night ferry to let the dog out",
        "must dash, wool mittens and the scarves are drying",
    ],
)
def test_what_somebody_needs_or_must_is_no_guess(text: str) -> None:
    assert outcome(text) == "none"


@pytest.mark.parametrize("text", ["wool mittens and the title is a joke", "need Wool Mittens"])
def test_what_may_still_be_a_name_is_not_lost(text: str) -> None:
    assert outcome(text) in ("right", "look")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("I think Maud Ferrisk designed it but I can't think what it's called", "right"),
        ("Maud Ferrisk designed it", "right"),
        ("Maud Ferrisk designed it for my sister's wedding", "look"),
        ("I don't think Maud Ferrisk designed it", "wrong"),
    ],
)
def test_whose_work_it_is_said_to_be_is_a_guess_of_the_designer(text: str, read: str) -> None:
    assert outcome(text, "title or designer") == read


TWO = "Jam on Thursday, Fenella Orrick\nThe Night Ferry, Maud Ferrisk"


def test_a_designer_behind_a_name_is_no_name_of_its_own() -> None:
    assert outcome(TWO, "title and designer", 2) == "right"
    assert outcome(TWO, "title and designer", 1) == "look"


def test_a_doubled_letter_before_a_short_word_is_one_slip() -> None:
    rules = GuessRules(Answer("Willow Basket by the Stove"))
    assert read_guess("Willow Baskett by the Stove. I had to look twice", rules).outcome == "right"
