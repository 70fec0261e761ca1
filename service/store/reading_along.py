"""Comments of a large export prepared on a second processor, by a process of this program's own.

It is started as a plain program with pipes to it, which is alike on every system and does not
depend on what started this one. Where it cannot be had, or ends, everything is done here.
"""

from __future__ import annotations

import gc
import marshal
import os
import pickle
import subprocess
import sys
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import CancelledError, Future, ThreadPoolExecutor
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import IO

from service.ballots.reading import Question
from service.comments.told import Told
from service.store.preparing import Preparing
from service.store.readings_kept import VoteReader
from service.store.shared_links import Shared

#: From so many bytes on a helper is worth its start.
WORTH_IT = 5_000_000
#: How many parts the helper is asked at a time: one that it works on, one that it has at hand, and
#: one on its way. What comes then is done here.
_QUEUE = 3
_LENGTH = 8
_ROOT = Path(__file__).parents[2]
#: What goes wrong where a helper has ended.
_ENDED = (OSError, EOFError, ValueError, CancelledError)


@dataclass(frozen=True, slots=True)
class Part:
    """Some comments, with what was made of them, packed, or who will have it."""

    comments: list[Told]
    made: bytes
    answer: Future[bytes] | None


class ReadingAlong:
    """Prepares one part of an export after the other; close it in the end.

    What the comments share is noted in `shared`, or by the helper, which tells it in the end.
    """

    def __init__(self, reader: VoteReader, size: int, shared: Shared) -> None:
        """For an export of `size` bytes."""
        self._preparing = Preparing(reader)
        self._shared = shared
        self._waiting: list[Future[bytes]] = []
        self._helper: Helper | None = None
        self._has_ended = False
        if size >= WORTH_IT and (os.cpu_count() or 1) > 1:
            self._helper = Helper(reader.question, shared.size)

    def begin(self, comments: list[Told]) -> Part:
        """Have some comments prepared, here or beside."""
        self._waiting = [one for one in self._waiting if not one.done()]
        if self._helper is not None and len(self._waiting) < _QUEUE:
            answer = self._helper.ask(comments)
            self._waiting.append(answer)
            return Part(comments, b"", answer)
        return Part(comments, self._prepared(comments), None)

    def end(self, part: Part) -> bytes:
        """The comments of a part as they wait to be stored, in their order, packed."""
        if part.answer is None:
            return part.made
        try:
            return part.answer.result()
        except _ENDED:
            self._has_ended = True
            self.close()
            return self._prepared(part.comments)

    def finish(self) -> bool:
        """Note what the helper found shared; False where it cannot tell any more."""
        if self._helper is not None:
            try:
                self._shared.add_once(self._helper.ask([]).result())
                self._shared.add_more(self._helper.ask([]).result())
            except _ENDED:
                self._has_ended = True
        return not self._has_ended

    def close(self) -> None:
        """Let the helper go."""
        if self._helper is not None:
            self._helper.close()
            self._helper = None

    def _prepared(self, comments: Sequence[Told]) -> bytes:
        return prepared(self._preparing, comments, self._shared)


def prepared(preparing: Preparing, comments: Sequence[Told], shared: Shared) -> bytes:
    """Comments as they wait to be stored, packed; what they share is noted."""
    made = preparing.prepare(comments)
    shared.add_of_all(made)
    return marshal.dumps(made)


class Helper:
    """A process that prepares comments. What it is asked it answers in turn.

    Telling it and hearing it go on at once: pipes are small, and it should never wait for one.
    """

    def __init__(self, question: Question, size: int) -> None:
        self._process = subprocess.Popen(  # noqa: S603 - this program itself
            [sys.executable, "-m", __name__],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            cwd=_ROOT,
        )
        self._telling = ThreadPoolExecutor(1)
        self._hearing = ThreadPoolExecutor(1)
        self._telling.submit(self._tell, pickle.dumps((question, size)))

    def ask(self, comments: list[Told]) -> Future[bytes]:
        """What is made of comments, packed; of none, the maps of what all before them share.

        OSError or EOFError if the process has ended.
        """
        self._telling.submit(self._tell, marshal.dumps(comments))
        return self._hearing.submit(self._hear)

    def close(self) -> None:
        """End the process: nothing is asked any more."""
        for one in (self._telling, self._hearing):
            one.shutdown(wait=False, cancel_futures=True)
        self._process.kill()
        self._process.communicate()

    def _tell(self, packed: bytes) -> None:
        # Where it has ended, nothing will be heard either: that is where it is noticed.
        if self._process.stdin is not None:
            _send(self._process.stdin, packed)

    def _hear(self) -> bytes:
        if self._process.stdout is None:
            raise EOFError
        return _received(self._process.stdout)


def _send(to: IO[bytes], packed: bytes) -> None:
    to.write(len(packed).to_bytes(_LENGTH, "big"))
    to.write(packed)
    to.flush()


def _received(by: IO[bytes]) -> bytes:
    """What was sent; EOFError where the other side has ended."""
    length = by.read(_LENGTH)
    packed = by.read(int.from_bytes(length, "big")) if len(length) == _LENGTH else b""
    if not packed:
        raise EOFError
    return packed


def answer(asked: IO[bytes], told: IO[bytes]) -> None:
    """Answer what is asked until the other side ends."""
    with ThreadPoolExecutor(1) as hearing, ThreadPoolExecutor(1) as telling:
        try:
            for packed in _answers(partial(hearing.submit, _received, asked)):
                telling.submit(_send, told, packed)
        except (EOFError, OSError):
            return


def _answers(hear: Callable[[], Future[bytes]]) -> Iterator[bytes]:
    """The answers to what is heard; while one is found, the next question is heard already."""
    question: Question
    question, size = pickle.loads(hear().result())  # noqa: S301 - from our own process
    coming = hear()
    preparing, shared = Preparing(VoteReader(question)), Shared(size)
    is_first = True
    while comments := marshal.loads(coming.result()):  # noqa: S302 - the same
        coming = hear()
        yield prepared(preparing, comments, shared)
        if is_first:
            gc.freeze()  # the tables of languages need not be gone through again and again
            is_first = False
    coming = hear()
    yield shared.once
    coming.result()
    yield shared.more


if __name__ == "__main__":
    answer(sys.stdin.buffer, sys.stdout.buffer)
