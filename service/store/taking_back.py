"""A batch taken back: handed in by mistake, or with its columns mapped wrongly."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session, col, delete, select

from service.errors import WrongState
from service.store.batches import batch_numbered, last_batch
from service.store.columns import id_of
from service.store.rounds import name_of, take_round
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import (
    BatchRow,
    CommentRow,
    GuessRulingRow,
    RulingRow,
    VersionRow,
)
from service.store.tables_forgotten import KeptGuessRow
from service.store.tables_mystery import GuessPickRow, WinnerRow

_WISH = "taken back"


def take_back(
    session: Session, game: GameRow, row: RoundRow, number: int, told: tuple[str, datetime]
) -> BatchRow:
    """Take the round's last batch back, with the host's reason and the time in `told`.

    Its comments go, as if it had never been handed in, so the same bytes can be handed in again.
    That it was, and why it was taken back, stays in the list of batches. Only what can be undone
    without a trace in other comments is: a batch that showed a comment of an earlier one has
    changed what is known of that.

    Raises:
        NotFound: the round has no such batch.
        WrongState: it was taken back before, another batch came after it, it showed comments of
            an earlier batch, a comment of it was ruled on or won, or the round is announced.
    """
    take_round(session, row)
    batch = batch_numbered(session, row, number)
    _check(session, game, row, batch)
    of_batch = select(CommentRow.id).where(CommentRow.batch_id == id_of(batch))
    for table in (VersionRow, KeptGuessRow):
        session.exec(delete(table).where(col(table.comment_id).in_(of_batch)))
    session.exec(delete(CommentRow).where(col(CommentRow.batch_id) == id_of(batch)))
    batch.why_taken_back, batch.taken_back = told
    # The digest is how the same bytes are known again: they are not known any more.
    batch.digest = f"{batch.digest} taken back as {batch.number}"
    session.add(batch)
    session.flush()
    return batch


def _check(session: Session, game: GameRow, row: RoundRow, batch: BatchRow) -> None:
    name = f"batch {batch.number} of {name_of(row)}"
    if batch.taken_back is not None:
        raise WrongState(name, "taken back already", _WISH, "see the batches of the round")
    if row.state == "announced":
        todo = "rule on the comments that are wrong, and announce a new revision"
        raise WrongState(name_of(row), "announced", f"freed of batch {batch.number}", todo)
    last = last_batch(session, row) or batch
    if last.number != batch.number:
        todo = f"take batch {last.number} back first"
        raise WrongState(name, f"followed by batch {last.number}", _WISH, todo)
    known = batch.edited + batch.unchanged
    if known:
        told = "a comment" if known == 1 else f"{known:,} comments"
        todo = "rule on the comments that are wrong"
        raise WrongState(name, f"joined to {told} of earlier batches", _WISH, todo)
    if _is_decided_on(session, game, batch):
        todo = "rule on the comments that are wrong"
        raise WrongState(name, "ruled on in part", _WISH, todo)


def _is_decided_on(session: Session, game: GameRow, batch: BatchRow) -> bool:
    """Whether a comment of the batch was ruled on as a vote or a guess, or won."""
    of_batch = CommentRow.batch_id == id_of(batch)
    ruled = select(RulingRow.id).join(CommentRow).where(of_batch)
    if session.exec(ruled.limit(1)).first() is not None:
        return True
    keys = select(CommentRow.key).where(of_batch)
    return any(
        session.exec(
            select(table.id).where(table.game_id == id_of(game), col(table.key).in_(keys)).limit(1)
        ).first()
        is not None
        for table in (GuessRulingRow, GuessPickRow, WinnerRow)
    )
