"""What a host has typed while she sets a game up

Revision ID: 0060
Revises: 0050
"""

import sqlalchemy as sa
from alembic import op

revision = "0060"
down_revision = "0050"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("desk_sessions", sa.Column("draft", sa.JSON(), nullable=True))


def downgrade() -> None:
    op.drop_column("desk_sessions", "draft")
