"""The window of guesses, noted aliases, winners and the prize

Revision ID: 0020
Revises: 0010
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0020"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("games", sa.Column("guesses_per_voter", sa.Integer(), nullable=True))
    op.add_column("games", sa.Column("revealed", sa.DateTime(timezone=True), nullable=True))
    with op.batch_alter_table("guess_rulings") as table:
        table.alter_column("outcome", existing_type=sa.String(), nullable=True)
        table.add_column(sa.Column("in_time", sa.Boolean(), nullable=True))
    _make_alias_notes()
    _make_guess_picks()
    _make_prizes()
    _make_winners()


def downgrade() -> None:
    op.drop_table("winners")
    op.drop_table("prizes")
    op.drop_index(op.f("ix_guess_picks_game_id"), "guess_picks")
    op.drop_table("guess_picks")
    op.drop_table("alias_notes")
    op.execute("DELETE FROM guess_rulings WHERE outcome IS NULL")
    with op.batch_alter_table("guess_rulings") as table:
        table.drop_column("in_time")
        table.alter_column("outcome", existing_type=sa.String(), nullable=False)
    with op.batch_alter_table("games") as table:
        table.drop_column("revealed")
        table.drop_column("guesses_per_voter")


def _time(name: str, *, nullable: bool = False) -> sa.Column[Any]:
    return sa.Column(name, sa.DateTime(timezone=True), nullable=nullable)


def _text(name: str) -> sa.Column[Any]:
    return sa.Column(name, sa.String(), nullable=False)


def _whole(name: str) -> sa.Column[Any]:
    return sa.Column(name, sa.Integer(), nullable=False)


def _of_game(table: str) -> sa.ForeignKeyConstraint:
    name = op.f(f"fk_{table}_game_id_games")
    return sa.ForeignKeyConstraint(["game_id"], ["games.id"], name=name)


def _make_alias_notes() -> None:
    op.create_table(
        "alias_notes",
        _whole("id"),
        _whole("game_id"),
        _whole("number"),
        _text("alias"),
        sa.Column("salt", sa.LargeBinary(), nullable=False),
        _text("seal"),
        _time("at"),
        _of_game("alias_notes"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_alias_notes")),
        sa.UniqueConstraint("game_id", "number", name=op.f("uq_alias_notes_game_id_number")),
    )


def _make_guess_picks() -> None:
    op.create_table(
        "guess_picks",
        _whole("id"),
        _whole("game_id"),
        _text("key"),
        _text("reason"),
        _time("at"),
        _of_game("guess_picks"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_guess_picks")),
    )
    op.create_index(op.f("ix_guess_picks_game_id"), "guess_picks", ["game_id"])


def _make_prizes() -> None:
    op.create_table(
        "prizes",
        _whole("game_id"),
        _text("offer"),
        _text("choose_from"),
        _whole("claim_days"),
        _time("at"),
        _of_game("prizes"),
        sa.PrimaryKeyConstraint("game_id", name=op.f("pk_prizes")),
    )


def _make_winners() -> None:
    op.create_table(
        "winners",
        _whole("id"),
        _whole("game_id"),
        _whole("number"),
        _text("key"),
        _text("voter"),
        _text("author"),
        _time("written_earliest"),
        _time("written_latest"),
        _text("cause"),
        _text("reason"),
        _text("announcement"),
        _time("at"),
        _time("claim_by", nullable=True),
        _text("asked_for"),
        _time("asked_at", nullable=True),
        _time("sent_at", nullable=True),
        _time("passed_on", nullable=True),
        _of_game("winners"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_winners")),
        sa.UniqueConstraint("game_id", "number", name=op.f("uq_winners_game_id_number")),
    )
