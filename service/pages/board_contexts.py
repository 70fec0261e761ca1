"""What the board of a game shows. Nothing in here names a voter."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from service.pages.frame import Frame
from service.pages.pace_contexts import PaceOnBoard
from service.pages.rendering import Context
from service.pages.times import Closing, Moment


@dataclass(frozen=True, slots=True)
class PagesShown:
    """The pages in one state: its sign, "Stitched", "12 pages", "3, 11 to 14 and 22"."""

    sign: str
    swatch: Markup
    words: str
    many: str
    pages: str


@dataclass(frozen=True, slots=True)
class Example:
    """A comment as somebody may write it, and how it is read. `sign` names the outcome."""

    text: str
    sign: str
    read_as: str


@dataclass(frozen=True, slots=True)
class RoundNow:
    """The round that is open, or closed and not announced yet.

    `votes` are lines, empty while nobody voted; None while the counts are hidden. `until` says
    when it closes, where no time was announced.
    """

    number: int
    runoff_of: int | None
    is_open: bool
    opens: Moment | None
    closing: Closing | None
    choose: str
    why: str
    standing: str
    ties: str
    draw: str
    votes: tuple[str, ...] | None
    calendar: str
    examples: tuple[Example, ...]


@dataclass(frozen=True, slots=True)
class RevisionShown:
    """A result as it was announced, with its record to download."""

    number: int
    announced: Moment
    reason: str
    digest: str
    record: str


@dataclass(frozen=True, slots=True)
class PastRound:
    """An announced round: how it came out, every tie-break step, its records.

    `pictures` begins the addresses of its pictures; `has_days` says whether one is of the votes by
    day, which is drawn from the record.
    """

    number: int
    headline: str
    why: str
    counted: str
    votes: tuple[str, ...]
    steps: tuple[str, ...]
    draw: str
    revisions: tuple[RevisionShown, ...]
    pictures: str
    has_days: bool


@dataclass(frozen=True, slots=True)
class NoteShown:
    """A noted alias: when it was noted, and its seal."""

    number: int
    at: Moment
    seal: str


@dataclass(frozen=True, slots=True)
class RevealShown:
    """The revealed answer, and where all that checks its seal is."""

    at: Moment
    title: str
    designer: str
    aliases: tuple[str, ...]
    proof: str


@dataclass(frozen=True, slots=True)
class MysteryShown:
    """The seal and the guessing."""

    seal: str
    sealed: Moment | None
    notes: tuple[NoteShown, ...]
    guessing: str
    opens: Moment | None
    ends: Moment | None
    asked: str
    how_many: str
    offer: str
    choose_from: str
    winner_announced: Moment | None
    reveal: RevealShown | None


@dataclass(frozen=True, slots=True)
class BoardPage(Context):
    """The board of a game. `is_broad` says that its map is too broad for a phone."""

    template: ClassVar[str] = "board.html"

    frame: Frame
    name: str
    caption: str
    picture: Markup
    is_broad: bool
    states: tuple[PagesShown, ...]
    now: RoundNow | None
    past: tuple[PastRound, ...]
    mystery: MysteryShown
    pace: PaceOnBoard | None
    files: str


@dataclass(frozen=True, slots=True)
class PlainPage(Context):
    """The board to be laid over a video: the map, and what is open until when.

    `closes` is the closing in RFC 3339, empty where none was announced; `left` is how long that is
    from `now`, when the page was made. `theme` is that of the video's own colours.
    """

    template: ClassVar[str] = "plain.html"

    name: str
    caption: str
    picture: Markup
    theme: str
    closes: str
    now: str
    left: str
