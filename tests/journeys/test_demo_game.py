"""The demo's three rounds, played through the API, give what was read and counted by hand."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import pytest
from client import Client, in_process
from score import judge_guess, judge_vote
from verifying.report import check
from verifying.voter import places_of

from demo.play import FOLDER, Clock, Demo, PlayedRound
from service.settings import Settings

Json = dict[str, Any]
EXPECTED: Json = json.loads((FOLDER / "expected.json").read_text(encoding="utf-8"))
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
        pytest.param("module_upgraded_sqlite", id="SQLite"),
        pytest.param("module_upgraded_postgres", id="PostgreSQL", marks=pytest.mark.postgres),
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


def by_hand(comment: Json, number: int) -> Json:
    """What `expected.json`, which knows no keys, says of this comment."""
    same = [it for it in expected(number)["comments"] if who_said(it) == who_said(comment)]
    earliest = comment["written"]["earliest"]
    found = same if len(same) == 1 else [it for it in same if it["written"][0] == earliest]
    assert len(found) == 1, comment
    told: Json = found[0]
    return told


def who_said(comment: Json) -> tuple[str, str]:
    """Author and words; an address of an author may be shown by its last part."""
    return comment["author"].rsplit("/", 1)[-1], "".join(comment["text"].split())


def counted(tally: Json, number: int) -> Json:
    """A count in the terms of `expected.json`."""
    return {
        "ballots": len(tally["ballots"]),
        "tally": tally["tally"],
        "looks": sorted(by_hand(it, number)["place"] for it in tally["looks"]),
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
    found: dict[str, list[str]] = {}
    for it in game.host.get(f"{game.demo.path}/rounds/{number}/comments"):
        if verdict := judge_vote(by_hand(it, number)["reading"], it["reading"]):
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
    comments = game.host.get(f"{game.demo.path}/rounds/{number}/comments")
    found = {by_hand(it, number)["place"]: it["cause"] for it in comments}
    assert found == {it["place"]: it["cause"] for it in expected(number)["comments"]}


@ROUNDS
def test_only_joined_pages_can_be_chosen(game: Game, number: int) -> None:
    votable = game.host.get(f"{game.demo.path}/rounds/{number}/votable")
    assert votable["pages"] == expected(number)["votable"]
    assert votable["frozen"]


def test_the_first_right_guess_is_the_one_by_hand(game: Game) -> None:
    guesses = game.demo.guesses()
    first = EXPECTED["guesses"]["first_right"]
    assert by_hand(guesses["first"], first["round"])["place"] == first["place"]
    assert guesses["tied"] == []


def test_no_guess_was_taken_for_right_or_lost_wrongly(game: Game) -> None:
    verdicts = []
    read = {it["key"]: it for it in game.demo.guesses()["guesses"]}
    for number in (1, 2, 3):
        for it in game.host.get(f"{game.demo.path}/rounds/{number}/comments"):
            said = read[it["key"]]["outcome"] if it["key"] in read else "none"
            fair = by_hand(it, number)["guess"]
            verdicts.append(judge_guess({"outcome": fair}, {"outcome": said}))
    assert "wrong winner" not in verdicts
    assert "lost" not in verdicts
    assert verdicts.count("needless") <= 0.03 * len(verdicts)


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


@ROUNDS
def test_the_record_of_each_round_is_recounted_to_the_same_result(game: Game, number: int) -> None:
    path = f"{game.demo.path}/rounds/{number}"
    record = game.host.get(f"{path}/record")
    announced = game.rounds[number].announced
    assert check(record, announced["digest"]).troubles == ()
    assert record["result"]["winner"] == expected(number)["after_rulings"]["winner"]
    assert record["result"]["comments"] == len(expected(number)["comments"])
    names = {comment["author"] for comment in expected(number)["comments"]}
    assert not [name for name in names if name and f'"{name}"' in json.dumps(record)]


@ROUNDS
def test_every_viewer_finds_their_own_comments_in_the_record(game: Game, number: int) -> None:
    record = game.host.get(f"{game.demo.path}/rounds/{number}/record")
    comments = expected(number)["comments"]
    for author in {comment["author"] for comment in comments if comment["author"]}:
        own = sum(comment["author"] == author for comment in comments)
        assert len(places_of(record, author.upper())) >= own
