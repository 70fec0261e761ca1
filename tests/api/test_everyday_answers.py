"""An answer of everyday words: its game is played to the end, or refused when it is sealed."""

from __future__ import annotations

import pytest

from tests.api.asking import PATH, ROUND, assert_problem, done, everything_kept, make_game, votes
from tests.api.conftest import Service

PICKED = {"tie_breaks": ["host's pick"]}
GAVE = "gives the sealed answer or a part of it away"


def closed_round(service: Service) -> None:
    """Round 1 of the game that is there, closed with pages 13 and 21 tied."""
    done(service.host.post(f"{PATH}/rounds", PICKED), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    done(service.host.hand_in(f"{ROUND}/batches", votes("13", "21")), 201)
    done(service.host.post(f"{ROUND}/close"))


@pytest.mark.parametrize("title", ["The Edge", "The Vote", "Tie", "Stitched", "Voters", "The Cage"])
def test_a_game_whose_answer_is_a_word_of_the_trade_is_announced(
    service: Service, title: str
) -> None:
    """The frame of an announcement is the same for every game, so it tells nothing of this one."""
    make_game(service.host, answer={"title": title})
    closed_round(service)
    done(service.host.post(f"{ROUND}/pick", {"page": 13, "reason": "its thread is wound"}))
    tally = done(service.host.get(f"{ROUND}/tally"))
    assert "its thread is wound" in tally["announcement"]
    assert tally["announcement_why"] is None
    assert done(service.host.post(f"{ROUND}/announce"))["winner"] == 13


@pytest.mark.parametrize("title", ["12", "Page 12", "A", "It", "Pages"])
def test_an_answer_that_every_vote_would_name_is_refused_when_sealed(
    service: Service, title: str
) -> None:
    make_game(service.host, answer=None)
    before = everything_kept(service)
    says = "could not be told from votes and announcements: add a word"
    assert_problem(service.host.put(f"{PATH}/answer", {"title": title}), 422, says)
    assert everything_kept(service) == before
    done(service.host.put(f"{PATH}/answer", {"title": f"{title} at Skerrymouth"}), 204)


def test_a_reason_for_a_pick_that_tells_the_answer_is_refused_as_that(service: Service) -> None:
    make_game(service.host)
    closed_round(service)
    before = everything_kept(service)
    answer = service.host.post(f"{ROUND}/pick", {"page": 13, "reason": "it has the astrolabe"})
    assert_problem(answer, 422, f"^the reason for the pick of page 13 {GAVE}: .*other words")
    assert everything_kept(service) == before


def test_a_tally_leaves_out_an_announcement_that_would_tell_the_answer(service: Service) -> None:
    """The answer was sealed only after the pick."""
    make_game(service.host, answer=None)
    closed_round(service)
    done(service.host.post(f"{ROUND}/pick", {"page": 13, "reason": "it hides the Lamp Room best"}))
    shown = done(service.host.get(f"{ROUND}/tally"))
    assert "it hides the Lamp Room best" in shown["announcement"]
    done(service.host.put(f"{PATH}/answer", {"title": "The Lamp Room"}), 204)
    tally = done(service.host.get(f"{ROUND}/tally"))
    assert tally["announcement"] is None
    why = f"The announcement is left out: the reason for the pick of page 13 {GAVE}: "
    assert tally["announcement_why"].startswith(why)
    before = everything_kept(service)
    answer = service.host.post(f"{ROUND}/announce")
    assert_problem(answer, 422, "^the reason for the pick of page 13 gives")
    assert everything_kept(service) == before
    done(service.host.post(f"{ROUND}/pick", {"page": 13, "reason": "it is the smaller one"}))
    assert "the smaller one" in done(service.host.get(f"{ROUND}/tally"))["announcement"]
    done(service.host.post(f"{ROUND}/announce"))


def test_a_ruling_may_speak_of_the_answer_since_nobody_else_reads_it(service: Service) -> None:
    make_game(service.host)
    closed_round(service)
    [look, *_] = done(service.host.get(f"{ROUND}/comments"))
    ruling = {"pages": [13], "reason": "she guesses the astrolabe, and chooses 13"}
    done(service.host.post(f"{ROUND}/comments/{look['key']}/rulings", ruling), 201)
    done(service.host.post(f"{ROUND}/pick", {"page": 13, "reason": "its thread is wound"}))
    assert "astrolabe" not in done(service.host.get(f"{ROUND}/tally"))["announcement"]
    done(service.host.post(f"{ROUND}/announce"))
    for address in (PATH, ROUND, f"{ROUND}/result"):
        assert "astrolabe" not in service.viewer.get(address).text
