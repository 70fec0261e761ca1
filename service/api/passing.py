"""What passes while the app serves: exports that wait and how far requests are, kept for an hour.

On SQLite one process serves and keeps it. On PostgreSQL several may, so it is in the database.
"""

from __future__ import annotations

import logging
import threading
from collections.abc import Callable
from datetime import datetime

from sqlalchemy.exc import SQLAlchemyError

from service.api.progress import Progress, ProgressForAll, ProgressHere
from service.api.waiting import WaitingExports, WaitingForAll, WaitingHere
from service.errors import LoopstartError
from service.settings import Settings
from service.store.database import Database
from service.store.passing import tidy
from service.store.turns import take_turn

#: The seconds until what is too old is taken away at first, and from then on.
FIRST, BETWEEN = 60.0, 600.0
_log = logging.getLogger("loopstart.passing")


class Passing:
    """The parts of one app that keep what passes; to be ended with it."""

    waiting: WaitingExports
    progress: Progress

    def __init__(
        self, settings: Settings, database: Database, clock: Callable[[], datetime]
    ) -> None:
        self._database, self._clock = database, clock
        self._ended = threading.Event()
        self._tidying: threading.Thread | None = None
        if settings.database.get_backend_name() == "sqlite":
            self.waiting, self.progress = WaitingHere(), ProgressHere()
            return
        self.waiting = WaitingForAll(database)
        self.progress = ProgressForAll(settings, database, clock)
        # Also where nobody sends another export, what one held is gone in time.
        self._tidying = threading.Thread(target=self._tidy_often, name="tidying", daemon=True)
        self._tidying.start()

    def end(self) -> None:
        """Stop tidying and close what is open."""
        self._ended.set()
        if self._tidying is not None:
            self._tidying.join()
        self.progress.dispose()

    def _tidy_often(self) -> None:
        wait = FIRST
        while not self._ended.wait(wait):
            wait = BETWEEN
            try:
                with self._database.writing() as session:
                    take_turn(session, "exports that wait")
                    tidy(session, self._clock())
            except (SQLAlchemyError, LoopstartError) as error:
                _log.warning("what waited too long stays for now: %s", type(error).__name__)
