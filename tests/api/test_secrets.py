"""What must not be told: voters' names and words to viewers, the answer to anybody."""

from __future__ import annotations

import logging
from typing import Any

import pytest

from tests.api.asking import (
    GAME,
    PATH,
    ROUND,
    assert_problem,
    csv,
    done,
    everything_kept,
    make_game,
    open_round,
)
from tests.api.conftest import Caller, Service

Json = Any
#: Rare words, so that finding one anywhere is no chance.
VOTERS = ("Quillon Brask", "Sunniva Tveit", "quisling@hall.example")
WORDS = ("because of the blue gannets", "whichever, says my grandmother")
SECRET = ("skerrymouth", "astrolabe", "quarmby", "pilot's farewell")
EXPORT = csv(
    (VOTERS[0], "2026-03-01T19:00:00Z", f"13 {WORDS[0]}"),
    (VOTERS[1], "2026-03-01T19:01:00Z", f"12 or 40 {WORDS[1]}"),
    (VOTERS[2], "2026-03-01T19:02:00Z", "Is it The Tarnished Astrolabe of Skerrymouth?"),
    (VOTERS[0], "2026-03-01T19:03:00Z", "Is it The Abandoned Shipyard at Sundown?"),
)


@pytest.fixture
def played(service: Service) -> Service:
    """A game whose first round is announced, after guesses, a ruling and several refusals."""
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", EXPORT), 201)
    done(service.host.post(f"{ROUND}/close"))
    for look in done(service.host.get(f"{ROUND}/comments", filter="look")):
        ruling = {"pages": [], "reason": f"{VOTERS[1]} told me so"}
        done(service.host.post(f"{ROUND}/comments/{look['key']}/rulings", ruling), 201)
    done(service.host.post(f"{ROUND}/announce"))
    return service


def public_texts(caller: Caller) -> dict[str, str]:
    addresses = [
        "/openapi.json",
        *("/api" + path for path in ("/health", "/problems", PATH, ROUND)),
        *(f"/api{ROUND}/{what}" for what in ("votable", "result", "tally", "comments")),
        *(f"/api{PATH}/{what}" for what in ("guesses", "answer", "rounds")),
        f"/api{PATH}?answer=1",
        "/api/games",
        "/api/tokens",
    ]
    answers = {address: caller.ask("GET", address) for address in addresses}
    return {
        address: f"{answer.headers} {answer.text}".lower() for address, answer in answers.items()
    }


@pytest.mark.parametrize("who", ["viewer", "collector"])
def test_no_voter_is_named_and_no_comment_is_quoted(played: Service, who: str) -> None:
    caller = played.viewer if who == "viewer" else played.collector()
    for address, told in public_texts(caller).items():
        for secret in (*VOTERS, *WORDS):
            assert secret.lower() not in told, address


@pytest.mark.parametrize("who", ["viewer", "collector"])
def test_the_answer_is_told_to_nobody(played: Service, who: str) -> None:
    caller = played.viewer if who == "viewer" else played.collector()
    for address, told in public_texts(caller).items():
        for secret in SECRET:
            assert secret not in told, address


def test_the_host_is_told_the_seal_and_not_the_answer(service: Service) -> None:
    made = service.host.post("/games", GAME)
    listed = service.host.get("/games")
    for answer in (made, listed):
        assert "seal" in answer.text
        assert not [secret for secret in SECRET if secret in answer.text.lower()]


def test_a_right_and_a_wrong_guess_are_answered_alike(service: Service) -> None:
    """The same report, byte for byte, but for what the collector sent itself."""
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    collector = service.collector()
    reports = []
    for number, name in enumerate(
        ("The Tarnished Astrolabe of Skerrymouth", "The Abandoned Shipyard at Sundown")
    ):
        export = csv((f"viewer {number}", "2026-03-01T19:00:00Z", f"Is it {name}?"))
        answer = collector.hand_in(f"{ROUND}/batches", export)
        reports.append((answer.status_code, done(answer, 201) | {"batch": 0}, len(answer.content)))
    assert reports[0] == reports[1]


def test_no_log_line_tells_the_answer(
    service: Service, caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Also not where keeping it fails: the database's own message would quote it."""
    caplog.set_level(logging.DEBUG)
    make_game(service.host)
    done(service.host.get(f"{PATH}/guesses"))
    monkeypatch.setattr("service.store.answers.seal_of", lambda *_: object())
    answer = service.host.post("/games", GAME | {"slug": "another"})
    assert answer.status_code == 500
    told = (caplog.text + answer.text).lower()
    assert not [secret for secret in SECRET if secret in told]


def test_a_failing_statement_does_not_quote_its_values(service: Service) -> None:
    engine = service.app.state.wiring.database.engine
    assert engine.hide_parameters


LEAKS: list[Any] = [
    pytest.param({"name": "The Tarnished Astrolabe"}, "game's name gives", id="most of the title"),
    pytest.param({"name": "A piece by Quarmby"}, "game's name gives", id="the designer"),
    pytest.param({"slug": "pilots-farewell"}, "game's short name gives", id="an alias"),
]


@pytest.mark.parametrize(("other", "says"), LEAKS)
def test_a_game_named_after_its_answer_is_refused(service: Service, other: Json, says: str) -> None:
    before = everything_kept(service)
    problem = assert_problem(service.host.post("/games", GAME | other), 422, says)
    assert not [secret for secret in SECRET if secret in str(problem).lower()]
    assert everything_kept(service) == before


def test_a_game_is_not_named_after_its_answer_later(service: Service) -> None:
    make_game(service.host)
    before = everything_kept(service)
    answer = service.host.patch(PATH, {"name": "Skerrymouth by night"})
    assert_problem(answer, 422, "name gives the sealed answer or a part of it away")
    assert everything_kept(service) == before
