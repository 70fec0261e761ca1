"""Announcing: refused while something could change it, then kept, and its page in hand."""

from __future__ import annotations

import pytest

from service.counting.round import Ruling
from service.errors import (
    WrongState,
)
from service.store.database import Database
from service.store.games import game_named, page_states
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round
from tests.store.playing import (
    announced,
    closed,
    draft,
    kept,
    opened,
    put_page,
    rule,
)


def test_announcing_puts_the_winner_in_hand(database: Database, game: str) -> None:
    put_page(database, game, 12, "in hand")
    open_first_round(database, game)
    comments = [comment("Maren", "13"), comment("Tove", "13"), comment("Odd", "3")]
    handed_in(database, game, delivery(comments))
    closed(database, game)
    announced(database, game)
    result = kept(database, game).result
    assert result is not None
    assert (result["winner"], result["tally"]) == (
        13,
        [{"page": 13, "votes": 2}, {"page": 3, "votes": 1}],
    )
    with database.reading() as session:
        states = page_states(session, game_named(session, game))
    assert (states.stitched, states.in_hand) == (frozenset({12}), (13,))


def test_the_page_in_hand_may_stay_in_hand(database: Database, game: str) -> None:
    put_page(database, game, 12, "in hand")
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Maren", "13")]))
    closed(database, game)
    announced(database, game, keeps=True)
    with database.reading() as session:
        states = page_states(session, game_named(session, game))
    assert (states.stitched, states.in_hand) == (frozenset(), (12, 13))


def test_an_announced_result_is_free_of_names_and_words(database: Database, game: str) -> None:
    open_first_round(database, game)
    comments = [comment("Maren Ulv", "13 for my aunt"), comment("Tove Ask", "what fine thread")]
    handed_in(database, game, delivery(comments))
    closed(database, game)
    announced(database, game)
    told = repr(kept(database, game).result)
    assert not [word for word in ("Maren", "Ulv", "Tove", "aunt", "fine thread") if word in told]


def test_a_round_without_any_vote_is_announced_without_a_winner(
    database: Database, game: str
) -> None:
    put_page(database, game, 12, "in hand")
    open_first_round(database, game)
    closed(database, game)
    announced(database, game)
    result = kept(database, game).result
    assert result is not None
    assert result["winner"] is None
    with database.reading() as session:
        assert page_states(session, game_named(session, game)).in_hand == (12,)


@pytest.mark.parametrize("state", ["draft", "open", "announced"])
def test_only_a_closed_round_is_announced(database: Database, game: str, state: str) -> None:
    draft(database, game)
    if state != "draft":
        opened(database, game)
    if state == "announced":
        closed(database, game)
        announced(database, game)
    with pytest.raises(WrongState, match=f"round 1 is {state} and cannot be announced"):
        announced(database, game)


def test_an_open_look_that_could_decide_stops_the_announcement(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Maren", "13"), comment("Odd", "12 or 40")]))
    closed(database, game)
    with pytest.raises(WrongState, match="rule on the comments that need a look"):
        announced(database, game)
    assert kept(database, game).state == "closed"
    rule(database, game, "12 or 40", Ruling((), "she only thinks aloud", after(49)))
    announced(database, game)
    assert kept(database, game).state == "announced"


def test_a_look_that_cannot_decide_does_not_stop_it(database: Database, game: str) -> None:
    open_first_round(database, game)
    sure = [comment(f"viewer {number}", "13") for number in range(3)]
    handed_in(database, game, delivery([*sure, comment("Odd", "12 or 40")]))
    closed(database, game)
    announced(database, game)
    result = kept(database, game).result
    assert result is not None
    assert (result["looks"], result["winner"]) == (1, 13)
