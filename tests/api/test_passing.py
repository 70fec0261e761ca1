"""What passes: exports that wait and how far requests are, in one process or in all that serve."""

from __future__ import annotations

import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta
from io import BytesIO
from pathlib import Path

import pytest
from sqlalchemy import text
from sqlmodel import select

from service.api import passing as passing_parts
from service.api.passing import Passing
from service.api.progress import ProgressForAll
from service.api.waiting import SentBy
from service.chart.grid import Chart
from service.errors import NotFound
from service.settings import Settings
from service.store.backing_up import back_up
from service.store.database import Database
from service.store.games import NewGame, make_game
from service.store.tables_passing import WaitingExportRow, WatchedRow
from tests.api.asking import PATH
from tests.api.conftest import Service
from tests.api.forgetting import files_of, forget, play, traces
from tests.conftest import Clock
from tests.store.conftest import NOW
from tests.store.test_moving import say_nothing

MINE = SentBy(1, "windy-island")
LARGE = b"Wilhelmina Quiltbird,zanzibar\n" * 100_000


@contextmanager
def with_game(settings: Settings) -> Iterator[Database]:
    database = Database(settings)
    new = NewGame(slug=MINE.game, name="Wind", zone="UTC", chart=Chart(9, 7))
    with database.writing() as session:
        make_game(session, new, NOW)
    yield database
    database.dispose()


@pytest.fixture
def passing(settings: Settings, clock: Clock) -> Iterator[Passing]:
    with with_game(settings) as database:
        made = Passing(settings, database, clock)
        yield made
        made.end()


@pytest.fixture
def on_postgres(postgres: Settings) -> Iterator[Database]:
    with with_game(postgres) as database:
        yield database


def test_an_export_waits_for_its_sender_until_it_is_dropped(passing: Passing) -> None:
    waiting = passing.waiting
    key = waiting.keep(MINE, "large.csv", BytesIO(LARGE), NOW)
    for _ in range(2):
        found = waiting.find(1, key, NOW)
        assert (found.name, found.content.size) == ("large.csv", len(LARGE))
        assert b"".join(found.content.pieces()) == LARGE
    with pytest.raises(NotFound, match="choose the file again"):
        waiting.find(2, key, NOW)
    waiting.drop(key)
    with pytest.raises(NotFound, match="choose the file again"):
        waiting.find(1, key, NOW)


def test_an_export_of_nothing_waits_too(passing: Passing) -> None:
    key = passing.waiting.keep(MINE, "empty.csv", BytesIO(b""), NOW)
    assert passing.waiting.find(1, key, NOW).content.size == 0


def test_six_wait_for_an_hour_at_most(passing: Passing) -> None:
    waiting = passing.waiting
    at = [NOW + timedelta(minutes=one) for one in range(8)]
    keys = [waiting.keep(MINE, f"{one}.csv", BytesIO(b"x"), at[one]) for one in range(8)]
    for key in keys[:2]:
        with pytest.raises(NotFound):
            waiting.find(1, key, at[7])
    assert [waiting.find(1, key, at[7]).name for key in keys[2:]] == [
        f"{n}.csv" for n in range(2, 8)
    ]
    late = at[6] + timedelta(hours=1, seconds=1)
    with pytest.raises(NotFound):
        waiting.find(1, keys[6], late)
    assert waiting.find(1, keys[7], late).name == "7.csv"


def test_who_is_forgotten_waits_in_no_export_of_that_game(either_service: Service) -> None:
    service = either_service
    play(service)
    waiting = service.app.state.wiring.waiting
    key = waiting.keep(MINE, "quiltbird.csv", BytesIO(LARGE), service.clock())
    assert waiting.find(1, key, service.clock()).content.size
    assert forget(service, "user-7731")["wiped"]
    assert traces(*files_of(service)) == set()
    with pytest.raises(NotFound):
        waiting.find(1, key, service.clock())


def test_an_export_for_another_game_goes_on_waiting(either_service: Service) -> None:
    service = either_service
    play(service)
    other = {"slug": "other", "name": "Other", "zone": "UTC", "chart": {"columns": 2, "rows": 2}}
    assert service.host.post("/games", other).status_code == 201
    waiting = service.app.state.wiring.waiting
    key = waiting.keep(SentBy(1, "other"), "other.csv", BytesIO(b"x"), service.clock())
    forget(service, "user-7731")
    assert waiting.find(1, key, service.clock()).name == "other.csv"
    assert service.host.get(PATH).status_code == 200


@pytest.mark.postgres
def test_another_process_finds_what_waits_and_how_far_it_is(
    postgres: Settings, on_postgres: Database, clock: Clock
) -> None:
    other = Database(postgres)
    here, there = Passing(postgres, on_postgres, clock), Passing(postgres, other, clock)
    key = here.waiting.keep(MINE, "a.csv", BytesIO(b"13 please"), NOW)
    found = there.waiting.find(1, key, NOW)
    assert b"".join(found.content.pieces()) == b"13 please"
    here.progress.teller("watch-me-1")("storing", 7, 9)
    assert there.progress.of("watch-me-1") == ("storing", 7, 9)
    assert there.progress.of("watch-me-2") == ("waiting", 0, 0)
    there.waiting.drop(key)
    with pytest.raises(NotFound):
        here.waiting.find(1, key, NOW)
    here.end()
    there.end()
    other.dispose()


@pytest.mark.postgres
def test_what_nobody_asks_for_any_more_is_taken_away(
    postgres: Settings, on_postgres: Database, clock: Clock, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(passing_parts, "FIRST", 0.05)
    before = Passing(postgres, on_postgres, clock)
    before.waiting.keep(MINE, "old.csv", BytesIO(LARGE), clock() - timedelta(hours=2))
    before.progress.teller("watch-me-3")("done", 1, 1)
    before.end()
    clock.go_on(hours=2)
    after = Passing(postgres, on_postgres, clock)
    ends = time.monotonic() + 30
    while left := _rows(on_postgres):
        assert time.monotonic() < ends, left
        time.sleep(0.02)
    after.end()


@pytest.mark.postgres
def test_telling_how_far_it_is_never_stops_an_import(
    postgres: Settings, on_postgres: Database, clock: Clock
) -> None:
    progress = ProgressForAll(postgres, on_postgres, clock)
    tell = progress.teller("watch-me-4")
    with on_postgres.engine.begin() as other:
        other.execute(text("ALTER TABLE watched_requests RENAME TO gone"))
    try:
        tell("reading", 1, 0)
        for done in range(1000):
            tell("storing", done, 0)
    finally:
        with on_postgres.engine.begin() as other:
            other.execute(text("ALTER TABLE gone RENAME TO watched_requests"))
    progress.dispose()
    assert progress.of("watch-me-4") == ("waiting", 0, 0)


@pytest.mark.postgres
def test_postgresql_logs_nothing_of_what_passes_and_no_backup_has_it(
    postgres: Settings, on_postgres: Database, clock: Clock, tmp_path: Path
) -> None:
    passing = Passing(postgres, on_postgres, clock)
    passing.waiting.keep(MINE, "quiltbird.csv", BytesIO(LARGE), clock())
    passing.end()
    with on_postgres.reading() as session:
        asked = "SELECT relpersistence FROM pg_class WHERE relname IN "
        asked += "('waiting_exports', 'waiting_pieces', 'watched_requests')"
        kinds = session.connection().execute(text(asked)).scalars().all()
    assert kinds == ["u", "u", "u"]
    backup = back_up(postgres, tmp_path, NOW, say_nothing)
    assert traces(*(file.read_bytes() for file in backup.folder.iterdir())) == set()


def _rows(database: Database) -> int:
    with database.reading() as session:
        return len([*session.exec(select(WaitingExportRow)), *session.exec(select(WatchedRow))])
