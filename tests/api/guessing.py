"""Guesses and a prize played through the API, for the tests of the mystery."""

from __future__ import annotations

from typing import Any

from tests.api.asking import PATH, ROUND, csv, done, make_game
from tests.api.conftest import Service

Json = Any
TITLE = "The Tarnished Astrolabe of Skerrymouth"
ALIAS = "Lantern Clock at Vesper"
PRIZE: Json = {
    "offer": "a skein of the guild's own thread",
    "choose_from": "the colour card on the guild's wall",
    "claim_days": 14,
}
#: Right guesses an hour apart, the second one being the second viewer's.
MAREN = ("Maren", "2026-03-01T18:30:00Z", f"Is it {TITLE}?")
TOVE = ("Tove", "2026-03-01T19:00:00Z", f"My guess: {TITLE}")
ODD = ("Odd", "2026-03-01T19:30:00Z", f"{TITLE}!")
WRONG = ("Pia", "2026-03-01T18:10:00Z", "Is it The Herring Wharf at Sundown?")


def play(service: Service, *comments: tuple[str, str, str], **game: Json) -> None:
    """A game at 20:00 UTC, two hours after its opening, with these comments in its first round."""
    make_game(service.host, **game)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    if comments:
        hand_in(service, *comments)


def hand_in(service: Service, *comments: tuple[str, str, str]) -> None:
    done(service.host.hand_in(f"{ROUND}/batches", csv(*comments)), 201)


def guesses(service: Service) -> Json:
    return done(service.host.get(f"{PATH}/guesses"))


def guess_of(service: Service, author: str) -> Json:
    [guess] = [each for each in guesses(service)["guesses"] if each["author"] == author]
    return guess


def rule(service: Service, author: str, **ruling: Json) -> Json:
    key = guess_of(service, author)["key"]
    ruling |= {"reason": "she asked me in the harbour"}
    return done(service.host.post(f"{PATH}/guesses/{key}/rulings", ruling), 201)


def mystery(service: Service) -> Json:
    return done(service.viewer.get(f"{PATH}/mystery"))


def announcements(service: Service) -> dict[str, str]:
    """The words to paste, by occasion; none of them may be stopped."""
    told = done(service.host.get(f"{PATH}/mystery/announcements"))
    assert [one["stopped"] for one in told] == [""] * len(told)
    return {one["occasion"]: one["text"] for one in told}
