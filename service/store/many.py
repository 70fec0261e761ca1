"""Very many rows at once, in the way that is quickest in each database.

Times are handed over as the text that SQLite keeps of them; PostgreSQL's connections are set to
UTC (engine.py), so that there it means the same.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import islice
from types import MappingProxyType
from typing import Any, TypeVar

from sqlalchemy import Connection, text
from sqlmodel import Session

from service.comments.told import as_text, from_text

T = TypeVar("T")
#: How many rows are read or written at once.
AT_ONCE = 2000


def add_many(
    session: Session,
    table: str,
    columns: Sequence[str],
    rows: Sequence[tuple[Any, ...]],
    same: Mapping[str, int] = MappingProxyType({}),
) -> None:
    """Add rows of these columns to a table. The names come from the code, never from outside.

    `same` are columns that hold one number in all the rows. Without ids they are given the next.
    """
    if rows:
        session.flush()
        add_rows(session.connection(), table, columns, rows, same)


def add_rows(
    connection: Connection,
    table: str,
    columns: Sequence[str],
    rows: Sequence[tuple[Any, ...]],
    same: Mapping[str, int] = MappingProxyType({}),
) -> None:
    """The same on a connection; values as the driver takes them."""
    listed = ", ".join((*same, *columns))
    if connection.dialect.name == "sqlite":
        marks = ", ".join((*(str(int(one)) for one in same.values()), *("?" for _ in columns)))
        adding = f"INSERT INTO {table} ({listed}) VALUES ({marks})"  # noqa: S608 - as said above
        connection.exec_driver_sql(adding, list(rows))
        return
    driver: Any = connection.connection.driver_connection
    before = tuple(same.values())
    with driver.cursor() as cursor, cursor.copy(f"COPY {table} ({listed}) FROM STDIN") as copy:
        for row in rows:
            copy.write_row(before + row)


def next_ids(session: Session, table: str, many: int) -> Sequence[int]:
    """Ids for so many new rows, which no other transaction is given."""
    connection = session.connection()
    if connection.dialect.name == "sqlite":
        # The transaction that writes is the only one.
        last = connection.exec_driver_sql(f"SELECT max(id) FROM {table}").scalar()  # noqa: S608
        return range((last or 0) + 1, (last or 0) + 1 + many)
    given = text("SELECT nextval(pg_get_serial_sequence(:of, 'id')) FROM generate_series(1, :many)")
    return connection.execute(given, {"of": table, "many": many}).scalars().all()


def rows_of(session: Session, asked: str, given: Mapping[str, Any]) -> Iterator[Any]:
    """The rows of a query as the database gives them, never all at once in memory."""
    connection = session.connection()
    if connection.dialect.name == "sqlite":
        # The driver itself takes the same names, and gives rows in half the time.
        driver: Any = connection.connection.driver_connection
        yield from driver.execute(asked, given)
        return
    found = connection.execute(text(asked), given, execution_options={"yield_per": AT_ONCE})
    for part in found.partitions(AT_ONCE):
        yield from part


@dataclass(frozen=True, slots=True)
class InRound:
    """How a query asks for all comments of a round: `of` follows what is selected."""

    of: str
    given: dict[str, object]


def in_round(session: Session, round_id: int) -> InRound:
    """All comments of a round, as `c`, to be gone through in the order in which they are stored.

    SQLite would find each by its key instead, all over the file.
    """
    connection = session.connection()
    if connection.dialect.name != "sqlite":
        return InRound("FROM comments c WHERE c.round_id = :round", {"round": round_id})
    ends = "SELECT min(id), max(id) FROM comments WHERE round_id = :round"
    first, last = connection.execute(text(ends), {"round": round_id}).one()
    return InRound(
        "FROM comments c WHERE +c.round_id = :round AND c.id BETWEEN :first AND :last",
        {"round": round_id, "first": first or 0, "last": last or 0},
    )


#: A time, aware and in UTC, as text for a table.
as_kept = as_text


def as_time(kept: Any) -> datetime:
    """A time of a row that the database gave, aware and in UTC."""
    if isinstance(kept, str):
        return from_text(kept)
    if isinstance(kept, datetime):
        return kept.astimezone(UTC)
    raise TypeError(f"the database gave {type(kept).__name__} where a time belongs")


def in_parts(given: Iterable[T], size: int = AT_ONCE) -> Iterator[list[T]]:
    """What is given in lists of at most `size`."""
    left = iter(given)
    while part := list(islice(left, size)):
        yield part
