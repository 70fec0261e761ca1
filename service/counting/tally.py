"""The tally: how many ballots chose each page."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping

from service.counting.result import Ballot


def tally_of(ballots: Iterable[Ballot]) -> tuple[tuple[int, int], ...]:
    """Page and votes, most votes first, then by page; pages without a vote are left out.

    A ballot gives one vote to each of its pages, in whatever order it names them.
    """
    return tally_in_order(Counter(page for ballot in ballots for page in ballot.pages))


def tally_in_order(votes: Mapping[int, int]) -> tuple[tuple[int, int], ...]:
    """The tally of votes by page."""
    return tuple(sorted(votes.items(), key=lambda counted: (-counted[1], counted[0])))


def leaders(tally: tuple[tuple[int, int], ...]) -> tuple[int, ...]:
    """The pages with the most votes, ascending; none where nobody voted."""
    return tuple(sorted(page for page, votes in tally if votes == tally[0][1]))
