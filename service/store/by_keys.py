"""Comments of a round found by their keys, each by a look into the index of keys."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from sqlmodel import Session

from service.store.many import in_parts, rows_of

#: So many keys are looked up at once.
_AT_ONCE = 500
_FROM_SQLITE = (
    "SELECT {columns} FROM comments c JOIN batches b ON b.id = c.batch_id"
    " WHERE c.round_id = :round AND c.key IN ({keys}) AND {which}"
)
# While a large round is new, PostgreSQL knows nothing of its size, and would go through all of it
# for each few keys: each is looked up by itself, which OFFSET keeps it from changing.
_FROM_POSTGRESQL = (
    "SELECT {columns} FROM unnest(CAST(:keys AS text[])) AS wanted (key)"
    " JOIN LATERAL (SELECT * FROM comments"
    " WHERE comments.round_id = :round AND comments.key = wanted.key OFFSET 0) c ON true"
    " JOIN batches b ON b.id = c.batch_id WHERE {which}"
)


def rows_by_keys(
    session: Session, round_id: int, keys: Sequence[str], columns: str, which: str = "true"
) -> Iterator[Any]:
    """Columns of the comments `c` (and their batches `b`) of these keys, in any order.

    `columns` and `which` are this program's own words.
    """
    on_sqlite = session.connection().dialect.name == "sqlite"
    for some in in_parts(keys, _AT_ONCE):
        if on_sqlite:
            named = {f"key{number}": key for number, key in enumerate(some)}
            marks = ", ".join(f":{name}" for name in named)
            asked = _FROM_SQLITE.format(columns=columns, keys=marks, which=which)
            yield from rows_of(session, asked, {"round": round_id, **named})
        else:
            asked = _FROM_POSTGRESQL.format(columns=columns, which=which)
            yield from rows_of(session, asked, {"round": round_id, "keys": some})
