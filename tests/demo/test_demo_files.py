"""The demo's files agree with each other: every comment has one expectation, and it fits."""

from __future__ import annotations

import csv
import html
import json
import re
from pathlib import Path
from typing import Any

import pytest

AGE = re.compile(r"(?:.+ · )?(?:just now|(?:an?|\d+) (?:minute|hour|day)s? ago)(?: \(edited\))?")
OUTCOMES = {"counts", "look", "none"}
REASONS = {"no-page", "off-chart", "withdrawn"}
ROUNDS = [1, 2, 3]

Json = dict[str, Any]


def _letters(text: str) -> str:
    """The letters and digits of a text alone: how a page breaks its lines says nothing."""
    return "".join(letter for letter in text if letter.isalnum())


def _comments(expected: Json, number: int) -> list[Json]:
    comments: list[Json] = expected["rounds"][number - 1]["comments"]
    return comments


@pytest.fixture(scope="module")
def table_rows(demo_folder: Path) -> list[dict[str, str]]:
    with (demo_folder / "invented-round-1.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file, strict=True))


@pytest.fixture(scope="module")
def notes(demo_folder: Path) -> list[Json]:
    content = json.loads((demo_folder / "invented-round-2.json").read_text(encoding="utf-8"))
    items: list[Json] = content["orderedItems"]
    assert content["totalItems"] == len(items)
    return items


@pytest.fixture(scope="module")
def page_lines(demo_folder: Path) -> list[str]:
    return (demo_folder / "invented-round-3.txt").read_text(encoding="utf-8").splitlines()


def test_everything_is_marked_as_invented(
    demo_folder: Path, demo_game: Json, demo_expected: Json
) -> None:
    assert demo_game["invented"].startswith("Invented for a demonstration")
    assert demo_expected["invented"] == demo_game["invented"]
    assert all(one["export"]["file"].startswith("invented-") for one in demo_game["rounds"])
    assert "**All of it is invented**" in (demo_folder / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("kind", ["json", "csv", "txt"])
def test_the_only_addresses_are_those_that_can_never_exist(demo_folder: Path, kind: str) -> None:
    # RFC 2606, "Reserved Top Level DNS Names", section 2 keeps .example for documentation.
    allowed = re.compile(r"https://(?:gustray\.example/|www\.w3\.org/ns/activitystreams$)")
    files = sorted(demo_folder.glob(f"*.{kind}"))
    assert files
    for file in files:
        for address in re.findall(r"https?://[^\s\"<\\]+", file.read_text(encoding="utf-8")):
            assert allowed.match(address), f"{file.name}: {address}"


def test_each_round_has_its_export_in_another_format(demo_folder: Path, demo_game: Json) -> None:
    exports = [one["export"] for one in demo_game["rounds"]]
    assert [one["format"] for one in exports] == ["table", "activitystreams", "pasted"]
    assert all((demo_folder / one["file"]).is_file() for one in exports)
    assert [one["number"] for one in demo_game["rounds"]] == ROUNDS


def test_every_row_of_the_table_has_its_expectation(
    table_rows: list[dict[str, str]], demo_expected: Json
) -> None:
    told = [(it["id"], it["author"], it["voter"], it["text"]) for it in _comments(demo_expected, 1)]
    assert told == [(it["id"], it["author"], it["author_id"], it["text"]) for it in table_rows]


def test_every_note_of_the_collection_has_its_expectation(
    notes: list[Json], demo_expected: Json
) -> None:
    comments = _comments(demo_expected, 2)
    assert [it["id"] for it in comments] == [note["id"] for note in notes]
    for it, note in zip(comments, notes, strict=True):
        who = note["attributedTo"]
        author, voter = (who, who) if isinstance(who, str) else (who["name"], who["id"])
        assert (it["author"], it["voter"]) == (author, voter)
        words = html.unescape(re.sub(r"<[^>]+>", " ", note["content"]))
        assert _letters(words) == _letters(it["text"])
        assert all(other == note["content"] for other in note.get("contentMap", {}).values())


def test_every_comment_of_the_pasted_page_has_its_expectation(
    page_lines: list[str], demo_expected: Json
) -> None:
    comments = _comments(demo_expected, 3)
    ages = [at for at, line in enumerate(page_lines) if AGE.fullmatch(line)]
    assert len(ages) == len(comments)
    for it, at in zip(comments, ages, strict=True):
        age = it["age"] + (" (edited)" if it["edited"] else "")
        # Author, sometimes the host's mark, age; or author and age on one line.
        heads = (
            [it["author"], age],
            [it["author"], "Host", age],
            [f"{it['author']} · {age}"],
        )
        assert page_lines[it["line"] - 1 : at + 1] in heads
        words = it["text"].split("\n")
        assert page_lines[at + 1 : at + 1 + len(words)] == words
        assert it["voter"] == it["author"].casefold()


@pytest.mark.parametrize("which", ["table", "collection"])
def test_every_answer_answers_a_comment_that_is_there(
    table_rows: list[dict[str, str]], notes: list[Json], which: str
) -> None:
    if which == "table":
        ids = {row["id"] for row in table_rows}
        answered = {row["reply_to"] for row in table_rows} - {""}
    else:
        ids = {note["id"] for note in notes}
        answered = {note["inReplyTo"] for note in notes} - {
            "https://gustray.example/videos/page-forty-one"
        }
    assert answered
    assert answered <= ids


@pytest.mark.parametrize("number", ROUNDS)
def test_a_round_has_35_to_60_comments_each_told_apart(demo_expected: Json, number: int) -> None:
    comments = _comments(demo_expected, number)
    assert 35 <= len(comments) <= 60
    assert [it["place"] for it in comments] == list(range(1, len(comments) + 1))
    ids = [it["id"] for it in comments if it["id"] is not None]
    assert len(ids) == len(set(ids)) == (0 if number == 3 else len(comments))


@pytest.mark.parametrize("number", ROUNDS)
def test_every_reading_is_one_that_the_rules_know(demo_expected: Json, number: int) -> None:
    for it in _comments(demo_expected, number):
        outcome, pages, reason = (it["reading"][key] for key in ("outcome", "pages", "reason"))
        assert outcome in OUTCOMES
        assert outcome != "counts" or len(pages) == 1
        assert outcome != "none" or pages == []
        assert all(1 <= page <= 63 for page in pages)
        assert (reason in REASONS) == (outcome == "none")
        assert it["why"].strip()
        assert it["guess"] in {"right", "look", "wrong", "none"}
        assert it["guess"] == "none" or it["guess_why"].strip()


@pytest.mark.parametrize("number", ROUNDS)
def test_each_ruling_names_its_comment_and_a_reason(
    demo_game: Json, demo_expected: Json, number: int
) -> None:
    comments = _comments(demo_expected, number)
    rules = demo_game["rounds"][number - 1]
    for ruling in rules["rulings"] + rules["guess_rulings"]:
        it = comments[ruling["place"] - 1]
        assert (it["place"], it["id"]) == (ruling["place"], ruling["id"])
        assert ruling["reason"].strip()
    ruled = [ruling["place"] for ruling in rules["rulings"]]
    assert ruled == [it["place"] for it in comments if it["ruled"]]
    # The host rules where a look is needed, and nowhere else.
    told = demo_expected["rounds"][number - 1]
    assert set(told["before_rulings"]["looks"]) - set(ruled) == set(told["after_rulings"]["looks"])
    assert set(ruled) <= set(told["before_rulings"]["looks"])


def test_the_hosts_comments_and_reasons_never_name_the_piece(
    demo_game: Json, demo_expected: Json
) -> None:
    answer = demo_game["game"]["answer"]
    names = " ".join([answer["title"], answer["designer"], *answer["aliases"]]).casefold()
    telling = set(re.findall(r"\w+", names)) - {"the"}
    assert telling == {"accordion", "harbour", "wilmet", "harrask", "squeezebox", "bay"}
    hosts = set(demo_game["game"]["hosts"])
    own = [
        it["text"]
        for number in ROUNDS
        for it in _comments(demo_expected, number)
        if {it["author"], it["voter"]} & hosts
    ]
    assert len(own) == 11
    for rules in demo_game["rounds"]:
        own += [it["reason"] for it in rules["rulings"] + rules["guess_rulings"]]
    for text in own:
        assert not telling & set(re.findall(r"\w+", text.casefold())), text
