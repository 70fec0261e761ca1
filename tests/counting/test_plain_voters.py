"""Voters who only chose pages, at exact times, are counted as they are settled one by one."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.counting.plain_voters import Chose
from service.counting.round import STANDINGS, ReadComment, RoundInput, Standing
from service.counting.running import RunningCount
from tests.counting.rounds import CHART, RULES, look, vote

MOST = 2
votes = st.tuples(
    st.integers(0, 9), st.lists(st.integers(1, 4), min_size=1, max_size=2, unique=True)
)
voters = st.lists(st.lists(votes, min_size=1, max_size=4), max_size=8)


def comments_of(told: list[list[tuple[int, list[int]]]]) -> list[list[ReadComment]]:
    return [
        [
            vote(f"{voter}-{place}", tuple(pages), at, voter=f"viewer {voter}")
            for place, (at, pages) in enumerate(of_one_voter)
        ]
        for voter, of_one_voter in enumerate(told)
    ]


def counted_plainly(round_input: RoundInput, by_voter: list[list[ReadComment]]) -> RunningCount:
    running = RunningCount(round_input, MOST)
    plain = running.plain_voters()
    known: list[ReadComment] = []
    for of_one_voter in by_voter:
        numbers = range(len(known), len(known) + len(of_one_voter))
        known += of_one_voter
        chose = [
            Chose(one.written.earliest, one.key, one.reading.pages, number)
            for number, one in zip(numbers, of_one_voter, strict=True)
        ]
        if not plain.add(of_one_voter[0].voter, chose):
            running.add(of_one_voter)
    running.add_plain(plain, lambda at: at)
    for listed in (plain.oldest_ballots.listed(), plain.oldest_replaced.listed()):
        for _, key, ids in listed:
            running.list_plain([known[number] for number in ids], {key})
    return running


@given(voters, st.sampled_from(STANDINGS), st.booleans())
def test_plain_voters_count_as_settling_them_does(
    told: list[list[tuple[int, list[int]]]],
    standing: Standing,
    is_drawn: bool,  # noqa: FBT001
) -> None:
    chain = ("reached first", "draw") if is_drawn else RULES.tie_breaks
    rules = replace(RULES, standing=standing, choices=2, tie_breaks=chain)
    round_input = RoundInput(CHART, rules, (), salt=b"salt")
    by_voter = comments_of(told)
    one_by_one = RunningCount(round_input, MOST)
    for of_one_voter in by_voter:
        one_by_one.add(of_one_voter)
    plainly = counted_plainly(round_input, by_voter)
    unsettled = look("open", 1, 3)
    for running in (one_by_one, plainly):
        running.add([unsettled])
    result = plainly.result()
    assert result == one_by_one.result()
    assert plainly.change(result) == one_by_one.change(result)
    assert plainly.listed_ballots() == one_by_one.listed_ballots()
    assert plainly.listed_aside() == one_by_one.listed_aside()


@pytest.mark.parametrize(("standing", "page"), [("latest", 2), ("first", 1)])
def test_of_one_voters_ballots_the_one_stands_that_the_round_says(
    standing: Standing, page: int
) -> None:
    running = RunningCount(RoundInput(CHART, replace(RULES, standing=standing), ()), MOST)
    plain = running.plain_voters()
    assert plain.add("viewer", [Chose(7, "b", (2,), 2), Chose(3, "a", (1,), 1)])
    assert (plain.ballots, plain.replaced) == (1, 1)
    assert dict(plain.votes) == {page: 1}
    assert plain.reached == {page: {1: 3, 2: 7}[page]}


def test_times_that_are_the_same_are_left_to_settling() -> None:
    plain = RunningCount(RoundInput(CHART, RULES, ()), MOST).plain_voters()
    assert not plain.add("viewer", [Chose(3, "a", (1,), 1), Chose(3, "b", (2,), 2)])
    assert (plain.ballots, plain.replaced, dict(plain.votes)) == (0, 0, {})


def test_the_oldest_of_very_many_are_listed() -> None:
    plain = RunningCount(RoundInput(CHART, RULES, ()), MOST).plain_voters()
    for number in range(5000):
        at = number * 7919 % 5000
        assert plain.add(f"viewer {number}", [Chose(at, f"k{at}", (1,), number)])
    assert [at for at, _, _ in plain.oldest_ballots.listed()] == [0, 1]
