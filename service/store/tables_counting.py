"""Tables of what a count needs besides comments: draws, and the announced results."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, Text, UniqueConstraint
from sqlmodel import Field

from service.store.columns import Row, UtcTime


class DrawValueRow(Row, table=True):
    """A round's own value for a draw. Secret until it draws: apart, so no public read loads it."""

    __tablename__ = "draw_values"

    round_id: int = Field(primary_key=True, foreign_key="rounds.id")
    value: bytes


class DrawNumbersRow(Row, table=True):
    """What was told of a source of a draw. Rows are only added; the last of each place holds.

    `place` is that of the source in the rules, from 1. Without numbers it is left out for `reason`.
    """

    __tablename__ = "draw_numbers"

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id", index=True)
    place: int
    numbers: list[str] = Field(sa_type=JSON)
    reason: str
    at: datetime = Field(sa_type=UtcTime)


class RevisionRow(Row, table=True):
    """An announced result: never changed, only followed by another with its reason.

    `result` is for everybody. `record` is the text of the record, `digest` its SHA-256; both are
    missing for what was announced before records were kept.
    """

    __tablename__ = "revisions"
    __table_args__ = (UniqueConstraint("round_id", "number"),)

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id")
    number: int
    announced: datetime = Field(sa_type=UtcTime)
    reason: str | None = None
    result: dict[str, Any] = Field(sa_type=JSON)
    record: str | None = Field(default=None, sa_type=Text)
    digest: str | None = None
