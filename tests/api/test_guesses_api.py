"""Guesses over the API: every comment of a game, the first right one, and the host's rulings."""

from __future__ import annotations

from typing import Any

import pytest

from tests.api.asking import (
    PATH,
    ROUND,
    assert_problem,
    csv,
    done,
    everything_kept,
    make_game,
    open_round,
)
from tests.api.conftest import Service

Json = Any
TITLE = "The Tarnished Astrolabe of Skerrymouth"
HEADER = "Id,Name,Time,Edited,Comment\r\n"
EARLY = ("Pia", "2026-03-01T18:30:00Z", "Is it The Herring Wharf at Sundown?")
RIGHT = ("Maren", "2026-03-01T19:00:00Z", f"Is it {TITLE}?")
LATER = ("Tove", "2026-03-01T19:30:00Z", f"My guess: {TITLE}")
OWN = ("Island Guild", "2026-03-01T18:10:00Z", f"It is {TITLE}")
CHAT = ("Odd", "2026-03-01T18:20:00Z", "what lovely thread")


def hand_in(service: Service, *comments: tuple[str, str, str], number: int = 1) -> None:
    done(service.host.hand_in(f"{PATH}/rounds/{number}/batches", csv(*comments)), 201)


def guesses(service: Service) -> Json:
    return done(service.host.get(f"{PATH}/guesses"))


def test_the_first_right_guess_is_found(either_service: Service) -> None:
    service = either_service
    open_round(service)
    hand_in(service, LATER, CHAT, EARLY, RIGHT, OWN)
    told = guesses(service)
    assert told["first"]["author"] == "Maren"
    assert (told["first"]["outcome"], told["first"]["text"]) == ("right", RIGHT[2])
    assert told["tied"] == []
    assert told["why"].endswith(".")
    listed = [(each["author"], each["outcome"], each["is_host"]) for each in told["guesses"]]
    assert listed == [
        ("Island Guild", "right", True),
        ("Pia", "wrong", False),
        ("Maren", "right", False),
        ("Tove", "right", False),
    ]


def test_a_guess_shows_the_words_it_was_read_from(service: Service) -> None:
    open_round(service)
    hand_in(service, RIGHT)
    [guess] = guesses(service)["guesses"]
    assert guess["evidence"]
    for evidence in guess["evidence"]:
        assert RIGHT[2][evidence["start"] : evidence["end"]] == evidence["text"]


def test_the_guesses_of_all_rounds_are_one_list(service: Service) -> None:
    open_round(service)
    hand_in(service, EARLY)
    done(service.host.post(f"{ROUND}/close"))
    done(service.host.post(f"{ROUND}/announce"))
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{PATH}/rounds/2/open"))
    # The export of the second round holds the comments of the first as well.
    hand_in(service, EARLY, RIGHT, number=2)
    told = guesses(service)
    assert [(each["author"], each["round"]) for each in told["guesses"]] == [
        ("Pia", 1),
        ("Maren", 2),
    ]
    assert told["first"]["author"] == "Maren"


def test_nobody_was_right_yet(service: Service) -> None:
    open_round(service)
    hand_in(service, EARLY, CHAT)
    told = guesses(service)
    assert (told["first"], told["tied"]) == (None, [])


def test_a_guess_before_the_window_is_not_the_first(service: Service) -> None:
    make_game(service.host, guesses_open="2026-03-01T19:15:00Z")
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    hand_in(service, RIGHT, LATER)
    told = guesses(service)
    assert told["first"]["author"] == "Tove"
    assert told["opens"] == "2026-03-01T19:15:00Z"


def test_a_name_that_an_edit_brought_in_counts_from_the_edit(service: Service) -> None:
    open_round(service)
    late = "2026-03-01T19:45:00Z"
    export = HEADER + f"a1,Pia,2026-03-01T18:05:00Z,{late},Is it {TITLE}?\r\n"
    done(service.host.hand_in(f"{ROUND}/batches", export), 201)
    [guess] = guesses(service)["guesses"]
    assert guess["written"] == {"earliest": late, "latest": late}


def test_a_name_that_an_edit_took_out_was_still_written(service: Service) -> None:
    open_round(service)
    first = HEADER + f"a1,Pia,2026-03-01T18:05:00Z,,Is it {TITLE}?\r\n"
    edited = HEADER + "a1,Pia,2026-03-01T18:05:00Z,2026-03-01T19:45:00Z,thank you\r\n"
    done(service.host.hand_in(f"{ROUND}/batches", first), 201)
    service.clock.go_on(hours=1)
    done(service.host.hand_in(f"{ROUND}/batches", edited), 201)
    [guess] = guesses(service)["guesses"]
    assert (guess["outcome"], guess["written"]["latest"]) == ("right", "2026-03-01T18:05:00Z")


def rule(service: Service, author: str, outcome: str) -> Json:
    [key] = [each["key"] for each in guesses(service)["guesses"] if each["author"] == author]
    ruling = {"outcome": outcome, "reason": "she asked me in the harbour"}
    return done(service.host.post(f"{PATH}/guesses/{key}/rulings", ruling), 201)


def test_a_ruling_decides_who_was_first(either_service: Service) -> None:
    service = either_service
    open_round(service)
    hand_in(service, EARLY, RIGHT, LATER)
    assert rule(service, "Maren", "wrong")["first"]["author"] == "Tove"
    told = rule(service, "Pia", "right")
    assert told["first"]["author"] == "Pia"
    again = rule(service, "Pia", "wrong")
    assert again["first"]["author"] == "Tove"
    [pia] = [each for each in again["guesses"] if each["author"] == "Pia"]
    assert [each["outcome"] for each in pia["rulings"]] == ["right", "wrong"]
    assert guesses(service) == again


BAD_RULINGS: list[Any] = [
    pytest.param({"outcome": "look", "reason": "so"}, "#/outcome", id="a look"),
    pytest.param({"outcome": "right"}, "#/reason", id="no reason"),
    pytest.param({"outcome": "right", "reason": " "}, "#/reason", id="a blank reason"),
]


@pytest.mark.parametrize(("ruling", "says"), BAD_RULINGS)
def test_a_ruling_that_cannot_be_is_refused(service: Service, ruling: Json, says: str) -> None:
    open_round(service)
    hand_in(service, RIGHT)
    key = guesses(service)["guesses"][0]["key"]
    before = everything_kept(service)
    assert_problem(service.host.post(f"{PATH}/guesses/{key}/rulings", ruling), 422, says)
    assert everything_kept(service) == before


@pytest.mark.parametrize("key", ["c0", "%00", "%2e%2e"])
def test_a_ruling_on_no_comment_is_refused(either_service: Service, key: str) -> None:
    open_round(either_service)
    hand_in(either_service, RIGHT)
    before = everything_kept(either_service)
    ruling = {"outcome": "right", "reason": "so"}
    answer = either_service.host.post(f"{PATH}/guesses/{key}/rulings", ruling)
    assert_problem(answer, 404)
    after = everything_kept(either_service)
    assert after == before


def test_a_game_without_an_answer_has_no_guesses(service: Service) -> None:
    make_game(service.host, answer=None)
    assert_problem(service.host.get(f"{PATH}/guesses"), 409, "without a sealed answer")
