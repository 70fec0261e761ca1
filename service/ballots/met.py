"""What was found out about the words that comments hold, kept for the next comment that has them.

Talk repeats its words, and the tables of all languages are large: what many tables tell of a word
is put together once. Only words are kept, never a comment, so that the first reading of a comment
takes as long as every other.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, TypeVar

#: So many words are kept; then keeping begins anew.
MOST = 16_384
#: Longer pieces of text are hardly words: they are looked up again each time.
LONGEST = 32

Told = TypeVar("Told")
#: One for each table and language: they last as long as the process.
_ALL: list[Met[Any]] = []


def forget() -> None:
    """Keep no word from here on: for measuring how long comments take that are the first to come."""
    for one in _ALL:
        one.clear()


class Met(dict[str, Told], Generic[Told]):
    """What `find` tells of a word, by word: it is asked once for each that is kept."""

    __slots__ = ("_find",)

    def __init__(self, find: Callable[[str], Told]) -> None:
        super().__init__()
        self._find = find
        _ALL.append(self)

    def __missing__(self, word: str) -> Told:
        told = self._find(word)
        if len(word) <= LONGEST:
            if len(self) >= MOST:
                self.clear()
            self[word] = told
        return told
