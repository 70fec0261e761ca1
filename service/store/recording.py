"""The record of a stored round, made without having all its comments in memory.

Comments are settled voter by voter, and stand in the record by their time: what each becomes waits for
its place in a scratch database that is a file without a name.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from itertools import groupby

from sqlmodel import Session

from service.counting.record import RecordAbout, RecordedCount, SealedRecord
from service.store.counting import input_of, read_comments
from service.store.many import AT_ONCE, as_kept
from service.store.tables import GameRow, RoundRow

_SCRATCH = (
    "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -16000;"
    "PRAGMA temp_store = FILE;"
    "CREATE TABLE entries (earliest TEXT, latest TEXT, key TEXT, entry TEXT)"
)
_ADD = "INSERT INTO entries VALUES (?, ?, ?, ?)"
_IN_ORDER = "SELECT entry FROM entries ORDER BY earliest, latest, key"
_Row = tuple[str, str, str, str]


def record_of(session: Session, game: GameRow, row: RoundRow, about: RecordAbout) -> SealedRecord:
    """The record of the round's count as it stands.

    Raises:
        WrongState: the round is a draft.
        BadRules: words with a broken character.
    """
    count = RecordedCount(about, input_of(session, game, row))
    with closing(sqlite3.connect("", isolation_level=None)) as scratch:
        scratch.executescript(_SCRATCH)
        rows: list[_Row] = []
        for one in _entries(session, game, row, count):
            rows.append(one)
            if len(rows) == AT_ONCE:
                scratch.executemany(_ADD, rows)
                rows = []
        scratch.executemany(_ADD, rows)
        return count.sealed(entry for (entry,) in scratch.execute(_IN_ORDER))


def _entries(
    session: Session, game: GameRow, row: RoundRow, count: RecordedCount
) -> Iterator[_Row]:
    comments = read_comments(session, game, row, "ORDER BY c.voter, c.id")
    for _, of_one_voter in groupby(comments, key=lambda one: one.voter):
        for (earliest, latest, key), entry in count.add(of_one_voter):
            yield as_kept(earliest), as_kept(latest), key, entry
