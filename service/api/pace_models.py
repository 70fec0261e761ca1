"""The stitch log and what the host says of the pace, in JSON."""

from __future__ import annotations

from datetime import date, datetime
from decimal import Decimal
from typing import Annotated, Any

from pydantic import AfterValidator, Field

from service.api.shapes import AnyDay, In, Out, Words, example, without_nul
from service.chart.stitches import MOST_ON_A_PAGE, PageTold
from service.errors import BadLog
from service.pace.entry import MOST_AT_ONCE, PERCENT, Details, Entry, How
from service.pace.rounds import MOST_DAYS, RoundPlan
from service.store.pace_plans import PacePlan, Shown
from service.store.stitch_log import entry_of
from service.store.tables_pace import LogEntryRow, PageStitchesRow

#: What is no whole number of a kind that can be is refused by the log itself, in its own sentence.
Count = Annotated[int, Field(ge=-MOST_AT_ONCE, le=10 * MOST_AT_ONCE)]
Note = Annotated[str, Field(max_length=500), AfterValidator(without_nul), AfterValidator(str.strip)]
# Strictly, JSON has no decimal numbers: one is made of what is written.
_Percent = Annotated[Decimal, Field(ge=-1000, le=1000, decimal_places=2, strict=False)]
Piece = Annotated[Words, AfterValidator(str.strip)]

_ENTRY = {"day": "2026-03-16", "how": "on the day", "page": 41, "stitches": 412}


class EntryIn(In):
    """An entry of the stitch log: of a page of the game, of another piece, or a rest."""

    model_config = example(_ENTRY)

    day: AnyDay = Field(description="The day, in the game's zone; of a rest its last day.")
    how: How = Field(
        default="on the day",
        description="What is told: stitches of that day, since the last entry, or of the page so "
        "far; how much of the page in percent; or a rest from `first` to `day`.",
    )
    page: int | None = None
    piece: Piece | None = Field(default=None, description="Another piece, by its name.")
    stitches: Count | None = None
    percent: _Percent | None = None
    first: AnyDay | None = Field(
        default=None, description="The first day that is told of, where the log does not say."
    )
    fractional: Count = Field(default=0, description="Fractional stitches, beside the crosses.")
    backstitch: Count = 0
    beads: Count = 0
    note: Note = Field(default="", description="For the host alone.")

    def to_entry(self, corrects: int | None = None) -> Entry:
        """The entry itself, not numbered yet.

        Raises:
            BadLog: neither stitches nor percent, or both, or not what `how` says.
        """
        wanted, other = (
            ("percent", "stitches") if self.how == "percent" else ("stitches", "percent")
        )
        details = Details(self.fractional, self.backstitch, self.beads)
        if getattr(self, other) is not None:
            raise BadLog(
                f"the entry of {self.day} tells {other} and is {self.how!r}",
                f"tell {wanted} instead",
            )
        amount = getattr(self, wanted)
        if amount is None and self.how != "rest" and not details.any:
            raise BadLog(f"the entry of {self.day} tells no {wanted}", "tell them, if only 0")
        return Entry(
            number=0,
            day=self.day,
            how=self.how,
            amount=int((amount or 0) * (PERCENT if self.how == "percent" else 1)),
            page=self.page,
            piece=self.piece or "",
            details=details,
            first=self.first,
            corrects=corrects,
            note=self.note,
        )


class EntriesIn(In):
    """Entries to be added, in the order of their days: all of them or none."""

    model_config = example({"entries": [_ENTRY, _ENTRY | {"day": "2026-03-17", "stitches": 305}]})

    entries: list[EntryIn] = Field(min_length=1, max_length=5000)


class CorrectionIn(In):
    """What is to stand in place of an entry; left out, nothing does: the entry is taken back."""

    model_config = example({"entry": _ENTRY | {"stitches": 421}})

    entry: EntryIn | None = None
    note: Note = Field(default="", description="Why it is taken back; for the host alone.")

    def to_entry(self, wrong: Entry) -> Entry:
        """The entry that corrects `wrong`."""
        if self.entry is not None:
            return self.entry.to_entry(wrong.number)
        return Entry(
            number=0,
            day=wrong.day,
            how=wrong.how,
            page=wrong.page,
            piece=wrong.piece,
            first=wrong.first,
            corrects=wrong.number,
            taken_back=True,
            note=self.note,
        )


class EntryOut(Out):
    """An entry as it was logged. `stands` says that no other corrects it or takes it back."""

    model_config = example(
        _ENTRY
        | {
            "number": 1,
            "piece": "",
            "percent": None,
            "first": None,
            "fractional": 0,
            "backstitch": 0,
            "beads": 0,
            "corrects": None,
            "taken_back": False,
            "note": "",
            "stands": True,
            "at": "2026-03-16T21:04:00Z",
        }
    )

    number: int
    day: date
    how: How
    page: int | None
    piece: str
    stitches: int | None
    percent: float | None
    first: date | None
    fractional: int
    backstitch: int
    beads: int
    corrects: int | None
    taken_back: bool
    note: str
    stands: bool
    at: datetime

    @classmethod
    def of(cls, row: LogEntryRow, *, stands: bool) -> EntryOut:
        """The entry for JSON."""
        entry = entry_of(row)
        is_percent = entry.how == "percent"
        kept: dict[str, Any] = row.model_dump(include=set(cls.model_fields))
        counted = not (entry.is_rest or entry.taken_back)
        return cls(
            **kept,
            stitches=entry.amount if counted and not is_percent else None,
            percent=entry.amount / PERCENT if counted and is_percent else None,
            stands=stands,
        )


class TakenInOut(Out):
    """What a table of the log brought: entries that are new, rows that were in the log already."""

    model_config = example({"new": 12, "known": 3})

    new: int
    known: int


class PageStitchesIn(In):
    """The stitches of a page, told by hand; what is left out is not told any more."""

    model_config = example({"crosses": 4100, "backstitch": 320})

    crosses: Count | None = None
    fractional: Count | None = None
    backstitch: Count | None = None
    beads: Count | None = None

    def to_told(self) -> PageTold:
        """What is told."""
        return PageTold(self.crosses, self.fractional, self.backstitch, self.beads)


class PageStitchesOut(Out):
    """The stitches of a page as told by hand."""

    model_config = example(
        {"page": 41, "crosses": 4100, "fractional": None, "backstitch": 320, "beads": None}
    )

    page: int
    crosses: int | None
    fractional: int | None
    backstitch: int | None
    beads: int | None

    @classmethod
    def of(cls, row: PageStitchesRow) -> PageStitchesOut:
        """The page for JSON."""
        return cls.model_validate(row.model_dump())


_PLAN = {"round_days": 2, "margin_days": 1, "every": 4900, "shows": ["page", "forecast"]}


class PlanIn(In):
    """How rounds are planned, the stitches of a page, and what everybody may see."""

    model_config = example(_PLAN)

    round_days: int = Field(default=2, ge=1, le=MOST_DAYS, description="Days a vote is open.")
    margin_days: int = Field(
        default=1, ge=0, le=MOST_DAYS, description="Days between a closing and the page's finish."
    )
    every: Annotated[int, Field(ge=1, le=MOST_ON_A_PAGE)] | None = Field(
        default=None,
        description="Stitches of every page of which neither a number nor the design's size tells.",
    )
    shows: list[Shown] = Field(
        default=[],
        max_length=20,
        description="What of the pace everybody may see; nothing at first.",
    )

    def to_plan(self) -> PacePlan:
        """The plan itself."""
        rounds = RoundPlan(self.round_days, self.margin_days)
        return PacePlan(rounds, self.every, tuple(dict.fromkeys(self.shows)))


class PlanOut(Out):
    """The plan as it is kept, with the pages of which stitches were told by hand."""

    model_config = example(_PLAN | {"pages": []})

    round_days: int
    margin_days: int
    every: int | None
    shows: list[Shown]
    pages: list[PageStitchesOut]
