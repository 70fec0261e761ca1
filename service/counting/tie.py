"""A tie to be narrowed, and what the rules for it share."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from service.comments.spans import Span
from service.counting.result import Ballot, TieStep
from service.counting.round import RoundInput


@dataclass(frozen=True, slots=True)
class Tie:
    """A tie to be narrowed: the pages, ascending, and all that a rule may look at."""

    pages: tuple[int, ...]
    ballots: tuple[Ballot, ...]
    round_input: RoundInput


Rule = Callable[[Tie], TieStep]


def touches(page: int, round_input: RoundInput) -> int:
    """How many stitched pages share an edge of the chart with `page`."""
    return len(round_input.chart.edge_neighbours(page) & round_input.rules.stitched)


def votes_around(page: int, tie: Tie) -> int:
    """The votes of all pages that are joined to `page`, as the game says joined."""
    votes = Counter(chosen for ballot in tie.ballots for chosen in ballot.pages)
    return sum(votes[near] for near in tie.round_input.chart.neighbours(page))


def reached_total(page: int, ballots: tuple[Ballot, ...]) -> Span:
    """When `page` reached its total: when the last of its votes was given.

    `page` must have a vote.
    """
    given = [ballot.given(page) for ballot in ballots if page in ballot.pages]
    return Span(max(at.earliest for at in given), max(at.latest for at in given))


def told(values: Mapping[int, object]) -> tuple[tuple[int, str], ...]:
    """What a rule looked at, page by page, as text."""
    return tuple((page, str(value)) for page, value in sorted(values.items()))
