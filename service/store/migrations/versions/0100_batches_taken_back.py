"""Batches that can be taken back

Revision ID: 0100
Revises: 0090
"""

import sqlalchemy as sa
from alembic import op

revision = "0100"
down_revision = "0090"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("batches", sa.Column("taken_back", sa.DateTime(timezone=True)))
    op.add_column(
        "batches", sa.Column("why_taken_back", sa.String(), server_default="", nullable=False)
    )


def downgrade() -> None:
    op.drop_column("batches", "why_taken_back")
    op.drop_column("batches", "taken_back")
