"""Comments of an export that the round has, with nothing new: told without a value for each.

A host hands in the whole export again and again, and nearly all of it is as it was. Where every
comment has an id, each is looked up by the key that its id makes, and compared with its row. What is
the same was seen once more, which is all that merging would find; the rest is merged.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, text
from sqlmodel import Session

from service.comments.told import as_text
from service.comments.versions import key_of_id
from service.counting.pseudonyms import is_forgotten
from service.store.by_keys import rows_by_keys
from service.store.columns import UtcTime, id_of
from service.store.leftovers import Leftovers
from service.store.many import as_time, in_parts, rows_of
from service.store.preparing import ROW, Waiting, number_of_key
from service.store.shared_links import Shared
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow

_KEYS = "SELECT id, key, source_id, id_later, voter FROM comments WHERE round_id = :round"
#: So many rows are changed by one statement.
_AT_ONCE = 500
#: What of a comment's row an export may tell otherwise; its place in the export says nothing.
_COMPARED = ("author", "author_id", "source_id", "reply_to", "posted_earliest", "posted_latest")
_COLUMNS = ", ".join(
    (
        *("c.key", "c.id", *(f"c.{name}" for name in _COMPARED), "c.text"),
        *("coalesce(c.seen_earliest, b.copied_at)", "coalesce(c.seen_latest, b.copied_at)"),
    )
)
_PLAINEST = "c.older = 0 AND c.edited_earliest IS NULL AND NOT c.id_later"
_PLACES = tuple(map(ROW.index, (*_COMPARED, "text")))
_EDITED = ROW.index("edited_earliest")
_TIMES = slice(_COMPARED.index("posted_earliest"), _COMPARED.index("posted_latest") + 1)
_BY_KEY = "NOT c.id_later"
_TIMES_SEEN = (bindparam("first", type_=UtcTime()), bindparam("last", type_=UtcTime()))
_SEEN = "UPDATE comments SET seen_earliest = :first, seen_latest = :last WHERE id IN ({ids})"


class Unchanged:
    """Finds the comments of a batch that are as the round has them.

    Only where every comment of the batch and of the round has an id (see `keep_comments`).
    """

    def __init__(self, session: Session, row: RoundRow, batch: BatchRow, shared: Shared) -> None:
        self._session = session
        self._round = id_of(row)
        self._copied_at = batch.copied_at
        #: Links that occur twice in the batch itself: such comments are merged.
        self._twice = shared.copy_of_more()

    def mark(self, shared: Shared, left: Leftovers) -> None:
        """Note which known comments the batch may show; those that no key leads to are left over."""
        for number, key, source_id, id_later, voter in rows_of(
            self._session, _KEYS, {"round": self._round}
        ):
            if is_forgotten(voter):
                continue
            link = number_of_key(key_of_id(source_id) if id_later else key)
            if shared.has(link):
                shared.add((link,))
                if id_later:
                    left.add((link,), number)

    def part(self, waiting: Sequence[Waiting], left: Leftovers) -> tuple[int, list[Waiting]]:
        """How many of those that wait are as they were, and the others.

        The known comments that the others may be are left over.
        """
        same: dict[tuple[datetime, datetime], list[int]] = defaultdict(list)
        others: list[Waiting] = []
        known = self._known(waiting)
        for one in waiting:
            found = known.get(one[1][0])
            if found is not None and self._is_same(one, found):
                same[self._seen(found)].append(found[0])
            else:
                others.append(one)
        self._leave_over(others, left)
        for seen, ids in same.items():
            self._keep_seen(seen, ids)
        return sum(map(len, same.values())), others

    def _known(self, waiting: Sequence[Waiting]) -> dict[str, Sequence[Any]]:
        """The rows of the plainest known comments by their keys."""
        keys = [one[1][0] for one in waiting]
        found = rows_by_keys(self._session, self._round, keys, _COLUMNS, _PLAINEST)
        return {one[0]: one[1:] for one in found}

    def _is_same(self, one: Waiting, found: Sequence[Any]) -> bool:
        """Whether a comment that waits tells nothing else than its row, and no other of the batch is it."""
        links, row = one
        if row[_EDITED] is not None or any(map(self._twice.is_shared, links)):
            return False
        kept = list(found[1 : 1 + len(_PLACES)])
        kept[_TIMES] = map(_as_told, kept[_TIMES])
        return kept == [row[place] for place in _PLACES]

    def _seen(self, found: Sequence[Any]) -> tuple[datetime, datetime]:
        """From when to when its words were seen, this batch included."""
        first, last = as_time(found[-2]), as_time(found[-1])
        return min(first, self._copied_at), max(last, self._copied_at)

    def _keep_seen(self, seen: tuple[datetime, datetime], ids: Sequence[int]) -> None:
        told = {"first": seen[0], "last": seen[1]}
        for some in in_parts(ids, _AT_ONCE):
            asked = _SEEN.format(ids=", ".join(map(str, some)))
            self._session.connection().execute(text(asked).bindparams(*_TIMES_SEEN), told)

    def _leave_over(self, others: Sequence[Waiting], left: Leftovers) -> None:
        keys = [one[1][0] for one in others]
        columns = "c.key, c.id, c.voter"
        for key, number, voter in rows_by_keys(self._session, self._round, keys, columns, _BY_KEY):
            if not is_forgotten(voter):
                left.add((number_of_key(key),), number)


def _as_told(kept: Any) -> str:
    """A time of a row as exports are told it."""
    return kept if isinstance(kept, str) else as_text(as_time(kept))
