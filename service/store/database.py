"""The database: one engine, and a transaction for each request.

On SQLite a writing transaction takes the write lock when it begins, so that it never fails half
way because another one wrote first; readers go on beside it (WAL). On PostgreSQL a reading
transaction sees one moment of the database throughout.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from sqlalchemy import Engine
from sqlmodel import Session

from service.errors import BadSetting
from service.settings import Settings
from service.store.cleaning import wipe_deleted
from service.store.engine import READING, make_engine
from service.store.upgrade import check_not_newer, is_upgraded


class Database:
    """The engine and its transactions. Made by the app, disposed with it."""

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._engine = make_engine(settings)
        self._checked = False
        options: dict[str, Any] = {READING: True}
        if self._engine.dialect.name == "postgresql":
            options |= {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}
        self._reader = self._engine.execution_options(**options)

    @property
    def engine(self) -> Engine:
        """The engine that writes."""
        return self._engine

    def dispose(self) -> None:
        """Close every connection."""
        self._engine.dispose()

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """A transaction that only reads and sees one moment of the database.

        Raises:
            BadSetting: the database has not been upgraded.
        """
        self._check()
        with Session(self._reader) as session:
            yield session

    @contextmanager
    def writing(self) -> Iterator[Session]:
        """A transaction that is kept whole when the block ends, and dropped whole on any error.

        Raises:
            BadSetting: the database has not been upgraded.
        """
        self._check()
        with Session(self._engine, expire_on_commit=False) as session, session.begin():
            yield session

    def wipe_deleted(self) -> bool:
        """Wipe deleted words out of the files; whether that was done to the end."""
        return wipe_deleted(self._engine)

    def is_ready(self) -> bool:
        """Whether the database stands and has been upgraded; makes no SQLite file to find out."""
        return self._is_there() and is_upgraded(self._engine)

    def _is_there(self) -> bool:
        url = self._settings.database
        file = url.database if url.get_backend_name() == "sqlite" else None
        return not file or (self._settings.data_folder / file).exists()

    def _check_not_newer(self) -> None:
        if self._is_there():
            with self._engine.connect() as connection:
                check_not_newer(connection)

    def _check(self) -> None:
        """Once for each app: a clear sentence instead of the database's about a missing table."""
        if not self._checked:
            self.check_ready()
            self._checked = True

    def check_ready(self) -> None:
        """Whether the database can be used.

        Raises:
            BadSetting: it has not been upgraded, or a newer version of the service made it.
        """
        if not self.is_ready():
            self._check_not_newer()
            raise BadSetting(
                "DATABASE_URL",
                f"the database {self._settings.database_shown} is not set up for this version",
                "start with scripts/start.py, which upgrades it",
            )
