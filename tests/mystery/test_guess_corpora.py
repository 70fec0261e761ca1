"""Every corpus of guesses, scored: no wrong winner, nothing lost, few needless looks.

`guesses.jsonl` was written apart from the reader. The files `guesses_own*.jsonl` were written in
turn, each before the reader had seen it; a line begins a game, the lines after it are comments.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path

import pytest

from service.mystery.answer import Answer, GuessRules
from service.mystery.guess import GUESS_OUTCOMES, GuessReading, read_guess

CORPORA = sorted((Path(__file__).parent.parent / "corpus").glob("guesses*.jsonl"))
NEEDLESS_IN_100 = 3


@dataclass(frozen=True)
class Line:
    """A comment of a corpus with its game's rules and what the fair reader says."""

    id: str
    text: str
    outcome: str
    rules: GuessRules


def lines_of(path: Path) -> list[Line]:
    lines: list[Line] = []
    rules: GuessRules | None = None
    for raw in path.read_text(encoding="utf-8").splitlines():
        row = json.loads(raw)
        if "game" in row:
            told = row["answer"]
            answer = Answer(told["title"], told["designer"], tuple(told["aliases"]))
            rules = GuessRules(answer, row["wants"], row["names_per_comment"])
        else:
            assert rules is not None
            lines.append(Line(row["id"], row["text"], row["outcome"], rules))
    return lines


def harm(expected: str, read: str) -> str:
    """What a reading does to the game: "" where it does no harm."""
    if read == "right" != expected:
        return "wrong winner"
    if expected in ("right", "look") and read in ("wrong", "none"):
        return "lost"
    return "needless" if read == "look" != expected else ""


def harms(path: Path) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {"wrong winner": [], "lost": [], "needless": []}
    for line in lines_of(path):
        reading = read_guess(line.text, line.rules)
        kind = harm(line.outcome, reading.outcome)
        if kind:
            found[kind].append(f"{line.id}: {line.outcome} read as {reading.outcome}: {line.text}")
    return found


@pytest.mark.parametrize("path", CORPORA, ids=lambda path: path.stem)
def test_no_comment_is_a_wrong_winner_or_lost(path: Path) -> None:
    found = harms(path)
    assert found["wrong winner"] == []
    assert found["lost"] == []


@pytest.mark.parametrize("path", CORPORA, ids=lambda path: path.stem)
def test_few_looks_are_needless(path: Path) -> None:
    assert len(harms(path)["needless"]) * 100 <= NEEDLESS_IN_100 * len(lines_of(path))


def test_the_corpora_hold_games_of_all_three_kinds_and_every_outcome() -> None:
    lines = [line for path in CORPORA for line in lines_of(path)]
    assert len(lines) > 800
    assert len({line.id for line in lines}) == len(lines)
    assert {line.outcome for line in lines} == set(GUESS_OUTCOMES)
    assert {line.rules.wants for line in lines} == {
        "title",
        "title and designer",
        "title or designer",
    }
    assert {line.rules.names_per_comment for line in lines} >= {1, 2, 3}


@pytest.mark.parametrize(
    ("expected", "read", "kind"),
    [
        ("look", "right", "wrong winner"),
        ("wrong", "right", "wrong winner"),
        ("right", "wrong", "lost"),
        ("look", "none", "lost"),
        ("right", "look", "needless"),
        ("none", "look", "needless"),
        ("wrong", "none", ""),
        ("right", "right", ""),
    ],
)
def test_harm_is_counted_as_the_policy_says(expected: str, read: str, kind: str) -> None:
    assert harm(expected, read) == kind


def test_every_reading_says_why_with_the_writers_own_words() -> None:
    readings: list[tuple[Line, GuessReading]] = [
        (line, read_guess(line.text, line.rules)) for path in CORPORA for line in lines_of(path)
    ]
    for line, reading in readings:
        assert reading.why.endswith(".")
        for words in reading.evidence:
            assert line.text[words.start : words.end] == words.text != ""
            assert words.rule
        if reading.outcome == "right":
            assert reading.evidence
