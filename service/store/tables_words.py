"""Tables of what a host says about announcing: zones, lengths, her own templates."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import JSON
from sqlmodel import Field

from service.store.columns import Row, UtcTime


class AnnouncingRow(Row, table=True):
    """How a game is announced; a game without such a row is announced as one is from the start.

    `zones` are further zones that times are told in, `locale` names days and numbers in the host's
    own templates, `most_characters` is the longest text that her place of writing takes.
    `counts_while_open` shows the votes to everybody while a round is open.
    """

    __tablename__ = "announcing"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    zones: list[str] = Field(sa_type=JSON)
    locale: str
    most_characters: int | None = None
    counts_while_open: bool = False


class TemplateRow(Row, table=True):
    """A host's own template for an occasion, in full or short."""

    __tablename__ = "templates"

    game_id: int = Field(primary_key=True, foreign_key="games.id")
    occasion: str = Field(primary_key=True)
    length: str = Field(primary_key=True)
    text: str
    at: datetime = Field(sa_type=UtcTime)
