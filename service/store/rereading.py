"""A round's comments read anew, where the readings that are kept are of another reader."""

from __future__ import annotations

from sqlmodel import Session, update

from service.store.columns import id_of
from service.store.comments import StoredComment, stored_comments
from service.store.many import AT_ONCE, rows_of
from service.store.readings_kept import VoteReader, read_by
from service.store.tables import RoundRow
from service.store.tables_comments import CommentRow, VersionRow


def read_anew(session: Session, row: RoundRow, reader: VoteReader) -> None:
    """Keep how every comment of the round is read by `reader`, within a transaction that writes."""
    last = 0
    while part := list(
        stored_comments(
            session, id_of(row), f"AND c.id > :last ORDER BY c.id LIMIT {AT_ONCE}", last=last
        )
    ):
        # Of words that were forgotten only their reading is left.
        with_words = [one for one in part if not one.is_forgotten]
        if with_words:
            session.exec(update(CommentRow), params=[_newest(one, reader) for one in with_words])
        older = [one for one in with_words if len(one.known.versions) > 1]
        if older:
            _read_older(session, older, reader)
        last = part[-1].id
    row.read_by = read_by(reader.question)
    session.add(row)
    session.flush()


def _newest(one: StoredComment, reader: VoteReader) -> dict[str, object]:
    kept, speaks = reader.read(one.known.comment.text)
    return {"id": one.id, "reading": kept, "speaks": speaks or len(one.known.versions) > 1}


def _read_older(session: Session, older: list[StoredComment], reader: VoteReader) -> None:
    asked = "SELECT id, text, comment_id FROM versions WHERE comment_id BETWEEN :first AND :last"
    ids = {one.id for one in older}
    between = rows_of(session, asked, {"first": older[0].id, "last": older[-1].id})
    found = [(number, words) for number, words, comment_id in between if comment_id in ids]
    session.exec(
        update(VersionRow),
        params=[{"id": number, "reading": reader.read(words)[0]} for number, words in found],
    )
