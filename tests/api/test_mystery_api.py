"""The seal, noted aliases, the window of guesses and the reveal over the API."""

from __future__ import annotations

import hashlib
import json
from typing import Any

import pytest
from sqlalchemy import text

from tests.api.asking import GAME, PATH, assert_problem, done, everything_kept, make_game
from tests.api.conftest import Service
from tests.api.guessing import (
    ALIAS,
    MAREN,
    TITLE,
    WRONG,
    announcements,
    guess_of,
    guesses,
    hand_in,
    mystery,
    play,
    rule,
)

Json = Any


def test_everybody_sees_the_seal_and_the_rules_of_guessing(service: Service) -> None:
    made = make_game(service.host, guesses_per_voter=3, names_per_comment=2)
    told = mystery(service)
    assert told["seal"] == made["seal"]
    assert told["sealed"] == "2026-03-01T18:00:00Z"
    assert (told["guesses_per_voter"], told["names_per_comment"]) == (3, 2)
    assert (told["guessing"], told["opens"]) == ("open", "2026-03-01T18:00:00Z")
    assert (told["prize"], told["winner_announced"], told["revealed"]) == (None, None, None)


def test_a_sealed_answer_is_not_changed(either_service: Service) -> None:
    service = either_service
    make_game(service.host)
    before = everything_kept(service)
    answer = service.host.put(f"{PATH}/answer", {"title": "Another Piece"})
    problem = assert_problem(answer, 409, "is sealed and cannot be changed: what is sealed stays")
    assert TITLE not in str(problem)
    assert everything_kept(service) == before


def test_the_reveal_opens_the_published_seal(either_service: Service) -> None:
    """The seal is made again here from the reveal alone, by other tools than the service's."""
    service = either_service
    play(service, MAREN)
    seal = mystery(service)["seal"]
    done(service.host.post(f"{PATH}/mystery/aliases", {"alias": ALIAS}), 201)
    [note] = mystery(service)["alias_notes"]
    done(service.host.post(f"{PATH}/guesses/end"))
    told = done(service.host.post(f"{PATH}/mystery/reveal"))
    assert done(service.viewer.get(f"{PATH}/mystery/reveal")) == told
    assert done(service.host.post(f"{PATH}/mystery/reveal")) == told
    assert told["answer"] == GAME["answer"]
    sealed = canonical({"answer": told["answer"], "salt": told["salt"]})
    assert hashlib.sha256(sealed).hexdigest() == told["seal"] == seal
    [opened] = told["alias_notes"]
    assert {name: opened[name] for name in note} == note
    assert opened["alias"] == ALIAS
    said = {name: opened[name] for name in ("alias", "at", "number", "salt")} | {"seal": seal}
    assert hashlib.sha256(canonical(said)).hexdigest() == note["seal"]


def canonical(told: Json) -> bytes:
    """Canonical JSON (RFC 8785) of plain texts and names, which Python's own writer gives too."""
    said = json.dumps(told, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return said.encode()


def test_the_reveal_is_shown_to_nobody_before(service: Service) -> None:
    make_game(service.host)
    without = make_game(service.host, slug="no-answer", answer=None)
    assert without["seal"] is None
    for game in (PATH, "/games/no-answer"):
        for caller in (service.viewer, service.host, service.collector(f"for {game[-6:]}")):
            answer = caller.get(f"{game}/mystery/reveal")
            assert_problem(answer, 409, "is not revealed and cannot be shown")


def test_there_is_no_reveal_while_guessing_is_open(service: Service) -> None:
    play(service)
    assert_problem(service.host.post(f"{PATH}/mystery/reveal"), 409, "end it first")
    assert mystery(service)["revealed"] is None


CHANGED: list[Any] = [
    pytest.param("UPDATE answers SET title = 'Another'", id="title"),
    pytest.param("UPDATE answers SET designer = 'Another'", id="designer"),
    pytest.param("UPDATE answers SET aliases = '[]'", id="alias"),
    pytest.param("UPDATE alias_notes SET alias = 'Another'", id="noted alias"),
    pytest.param("UPDATE alias_notes SET at = '2026-02-01 10:00:00'", id="time of a note"),
]


@pytest.mark.parametrize("change", CHANGED)
def test_an_answer_changed_in_the_database_is_not_revealed(service: Service, change: str) -> None:
    play(service)
    done(service.host.post(f"{PATH}/mystery/aliases", {"alias": ALIAS}), 201)
    done(service.host.post(f"{PATH}/guesses/end"))
    with service.app.state.wiring.database.engine.begin() as connection:
        connection.execute(text(change))
    answer = service.host.post(f"{PATH}/mystery/reveal")
    assert_problem(answer, 409, "no longer makes its published seal")
    assert mystery(service)["revealed"] is None


def test_an_alias_counts_from_its_note_on(service: Service) -> None:
    early = ("Pia", "2026-03-01T19:00:00Z", f"Is it {ALIAS}?")
    late = ("Odd", "2026-03-01T20:30:00Z", f"Is it {ALIAS}?")
    play(service, early)
    assert guess_of(service, "Pia")["outcome"] == "wrong"
    done(service.host.post(f"{PATH}/mystery/aliases", {"alias": ALIAS}), 201)
    service.clock.go_on(hours=1)
    hand_in(service, early, late)
    assert guess_of(service, "Odd")["outcome"] == "right"
    assert guess_of(service, "Pia")["outcome"] == "look"
    told = guesses(service)
    assert told["first"]["author"] == "Odd"
    assert [one["author"] for one in told["looks_before"]] == ["Pia"]
    assert "noted only later" in told["looks_before"][0]["why"]


ALIASES: list[Any] = [
    pytest.param("the tarnished ASTROLABE of Skerrymouth", 409, "one that counts", id="the title"),
    pytest.param("Pilot's Farewell!", 409, "one that counts", id="an alias"),
    pytest.param("windy island", 422, "game's name gives", id="the game's name"),
    pytest.param("Guild Thread Skein", 422, "the prize offers gives", id="the prize"),
    pytest.param("12", 422, "a page's number", id="a page"),
    pytest.param("?!", 422, "no letter and no digit", id="no name"),
]


@pytest.mark.parametrize(("alias", "status", "says"), ALIASES)
def test_an_alias_that_cannot_be_noted_is_refused(
    service: Service, alias: str, status: int, says: str
) -> None:
    make_game(service.host)
    done(service.host.put(f"{PATH}/prize", {"offer": "a guild thread skein"}))
    before = everything_kept(service)
    answer = service.host.post(f"{PATH}/mystery/aliases", {"alias": alias})
    assert_problem(answer, status, says)
    assert everything_kept(service) == before


def test_no_alias_is_added_once_a_winner_is_announced_or_the_answer_revealed(
    service: Service,
) -> None:
    play(service, MAREN)
    done(service.host.post(f"{PATH}/guesses/winner"), 201)
    said = {"alias": ALIAS}
    assert_problem(service.host.post(f"{PATH}/mystery/aliases", said), 409, "is won")
    done(service.host.post(f"{PATH}/mystery/reveal"))
    assert_problem(service.host.post(f"{PATH}/mystery/aliases", said), 409, "is revealed")


def test_guessing_opens_when_the_host_says(either_service: Service) -> None:
    service = either_service
    play(service, WRONG, MAREN, guesses_open=None)
    assert mystery(service)["guessing"] == "not open"
    assert guess_of(service, "Maren")["cause"] == "before guessing opened"
    told = done(service.host.post(f"{PATH}/guesses/open", {"at": "2026-03-01T18:20"}))
    assert (told["guessing"], told["opens"]) == ("open", "2026-03-01T18:20:00Z")
    assert guess_of(service, "Pia")["cause"] == "before guessing opened"
    assert guesses(service)["first"]["author"] == "Maren"


def test_guessing_is_opened_once_and_ended_once(service: Service) -> None:
    play(service, guesses_open=None)
    end, start = f"{PATH}/guesses/end", f"{PATH}/guesses/open"
    assert_problem(service.host.post(end), 409, "is not open and cannot be ended")
    done(service.host.post(start))
    assert_problem(service.host.post(start), 409, "is open and cannot be opened")
    service.clock.go_on(hours=1)
    assert done(service.host.post(end))["guessing"] == "ended"
    assert_problem(service.host.post(end), 409, "is ended and cannot be ended")
    assert_problem(service.host.post(start), 409, "is ended and cannot be opened")


TIMES: list[Any] = [
    pytest.param("open", None, "2026-03-01T20:30", "opening of guessing is still", id="opens late"),
    pytest.param(
        "end", "2026-03-01T18:00", "2026-03-01T20:30", "end of guessing is", id="ends late"
    ),
    pytest.param("end", "2026-03-01T18:00", "2026-03-01T17:00", "not after", id="ends early"),
]


@pytest.mark.parametrize(("what", "opens", "at", "says"), TIMES)
def test_guessing_is_not_opened_or_ended_at_a_time_that_cannot_be(
    service: Service, what: str, opens: str | None, at: str, says: str
) -> None:
    play(service, guesses_open=opens)
    before = everything_kept(service)
    assert_problem(service.host.post(f"{PATH}/guesses/{what}", {"at": at}), 422, says)
    assert everything_kept(service) == before


def test_guessing_needs_a_sealed_answer(service: Service) -> None:
    make_game(service.host, answer=None, guesses_open=None)
    answer = service.host.post(f"{PATH}/guesses/open")
    assert_problem(answer, 409, "without a sealed answer")


def test_what_has_been_of_the_window_stays(service: Service) -> None:
    play(service)
    change = {"guesses_open": "2026-03-01T17:00"}
    assert_problem(service.host.patch(PATH, change), 409, "opened at another time")
    assert done(service.host.patch(PATH, {"guesses_close": "2026-03-09T18:00"}))["guesses_close"]
    done(service.host.patch(PATH, {"guesses_open": "2026-03-01T18:00", "guesses_close": None}))
    done(service.host.post(f"{PATH}/guesses/end"))
    for close in (None, "2026-03-09T18:00"):
        answer = service.host.patch(PATH, {"guesses_close": close})
        assert_problem(answer, 409, "ended anew")


def test_guesses_after_the_end_are_set_aside(service: Service) -> None:
    play(service, MAREN)
    done(service.host.post(f"{PATH}/guesses/end", {"at": "2026-03-01T18:15"}))
    assert guess_of(service, "Maren")["cause"] == "after guessing ended"
    assert guesses(service)["first"] is None
    rule(service, "Maren", in_time=True)
    assert guesses(service)["first"]["author"] == "Maren"


def test_a_voters_guesses_beyond_the_number_are_set_aside(service: Service) -> None:
    tries = [("Maren", f"2026-03-01T18:0{n}:00Z", f"Is it Dune {n}?") for n in range(1, 3)]
    play(service, *tries, MAREN, guesses_per_voter=2)
    of_maren = {one["text"]: one["cause"] for one in guesses(service)["guesses"]}
    assert of_maren == {
        "Is it Dune 1?": None,
        "Is it Dune 2?": None,
        MAREN[2]: "beyond the voter's guesses",
    }
    assert guesses(service)["first"] is None


def test_words_that_were_edited_into_the_window_count_from_the_edit(service: Service) -> None:
    """What was written before the opening does not count; writing it again in time does."""
    header = "Id,Name,Time,Edited,Comment\r\n"
    first = header + f"a1,Pia,2026-03-01T17:05:00Z,,Is it {TITLE}?\r\n"
    edited = header + f"a1,Pia,2026-03-01T17:05:00Z,2026-03-01T19:45:00Z,It is {TITLE}\r\n"
    play(service)
    for export in (first, edited):
        done(service.host.hand_in(f"{PATH}/rounds/1/batches", export), 201)
        service.clock.go_on(hours=1)
    told = guess_of(service, "Pia")
    assert (told["written"]["latest"], told["cause"]) == ("2026-03-01T19:45:00Z", None)


def test_the_opening_of_guessing_says_all_the_rules(service: Service) -> None:
    make_game(service.host, guesses_per_voter=2, names_per_comment=3)
    told = announcements(service)
    assert list(told) == ["opening of guessing"]
    words = told["opening of guessing"]
    assert "Your first 2 guesses count, and of each comment the first 3 names." in words
    assert "Sunday 1 March 2026 at 18:00 Faroe time" in words
    assert mystery(service)["seal"] in words


def test_the_reveal_is_announced_with_its_seal(service: Service) -> None:
    play(service)
    done(service.host.post(f"{PATH}/guesses/end"))
    assert "guessing has ended" in announcements(service)["end of guessing"]
    told = done(service.host.post(f"{PATH}/mystery/reveal"))
    words = announcements(service)["reveal"]
    assert f"the piece is {TITLE} by Wenna Quarmby." in words
    assert "Pilot's Farewell" in words
    assert told["seal"] in words
    assert told["salt"] in words
    assert done(service.host.patch(PATH, {"name": f"{TITLE}, stitched"}))["name"].endswith("hed")
