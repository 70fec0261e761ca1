"""What was found out about the words that comments hold, kept for the next comment that has them.

Talk repeats its words, and the tables of all languages are large: what many tables tell of a word
is put together once. Only words are kept, never a comment, so that the first reading of a comment
takes as long as every other.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Generic, TypeVar
from weakref import WeakValueDictionary

#: So many words are kept; then keeping begins anew.
MOST = 16_384
#: Longer pieces of text are hardly words: they are looked up again each time.
LONGEST = 32

Told = TypeVar("Told")
#: Those there are, by their ids: one for each table and mixture of languages that is in use.
_ALL: WeakValueDictionary[int, Met[Any]] = WeakValueDictionary()


def forget() -> None:
    """Keep no word from here on: for measuring how long comments take that are the first to come."""
    for one in list(_ALL.values()):
        one.clear()


def how_many() -> int:
    """How many tables of words are kept: those of mixtures of languages come and go."""
    return len(_ALL)


class Met(dict[str, Told], Generic[Told]):
    """What `find` tells of a word, by word: it is asked once for each that is kept."""

    __slots__ = ("__weakref__", "_find")

    def __init__(self, find: Callable[[str], Told]) -> None:
        super().__init__()
        self._find = find
        _ALL[id(self)] = self

    def __missing__(self, word: str) -> Told:
        told = self._find(word)
        if len(word) <= LONGEST:
            if len(self) >= MOST:
                self.clear()
            self[word] = told
        return told
