"""Several small batches of one round kept in one transaction, in the order in which they came.

Nearly always every comment of theirs is new, has an id and shares it with no other: then all of them
go straight into their tables. Anything else is done one batch after the other, each whole or not at
all; what is kept is the same both ways.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain

from sqlalchemy import text
from sqlmodel import Session, col, select

from service.errors import LoopstartError
from service.store.batches import (
    BatchReport,
    Delivery,
    check_takes_comments,
    digest_of_delivery,
    first_report,
    hand_in,
    new_batch,
    newest_number,
)
from service.store.by_keys import rows_by_keys
from service.store.columns import id_of
from service.store.deleted import last_complete
from service.store.forgotten import check_not_forgotten, forgotten_in
from service.store.many import add_many
from service.store.preparing import ROW, Row
from service.store.rounds import take_round
from service.store.tables import RoundRow
from service.store.tables_comments import NOT_BY_KEY, BatchRow, CommentRow


def hand_in_all(
    session: Session, row: RoundRow, deliveries: Sequence[Delivery]
) -> list[BatchReport | LoopstartError]:
    """Keep the comments of each; for each its report, or why it was not kept.

    Raises:
        WrongState: the round is a draft, or the game's comments were forgotten.
    """
    if len(deliveries) == 1:
        return [hand_in(session, row, deliveries[0])]
    take_round(session, row, to_hand_in=True)
    check_takes_comments(row)
    check_not_forgotten(session, row)
    fresh = _fresh_rows(session, row, deliveries)
    if fresh is not None:
        return list(_keep_fresh(session, row, deliveries, fresh))
    return [_keep_one(session, row, delivery) for delivery in deliveries]


def _keep_one(session: Session, row: RoundRow, delivery: Delivery) -> BatchReport | LoopstartError:
    try:
        with session.begin_nested():
            return hand_in(session, row, delivery)
    except LoopstartError as error:
        return error


def _fresh_rows(
    session: Session, row: RoundRow, deliveries: Sequence[Delivery]
) -> list[list[Row]] | None:
    """The rows of each, where nothing of them has to do with any other comment or batch."""
    digests = {digest_of_delivery(one) for one in deliveries}
    if len(digests) < len(deliveries) or any(map(_is_special, deliveries)):
        return None
    if any(one.staged.readings != row.read_by for one in deliveries):
        return None
    rows = [_rows_of(one) for one in deliveries]
    keys = [one[0] for one in chain.from_iterable(rows)]
    if len(set(keys)) < len(keys) or _is_met(session, row, digests, keys):
        return None
    return rows


def _is_special(delivery: Delivery) -> bool:
    return delivery.complete or delivery.staged.without_ids


def _rows_of(delivery: Delivery) -> list[Row]:
    return [one for part in delivery.staged.waiting.read() for _, one in part]


def _is_met(session: Session, row: RoundRow, digests: set[str], keys: Sequence[str]) -> bool:
    """Whether the round has any of the batches or comments, or something that may be one of them."""
    round_id = id_of(row)
    same = select(BatchRow.id).where(
        BatchRow.round_id == round_id, col(BatchRow.digest).in_(sorted(digests))
    )
    others = select(CommentRow.id).where(CommentRow.round_id == round_id, text(NOT_BY_KEY))
    return (
        any(True for _ in rows_by_keys(session, round_id, keys, "c.id"))
        or any(session.exec(asked.limit(1)).first() is not None for asked in (same, others))
        or last_complete(session, row) is not None
        or bool(forgotten_in(session, row))
    )


def _keep_fresh(
    session: Session, row: RoundRow, deliveries: Sequence[Delivery], rows: Sequence[Sequence[Row]]
) -> list[BatchReport]:
    first = newest_number(session, row) + 1
    batches = [
        new_batch(row, delivery, number, new=len(of_batch))
        for number, (delivery, of_batch) in enumerate(zip(deliveries, rows, strict=True), first)
    ]
    session.add_all(batches)
    session.flush()
    told = [
        (id_of(batch), *one)
        for batch, of_batch in zip(batches, rows, strict=True)
        for one in of_batch
    ]
    add_many(session, "comments", ("batch_id", *ROW), told, {"round_id": id_of(row)})
    return [first_report(batch) for batch in batches]
