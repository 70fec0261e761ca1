"""Whether open looks could change the winner, case by case, and the sentence that says so."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from service.counting.changes import can_looks_change
from service.counting.count import count_round
from service.counting.round import ReadComment, Runoff, TieBreak
from tests.counting.rounds import (
    chat,
    count,
    look,
    round_of,
    ruling,
    takes_back,
    vote,
)


def asked(
    *comments: ReadComment, tie_breaks: tuple[TieBreak, ...] = (), **changed: Any
) -> tuple[bool, str]:
    given = round_of(*comments, tie_breaks=tie_breaks, **changed)
    change = can_looks_change(given, count_round(given))
    return bool(change), change.why


def votes(page: int, many: int, at: float = 1) -> list[ReadComment]:
    return [vote(f"{page} by {voter}", page, at + voter / 100) for voter in range(many)]


def test_without_looks_nothing_can_change() -> None:
    assert asked(*votes(3, 1)) == (False, "No comment needs a look.")


def test_a_look_cannot_make_up_a_lead_of_two() -> None:
    assert asked(*votes(3, 3), *votes(4, 1), look("x")) == (
        False,
        (
            "1 comment still needs a look, but it cannot change the winner: no other page can come "
            "closer than 1 vote."
        ),
    )


def test_as_many_looks_as_the_lead_may_draw_level() -> None:
    assert asked(*votes(3, 3), *votes(4, 1), look("x"), look("y"), votable=frozenset({3, 4})) == (
        True,
        "2 comments still need a look and could change the winner: page 4 may yet draw level.",
    )


def test_by_how_much_the_looks_could_change_the_winner_is_told() -> None:
    given = round_of(*votes(3, 2), *votes(4, 1), *(look(key) for key in "xyz"))
    change = can_looks_change(given, count_round(given))
    assert change.lead == 2
    assert "may yet win, by at most 2 votes, or draw level" in change.why
    safe = round_of(*votes(3, 5), *votes(4, 1), look("x"))
    assert can_looks_change(safe, count_round(safe)).lead == -3
    assert (
        can_looks_change(round_of(*votes(3, 1)), count_round(round_of(*votes(3, 1)))).lead is None
    )


def test_a_tie_that_the_winner_would_win_cannot_change_the_winner() -> None:
    assert asked(
        *votes(3, 2),
        *votes(4, 1),
        look("x"),
        tie_breaks=("lowest number",),
        votable=frozenset({3, 4}),
    ) == (
        False,
        (
            "1 comment still needs a look, but it cannot change the winner: at most another page "
            "draws level, and page 3 wins that tie."
        ),
    )


def test_a_tie_that_the_winner_would_lose_could_change_the_winner() -> None:
    assert asked(
        *votes(4, 2), *votes(3, 1), look("x"), tie_breaks=("lowest number",),
        votable=frozenset({3, 4}),
    )[0]  # fmt: skip


@pytest.mark.parametrize(
    "chain",
    [
        pytest.param(("reached first", "lowest number"), id="first of all"),
        pytest.param(("most joined edges", "reached first", "lowest number"), id="second"),
    ],
)
@pytest.mark.parametrize(
    ("at", "possible"), [(9.0, False), (0.5, True), ((0.5, 9.0), False)], ids=str
)
def test_reached_first_decides_by_when_the_look_was_written(
    at: float | tuple[float, float], *, possible: bool, chain: tuple[TieBreak, ...]
) -> None:
    # Page 3 has its two votes at hours 1 and 1.01; page 4 would have its second at `at`.
    comments = [*votes(3, 2), vote("b", 4, 0.1), look("x", at=at)]
    assert asked(*comments, tie_breaks=chain, votable=frozenset({3, 4}))[0] is possible


def test_a_look_of_the_winners_own_voter_may_take_a_vote_away() -> None:
    # Two in one: page 3 may lose the vote and page 4 may gain it.
    comments = [*votes(3, 3), *votes(4, 1), look("x", at=9, voter="3 by 0")]
    assert asked(*comments, votable=frozenset({3, 4}))[0]
    # Before the ballot that stands it can do neither.
    comments = [*votes(3, 3), *votes(4, 1), look("x", at=0, voter="3 by 0")]
    assert not asked(*comments, votable=frozenset({3, 4}))[0]


@pytest.mark.parametrize(
    ("one", "possible"),
    [
        pytest.param(vote("x", 3, (40, 60)), False, id="a vote for the winner"),
        pytest.param(vote("x", 4, (40, 60)), True, id="a vote for another"),
        pytest.param(vote("x", 4, (40, 60), ruling(in_time=False)), False, id="ruled out"),
        pytest.param(chat("x", (40, 60)), False, id="chat"),
        pytest.param(vote("x", 12, (40, 60)), False, id="a page not votable"),
        pytest.param(takes_back("x", (40, 60), voter="3 by 0"), True, id="a withdrawal"),
        pytest.param(takes_back("x", (40, 60), voter="4 by 0"), False, id="another's withdrawal"),
        pytest.param(look("x", at=(40, 60)), True, id="a doubtful comment"),
    ],
)
def test_a_comment_at_a_time_unknown_can_do_what_it_says_or_nothing(
    one: ReadComment, *, possible: bool
) -> None:
    assert asked(*votes(3, 2), *votes(4, 1), one, votable=frozenset({3, 4}))[0] is possible


def test_the_only_vote_may_be_taken_back() -> None:
    assert asked(vote("a", 3, voter="mo"), look("b", at=2, voter="mo"), votable=frozenset({3})) == (
        True,
        "1 comment still needs a look and could leave page 3 without a vote.",
    )


def test_with_one_votable_page_a_look_of_another_voter_changes_nothing() -> None:
    assert asked(vote("a", 3), look("b"), votable=frozenset({3})) == (
        False,
        (
            "1 comment still needs a look, but it cannot change the winner: no other page can be "
            "chosen."
        ),
    )


def test_where_nobody_voted_a_look_could_make_a_winner() -> None:
    assert asked(look("a"), votable=frozenset({3, 4})) == (
        True,
        "1 comment still needs a look and could make a winner of pages 3 and 4.",
    )
    assert asked(chat("a", (40, 60))) == (
        False,
        "1 comment still needs a look, but none can be a vote.",
    )


def test_a_tie_without_a_winner_may_be_settled_by_a_look() -> None:
    assert asked(*votes(3, 3), *votes(4, 3), look("x"), tie_breaks=("host's pick",)) == (
        True,
        (
            "1 comment still needs a look and could settle or change the tie: it depends on pages 3 "
            "and 4."
        ),
    )
    assert asked(*votes(3, 3), *votes(4, 3), vote("x", 5, (40, 60))) == (
        False,
        "1 comment still needs a look, but the tie stays whatever they say.",
    )


def test_many_rivals_are_told_by_their_number() -> None:
    possible, why = asked(vote("a", 3), look("x"))
    assert possible
    assert "11 pages, page 1 among them, may yet draw level" in why


def test_a_voter_of_very_many_comments_is_taken_as_able_to_do_anything() -> None:
    # In truth the last ballot stands whatever the look says; with so many comments it is not tried.
    many = [vote(f"m{place}", 3, place, voter="mo") for place in range(13)]
    assert asked(*many, look("x", at=0, voter="mo"), votable=frozenset({3, 4}))[0]
    assert not asked(*many[-2:], look("x", at=0, voter="mo"), votable=frozenset({3, 4}))[0]


@pytest.mark.parametrize(
    ("held", "possible"),
    [
        (Runoff(2, (3, 4), 3), False),
        (Runoff(2, (3, 4), 4), True),
        (Runoff(2, (3, 4), None), False),
        (Runoff(2, (3, 5), 3), True),
        (None, True),
    ],
    ids=["for the winner", "for the other", "nobody voted", "among other pages", "not held"],
)
def test_a_runoff_decides_what_looks_could_make_of_a_tie(
    held: Runoff | None, *, possible: bool
) -> None:
    chain: tuple[TieBreak, ...] = ("runoff", "lowest number")
    given = round_of(
        *votes(3, 2), *votes(4, 1), look("x"), tie_breaks=chain, votable=frozenset({3, 4})
    )
    given = replace(given, runoff=held)
    assert can_looks_change(given, count_round(given)).possible == possible


def test_what_is_voted_around_a_page_is_told_from_the_looks_too() -> None:
    # Joined to 1: 2 and 5. A voter of two pages may choose 12 and 8, the page joined to 12.
    given = round_of(
        *votes(1, 2),
        *votes(12, 1),
        look("x"),
        choices=2,
        tie_breaks=("neighbours", "lowest number"),
    )
    assert can_looks_change(given, count_round(given)).possible
    near = replace(given, comments=(*given.comments, *votes(5, 2)[:1], vote("y", 2)))
    few = replace(near, rules=replace(near.rules, votable=frozenset({1, 2, 5, 12, 8})))
    assert not can_looks_change(few, count_round(few)).possible


def test_a_thousand_looks_are_answered_at_once() -> None:
    looks = [look(f"x{place}") for place in range(1000)]
    assert not asked(*votes(3, 1001), *looks)[0]
    assert asked(*votes(3, 1000), *looks)[0]


def test_comments_of_unknown_order_may_all_come_to_nothing() -> None:
    comments = [
        vote("a", 3, (1, 5), voter="mo"),
        vote("b", 4, (2, 6), voter="mo"),
        *votes(5, 1),
    ]
    assert count(*comments).winner == 5
    # Page 3 or 4 may draw level with 5 and wins such a tie by its number; against two votes not.
    assert asked(*comments, tie_breaks=("lowest number",))[0]
    assert not asked(*comments, vote("c", 5), tie_breaks=("lowest number",))[0]
