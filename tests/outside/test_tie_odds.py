"""The odds of a tie against every way to vote, and against the birthday problem."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from itertools import product
from math import comb

import pytest

from service.counting.odds import tie_odds, ties_by_size, ways_to_spread

MOST_WAYS = 50_000


def counted(voters: int, pages: int) -> dict[int, Fraction]:
    """How many pages tie, over every way to vote, each tried."""
    found: Counter[int] = Counter()
    for way in product(range(pages), repeat=voters):
        tally = Counter(way).values()
        found[list(tally).count(max(tally))] += 1
    return {tied: Fraction(ways, pages**voters) for tied, ways in found.items() if tied > 1}


SMALL = [
    (voters, pages) for voters in range(1, 8) for pages in range(1, 7) if pages**voters <= MOST_WAYS
]


@pytest.mark.parametrize(("voters", "pages"), SMALL)
def test_all_small_cases_are_those_of_every_way_to_vote(voters: int, pages: int) -> None:
    assert dict(ties_by_size(voters, pages)) == counted(voters, pages)


def test_the_birthday_problem() -> None:
    """23 people, 365 days: 0.507297234323985... that some day is shared (OEIS A333507; Feller,
    An Introduction to Probability Theory, volume 1, from memory). That is one minus the chance
    that all counts are at most one.
    """
    shared = 1 - Fraction(ways_to_spread(23, 365, 1), 365**23)
    assert f"{float(shared):.15f}" == "0.507297234323985"
    fewer = 1 - Fraction(ways_to_spread(22, 365, 1), 365**22)
    assert f"{float(fewer):.3f}" == "0.476"


@pytest.mark.parametrize("half", [1, 2, 5, 10, 100])
def test_two_pages_tie_as_often_as_a_coin_falls_evenly(half: int) -> None:
    """C(2m, m) / 4^m, the middle of the binomial distribution (any textbook)."""
    assert tie_odds(2 * half, 2) == Fraction(comb(2 * half, half), 4**half)
    assert tie_odds(2 * half - 1, 2) == 0


#: Computed once with another program by the sum over the winner's votes; no published source.
LARGER = {
    (12, 4): "0.227899",
    (20, 4): "0.190234",
    (20, 63): "0.650707",
    (30, 63): "0.564433",
    (40, 78): "0.524180",
    (100, 63): "0.442523",
    (200, 63): "0.372320",
}


@pytest.mark.parametrize(("case", "odds"), LARGER.items(), ids=[f"{n} over {k}" for n, k in LARGER])
def test_larger_cases(case: tuple[int, int], odds: str) -> None:
    assert f"{float(tie_odds(*case)):.6f}" == odds
