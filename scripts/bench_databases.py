"""A new database of each kind for a measure, gone when it ends."""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from uuid import uuid4

import psycopg
from psycopg import sql
from sqlalchemy.engine import URL

from service.errors import BadInput

KINDS = ("SQLite", "PostgreSQL")


@contextmanager
def new_database(kind: str) -> Iterator[str]:
    """The URL of a new database on the PostgreSQL server of PGHOST, or empty for a file.

    Raises:
        BadInput: no PostgreSQL server answers.
    """
    if kind == "SQLite":
        yield ""
        return
    server = _server()
    name = f"loopstart_bench_{uuid4().hex}"
    with _connected(server) as connection:
        connection.execute(sql.SQL("CREATE DATABASE {}").format(sql.Identifier(name)))
    try:
        yield server.set(database=name).render_as_string(hide_password=False)
    finally:
        with _connected(server) as connection:
            gone = sql.SQL("DROP DATABASE {} WITH (FORCE)").format(sql.Identifier(name))
            connection.execute(gone)


def _server() -> URL:
    """The server by PostgreSQL's own variables, else the one of this computer."""
    return URL.create(
        "postgresql",
        username=os.environ.get("PGUSER", "postgres"),
        password=os.environ.get("PGPASSWORD"),
        host=os.environ.get("PGHOST", "127.0.0.1"),
        port=int(os.environ.get("PGPORT", "5432")),
        database="postgres",
    )


def _connected(server: URL) -> psycopg.Connection[tuple[object, ...]]:
    try:
        return psycopg.connect(server.render_as_string(hide_password=False), autocommit=True)
    except psycopg.OperationalError as trouble:
        raise BadInput(
            f"no PostgreSQL server answers at {server.host}:{server.port}",
            "start one, or add --database SQLite",
        ) from trouble
