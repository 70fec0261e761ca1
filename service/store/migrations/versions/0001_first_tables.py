"""The first tables

Revision ID: 0001
Revises: nothing
"""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    _make_games()
    _make_tokens()
    _make_answers()
    _make_guess_rulings()
    _make_pages()
    _make_rounds()
    _make_batches()
    _make_picks()
    _make_comments()
    _make_rulings()
    _make_versions()


def downgrade() -> None:
    op.drop_table("versions")
    op.drop_index(op.f("ix_rulings_comment_id"), "rulings")
    op.drop_table("rulings")
    op.drop_table("comments")
    op.drop_index(op.f("ix_picks_round_id"), "picks")
    op.drop_table("picks")
    op.drop_table("batches")
    op.drop_index("uq_rounds_game_id_open", "rounds")
    op.drop_table("rounds")
    op.drop_table("pages")
    op.drop_index(op.f("ix_guess_rulings_game_id"), "guess_rulings")
    op.drop_table("guess_rulings")
    op.drop_table("answers")
    op.drop_table("tokens")
    op.drop_table("games")


def _make_games() -> None:
    op.create_table(
        "games",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("slug", sa.String(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.Column("chart", sa.JSON(), nullable=False),
        sa.Column("next_from", sa.String(), nullable=False),
        sa.Column("hosts", sa.JSON(), nullable=False),
        sa.Column("languages", sa.JSON(), nullable=False),
        sa.Column("wants", sa.String(), nullable=False),
        sa.Column("names_per_comment", sa.Integer(), nullable=False),
        sa.Column("guesses_open", sa.DateTime(timezone=True), nullable=True),
        sa.Column("guesses_close", sa.DateTime(timezone=True), nullable=True),
        sa.Column("seal", sa.String(), nullable=True),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.Column("changes", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_games")),
        sa.UniqueConstraint("slug", name=op.f("uq_games_slug")),
    )


def _make_tokens() -> None:
    op.create_table(
        "tokens",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("role", sa.String(), nullable=False),
        sa.Column("digest", sa.String(), nullable=False),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.CheckConstraint("role IN ('host', 'collector')", name=op.f("ck_tokens_role")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_tokens")),
        sa.UniqueConstraint("digest", name=op.f("uq_tokens_digest")),
        sa.UniqueConstraint("name", name=op.f("uq_tokens_name")),
    )


def _make_answers() -> None:
    op.create_table(
        "answers",
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("title", sa.String(), nullable=False),
        sa.Column("designer", sa.String(), nullable=False),
        sa.Column("aliases", sa.JSON(), nullable=False),
        sa.Column("salt", sa.LargeBinary(), nullable=False),
        sa.Column("sealed", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["game_id"], ["games.id"], name=op.f("fk_answers_game_id_games")),
        sa.PrimaryKeyConstraint("game_id", name=op.f("pk_answers")),
    )


def _make_guess_rulings() -> None:
    op.create_table(
        "guess_rulings",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("outcome", sa.String(), nullable=False),
        sa.Column("reason", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["game_id"], ["games.id"], name=op.f("fk_guess_rulings_game_id_games")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_guess_rulings")),
    )
    op.create_index(op.f("ix_guess_rulings_game_id"), "guess_rulings", ["game_id"])


def _make_pages() -> None:
    op.create_table(
        "pages",
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("page", sa.Integer(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("since", sa.DateTime(timezone=True), nullable=False),
        sa.CheckConstraint("state IN ('stitched', 'in hand')", name=op.f("ck_pages_state")),
        sa.ForeignKeyConstraint(["game_id"], ["games.id"], name=op.f("fk_pages_game_id_games")),
        sa.PrimaryKeyConstraint("game_id", "page", name=op.f("pk_pages")),
    )


def _make_rounds() -> None:
    op.create_table(
        "rounds",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("game_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("opens", sa.DateTime(timezone=True), nullable=True),
        sa.Column("closes", sa.DateTime(timezone=True), nullable=True),
        sa.Column("choices", sa.Integer(), nullable=False),
        sa.Column("standing", sa.String(), nullable=False),
        sa.Column("tie_breaks", sa.JSON(), nullable=False),
        sa.Column("given_previous", sa.Integer(), nullable=True),
        sa.Column("previous", sa.Integer(), nullable=True),
        sa.Column("votable", sa.JSON(), nullable=True),
        sa.Column("stitched", sa.JSON(), nullable=True),
        sa.Column("languages", sa.JSON(), nullable=True),
        sa.Column("widened", sa.Boolean(), nullable=False),
        sa.Column("why", sa.String(), nullable=False),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.Column("opened", sa.DateTime(timezone=True), nullable=True),
        sa.Column("closed", sa.DateTime(timezone=True), nullable=True),
        sa.Column("announced", sa.DateTime(timezone=True), nullable=True),
        sa.Column("result", sa.JSON(), nullable=True),
        sa.Column("changes", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "state IN ('draft', 'open', 'closed', 'announced')", name=op.f("ck_rounds_state")
        ),
        sa.ForeignKeyConstraint(["game_id"], ["games.id"], name=op.f("fk_rounds_game_id_games")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rounds")),
        sa.UniqueConstraint("game_id", "number", name=op.f("uq_rounds_game_id_number")),
    )
    op.create_index(
        "uq_rounds_game_id_open",
        "rounds",
        ["game_id"],
        unique=True,
        sqlite_where=sa.text("state = 'open'"),
        postgresql_where=sa.text("state = 'open'"),
    )


def _make_batches() -> None:
    op.create_table(
        "batches",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("digest", sa.String(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("format", sa.String(), nullable=False),
        sa.Column("mapping", sa.JSON(), nullable=False),
        sa.Column("notes", sa.JSON(), nullable=False),
        sa.Column("unreadable", sa.JSON(), nullable=False),
        sa.Column("new", sa.Integer(), nullable=False),
        sa.Column("edited", sa.Integer(), nullable=False),
        sa.Column("unchanged", sa.Integer(), nullable=False),
        sa.Column("size", sa.BigInteger(), nullable=False),
        sa.Column("copied_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("handed_in", sa.DateTime(timezone=True), nullable=False),
        sa.Column("handed_in_by", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(
            ["round_id"], ["rounds.id"], name=op.f("fk_batches_round_id_rounds")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_batches")),
        sa.UniqueConstraint("round_id", "digest", name=op.f("uq_batches_round_id_digest")),
        sa.UniqueConstraint("round_id", "number", name=op.f("uq_batches_round_id_number")),
    )


def _make_picks() -> None:
    op.create_table(
        "picks",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("page", sa.Integer(), nullable=False),
        sa.Column("reason", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["round_id"], ["rounds.id"], name=op.f("fk_picks_round_id_rounds")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_picks")),
    )
    op.create_index(op.f("ix_picks_round_id"), "picks", ["round_id"])


def _make_comments() -> None:
    op.create_table(
        "comments",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("batch_id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("author", sa.String(), nullable=False),
        sa.Column("author_id", sa.String(), nullable=True),
        sa.Column("source_id", sa.String(), nullable=True),
        sa.Column("reply_to", sa.String(), nullable=True),
        sa.Column("place", sa.String(), nullable=False),
        sa.Column("posted_earliest", sa.DateTime(timezone=True), nullable=False),
        sa.Column("posted_latest", sa.DateTime(timezone=True), nullable=False),
        sa.Column("edited_earliest", sa.DateTime(timezone=True), nullable=True),
        sa.Column("edited_latest", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["batch_id"], ["batches.id"], name=op.f("fk_comments_batch_id_batches")
        ),
        sa.ForeignKeyConstraint(
            ["round_id"], ["rounds.id"], name=op.f("fk_comments_round_id_rounds")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_comments")),
        sa.UniqueConstraint("round_id", "key", name=op.f("uq_comments_round_id_key")),
    )


def _make_rulings() -> None:
    op.create_table(
        "rulings",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("comment_id", sa.Integer(), nullable=False),
        sa.Column("pages", sa.JSON(), nullable=False),
        sa.Column("withdraws", sa.Boolean(), nullable=False),
        sa.Column("in_time", sa.Boolean(), nullable=True),
        sa.Column("reason", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["comment_id"], ["comments.id"], name=op.f("fk_rulings_comment_id_comments")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rulings")),
    )
    op.create_index(op.f("ix_rulings_comment_id"), "rulings", ["comment_id"])


def _make_versions() -> None:
    op.create_table(
        "versions",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("comment_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("written_earliest", sa.DateTime(timezone=True), nullable=False),
        sa.Column("written_latest", sa.DateTime(timezone=True), nullable=False),
        sa.Column("seen_earliest", sa.DateTime(timezone=True), nullable=True),
        sa.Column("seen_latest", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["comment_id"], ["comments.id"], name=op.f("fk_versions_comment_id_comments")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_versions")),
        sa.UniqueConstraint("comment_id", "number", name=op.f("uq_versions_comment_id_number")),
    )
