"""Tables of what passes: exports that wait to be handed in, and how far requests are.

Only where several processes may serve, on PostgreSQL, is anything in them. They are no part of a
backup or a move, and PostgreSQL writes nothing of them to its log (UNLOGGED): what waited is gone
after a crash, and no archive or replica ever has it.
"""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Field

from service.store.columns import PASSING, Row, UtcTime


class WaitingExportRow(Row, table=True):
    """An export that a host has sent and not yet handed in, for an hour at most.

    `digest` is the SHA-256 of the key that only its sender was told, `owner` the id of her session.
    """

    __tablename__ = "waiting_exports"
    __table_args__ = ({"info": PASSING},)

    id: int | None = Field(default=None, primary_key=True)
    digest: str = Field(unique=True)
    owner: int
    game_id: int = Field(foreign_key="games.id", index=True)
    name: str
    since: datetime = Field(sa_type=UtcTime, index=True)


class WaitingPieceRow(Row, table=True):
    """A piece of the bytes of an export that waits; `number` counts from 1."""

    __tablename__ = "waiting_pieces"
    __table_args__ = ({"info": PASSING},)

    export_id: int = Field(primary_key=True, foreign_key="waiting_exports.id", ondelete="CASCADE")
    number: int = Field(primary_key=True)
    content: bytes


class WatchedRow(Row, table=True):
    """How far a request is, under the name that its caller gave it, for an hour at most."""

    __tablename__ = "watched_requests"
    __table_args__ = ({"info": PASSING},)

    watch: str = Field(primary_key=True)
    step: str
    done: int
    total: int
    at: datetime = Field(sa_type=UtcTime)
