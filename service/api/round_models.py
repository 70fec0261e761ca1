"""Rounds in JSON: their rules, their state, the pages that may be chosen."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Any, Literal
from zoneinfo import ZoneInfo

from pydantic import Field

from service.api.draw_models import DrawOut, Sources
from service.api.shapes import In, MomentIn, Out, Page, Words, example, moment_or_none
from service.counting.round import Standing, TieBreak
from service.counting.sources import NOTHING_TOLD
from service.store.round_rules import DraftRules
from service.store.runoffs import RunoffTimes
from service.store.tables import GameRow, RoundRow
from service.store.words import opening

State = Literal["draft", "open", "closed", "announced"]

_Choices = Annotated[int, Field(description="How many pages one voter may choose.")]
_Previous = Annotated[
    int | None,
    Field(description="The page chosen last, where the game's own rounds and pages do not tell."),
]


class RoundChangeIn(In):
    """Other rules for a draft; what is left out stays as it was."""

    model_config = example({"closes": "2026-03-04T18:00", "choices": 1})

    opens: MomentIn | None = None
    closes: MomentIn | None = None
    choices: _Choices = 1
    standing: Standing = "latest"
    tie_breaks: list[TieBreak] = Field(
        default=["most joined edges", "reached first", "lowest number"],
        max_length=20,
        description="In the order to apply them; the last one must decide.",
    )
    previous: _Previous = None
    sources: Sources = Field(default=[])

    def to_rules(self, zone: ZoneInfo, before: DraftRules) -> DraftRules:
        """The rules, with those that were not sent as they were `before`.

        Raises:
            BadTime: a time that cannot be.
        """
        sent: dict[str, Any] = {name: getattr(self, name) for name in self.model_fields_set}
        for name in {"opens", "closes"} & sent.keys():
            sent[name] = moment_or_none(sent[name], zone)
        if "tie_breaks" in sent:
            sent["tie_breaks"] = tuple(sent["tie_breaks"])
        if "sources" in sent:
            sent["sources"] = tuple(source.to_source(zone) for source in sent["sources"])
        kept = {name: getattr(before, name) for name in before.__slots__}
        return DraftRules(**(kept | sent))


class RoundIn(RoundChangeIn):
    """A round to be drafted. All rules have a default; `opens` and `closes` may be left open."""

    model_config = example(
        {
            "opens": "2026-03-01T18:00",
            "closes": "2026-03-04T18:00",
            "choices": 1,
            "standing": "latest",
            "tie_breaks": ["most joined edges", "reached first", "lowest number"],
        }
    )


class RunoffIn(In):
    """When a runoff is held, and its draw's sources; its other rules follow from the first round."""

    model_config = example({"opens": "2026-03-05T18:00", "closes": "2026-03-06T18:00"})

    opens: MomentIn | None = None
    closes: MomentIn | None = None
    sources: Sources = Field(default=[])

    def to_times(self, zone: ZoneInfo) -> RunoffTimes:
        """The times, in the game's zone where no offset was given.

        Raises:
            BadTime: a time that cannot be.
        """
        return RunoffTimes(
            moment_or_none(self.opens, zone),
            moment_or_none(self.closes, zone),
            tuple(source.to_source(zone) for source in self.sources),
        )


class CloseIn(In):
    """When the voting ended, for a round without an announced closing; now if left out."""

    model_config = example({"at": "2026-03-04T18:00:00Z"})

    at: MomentIn | None = None


class AnnounceIn(In):
    """What becomes of the page formerly in hand: `stitched` unless it is said to stay in hand."""

    model_config = example({"page_in_hand": "stitched"})

    page_in_hand: Literal["stitched", "in hand"] = "stitched"


class PickIn(In):
    """The host's pick among the tied pages, with the reason for it."""

    model_config = example({"page": 31, "reason": "the most thread is left for it"})

    page: Page
    reason: Words


class RoundOut(Out):
    """A round with its rules. What is counted is told once it is announced."""

    model_config = example(
        {
            "game": "windy-island",
            "number": 2,
            "state": "open",
            "opens": "2026-03-05T18:00:00Z",
            "closes": "2026-03-08T18:00:00Z",
            "choices": 1,
            "standing": "latest",
            "tie_breaks": ["most joined edges", "reached first", "lowest number"],
            "previous": 12,
            "votable": [3, 11, 13, 21],
            "widened": False,
            "why": "The next page must share an edge with page 12, chosen last.",
            "winner": None,
            "runoff_of": None,
            "draw": None,
            "announcement": "The windy island's mystery, round 2: the vote is open.",
        }
    )

    game: str
    number: int
    state: State
    opens: datetime | None
    closes: datetime | None
    choices: int
    standing: Standing
    tie_breaks: list[TieBreak]
    previous: int | None
    votable: list[int] | None
    widened: bool
    why: str
    winner: int | None
    runoff_of: int | None = Field(description="The round whose tied pages are voted on again.")
    draw: DrawOut | None = Field(description="How a tie is drawn, where the chain has a draw.")
    announcement: str | None = Field(
        description="While the round is open: its opening in words, ready to paste."
    )

    @classmethod
    def of(cls, game: GameRow, row: RoundRow) -> RoundOut:
        """The row for JSON."""
        own = {"game", "winner", "previous", "announcement", "draw"}
        return cls(
            **row.model_dump(include=set(cls.model_fields) - own),
            game=game.slug,
            draw=DrawOut.of(row, NOTHING_TOLD) if "draw" in row.tie_breaks else None,
            announcement=opening(game, row) if row.state == "open" else None,
            previous=row.given_previous if row.state == "draft" else row.previous,
            winner=None if row.result is None else row.result["winner"],
        )


class VotableOut(Out):
    """The pages that a round lets voters choose, and why these."""

    model_config = example(
        {
            "pages": [3, 11, 13, 21],
            "widened": False,
            "why": "The next page must share an edge with page 12, chosen last.",
            "frozen": True,
        }
    )

    pages: list[int]
    widened: bool
    why: str
    frozen: bool = Field(description="Whether the round has been opened, so that they stay.")
