"""What holds for every chain of tie-breaks, with draws, runoffs and picks as they may be told."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Span
from service.counting.changes import can_looks_change
from service.counting.count import count_round
from service.counting.round import RoundInput, Runoff
from service.counting.sources import DrawInput, DrawRules, Told
from tests.counting.records import LOTTERY, OWN, rounds_to_record
from tests.counting.rounds import CHART, hour, vote
from tests.counting.test_changes_by_looks_laws import exact_times, may_change, wide_times
from tests.counting.test_changes_by_looks_laws import rounds as rounds_with_looks
from tests.counting.test_counting_laws import times

LAW = settings(max_examples=200, deadline=None)


@LAW
@given(rounds_to_record(), st.integers(-4, 54).map(hour).map(Span.at) | times)
def test_adding_a_vote_for_the_winner_never_makes_it_lose_without_a_draw(
    given: RoundInput, at: Span
) -> None:
    chain = tuple(rule for rule in given.rules.tie_breaks if rule != "draw")
    given = replace(given, rules=replace(given.rules, tie_breaks=chain))
    winner = count_round(given).winner
    if winner is None:
        return
    added = replace(vote("added", winner, voter="new"), written=at)
    assert count_round(replace(given, comments=(*given.comments, added))).winner == winner


@LAW
@given(rounds_to_record())
def test_counted_set_aside_and_looks_are_all_comments(given: RoundInput) -> None:
    result = count_round(given)
    aside = sum(not one.needs_look for one in result.set_aside)
    assert len(result.ballots) + aside + len(result.looks) == len(given.comments)


@LAW
@given(rounds_to_record())
def test_counting_twice_gives_the_same_with_a_draw_too(given: RoundInput) -> None:
    assert count_round(given) == count_round(given)


@LAW
@given(rounds_to_record())
def test_every_chain_ends_once_all_is_told(given: RoundInput) -> None:
    """With a runoff held, numbers told and a last rule that decides, any vote makes a winner."""
    chain = tuple(
        rule for rule in given.rules.tie_breaks if rule not in ("host's pick", "lowest number")
    )
    given = replace(
        given,
        rules=replace(
            given.rules, tie_breaks=(*chain, "lowest number"), draw=DrawRules((LOTTERY,))
        ),
        drawn=DrawInput(((1, Told(("4", "8"))),)),
        runoff=None,
    )
    result = count_round(given)
    if result.undecided and result.steps[-1].waits:
        assert result.steps[-1].rule == "runoff"
        tied = result.steps[-1].tied
        for winner in (None, *tied):
            held = count_round(replace(given, runoff=Runoff(3, tied, winner)))
            assert held.winner in tied
    else:
        assert (result.winner is None) == (not result.ballots)
    assert len(result.steps) <= len(given.rules.tie_breaks)


@LAW
@given(rounds_to_record())
def test_a_draw_keeps_one_of_the_tied_pages_and_orders_all(given: RoundInput) -> None:
    for step in count_round(given).steps:
        if step.rule == "draw" and not step.waits:
            assert len(step.kept) == 1
            turns = [turn for _, turn in step.values]
            assert sorted(page for page, _ in step.values) == list(step.tied)
            assert len(set(turns)) == len(step.tied)


runoffs = st.none() | st.builds(
    Runoff,
    st.just(3),
    st.sampled_from([(1, 2), (1, 3), (2, 3), (1, 2, 3)]),
    st.sampled_from([None, 1, 2, 3]),
).filter(lambda held: held.winner is None or held.winner in held.pages)


@settings(max_examples=150, deadline=None)
@given(rounds_with_looks(exact_times | wide_times), runoffs, st.sampled_from([None, OWN]))
def test_what_is_said_not_to_change_does_not_with_runoffs_and_draws_either(
    given: RoundInput, held: Runoff | None, value: bytes | None
) -> None:
    given = replace(given, runoff=held, drawn=DrawInput(value=value), chart=CHART)
    result = count_round(given)
    if not can_looks_change(given, result):
        assert not may_change(given, result)
