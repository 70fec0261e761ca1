"""What counting a round gives: the ballots, what was set aside and why, every step, the winner."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from service.comments.spans import Span
from service.counting.round import TieBreak

Cause = Literal[
    "the host's own",
    "before the opening",
    "after the closing",
    "cannot tell when",
    "chooses no page",
    "needs a look",
    "page not votable",
    "withdrawn",
    "another ballot stands",
]
CAUSES: tuple[Cause, ...] = get_args(Cause)

#: The causes that only the host can settle, by a ruling.
LOOKS: frozenset[Cause] = frozenset({"cannot tell when", "needs a look"})


@dataclass(frozen=True, slots=True)
class Ballot:
    """What one voter chose: the comment `key` that stands for the voter, and its pages.

    `pages` are votable, distinct, in the voter's order. `left_out` are pages that the same comment
    named beside them and that this round cannot choose. `ruled` says that a ruling decided.
    `since` holds the pages that the voter's vote was given to at another time than `written`: a
    voter who names a page again has voted for it since the first time, if nothing took it back
    between.
    """

    voter: str
    author: str
    key: str
    pages: tuple[int, ...]
    written: Span
    ruled: bool = False
    left_out: tuple[int, ...] = ()
    since: tuple[tuple[int, Span], ...] = ()

    def given(self, page: int) -> Span:
        """When the vote for `page` was given: when it was first named, else when written."""
        return dict(self.since).get(page, self.written)


@dataclass(frozen=True, slots=True)
class SetAside:
    """A comment that was read but not counted: the first cause that holds, and a sentence why.

    `pages` are those it named, or may have named where it needs a look.
    """

    key: str
    voter: str
    author: str
    cause: Cause
    why: str
    pages: tuple[int, ...] = ()

    @property
    def needs_look(self) -> bool:
        """Whether only the host can settle it, by a ruling."""
        return self.cause in LOOKS


@dataclass(frozen=True, slots=True)
class TieStep:
    """One rule applied to a tie: the pages it found tied, those it kept, and a sentence why.

    `values` tell for each tied page what the rule looked at, as text.
    """

    rule: TieBreak
    tied: tuple[int, ...]
    kept: tuple[int, ...]
    why: str
    values: tuple[tuple[int, str], ...] = ()
    #: Whether the rule waits for somebody's act; until then nothing follows it.
    waits: bool = False


@dataclass(frozen=True, slots=True)
class Figures:
    """How much a count holds, whether or not all of it is listed.

    `ruled` ballots were decided by a ruling, `left_out` ones named pages that could not be chosen
    as well. `set_aside` counts comments by cause. `reached` tells for each page with a vote when
    it had the last of them.
    """

    ballots: int
    ruled: int
    left_out: int
    set_aside: tuple[tuple[Cause, int], ...]
    reached: tuple[tuple[int, Span], ...]

    @property
    def comments(self) -> int:
        """Every comment once."""
        return self.ballots + sum(many for _, many in self.set_aside)

    @property
    def looks(self) -> int:
        """The comments that only the host can settle."""
        return sum(many for cause, many in self.set_aside if cause in LOOKS)


@dataclass(frozen=True, slots=True)
class Result:
    """A counted round with everything that led to it.

    `ballots` and `set_aside` together hold every comment once, oldest first; of a count that was
    to list only so many they hold the oldest of each, and `figures` tells how many there are.
    `tally` is page and votes, most votes first, then by page. `winner` is None while there is
    none: then `undecided` are the pages still tied, empty where nobody chose a page. `why` says it
    in a sentence.
    """

    ballots: tuple[Ballot, ...]
    set_aside: tuple[SetAside, ...]
    tally: tuple[tuple[int, int], ...]
    steps: tuple[TieStep, ...]
    winner: int | None
    undecided: tuple[int, ...]
    why: str
    figures: Figures

    @property
    def looks(self) -> tuple[SetAside, ...]:
        """The comments that only the host can settle, as far as they are listed."""
        return tuple(aside for aside in self.set_aside if aside.needs_look)

    def votes(self, page: int) -> int:
        """The votes of `page`."""
        return dict(self.tally).get(page, 0)
