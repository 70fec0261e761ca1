"""The winner and the prize over the API: announced, claimed, sent, passed on."""

from __future__ import annotations

from typing import Any

import pytest

from tests.api.asking import PATH, assert_problem, done, everything_kept, make_game
from tests.api.conftest import Service
from tests.api.guessing import (
    MAREN,
    ODD,
    PRIZE,
    TITLE,
    TOVE,
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
WINNER = f"{PATH}/guesses/winner"


def play_for_prize(service: Service, *comments: tuple[str, str, str], **game: Json) -> None:
    """As `play`, with a prize; the winner is not announced yet."""
    play(service, *comments, **game)
    done(service.host.put(f"{PATH}/prize", PRIZE))


def prize(service: Service) -> Json:
    return done(service.host.get(f"{PATH}/prize"))


def claim(service: Service, number: int = 1) -> Json:
    return prize(service)["winners"][number - 1]["claim"]


def test_setting_a_prize_up_shows_the_caution(service: Service) -> None:
    make_game(service.host)
    told = done(service.host.put(f"{PATH}/prize", PRIZE))["prize"]
    assert {name: told[name] for name in PRIZE} == PRIZE
    for words in ("country to country", "platforms", "no legal advice"):
        assert words in told["caution"]
    document = done(service.viewer.ask("GET", "/openapi.json"))
    shown = document["paths"]["/api/games/{game}/prize"]["put"]["description"]
    assert "no legal advice" in shown
    assert mystery(service)["prize"] == told


def test_the_first_right_guesser_is_announced(either_service: Service) -> None:
    service = either_service
    play_for_prize(service, WRONG, TOVE, MAREN)
    told = done(service.host.post(WINNER), 201)
    assert (told["author"], told["cause"], told["number"]) == ("Maren", "first", 1)
    assert told["claim"]["claim_by"] == "2026-03-15T20:00:00Z"
    assert told["claim"]["state"] == "to be claimed"
    words = told["announcement"]
    assert "Maren was the first to name it, on Sunday 1 March 2026 at 18:30" in words
    assert "Please claim it before Sunday 15 March 2026 at 20:00" in words
    assert TITLE not in words
    seen = mystery(service)
    assert (seen["guessing"], seen["ends"]) == ("ended", "2026-03-01T20:00:00Z")
    assert seen["winner_announced"] == "2026-03-01T20:00:00Z"
    assert announcements(service)["winner"] == words


def test_guesses_after_the_announcement_are_set_aside(service: Service) -> None:
    play_for_prize(service, MAREN)
    done(service.host.post(WINNER), 201)
    service.clock.go_on(hours=1)
    hand_in(service, ("Odd", "2026-03-01T20:30:00Z", f"{TITLE}!"))
    assert guess_of(service, "Odd")["cause"] == "after guessing ended"


UNDECIDED: list[Any] = [
    pytest.param([WRONG], "no guess is right so far", id="nobody was right"),
    pytest.param(
        [MAREN, ("Tove", MAREN[1], f"{TITLE}!")], "in the same second", id="the same second"
    ),
    pytest.param(
        [("Odd", "2026-03-01T18:05:00Z", "Astrolabe of Skerrymouth"), MAREN],
        "rule on the comments that need a look first",
        id="a look before it",
    ),
]


@pytest.mark.parametrize(("comments", "says"), UNDECIDED)
def test_no_winner_is_announced_while_it_cannot_be_told(
    service: Service, comments: Json, says: str
) -> None:
    play_for_prize(service, *comments)
    before = everything_kept(service)
    assert_problem(service.host.post(WINNER), 409, says)
    assert everything_kept(service) == before


def test_the_host_rules_who_was_first(service: Service) -> None:
    play_for_prize(service, MAREN, ("Tove", MAREN[1], f"{TITLE}!"), ODD)
    said = {"reason": "hers stood above when I looked"}
    odd = {"key": guess_of(service, "Odd")["key"]}
    refused = service.host.post(f"{PATH}/guesses/first", odd | said)
    assert_problem(refused, 422, "none of the right guesses that cannot be told apart")
    tove = {"key": guess_of(service, "Tove")["key"]}
    told = done(service.host.post(f"{PATH}/guesses/first", tove | said), 201)
    assert told["first"]["author"] == "Tove"
    announced = done(service.host.post(WINNER), 201)
    assert announced["author"] == "Tove"
    assert "cannot be told apart" in announced["announcement"]
    assert "My reason: hers stood above when I looked." in announced["announcement"]
    nobody = service.host.post(f"{PATH}/guesses/first", {"key": "c0"} | said)
    assert_problem(nobody, 404)


def test_a_ruling_on_the_first_does_not_tell_the_answer(service: Service) -> None:
    play_for_prize(service, MAREN, ("Tove", MAREN[1], f"{TITLE}!"))
    said = {"key": guess_of(service, "Tove")["key"], "reason": f"she wrote {TITLE} in full"}
    done(service.host.post(f"{PATH}/guesses/first", said), 201)
    assert_problem(service.host.post(WINNER), 422, "the reason of the ruling")
    assert prize(service)["winners"] == []


def test_a_winner_is_announced_once(service: Service) -> None:
    play_for_prize(service, MAREN, TOVE)
    done(service.host.post(WINNER), 201)
    assert_problem(service.host.post(WINNER), 409, "an announced winner stays")


def test_an_earlier_guess_that_came_late_puts_the_winner_right_with_a_reason(
    service: Service,
) -> None:
    play_for_prize(service, TOVE)
    done(service.host.post(WINNER), 201)
    hand_in(service, MAREN)
    assert guesses(service)["first"]["author"] == "Maren"
    assert_problem(service.host.post(WINNER), 409, "without a reason")
    told = done(service.host.post(WINNER, {"reason": "a second export came"}), 201)
    assert (told["author"], told["cause"], told["number"]) == ("Maren", "put right", 2)
    assert "This corrects an earlier announcement: a second export came." in told["announcement"]
    assert [one["author"] for one in prize(service)["winners"]] == ["Tove", "Maren"]


def test_a_prize_is_claimed_and_sent(either_service: Service) -> None:
    service = either_service
    play_for_prize(service, MAREN)
    done(service.host.post(WINNER), 201)
    service.clock.go_on(days=2)
    assert "Maren, you named the piece" in announcements(service)["claim reminder"]
    assert_problem(service.host.post(f"{PATH}/prize/sent"), 409, "say first what the winner asked")
    asked = {"asked_for": "the sea green one"}
    done(service.host.post(f"{PATH}/prize/asked-for", asked))
    assert claim(service)["state"] == "asked for"
    told = announcements(service)
    assert "claim reminder" not in told
    assert "Maren has chosen" in told["prize asked for"]
    assert "sea green" not in str(told)
    service.clock.go_on(days=1)
    done(service.host.post(f"{PATH}/prize/sent"))
    kept = claim(service)
    assert (kept["state"], kept["sent_at"]) == ("sent", "2026-03-04T20:00:00Z")
    assert "Wednesday 4 March 2026" in announcements(service)["prize sent"]
    assert_problem(service.host.post(f"{PATH}/prize/asked-for", asked), 409, "is sent")
    assert_problem(service.host.post(f"{PATH}/prize/pass-on"), 409, "is sent")


def test_an_unclaimed_prize_goes_to_the_next_right_guesser(either_service: Service) -> None:
    service = either_service
    again = ("Maren", "2026-03-01T18:40:00Z", f"{TITLE}, surely")
    play_for_prize(service, MAREN, again, TOVE, ODD)
    done(service.host.post(WINNER), 201)
    assert_problem(service.host.post(f"{PATH}/prize/pass-on"), 409, "may claim it until")
    service.clock.go_on(days=14)
    late = {"asked_for": "the sea green one"}
    assert_problem(service.host.post(f"{PATH}/prize/asked-for", late), 409, "could be claimed")
    told = done(service.host.post(f"{PATH}/prize/pass-on"), 201)
    assert [one["author"] for one in told["winners"]] == ["Maren", "Tove"]
    assert [one["claim"]["state"] for one in told["winners"]] == ["passed on", "to be claimed"]
    words = announcements(service)["prize passed on"]
    assert words == told["winners"][1]["announcement"]
    assert "goes to the next right guesser: Tove." in words
    assert "Maren" not in words
    service.clock.go_on(days=14)
    done(service.host.post(f"{PATH}/prize/pass-on"), 201)
    service.clock.go_on(days=14)
    refused = service.host.post(f"{PATH}/prize/pass-on")
    assert_problem(refused, 409, "no guess is right so far")


def test_a_declined_prize_goes_on_at_once(service: Service) -> None:
    play_for_prize(service, MAREN, TOVE)
    done(service.host.post(WINNER), 201)
    done(service.host.post(f"{PATH}/prize/pass-on", {"declined": "she has enough thread"}), 201)
    assert "enough thread" not in str(announcements(service))
    assert prize(service)["winners"][1]["author"] == "Tove"


def test_a_claim_that_came_in_time_may_be_kept_later(service: Service) -> None:
    play_for_prize(service, MAREN)
    done(service.host.post(WINNER), 201)
    service.clock.go_on(days=20)
    asked = {"asked_for": "the sea green one", "at": "2026-03-10T09:00"}
    done(service.host.post(f"{PATH}/prize/asked-for", asked))
    before = {"asked_for": "another", "at": "2026-02-10T09:00"}
    answer = service.host.post(f"{PATH}/prize/asked-for", before)
    assert_problem(answer, 422, "before the winner was announced")
    sent = service.host.post(f"{PATH}/prize/sent", {"at": "2026-03-09T09:00"})
    assert_problem(sent, 422, "before it was asked for")


def test_the_prize_stays_once_guessing_has_opened(service: Service) -> None:
    make_game(service.host, guesses_open=None)
    done(service.host.put(f"{PATH}/prize", PRIZE))
    done(service.host.put(f"{PATH}/prize", PRIZE | {"offer": "two skeins"}))
    done(service.host.post(f"{PATH}/guesses/open"))
    assert (
        "The prize for the first right guess: two skeins."
        in (announcements(service)["opening of guessing"])
    )
    assert_problem(service.host.put(f"{PATH}/prize", PRIZE), 409, "is promised")


def test_a_game_without_a_prize_has_nothing_to_claim(service: Service) -> None:
    play(service, MAREN)
    told = done(service.host.post(WINNER), 201)
    assert told["claim"] is None
    assert "prize" not in told["announcement"]
    for what, body in (("asked-for", {"asked_for": "x"}), ("sent", None), ("pass-on", None)):
        answer = service.host.post(f"{PATH}/prize/{what}", body)
        assert_problem(answer, 409, "without a prize that was won")
    assert_problem(service.host.put(f"{PATH}/prize", PRIZE), 409, "before anybody wins it")


LEAKS: list[Any] = [
    pytest.param({"offer": "the astrolabe chart itself"}, "what the prize offers", id="offer"),
    pytest.param({"choose_from": "all by W. Quarmby"}, "where the prize may be", id="choose from"),
]


@pytest.mark.parametrize(("other", "says"), LEAKS)
def test_a_prize_that_tells_the_answer_is_refused(service: Service, other: Json, says: str) -> None:
    make_game(service.host)
    before = everything_kept(service)
    answer = service.host.put(f"{PATH}/prize", PRIZE | other)
    assert_problem(answer, 422, f"{says}.* gives the sealed answer or a part of it away")
    assert everything_kept(service) == before


def test_an_answer_that_the_prize_tells_is_not_sealed(service: Service) -> None:
    make_game(service.host, answer=None)
    done(service.host.put(f"{PATH}/prize", PRIZE | {"offer": "a brass astrolabe"}))
    answer = service.host.put(f"{PATH}/answer", {"title": TITLE})
    assert_problem(answer, 422, "what the prize offers gives the sealed answer")


def test_a_winner_called_after_the_answer_is_announced_only_with_the_reveal(
    service: Service,
) -> None:
    play_for_prize(service, ("Astrolabe Annie", MAREN[1], MAREN[2]))
    before = everything_kept(service)
    problem = assert_problem(service.host.post(WINNER), 422, "winner's name.*reveal the answer")
    assert "strolabe" not in str(problem).lower()
    assert everything_kept(service) == before
    done(service.host.post(f"{PATH}/guesses/end"))
    done(service.host.post(f"{PATH}/mystery/reveal"))
    assert done(service.host.post(WINNER), 201)["author"] == "Astrolabe Annie"


def test_a_ruling_on_the_time_and_on_the_words_stand_apart(service: Service) -> None:
    play_for_prize(service, MAREN, TOVE)
    rule(service, "Maren", in_time=False)
    assert guesses(service)["first"]["author"] == "Tove"
    told = rule(service, "Maren", outcome="right")
    assert told["first"]["author"] == "Tove"
    [maren] = [one for one in told["guesses"] if one["author"] == "Maren"]
    assert [(one["outcome"], one["in_time"]) for one in maren["rulings"]] == [
        (None, False),
        ("right", None),
    ]
    assert rule(service, "Maren", in_time=True)["first"]["author"] == "Maren"
