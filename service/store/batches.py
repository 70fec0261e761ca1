"""Batches: comments handed in, all or nothing, and the same bytes only once."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from hashlib import sha256
from typing import Literal

from sqlalchemy import ColumnElement, Text, cast
from sqlmodel import Session, and_, col, func, or_, select

from service.comments.content import Content
from service.errors import NotFound, WrongState
from service.store.columns import id_of
from service.store.deleted import count_gone, last_complete
from service.store.forgotten import check_not_forgotten
from service.store.keeping import Kept, keep_comments
from service.store.rounds import name_of, take_round
from service.store.staging import Staged, Tell, say_nothing
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow


@dataclass(frozen=True, slots=True)
class Delivery:
    """One export as it was handed in: how it was read, by whom and when.

    `size` and `digest` are of its bytes. `copied_told` says that the host told `copied_at`, and
    `complete` that she says it shows every comment that there was then.
    """

    name: str
    size: int
    digest: str
    staged: Staged
    copied_at: datetime
    by: str
    at: datetime
    copied_told: bool = True
    complete: bool = False


#: Whether a batch shows all that was written before the closing.
Reach = Literal["yes", "no", "cannot tell"]


@dataclass(frozen=True, slots=True)
class BatchReport:
    """What a batch held, counted against what was known before it was handed in."""

    batch: BatchRow
    new: int
    edited: int
    unchanged: int
    gone: int
    repeated: bool


def hand_in(
    session: Session, row: RoundRow, delivery: Delivery, tell: Tell = say_nothing
) -> BatchReport:
    """Keep the comments of an export. The same bytes read the same way change nothing.

    An announced result stays as it is: what is found late counts in its next revision.

    Raises:
        WrongState: the round is a draft, or the game's comments were forgotten.
    """
    take_round(session, row, to_hand_in=True)
    check_takes_comments(row)
    check_not_forgotten(session, row)
    before = _same_before(session, row, delivery)
    if before is not None:
        held = before.new + before.edited + before.unchanged
        return BatchReport(before, 0, 0, held, 0, repeated=True)
    complete_before = last_complete(session, row)
    batch = new_batch(row, delivery, newest_number(session, row) + 1)
    session.add(batch)
    session.flush()
    kept = keep_comments(session, row, batch, delivery.staged, tell)
    _count(session, batch, kept, complete_before)
    tell("stored", delivery.staged.count, delivery.staged.count)
    return first_report(batch)


def first_report(batch: BatchRow) -> BatchReport:
    """The report of a batch as it was when it was handed in."""
    return BatchReport(batch, batch.new, batch.edited, batch.unchanged, batch.gone, repeated=False)


def reach_of(batch: BatchRow, closes: datetime | None) -> Reach | None:
    """Whether a batch reaches past the closing; None while there is none.

    It does where it was copied after it, or shows a comment surely written then. Where nobody told
    when it was copied, an old export may have been handed in late.
    """
    if closes is None:
        return None
    if batch.copied_at < closes:
        return "no"
    if batch.copied_told or (batch.last_sure is not None and batch.last_sure >= closes):
        return "yes"
    return "cannot tell"


def check_takes_comments(row: RoundRow) -> None:
    """Whether comments can be handed in to the round.

    Raises:
        WrongState: the round is a draft.
    """
    if row.state == "draft":
        raise WrongState(name_of(row), "a draft", "given comments", "open it first")


def last_batch(session: Session, row: RoundRow) -> BatchRow | None:
    """The last of the batches that stand."""
    newest_first = select(BatchRow).where(_standing(row)).order_by(col(BatchRow.number).desc())
    return session.exec(newest_first.limit(1)).first()


def batches_with_notes(session: Session, row: RoundRow) -> Sequence[BatchRow]:
    """The batches that stand and could not be read without a word, in the order in which they came.

    Where comments come one by one these are few of very many.
    """
    noted = cast(col(BatchRow.notes), Text) != "[]"
    unreadable = col(BatchRow.unreadable_count) > 0
    told = select(BatchRow).where(_standing(row), or_(noted, unreadable))
    return session.exec(told.order_by(col(BatchRow.number))).all()


def _standing(row: RoundRow) -> ColumnElement[bool]:
    return and_(BatchRow.round_id == id_of(row), col(BatchRow.taken_back).is_(None))


def some_batches(
    session: Session, row: RoundRow, most: int, after: int = 0, *, newest_first: bool = False
) -> Sequence[BatchRow]:
    """At most so many of all batches, without the `after` that come before: there may be very many."""
    by_number = col(BatchRow.number).desc() if newest_first else col(BatchRow.number)
    of_round = select(BatchRow).where(BatchRow.round_id == id_of(row)).order_by(by_number)
    return session.exec(of_round.limit(most).offset(after)).all()


def count_batches(session: Session, row: RoundRow, since: datetime | None = None) -> int:
    """How many batches stand; `since` only those that were copied then or later."""
    found = select(func.count()).where(_standing(row))
    if since is not None:
        found = found.where(BatchRow.copied_at >= since)
    return session.exec(found).one()


def batch_numbered(session: Session, row: RoundRow, number: int) -> BatchRow:
    """The round's batch of that number.

    Raises:
        NotFound: the round has no such batch.
    """
    of_round = select(BatchRow).where(BatchRow.round_id == id_of(row))
    found = session.exec(of_round.where(BatchRow.number == number)).first()
    if found is None:
        raise NotFound("batch", str(number), "see the batches of the round")
    return found


def digest_of(content: Content) -> str:
    """The SHA-256 of an export's bytes."""
    found = sha256()
    for piece in content.pieces():
        found.update(piece)
    return found.hexdigest()


def _same_before(session: Session, row: RoundRow, delivery: Delivery) -> BatchRow | None:
    of_round = select(BatchRow).where(BatchRow.round_id == id_of(row))
    return session.exec(of_round.where(BatchRow.digest == digest_of_delivery(delivery))).first()


def newest_number(session: Session, row: RoundRow) -> int:
    """The number of the round's newest batch; 0 without one."""
    of_round = select(func.max(BatchRow.number)).where(BatchRow.round_id == id_of(row))
    return session.exec(of_round).one() or 0


def new_batch(row: RoundRow, delivery: Delivery, number: int, *, new: int = 0) -> BatchRow:
    """The row of a batch that has not been counted yet, but for comments that are surely new."""
    read = delivery.staged
    return BatchRow(
        round_id=id_of(row),
        number=number,
        digest=digest_of_delivery(delivery),
        name=delivery.name,
        format=read.export.format,
        mapping=dict(read.export.mapping),
        notes=list(read.export.notes()),
        unreadable=[
            {"place": one.place, "text": one.text, "why": one.why} for one in read.unreadable
        ],
        unreadable_count=read.unreadable_count,
        new=new,
        edited=0,
        unchanged=0,
        gone=0,
        complete=delivery.complete,
        size=delivery.size,
        first=read.first,
        last=read.last,
        last_sure=read.last_sure,
        copied_at=delivery.copied_at,
        copied_told=delivery.copied_told,
        handed_in=delivery.at,
        handed_in_by=delivery.by,
    )


def _count(session: Session, batch: BatchRow, kept: Kept, complete_before: datetime | None) -> None:
    if kept.forgotten:
        told = "comment that was" if kept.forgotten == 1 else "comments that were"
        batch.notes = [*batch.notes, f"Left out: {kept.forgotten} {told} forgotten on request."]
    batch.new, batch.edited, batch.unchanged = kept.new, kept.edited, kept.unchanged
    batch.gone = count_gone(session, batch, complete_before)
    session.add(batch)
    session.flush()


def digest_of_delivery(delivery: Delivery) -> str:
    """The digest of the bytes and of how they were read."""
    export = delivery.staged.export
    how = [export.format, sorted(export.mapping), *(["complete"] if delivery.complete else [])]
    return sha256(delivery.digest.encode("ascii") + json.dumps(how).encode("utf-8")).hexdigest()
