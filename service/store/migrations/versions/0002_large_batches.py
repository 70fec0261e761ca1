"""Comments hold their newest words and how they read; batches tell more

Revision ID: 0002
Revises: 0001
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

from service.comments.versions import name_of

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

_TIME = sa.DateTime(timezone=True)


def upgrade() -> None:
    # Columns are only added, with a default: then no table need be made anew under its rows.
    empty, none = sa.text("''"), sa.text("0")
    _add("games", "columns", sa.JSON())
    _add("rounds", "read_by", sa.String())
    for name in ("unreadable_count", "gone"):
        _add("batches", name, sa.Integer(), none)
    for name in ("complete", "copied_told"):
        _add("batches", name, sa.Boolean(), sa.false())
    for name in ("first", "last", "last_sure"):
        _add("batches", name, _TIME)
    _add("versions", "reading", sa.String())
    _add("comments", "voter", sa.String(), empty)
    _add("comments", "seen_earliest", _TIME)
    _add("comments", "seen_latest", _TIME)
    _add("comments", "text", sa.String(), empty)
    _add("comments", "reading", sa.String())
    _add("comments", "speaks", sa.Boolean(), sa.true())
    _add("comments", "older", sa.Integer(), none)
    _count_unreadable()
    _move_newest_words()
    _tell_voters()


def _add(
    table: str,
    name: str,
    kind: sa.types.TypeEngine[Any],
    default: Any = None,
) -> None:
    op.add_column(table, sa.Column(name, kind, nullable=default is None, server_default=default))


def _count_unreadable() -> None:
    many = "json_array_length(unreadable)"  # both databases have it
    op.execute(f"UPDATE batches SET unreadable_count = {many}")  # noqa: S608 - no outside word


def _move_newest_words() -> None:
    newest = (
        "FROM versions WHERE versions.comment_id = comments.id "
        "ORDER BY versions.number DESC LIMIT 1"
    )
    op.execute(
        f"UPDATE comments SET text = (SELECT versions.text {newest}),"  # noqa: S608 - as above
        f" seen_earliest = (SELECT versions.seen_earliest {newest}),"
        f" seen_latest = (SELECT versions.seen_latest {newest}),"
        " older = (SELECT count(*) FROM versions WHERE versions.comment_id = comments.id) - 1"
    )
    op.execute(
        "DELETE FROM versions WHERE number > "
        "(SELECT older FROM comments WHERE comments.id = versions.comment_id)"
    )


def _tell_voters() -> None:
    connection = op.get_bind()
    found = connection.execute(sa.text("SELECT id, key, author, author_id FROM comments"))
    voters = [
        {"id": number, "voter": author_id or name_of(author) or f"unnamed {key}"}
        for number, key, author, author_id in found
    ]
    if voters:
        connection.execute(sa.text("UPDATE comments SET voter = :voter WHERE id = :id"), voters)


def downgrade() -> None:
    _put_words_back()
    for name in ("older", "speaks", "reading", "text", "seen_latest", "seen_earliest", "voter"):
        op.drop_column("comments", name)
    op.drop_column("versions", "reading")
    for name in (
        "last_sure",
        "last",
        "first",
        "copied_told",
        "complete",
        "gone",
        "unreadable_count",
    ):
        op.drop_column("batches", name)
    op.drop_column("rounds", "read_by")
    op.drop_column("games", "columns")


def _put_words_back() -> None:
    op.execute(
        "INSERT INTO versions (comment_id, number, text, written_earliest, written_latest,"
        " seen_earliest, seen_latest)"
        " SELECT comments.id, older + 1, text, coalesce(edited_earliest, posted_earliest),"
        " coalesce(edited_latest, posted_latest), coalesce(seen_earliest, batches.copied_at),"
        " coalesce(seen_latest, batches.copied_at)"
        " FROM comments JOIN batches ON batches.id = comments.batch_id"
    )
