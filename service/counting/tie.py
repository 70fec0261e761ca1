"""A tie to be narrowed, and what the rules for it share."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from service.counting.figures import Given
from service.counting.result import TieStep
from service.counting.round import RoundInput


@dataclass(frozen=True, slots=True)
class Tie:
    """A tie to be narrowed: the pages, ascending, and all that a rule may look at.

    `given` are the votes of all ballots. `ballots_digest` is the digest of those ballots; it is
    empty where the round's chain draws nothing.
    """

    pages: tuple[int, ...]
    given: Given
    round_input: RoundInput
    ballots_digest: str = ""


Rule = Callable[[Tie], TieStep]


def touches(page: int, round_input: RoundInput) -> int:
    """How many stitched pages share an edge of the chart with `page`."""
    return len(round_input.chart.edge_neighbours(page) & round_input.rules.stitched)


def votes_around(page: int, tie: Tie) -> int:
    """The votes of all pages that are joined to `page`, as the game says joined."""
    return sum(tie.given.votes[near] for near in tie.round_input.chart.neighbours(page))


def told(values: Mapping[int, object]) -> tuple[tuple[int, str], ...]:
    """What a rule looked at, page by page, as text."""
    return tuple((page, str(value)) for page, value in sorted(values.items()))
