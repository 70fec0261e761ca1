"""The digest of each table: two databases with the same digests hold the same, whatever kind.

A table's digest is the SHA-256 over its rows in the order of their keys, each as a line of JSON:
times in UTC, bytes in hexadecimal, JSON as the text that is kept of it.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime
from hashlib import sha256
from typing import Any

from sqlalchemy import JSON, ColumnElement, Connection, String, Table, Text, cast, select
from sqlalchemy import type_coerce as taken_as

from service.errors import CopyDiffers
from service.store.every_table import kept_tables
from service.store.many import AT_ONCE


@dataclass(frozen=True, slots=True)
class TableDigest:
    """How many rows a table has, and the SHA-256 of them all in hexadecimal."""

    table: str
    rows: int
    digest: str


def digests_of(connection: Connection) -> tuple[TableDigest, ...]:
    """The digests of all tables whose rows stay, those first that others refer to."""
    return tuple(_digest_of(connection, table) for table in kept_tables())


def check_same(of: tuple[TableDigest, ...], copy: tuple[TableDigest, ...]) -> None:
    """Whether a copy holds what was copied.

    Raises:
        CopyDiffers: a table has other rows.
    """
    for one, other in zip(of, copy, strict=True):
        if one != other:
            raise CopyDiffers(one.table)


def rows_in(connection: Connection, table: Table) -> Iterator[tuple[Any, ...]]:
    """A table's rows in the order of their keys, never all at once in memory.

    Times are aware; JSON is text as it is kept, so that a copy of it is the same to the letter.
    """
    postgres = connection.dialect.name == "postgresql"
    asked = select(*(_plain(column, postgres=postgres) for column in table.columns))
    asked = asked.order_by(*(_ordered(key, postgres=postgres) for key in table.primary_key))
    found = connection.execute(asked, execution_options={"yield_per": AT_ONCE})
    for part in found.partitions(AT_ONCE):
        yield from map(tuple, part)


def _digest_of(connection: Connection, table: Table) -> TableDigest:
    digest, count = sha256(), 0
    for row in rows_in(connection, table):
        digest.update(json.dumps([_in_json(value) for value in row]).encode() + b"\n")
        count += 1
    return TableDigest(table.name, count, digest.hexdigest())


def _in_json(value: Any) -> Any:
    if isinstance(value, datetime):
        return value.astimezone(UTC).isoformat(timespec="microseconds")
    if isinstance(value, date):
        return value.isoformat()
    return value.hex() if isinstance(value, bytes) else value


def _plain(column: ColumnElement[Any], *, postgres: bool) -> ColumnElement[Any]:
    if not isinstance(column.type, JSON):
        return column
    return cast(column, Text) if postgres else taken_as(column, Text)


def _ordered(column: ColumnElement[Any], *, postgres: bool) -> ColumnElement[Any]:
    # Each PostgreSQL database orders text in its own way; SQLite by its bytes.
    is_text = isinstance(column.type, String)
    return column.collate("C") if postgres and is_text else column
