"""Comments and batches found without going through a whole round

Revision ID: 0110
Revises: 0100
"""

import hashlib

import sqlalchemy as sa
from alembic import op

revision = "0110"
down_revision = "0100"
branch_labels = None
depends_on = None

_COMMENTS, _BATCHES = "ix_comments_round_id_not_by_key", "ix_batches_round_id_complete"
_BY_HAND = "source_id IS NULL OR id_later"
_PART = 10_000


def upgrade() -> None:
    op.add_column(
        "comments", sa.Column("id_later", sa.Boolean(), server_default=sa.false(), nullable=False)
    )
    _mark_ids_told_later(op.get_bind())
    op.create_index(
        _COMMENTS,
        "comments",
        ["round_id"],
        sqlite_where=sa.text(_BY_HAND),
        postgresql_where=sa.text(_BY_HAND),
    )
    op.create_index(
        _BATCHES,
        "batches",
        ["round_id", "copied_at"],
        sqlite_where=sa.text("complete = 1"),
        postgresql_where=sa.text("complete"),
    )
    op.add_column(
        "rounds", sa.Column("handed_in", sa.Integer(), server_default="0", nullable=False)
    )


def _mark_ids_told_later(connection: sa.Connection) -> None:
    """Mark the comments whose key is not made of their id: it was not told at first."""
    comments = sa.table("comments", sa.column("id"), sa.column("key"), sa.column("source_id"))
    asked = sa.select(comments).where(comments.c.source_id.is_not(None))
    rows = connection.execute(asked, execution_options={"yield_per": _PART})
    later = [number for number, key, source_id in rows if key != _key_of(source_id)]
    mark = sa.text("UPDATE comments SET id_later = true WHERE id = :id")
    for start in range(0, len(later), _PART):
        connection.execute(mark, [{"id": number} for number in later[start : start + _PART]])


def _key_of(source_id: str) -> str:
    """As keys were made of ids when this was written."""
    told = f"id\0{source_id}".encode("utf-8", "surrogatepass")
    return "c" + hashlib.sha256(told).hexdigest()[:16]


def downgrade() -> None:
    op.drop_column("rounds", "handed_in")
    op.drop_index(_BATCHES, table_name="batches")
    op.drop_index(_COMMENTS, table_name="comments")
    op.drop_column("comments", "id_later")
