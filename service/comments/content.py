"""An export's bytes, read in pieces as often as they are needed, so that no size is too large."""

from __future__ import annotations

import io
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from _typeshed import WriteableBuffer

#: How many bytes are read at once.
PIECE = 1 << 20


class Content(Protocol):
    """The bytes of an export, wherever they lie."""

    @property
    def size(self) -> int:
        """How many bytes there are."""

    def pieces(self) -> Iterator[bytes]:
        """The bytes in order, a piece at a time; each call begins at the beginning."""


@dataclass(frozen=True, slots=True)
class Held:
    """Bytes that are in memory already."""

    held: bytes

    @property
    def size(self) -> int:
        """How many bytes there are."""
        return len(self.held)

    def pieces(self) -> Iterator[bytes]:
        """The bytes, a piece at a time."""
        for start in range(0, len(self.held), PIECE):
            yield self.held[start : start + PIECE]


def beginning_of(content: Content, most: int) -> bytes:
    """The first bytes, at most so many."""
    found = b""
    for piece in content.pieces():
        found += piece[: most - len(found)]
        if len(found) >= most:
            break
    return found


class _Reader(io.RawIOBase):
    """Pieces of bytes as a library wants to read them."""

    def __init__(self, pieces: Iterator[bytes]) -> None:
        super().__init__()
        self._pieces = pieces
        self._left = memoryview(b"")

    def readable(self) -> bool:
        return True

    def readinto(self, into: WriteableBuffer) -> int:
        room = memoryview(into).cast("B")
        while not self._left:
            piece = next(self._pieces, None)
            if piece is None:
                return 0
            self._left = memoryview(piece)
        many = min(len(room), len(self._left))
        room[:many] = self._left[:many]
        self._left = self._left[many:]
        return many


def reader_of(content: Content) -> io.BufferedReader:
    """The bytes as something that a library reads like a file."""
    return io.BufferedReader(_Reader(content.pieces()), PIECE)
