"""Comments that were deleted: an earlier batch showed them, a later complete one does not.

Nothing is marked in a comment. What decides is when a batch showed it last and when the complete
batches were copied, so that the order in which batches are handed in changes nothing.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import Boolean, bindparam, text
from sqlmodel import Session, col, func, select

from service.comments.spans import Span
from service.store.columns import UtcTime, id_of
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow

_GONE = text(
    """
    SELECT count(*) FROM comments c JOIN batches b ON b.id = c.batch_id
    WHERE c.round_id = :round AND coalesce(c.seen_latest, b.copied_at) < :now
      AND (c.batch_id = :batch OR :is_first OR coalesce(c.seen_latest, b.copied_at) >= :before)
      AND (c.older = 0 OR NOT EXISTS (
           SELECT 1 FROM versions v WHERE v.comment_id = c.id AND v.seen_latest >= :now))
    """
).bindparams(
    bindparam("now", type_=UtcTime()),
    bindparam("before", type_=UtcTime()),
    bindparam("is_first", type_=Boolean()),
)

#: A batch that shows every comment there was, and stands.
_COMPLETE = (col(BatchRow.complete), col(BatchRow.taken_back).is_(None))


def last_complete(session: Session, row: RoundRow) -> datetime | None:
    """When the last of the round's complete batches was copied; None without one."""
    newest = select(func.max(BatchRow.copied_at)).where(BatchRow.round_id == id_of(row), *_COMPLETE)
    return session.exec(newest).one()


def completes(session: Session, row: RoundRow) -> list[datetime]:
    """When the round's complete batches were copied, earliest first."""
    copied = select(BatchRow.copied_at).where(BatchRow.round_id == id_of(row), *_COMPLETE)
    return sorted(session.exec(copied))


def gone_at(seen: datetime | None, complete: Sequence[datetime]) -> Span | None:
    """Between when a comment was deleted that was last shown at `seen`; None while it stands.

    `complete` are the times of copying of the complete batches, earliest first.
    """
    if seen is None:
        return None
    place = bisect_right(complete, seen)
    return Span(seen, complete[place]) if place < len(complete) else None


def count_gone(session: Session, batch: BatchRow, before: datetime | None) -> int:
    """How many comments are gone with this batch that were not gone before it.

    `before` is when the last complete batch before it was copied.
    """
    copied = [at for at in (before, batch.copied_at if batch.complete else None) if at is not None]
    if not copied:
        return 0
    found = session.connection().execute(
        _GONE,
        {
            "round": batch.round_id,
            "batch": id_of(batch),
            "now": max(copied),
            "before": before,
            "is_first": before is None,
        },
    )
    return int(found.scalar_one())
