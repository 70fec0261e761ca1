"""The demo's three rounds, played through the API, give what was read and counted by hand."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import pytest
from client import Client, in_process
from score import judge_vote

from demo.play import FOLDER, Clock, Demo, PlayedRound
from service.settings import Settings

Json = dict[str, Any]
EXPECTED: Json = json.loads((FOLDER / "expected.json").read_text(encoding="utf-8"))
#: Whether other words name another piece or none decides nothing.
MATTERS = {"right", "look"}
ROUNDS = pytest.mark.parametrize("number", [1, 2, 3])


@dataclass(frozen=True)
class Game:
    """The demo game after its three rounds, with all that was answered on the way."""

    host: Client
    demo: Demo
    rounds: dict[int, PlayedRound]
    made: Json


@pytest.fixture(
    scope="module",
    params=[
        pytest.param("journey_sqlite", id="SQLite"),
        pytest.param("journey_postgres", id="PostgreSQL", marks=pytest.mark.postgres),
    ],
)
def game(request: pytest.FixtureRequest) -> Iterator[Game]:
    settings: Settings = request.getfixturevalue(request.param)
    clock = Clock()
    with in_process(settings, clock) as host:
        demo = Demo(host, clock)
        made = demo.make_game()
        yield Game(host, demo, {number: demo.play_round(number) for number in (1, 2, 3)}, made)


def expected(number: int) -> Json:
    told: Json = EXPECTED["rounds"][number - 1]
    assert told["number"] == number
    return told


def which(author: str, text: str, written: Any) -> tuple[str, str, str]:
    """What tells a comment apart here and there: `expected.json` knows no keys."""
    earliest = written["earliest"] if isinstance(written, dict) else written[0]
    return author, "".join(text.split()), earliest.replace("+00:00", "Z")


def places(number: int) -> dict[tuple[str, str, str], int]:
    return {
        which(it["author"], it["text"], it["written"]): it["place"]
        for it in expected(number)["comments"]
    }


def counted(tally: Json, number: int) -> Json:
    """A count in the terms of `expected.json`."""
    known = places(number)
    return {
        "ballots": len(tally["ballots"]),
        "tally": tally["tally"],
        "looks": sorted(
            known[which(it["author"], it["text"], it["written"])] for it in tally["looks"]
        ),
        "steps": [(step["rule"], step["tied"], step["kept"]) for step in tally["steps"]],
        "winner": tally["winner"],
        "looks_can_change": tally["can_change"],
    }


def told(count: Json, fallback: Json) -> Json:
    """The hand count in the same terms; what was not worked out by hand is taken as it is."""
    steps = [(step["rule"], step["tied"], step["kept"]) for step in count["steps"]]
    unknown = {"looks_can_change": fallback["looks_can_change"]}
    return unknown | count | {"steps": steps}


@ROUNDS
def test_the_export_comes_in_whole(game: Game, number: int) -> None:
    batch = game.rounds[number].batch
    assert batch["new"] == len(expected(number)["comments"])
    assert batch["format"] == game.demo.plan["rounds"][number - 1]["export"]["format"]


@ROUNDS
def test_the_count_before_the_rulings_is_the_one_by_hand(game: Game, number: int) -> None:
    found = counted(game.rounds[number].before, number)
    assert found == told(expected(number)["before_rulings"], found)


@ROUNDS
def test_the_count_after_the_rulings_is_the_one_by_hand(game: Game, number: int) -> None:
    found = counted(game.rounds[number].after, number)
    assert found == told(expected(number)["after_rulings"], found)
    assert game.rounds[number].announced["winner"] == found["winner"]


def read_differently(game: Game, number: int) -> dict[str, list[str]]:
    """The comments that were read otherwise than by hand, by what the difference is called."""
    by_hand = {
        which(it["author"], it["text"], it["written"]): it["reading"]
        for it in expected(number)["comments"]
    }
    found: dict[str, list[str]] = {}
    for it in game.host.get(f"{game.demo.path}/rounds/{number}/comments"):
        fair = by_hand[which(it["author"], it["text"], it["written"])]
        if verdict := judge_vote(fair, it["reading"]):
            found.setdefault(verdict, []).append(it["text"])
    return found


@ROUNDS
def test_no_comment_was_counted_wrongly_or_lost(game: Game, number: int) -> None:
    found = read_differently(game, number)
    assert found.get("wrong", []) == []
    assert found.get("lost", []) == []


def test_few_comments_need_a_look_needlessly(game: Game) -> None:
    needless = [
        text for number in (1, 2, 3) for text in read_differently(game, number).get("needless", [])
    ]
    assert len(needless) <= 0.03 * sum(len(told["comments"]) for told in EXPECTED["rounds"])


@ROUNDS
def test_every_comment_that_does_not_count_says_the_cause_found_by_hand(
    game: Game, number: int
) -> None:
    known = places(number)
    comments = game.host.get(f"{game.demo.path}/rounds/{number}/comments")
    found = {known[which(it["author"], it["text"], it["written"])]: it["cause"] for it in comments}
    assert found == {it["place"]: it["cause"] for it in expected(number)["comments"]}


@ROUNDS
def test_only_joined_pages_can_be_chosen(game: Game, number: int) -> None:
    votable = game.host.get(f"{game.demo.path}/rounds/{number}/votable")
    assert votable["pages"] == expected(number)["votable"]
    assert votable["frozen"]


def test_the_guesses_are_judged_as_by_hand(game: Game) -> None:
    guesses = game.demo.guesses()
    by_hand = EXPECTED["guesses"]
    [first] = [
        it
        for it in expected(by_hand["first_right"]["round"])["comments"]
        if it["place"] == by_hand["first_right"]["place"]
    ]
    assert which(**pick(guesses["first"])) == which(
        first["author"], first["text"], first["written"]
    )
    assert guesses["tied"] == []
    assert {who: said for who, said in read_guesses(guesses).items() if said in MATTERS} == {
        (it["author"], it["written"][0]): it["outcome"]
        for it in by_hand["in_order"]
        if it["outcome"] in MATTERS
    }


def read_guesses(guesses: Json) -> dict[tuple[str, str], str]:
    return {(it["author"], it["written"]["earliest"]): it["outcome"] for it in guesses["guesses"]}


def pick(guess: Json) -> Json:
    return {name: guess[name] for name in ("author", "text", "written")}


def test_nothing_that_everybody_may_read_tells_the_answer_or_a_voter(game: Game) -> None:
    path = game.demo.path
    public = [game.host.get(path)]
    for number in (1, 2, 3):
        public += [
            game.host.get(f"{path}/rounds/{number}{more}") for more in ("", "/votable", "/result")
        ]
    public += [played.batch for played in game.rounds.values()]
    public += [played.after["announcement"] for played in game.rounds.values()]
    said = json.dumps(public, ensure_ascii=False).casefold()
    assert "accordion" not in said
    assert "squeezebox" not in said
    assert "harrask" not in said
    assert "thimble in chief" not in said
    assert game.made["seal"] in said
