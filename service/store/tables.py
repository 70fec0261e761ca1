"""Tables of what the host sets up: tokens, games, their sealed answers, pages and rounds."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, CheckConstraint, Index, UniqueConstraint, text
from sqlmodel import Field

from service.store.columns import Row, UtcTime

TOKEN_ROLES = ("host", "collector")
PAGE_STATES = ("stitched", "in hand")
ROUND_STATES = ("draft", "open", "closed", "announced")


def one_of(column: str, values: tuple[str, ...]) -> CheckConstraint:
    """The constraint that a column holds one of these values."""
    listed = ", ".join(f"'{value}'" for value in values)
    return CheckConstraint(f"{column} IN ({listed})", name=column)


class TokenRow(Row, table=True):
    """A token that opens the API; only its SHA-256 is kept."""

    __tablename__ = "tokens"
    __table_args__ = (one_of("role", TOKEN_ROLES),)

    id: int | None = Field(default=None, primary_key=True)
    name: str = Field(unique=True)
    role: str
    digest: str = Field(unique=True)
    created: datetime = Field(sa_type=UtcTime)


class GameRow(Row, table=True):
    """A game: its chart, its rules and what is public of its mystery.

    `hosts` are the names and author ids the host herself comments under. `columns` are the columns
    that were last named for an export, by their meanings. `changes` counts the changes of state; a
    transaction that raises it first has the game for itself.
    """

    __tablename__ = "games"

    id: int | None = Field(default=None, primary_key=True)
    slug: str = Field(unique=True)
    name: str
    zone: str
    chart: dict[str, Any] = Field(sa_type=JSON)
    next_from: str
    hosts: list[str] = Field(sa_type=JSON)
    languages: list[str] = Field(sa_type=JSON)
    columns: dict[str, str] | None = Field(default=None, sa_type=JSON)
    wants: str
    names_per_comment: int
    guesses_per_voter: int | None = None
    guesses_open: datetime | None = Field(default=None, sa_type=UtcTime)
    guesses_close: datetime | None = Field(default=None, sa_type=UtcTime)
    seal: str | None = None
    revealed: datetime | None = Field(default=None, sa_type=UtcTime)
    created: datetime = Field(sa_type=UtcTime)
    changes: int = 0


class AnswerRow(Row, table=True):
    """The sealed answer of a game. Secret: apart from the game, so no public read loads it."""

    __tablename__ = "answers"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    title: str
    designer: str
    aliases: list[str] = Field(sa_type=JSON)
    salt: bytes
    sealed: datetime = Field(sa_type=UtcTime)


class PageRow(Row, table=True):
    """A page that is stitched or in hand; an unstitched page has no row."""

    __tablename__ = "pages"
    __table_args__ = (one_of("state", PAGE_STATES),)

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    page: int = Field(primary_key=True)
    state: str
    since: datetime = Field(sa_type=UtcTime)


class RoundRow(Row, table=True):
    """A round: its rules, what was frozen when it opened, and its announced result.

    `given_previous` is the page that the host named as chosen last; `previous`, `votable`,
    `stitched`, `languages` and the words about the votable pages are frozen at the opening.
    `runoff_of` is the number of the round whose tied pages are voted on again. `sources` are those
    of the draw, `commitment` and the public `salt` are made at the opening, when `hosts`, the
    host's own names, are frozen too. `result` is that of the newest revision.
    `read_by` names the reader and the question that the readings of its comments are of.
    `changes` counts the changes; a transaction that raises it first has the round for itself.
    `handed_in` counts those of them that only handed comments in.
    """

    __tablename__ = "rounds"
    __table_args__ = (
        UniqueConstraint("game_id", "number"),
        one_of("state", ROUND_STATES),
        # Whatever the code above does: a game never has two rounds open.
        Index(
            "uq_rounds_game_id_open",
            "game_id",
            unique=True,
            sqlite_where=text("state = 'open'"),
            postgresql_where=text("state = 'open'"),
        ),
    )

    id: int | None = Field(default=None, primary_key=True)
    game_id: int = Field(foreign_key="games.id")
    number: int
    state: str = "draft"
    opens: datetime | None = Field(default=None, sa_type=UtcTime)
    closes: datetime | None = Field(default=None, sa_type=UtcTime)
    choices: int
    standing: str
    tie_breaks: list[str] = Field(sa_type=JSON)
    given_previous: int | None = None
    previous: int | None = None
    votable: list[int] | None = Field(default=None, sa_type=JSON)
    stitched: list[int] | None = Field(default=None, sa_type=JSON)
    languages: list[str] | None = Field(default=None, sa_type=JSON)
    widened: bool = False
    why: str = ""
    created: datetime = Field(sa_type=UtcTime)
    opened: datetime | None = Field(default=None, sa_type=UtcTime)
    closed: datetime | None = Field(default=None, sa_type=UtcTime)
    announced: datetime | None = Field(default=None, sa_type=UtcTime)
    result: dict[str, Any] | None = Field(default=None, sa_type=JSON)
    read_by: str | None = None
    changes: int = 0
    handed_in: int = Field(default=0, sa_column_kwargs={"server_default": text("0")})
    runoff_of: int | None = None
    sources: list[dict[str, Any]] | None = Field(default=None, sa_type=JSON)
    commitment: str | None = None
    hosts: list[str] | None = Field(default=None, sa_type=JSON)
    salt: str | None = None
