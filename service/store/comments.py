"""A round's comments as rows, and as values with all the words they were seen with."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, text
from sqlmodel import Session, col, delete, select, update

from service.comments.comment import Comment
from service.comments.spans import Span
from service.comments.versions import KnownComment, Version, key_of_id, voter_in
from service.counting.pseudonyms import is_forgotten
from service.errors import NotFound
from service.store.columns import id_of
from service.store.many import add_many, as_kept, as_time, in_parts, next_ids, rows_of
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow, CommentRow, VersionRow

_KEY = re.compile(r"[a-z0-9-]+")
#: The columns of a new comment, in the order in which `new_row` tells them.
NEW_COLUMNS = (
    *("id", "round_id", "batch_id", "key", "voter", "author", "author_id", "source_id", "reply_to"),
    *("place", "posted_earliest", "posted_latest", "edited_earliest", "edited_latest"),
    *("text", "reading", "speaks"),
)
_OLDER_COLUMNS = (
    *("comment_id", "number", "text", "written_earliest", "written_latest"),
    *("seen_earliest", "seen_latest", "reading"),
)
#: Reads words as they are kept: the reading, and whether it may decide anything.
Read = Callable[[str], tuple[str, bool]]
_WHOLE = """
    SELECT c.id, c.key, c.author, c.author_id, c.source_id, c.reply_to, c.place,
           c.posted_earliest, c.posted_latest, c.edited_earliest, c.edited_latest,
           coalesce(c.seen_earliest, b.copied_at), coalesce(c.seen_latest, b.copied_at),
           c.text, c.reading, c.older, c.voter
    FROM comments c JOIN batches b ON b.id = c.batch_id
    WHERE c.round_id = :round
"""
_OLDER = text(
    "SELECT comment_id, text, written_earliest, written_latest, seen_earliest, seen_latest, reading"
    " FROM versions WHERE comment_id IN :ids ORDER BY comment_id, number"
).bindparams(bindparam("ids", expanding=True))


@dataclass(frozen=True, slots=True)
class StoredComment:
    """A comment of a round with its row's id, its voter, and how each of its words were read.

    A reading is None where the words have not been read yet.
    """

    id: int
    known: KnownComment
    voter: str
    readings: tuple[str | None, ...]

    @property
    def is_forgotten(self) -> bool:
        """Whether its words are gone; how they were read is good whoever reads now."""
        return is_forgotten(self.voter)


def known_comments(session: Session, row: RoundRow) -> Iterator[KnownComment]:
    """All comments of a round, in the order in which they were handed in, one by one."""
    for one in stored_comments(session, id_of(row), "ORDER BY c.id"):
        yield one.known


def stored_comments(
    session: Session, round_id: int, which: str = "", **given: object
) -> Iterator[StoredComment]:
    """Comments of a round; `which` goes on with the query, such as "AND c.speaks"."""
    for part in in_parts(rows_of(session, _WHOLE + which, {"round": round_id, **given})):
        older = _older_words(session, [one[0] for one in part if one[15]])
        for one in part:
            yield _stored(one, older.get(one[0], ()))


def comments_by_id(session: Session, round_id: int, ids: Sequence[int]) -> Iterator[StoredComment]:
    """The comments of a round that have these ids, in any order."""
    if not ids:
        return
    # The plus keeps SQLite from going through the whole round for a few ids of it.
    by_id = _WHOLE.replace("c.round_id =", "+c.round_id =")
    listed = ", ".join(map(str, ids))
    for part in in_parts(rows_of(session, f"{by_id} AND c.id IN ({listed})", {"round": round_id})):
        older = _older_words(session, [one[0] for one in part if one[15]])
        for one in part:
            yield _stored(one, older.get(one[0], ()))


def comment_row(session: Session, row: RoundRow, key: str) -> CommentRow:
    """The row of one comment of a round.

    Raises:
        NotFound: the round has no comment of that key.
    """
    found = None
    # A key is plain; anything else, such as a NUL that PostgreSQL refuses, is none.
    if _KEY.fullmatch(key):
        of_round = select(CommentRow).where(CommentRow.round_id == id_of(row))
        found = session.exec(of_round.where(CommentRow.key == key)).first()
    if found is None:
        raise NotFound("comment", key, f"see the keys in the comments of round {row.number}")
    return found


def keep_new_comments(
    session: Session, batch: BatchRow, new: Sequence[KnownComment], read: Read
) -> None:
    """Keep comments that no batch has shown before, with all their words."""
    ids = next_ids(session, "comments", len(new))
    rows = []
    older: list[tuple[Any, ...]] = []
    for comment_id, one in zip(ids, new, strict=True):
        kept, speaks = read(one.comment.text)
        comment, posted = one.comment, one.comment.posted
        edited = comment.edited
        rows.append(
            (
                *(comment_id, batch.round_id, batch.id, one.key, voter_in(one), comment.author),
                *(comment.author_id, comment.id, comment.reply_to, comment.place),
                *(as_kept(posted.earliest), as_kept(posted.latest)),
                *(edited and as_kept(edited.earliest), edited and as_kept(edited.latest)),
                *(comment.text, kept, speaks or len(one.versions) > 1, _is_id_later(one)),
            )
        )
        older += _older_rows(comment_id, one, read)
    add_many(session, "comments", (*NEW_COLUMNS, "id_later"), rows)
    add_many(session, "versions", _OLDER_COLUMNS, older)
    edited_at_once = [
        {"id": number, "older": len(one.versions) - 1}
        for number, one in zip(ids, new, strict=True)
        if len(one.versions) > 1
    ]
    if edited_at_once:
        session.exec(update(CommentRow), params=edited_at_once)


def keep_changed_comments(
    session: Session, changed: Sequence[tuple[StoredComment, KnownComment]], read: Read
) -> None:
    """Keep what a batch changed of comments that were known: their words, their times."""
    if not changed:
        return
    # Given ids, this changes each comment by its own.
    values = [_changed_values(before.id, one, read) for before, one in changed]
    session.exec(update(CommentRow), params=values)
    with_older = [
        (before.id, one)
        for before, one in changed
        if len(before.known.versions) > 1 or len(one.versions) > 1
    ]
    # The merge may put words that an earlier batch missed between two others.
    for part in in_parts(with_older, 500):
        ids = [comment_id for comment_id, _ in part]
        session.exec(delete(VersionRow).where(col(VersionRow.comment_id).in_(ids)))
    rows = [row for comment_id, one in with_older for row in _older_rows(comment_id, one, read)]
    add_many(session, "versions", _OLDER_COLUMNS, rows)


def _older_words(session: Session, ids: Sequence[int]) -> dict[int, list[Any]]:
    found: dict[int, list[Any]] = defaultdict(list)
    for part in in_parts(ids, 500):
        found_rows: Iterable[Any] = session.connection().execute(_OLDER, {"ids": part})
        for row in found_rows:
            found[row[0]].append(row)
    return found


def _stored(row: Any, older: Iterable[Any]) -> StoredComment:
    comment = Comment(
        author=row[2],
        text=row[13],
        posted=_span(row[7], row[8]),
        id=row[4],
        author_id=row[3],
        edited=None if row[9] is None else _span(row[9], row[10]),
        reply_to=row[5],
        place=row[6],
    )
    before = [
        Version(one[1], _span(one[2], one[3]), None if one[4] is None else _span(one[4], one[5]))
        for one in older
    ]
    newest = Version(comment.text, comment.written, _span(row[11], row[12]))
    known = KnownComment(row[1], comment, (*before, newest))
    return StoredComment(row[0], known, row[16], (*(one[6] for one in older), row[14]))


def _span(earliest: Any, latest: Any) -> Span:
    first = as_time(earliest)
    return Span(first, first if latest == earliest else as_time(latest))


def _changed_values(comment_id: int, one: KnownComment, read: Read) -> dict[str, Any]:
    comment, newest = one.comment, one.versions[-1]
    kept, speaks = read(comment.text)
    return {
        "id": comment_id,
        "voter": voter_in(one),
        "author": comment.author,
        "author_id": comment.author_id,
        "source_id": comment.id,
        "reply_to": comment.reply_to,
        "posted_earliest": comment.posted.earliest,
        "posted_latest": comment.posted.latest,
        "edited_earliest": comment.edited and comment.edited.earliest,
        "edited_latest": comment.edited and comment.edited.latest,
        "seen_earliest": newest.seen and newest.seen.earliest,
        "seen_latest": newest.seen and newest.seen.latest,
        "text": comment.text,
        "reading": kept,
        "speaks": speaks or len(one.versions) > 1,
        "older": len(one.versions) - 1,
        "id_later": _is_id_later(one),
    }


def _is_id_later(one: KnownComment) -> bool:
    """Whether it has an id by which its key does not tell it."""
    source_id = one.comment.id
    return source_id is not None and one.key != key_of_id(source_id)


def _older_rows(comment_id: int, one: KnownComment, read: Read) -> list[tuple[Any, ...]]:
    return [
        (
            *(comment_id, number, version.text),
            *(as_kept(version.written.earliest), as_kept(version.written.latest)),
            *_kept_ends(version.seen),
            read(version.text)[0],
        )
        for number, version in enumerate(one.versions[:-1], start=1)
    ]


def _kept_ends(span: Span | None) -> tuple[str | None, str | None]:
    return (None, None) if span is None else (as_kept(span.earliest), as_kept(span.latest))


def last_seen(known: KnownComment) -> datetime | None:
    """When the last batch that showed the comment was copied; None where that was not kept."""
    return max((one.seen.latest for one in known.versions if one.seen), default=None)
