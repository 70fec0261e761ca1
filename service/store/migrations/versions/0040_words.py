"""How a game is announced, and the host's own templates

Revision ID: 0040
Revises: 0020
"""

import sqlalchemy as sa
from alembic import op

revision = "0040"
down_revision = "0020"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "announcing",
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("zones", sa.JSON(), nullable=False),
        sa.Column("locale", sa.String(), nullable=False),
        sa.Column("most_characters", sa.Integer(), nullable=True),
        sa.Column("counts_while_open", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["game_id"], ["games.id"], name=op.f("fk_announcing_game_id_games")
        ),
        sa.PrimaryKeyConstraint("game_id", name=op.f("pk_announcing")),
    )
    op.create_table(
        "templates",
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("occasion", sa.String(), nullable=False),
        sa.Column("length", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["game_id"], ["games.id"], name=op.f("fk_templates_game_id_games")),
        sa.PrimaryKeyConstraint("game_id", "occasion", "length", name=op.f("pk_templates")),
    )


def downgrade() -> None:
    op.drop_table("templates")
    op.drop_table("announcing")
