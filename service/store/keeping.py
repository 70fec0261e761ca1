"""The comments of a batch put among those of its round, within one transaction.

New ones that share nothing with any other go straight into their table. The rest is merged.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass

from sqlmodel import Session

from service.comments.comment import Comment
from service.comments.identity import merge_batch
from service.comments.versions import name_of
from service.store.by_keys import rows_by_keys
from service.store.columns import id_of
from service.store.comments import (
    StoredComment,
    comments_by_id,
    keep_changed_comments,
    keep_new_comments,
    stored_comments,
)
from service.store.forgotten import Forgotten, forgotten_in
from service.store.leftovers import Leftovers, Part
from service.store.many import add_many, in_parts, rows_of
from service.store.preparing import ROW, Links, Row, Waiting, comment_in
from service.store.rereading import read_anew
from service.store.shared_links import Shared
from service.store.staging import Staged, Tell
from service.store.tables import RoundRow
from service.store.tables_comments import NOT_BY_KEY, BatchRow
from service.store.unchanged import Unchanged

#: From so many comments on, SQLite is given more memory than it takes by itself.
_LARGE = 50_000
_CACHE = 28_000
#: Up to so many comments are looked up one by one among those of the round.
_FEW = 500


@dataclass(slots=True)
class Kept:
    """How many comments of a batch were new, edited, unchanged, or are to stay forgotten."""

    new: int = 0
    edited: int = 0
    unchanged: int = 0
    forgotten: int = 0


def keep_comments(
    session: Session, row: RoundRow, batch: BatchRow, staged: Staged, tell: Tell
) -> Kept:
    """Put a batch's comments among those of the round, which this transaction has for itself."""
    if row.read_by != staged.readings:
        read_anew(session, row, staged.reader)
    kept, forgotten = Kept(), forgotten_in(session, row)
    with closing(Leftovers()) as left, _room(session, staged.count):
        waiting = staged.waiting
        if staged.with_ids and not waiting.is_linked_whole and _any_without_id(session, row):
            waiting.link_whole()
        unchanged = None
        if staged.count > _FEW and not staged.without_ids and not waiting.is_linked_whole:
            unchanged = Unchanged(session, row, batch, waiting.shared)
            unchanged.mark(waiting.shared, left)
        else:
            _find_known(session, row, staged, left)
        waiting.shared.forget_once()
        done = 0
        for some in waiting.read():
            done += len(some)
            fresh = _without_forgotten(some, forgotten, kept) if forgotten else some
            alone, rest = waiting.shared.parted(fresh)
            if unchanged is not None:
                same, rest = unchanged.part(rest, left)
                kept.unchanged += same
            _leave_over(rest, waiting.shared, left)
            _add_fresh(session, batch, alone, kept)
            tell("storing", done, staged.count)
        for part in left.parts():
            _add_fresh(session, batch, [one for _, one in part.alone], kept)
            _merge(session, batch, staged, part, kept)
            tell("merging", done, staged.count)
    return kept


def _without_forgotten(
    waiting: Sequence[Waiting], forgotten: Forgotten, kept: Kept
) -> list[Waiting]:
    left = [one for one in waiting if not forgotten.has(one)]
    kept.forgotten += len(waiting) - len(left)
    return left


def _leave_over(rest: Sequence[Waiting], shared: Shared, left: Leftovers) -> None:
    """Leave over what may have to do with another comment."""
    for one in rest:
        left.add(tuple(filter(shared.is_shared, one[0])), one)


def _add_fresh(session: Session, batch: BatchRow, fresh: Sequence[Row], kept: Kept) -> None:
    add_many(
        session, "comments", ROW, fresh, {"round_id": batch.round_id, "batch_id": id_of(batch)}
    )
    kept.new += len(fresh)


def _merge(session: Session, batch: BatchRow, staged: Staged, part: Part, kept: Kept) -> None:
    if not part.waiting:
        return
    known = {one.known.key: one for one in _with_ids(session, batch, part.known)}
    comments = [comment_in(one) for one in part.waiting]
    before = (one.known for one in known.values())
    merge = merge_batch(before, comments, batch.copied_at)
    read = _remembering(part, staged)
    keep_new_comments(session, batch, merge.new, read)
    changed = [(known[one.key], one) for one in (*merge.edited, *merge.confirmed)]
    keep_changed_comments(session, changed, read)
    kept.new += len(merge.new)
    kept.edited += len(merge.edited)
    kept.unchanged += len(merge.unchanged)


def _remembering(part: Part, staged: Staged) -> Callable[[str], tuple[str, bool]]:
    """Reads words as they are kept, those of the part without reading them once more."""
    read = {one[-3]: (one[-2], one[-1]) for _, one in part.waiting}
    return lambda words: read.get(words) or staged.reader.read(words)


def _find_known(session: Session, row: RoundRow, staged: Staged, left: Leftovers) -> None:
    """Leave over all known comments that one of the batch may be."""
    shared, links = staged.waiting.shared, Links()
    may_be = _names_in(staged) if staged.count < _LARGE else None
    for one in _perhaps_known(session, row, staged):
        if one.is_forgotten or (may_be is not None and not may_be(one.known.comment)):
            continue
        met = tuple(filter(shared.has, links.of_known(one.known)))
        if met:
            shared.add(met)
            left.add(met, one.id)


def _perhaps_known(session: Session, row: RoundRow, staged: Staged) -> Iterator[StoredComment]:
    """The known comments among which those of the batch may be, in any order.

    A comment with an id is found by the key that this makes, or is one of the few that have none
    such. Any other may be every comment of the round.
    """
    if staged.without_ids or staged.count > _FEW:
        yield from stored_comments(session, id_of(row), "ORDER BY c.id")
        return
    yield from stored_comments(session, id_of(row), f"AND {NOT_BY_KEY}")
    keys = [one[1][0] for part in staged.waiting.linked() for one in part]
    found = rows_by_keys(session, id_of(row), keys, "c.id", f"NOT {NOT_BY_KEY}")
    yield from comments_by_id(session, id_of(row), [number for (number,) in found])


def _any_without_id(session: Session, row: RoundRow) -> bool:
    """Whether the round has a comment without an id, which one with an id may be."""
    asked = "SELECT 1 FROM comments WHERE round_id = :round AND source_id IS NULL LIMIT 1"
    return any(True for _ in rows_of(session, asked, {"round": id_of(row)}))


def _names_in(staged: Staged) -> Callable[[Comment], bool]:
    """Tells quickly whether a known comment may be one of the batch, by its id and its author."""
    ids: set[str | None] = set()
    authors: set[str | None] = set()
    names: set[str] = set()
    for part in staged.waiting.linked():
        for _, (_, _, author, author_id, source_id, *_) in part:
            ids.add(source_id)
            authors.add(author_id)
            names.add(name_of(author))
    for told in (ids, authors):
        told.discard(None)

    def may_be(known: Comment) -> bool:
        return known.id in ids or known.author_id in authors or name_of(known.author) in names

    return may_be


def _with_ids(session: Session, batch: BatchRow, ids: Sequence[int]) -> Iterator[StoredComment]:
    for some in in_parts(ids, 500):
        marks = ", ".join(map(str, some))
        yield from stored_comments(session, batch.round_id, f"AND c.id IN ({marks})")


@contextmanager
def _room(session: Session, count: int) -> Iterator[None]:
    """More memory for SQLite while it takes in a large batch: its index is written all over."""
    connection = session.connection()
    if connection.dialect.name != "sqlite" or count < _LARGE:
        yield
        return
    before = connection.exec_driver_sql("PRAGMA cache_size").scalar()
    connection.exec_driver_sql(f"PRAGMA cache_size = -{_CACHE}")
    try:
        yield
    finally:
        connection.exec_driver_sql(f"PRAGMA cache_size = {before}")
        connection.exec_driver_sql("PRAGMA shrink_memory")
