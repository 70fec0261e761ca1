"""What every test may use: a clean environment, and a database of each kind."""

from __future__ import annotations

import importlib
import os
import shutil
from collections.abc import Generator, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from uuid import uuid4

import hypothesis
import psycopg
import pytest
from psycopg import sql
from sqlalchemy import delete
from sqlalchemy.engine import URL

from service.settings import DATABASE_FILE, PREFIX, Settings
from service.store.columns import metadata
from service.store.engine import make_engine
from service.store.upgrade import upgrade

#: Set where every test must run: then a missing server is a failure, not a reason to skip.
REQUIRE_ALL = os.environ.get("LOOPSTART_TEST_REQUIRE_ALL") == "1"
# Where every test must run, a run can be repeated: laws are tried on the same examples each time.
hypothesis.settings.register_profile("repeatable", derandomize=True, deadline=None)
hypothesis.settings.register_profile("exploring", deadline=None)
hypothesis.settings.load_profile("repeatable" if REQUIRE_ALL else "exploring")

SERVER = URL.create(
    "postgresql+psycopg",
    username=os.environ.get("PGUSER", "postgres"),
    password=os.environ.get("PGPASSWORD"),
    host=os.environ.get("PGHOST", "127.0.0.1"),
    port=int(os.environ.get("PGPORT", "5432")),
    database="postgres",
)


def pytest_report_header() -> str:
    """Which ICU number words are checked against: every system has its own."""
    try:
        icu = importlib.import_module("icu")
    except ModuleNotFoundError:
        return "Unicode ICU: PyICU is missing, what needs it is skipped"
    return f"Unicode ICU {icu.ICU_VERSION} (PyICU {icu.VERSION})"


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport() -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """Where every test must run, a skipped one is a failure."""
    report = yield
    if REQUIRE_ALL and report.skipped and not hasattr(report, "wasxfail"):
        report.outcome = "failed"
        report.longrepr = f"skipped, where every test must run: {report.longrepr}"
    return report


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report() -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    """The same for a whole file of tests that is skipped."""
    report = yield
    if REQUIRE_ALL and report.skipped:
        report.outcome = "failed"
        report.longrepr = f"skipped, where every test must run: {report.longrepr}"
    return report


@pytest.fixture(scope="session", autouse=True)
def clean_environment(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """No setting of this machine reaches a test, and no test reaches the user's data folder."""
    with pytest.MonkeyPatch.context() as patch:
        for name in os.environ:
            if name.upper().startswith(PREFIX) or name.upper() == "DATABASE_URL":
                patch.delenv(name)
        patch.delenv("COLUMNS", raising=False)  # a pipe has no width, whoever runs the tests
        patch.setenv(f"{PREFIX}DATA_FOLDER", str(tmp_path_factory.mktemp("data_folder")))
        yield


class Clock:
    """A time that stands still until the test moves it."""

    def __init__(self) -> None:
        self.now = datetime(2026, 3, 1, 18, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.now

    def go_on(self, **by: float) -> None:
        self.now += timedelta(**by)


@pytest.fixture
def clock() -> Clock:
    return Clock()


def _connect(server: URL) -> psycopg.Connection[tuple[object, ...]]:
    url = server.set(drivername="postgresql")
    return psycopg.connect(url.render_as_string(hide_password=False), autocommit=True)


@pytest.fixture(scope="session")
def postgres_server() -> URL:
    """A PostgreSQL server that databases can be made on."""
    try:
        _connect(SERVER).close()
    except psycopg.OperationalError as error:
        sentence = f"no PostgreSQL server answers at {SERVER.host}:{SERVER.port}: start one"
        if REQUIRE_ALL:
            pytest.fail(f"{sentence} ({error})")
        pytest.skip(sentence)
    return SERVER


def _made_database(server: URL) -> Iterator[Settings]:
    name = f"loopstart_test_{uuid4().hex}"
    with _connect(server) as connection:
        connection.execute(sql.SQL("CREATE DATABASE {}").format(sql.Identifier(name)))
    try:
        url = server.set(database=name).render_as_string(hide_password=False)
        yield Settings(database_url=url)
    finally:
        with _connect(server) as connection:
            connection.execute(
                sql.SQL("DROP DATABASE {} WITH (FORCE)").format(sql.Identifier(name))
            )


@pytest.fixture
def empty_postgres(postgres_server: URL) -> Iterator[Settings]:
    """A PostgreSQL database without any table, for this test alone."""
    yield from _made_database(postgres_server)


@pytest.fixture(scope="module")
def module_postgres(postgres_server: URL) -> Iterator[Settings]:
    """A PostgreSQL database without any table, for the tests of one file."""
    yield from _made_database(postgres_server)


@pytest.fixture(scope="module")
def module_upgraded_postgres(module_postgres: Settings) -> Settings:
    """A PostgreSQL database with all tables, for the tests of one file."""
    upgrade(module_postgres)
    return module_postgres


@pytest.fixture(scope="module")
def module_upgraded_sqlite(tmp_path_factory: pytest.TempPathFactory) -> Settings:
    """The same as a SQLite file."""
    settings = Settings(data_folder=tmp_path_factory.mktemp("upgraded"))
    upgrade(settings)
    return settings


@pytest.fixture(scope="session")
def _session_postgres(postgres_server: URL) -> Iterator[Settings]:
    """One PostgreSQL database, made and upgraded once: making one takes long."""
    for settings in _made_database(postgres_server):
        upgrade(settings)
        yield settings


@pytest.fixture
def postgres(_session_postgres: Settings) -> Settings:
    """A PostgreSQL database with all tables and nothing in them."""
    engine = make_engine(_session_postgres)
    with engine.begin() as connection:
        # Truncating would write every table's file anew; these tables are nearly empty.
        for table in reversed(metadata.sorted_tables):
            connection.execute(delete(table))
    engine.dispose()
    return _session_postgres


@pytest.fixture
def empty_sqlite(tmp_path: Path) -> Settings:
    """Settings whose SQLite file does not exist yet."""
    return Settings(data_folder=tmp_path)


@pytest.fixture(scope="session")
def _session_sqlite(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A SQLite file, upgraded once, to be copied."""
    settings = Settings(data_folder=tmp_path_factory.mktemp("sqlite"))
    upgrade(settings)
    return settings.data_folder / DATABASE_FILE


@pytest.fixture
def sqlite(empty_sqlite: Settings, _session_sqlite: Path) -> Settings:
    """A SQLite file with all tables and nothing in them."""
    shutil.copy(_session_sqlite, empty_sqlite.data_folder)
    return empty_sqlite


BOTH = [
    pytest.param("sqlite", id="SQLite"),
    pytest.param("postgres", id="PostgreSQL", marks=pytest.mark.postgres),
]


@pytest.fixture(params=BOTH)
def settings(request: pytest.FixtureRequest) -> Settings:
    """A database with all tables and nothing in them, on each of the two kinds."""
    made = request.getfixturevalue(request.param)
    assert isinstance(made, Settings)
    return made


@pytest.fixture(params=BOTH)
def empty_settings(request: pytest.FixtureRequest) -> Settings:
    """A database without any table, on each of the two kinds."""
    made = request.getfixturevalue(f"empty_{request.param}")
    assert isinstance(made, Settings)
    return made
