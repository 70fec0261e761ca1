"""Several processes that serve on one port; on PostgreSQL only.

They share nothing but the database, the port and the folder of their figures. One that dies is
followed by another one.
"""

import os
import signal
import socket
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from fastapi import FastAPI
from logs import log_as
from prometheus_client.multiprocess import mark_process_dead
from serving import config_of, keep_memory_together
from uvicorn.config import STARTUP_FAILURE, Config
from uvicorn.supervisors.multiprocess import Multiprocess, Process

from service.app import create_app
from service.errors import BadSetting
from service.settings import Settings, read_settings

#: Where the figures' library looks for the folder that processes share.
_FIGURES = "PROMETHEUS_MULTIPROC_DIR"
#: The seconds that a process may take until it serves.
_PATIENCE = 120.0


def check_workers(settings: Settings) -> None:
    """Whether so many processes can serve this database.

    Raises:
        BadSetting: several are asked for on SQLite.
    """
    if settings.workers > 1 and settings.database.get_backend_name() == "sqlite":
        raise BadSetting(
            "workers",
            f"{settings.workers} processes cannot serve from SQLite, which lets one write at a time",
            "leave it at 1, or name a PostgreSQL database with DATABASE_URL",
        )


def make_app() -> FastAPI:
    """The app of one of the processes: it finds its settings as any script does."""
    settings = read_settings()
    log_as(settings.log)
    keep_memory_together()
    return create_app(settings, figures_in=Path(os.environ[_FIGURES]))


@contextmanager
def _deaf_to_ctrl_c() -> Iterator[None]:
    """A process that is begun meanwhile leaves Ctrl-C to this one, until it serves."""
    before = signal.signal(signal.SIGINT, signal.SIG_IGN)
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)


class Workers(Multiprocess):
    """The processes, kept at their number until all are stopped."""

    def __init__(
        self, config: Config, sockets: list[socket.socket], tell: Callable[[], None]
    ) -> None:
        super().__init__(config, sockets)
        self._tell = tell
        self.interrupted = self.failed = False

    def init_processes(self) -> None:
        """Start all, and tell once they serve."""
        with _deaf_to_ctrl_c():
            super().init_processes()
        if all(one.wait_until_ready(_PATIENCE, self.should_exit) for one in self.processes):
            self._tell()

    def keep_subprocess_alive(self) -> None:
        """Follow each that has died by another.

        None is asked whether it answers: in a count of a million comments it may not for a while.
        """
        for place, one in enumerate(self.processes):
            if self.should_exit.is_set() or one.process.is_alive():
                continue
            one.join()
            if one.exitcode == STARTUP_FAILURE:
                self.failed = True
                self.should_exit.set()
                return
            # What it was answering is answered no more.
            mark_process_dead(one.pid, os.environ[_FIGURES])  # type: ignore[no-untyped-call]
            self.processes[place] = Process(self.config, self.sockets)
            with _deaf_to_ctrl_c():
                self.processes[place].start()

    def handle_int(self) -> None:
        """Ctrl-C."""
        self.interrupted = True
        super().handle_int()

    def handle_hup(self) -> None:
        """Also where a terminal is closed, what was begun is tidied up."""
        self.handle_term()


def serve_by_several(taken: socket.socket, tell: Callable[[], None], settings: Settings) -> int:
    """Serves until it is stopped, as serving.serve does, by as many processes as the settings say.

    Raises:
        KeyboardInterrupt: stopped with Ctrl-C, after what was begun has been tidied up.
    """
    log_as(settings.log)
    with tempfile.TemporaryDirectory(prefix="loopstart-figures-") as folder:
        os.environ[_FIGURES] = folder
        workers = Workers(config_of("workers:make_app", settings), [taken], tell)
        workers.run()
    if workers.interrupted:
        signal.signal(signal.SIGINT, signal.SIG_DFL)
        raise KeyboardInterrupt
    return 1 if workers.failed else 0
