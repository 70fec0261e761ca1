"""Comments of an export made into rows, as far as that can be done before the database is asked.

Whoever reads the export hands over tuples of text, a part of it at a time. How their words read is
told apart from it, since another process may do that (reading_along.py).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any, NamedTuple
from zlib import crc32

from service.comments.comment import Comment
from service.comments.matching import NOBODY, Author, authors_called
from service.comments.told import Told, as_text, comment_told
from service.comments.versions import KnownComment, key_of, key_of_id, name_of, wording

#: A comment that waits to be stored: its links as numbers, and its row from `key` on (`ROW`), at
#: first without the reading.
Row = tuple[Any, ...]
Waiting = tuple[tuple[int, ...], Row]
ROW = (
    *("key", "voter", "author", "author_id", "source_id", "reply_to", "place"),
    *("posted_earliest", "posted_latest", "edited_earliest", "edited_latest"),
    *("text", "reading", "speaks"),
)
#: A reading as it is kept, and whether it may decide anything.
Kept = tuple[str, bool]
_TEXT = ROW.index("text")
#: How many authors are remembered: many more would take more memory than they save time.
_MOST_AUTHORS = 5_000


def comment_in(waiting: Waiting) -> Comment:
    """The comment that waits."""
    return comment_told(waiting[1][2:12])


def words_of(linked: Sequence[Waiting]) -> list[str]:
    """The words of comments that wait to be read."""
    return [row[_TEXT] for _, row in linked]


def with_readings(linked: Sequence[Waiting], readings: Sequence[Kept]) -> list[Waiting]:
    """Comments as they wait to be stored, once they were read."""
    return [(links, row + kept) for (links, row), kept in zip(linked, readings, strict=True)]


class Writer(NamedTuple):
    """An author: the name as names are compared, and a number for each way to know them."""

    name: str
    numbers: tuple[int, ...]


class Links:
    """Makes rows of comments with what they share (comments/links.py), as numbers alike everywhere.

    Python's own hash of text differs from process to process, that of numbers does not. Two links
    that are not the same may have one number, but seldom do.

    Of a comment with an id, `link` tells that alone: it is enough where all known comments have
    one. `of_waiting` tells the others too.
    """

    def __init__(self) -> None:
        self._writers: dict[tuple[str, str | None], Writer] = {}

    def link(self, part: Sequence[Told]) -> list[Waiting]:
        """What is to be stored of these comments but how they read."""
        called, links_of = self.called, self.of
        made = []
        for told in part:
            author, author_id, source_id, _, _, earliest, latest, _, _, text = told
            if source_id:
                key = key_of_id(source_id)
                shares: tuple[int, ...] = (number_of_key(key),)
                name = author_id or name_of(author)
            else:
                key = key_of(comment_told(told))
                writer = called(author, author_id)
                name = author_id or writer.name
                second = earliest if earliest == latest else None
                shares = links_of(writer, None, second, (wording(text),))
            made.append((shares, (key, name or f"unnamed {key}", *told)))
        return made

    def called(self, author: str, author_id: str | None) -> Writer:
        """The author of this name and id."""
        known = self._writers.get((author, author_id))
        if known is None:
            if len(self._writers) >= _MOST_AUTHORS:
                self._writers.clear()
            numbers = tuple(map(_number_of_author, authors_called(author, author_id)))
            known = self._writers[author, author_id] = Writer(name_of(author), numbers)
        return known

    def of(
        self, writer: Writer, source_id: str | None, second: str | None, said: Iterable[str]
    ) -> tuple[int, ...]:
        """Of a comment with this wording; `second` is its exact time as text, if it has one."""
        # What is told apart by how many numbers are hashed together is never mixed up.
        found = [number_of_key(key_of_id(source_id))] if source_id else []
        for each in said:
            words = _number(each)
            for whose in writer.numbers:
                found.append(hash((whose, words)))  # noqa: PERF401 - faster for one or two
        if second is not None:
            at = crc32(second.encode("ascii"))
            for whose in writer.numbers:
                if whose != _NOBODYS:
                    found.append(hash((whose, at, 0)))  # noqa: PERF401
        return tuple(found)

    def of_waiting(self, waiting: Waiting) -> tuple[int, ...]:
        """Of a comment that waits, all of them."""
        shares, (_, _, author, author_id, source_id, _, _, earliest, latest, *_) = waiting
        if not source_id:
            return shares
        text = waiting[1][_TEXT]
        second = earliest if earliest == latest else None
        return self.of(self.called(author, author_id), source_id, second, (wording(text),))

    def of_known(self, known: KnownComment) -> tuple[int, ...]:
        """Of a known comment, by all words that it was seen with."""
        one = known.comment
        second = as_text(one.posted.earliest) if one.posted.is_exact else None
        said = dict.fromkeys(wording(version.text) for version in known.versions)
        return self.of(self.called(one.author, one.author_id), one.id, second, said)


def number_of_key(key: str) -> int:
    """The number of the link that a comment with an id has by its key."""
    return int(key[1:16], 16)  # as many bits as a whole number of SQLite's has


def _number(text: str) -> int:
    packed = text.encode("utf-8", "surrogatepass")
    return crc32(packed) | len(packed) << 32


def _number_of_author(author: Author) -> int:
    return _number("\0".join(author))


_NOBODYS = _number_of_author(NOBODY)
