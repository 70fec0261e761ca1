"""The comments of a round that decide something or may, each voter's together."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import groupby
from typing import Any

from sqlmodel import Session, col, select

from service.comments.spans import Span
from service.counting.round import ReadComment, Ruling
from service.store.columns import id_of
from service.store.comments import comments_by_id, stored_comments
from service.store.many import as_time, in_parts, in_round, rows_of
from service.store.readings import Asked, Rulings, read_comment
from service.store.readings_kept import VoteReader, reading_from
from service.store.silent import WRITTEN
from service.store.tables import RoundRow
from service.store.tables_comments import CommentRow, RulingRow

#: The comments that decide something or may, each voter's together.
SPEAKING = """
    AND (c.speaks OR c.id IN (SELECT comment_id FROM rulings)) ORDER BY c.voter, c.id
"""
_COLUMNS = (
    f"SELECT c.id, c.key, c.voter, c.author, c.author_id, {WRITTEN}, c.reading, c.text, c.older "
)
# The plus keeps SQLite from going through the whole round for a few ids of it.
_BY_ID = f"{_COLUMNS} FROM comments c WHERE +c.round_id = :round AND c.id IN"
_MOST_AT_ONCE = 500


def voters_of(
    session: Session, row: RoundRow, asked: Asked, *, is_kept: bool
) -> Iterator[list[ReadComment]]:
    """The comments of one voter after the other.

    Where the readings that are kept are good, those that decide nothing are left out; else all
    are read anew.
    """
    rulings = rulings_of(session, row)
    if is_kept and not asked.complete:
        comments = _as_kept(session, row, asked, rulings)
    else:
        reader = None if is_kept else VoteReader(asked.question)
        which = SPEAKING if is_kept else "ORDER BY c.voter, c.id"
        comments = (
            read_comment(one, asked, reader, rulings.get(one.known.key, ()))
            for one in stored_comments(session, id_of(row), which)
        )
    for _, of_one_voter in groupby(comments, key=lambda one: one.voter):
        yield list(of_one_voter)


def _as_kept(
    session: Session, row: RoundRow, asked: Asked, rulings: Rulings
) -> Iterator[ReadComment]:
    """The comments that may decide something, by what is kept of them alone."""
    within = in_round(session, id_of(row))
    found = rows_of(session, f"{_COLUMNS} {within.of} {SPEAKING}", within.given)
    for part in in_parts(found):
        yield from _heard(session, row, asked, rulings, part)


def comments_of(
    session: Session, row: RoundRow, asked: Asked, rulings: Rulings, ids: Sequence[int]
) -> Iterator[ReadComment]:
    """The same of the comments of these ids, in their order."""
    for part in in_parts(ids, _MOST_AT_ONCE):
        listed = ", ".join(map(str, part))
        rows = {one[0]: one for one in rows_of(session, f"{_BY_ID} ({listed})", _of(row))}
        yield from _heard(session, row, asked, rulings, [rows[one] for one in part])


def _heard(
    session: Session, row: RoundRow, asked: Asked, rulings: Rulings, part: Iterable[Any]
) -> Iterator[ReadComment]:
    """Only of those that had other words before is all of it needed, to tell which stood."""
    ids = [one[0] for one in part if one[-1]]
    edited = {
        one.known.key: read_comment(one, asked, None, rulings.get(one.known.key, ()))
        for one in comments_by_id(session, id_of(row), ids)
    }
    for one in part:
        yield edited[one[1]] if one[-1] else _as_it_is(one, asked, rulings.get(one[1], ()))


def _as_it_is(one: Any, asked: Asked, ruled: tuple[Ruling, ...]) -> ReadComment:
    """A comment by its row alone: it never had other words, and its reading is good."""
    _, key, voter, author, author_id, earliest, latest, reading, words, _ = one
    first = as_time(earliest)
    written = Span(first, first if latest == earliest else as_time(latest))
    is_host = asked.hosts.are(author_id, author)
    return ReadComment(key, voter, author, written, reading_from(reading), is_host, ruled, words)


def comments_as_kept(
    session: Session,
    row: RoundRow,
    asked: Asked,
    ids: Sequence[int],
    rulings: Mapping[int, tuple[Ruling, ...]],
) -> Iterator[tuple[int, ReadComment]]:
    """The comments of these ids, where the readings that are kept are good; rulings are by id."""
    listed = ", ".join(map(str, ids)) or "0"
    others: list[int] = []
    for one in rows_of(session, f"{_BY_ID} ({listed})", _of(row)):
        if one[-1] or asked.complete or one[7] is None:
            others.append(one[0])
        else:
            yield one[0], _as_it_is(one, asked, rulings.get(one[0], ()))
    for stored in comments_by_id(session, id_of(row), others):
        yield stored.id, read_comment(stored, asked, None, rulings.get(stored.id, ()))


def _of(row: RoundRow) -> dict[str, object]:
    return {"round": id_of(row)}


def rulings_of(session: Session, row: RoundRow) -> Rulings:
    """The host's rulings by the keys of their comments, oldest first."""
    found: dict[str, list[Ruling]] = defaultdict(list)
    joined = (
        select(CommentRow.key, RulingRow)
        .join(RulingRow, col(RulingRow.comment_id) == col(CommentRow.id))
        .where(col(CommentRow.round_id) == id_of(row))
        .order_by(col(RulingRow.id))
    )
    for key, ruled in session.exec(joined):
        found[key].append(
            Ruling(tuple(ruled.pages), ruled.reason, ruled.at, ruled.withdraws, ruled.in_time)
        )
    return {key: tuple(rulings) for key, rulings in found.items()}
