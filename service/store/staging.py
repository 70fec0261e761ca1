"""An export read and made ready to be stored, before the database is touched.

Reading takes the longest by far, and nobody else should wait for it: so the comments go into a
file of this process alone first. It has no name, so that nothing is left of it whatever happens.
"""

from __future__ import annotations

import marshal
from collections import deque
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from datetime import datetime
from os import SEEK_END
from tempfile import TemporaryFile
from typing import IO

from service.comments.entries import LONG_AGO
from service.comments.formats import OpenExport, Unreadable
from service.comments.told import Told
from service.store.many import as_kept, as_time, in_parts
from service.store.preparing import Links, Waiting
from service.store.reading_along import Part, ReadingAlong
from service.store.readings_kept import VoteReader, read_by
from service.store.shared_links import Shared

#: Says how far it is: what is being done, how much of it, and of how much (0: not known).
Tell = Callable[[str, int, int], None]
#: How many of what could not be read are listed; all are counted.
MOST_UNREADABLE = 1000
#: The bytes that tell how long a part of the file is.
_LENGTH = 8
#: How many parts are read ahead of the one that is put away.
_AHEAD = 4
#: The beginning of a span where nothing is told.
_UNTOLD = as_kept(LONG_AGO)


def say_nothing(step: str, done: int, total: int) -> None:
    """Tells nobody."""
    del step, done, total


@dataclass(slots=True)
class Staged:
    """What an export held, ready to be stored.

    `first` and `last` are the ends of the time that its comments cover, where that is told; at
    `last_sure` or later its last comment was surely written.
    `readings` names the reader and the question that the comments were read with. `shared` tells
    which comments may have to do with another one of the export, or with a known one: where they
    have ids, by those alone until they are linked whole. `with_ids`: some have one.
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
    with_ids: bool = False
    is_linked_whole: bool = False

    def readable(self) -> Iterator[Told]:
        """What the export holds of comments; what cannot be read is noted."""
        for one in self.export.all_told():
            if isinstance(one, Unreadable):
                self.unreadable_count += 1
                if len(self.unreadable) < MOST_UNREADABLE:
                    self.unreadable.append(one)
            else:
                yield one

    def parts(self) -> Iterator[list[Waiting]]:
        """The comments in the export's order, many at a time."""
        links = Links()
        self.file.seek(0)
        while length := self.file.read(_LENGTH):
            packed = self.file.read(int.from_bytes(length, "big"))
            part: list[Waiting] = marshal.loads(packed)  # noqa: S302 - this process wrote it
            if self.is_linked_whole:
                part = [(links.of_waiting(one), one[1]) for one in part]
            yield part

    def put_away(self, packed: bytes, many: int) -> None:
        """Keep so many comments that wait to be stored."""
        self.file.write(len(packed).to_bytes(_LENGTH, "big"))
        self.file.write(packed)
        self.count += many

    def link_whole(self) -> None:
        """Link the comments by all that they may share, not by their ids alone."""
        self.is_linked_whole = True
        self.note_shared()

    def note_shared(self) -> None:
        """Find anew what comments share."""
        self.shared = Shared(self.shared.size)
        for part in self.parts():
            self.shared.add_of_all(part)
        self.file.seek(0, SEEK_END)

    def covers(self, part: Sequence[Told]) -> None:
        """Widen the time that is covered, and note whether any has an id."""
        self.with_ids = self.with_ids or any([one[2] for one in part])
        told = [(one[5], one[6]) for one in part if one[5] != _UNTOLD]
        if not told:
            return  # times that nobody tells
        first, sure = as_time(min(told)[0]), as_time(max(told)[0])
        last = as_time(max([one[1] for one in told]))
        self.first = first if self.first is None else min(self.first, first)
        self.last_sure = sure if self.last_sure is None else max(self.last_sure, sure)
        self.last = last if self.last is None else max(self.last, last)


@contextmanager
def staged(
    export: OpenExport, reader: VoteReader, size: int = 0, tell: Tell = say_nothing
) -> Iterator[Staged]:
    """Read an export of `size` bytes to its end. What it raises, this raises."""
    most = size // 40 + 1
    with TemporaryFile() as file:
        made = Staged(export, read_by(reader.question), reader, file, Shared(most))
        with closing(ReadingAlong(reader, size, made.shared)) as along:
            held: deque[Part] = deque()
            for part in in_parts(made.readable()):
                made.covers(part)
                held.append(along.begin(part))
                while held and (len(held) > _AHEAD or held[0].answer is None):
                    _finish(held.popleft(), along, made)
                    tell("reading", made.count, 0)
            while held:
                _finish(held.popleft(), along, made)
            if not along.finish():
                made.note_shared()  # who noted it for some of them has ended
        tell("reading", made.count, made.count)
        yield made


def _finish(part: Part, along: ReadingAlong, made: Staged) -> None:
    """Put a part of the comments away once they are prepared."""
    made.put_away(along.end(part), len(part.comments))
