"""What two comments must share to have anything to do with one another when batches are merged.

Merging looks at a comment's id, at its author with its words, and at its author with its exact
second, and at nothing else. So comments that share none of these can be merged apart from one
another, a few at a time, and the outcome is that of merging all at once.

This says what a link is, for the laws of merging. What is stored goes by the same links as numbers
(store/preparing.py), which are made without a value for each comment; a law holds the two alike.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterable

from service.comments.comment import Comment
from service.comments.matching import NOBODY, authors_of
from service.comments.versions import KnownComment, wording

Link = tuple[object, ...]


def links_of(comment: Comment) -> list[Link]:
    """What a comment of a batch shares with those that it may be."""
    return _links(comment, (wording(comment.text),))


def links_of_known(known: KnownComment) -> list[Link]:
    """The same of a known comment, by all words that it was seen with."""
    return _links(known.comment, {wording(version.text) for version in known.versions})


def _links(comment: Comment, said: Iterable[str]) -> list[Link]:
    found: list[Link] = [("is", comment.id)] if comment.id else []
    posted = comment.posted
    second = posted.earliest if posted.is_exact else None
    words = tuple(said)
    for author in authors_of(comment):
        for each in words:
            found.append((author, each))  # noqa: PERF401 - several times as fast for one or two
        if second is not None and author != NOBODY:
            found.append((author, second))
    return found


class Groups:
    """Numbers from 0 on, joined into groups; holds four bytes for each."""

    def __init__(self, size: int) -> None:
        self._above = array("i", range(size))

    def root_of(self, one: int) -> int:
        """The number that stands for its group."""
        above = self._above
        while above[one] != one:
            above[one] = above[above[one]]
            one = above[one]
        return one

    def join(self, one: int, other: int) -> None:
        """Have two numbers in one group from now on."""
        self._above[self.root_of(one)] = self.root_of(other)

    def parts(self, most: int) -> array[int]:
        """For each number its part, from 0 on: whole groups, as many as come to `most` numbers."""
        size = len(self._above)
        held = array("i", bytes(4 * size))
        for one in range(size):
            held[self.root_of(one)] += 1
        part_of = array("i", bytes(4 * size))
        part = filled = 0
        for one in range(size):
            if not held[one]:
                continue
            if filled and filled + held[one] > most:
                part, filled = part + 1, 0
            filled += held[one]
            part_of[one] = part
        return array("i", (part_of[self.root_of(one)] for one in range(size)))
