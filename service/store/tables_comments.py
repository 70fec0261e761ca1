"""Tables of what was handed in and what the host ruled: no words and no ruling are ever lost."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import JSON, BigInteger, Index, UniqueConstraint, false, text, true
from sqlmodel import Field

from service.store.columns import Row, UtcTime

#: What rows have that were kept before there was such a column.
EMPTY, NONE = text("''"), text("0")
#: Of comments that cannot be found by the key that their id makes.
NOT_BY_KEY = "(source_id IS NULL OR id_later)"


class BatchRow(Row, table=True):
    """One import: what it held, and the digest by which the same bytes are known again.

    `unreadable` lists the first of what could not be read, `unreadable_count` tells how much it
    was. `complete` is the host's word that it shows every comment there was when it was copied;
    `gone` are those that it shows to have been deleted. `first` and `last` are the ends of the
    time that its comments cover, at `last_sure` or later its last one was surely written;
    `copied_told` says that the time of copying is the host's. One that was taken back has no
    comments and says nothing any more; it stays so that it can be seen that it was.
    """

    __tablename__ = "batches"
    __table_args__ = (
        UniqueConstraint("round_id", "digest"),
        UniqueConstraint("round_id", "number"),
        # Where comments come one by one a round has very many batches, of which few are complete.
        Index(
            "ix_batches_round_id_complete",
            "round_id",
            "copied_at",
            sqlite_where=text("complete = 1"),
            postgresql_where=text("complete"),
        ),
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
    unreadable_count: int = Field(sa_column_kwargs={"server_default": NONE})
    new: int
    edited: int
    unchanged: int
    gone: int = Field(sa_column_kwargs={"server_default": NONE})
    complete: bool = Field(sa_column_kwargs={"server_default": false()})
    size: int = Field(sa_type=BigInteger)
    first: datetime | None = Field(default=None, sa_type=UtcTime)
    last: datetime | None = Field(default=None, sa_type=UtcTime)
    last_sure: datetime | None = Field(default=None, sa_type=UtcTime)
    copied_at: datetime = Field(sa_type=UtcTime)
    copied_told: bool = Field(sa_column_kwargs={"server_default": false()})
    handed_in: datetime = Field(sa_type=UtcTime)
    handed_in_by: str
    taken_back: datetime | None = Field(default=None, sa_type=UtcTime)
    why_taken_back: str = Field(default="", sa_column_kwargs={"server_default": EMPTY})


class CommentRow(Row, table=True):
    """One comment of a round: who, when, the batch it first came in, and its newest words.

    Without an edit its words were written when it was posted. `seen` are the first and the last
    copying of a batch that showed them; without it only its first batch did. `older` counts the
    words that it had before, in `versions`. `voter` is who wrote it, as ballots are settled.
    `reading` keeps how the newest words read as a vote (readings_kept.py); `speaks` is false where
    that is nothing at all and there are no older words: such a comment decides nothing. `id_later`
    where the key was not made of the id: that was told later, or the key is another's.
    """

    __tablename__ = "comments"
    __table_args__ = (
        UniqueConstraint("round_id", "key"),
        # What must be looked at where the others are found by their keys: mostly nothing.
        Index(
            "ix_comments_round_id_not_by_key",
            "round_id",
            sqlite_where=text(NOT_BY_KEY),
            postgresql_where=text(NOT_BY_KEY),
        ),
    )

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id")
    batch_id: int = Field(foreign_key="batches.id")
    key: str
    voter: str = Field(sa_column_kwargs={"server_default": EMPTY})
    author: str
    author_id: str | None = None
    source_id: str | None = None
    reply_to: str | None = None
    place: str = ""
    posted_earliest: datetime = Field(sa_type=UtcTime)
    posted_latest: datetime = Field(sa_type=UtcTime)
    edited_earliest: datetime | None = Field(default=None, sa_type=UtcTime)
    edited_latest: datetime | None = Field(default=None, sa_type=UtcTime)
    seen_earliest: datetime | None = Field(default=None, sa_type=UtcTime)
    seen_latest: datetime | None = Field(default=None, sa_type=UtcTime)
    text: str = Field(sa_column_kwargs={"server_default": EMPTY})
    reading: str | None = None
    speaks: bool = Field(sa_column_kwargs={"server_default": true()})
    older: int = Field(default=0, sa_column_kwargs={"server_default": NONE})
    id_later: bool = Field(default=False, sa_column_kwargs={"server_default": false()})


class VersionRow(Row, table=True):
    """Words that a comment had before its newest: since when they stood, when batches showed them.

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
    reading: str | None = None


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
