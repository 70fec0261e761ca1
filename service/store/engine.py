"""The engine: how this service speaks to SQLite and to PostgreSQL."""

from __future__ import annotations

import sqlite3
import time
from typing import Any

from sqlalchemy import Connection, Engine, event
from sqlmodel import create_engine

from service.settings import Settings

#: Set on a connection that only reads: on SQLite it then takes no write lock.
READING = "loopstart_reading"
#: How often the switch to the write-ahead journal is tried, and the seconds between.
_SWITCHES = 100
_BETWEEN_SWITCHES = 0.05


def make_engine(settings: Settings, **pool: Any) -> Engine:
    """An engine for the settings' database; nothing is opened or made yet.

    `pool` says how many connections it keeps, as SQLAlchemy's create_engine takes it.
    """
    # The values of a statement may be a sealed answer: they must not reach a log.
    common: dict[str, Any] = {"hide_parameters": True, **pool}
    if settings.database.get_backend_name() == "sqlite":
        common["connect_args"] = {"timeout": settings.database_wait}
    else:
        wait = int(settings.database_wait * 1000)
        common["connect_args"] = {
            "connect_timeout": max(2, int(settings.database_wait)),
            "options": f"-c lock_timeout={wait} -c timezone=UTC",
        }
        common["pool_pre_ping"] = True
    engine = create_engine(settings.database, **common)
    if engine.dialect.name == "sqlite":
        event.listen(engine, "connect", _prepare_sqlite)
        event.listen(engine, "begin", _begin_sqlite)
    return engine


def _prepare_sqlite(connection: Any, record: object) -> None:
    del record
    # The driver must not begin transactions by itself: it would begin them too late.
    connection.isolation_level = None
    _journal_ahead(connection)
    for pragma in ("foreign_keys=ON", "synchronous=NORMAL"):
        connection.execute(f"PRAGMA {pragma}").close()


def _journal_ahead(connection: Any) -> None:
    """Switch to the write-ahead journal.

    SQLite does not wait where another connection switches a new file at the same moment, so this
    does, for a few seconds.
    """
    for left in reversed(range(_SWITCHES)):
        try:
            connection.execute("PRAGMA journal_mode=WAL").close()
        except sqlite3.OperationalError as error:
            if not left or "locked" not in str(error):
                raise
            time.sleep(_BETWEEN_SWITCHES)
        else:
            return


def _begin_sqlite(connection: Connection) -> None:
    reading = connection.get_execution_options().get(READING, False)
    connection.exec_driver_sql("BEGIN" if reading else "BEGIN IMMEDIATE")
