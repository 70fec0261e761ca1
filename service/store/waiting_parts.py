"""The comments of an export as they wait to be stored, in a file of this process alone.

It has no name, so that nothing is left of it whatever happens. Reading words takes the longest by
far, so a helper does that beside. What it has no time for yet waits; some of it even until the
comments are stored: meanwhile it goes on reading, and neither waits for the other.
"""

from __future__ import annotations

import marshal
from collections import deque
from collections.abc import Iterator, Sequence
from concurrent.futures import Future, wait
from dataclasses import dataclass
from os import SEEK_END
from typing import IO

from service.comments.told import Told
from service.store.preparing import Links, Waiting, with_readings, words_of
from service.store.reading_along import ReadingAlong, packed_words
from service.store.shared_links import Shared

#: The bytes that tell how long a piece of the file is.
_LENGTH = 8
#: How much of all may be read while it is stored: a helper reads so much in the time that storing
#: takes anyway, more would keep the database waiting.
_LATER = 0.6


@dataclass(slots=True, eq=False)
class _Part:
    """Where a part of the comments stands in the file, and where how they read, once it is known.

    Where they wait to be read, their `words` stand there by themselves too, as a helper is told
    them. `answer` is what it was asked for.
    """

    comments: int
    words: int = 0
    readings: int | None = None
    answer: Future[bytes] | None = None


class WaitingParts:
    """Comments that wait to be stored; `shared` tells which may have to do with another one.

    Comments with an id are linked by that alone until `link_whole`.
    """

    def __init__(self, file: IO[bytes], along: ReadingAlong, most: int) -> None:
        """For about `most` comments."""
        self.count = 0
        self.is_linked_whole = False
        self.shared = Shared(most)
        self._file = file
        self._along = along
        self._links = Links()
        self._parts: list[_Part] = []
        self._asked: deque[_Part] = deque()
        self._later: deque[_Part] = deque()

    def add(self, comments: Sequence[Told]) -> None:
        """Put comments away, and have their words read now or later."""
        linked = self._links.link(comments)
        self.shared.add_of_all(linked)
        part = _Part(self._put_away(marshal.dumps(linked)))
        self._parts.append(part)
        self.count += len(linked)
        self._put_answers_away()
        if not self._along.has_helper:
            self._read_here(part, linked)
        elif self._along.is_busy:
            part.words = self._put_away(packed_words(words_of(linked)))
            self._later.append(part)
        else:
            self._ask(part, packed_words(words_of(linked)))

    @property
    def unread(self) -> int:
        """How many parts nobody has been asked to read yet."""
        return len(self._later)

    def catch_up(self, *, wholly: bool = False) -> None:
        """Have so much read that who stores the comments need hardly wait for the rest."""
        later = 0.0 if wholly else _LATER
        while self._along.has_helper and self.unread > later * len(self._parts):
            self._go_on()
            wait(
                [part.answer for part in self._asked if part.answer], return_when="FIRST_COMPLETED"
            )
        while self._later and not self._along.has_helper:
            part = self._later.popleft()
            self._read_here(part, self._linked(part))

    def link_whole(self) -> None:
        """Link the comments by all that they may share, not by their ids alone."""
        self.is_linked_whole = True
        self.shared = Shared(self.shared.size)
        for linked in self.linked():
            self.shared.add_of_all(linked)

    def linked(self) -> Iterator[list[Waiting]]:
        """The comments in the export's order, many at a time, without how they read."""
        for part in self._parts:
            linked = self._linked(part)
            if self.is_linked_whole:
                linked = [(self._links.of_waiting(one), one[1]) for one in linked]
            yield linked

    def read(self) -> Iterator[list[Waiting]]:
        """The same with how they read."""
        for part, linked in zip(self._parts, self.linked(), strict=True):
            self._go_on()
            if part.readings is None:
                self._read_here(part, linked)
            packed = self._piece(part.readings or 0)
            yield with_readings(linked, marshal.loads(packed))  # noqa: S302 - this process wrote it

    def _go_on(self) -> None:
        """Keep the helper busy with what waits to be read, in the export's order."""
        self._put_answers_away()
        while self._later and not self._along.is_busy:
            part = self._later.popleft()
            if part.readings is None:
                self._ask(part, self._piece(part.words))

    def _ask(self, part: _Part, words: bytes) -> None:
        part.answer = self._along.ask(words)
        self._asked.append(part)

    def _put_answers_away(self) -> None:
        while self._asked and ((answer := self._asked[0].answer) is None or answer.done()):
            part = self._asked.popleft()
            packed = None if answer is None else self._along.heard(answer)
            if packed is not None:
                part.readings, part.answer = self._put_away(packed), None

    def _read_here(self, part: _Part, linked: Sequence[Waiting]) -> None:
        """Wait for the helper's answer where it was asked."""
        part.readings = self._put_away(self._along.read(words_of(linked), part.answer))
        part.answer = None

    def _linked(self, part: _Part) -> list[Waiting]:
        linked: list[Waiting] = marshal.loads(self._piece(part.comments))  # noqa: S302 - the same
        return linked

    def _put_away(self, packed: bytes) -> int:
        """Where it stands in the file."""
        place = self._file.seek(0, SEEK_END)
        self._file.write(len(packed).to_bytes(_LENGTH, "big"))
        self._file.write(packed)
        return place

    def _piece(self, place: int) -> bytes:
        self._file.seek(place)
        return self._file.read(int.from_bytes(self._file.read(_LENGTH), "big"))
