"""Tables of the mystery: noted aliases, the prize, announced winners, rulings on who was first."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import UniqueConstraint
from sqlmodel import Field

from service.store.columns import Row, UtcTime


class AliasNoteRow(Row, table=True):
    """An alias noted after the sealing. Secret but for its number, time and seal."""

    __tablename__ = "alias_notes"
    __table_args__ = (UniqueConstraint("game_id", "number"),)

    id: int | None = Field(default=None, primary_key=True)
    game_id: int = Field(foreign_key="games.id")
    number: int
    alias: str
    salt: bytes
    seal: str
    at: datetime = Field(sa_type=UtcTime)


class GuessPickRow(Row, table=True):
    """The host's ruling on who was first where times cannot tell. The last one holds."""

    __tablename__ = "guess_picks"

    id: int | None = Field(default=None, primary_key=True)
    game_id: int = Field(foreign_key="games.id", index=True)
    key: str
    reason: str
    at: datetime = Field(sa_type=UtcTime)


class PrizeRow(Row, table=True):
    """What a game offers to the first right guesser."""

    __tablename__ = "prizes"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    offer: str
    choose_from: str
    claim_days: int
    at: datetime = Field(sa_type=UtcTime)


class WinnerRow(Row, table=True):
    """A winner as announced, with the claim of the prize. Rows stay; the last one is the winner.

    `cause` says why there is this one: the first, put right, or the prize passed on. `claim_by` is
    empty where the game has no prize.
    """

    __tablename__ = "winners"
    __table_args__ = (UniqueConstraint("game_id", "number"),)

    id: int | None = Field(default=None, primary_key=True)
    game_id: int = Field(foreign_key="games.id")
    number: int
    key: str
    voter: str
    author: str
    written_earliest: datetime = Field(sa_type=UtcTime)
    written_latest: datetime = Field(sa_type=UtcTime)
    cause: str
    reason: str = ""
    announcement: str
    at: datetime = Field(sa_type=UtcTime)
    claim_by: datetime | None = Field(default=None, sa_type=UtcTime)
    asked_for: str = ""
    asked_at: datetime | None = Field(default=None, sa_type=UtcTime)
    sent_at: datetime | None = Field(default=None, sa_type=UtcTime)
    passed_on: datetime | None = Field(default=None, sa_type=UtcTime)
