"""The odds of a tie for a round as it is drafted, and how often each of its tie-breaks decides.

What depends on the comments to come (their times, what else they vote for) cannot be computed
beforehand and is left out, with all that follows it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import comb

from service.counting.odds import check_odds, tie_odds, ties_by_size
from service.counting.round import TieBreak
from service.counting.wording import how_many

#: The chance of each number of pages still tied, two or more.
Sizes = Mapping[int, Fraction]

_CANNOT: Mapping[TieBreak, str] = {
    "neighbours": "It depends on how the votes for other pages lie, which cannot be computed here.",
    "reached first": "It decides where the comments' times can be told apart, which nobody knows yet.",
}
_DECIDES: Mapping[TieBreak, str] = {
    "runoff": "It decides every tie that comes to it, by a new vote.",
    "draw": "It decides every tie that comes to it.",
    "lowest number": "It decides every tie that comes to it.",
    "host's pick": "It decides every tie that comes to it, by the host's act.",
}


@dataclass(frozen=True, slots=True)
class RuleOdds:
    """How often a tie comes to a rule and how often it decides, of all rounds; and a sentence.

    None where it cannot be computed. `again` is, for a runoff, the chance that it ties as well
    with as many voters, of all rounds.
    """

    rule: TieBreak
    reaches: Fraction | None
    decides: Fraction | None
    why: str
    again: Fraction | None = None


@dataclass(frozen=True, slots=True)
class TieOdds:
    """The odds of a tie with so many voters and pages; None where they cannot be computed.

    `sizes` are the chances of a tie of just so many pages. `why` is a sentence for the host.
    """

    voters: int
    pages: int
    tie: Fraction | None
    sizes: tuple[tuple[int, Fraction], ...]
    rules: tuple[RuleOdds, ...]
    why: str


def odds_of_round(
    voters: int, touched: Mapping[int, int], choices: int, chain: tuple[TieBreak, ...]
) -> TieOdds:
    """The odds for `voters` of whom each chooses one page, all alike.

    `touched` are the votable pages with how many stitched pages each touches. With several choices
    a voter nobody knows how many each will make, so nothing is computed.

    Raises:
        BadRules: no voter, no page, or more than are counted.
    """
    pages = len(touched)
    check_odds(voters, pages)
    if choices > 1:
        why = f"A voter may choose up to {choices} pages, and nobody knows how many each will."
        rules = tuple(
            RuleOdds(rule, None, None, "The odds of a tie are not known.") for rule in chain
        )
        return TieOdds(voters, pages, None, (), rules, why)
    sizes = ties_by_size(voters, pages)
    tie = tie_odds(voters, pages)
    why = (
        f"With {how_many(voters, 'voter')} spread evenly over {how_many(pages, 'page')}, "
        f"{_of_hundred(tie)} rounds end in a tie."
    )
    return TieOdds(voters, pages, tie, sizes, _of_rules(voters, touched, chain, dict(sizes)), why)


def _of_rules(
    voters: int, touched: Mapping[int, int], chain: tuple[TieBreak, ...], sizes: Sizes
) -> tuple[RuleOdds, ...]:
    left: Sizes | None = sizes
    found: list[RuleOdds] = []
    for rule in chain:
        if left is None:
            why = "What comes to it depends on a rule before it that cannot be computed."
            found.append(RuleOdds(rule, None, None, why))
            continue
        reaches = sum(left.values(), Fraction(0))
        if rule in _CANNOT and reaches:
            found.append(RuleOdds(rule, reaches, None, _CANNOT[rule]))
            left = None
            continue
        after = _by_edges(touched, left) if rule == "most joined edges" else {}
        decides = reaches - sum(after.values(), Fraction(0))
        again = _again(voters, left) if rule == "runoff" else None
        found.append(RuleOdds(rule, reaches, decides, _why(rule, reaches, decides), again))
        left = after
    return tuple(found)


def _by_edges(touched: Mapping[int, int], sizes: Sizes) -> dict[int, Fraction]:
    """The sizes of the ties that `most joined edges` leaves.

    Which pages tie is even among all pages, so the ways to take a tie are counted by the most that
    one of its pages touches and by how many of its pages touch so many.
    """
    alike = Counter(touched.values())
    left: dict[int, Fraction] = {}
    for tied, chance in sizes.items():
        every = comb(len(touched), tied)
        for most, of_most in alike.items():
            fewer = sum(many for edges, many in alike.items() if edges < most)
            for kept in range(2, min(of_most, tied) + 1):
                ways = comb(of_most, kept) * comb(fewer, tied - kept)
                if ways:
                    left[kept] = left.get(kept, Fraction(0)) + chance * Fraction(ways, every)
    return left


def _again(voters: int, sizes: Sizes) -> Fraction:
    """The chance that a runoff is held and ties too, with as many voters as before."""
    return sum((chance * tie_odds(voters, tied) for tied, chance in sizes.items()), Fraction(0))


def _why(rule: TieBreak, reaches: Fraction, decides: Fraction) -> str:
    if not reaches:
        return "No tie comes to it."
    if rule in _DECIDES:
        return _DECIDES[rule]
    return f"It decides {_of_hundred(decides / reaches)} ties that come to it."


def _of_hundred(chance: Fraction) -> str:
    """A chance for people, rounded: "56 of 100"; none and all only where it is so."""
    hundreds = round(chance * 100)
    if chance and not hundreds:
        return "less than 1 of 100"
    if chance != 1 and hundreds == 100:
        return "more than 99 of 100"
    return f"{hundreds} of 100"
