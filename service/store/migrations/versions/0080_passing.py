"""Exports that wait and how far requests are, for several processes that serve

Revision ID: 0080
Revises: 0070
"""

import sqlalchemy as sa
from alembic import op

revision = "0080"
down_revision = "0070"
branch_labels = None
depends_on = None


def upgrade() -> None:
    # What passes is written to no log of PostgreSQL's, so no archive and no replica has it.
    is_postgres = op.get_bind().dialect.name == "postgresql"
    unlogged = ["UNLOGGED"] if is_postgres else []
    op.create_table(
        "waiting_exports",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("digest", sa.String(), nullable=False),
        sa.Column("owner", sa.Integer(), nullable=False),
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("since", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["game_id"], ["games.id"], name=op.f("fk_waiting_exports_game_id_games")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_waiting_exports")),
        sa.UniqueConstraint("digest", name=op.f("uq_waiting_exports_digest")),
        prefixes=unlogged,
    )
    op.create_index(op.f("ix_waiting_exports_game_id"), "waiting_exports", ["game_id"])
    op.create_index(op.f("ix_waiting_exports_since"), "waiting_exports", ["since"])
    op.create_table(
        "waiting_pieces",
        sa.Column("export_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("content", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(
            ["export_id"],
            ["waiting_exports.id"],
            name=op.f("fk_waiting_pieces_export_id_waiting_exports"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("export_id", "number", name=op.f("pk_waiting_pieces")),
        prefixes=unlogged,
    )
    op.create_table(
        "watched_requests",
        sa.Column("watch", sa.String(), nullable=False),
        sa.Column("step", sa.String(), nullable=False),
        sa.Column("done", sa.Integer(), nullable=False),
        sa.Column("total", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("watch", name=op.f("pk_watched_requests")),
        prefixes=unlogged,
    )


def downgrade() -> None:
    op.drop_table("watched_requests")
    op.drop_table("waiting_pieces")
    op.drop_index(op.f("ix_waiting_exports_since"), table_name="waiting_exports")
    op.drop_index(op.f("ix_waiting_exports_game_id"), table_name="waiting_exports")
    op.drop_table("waiting_exports")
