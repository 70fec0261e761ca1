"""Deleted words wiped out of the database's files: a deleted row's bytes would else stay for years.

SQLite and PostgreSQL both leave them where they were until something else is written there.
"""

from __future__ import annotations

import re
import time
from typing import TYPE_CHECKING, Any

from sqlalchemy import Engine

from service.store.every_table import metadata

if TYPE_CHECKING:
    from psycopg.errors import Diagnostic

#: How often PostgreSQL's tables are written anew, and the seconds between.
_TRIES, _BETWEEN = 10, 0.5
_NUMBER = re.compile(r"\d+")


def wipe_deleted(engine: Engine) -> bool:
    """Write the database's files anew; whether that was done to the end, or others were in the way.

    Nothing is lost where it was not: it can be done again.
    """
    connection = engine.raw_connection()
    driver: Any = connection.driver_connection
    try:
        if engine.dialect.name == "sqlite":
            return _wipe_sqlite(driver)
        return _wipe_postgres(driver)
    except engine.dialect.loaded_dbapi.OperationalError:
        return False
    finally:
        connection.close()


def _wipe_sqlite(driver: Any) -> bool:
    driver.execute("VACUUM").close()
    # What was written last is in the journal beside the file: it goes into the file, then is cut.
    busy, *_ = driver.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
    return not busy


def _wipe_postgres(driver: Any) -> bool:
    """Write the tables anew, and the samples of them that its planner keeps."""
    driver.rollback()
    driver.autocommit = True
    left = _Left()
    driver.add_notice_handler(left.note)
    try:
        names = [f'"{table.name}"' for table in metadata.sorted_tables]
        if not _write_anew(driver, names, left):
            return False
        driver.execute(f"ANALYZE {', '.join(names)}")
        # The database's owner may do this; who is not is told by a notice that it was left.
        return _write_anew(driver, ["pg_catalog.pg_statistic"], left)
    finally:
        driver.remove_notice_handler(left.note)
        driver.autocommit = False


def _write_anew(driver: Any, tables: list[str], left: _Left) -> bool:
    """More than once where a transaction may still see what was deleted; whether all is gone."""
    for _ in range(_TRIES):
        left.dead = 0
        for table in tables:
            driver.execute(f"VACUUM (FULL, VERBOSE) {table}")
        if not left.dead:
            return True
        time.sleep(_BETWEEN)
    return False


class _Left:
    """How many deleted rows PostgreSQL had to leave, since a transaction may still see them."""

    def __init__(self) -> None:
        self.dead = 0

    def note(self, told: Diagnostic) -> None:
        """Its word on one table, whose detail begins with that number in every language."""
        found = _NUMBER.match(told.message_detail or "")
        self.dead += int(found[0]) if found else 0
