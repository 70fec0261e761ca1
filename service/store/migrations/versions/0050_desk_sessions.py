"""Ways into the desk: one-time links, sessions, a password

Revision ID: 0050
Revises: 0040
"""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0050"
down_revision = "0040"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "desk_sessions",
        _whole("id"),
        _text("digest"),
        _text("way"),
        _time("began"),
        _time("ends"),
        sa.CheckConstraint("way IN ('link', 'password')", name=op.f("ck_desk_sessions_way")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_desk_sessions")),
        sa.UniqueConstraint("digest", name=op.f("uq_desk_sessions_digest")),
    )
    op.create_table(
        "desk_links",
        _whole("id"),
        _text("digest"),
        _time("made"),
        _time("ends"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_desk_links")),
        sa.UniqueConstraint("digest", name=op.f("uq_desk_links_digest")),
    )
    op.create_table(
        "desk_passwords",
        _whole("id"),
        _text("hash"),
        _time("since"),
        _whole("tried"),
        _time("tried_since"),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_desk_passwords")),
    )


def downgrade() -> None:
    op.drop_table("desk_passwords")
    op.drop_table("desk_links")
    op.drop_table("desk_sessions")


def _time(name: str) -> sa.Column[Any]:
    return sa.Column(name, sa.DateTime(timezone=True), nullable=False)


def _text(name: str) -> sa.Column[Any]:
    return sa.Column(name, sa.String(), nullable=False)


def _whole(name: str) -> sa.Column[Any]:
    return sa.Column(name, sa.Integer(), nullable=False)
