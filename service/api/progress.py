"""How far long requests are, for callers who want to know while they wait.

A caller names a request with `watch` and asks for that name meanwhile. On SQLite, where one process
serves, it is kept there: the import that is told of is the only one that writes. On PostgreSQL it
is in the database, so that each process that serves knows.
"""

from __future__ import annotations

import logging
import threading
import time
from collections import OrderedDict
from collections.abc import Callable
from datetime import datetime
from typing import Protocol

from sqlalchemy import Engine
from sqlalchemy.exc import SQLAlchemyError
from sqlmodel import Session

from service.settings import Settings
from service.store.database import Database
from service.store.engine import make_engine
from service.store.passing import Far, far_of, tell_far
from service.store.staging import Tell, say_nothing

#: How many requests one process remembers.
_MOST = 100
#: The seconds between two words on the same step.
_BETWEEN = 0.2
_WAITING: Far = ("waiting", 0, 0)
_log = logging.getLogger("loopstart.progress")


class Progress(Protocol):
    """How far requests are, by the names that their callers gave them."""

    def teller(self, watch: str | None) -> Tell:
        """What a request tells its progress to."""

    def of(self, watch: str) -> Far:
        """How far the request of that name is; one that is not known waits."""

    def dispose(self) -> None:
        """Close what is open."""


class ProgressHere:
    """How far the requests of this process are."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._told: OrderedDict[str, Far] = OrderedDict()

    def teller(self, watch: str | None) -> Tell:
        """See Progress."""

        def tell(step: str, done: int, total: int) -> None:
            if watch is not None:
                with self._lock:
                    self._told[watch] = (step, done, total)
                    self._told.move_to_end(watch)
                    while len(self._told) > _MOST:
                        self._told.popitem(last=False)

        return tell

    def of(self, watch: str) -> Far:
        """See Progress."""
        with self._lock:
            return self._told.get(watch, _WAITING)

    def dispose(self) -> None:
        """See Progress."""


class ProgressForAll:
    """How far the requests of all processes are, in the database.

    By a connection of its own: a request that tells how far it is has one already, and must never
    wait for another.
    """

    def __init__(
        self, settings: Settings, database: Database, clock: Callable[[], datetime]
    ) -> None:
        alone = {"pool_size": 1, "max_overflow": 0, "pool_timeout": 2}
        self._engine: Engine = make_engine(settings, **alone)
        self._database = database
        self._clock = clock

    def teller(self, watch: str | None) -> Tell:
        """See Progress. Where it cannot be told, the request goes on untold."""
        if watch is None:
            return say_nothing
        told: tuple[str, float] = ("", 0.0)

        def tell(step: str, done: int, total: int) -> None:
            nonlocal told
            at = time.monotonic()
            if step == told[0] and at - told[1] < _BETWEEN and done != total:
                return
            told = (step, at)
            try:
                with Session(self._engine) as session, session.begin():
                    tell_far(session, watch, (step, done, total), self._clock())
            except SQLAlchemyError as error:
                _log.warning("how far a request is cannot be told: %s", type(error).__name__)

        return tell

    def of(self, watch: str) -> Far:
        """See Progress."""
        with self._database.reading() as session:
            return far_of(session, watch) or _WAITING

    def dispose(self) -> None:
        """See Progress."""
        self._engine.dispose()
