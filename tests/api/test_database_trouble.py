"""A full disk, a folder that may not be written to, a broken file: one sentence, nothing lost."""

from __future__ import annotations

import shutil
import sqlite3
import threading
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import event, text

from service.settings import DATABASE_FILE, Settings
from tests.api.asking import (
    GAME,
    PATH,
    ROUND,
    assert_problem,
    done,
    everything_kept,
    open_round,
    votes,
)
from tests.api.conftest import Service, running
from tests.conftest import Clock


def limit_pages(service: Service) -> None:
    """A disk with hardly any room left: SQLite itself is told to write no more pages."""
    engine = service.app.state.wiring.database.engine
    file = service.app.state.wiring.settings.data_folder / DATABASE_FILE
    with closing(sqlite3.connect(file)) as counting:
        pages = counting.execute("PRAGMA page_count").fetchone()[0]

    def limit(connection: Any, record: object, proxy: object) -> None:
        del record, proxy
        connection.execute(f"PRAGMA max_page_count = {pages + 4}").close()

    event.listen(engine, "checkout", limit)


def test_a_full_disk_keeps_nothing_of_an_import(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "13")), 201)
    before = everything_kept(service)
    limit_pages(service)
    much = votes(*(f"page {n % 63 + 1} or so, said at length: {'x' * 400}" for n in range(900)))
    answer = service.host.hand_in(f"{ROUND}/batches", much)
    assert_problem(answer, 503, "is full or does not work: make room and try again")
    assert everything_kept(service) == before
    assert len(done(service.host.get(f"{ROUND}/comments"))) == 2


def read_only(connection: Any, record: object, proxy: object) -> None:
    """A database that may be read and not written to, as in a folder of somebody else."""
    del record, proxy
    connection.execute("PRAGMA query_only = ON").close()


def test_a_database_that_may_not_be_written_to_is_told(service: Service) -> None:
    open_round(service)
    before = everything_kept(service)
    event.listen(service.app.state.wiring.database.engine, "checkout", read_only)
    answer = service.host.hand_in(f"{ROUND}/batches", votes("12"))
    assert_problem(answer, 503, "may not be written to: let this service's user write to it")
    assert done(service.viewer.get(PATH))["slug"] == "windy-island"
    assert everything_kept(service) == before


@pytest.mark.postgres
def test_a_postgresql_that_only_reads_is_told(postgres: Settings) -> None:
    with running(postgres, Clock()) as service:
        engine = service.app.state.wiring.database.engine

        def only_read(connection: Any) -> None:
            connection.exec_driver_sql("SET TRANSACTION READ ONLY")

        event.listen(engine, "begin", only_read)
        assert_problem(service.host.post("/games", GAME), 503, "may not be written to")


def scribble(file: Path) -> None:
    """Overwrite the inside of the file, all but its first page."""
    whole = bytearray(file.read_bytes())
    whole[4096:] = b"\xa5" * (len(whole) - 4096)
    file.write_bytes(whole)


def cut(file: Path) -> None:
    file.write_bytes(file.read_bytes()[:5000])


@pytest.mark.parametrize("spoil", [scribble, cut])
def test_a_broken_file_is_told_and_left_alone(
    sqlite: Settings, tmp_path: Path, spoil: Callable[[Path], None]
) -> None:
    with running(sqlite, Clock()) as service:
        open_round(service)
    spoiled = tmp_path / "spoiled"
    spoiled.mkdir()
    file = Path(shutil.copy(sqlite.data_folder / DATABASE_FILE, spoiled))
    spoil(file)
    before = file.read_bytes()
    with running(Settings(data_folder=spoiled), Clock()) as service:
        assert_problem(service.viewer.get(PATH), 503, "file cannot be read: .* back to a backup")
    assert file.read_bytes() == before


@pytest.mark.postgres
# A cursor of a connection that was cut cannot be closed properly, and psycopg says so.
@pytest.mark.filterwarnings("ignore::pytest.PytestUnraisableExceptionWarning")
def test_a_postgresql_that_goes_away_and_comes_back(postgres: Settings) -> None:
    """All its connections are cut, again and again, in the midst of handing in."""
    with running(postgres, Clock()) as service:
        open_round(service)
        kept = 0
        for number in range(6):
            cutting = threading.Timer(0.02 * number, cut_connections, (postgres,))
            cutting.start()
            words = votes(*(f"page {n % 63 + 1}, {number}" for n in range(60)))
            answer = service.host.hand_in(f"{ROUND}/batches", words)
            cutting.join()
            assert answer.status_code in (201, 503), answer.text
            kept += answer.json()["new"] if answer.status_code == 201 else 0
            if answer.status_code == 503:
                assert_problem(answer, 503, "does not answer or is busy")
        assert len(done(service.host.get(f"{ROUND}/comments"))) == kept


def cut_connections(settings: Settings) -> None:
    from sqlalchemy import create_engine  # noqa: PLC0415 - one of its own, not the service's

    engine = create_engine(settings.database)
    with engine.connect() as connection:
        connection.execute(
            text(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
                " WHERE datname = current_database() AND pid <> pg_backend_pid()"
            )
        )
    engine.dispose()


def test_a_crowd_that_keeps_every_connection_waiting_is_told_so(either_service: Service) -> None:
    engine = either_service.app.state.wiring.database.engine
    engine.pool._timeout = 0.1
    held = [engine.connect() for _ in range(15)]
    answer = either_service.host.get("/games")
    assert_problem(answer, 503, "does not answer or is busy: try again in a moment")
    held.pop().close()
    assert done(either_service.host.get("/games")) == []
    for one in held:
        one.close()
