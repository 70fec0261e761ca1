"""The comments of a batch that may have to do with one another or with known ones, in parts.

Most comments of an export are new and share nothing with any other. Only the rest is merged, and
that in parts that share nothing: where there is very much of it, with the help of a scratch
database that is a file without a name. Of those that seemed to share something many turn out to be
alone here, where links are looked at whole.
"""

from __future__ import annotations

import marshal
import sqlite3
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import groupby
from operator import itemgetter

from service.comments.links import Groups
from service.store.many import in_parts
from service.store.preparing import Waiting

#: How many comments are merged at once, and how many are held in memory for it.
AT_ONCE = 6_000
#: The part of those that are alone.
_ALONE = -1


@dataclass(slots=True)
class Part:
    """Comments to be merged by themselves: the ids of known ones, and those that wait.

    `alone` share nothing with any other after all: they are new.
    """

    known: list[int] = field(default_factory=list)
    waiting: list[Waiting] = field(default_factory=list)
    alone: list[Waiting] = field(default_factory=list)

    def add(self, one: int | Waiting) -> None:
        """Add a known comment by its id, or one that waits."""
        if isinstance(one, int):
            self.known.append(one)
        else:
            self.waiting.append(one)


class Leftovers:
    """What is left to be merged; close it when it has been."""

    def __init__(self, at_once: int = AT_ONCE) -> None:
        self._at_once = at_once
        self._held: list[tuple[tuple[int, ...], int | Waiting]] = []
        self._scratch: sqlite3.Connection | None = None
        self._count = 0

    def add(self, links: tuple[int, ...], one: int | Waiting) -> None:
        """Add a known comment (its id) or one that waits, with the links that others share."""
        self._held.append((links, one))
        if len(self._held) >= self._at_once:
            self._put_away()

    def close(self) -> None:
        """Leave nothing behind."""
        if self._scratch is not None:
            self._scratch.close()

    def parts(self) -> Iterator[Part]:
        """Everything in parts that share nothing."""
        if self._scratch is None:
            if self._held:
                yield self._all_held()
            return
        self._put_away()
        self._group(self._scratch)
        alone = f"SELECT one FROM items WHERE part = {_ALONE} ORDER BY number"  # noqa: S608
        found = (marshal.loads(one) for (one,) in self._scratch.execute(alone))  # noqa: S302
        for some in in_parts(found, self._at_once):
            yield Part(alone=[one for one in some if not isinstance(one, int)])
        shared = f"SELECT part, one FROM items WHERE part > {_ALONE} ORDER BY part, number"  # noqa: S608
        for _, rows in groupby(self._scratch.execute(shared), key=itemgetter(0)):
            part = Part()
            for _, packed in rows:
                part.add(marshal.loads(packed))  # noqa: S302 - this process wrote it
            yield part

    def _all_held(self) -> Part:
        part = Part()
        met = Counter(link for links, _ in self._held for link in links)
        for links, one in self._held:
            if any(met[link] > 1 for link in links):
                part.add(one)
            elif not isinstance(one, int):
                part.alone.append(one)
        return part

    def _put_away(self) -> None:
        if self._scratch is None:
            self._scratch = sqlite3.connect("", isolation_level=None)
            self._scratch.executescript(
                "PRAGMA synchronous = OFF; PRAGMA journal_mode = OFF; PRAGMA cache_size = -8000;"
                "CREATE TABLE items (number INTEGER PRIMARY KEY, one BLOB, part INTEGER);"
                "CREATE TABLE links (link INTEGER, number INTEGER);"
            )
        numbered = list(enumerate(self._held, self._count))
        self._count += len(self._held)
        self._held = []
        self._scratch.executemany(
            "INSERT INTO items VALUES (?, ?, ?)",
            ((number, marshal.dumps(one), _ALONE) for number, (_, one) in numbered),
        )
        self._scratch.executemany(
            "INSERT INTO links VALUES (?, ?)",
            ((link, number) for number, (links, _) in numbered for link in links),
        )

    def _group(self, scratch: sqlite3.Connection) -> None:
        groups = Groups(self._count)
        shares = bytearray(self._count)
        last, first = None, 0
        for link, number in scratch.execute("SELECT link, number FROM links ORDER BY link"):
            if link == last:
                groups.join(number, first)
                shares[number] = shares[first] = 1
            else:
                last, first = link, number
        parts = groups.parts(self._at_once)
        scratch.executemany(
            "UPDATE items SET part = ? WHERE number = ?",
            ((parts[number], number) for number, one in enumerate(shares) if one),
        )
