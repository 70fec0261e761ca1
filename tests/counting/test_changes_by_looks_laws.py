"""Whether open looks could change the winner, checked against every way to settle them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations, product

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
    comment,
    reading,
    ruling,
    span,
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


def is_followed_up(chain: tuple[TieBreak, ...]) -> bool:
    """Whether each rule of the chain is judged by just the votes that lead to it."""
    after_time = chain[chain.index("reached first") :] if "reached first" in chain else ()
    return "neighbours" not in after_time


@settings(max_examples=250, deadline=None)
@given(rounds(exact_times).filter(lambda it: is_followed_up(it.rules.tie_breaks)))
def test_with_exact_times_the_answer_is_that_of_every_way_to_settle_the_looks(
    given: RoundInput,
) -> None:
    result = count_round(given)
    assert can_looks_change(given, result).possible == may_change(given, result)


@settings(max_examples=200, deadline=None)
@given(rounds(exact_times, choices=2).filter(lambda it: is_followed_up(it.rules.tie_breaks)))
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
    ("neighbours", "lowest number"),
    ("neighbours", "reached first"),
    ("reached first", "neighbours"),
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
