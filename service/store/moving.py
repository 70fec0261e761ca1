"""Everything of one database copied into another one, whatever kinds the two are.

The target is written in one transaction that ends only when the digests of all tables agree:
whatever happens before, it stays empty.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Table, func, inspect, select, text
from sqlalchemy.exc import DatabaseError

from service.errors import BadSetting
from service.settings import Settings
from service.store.database import Database
from service.store.digests import TableDigest, check_same, digests_of, rows_in
from service.store.engine import make_engine
from service.store.every_table import kept_tables, metadata
from service.store.many import add_rows, as_kept, in_parts
from service.store.upgrade import cannot_be_opened, make_folder, upgrade_on

#: Is told the table that is being copied and how many of its rows are done.
Tell = Callable[[str, int], None]
#: What Alembic notes the tables' version in.
_OF_MIGRATIONS = "alembic_version"


def move(source: Settings, target: Settings, tell: Tell) -> tuple[TableDigest, ...]:
    """Copy one moment of the source into the target, which is empty; the digests of both.

    Raises:
        BadSetting: the source is not of this version, both are one, or the target is not empty or
            cannot be written.
        CopyDiffers: what was written is not what was read; then nothing is kept.
    """
    if source.database == target.database:
        raise BadSetting(
            "DATABASE_URL", "both names are those of one database", "name another one with --to"
        )
    database = Database(source)
    try:
        with readable(), database.reading() as session, _filling(target) as connection:
            copied = copy_all(session.connection(), connection, tell)
    finally:
        database.dispose()
    return copied


@contextmanager
def readable() -> Iterator[None]:
    """Tells in one sentence of a database that cannot be read to its end.

    Raises:
        BadSetting: it does not answer any more, or its file is broken.
    """
    try:
        yield
    except DatabaseError as error:
        reason = " ".join(str(error.orig).split())
        raise BadSetting(
            "DATABASE_URL",
            f"the database that is to be copied cannot be read ({reason})",
            "check that it runs, and go back to a backup if its file is broken",
        ) from error


def copy_all(source: Connection, target: Connection, tell: Tell) -> tuple[TableDigest, ...]:
    """Copy all tables between two transactions and compare the digests.

    Raises:
        BadSetting: the target is not empty, or the source cannot be read.
        CopyDiffers: what was written is not what was read.
    """
    upgrade_on(target)
    _check_empty(target)
    for table in kept_tables():
        _copy(table, source, target, tell)
        _count_on(table, target)
    with readable():
        of = digests_of(source)
    check_same(of, digests_of(target))
    return of


def _copy(table: Table, source: Connection, target: Connection, tell: Tell) -> None:
    names = [target.dialect.identifier_preparer.quote(column.name) for column in table.columns]
    of_sqlite, done = target.dialect.name == "sqlite", 0
    for part in in_parts(_read(source, table)):
        rows = [tuple(map(_for_sqlite, row)) for row in part] if of_sqlite else part
        add_rows(target, table.name, names, rows)
        done += len(rows)
        tell(table.name, done)


def _read(source: Connection, table: Table) -> Iterator[tuple[Any, ...]]:
    # Here, so that it is not taken for the target's trouble.
    with readable():
        yield from rows_in(source, table)


def _for_sqlite(value: Any) -> Any:
    return as_kept(value) if isinstance(value, datetime) else value


def _count_on(table: Table, target: Connection) -> None:
    """Have PostgreSQL give ids after those that were copied; SQLite looks for itself."""
    column = table.autoincrement_column
    if column is None or target.dialect.name != "postgresql":
        return
    of = {"table": table.name, "column": column.name}
    sequence = target.execute(text("SELECT pg_get_serial_sequence(:table, :column)"), of).scalar()
    if sequence is None:
        return
    last = target.execute(select(func.max(column))).scalar()
    target.execute(select(func.setval(sequence, last or 1, last is not None)))


def _check_empty(target: Connection) -> None:
    foreign = set(inspect(target).get_table_names()) - set(metadata.tables) - {_OF_MIGRATIONS}
    filled = [
        table.name
        for table in kept_tables()
        if target.execute(select(table.columns[0]).limit(1)).first() is not None
    ]
    if foreign or filled:
        found = ", ".join([*filled, *sorted(foreign)])
        raise BadSetting(
            "DATABASE_URL",
            f"the database to copy into is not empty (it has {found})",
            "name a new file, or a PostgreSQL database that was just made",
        )


@contextmanager
def _filling(target: Settings) -> Iterator[Connection]:
    """One transaction on the target; of a file that was made for it nothing stays if it fails."""
    made = _file_to_make(target)
    engine = make_engine(target)
    try:
        with engine.begin() as connection:
            yield connection
    except BaseException as error:
        engine.dispose()
        if made is not None:
            for beside in ("", "-wal", "-shm", "-journal"):
                made.with_name(made.name + beside).unlink(missing_ok=True)
        if isinstance(error, DatabaseError):
            raise cannot_be_opened(target, error) from error
        raise
    finally:
        engine.dispose()


def _file_to_make(target: Settings) -> Path | None:
    """The target's SQLite file where there is none yet; its folder is made."""
    if target.database.get_backend_name() != "sqlite":
        return None
    make_folder(target)
    file = Path(target.database.database or "")
    return None if file.exists() else file
