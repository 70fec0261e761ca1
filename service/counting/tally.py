"""The tally: how many ballots chose each page."""

from __future__ import annotations

from collections.abc import Mapping


def tally_in_order(votes: Mapping[int, int]) -> tuple[tuple[int, int], ...]:
    """Page and votes, most votes first, then by page; pages without a vote are left out."""
    return tuple(sorted(votes.items(), key=lambda counted: (-counted[1], counted[0])))


def leaders(tally: tuple[tuple[int, int], ...]) -> tuple[int, ...]:
    """The pages with the most votes, ascending; none where nobody voted."""
    return tuple(sorted(page for page, votes in tally if votes == tally[0][1]))
