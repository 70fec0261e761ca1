"""Voters whose comments choose pages at exact times and nothing else: nearly all of a large round.

What stands of theirs follows from the order of the times alone, so that they are counted without a
value for each comment. All others go through settle.py, which says the same of these; a law holds
it.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Any, NamedTuple

from service.counting.round import Standing


class Chose(NamedTuple):
    """A comment that chose votable pages in time: `at` is anything that is ordered as time is."""

    at: Any
    key: str
    pages: tuple[int, ...]
    id: int


#: A comment that may be listed: when and which, with the ids of all comments of its voter.
Listable = tuple[Any, str, tuple[int, ...]]


class OldestPlain:
    """Those of very many comments that are listed: the oldest, at most so many."""

    def __init__(self, most: int) -> None:
        self._most = most
        self._kept: list[Listable] = []
        self._newest: Any = None

    def add(self, chose: Chose, ids: tuple[int, ...]) -> None:
        """Add a comment, where it may be among the oldest."""
        if self._newest is None or chose.at <= self._newest:
            self._kept.append((chose.at, chose.key, ids))
            if len(self._kept) >= 2 * self._most + 1000:
                self._cut()

    def _cut(self) -> None:
        self._kept.sort()
        del self._kept[self._most :]
        if self._kept:
            self._newest = self._kept[-1][0]

    def listed(self) -> list[Listable]:
        """Those that are listed, oldest first."""
        self._cut()
        return self._kept


@dataclass(slots=True)
class PlainVoters:
    """The count of such voters so far, of whom the oldest `most` comments of a kind are listed.

    `replaced` counts the ballots that another one of their voter stands for. `reached` tells for
    each page when it had the last vote of theirs. `cast` is kept where `draws`: each voter and the
    pages of the ballot.
    """

    standing: Standing
    most: int
    draws: bool
    ballots: int = 0
    replaced: int = 0
    votes: Counter[int] = field(default_factory=Counter)
    reached: dict[int, Any] = field(default_factory=dict)
    cast: list[tuple[str, tuple[int, ...]]] = field(default_factory=list)
    oldest_ballots: OldestPlain = field(init=False)
    oldest_replaced: OldestPlain = field(init=False)

    def __post_init__(self) -> None:
        self.oldest_ballots = OldestPlain(self.most)
        self.oldest_replaced = OldestPlain(self.most)

    def add(self, voter: str, chose: list[Chose]) -> bool:
        """Count all comments of a voter; False where times that are the same leave them unsettled."""
        if len(chose) > 1:
            chose.sort()
            if any(one.at == later.at for one, later in pairwise(chose)):
                return False
        stands = chose[-1] if self.standing == "latest" else chose[0]
        ids = tuple([one.id for one in chose])
        self.ballots += 1
        self.replaced += len(chose) - 1
        for page in stands.pages:
            self._give(page, _since(page, chose, stands))
        if self.draws:
            self.cast.append((voter, stands.pages))
        self.oldest_ballots.add(stands, ids)
        for one in chose:
            if one is not stands:
                self.oldest_replaced.add(one, ids)
        return True

    def _give(self, page: int, at: Any) -> None:
        self.votes[page] += 1
        before = self.reached.get(page)
        if before is None or at > before:
            self.reached[page] = at


def _since(page: int, chose: list[Chose], stands: Chose) -> Any:
    """Since when the vote for a page was given: naming it again changes nothing."""
    since = stands.at
    if stands is chose[-1]:
        for one in reversed(chose):
            if page not in one.pages:
                break
            since = one.at
    return since
