"""What passes, where several processes serve: exports that wait, and how far requests are.

It is all of an hour at most: whoever writes here takes away what is older.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import bindparam, insert, text
from sqlmodel import Session, col, delete, select

from service.errors import NotFound
from service.store.columns import UtcTime, id_of
from service.store.tables import GameRow
from service.store.tables_passing import WaitingExportRow, WaitingPieceRow, WatchedRow
from service.store.tokens import digest_of
from service.store.turns import take_turn

#: How many exports wait at once, and how long anything stays.
MOST_WAITING = 6
LASTS = timedelta(hours=1)
#: What is being done, how many comments are done, and of how many (0: not known).
Far = tuple[str, int, int]
_TELL = text("""
    INSERT INTO watched_requests (watch, step, done, total, at)
    VALUES (:watch, :step, :done, :total, :at)
    ON CONFLICT (watch) DO UPDATE SET step = :step, done = :done, total = :total, at = :at
""").bindparams(bindparam("at", type_=UtcTime()))


@dataclass(frozen=True, slots=True)
class Waiter:
    """Whose export waits: the id of the session that sent it, and the key that only it knows."""

    owner: int
    key: str


def keep_waiting(
    session: Session, who: Waiter, game: GameRow, name: str, pieces: Iterable[bytes], now: datetime
) -> None:
    """Keep an export that waits; the oldest makes room."""
    row = WaitingExportRow(
        digest=digest_of(who.key), owner=who.owner, game_id=id_of(game), name=name, since=now
    )
    session.add(row)
    session.flush()
    for number, piece in enumerate(pieces, start=1):
        # Past the session, which would hold all of them in memory.
        values = {"export_id": id_of(row), "number": number, "content": piece}
        session.connection().execute(insert(WaitingPieceRow).values(values))
    # At the end: whoever sends another one meanwhile need not wait for all its bytes.
    take_turn(session, "exports that wait")
    tidy(session, now)
    newest = select(WaitingExportRow.id).order_by(
        col(WaitingExportRow.since).desc(), col(WaitingExportRow.id).desc()
    )
    kept = session.exec(newest.limit(MOST_WAITING)).all()
    session.exec(delete(WaitingExportRow).where(col(WaitingExportRow.id).not_in(kept)))


def find_waiting(session: Session, who: Waiter, now: datetime) -> WaitingExportRow:
    """The export that waits under that key.

    Raises:
        NotFound: it was handed in, waited too long, made room for others, or is another session's.
    """
    asked = select(WaitingExportRow).where(
        WaitingExportRow.digest == digest_of(who.key),
        WaitingExportRow.owner == who.owner,
        col(WaitingExportRow.since) >= now - LASTS,
    )
    row = session.exec(asked).first()
    if row is None:
        raise no_such_export(who.key)
    return row


def no_such_export(key: str) -> NotFound:
    """The error for an export that waits no more."""
    return NotFound("export waiting", key[:40], "choose the file again")


def pieces_of(session: Session, row: WaitingExportRow) -> Iterator[bytes]:
    """The bytes of an export that waits, a piece at a time."""
    number = 0
    while True:
        number += 1
        piece = session.exec(
            select(WaitingPieceRow.content).where(
                WaitingPieceRow.export_id == id_of(row), WaitingPieceRow.number == number
            )
        ).first()
        if piece is None:
            return
        yield piece


def drop_waiting(session: Session, key: str) -> None:
    """Forget an export that waits."""
    mine = col(WaitingExportRow.digest) == digest_of(key)
    session.exec(delete(WaitingExportRow).where(mine))


def drop_waiting_of(session: Session, game: GameRow) -> None:
    """Forget all exports that wait for a game: nobody can say whose words are in them."""
    take_turn(session, "exports that wait")
    of_game = col(WaitingExportRow.game_id) == id_of(game)
    session.exec(delete(WaitingExportRow).where(of_game))


def tell_far(session: Session, watch: str, far: Far, now: datetime) -> None:
    """Keep how far the request of that name is."""
    step, done, total = far
    told = {"watch": watch, "step": step, "done": done, "total": total, "at": now}
    session.connection().execute(_TELL, told)


def far_of(session: Session, watch: str) -> Far | None:
    """How far the request of that name is; None where it is not known."""
    row = session.get(WatchedRow, watch)
    return None if row is None else (row.step, row.done, row.total)


def tidy(session: Session, now: datetime) -> None:
    """Take away what is older than an hour."""
    session.exec(delete(WaitingExportRow).where(col(WaitingExportRow.since) < now - LASTS))
    session.exec(delete(WatchedRow).where(col(WatchedRow.at) < now - LASTS))
