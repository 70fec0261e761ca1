"""What was forgotten on request

Revision ID: 0070
Revises: 0060
"""

import sqlalchemy as sa
from alembic import op

revision = "0070"
down_revision = "0060"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "forgotten_voters",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("digest", sa.String(), nullable=False),
        sa.Column("is_name", sa.Boolean(), nullable=False),
        sa.Column("name_alone", sa.Boolean(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["round_id"], ["rounds.id"], name=op.f("fk_forgotten_voters_round_id_rounds")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_forgotten_voters")),
        sa.UniqueConstraint(
            "round_id",
            "digest",
            "is_name",
            name=op.f("uq_forgotten_voters_round_id_digest_is_name"),
        ),
    )
    op.create_table(
        "forgotten_games",
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["game_id"], ["games.id"], name=op.f("fk_forgotten_games_game_id_games")
        ),
        sa.PrimaryKeyConstraint("game_id", name=op.f("pk_forgotten_games")),
    )
    op.create_table(
        "kept_guesses",
        sa.Column("comment_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("outcome", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(
            ["comment_id"], ["comments.id"], name=op.f("fk_kept_guesses_comment_id_comments")
        ),
        sa.PrimaryKeyConstraint("comment_id", "number", name=op.f("pk_kept_guesses")),
    )


def downgrade() -> None:
    op.drop_table("kept_guesses")
    op.drop_table("forgotten_games")
    op.drop_table("forgotten_voters")
