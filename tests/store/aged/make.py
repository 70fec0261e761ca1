"""Writes the databases of each earlier version that the newest one must open.

    python tests/store/aged/make.py

For each migration but the newest that has none yet: an empty database of each kind is brought to it, the small game
of that age is put in by the plain SQL beside this file, and all of it is written as SQL. What is
there already is never made again: it is what that version made. Needs PostgreSQL and pg_dump.
"""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from uuid import uuid4

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parents[2]))

import psycopg  # noqa: E402 - only once the project is found
from alembic import command  # noqa: E402
from alembic.script import ScriptDirectory  # noqa: E402
from psycopg import sql  # noqa: E402
from sqlalchemy.engine import URL  # noqa: E402

from service.settings import DATABASE_FILE, Settings  # noqa: E402
from service.store.engine import make_engine  # noqa: E402
from service.store.upgrade import alembic_config  # noqa: E402

_BYTES = re.compile(r"BYTES\('([0-9a-f]*)'\)")
SERVER = URL.create(
    "postgresql",
    username=os.environ.get("PGUSER", "postgres"),
    password=os.environ.get("PGPASSWORD"),
    host=os.environ.get("PGHOST", "127.0.0.1"),
    port=int(os.environ.get("PGPORT", "5432")),
    database="postgres",
)


def revisions() -> list[str]:
    """Every migration, oldest first."""
    steps = ScriptDirectory.from_config(alembic_config()).walk_revisions()
    return [step.revision for step in steps][::-1]


def game_of(revision: str) -> str:
    """The SQL of the game of that age: that of the newest migration up to it that has one."""
    order = revisions()
    upto = order[: order.index(revision) + 1]
    files = [HERE / f"{each}-game.sql" for each in upto]
    return [file for file in files if file.exists()][-1].read_text("utf-8")


def fill(settings: Settings, revision: str) -> None:
    """Bring a database to a migration and put the game of that age in."""
    engine = make_engine(settings)
    begin, end = ("X'", "'") if engine.dialect.name == "sqlite" else ("decode('", "', 'hex')")
    told = _BYTES.sub(rf"{begin}\1{end}", game_of(revision))
    with engine.begin() as connection:
        command.upgrade(alembic_config(connection), revision)
        for statement in filter(str.strip, told.split(";\n")):
            connection.exec_driver_sql(statement.replace("%", "%%"))
        if engine.dialect.name == "postgresql":
            driver = connection.connection.driver_connection
            assert isinstance(driver, psycopg.Connection)
            _count_on(driver)
    engine.dispose()


def _count_on(connection: psycopg.Connection[tuple[str]]) -> None:
    """Have ids given after those that the SQL told."""
    asked = "SELECT table_name FROM information_schema.columns WHERE column_default LIKE 'nextval%'"
    for (table,) in connection.execute(asked).fetchall():
        connection.execute(
            sql.SQL("SELECT setval(pg_get_serial_sequence({}, 'id'), 100)").format(table)
        )


def sqlite_dump(revision: str) -> str:
    """The SQL that makes the SQLite database of that version."""
    with tempfile.TemporaryDirectory() as folder:
        fill(Settings(data_folder=Path(folder), database_url=""), revision)
        with closing(sqlite3.connect(Path(folder) / DATABASE_FILE)) as made:
            return "\n".join(made.iterdump()) + "\n"


@contextmanager
def _made_database() -> Iterator[str]:
    name = f"loopstart_aged_{uuid4().hex}"
    server = SERVER.render_as_string(hide_password=False)
    with psycopg.connect(server, autocommit=True) as connection:
        connection.execute(sql.SQL("CREATE DATABASE {}").format(sql.Identifier(name)))
        try:
            yield SERVER.set(database=name).render_as_string(hide_password=False)
        finally:
            connection.execute(sql.SQL("DROP DATABASE {}").format(sql.Identifier(name)))


def postgresql_dump(revision: str) -> str:
    """The same of PostgreSQL, without what belongs to one server or one version of its program."""
    program = shutil.which("pg_dump")
    if program is None:
        sys.exit("The program pg_dump is missing: install PostgreSQL's own programs.")
    with _made_database() as url:
        fill(Settings(database_url=url), revision)
        told = subprocess.run(  # noqa: S603 - PostgreSQL's own program
            [program, "--inserts", "--no-owner", "--no-privileges", "--no-comments", url],
            capture_output=True,
            text=True,
            check=True,
        ).stdout
    left_out = ("--", "SET ", "\\", "SELECT pg_catalog.set_config")
    lines = [line for line in told.splitlines() if line and not line.startswith(left_out)]
    return "\n".join(lines) + "\n"


def main() -> None:
    """Writes what is not there yet."""
    for revision in revisions()[:-1]:
        for kind, dump in (("sqlite", sqlite_dump), ("postgresql", postgresql_dump)):
            file = HERE / f"{revision}.{kind}.sql"
            if not file.exists():
                file.write_text(dump(revision), "utf-8")
                print(f"{file.name} written")  # noqa: T201 - a script, run by hand


if __name__ == "__main__":
    main()
