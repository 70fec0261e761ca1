"""The odds of a tie, and how often each tie-break of a chain decides."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import pytest

from service.counting.chain_odds import TieOdds, odds_of_round
from service.counting.odds import tie_odds, ties_by_size, ways_to_spread
from service.counting.round import TieBreak
from service.errors import BadRules

TOUCHED = {1: 2, 2: 2, 3: 1, 4: 0, 5: 0}


def odds(*chain: TieBreak, voters: int = 6, choices: int = 1) -> TieOdds:
    return odds_of_round(voters, TOUCHED, choices, chain)


def test_the_sizes_of_ties_make_up_the_odds() -> None:
    assert dict(ties_by_size(6, 3)) == {2: Fraction(20, 243), 3: Fraction(10, 81)}
    assert dict(ties_by_size(5, 5)) == {2: Fraction(36, 125), 5: Fraction(24, 625)}
    assert tie_odds(6, 3) == Fraction(50, 243)


def test_one_voter_or_one_page_never_ties() -> None:
    assert tie_odds(1, 63) == tie_odds(30, 1) == 0


def test_the_ways_to_spread_include_none() -> None:
    assert ways_to_spread(0, 5, 0) == 1
    assert ways_to_spread(3, 2, 1) == 0
    assert ways_to_spread(3, 2, 2) == 6


@pytest.mark.parametrize(
    ("voters", "pages", "says"),
    [(0, 63, "0 voters"), (401, 63, "401 voters"), (30, 0, "0 pages"), (30, 10_001, "10001 pages")],
)
def test_numbers_whose_odds_cannot_be_told_are_refused(voters: int, pages: int, says: str) -> None:
    with pytest.raises(BadRules, match=says):
        tie_odds(voters, pages)


def test_200_voters_over_200_pages_are_told_exactly() -> None:
    found = tie_odds(200, 200)
    assert 0 < found < 1
    assert 200**200 % found.denominator == 0


def edges_decide(sizes: tuple[tuple[int, Fraction], ...]) -> Fraction:
    """By trying every set of tied pages: the chance that one of them touches most alone."""
    found = Fraction(0)
    for tied, chance in sizes:
        sets = list(combinations(TOUCHED.values(), tied))
        alone = sum(one.count(max(one)) == 1 for one in sets)
        found += chance * Fraction(alone, len(sets))
    return found


def test_most_joined_edges_decides_as_often_as_trying_every_tie_says() -> None:
    found = odds("most joined edges", "lowest number")
    assert found.tie is not None
    edges, lowest = found.rules
    assert (edges.reaches, edges.decides) == (found.tie, edges_decide(found.sizes))
    assert edges.decides
    assert lowest.reaches == lowest.decides == found.tie - edges.decides
    assert (
        edges.why
        == f"It decides {round(edges.decides / found.tie * 100)} of 100 ties that come to it."
    )


def test_what_depends_on_the_comments_is_left_out_with_all_that_follows() -> None:
    found = odds("most joined edges", "reached first", "neighbours", "lowest number")
    assert [rule.decides is None for rule in found.rules] == [False, True, True, True]
    assert [rule.reaches is None for rule in found.rules] == [False, False, True, True]
    assert "nobody knows yet" in found.rules[1].why


def test_nothing_comes_to_a_rule_after_one_that_decides() -> None:
    found = odds("draw", "reached first", "lowest number")
    assert [(rule.reaches, rule.decides) for rule in found.rules] == [
        (found.tie, found.tie),
        (0, 0),
        (0, 0),
    ]


def test_a_runoff_may_tie_as_well() -> None:
    found = odds("runoff", "lowest number")
    expected = sum(chance * tie_odds(6, tied) for tied, chance in found.sizes)
    assert found.rules[0].again == expected
    assert found.rules[0].decides == found.tie


def test_with_several_choices_nothing_is_told() -> None:
    found = odds("lowest number", choices=2)
    assert found.tie is None
    assert found.rules[0].decides is None
    assert found.why == "A voter may choose up to 2 pages, and nobody knows how many each will."


def test_the_design_s_own_example_is_said_in_words() -> None:
    found = odds_of_round(30, dict.fromkeys(range(1, 64), 0), 1, ("lowest number",))
    assert found.why == (
        "With 30 voters spread evenly over 63 pages, 56 of 100 rounds end in a tie."
    )


def test_a_tie_that_hardly_ever_comes_is_not_called_none() -> None:
    found = odds_of_round(301, {1: 0, 2: 0, 3: 0}, 1, ())
    assert found.tie is not None
    assert found.tie > 0
    assert "of 100 rounds" in found.why
    never = odds_of_round(1, {1: 0, 2: 0}, 1, ())
    assert "0 of 100 rounds" in never.why
