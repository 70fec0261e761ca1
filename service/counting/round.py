"""A round's rules, the comments as settling needs them, and the host's rulings."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal, get_args

from service.ballots.reading import Reading
from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.sources import NO_SOURCES, NOTHING_TOLD, DrawInput, DrawRules

Standing = Literal["latest", "first"]
TieBreak = Literal[
    "most joined edges",
    "neighbours",
    "reached first",
    "runoff",
    "draw",
    "lowest number",
    "host's pick",
]
STANDINGS: tuple[Standing, ...] = get_args(Standing)
TIE_BREAKS: tuple[TieBreak, ...] = get_args(TieBreak)


@dataclass(frozen=True, slots=True)
class RoundRules:
    """What was announced before the voting; frozen when the round opens.

    `opens` and `closes` are aware instants; a comment written at `opens` counts, one written at
    `closes` is late. `closes` is None while the host has yet to close the round.
    `votable` are the pages this round may choose, `stitched` those stitched or in hand.
    """

    opens: datetime
    closes: datetime | None
    votable: frozenset[int]
    stitched: frozenset[int] = frozenset()
    choices: int = 1
    standing: Standing = "latest"
    tie_breaks: tuple[TieBreak, ...] = ("most joined edges", "reached first", "lowest number")
    #: How a draw is held, where the chain has one.
    draw: DrawRules = NO_SOURCES


@dataclass(frozen=True, slots=True)
class Ruling:
    """The host's decision on one comment. A later one follows it, none is overwritten.

    `pages` is empty for a ruling that the comment chooses nothing.
    `withdraws` says that it takes back the voter's earlier ballots.
    `in_time` set, with no pages and nothing withdrawn, rules the time alone: what the comment
    says stays as it was read, or as an earlier ruling has it. Of two rulings on the same question
    (what it says, whether it was in time) the later holds.
    """

    pages: tuple[int, ...]
    reason: str
    at: datetime
    withdraws: bool = False
    #: Decides for the host whether a comment whose time cannot be told was in time.
    in_time: bool | None = None


@dataclass(frozen=True, slots=True)
class ReadComment:
    """A comment with its reading: `key` is unique within the round, `voter` who wrote it.

    `written` is when these words were written, as far as the batches tell.
    `rulings` are the host's, oldest first; the last one holds.
    """

    key: str
    voter: str
    author: str
    written: Span
    reading: Reading
    is_host: bool = False
    rulings: tuple[Ruling, ...] = ()
    #: The words that were read; nothing is decided by them.
    text: str = ""


@dataclass(frozen=True, slots=True)
class Runoff:
    """What came of the runoff: a round of its own, in which only the tied pages were votable.

    `winner` is None where nobody voted in it. `votes` are its tally. `digest` is that of its
    record, where it has one.
    """

    round: int
    pages: tuple[int, ...]
    winner: int | None
    votes: tuple[tuple[int, int], ...] = ()
    digest: str = ""


@dataclass(frozen=True, slots=True)
class RoundInput:
    """Everything a result follows from; nothing else may change it."""

    chart: Chart
    rules: RoundRules
    comments: tuple[ReadComment, ...]
    #: The host's pick, where the chain ends in one: the page and the reason.
    host_pick: tuple[int, str] | None = None
    #: The runoff among the tied pages, once it is decided.
    runoff: Runoff | None = None
    #: What is known of the draw's sources.
    drawn: DrawInput = NOTHING_TOLD
    #: The round's public salt; None where the voters are told by their pseudonyms already.
    salt: bytes | None = None
