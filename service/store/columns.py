"""The kinds of column that both databases keep alike, and the parent of all rows."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from sqlalchemy import DateTime, MetaData
from sqlalchemy.engine import Dialect
from sqlalchemy.exc import IntegrityError
from sqlalchemy.types import TypeDecorator
from sqlmodel import Session, SQLModel

from service.errors import LoopstartError

# Named constraints can be changed later on both databases; unnamed ones cannot on SQLite.
_NAMES = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_N_name)s_%(referred_table_name)s",
    "pk": "pk_%(table_name)s",
}

metadata = MetaData(naming_convention=_NAMES)

#: The `info` of a table whose rows only pass: no backup and no move has them.
PASSING = {"passing": True}


class Row(SQLModel):
    """The parent of all rows: their tables share one metadata, apart from the library's own."""

    metadata = metadata


def id_of(row: Row) -> int:
    """The id of a row that has been kept; it has one from then on."""
    kept = getattr(row, "id", None)
    if not isinstance(kept, int):
        raise TypeError(f"a {type(row).__name__} was used before it was kept")
    return kept


def keep_new(session: Session, row: Row, taken: LoopstartError) -> None:
    """Keep a new row, or raise `taken` where the tables say that there is such a one.

    The tables decide, not a look beforehand: two requests at once may both look and see nothing.
    """
    session.add(row)
    try:
        session.flush()
    except IntegrityError:
        raise taken from None


class UtcTime(TypeDecorator[datetime]):
    """An instant, aware and in UTC on the way in and out.

    SQLite keeps no zone, so there the bare UTC time is stored; PostgreSQL gives its own
    connection's zone, which is turned back.
    """

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """To the database: UTC, without the zone where the database keeps none."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise TypeError("a time without its zone must not be stored")
        utc = value.astimezone(UTC)
        return utc.replace(tzinfo=None) if dialect.name == "sqlite" else utc

    def process_result_value(self, value: Any | None, dialect: Dialect) -> datetime | None:
        """From the database: aware and in UTC."""
        del dialect
        if value is None:
            return None
        if not isinstance(value, datetime):
            raise TypeError(f"the database gave {type(value).__name__} where a time belongs")
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)
