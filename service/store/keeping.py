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
from service.comments.links import links_of_known
from service.comments.versions import name_of
from service.store.columns import id_of
from service.store.comments import (
    NEW_COLUMNS,
    StoredComment,
    keep_changed_comments,
    keep_new_comments,
    stored_comments,
)
from service.store.forgotten import forgotten_in
from service.store.leftovers import Leftovers, Part
from service.store.many import add_many, in_parts, next_ids
from service.store.rereading import read_anew
from service.store.staging import Staged, Tell, Waiting, comment_in
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow

#: From so many comments on, SQLite is given more memory than it takes by itself.
_LARGE = 50_000
_CACHE = 16_000
#: How many rows of a batch are written between two words of progress.
_ROWS = 2_000


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
        _find_known(session, row, staged, left)
        fresh: list[Waiting] = []
        for place, one in enumerate(staged.waiting(), 1):
            if forgotten.has(one):
                kept.forgotten += 1
            elif staged.is_shared(one):
                left.add(tuple(filter(staged.shared.is_shared, one[0])), one)
            else:
                fresh.append(one)
            if len(fresh) == _ROWS:
                _add_fresh(session, batch, fresh, kept)
                fresh = []
                tell("storing", place, staged.count)
        _add_fresh(session, batch, fresh, kept)
        done = staged.count
        for part in left.parts():
            _merge(session, batch, staged, part, kept)
            tell("merging", done, staged.count)
    return kept


def _add_fresh(session: Session, batch: BatchRow, fresh: Sequence[Waiting], kept: Kept) -> None:
    ids = next_ids(session, "comments", len(fresh))
    made_by = (batch.round_id, id_of(batch))
    rows = [(number, *made_by, *one[1:]) for number, one in zip(ids, fresh, strict=True)]
    add_many(session, "comments", NEW_COLUMNS, rows)
    kept.new += len(fresh)


def _merge(session: Session, batch: BatchRow, staged: Staged, part: Part, kept: Kept) -> None:
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
    read = {one[-3]: (one[-2], one[-1]) for one in part.waiting}
    return lambda words: read.get(words) or staged.reader.read(words)


def _find_known(session: Session, row: RoundRow, staged: Staged, left: Leftovers) -> None:
    """Leave over all known comments that one of the batch may be."""
    shared = staged.shared
    may_be = _names_in(staged) if staged.count < _LARGE else None
    for one in stored_comments(session, id_of(row), "ORDER BY c.id"):
        if one.is_forgotten or (may_be is not None and not may_be(one.known.comment)):
            continue
        links = {hash(link) & shared.mask for link in links_of_known(one.known)}
        met = tuple(link for link in links if shared.has(link))
        for link in met:
            shared.add(link)
        if met:
            left.add(met, one.id)


def _names_in(staged: Staged) -> Callable[[Comment], bool]:
    """Tells quickly whether a known comment may be one of the batch, by its id and its author."""
    ids: set[str | None] = set()
    authors: set[str | None] = set()
    names: set[str] = set()
    for one in staged.waiting():
        ids.add(one[5])
        authors.add(one[4])
        names.add(name_of(one[3]))
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
