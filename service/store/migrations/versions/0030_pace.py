"""The stitch log, stitches told by hand, and plans of the pace

Revision ID: 0030
Revises: 0020
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0030"
down_revision = "0020"
branch_labels = None
depends_on = None


def upgrade() -> None:
    _make_log_entries()
    _make_page_stitches()
    _make_pace_plans()


def downgrade() -> None:
    op.drop_table("pace_plans")
    op.drop_table("page_stitches")
    op.drop_table("log_entries")


def _text(name: str) -> sa.Column[Any]:
    return sa.Column(name, sa.String(), nullable=False)


def _whole(name: str, *, nullable: bool = False) -> sa.Column[Any]:
    return sa.Column(name, sa.Integer(), nullable=nullable)


def _of_game(table: str) -> sa.ForeignKeyConstraint:
    name = op.f(f"fk_{table}_game_id_games")
    return sa.ForeignKeyConstraint(["game_id"], ["games.id"], name=name)


def _make_log_entries() -> None:
    op.create_table(
        "log_entries",
        _whole("id"),
        _whole("game_id"),
        _whole("number"),
        sa.Column("day", sa.Date(), nullable=False),
        _text("how"),
        _whole("amount"),
        _whole("page", nullable=True),
        _text("piece"),
        _whole("fractional"),
        _whole("backstitch"),
        _whole("beads"),
        sa.Column("first", sa.Date(), nullable=True),
        _whole("corrects", nullable=True),
        sa.Column("taken_back", sa.Boolean(), nullable=False),
        _text("note"),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        _of_game("log_entries"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_log_entries")),
        sa.UniqueConstraint("game_id", "number", name=op.f("uq_log_entries_game_id_number")),
    )


def _make_page_stitches() -> None:
    op.create_table(
        "page_stitches",
        _whole("game_id"),
        _whole("page"),
        _whole("crosses", nullable=True),
        _whole("fractional", nullable=True),
        _whole("backstitch", nullable=True),
        _whole("beads", nullable=True),
        _of_game("page_stitches"),
        sa.PrimaryKeyConstraint("game_id", "page", name=op.f("pk_page_stitches")),
    )


def _make_pace_plans() -> None:
    op.create_table(
        "pace_plans",
        _whole("game_id"),
        _whole("every", nullable=True),
        _whole("round_days"),
        _whole("margin_days"),
        sa.Column("shows", sa.JSON(), nullable=False),
        _of_game("pace_plans"),
        sa.PrimaryKeyConstraint("game_id", name=op.f("pk_pace_plans")),
    )
