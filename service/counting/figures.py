"""How much there is of what was settled, kept while it is settled: no ballot need stay in memory."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from service.comments.spans import Span
from service.counting.result import Ballot, Cause, Figures, SetAside


@dataclass(slots=True)
class Given:
    """The votes that ballots gave: how many to each page, and when the last of them."""

    votes: Counter[int] = field(default_factory=Counter)
    reached: dict[int, Span] = field(default_factory=dict)

    @classmethod
    def by(cls, ballots: Iterable[Ballot]) -> Given:
        """The votes of these ballots."""
        given = cls()
        for ballot in ballots:
            given.add(ballot)
        return given

    def add(self, ballot: Ballot) -> None:
        """Add a ballot's votes."""
        for page in ballot.pages:
            self.votes[page] += 1
            self._reach(page, ballot.given(page))

    def add_all(self, votes: Mapping[int, int], reached: Mapping[int, Span]) -> None:
        """Add the votes of many ballots: how many to each page, and when the last of them."""
        self.votes.update(votes)
        for page, at in reached.items():
            self._reach(page, at)

    def _reach(self, page: int, at: Span) -> None:
        before = self.reached.get(page)
        if before is None:
            self.reached[page] = at
        elif at.earliest > before.earliest or at.latest > before.latest:
            self.reached[page] = Span(
                max(before.earliest, at.earliest), max(before.latest, at.latest)
            )


def figures_of(outcomes: Iterable[Ballot | SetAside]) -> Figures:
    """The figures of all that became of a round's comments."""
    running = Running()
    for outcome in outcomes:
        running.add(outcome)
    return running.told()


@dataclass(slots=True)
class Running:
    """The figures of a count so far."""

    given: Given = field(default_factory=Given)
    ballots: int = 0
    ruled: int = 0
    left_out: int = 0
    causes: Counter[Cause] = field(default_factory=Counter)

    def add(self, outcome: Ballot | SetAside) -> None:
        """Add what became of one comment."""
        if isinstance(outcome, SetAside):
            self.causes[outcome.cause] += 1
            return
        self.ballots += 1
        self.ruled += outcome.ruled
        self.left_out += bool(outcome.left_out)
        self.given.add(outcome)

    def told(self) -> Figures:
        """The figures as a result holds them."""
        reached: Mapping[int, Span] = self.given.reached
        return Figures(
            self.ballots,
            self.ruled,
            self.left_out,
            tuple(sorted(self.causes.items())),
            tuple(sorted(reached.items())),
        )
