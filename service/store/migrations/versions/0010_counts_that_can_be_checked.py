"""Draws, runoffs, and announced results as revisions with their records

Revision ID: 0010
Revises: 0002
"""

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("rounds") as rounds:
        rounds.add_column(sa.Column("runoff_of", sa.Integer(), nullable=True))
        rounds.add_column(sa.Column("sources", sa.JSON(), nullable=True))
        rounds.add_column(sa.Column("commitment", sa.String(), nullable=True))
        rounds.add_column(sa.Column("hosts", sa.JSON(), nullable=True))
        rounds.add_column(sa.Column("salt", sa.String(), nullable=True))
    _make_draw_values()
    _make_draw_numbers()
    _make_revisions()
    # What was announced before is the first revision; records were not made then.
    op.execute(
        "INSERT INTO revisions (round_id, number, announced, reason, result, record, digest) "
        "SELECT id, 1, announced, NULL, result, NULL, NULL FROM rounds "
        "WHERE state = 'announced' AND announced IS NOT NULL AND result IS NOT NULL"
    )


def downgrade() -> None:
    op.drop_table("revisions")
    op.drop_index(op.f("ix_draw_numbers_round_id"), "draw_numbers")
    op.drop_table("draw_numbers")
    op.drop_table("draw_values")
    with op.batch_alter_table("rounds") as rounds:
        for name in ("salt", "hosts", "commitment", "sources", "runoff_of"):
            rounds.drop_column(name)


def _make_draw_values() -> None:
    op.create_table(
        "draw_values",
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("value", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(
            ["round_id"], ["rounds.id"], name=op.f("fk_draw_values_round_id_rounds")
        ),
        sa.PrimaryKeyConstraint("round_id", name=op.f("pk_draw_values")),
    )


def _make_draw_numbers() -> None:
    op.create_table(
        "draw_numbers",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("place", sa.Integer(), nullable=False),
        sa.Column("numbers", sa.JSON(), nullable=False),
        sa.Column("reason", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["round_id"], ["rounds.id"], name=op.f("fk_draw_numbers_round_id_rounds")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_draw_numbers")),
    )
    op.create_index(op.f("ix_draw_numbers_round_id"), "draw_numbers", ["round_id"])


def _make_revisions() -> None:
    op.create_table(
        "revisions",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("announced", sa.DateTime(timezone=True), nullable=False),
        sa.Column("reason", sa.String(), nullable=True),
        sa.Column("result", sa.JSON(), nullable=False),
        sa.Column("record", sa.Text(), nullable=True),
        sa.Column("digest", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(
            ["round_id"], ["rounds.id"], name=op.f("fk_revisions_round_id_rounds")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_revisions")),
        sa.UniqueConstraint("round_id", "number", name=op.f("uq_revisions_round_id_number")),
    )
