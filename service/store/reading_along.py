"""The words of a large export read by a process of this program's own, on a second processor.

It is started as a plain program with pipes to it, which is alike on every system and does not
depend on what started this one. Where it cannot be had, or ends, everything is read here.
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
from functools import partial
from pathlib import Path
from typing import IO

from service.ballots.reading import Question
from service.store.readings_kept import VoteReader

#: From so many bytes on a helper is worth its start.
WORTH_IT = 5_000_000
#: How many answers are awaited of the helper before it counts as busy: it works on one, has one at
#: hand, and one is on its way.
_BUSY = 3
_LENGTH = 8
#: How much sooner than the helper everybody else is given a processor that is short.
_NICE = 10
_ROOT = Path(__file__).parents[2]
#: What goes wrong where a helper has ended.
_ENDED = (OSError, EOFError, ValueError, CancelledError)


class ReadingAlong:
    """Reads words, with a helper where that is worth it; close it in the end."""

    def __init__(self, reader: VoteReader, size: int) -> None:
        """For an export of `size` bytes."""
        self._reader = reader
        self._awaited: list[Future[bytes]] = []
        self._helper: Helper | None = None
        # With one processor it saves no time, but the memory of this process: the tables of languages.
        if size >= WORTH_IT:
            self._helper = Helper(reader.question)

    @property
    def has_helper(self) -> bool:
        """Whether anybody reads along."""
        return self._helper is not None

    @property
    def is_busy(self) -> bool:
        """Whether nobody has time to read along."""
        self._awaited = [one for one in self._awaited if not one.done()]
        return self._helper is None or len(self._awaited) >= _BUSY

    def ask(self, words: bytes) -> Future[bytes] | None:
        """Have words, packed, read beside; None where nobody reads along."""
        if self._helper is None:
            return None
        answer = self._helper.ask(words)
        self._awaited.append(answer)
        return answer

    def read(self, words: Sequence[str], asked: Future[bytes] | None = None) -> bytes:
        """How words read as it is kept, packed: as it was `asked`, else they are read here."""
        packed = None if asked is None else self.heard(asked)
        return read_here(self._reader, words) if packed is None else packed

    def heard(self, asked: Future[bytes]) -> bytes | None:
        """The answer; None where who should have given it has ended."""
        try:
            return asked.result()
        except _ENDED:
            self.close()
            return None

    def close(self) -> None:
        """Let the helper go."""
        if self._helper is not None:
            self._helper.close()
            self._helper = None


def packed_words(words: Sequence[str]) -> bytes:
    """Words as they are handed over to be read."""
    return marshal.dumps(list(words))


def read_here(reader: VoteReader, words: Sequence[str]) -> bytes:
    """How words read as it is kept, packed."""
    return marshal.dumps(list(map(reader.read, words)))


class Helper:
    """A process that reads words. What it is asked it answers in turn.

    Telling it and hearing it go on at once: pipes are small, and it should never wait for one.
    """

    def __init__(self, question: Question) -> None:
        self._process = subprocess.Popen(  # noqa: S603 - this program itself
            [sys.executable, "-m", __name__],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            cwd=_ROOT,
            creationflags=getattr(subprocess, "BELOW_NORMAL_PRIORITY_CLASS", 0),
        )
        self._telling = ThreadPoolExecutor(1)
        self._hearing = ThreadPoolExecutor(1)
        self._telling.submit(self._tell, pickle.dumps(question))

    def ask(self, words: bytes) -> Future[bytes]:
        """How packed words read, packed; OSError or EOFError if the process has ended."""
        self._telling.submit(self._tell, words)
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
    question: Question = pickle.loads(hear().result())  # noqa: S301 - from our own process
    reader, coming = VoteReader(question), hear()
    is_first = True
    while True:
        words: list[str] = marshal.loads(coming.result())  # noqa: S302 - the same
        coming = hear()
        yield read_here(reader, words)
        if is_first:
            gc.freeze()  # the tables of languages need not be gone through again and again
            is_first = False


if __name__ == "__main__":
    # Requests go before: it is to read in the time that they leave.
    if hasattr(os, "nice"):  # Windows has it not, and was told when this was started
        os.nice(_NICE)
    answer(sys.stdin.buffer, sys.stdout.buffer)
