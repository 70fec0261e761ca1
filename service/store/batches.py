"""Batches: comments handed in, all or nothing, and the same bytes only once."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from hashlib import sha256

from sqlmodel import Session, col, func, select

from service.comments.formats import Export
from service.comments.identity import merge_batch
from service.errors import WrongState
from service.store.columns import id_of
from service.store.comments import keep_changed_comments, keep_new_comments, known_comments
from service.store.rounds import name_of, take_round
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow


@dataclass(frozen=True, slots=True)
class Delivery:
    """One export as it was handed in: its bytes, how it was read, by whom and when."""

    name: str
    content: bytes
    export: Export
    copied_at: datetime
    by: str
    at: datetime


@dataclass(frozen=True, slots=True)
class BatchReport:
    """What a batch held, counted against what was known before it was handed in."""

    batch: BatchRow
    new: int
    edited: int
    unchanged: int
    repeated: bool


def hand_in(session: Session, row: RoundRow, delivery: Delivery) -> BatchReport:
    """Keep the comments of an export. The same bytes read the same way change nothing.

    An announced result stays as it is: what is found late counts in its next revision.

    Raises:
        WrongState: the round is a draft.
    """
    take_round(session, row)
    check_takes_comments(row)
    digest = _digest(delivery)
    of_round = select(BatchRow).where(BatchRow.round_id == id_of(row))
    before = session.exec(of_round.where(BatchRow.digest == digest)).first()
    if before is not None:
        held = before.new + before.edited + before.unchanged
        return BatchReport(before, 0, 0, held, repeated=True)
    known = known_comments(session, row)
    merge = merge_batch(known, delivery.export.comments, delivery.copied_at)
    batch = _batch(session, row, delivery, digest)
    batch.new, batch.edited = len(merge.new), len(merge.edited)
    batch.unchanged = len(merge.unchanged)
    session.add(batch)
    session.flush()
    keep_new_comments(session, batch, merge.new)
    keep_changed_comments(session, batch, merge.edited + merge.confirmed)
    return first_report(batch)


def first_report(batch: BatchRow) -> BatchReport:
    """The report of a batch as it was when it was handed in."""
    return BatchReport(batch, batch.new, batch.edited, batch.unchanged, repeated=False)


def check_takes_comments(row: RoundRow) -> None:
    """Whether comments can be handed in to the round.

    Raises:
        WrongState: the round is a draft.
    """
    if row.state == "draft":
        raise WrongState(name_of(row), "a draft", "given comments", "open it first")


def batches_of(session: Session, row: RoundRow) -> Sequence[BatchRow]:
    """The batches of a round in the order in which they came."""
    of_round = select(BatchRow).where(BatchRow.round_id == id_of(row))
    return session.exec(of_round.order_by(col(BatchRow.number))).all()


def _batch(session: Session, row: RoundRow, delivery: Delivery, digest: str) -> BatchRow:
    newest = session.exec(
        select(func.max(BatchRow.number)).where(BatchRow.round_id == id_of(row))
    ).one()
    export = delivery.export
    return BatchRow(
        round_id=id_of(row),
        number=(newest or 0) + 1,
        digest=digest,
        name=delivery.name,
        format=export.format,
        mapping=dict(export.mapping),
        notes=list(export.notes),
        unreadable=[
            {"place": one.place, "text": one.text, "why": one.why} for one in export.unreadable
        ],
        new=0,
        edited=0,
        unchanged=0,
        size=len(delivery.content),
        copied_at=delivery.copied_at,
        handed_in=delivery.at,
        handed_in_by=delivery.by,
    )


def _digest(delivery: Delivery) -> str:
    """The digest of the bytes and of how they were read."""
    how = json.dumps([delivery.export.format, sorted(delivery.export.mapping)])
    return sha256(sha256(delivery.content).digest() + how.encode("utf-8")).hexdigest()
