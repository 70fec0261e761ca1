"""An export read and made ready to be stored, before the database is touched.

Reading takes the longest by far, and nobody else should wait for it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from datetime import datetime
from tempfile import SpooledTemporaryFile
from time import monotonic, sleep

from service.comments.entries import LONG_AGO
from service.comments.formats import OpenExport, Unreadable
from service.comments.told import Told
from service.store.many import as_kept, as_time, in_parts
from service.store.reading_along import ReadingAlong
from service.store.readings_kept import VoteReader, read_by
from service.store.waiting_parts import WaitingParts

#: Says how far it is: what is being done, how much of it, and of how much (0: not known).
Tell = Callable[[str, int, int], None]
#: How many of what could not be read are listed; all are counted.
MOST_UNREADABLE = 1000
#: The bytes that wait in memory: of a few comments that many hand in at once nothing is to wait for
#: a disk.
_HELD = 100_000
#: The beginning of a span where nothing is told.
_UNTOLD = as_kept(LONG_AGO)


#: Whether others wait, so that a large export is read in the time that they leave.
Busy = Callable[[], bool]
#: Who is busy with others gives them so many times what was taken.
_GIVES = 4.0


def say_nothing(step: str, done: int, total: int) -> None:
    """Tells nobody."""
    del step, done, total


def nobody_waits() -> bool:
    """Nobody does."""
    return False


@dataclass(slots=True)
class Staged:
    """What an export held, ready to be stored.

    `first` and `last` are the ends of the time that its comments cover, where that is told; at
    `last_sure` or later its last comment was surely written.
    `readings` names the reader and the question that the comments are read with. `with_ids`: some
    of them have an id; `without_ids`: some have none.
    """

    export: OpenExport
    readings: str
    reader: VoteReader
    waiting: WaitingParts
    unreadable: list[Unreadable] = field(default_factory=list)
    unreadable_count: int = 0
    first: datetime | None = None
    last: datetime | None = None
    last_sure: datetime | None = None
    with_ids: bool = False
    without_ids: bool = False

    @property
    def count(self) -> int:
        """How many comments there are."""
        return self.waiting.count

    def readable(self) -> Iterator[Told]:
        """What the export holds of comments; what cannot be read is noted."""
        for one in self.export.all_told():
            if isinstance(one, Unreadable):
                self.unreadable_count += 1
                if len(self.unreadable) < MOST_UNREADABLE:
                    self.unreadable.append(one)
            else:
                yield one

    def covers(self, part: Sequence[Told]) -> None:
        """Widen the time that is covered, and note whether any has an id, and any none."""
        self.with_ids = self.with_ids or any(one[2] for one in part)
        self.without_ids = self.without_ids or not all(one[2] for one in part)
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
    export: OpenExport,
    reader: VoteReader,
    size: int = 0,
    tell: Tell = say_nothing,
    busy: Busy = nobody_waits,
) -> Iterator[Staged]:
    """Read an export of `size` bytes to its end. What it raises, this raises."""
    with SpooledTemporaryFile(_HELD) as file, closing(ReadingAlong(reader, size)) as along:
        waiting = WaitingParts(file, along, size // 40 + 1)
        made = Staged(export, read_by(reader.question), reader, waiting)
        began = monotonic()
        for part in in_parts(made.readable()):
            made.covers(part)
            waiting.add(part)
            tell("reading", made.count, 0)
            if busy():
                sleep(_GIVES * (monotonic() - began))
            began = monotonic()
        # What waits to be read then is read while it is stored, and others wait for that.
        waiting.catch_up(wholly=busy())
        tell("reading", made.count, made.count)
        yield made
