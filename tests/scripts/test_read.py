"""read.py shows how a text would be read, and which words decide."""

from __future__ import annotations

import json
from typing import Any

import pytest
import read

from service.settings import PREFIX, Settings
from tests.scripts.running import run_script, sentences

CHART = ("--chart", "9x7")


def span(start: int, end: int) -> dict[str, Any]:
    return {"start": start, "end": end}


@pytest.mark.parametrize(
    ("text", "more", "first", "said"),
    [
        pytest.param("page 42 please", (), "page >>42<< please", "It counts for page 42;", id="vote"),
        pytest.param(
            "12 or 40", (), ">>12<< or >>40<<", "It needs a look, it may mean pages 12, 40:", id="look"
        ),
        pytest.param(
            "12 and 40", ("--choices", "2"), ">>12<< and >>40<<", "counts for pages 12, 40;", id="two"
        ),
        pytest.param("what a wind", (), "what a wind", "It is no vote:", id="nothing"),
        pytest.param("page 64", (), "page >>64<<", "It is no vote: the chart has no", id="off"),
        pytest.param(
            "page quarante-deux",
            ("--languages", "fr"),
            "page >>quarante-deux<<",
            "It counts for page 42;",
            id="French",
        ),
        pytest.param(
            "first page please", ("--start-corner", "bottom right"), ">>first page<< please",
            "It counts for page 1;", id="place",
        ),
    ],
)  # fmt: skip
def test_a_text_is_shown_with_the_deciding_words_marked(
    text: str, more: tuple[str, ...], first: str, said: str
) -> None:
    told = run_script("read.py", text, *CHART, *more)
    assert (told.returncode, told.stderr) == (0, "")
    assert told.stdout.splitlines()[0] == first
    assert said in told.stdout


def test_what_each_word_was_read_as_is_shown_with_its_rule() -> None:
    told = run_script("read.py", "12 or 40", *CHART)
    *_, twelve, forty = told.stdout.splitlines()
    for row, words in ((twelve, ["12", "page", "12"]), (forty, ["40", "page", "40"])):
        assert row.split()[:3] == words
        assert len(row.split()) > 3


def test_the_reading_can_be_had_as_data() -> None:
    told = run_script("read.py", "12 or 40", *CHART, "--json")
    reading = json.loads(told.stdout)
    assert (reading["outcome"], reading["pages"]) == ("look", [12, 40])
    assert [each["text"] for each in reading["evidence"]] == ["12", "40"]


def test_a_text_may_come_from_standard_input_in_several_lines() -> None:
    given = "good wind to you\npage ４２\n".encode()
    told = run_script("read.py", "-", *CHART, given=given)
    assert told.stdout.splitlines()[0] == "good wind to you ⏎ page >>４２<<"
    assert "It counts for page 42;" in told.stdout


def test_a_stored_game_tells_chart_and_languages(sqlite: Settings) -> None:
    stored = {f"{PREFIX}DATA_FOLDER": str(sqlite.data_folder)}
    game = {
        "slug": "harbour-reading", "name": "The harbour mystery", "zone": "Atlantic/Faroe",
        "chart": {"columns": 3, "rows": 3, "start": "bottom left"}, "next_from": "the previous page",
        "hosts": ["Island Guild"], "languages": ["nl"], "guesses_open": "2026-03-01T18:00",
        "answer": {"title": "The Lamp Room", "designer": "Ines Orlay"},
    }  # fmt: skip
    sent = json.dumps(game).encode()
    made = run_script("ask.py", "POST", "/games", "-", given=sent, environment=stored)
    assert made.returncode == 0, made.stderr

    def shown(text: str, *more: str) -> str:
        return run_script("read.py", text, *more, environment=stored).stdout

    assert "the chart has no such page" in shown("page 42", "--game", "harbour-reading")
    corner = shown("ik stem op pagina een alsjeblieft", "--game", "harbour-reading")
    assert "It counts for page 1;" in corner
    missing = run_script("read.py", "42", "--game", "no-such-game", environment=stored)
    assert missing.returncode == 2
    assert "no-such-game" in missing.stderr


@pytest.mark.parametrize(
    ("evidence", "shown"),
    [
        pytest.param([], "12 or 40", id="none"),
        pytest.param([span(6, 8), span(0, 2)], ">>12<< or >>40<<", id="in any order"),
        pytest.param([span(0, 2), span(0, 2)], ">>12<< or 40", id="the same twice"),
        pytest.param([span(0, 5), span(3, 8)], ">>12 or<< 40", id="one over another"),
        pytest.param([span(3, 3)], "12 or 40", id="no words"),
    ],
)
def test_every_deciding_word_is_marked_once(evidence: list[dict[str, Any]], shown: str) -> None:
    assert read.marked("12 or 40", evidence) == shown


def test_a_text_cannot_turn_or_colour_the_terminal() -> None:
    told = run_script("read.py", "page 42 \x1b[31m\u202eplease", *CHART)
    assert "\x1b" not in told.stdout
    assert "\u202e" not in told.stdout


def test_a_vote_taken_back_is_said_to_be_one() -> None:
    reading = {"outcome": "none", "pages": [], "reason": "withdrawn", "why": "it is taken back"}
    assert read.verdict(reading) == "It takes a vote back: it is taken back."


@pytest.mark.parametrize(
    ("words", "said"),
    [
        pytest.param((), "TEXT", id="no text"),
        pytest.param(("42",), "give one of --chart, --design and --game", id="no chart"),
        pytest.param(("42", *CHART, "--game", "a"), "give one of", id="two charts"),
        pytest.param(("42", *CHART, "--choices", "0"), "choices", id="no choice"),
        pytest.param(("42", "--chart", "9"), "'9' is not two numbers", id="half a chart"),
    ],
)
def test_what_cannot_be_asked_is_one_sentence(words: tuple[str, ...], said: str) -> None:
    told = run_script("read.py", *words)
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert said in sentence
