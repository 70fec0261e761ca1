"""Tables of the pace: the stitch log, stitches told by hand, and what the host wants of it."""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field

from service.store.columns import Row, UtcTime


class LogEntryRow(Row, table=True):
    """An entry of the stitch log. Rows are only added; a later one may correct an earlier.

    `amount` counts stitches, or hundredths of a percent where `how` is percent.
    """

    __tablename__ = "log_entries"
    __table_args__ = (UniqueConstraint("game_id", "number"),)

    id: int | None = Field(default=None, primary_key=True)
    game_id: int = Field(foreign_key="games.id")
    number: int
    day: date
    how: str
    amount: int
    page: int | None = None
    piece: str
    fractional: int
    backstitch: int
    beads: int
    first: date | None = None
    corrects: int | None = None
    taken_back: bool
    note: str
    at: datetime = Field(sa_type=UtcTime)


class PageStitchesRow(Row, table=True):
    """The stitches of a page as the host told them; None is not told."""

    __tablename__ = "page_stitches"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    page: int = Field(primary_key=True)
    crosses: int | None = None
    fractional: int | None = None
    backstitch: int | None = None
    beads: int | None = None


class PacePlanRow(Row, table=True):
    """How a game's rounds are planned, and what of the pace everybody may see."""

    __tablename__ = "pace_plans"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    every: int | None = None
    round_days: int
    margin_days: int
    shows: list[str] = Field(sa_type=JSON)
