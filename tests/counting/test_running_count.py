"""A count that is made voter by voter and lists only so much is the count of all at once."""

from __future__ import annotations

from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Span
from service.counting.changes import can_looks_change
from service.counting.count import count_round
from service.counting.figures import Given, figures_of
from service.counting.result import Ballot
from service.counting.round import RoundInput
from service.counting.running import RunningCount
from service.counting.settle import by_voter
from tests.counting.rounds import CHART, RULES, hour, look, vote
from tests.counting.test_counting_laws import rounds


def counted(
    given_input: RoundInput, most: int | None, random: Random | None = None
) -> RunningCount:
    running = RunningCount(
        RoundInput(given_input.chart, given_input.rules, (), given_input.host_pick), most
    )
    voters = list(by_voter(given_input.comments))
    if random is not None:
        random.shuffle(voters)
    for voter in voters:
        running.add(voter)
    return running


@given(rounds(), st.randoms(use_true_random=False))
@settings(max_examples=150)
def test_the_order_of_voters_and_what_is_listed_change_nothing(
    given_input: RoundInput, random: Random
) -> None:
    whole = count_round(given_input)
    few = counted(given_input, 2, random)
    result = few.result()
    assert (result.tally, result.steps, result.winner) == (whole.tally, whole.steps, whole.winner)
    assert (result.undecided, result.why) == (whole.undecided, whole.why)
    assert result.figures == whole.figures == figures_of((*whole.ballots, *whole.set_aside))
    assert result.ballots == whole.ballots[:2]
    assert result.looks == whole.looks[:2]
    others = [one for one in whole.set_aside if not one.needs_look]
    assert [one for one in result.set_aside if not one.needs_look] == others[:2]
    assert few.change(result) == can_looks_change(given_input, whole)


@given(rounds())
def test_the_comments_that_are_listed_are_those_of_their_outcomes(given_input: RoundInput) -> None:
    running = counted(given_input, None)
    result = running.result()
    ballots, aside = running.listed_ballots(), running.listed_aside()
    assert [one.outcome for one in ballots] == list(result.ballots)
    assert [one.outcome for one in aside] == list(result.set_aside)
    comments = [one.comment for one in ballots] + [one.comment for one in aside]
    keys = [one.key for one in result.ballots] + [one.key for one in result.set_aside]
    assert [one.key for one in comments] == keys
    assert set(comments) == set(given_input.comments)


def test_a_page_has_reached_its_votes_when_the_last_of_them_was_given() -> None:
    early, wide = Span.at(hour(1)), Span(hour(0), hour(9))
    given_votes = Given.by(
        [Ballot("a", "A", "a", (3,), early), Ballot("b", "B", "b", (3, 4), wide)]
    )
    assert given_votes.reached == {3: Span(hour(1), hour(9)), 4: wide}
    assert given_votes.votes == {3: 2, 4: 1}


def test_many_open_voters_who_are_alike_weigh_as_many() -> None:
    votes = [vote(f"v{place}", 3) for place in range(5)]
    looks = [look(f"l{place}", 7) for place in range(5)]
    for many, changes in ((4, False), (5, True)):
        given_input = RoundInput(CHART, RULES, (*votes, *looks[:many]))
        running = counted(given_input, 1)
        result = running.result()
        assert result.figures.looks == many
        assert running.change(result).possible is changes
        assert can_looks_change(given_input, count_round(given_input)).possible is changes


def test_what_is_listed_stays_within_its_bound_however_much_comes() -> None:
    given_input = RoundInput(CHART, RULES, tuple(vote(f"v{n:05}", 3, 1) for n in range(5000)))
    result = counted(given_input, 3).result()
    assert [one.key for one in result.ballots] == ["v00000", "v00001", "v00002"]
    assert result.figures.ballots == 5000
    assert result.tally == ((3, 5000),)
