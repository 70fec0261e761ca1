"""Tables of what was forgotten on request: enough to count as before and to keep it forgotten."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import UniqueConstraint
from sqlmodel import Field

from service.store.columns import Row, UtcTime


class ForgottenVoterRow(Row, table=True):
    """A voter whose comments a round does not take in again, by id or name under a pseudonym.

    `is_name` says that it is a name's; such a comment may be somebody else's who has an id, unless
    the voter was only ever known by name (`name_alone`).
    """

    __tablename__ = "forgotten_voters"
    __table_args__ = (UniqueConstraint("round_id", "digest", "is_name"),)

    id: int | None = Field(default=None, primary_key=True)
    round_id: int = Field(foreign_key="rounds.id")
    digest: str
    is_name: bool
    name_alone: bool
    at: datetime = Field(sa_type=UtcTime)


class ForgottenGameRow(Row, table=True):
    """A game whose comments were all forgotten; it takes none any more."""

    __tablename__ = "forgotten_games"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    at: datetime = Field(sa_type=UtcTime)


class KeptGuessRow(Row, table=True):
    """How forgotten words were read as a guess, where they were one. Secret as the answer is.

    `number` counts a comment's words from 1, oldest first.
    """

    __tablename__ = "kept_guesses"

    comment_id: int = Field(primary_key=True, foreign_key="comments.id")
    number: int = Field(primary_key=True)
    outcome: str
