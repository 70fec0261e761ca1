"""Tables of the ways into the desk: one-time links, sessions, the password. No secret is kept."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import JSON
from sqlmodel import Field

from service.store.columns import Row, UtcTime
from service.store.tables import one_of

WAYS_IN = ("link", "password")


class DeskSessionRow(Row, table=True):
    """A browser that is signed in to the desk; only the SHA-256 of what its cookie holds is kept.

    `way` says how it was signed in. `draft` is what the host has typed of a game that she is
    setting up; it may hold the answer, and is gone when the game is made.
    """

    __tablename__ = "desk_sessions"
    __table_args__ = (one_of("way", WAYS_IN),)

    id: int | None = Field(default=None, primary_key=True)
    digest: str = Field(unique=True)
    way: str
    began: datetime = Field(sa_type=UtcTime)
    ends: datetime = Field(sa_type=UtcTime)
    draft: dict[str, str] | None = Field(default=None, sa_type=JSON)


class DeskLinkRow(Row, table=True):
    """A link that signs in once; its row goes when it is used. Only the SHA-256 is kept."""

    __tablename__ = "desk_links"

    id: int | None = Field(default=None, primary_key=True)
    digest: str = Field(unique=True)
    made: datetime = Field(sa_type=UtcTime)
    ends: datetime = Field(sa_type=UtcTime)


class DeskPasswordRow(Row, table=True):
    """The desk's password, hashed, and how often it was tried since the last right one.

    There is one row at most, with id 1. `tried` counts the tries since `tried_since`.
    """

    __tablename__ = "desk_passwords"

    id: int | None = Field(default=None, primary_key=True)
    hash: str
    since: datetime = Field(sa_type=UtcTime)
    tried: int = 0
    tried_since: datetime = Field(sa_type=UtcTime)
