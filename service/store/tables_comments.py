"""Tables of what was handed in and what the host ruled: no words and no ruling are ever lost."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import JSON, BigInteger, UniqueConstraint
from sqlmodel import Field

from service.store.columns import Row, UtcTime


class BatchRow(Row, table=True):
    """One import: what it held, and the digest by which the same bytes are known again."""

    __tablename__ = "batches"
    __table_args__ = (
        UniqueConstraint("round_id", "digest"),
        UniqueConstraint("round_id", "number"),
    )

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id")
    number: int
    digest: str
    name: str
    format: str
    mapping: dict[str, str] = Field(sa_type=JSON)
    notes: list[str] = Field(sa_type=JSON)
    unreadable: list[dict[str, str]] = Field(sa_type=JSON)
    new: int
    edited: int
    unchanged: int
    size: int = Field(sa_type=BigInteger)
    copied_at: datetime = Field(sa_type=UtcTime)
    handed_in: datetime = Field(sa_type=UtcTime)
    handed_in_by: str


class CommentRow(Row, table=True):
    """One comment of a round: who, when, and the batch it first came in.

    Its words stand in its versions.
    """

    __tablename__ = "comments"
    __table_args__ = (UniqueConstraint("round_id", "key"),)

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id")
    batch_id: int = Field(foreign_key="batches.id")
    key: str
    author: str
    author_id: str | None = None
    source_id: str | None = None
    reply_to: str | None = None
    place: str = ""
    posted_earliest: datetime = Field(sa_type=UtcTime)
    posted_latest: datetime = Field(sa_type=UtcTime)
    edited_earliest: datetime | None = Field(default=None, sa_type=UtcTime)
    edited_latest: datetime | None = Field(default=None, sa_type=UtcTime)


class VersionRow(Row, table=True):
    """The words of a comment, since when they stand and when batches showed them.

    `number` counts from 1, oldest first.
    """

    __tablename__ = "versions"
    __table_args__ = (UniqueConstraint("comment_id", "number"),)

    id: int | None = Field(default=None, primary_key=True)
    comment_id: int = Field(foreign_key="comments.id")
    number: int
    text: str
    written_earliest: datetime = Field(sa_type=UtcTime)
    written_latest: datetime = Field(sa_type=UtcTime)
    seen_earliest: datetime | None = Field(default=None, sa_type=UtcTime)
    seen_latest: datetime | None = Field(default=None, sa_type=UtcTime)


class RulingRow(Row, table=True):
    """The host's ruling on a comment as a vote. Rows are only added; the last one holds."""

    __tablename__ = "rulings"

    id: int | None = Field(default=None, primary_key=True)
    comment_id: int = Field(foreign_key="comments.id", index=True)
    pages: list[int] = Field(sa_type=JSON)
    withdraws: bool = False
    in_time: bool | None = None
    reason: str
    at: datetime = Field(sa_type=UtcTime)


class GuessRulingRow(Row, table=True):
    """The host's ruling on a comment as a guess. Rows are only added; the last one holds."""

    __tablename__ = "guess_rulings"

    id: int | None = Field(default=None, primary_key=True)
    game_id: int = Field(foreign_key="games.id", index=True)
    key: str
    outcome: str | None = None
    in_time: bool | None = None
    reason: str
    at: datetime = Field(sa_type=UtcTime)


class PickRow(Row, table=True):
    """The host's pick among tied pages. Rows are only added; the last one holds."""

    __tablename__ = "picks"

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id", index=True)
    page: int
    reason: str
    at: datetime = Field(sa_type=UtcTime)
