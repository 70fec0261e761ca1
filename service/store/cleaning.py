"""Deleted words wiped out of the database's files: a deleted row's bytes would else stay for years.

SQLite and PostgreSQL both leave them where they were until something else is written there.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import Engine

from service.store.every_table import metadata


def wipe_deleted(engine: Engine) -> bool:
    """Write the database's files anew; whether that was done to the end, or others were in the way.

    Nothing is lost where it was not: it can be done again.
    """
    connection = engine.raw_connection()
    driver: Any = connection.driver_connection
    try:
        if engine.dialect.name == "sqlite":
            return _wipe_sqlite(driver)
        _wipe_postgres(driver)
    except engine.dialect.loaded_dbapi.OperationalError:
        return False
    finally:
        connection.close()
    return True


def _wipe_sqlite(driver: Any) -> bool:
    driver.execute("VACUUM").close()
    # What was written last is in the journal beside the file: it goes into the file, then is cut.
    busy, *_ = driver.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
    return not busy


def _wipe_postgres(driver: Any) -> None:
    driver.rollback()
    driver.autocommit = True
    try:
        # Its planner keeps samples of what stood in the tables: they are taken anew as well.
        tables = ", ".join(f'"{table.name}"' for table in metadata.sorted_tables)
        driver.execute(f"VACUUM (FULL, ANALYZE) {tables}")
        # The owner of the database may do this; who is not is told by a notice that it was left.
        driver.execute("VACUUM (FULL) pg_catalog.pg_statistic")
    finally:
        driver.autocommit = False
