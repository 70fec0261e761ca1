"""The odds that a round ends in a tie, exactly, before anybody has voted.

Each of `voters` is taken to choose one of `pages` pages, all alike and on their own. Ties are then
the rule: 30 voters over 63 pages tie for first place in 56 of 100 rounds. Everything is counted in
whole numbers of ways; nothing is rounded or tried out.
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from math import comb, factorial

from service.errors import BadRules

#: Counting the ways takes about the cube of the voters; these many take seconds.
MOST_VOTERS = 400
MOST_PAGES = 10_000


def check_odds(voters: int, pages: int) -> None:
    """Refuse numbers whose odds cannot be told.

    Raises:
        BadRules: no voter, no page, or more of them than are counted.
    """
    for what, number, most in (("voters", voters, MOST_VOTERS), ("pages", pages, MOST_PAGES)):
        if not 1 <= number <= most:
            raise BadRules(
                f"the odds of a tie are asked for {number} {what}", f"give 1 to {most} {what}"
            )


def tie_odds(voters: int, pages: int) -> Fraction:
    """The chance that two or more pages share the most votes.

    Raises:
        BadRules: as check_odds.
    """
    return sum((chance for _, chance in ties_by_size(voters, pages)), Fraction(0))


@lru_cache(maxsize=64)
def ties_by_size(voters: int, pages: int) -> tuple[tuple[int, Fraction], ...]:
    """The chance of a tie of just so many pages, for each number that can tie.

    Raises:
        BadRules: as check_odds.
    """
    check_odds(voters, pages)
    ways: dict[int, int] = {}
    for most in range(1, voters // 2 + 1):
        for tied in range(2, min(pages, voters // most) + 1):
            left = voters - tied * most
            spread = ways_to_spread(left, pages - tied, most - 1)
            if spread:
                # Which pages tie, and which voters are theirs.
                chosen = comb(pages, tied) * factorial(voters)
                chosen //= factorial(most) ** tied * factorial(left)
                ways[tied] = ways.get(tied, 0) + chosen * spread
    every = pages**voters
    return tuple((tied, Fraction(number, every)) for tied, number in sorted(ways.items()))


def ways_to_spread(voters: int, pages: int, most: int) -> int:
    """In how many ways so many voters may choose among so many pages, at most `most` a page.

    It is voters! times the coefficient of x to the voters in the power `pages` of
    1 + x + x^2/2! + ... + x^most/most!. The coefficients of a power of a series follow from one
    another (Euler; Knuth, The Art of Computer Programming, volume 2, section 4.7, from memory).
    """
    if most >= voters:
        return int(pages**voters)
    if most * pages < voters:
        return 0
    ways = [1]
    for total in range(1, voters + 1):
        chosen, found = 1, 0
        for here in range(1, min(most, total) + 1):
            chosen = chosen * (total - here + 1) // here
            found += (pages * here - total + here) * chosen * ways[total - here]
        ways.append(found // total)
    return ways[voters]
