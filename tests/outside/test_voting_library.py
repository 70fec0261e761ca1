"""Plurality, approval and runoff against votelib, a general library of voting methods.

votelib 0.4 is pure Python without dependencies (1 MB). It answers with a `Tie` where the votes leave
one, so that it can be asked about ties; libraries that break them by chance cannot.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import UTC, datetime, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st
from votelib.convert import ApprovalToSimpleVotes, RankedToFirstPreference, SubsettedVotes
from votelib.evaluate.core import Plurality, Tie
from votelib.vote import RankedSubsetter

from service.ballots.reading import Reading
from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import ReadComment, RoundInput, RoundRules, Runoff

OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
PAGES = 5
CHART = Chart(PAGES, 1)

Ranking = tuple[int, ...]
rankings = st.permutations(range(1, PAGES + 1)).map(tuple)
approvals = st.frozensets(st.integers(1, PAGES), min_size=1, max_size=3)


def round_of(
    ballots: list[tuple[int, ...]], votable: frozenset[int], *chain: str, choices: int = 1
) -> RoundInput:
    rules = RoundRules(
        OPENS,
        OPENS + timedelta(days=1),
        votable,
        choices=choices,
        tie_breaks=chain,  # type: ignore[arg-type]
    )
    comments = tuple(
        ReadComment(
            f"voter {place}",
            f"voter {place}",
            f"voter {place}",
            Span.at(OPENS + timedelta(minutes=place)),
            Reading("counts", pages, None, "a ballot"),
        )
        for place, pages in enumerate(ballots)
    )
    return RoundInput(CHART, rules, comments)


def agrees(result: Result, votes: dict[int, int]) -> None:
    """The tally is the library's, and so is the winner, or who is tied."""
    assert dict(result.tally) == votes
    [elected] = Plurality().evaluate(votes, 1)
    if isinstance(elected, Tie):
        assert set(result.undecided) == set(elected)
    else:
        assert result.winner == elected


@settings(max_examples=150, deadline=None)
@given(st.lists(rankings, min_size=1, max_size=15))
def test_plurality_on_random_profiles(profile: list[Ranking]) -> None:
    result = count_round(round_of([one[:1] for one in profile], frozenset(CHART.pages)))
    agrees(result, RankedToFirstPreference().convert(Counter(profile)))


@settings(max_examples=150, deadline=None)
@given(st.lists(approvals, min_size=1, max_size=12))
def test_approval_on_random_profiles(profile: list[frozenset[int]]) -> None:
    ballots = [tuple(sorted(one)) for one in profile]
    result = count_round(round_of(ballots, frozenset(CHART.pages), choices=3))
    agrees(result, ApprovalToSimpleVotes().convert(Counter(profile)))


@settings(max_examples=200, deadline=None)
@given(st.lists(rankings, min_size=2, max_size=8))
def test_a_runoff_among_the_tied_on_random_profiles(profile: list[Ranking]) -> None:
    first = round_of([one[:1] for one in profile], frozenset(CHART.pages), "runoff")
    tied = count_round(first).undecided
    votes = RankedToFirstPreference().convert(Counter(profile))
    [elected] = Plurality().evaluate(votes, 1)
    assert set(tied) == (set(elected) if isinstance(elected, Tie) else set())
    if not tied:
        return
    # Each voter's favourite among the tied pages, as the library cuts the rankings down.
    ballots = [tuple(page for page in one if page in tied)[:1] for one in profile]
    second = count_round(round_of(ballots, frozenset(tied)))
    left = SubsettedVotes(RankedSubsetter()).convert(Counter(profile), tied)
    agrees(second, RankedToFirstPreference().convert(left))
    if second.winner is not None:
        held = Runoff(2, tied, second.winner, second.tally)
        assert count_round(replace(first, runoff=held)).winner == second.winner
