"""An export read and made ready to be stored, before the database is touched.

Reading takes the longest by far, and nobody else should wait for it: so the comments go into a
file of this process alone first. It has no name, so that nothing is left of it whatever happens.
"""

from __future__ import annotations

import marshal
from collections import deque
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from datetime import datetime
from tempfile import TemporaryFile
from typing import IO, Any

from service.comments.comment import Comment
from service.comments.entries import LONG_AGO
from service.comments.formats import OpenExport, Unreadable
from service.comments.links import links_of
from service.comments.spans import Span
from service.comments.versions import key_of, name_of
from service.store.many import as_kept, as_time, in_parts
from service.store.reading_along import Kept, Part, ReadingAlong
from service.store.readings_kept import VoteReader, read_by

#: Says how far it is: what is being done, how much of it, and of how much (0: not known).
Tell = Callable[[str, int, int], None]
#: A comment that waits to be stored: its links as numbers, its columns from `key` on.
Waiting = tuple[Any, ...]
#: How many of what could not be read are listed; all are counted.
MOST_UNREADABLE = 1000
#: The bytes that tell how long a part of the file is.
_LENGTH = 8
#: How many parts are read ahead of the one that is put away.
_AHEAD = 4


def say_nothing(step: str, done: int, total: int) -> None:
    """Tells nobody."""
    del step, done, total


class Shared:
    """Which of very many links occur more than once. It may say so of a few that do not."""

    def __init__(self, size: int) -> None:
        """For about so many comments."""
        bits = min(max(64 * size, 1 << 16), 1 << 26)
        self.mask = (1 << (bits - 1).bit_length()) - 1
        self._once = bytearray((self.mask + 1) >> 3)
        self._more = bytearray((self.mask + 1) >> 3)

    def add(self, *links: int) -> None:
        """Count each of the links once more."""
        once = self._once
        for link in links:
            place, bit = link >> 3, 1 << (link & 7)
            if once[place] & bit:
                self._more[place] |= bit
            else:
                once[place] |= bit

    def has(self, link: int) -> bool:
        """Whether the link occurred."""
        return bool(self._once[link >> 3] & 1 << (link & 7))

    def is_shared(self, link: int) -> bool:
        """Whether the link occurred more than once."""
        return bool(self._more[link >> 3] & 1 << (link & 7))


@dataclass(slots=True)
class Staged:
    """What an export held, ready to be stored.

    `first` and `last` are the ends of the time that its comments cover, where that is told; at
    `last_sure` or later its last comment was surely written.
    `readings` names the reader and the question that the comments were read with.
    """

    export: OpenExport
    readings: str
    reader: VoteReader
    file: IO[bytes]
    shared: Shared
    count: int = 0
    unreadable: list[Unreadable] = field(default_factory=list)
    unreadable_count: int = 0
    first: datetime | None = None
    last: datetime | None = None
    last_sure: datetime | None = None

    def readable(self) -> Iterator[Comment]:
        """What the export holds of comments; what cannot be read is noted."""
        for one in self.export.items:
            if isinstance(one, Unreadable):
                self.unreadable_count += 1
                if len(self.unreadable) < MOST_UNREADABLE:
                    self.unreadable.append(one)
            else:
                self.covers(one.posted)
                yield one

    def waiting(self) -> Iterator[Waiting]:
        """The comments in the export's order."""
        self.file.seek(0)
        while length := self.file.read(_LENGTH):
            part = self.file.read(int.from_bytes(length, "big"))
            yield from marshal.loads(part)  # noqa: S302 - this process wrote it

    def is_shared(self, waiting: Waiting) -> bool:
        """Whether a comment may have to do with another one of the export, or with a known one."""
        return any(map(self.shared.is_shared, waiting[0]))

    def covers(self, posted: Span) -> None:
        """Widen the time that is covered."""
        earliest = posted.earliest
        if earliest == LONG_AGO:
            return  # a time that nobody tells
        if self.first is None or self.last is None or self.last_sure is None:
            self.first, self.last, self.last_sure = earliest, posted.latest, earliest
            return
        self.first = min(self.first, earliest)
        self.last_sure = max(self.last_sure, earliest)
        self.last = max(self.last, posted.latest)


@contextmanager
def staged(
    export: OpenExport, reader: VoteReader, size: int = 0, tell: Tell = say_nothing
) -> Iterator[Staged]:
    """Read an export of `size` bytes to its end. What it raises, this raises."""
    with TemporaryFile() as file:
        made = Staged(export, read_by(reader.question), reader, file, Shared(size // 40 + 1))
        with closing(ReadingAlong(reader, size)) as along:
            held: deque[tuple[list[Comment], Part]] = deque()
            for part in in_parts(made.readable()):
                held.append((part, along.begin([one.text for one in part])))
                while held and (len(held) > _AHEAD or held[0][1].answer is None):
                    _finish(*held.popleft(), along, made)
                    tell("reading", made.count, 0)
            while held:
                _finish(*held.popleft(), along, made)
        tell("reading", made.count, made.count)
        yield made


def _finish(part: list[Comment], words: Part, along: ReadingAlong, made: Staged) -> None:
    """Put a part of the comments away once their words are read."""
    read = along.end(words)
    packed = marshal.dumps(
        [_waiting(one, made, kept) for one, kept in zip(part, read, strict=True)]
    )
    made.file.write(len(packed).to_bytes(_LENGTH, "big"))
    made.file.write(packed)
    made.count += len(part)


def _waiting(one: Comment, made: Staged, read: Kept) -> Waiting:
    mask = made.shared.mask
    links = tuple([hash(link) & mask for link in links_of(one)])
    made.shared.add(*links)
    posted, edited = one.posted, one.edited if one.edited != one.posted else None
    key = key_of(one)
    voter = one.author_id or name_of(one.author) or f"unnamed {key}"
    earliest = as_kept(posted.earliest)
    return (
        *(links, key, voter, one.author, one.author_id, one.id, one.reply_to, one.place),
        *(earliest, earliest if posted.is_exact else as_kept(posted.latest)),
        *(edited and as_kept(edited.earliest), edited and as_kept(edited.latest)),
        *(one.text, *read),
    )


def comment_in(waiting: Waiting) -> Comment:
    """The comment that waits."""
    _, _, _, author, author_id, source_id, reply_to, place, *times, words, _, _ = waiting
    edited = None if times[2] is None else Span(as_time(times[2]), as_time(times[3]))
    posted = Span(as_time(times[0]), as_time(times[1]))
    return Comment(author, words, posted, source_id, author_id, edited, reply_to, place)
