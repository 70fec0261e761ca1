"""Votes of a large export read on a second processor, by a process of this program's own.

It is started as a plain program with pipes to it, which is alike on every system and does not
depend on what started this one. Where it cannot be had, or ends, everything is read here.
"""

from __future__ import annotations

import marshal
import os
import pickle
import subprocess
import sys
from concurrent.futures import CancelledError, Future, ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import IO

from service.ballots.reading import Question
from service.store.readings_kept import VoteReader

#: A reading as it is kept, and whether it may decide anything.
Kept = tuple[str, bool]
#: From so many bytes on a helper is worth its start.
WORTH_IT = 5_000_000
#: How many parts wait for the helper at most; what comes then is read here.
_QUEUE = 2
_LENGTH = 8
_ROOT = Path(__file__).parents[2]


@dataclass(frozen=True, slots=True)
class Part:
    """The words of some comments, with their readings, or who will have them."""

    words: list[str]
    known: dict[str, Kept]
    asked: list[str]
    answer: Future[list[Kept]] | None


class ReadingAlong:
    """Reads the words of one part of an export after the other; close it in the end."""

    def __init__(self, reader: VoteReader, size: int) -> None:
        """For an export of `size` bytes."""
        self._reader = reader
        self._waiting: list[Future[list[Kept]]] = []
        self._helper: Helper | None = None
        if size >= WORTH_IT and (os.cpu_count() or 1) > 1:
            self._helper = Helper(reader.question)

    def begin(self, words: list[str]) -> Part:
        """Have some words read, here or beside."""
        known: dict[str, Kept] = {}
        asked = [one for one in dict.fromkeys(words) if not self._take_known(one, known)]
        self._waiting = [one for one in self._waiting if not one.done()]
        if self._helper is not None and asked and len(self._waiting) < _QUEUE:
            answer = self._helper.ask(asked)
            self._waiting.append(answer)
            return Part(words, known, asked, answer)
        for one in asked:
            known[one] = self._reader.read(one)
        return Part(words, known, [], None)

    def end(self, part: Part) -> list[Kept]:
        """The readings of a part's words, in their order."""
        if part.answer is not None:
            try:
                answered = part.answer.result()
            except (OSError, EOFError, ValueError, CancelledError):
                self.close()
                answered = [self._reader.read(one) for one in part.asked]
            for one, kept in zip(part.asked, answered, strict=True):
                part.known[one] = kept
                self._reader.remember(one, kept)
        return [part.known[one] for one in part.words]

    def close(self) -> None:
        """Let the helper go."""
        if self._helper is not None:
            self._helper.close()
            self._helper = None

    def _take_known(self, words: str, known: dict[str, Kept]) -> bool:
        kept = self._reader.remembered(words)
        if kept is not None:
            known[words] = kept
        return kept is not None


class Helper:
    """A process that reads words as votes. What it is asked it answers in turn."""

    def __init__(self, question: Question) -> None:
        self._process = subprocess.Popen(  # noqa: S603 - this program itself
            [sys.executable, "-m", __name__],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            cwd=_ROOT,
        )
        self._asking = ThreadPoolExecutor(1)
        self._first = pickle.dumps(question)

    def ask(self, words: list[str]) -> Future[list[Kept]]:
        """The readings of some words, when they are there; OSError or EOFError if it has ended."""
        return self._asking.submit(self._exchange, words)

    def close(self) -> None:
        """End the process: nothing is asked any more."""
        self._asking.shutdown(wait=False, cancel_futures=True)
        self._process.kill()
        self._process.communicate()

    def _exchange(self, words: list[str]) -> list[Kept]:
        told, heard = self._process.stdin, self._process.stdout
        if told is None or heard is None:
            raise EOFError
        if self._first:
            _send(told, self._first)
            self._first = b""
        _send(told, marshal.dumps(words))
        answered: list[Kept] = marshal.loads(_received(heard))  # noqa: S302 - of our own process
        return answered


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
    try:
        question: Question = pickle.loads(_received(asked))  # noqa: S301 - from our own process
        reader = VoteReader(question)
        while True:
            words: list[str] = marshal.loads(_received(asked))  # noqa: S302 - the same
            _send(told, marshal.dumps([reader.read(one) for one in words]))
    except (EOFError, OSError):
        return


if __name__ == "__main__":
    answer(sys.stdin.buffer, sys.stdout.buffer)
