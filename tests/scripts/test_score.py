"""score.py calls differences by the words at the end of the reading policies."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
import score

from tests.scripts.running import run_script, sentences

VOTE_HEADING = {"chart": {"columns": 9, "rows": 7}, "choices": 1, "languages": ["en"]}
GUESS_HEADING = {
    "game": "one",
    "answer": {"title": "The Glass Heron", "designer": "Odile Brask", "aliases": []},
    "wants": "title",
    "names_per_comment": 1,
}


def vote(outcome: str, *pages: int, reason: str | None = None) -> dict[str, Any]:
    return {"outcome": outcome, "pages": list(pages), "reason": reason}


def write_corpus(folder: Path, *lines: object) -> Path:
    path = folder / "corpus.jsonl"
    path.write_text("".join(json.dumps(line) + "\n" for line in lines), encoding="utf-8")
    return path


@pytest.mark.parametrize(
    ("fair", "read", "verdict"),
    [
        pytest.param(vote("counts", 12), vote("counts", 12), "", id="same"),
        pytest.param(vote("counts", 12), vote("counts", 13), "wrong", id="another page"),
        pytest.param(vote("counts", 12, 13), vote("counts", 13, 12), "wrong", id="another order"),
        pytest.param(vote("counts", 12, 13), vote("counts", 12), "wrong", id="a page less"),
        pytest.param(vote("look", 12), vote("counts", 12), "wrong", id="sure of a look"),
        pytest.param(vote("none"), vote("counts", 12), "wrong", id="sure of nothing"),
        pytest.param(vote("counts", 12), vote("none"), "lost", id="a vote dropped"),
        pytest.param(vote("look"), vote("none"), "lost", id="a look dropped"),
        pytest.param(vote("counts", 12), vote("look", 12), "needless", id="unsure of a vote"),
        pytest.param(vote("none"), vote("look"), "needless", id="unsure of nothing"),
        pytest.param(vote("look", 12, 13), vote("look", 13, 12), "", id="a look has no order"),
        pytest.param(vote("look", 12), vote("look"), "other pages", id="a look with other pages"),
        pytest.param(
            vote("none", reason="withdrawn"),
            vote("none", reason="no-page"),
            "other reason",
            id="none for another reason",
        ),
    ],
)
def test_a_difference_in_votes_has_its_name(
    fair: dict[str, Any], read: dict[str, Any], verdict: str
) -> None:
    assert score.judge_vote(fair, read) == verdict


@pytest.mark.parametrize(
    ("fair", "read", "verdict"),
    [
        ("right", "right", ""),
        ("look", "right", "wrong winner"),
        ("wrong", "right", "wrong winner"),
        ("none", "right", "wrong winner"),
        ("right", "wrong", "lost"),
        ("right", "none", "lost"),
        ("look", "wrong", "lost"),
        ("look", "none", "lost"),
        ("right", "look", "needless"),
        ("wrong", "look", "needless"),
        ("none", "look", "needless"),
        ("wrong", "none", "wrong for none"),
        ("none", "wrong", "wrong for none"),
    ],
)
def test_a_difference_in_guesses_has_its_name(fair: str, read: str, verdict: str) -> None:
    assert score.judge_guess({"outcome": fair}, {"outcome": read}) == verdict


def test_votes_are_scored_and_written_out(tmp_path: Path) -> None:
    corpus = write_corpus(
        tmp_path,
        VOTE_HEADING,
        {"id": "a", "text": "page 12 please", **vote("counts", 12)},
        {"id": "b", "text": "page 12 please", **vote("counts", 13)},
        {"id": "c", "text": "lovely video", **vote("none", reason="no-page")},
        {"id": "d", "text": "lovely video", **vote("look")},
        {"id": "e", "text": "12 or 13", **vote("counts", 12)},
    )
    told = run_script("score.py", "votes", corpus, "--out", tmp_path / "read.jsonl")
    assert told.returncode == 0, told.stderr
    assert told.stdout.splitlines()[-1] == "wrong 1 lost 1 needless 1 of 5"
    assert "wrong: b  fair reader: counts 13  read: counts 12" in told.stdout
    read = [json.loads(line) for line in (tmp_path / "read.jsonl").read_text().splitlines()]
    assert read == [
        {"id": "a", **vote("counts", 12)},
        {"id": "b", **vote("counts", 12)},
        {"id": "c", **vote("none", reason="no-page")},
        {"id": "d", **vote("none", reason="no-page")},
        {"id": "e", **vote("look", 12, 13)},
    ]


def test_guesses_of_several_games_are_scored_each_by_its_own_answer(tmp_path: Path) -> None:
    other = {**GUESS_HEADING, "game": "two", "answer": {"title": "Moth at the Lantern"}}
    corpus = write_corpus(
        tmp_path,
        GUESS_HEADING,
        {"id": "1", "text": "The Glass Heron", "outcome": "right"},
        other,
        {"id": "2", "text": "The Glass Heron", "outcome": "wrong"},
        {"id": "3", "text": "Moth at the Lantern", "outcome": "wrong"},
    )
    told = run_script("score.py", "guesses", corpus, "--out", tmp_path / "read.jsonl")
    assert told.returncode == 0, told.stderr
    assert told.stdout.splitlines()[-1] == "wrong winner 1 lost 0 needless 0 of 3"
    read = [json.loads(line) for line in (tmp_path / "read.jsonl").read_text().splitlines()]
    assert [(row["id"], row["outcome"]) for row in read] == [
        ("1", "right"),
        ("2", "wrong"),
        ("3", "right"),
    ]


@pytest.mark.parametrize(
    ("content", "words"),
    [
        pytest.param(b"", "the file is empty", id="empty"),
        pytest.param(b"\x00\xff\xfe\x80", "not text in UTF-8", id="binary"),
        pytest.param(b"{", "line 1: no JSON object", id="no JSON"),
        pytest.param(b'{"text": "12", "outcome": "none"}', "no heading", id="no heading"),
        pytest.param(b'{"chart": {"columns": 9}}', "'rows' is missing", id="half a chart"),
        pytest.param(b'{"chart": {"columns": 0, "rows": 7}}', "0", id="a chart without columns"),
    ],
)
def test_a_file_that_is_no_corpus_is_one_sentence(
    tmp_path: Path, content: bytes, words: str
) -> None:
    path = tmp_path / "corpus.jsonl"
    path.write_bytes(content)
    told = run_script("score.py", "votes", path)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert words in sentence
