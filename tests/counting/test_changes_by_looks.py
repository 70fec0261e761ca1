"""Whether open looks could change the winner, checked against every way to settle them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations, product
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Span
from service.counting import possible
from service.counting.changes import can_looks_change
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import TIE_BREAKS, ReadComment, RoundInput, RoundRules, Ruling, TieBreak
from tests.counting.rounds import (
    CHART,
    CLOSES,
    OPENS,
    chat,
    comment,
    count,
    look,
    reading,
    round_of,
    ruling,
    span,
    takes_back,
    vote,
)

Ending = tuple[int | None, tuple[int, ...]]


def rulings_on(one: ReadComment, rules: RoundRules) -> list[Ruling]:
    """Every ruling that settles what is open about a comment that needs a look."""
    straddles = one.written.earliest < rules.opens or one.written.latest >= CLOSES
    if one.reading.outcome != "look":
        return [ruling(in_time=True), ruling(in_time=False)]
    pages = sorted(rules.votable)
    choices = [
        ruling(*some, in_time=True if straddles else None)
        for many in range(1, rules.choices + 1)
        for some in combinations(pages, many)
    ]
    return [ruling(), ruling(withdraws=True, in_time=True if straddles else None), *choices]


def ruled(given: RoundInput, key: str, held: Ruling) -> RoundInput:
    return replace(
        given,
        comments=tuple(
            replace(one, rulings=(*one.rulings, held)) if one.key == key else one
            for one in given.comments
        ),
    )


def endings(given: RoundInput) -> Iterator[Ending]:
    """How the round may end once no comment needs a look, by ruling and counting again."""
    result = count_round(given)
    comments = {one.key: one for one in given.comments}
    open_ones = [look for look in result.looks if not comments[look.key].rulings]
    timed = [
        comments[one.key]
        for one in open_ones
        if one.cause == "needs a look" or "either side" in one.why
    ]
    if timed:
        for held in rulings_on(timed[0], given.rules):
            yield from endings(ruled(given, timed[0].key, held))
    elif result.looks:
        # Only orders are open: each of the comments may be the one that chooses nothing.
        first = result.looks[0].voter
        for one in result.looks:
            if one.voter == first:
                yield from endings(ruled(given, one.key, ruling()))
    else:
        yield result.winner, result.undecided


def may_change(given: RoundInput, result: Result) -> bool:
    now = (result.winner, result.undecided)
    return any(ending != now for ending in endings(given))


exact_times = st.integers(0, 12).map(lambda at: Span.at(span(at, at).earliest))
wide_times = st.tuples(st.integers(-2, 50), st.integers(1, 12)).map(
    lambda at: span(at[0], at[0] + at[1])
)
straddling = st.just(span(40, 60))
sure = st.sampled_from(
    [
        reading("counts", 1),
        reading("counts", 2),
        reading("counts", 3),
        reading("none"),
        reading("none", reason="withdrawn"),
    ]
)
open_readings = st.just(reading("look"))


@st.composite
def rounds(draw: st.DrawFn, times: st.SearchStrategy[Span], *, choices: int = 1) -> RoundInput:
    """A small round: up to six sure comments and up to two looks of four voters."""
    voters = st.sampled_from(["mo", "jo", "lu", "bo"])
    readings = sure
    if choices > 1:
        readings |= st.sampled_from([reading("counts", 1, 2), reading("counts", 3, 2)])
    drawn = [
        *draw(st.lists(st.tuples(voters, readings, times), max_size=6)),
        *draw(st.lists(st.tuples(voters, open_readings, times), max_size=2 if choices == 1 else 1)),
        *draw(st.lists(st.tuples(voters, readings, straddling), max_size=1)),
    ]
    comments = [
        replace(comment(f"c{place}", read, 0, voter=voter), written=written)
        for place, (voter, read, written) in enumerate(drawn)
    ]
    chain = draw(st.lists(st.sampled_from(TIE_BREAKS), max_size=3, unique=True))
    votable = draw(st.sampled_from([{1, 2, 3}, {1, 2, 3, 4}, {1, 2}, {1}]))
    pick = draw(st.sampled_from([None, (1, "so"), (2, "so")]))
    rules = RoundRules(
        OPENS,
        CLOSES,
        frozenset(votable),
        stitched=draw(st.sampled_from([frozenset[int](), frozenset({5}), frozenset({6, 7})])),
        choices=choices,
        standing=draw(st.sampled_from(["latest", "first"])),
        tie_breaks=tuple(chain),
    )
    return RoundInput(CHART, rules, tuple(comments), pick)


@settings(max_examples=250, deadline=None)
@given(rounds(exact_times))
def test_with_exact_times_the_answer_is_that_of_every_way_to_settle_the_looks(
    given: RoundInput,
) -> None:
    result = count_round(given)
    assert can_looks_change(given, result).possible == may_change(given, result)


@settings(max_examples=200, deadline=None)
@given(rounds(exact_times, choices=2))
def test_with_several_choices_the_answer_is_that_of_every_way_too(given: RoundInput) -> None:
    result = count_round(given)
    assert can_looks_change(given, result).possible == may_change(given, result)


@settings(max_examples=250, deadline=None)
@given(rounds(wide_times | exact_times))
def test_where_nothing_is_said_to_change_no_way_to_settle_the_looks_changes_anything(
    given: RoundInput,
) -> None:
    result = count_round(given)
    if not can_looks_change(given, result):
        assert not may_change(given, result)


few_hours = st.one_of(
    st.integers(0, 5).map(lambda at: span(at, at)),
    st.tuples(st.integers(0, 5), st.integers(1, 3)).map(lambda at: span(at[0], sum(at))),
)
over_the_closing = st.integers(0, 5).map(lambda at: span(at, 60))
CHAINS: tuple[tuple[TieBreak, ...], ...] = (
    ("reached first",),
    ("reached first", "lowest number"),
    ("reached first", "most joined edges"),
    ("reached first", "host's pick"),
    ("most joined edges", "reached first", "lowest number"),
    ("host's pick", "reached first"),
    ("lowest number", "reached first"),
    ("host's pick", "lowest number"),
)


@st.composite
def close_rounds(draw: st.DrawFn) -> RoundInput:
    """Two pages close to a tie: one voter a vote, looks that can just change or keep it."""
    choices = draw(st.integers(1, 2))
    lead = draw(st.integers(-2, 2))
    sure_pages = [1] * draw(st.integers(max(0, lead), 2 + max(0, lead)))
    sure_pages += [2] * max(0, len(sure_pages) - lead)
    wide = draw(st.booleans())
    times = few_hours if wide else st.integers(0, 5).map(lambda at: span(at, at))
    drawn = [(f"v{place}", reading("counts", page), draw(times)) for place, page in
             enumerate(sure_pages)]  # fmt: skip
    if choices > 1:
        drawn += [
            ("both", reading("counts", 2, 1), draw(times)) for _ in range(draw(st.integers(0, 1)))
        ]
    names = st.sampled_from(["v0", "v1", "both", "new", "other"])
    some = st.sampled_from(
        [reading("counts", 1), reading("counts", 2), reading("none", reason="withdrawn")]
    )
    drawn += draw(st.lists(st.tuples(names, open_readings, times), max_size=1))
    drawn += draw(st.lists(st.tuples(names, some, over_the_closing), max_size=2))
    drawn += draw(st.lists(st.tuples(names, some, times), max_size=1))
    comments = [
        replace(comment(f"c{place}", read, 0, voter=voter), written=written)
        for place, (voter, read, written) in enumerate(drawn)
    ]
    rules = RoundRules(
        OPENS,
        CLOSES,
        frozenset({1, 2}),
        stitched=draw(st.sampled_from([frozenset[int](), frozenset({5}), frozenset({6})])),
        choices=choices,
        standing=draw(st.sampled_from(["latest", "first"])),
        tie_breaks=draw(st.sampled_from(CHAINS)),
    )
    pick = draw(st.sampled_from([None, (1, "so"), (2, "so"), (7, "so")]))
    return RoundInput(CHART, rules, tuple(comments), pick)


@settings(max_examples=500, deadline=None)
@given(close_rounds())
def test_between_two_pages_the_answer_is_exact_whatever_the_times(given: RoundInput) -> None:
    result = count_round(given)
    assert can_looks_change(given, result).possible == may_change(given, result)


@settings(max_examples=150, deadline=None)
@given(close_rounds() | rounds(wide_times | exact_times))
def test_what_is_taken_as_possible_unseen_holds_all_that_is(given: RoundInput) -> None:
    result = count_round(given)
    with pytest.MonkeyPatch.context() as unseen:
        unseen.setattr(possible, "MOST_COMMENTS", 0)
        change = can_looks_change(given, result)
    if not change:
        assert not may_change(given, result)


def around(given: Span | None, unseen: Span | None, *, early: bool) -> bool:
    """Whether a vote taken as possible is as early, or as late, as one that is."""
    if given is None or unseen is None:
        return given is unseen
    ends = ((given.earliest, unseen.earliest), (given.latest, unseen.latest))
    return all(loose <= exact if early else loose >= exact for exact, loose in ends)


@settings(max_examples=150, deadline=None)
@given(close_rounds())
def test_a_vote_taken_as_possible_unseen_is_as_early_and_as_late_as_any(given: RoundInput) -> None:
    looks = frozenset(one.key for one in count_round(given).looks)
    for voter in possible.open_voters(given, looks):
        with pytest.MonkeyPatch.context() as unseen:
            unseen.setattr(possible, "MOST_COMMENTS", 0)
            loose = replace(voter).votes(1, 2)
        for exact, (first, second) in product(voter.votes(1, 2), product([True, False], repeat=2)):
            assert any(
                around(exact.first, one.first, early=first)
                and around(exact.second, one.second, early=second)
                for one in loose
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
        (
            "2 comments still need a look and could change the winner: page 4 may yet win or draw "
            "level."
        ),
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
    assert "11 pages, page 1 among them, may yet win or draw level" in why


def test_a_voter_of_very_many_comments_is_taken_as_able_to_do_anything() -> None:
    # In truth the last ballot stands whatever the look says; with so many comments it is not tried.
    many = [vote(f"m{place}", 3, place, voter="mo") for place in range(13)]
    assert asked(*many, look("x", at=0, voter="mo"), votable=frozenset({3, 4}))[0]
    assert not asked(*many[-2:], look("x", at=0, voter="mo"), votable=frozenset({3, 4}))[0]


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
