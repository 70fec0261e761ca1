"""Which comment of a batch is which known one.

By the source's id; without one, by author, words and a time that can be the same; and where an
author's only comment of one exact second reads otherwise than before, as that comment edited.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import pairwise

from service.comments.comment import Comment
from service.comments.spans import Span
from service.comments.versions import KnownComment, may_be_one_time, name_of, voter_of, wording

#: One comment as a batch shows it: its words, oldest first where the batch shows several.
Shown = tuple[Comment, ...]
Author = tuple[str, str]
NOBODY: Author = ("", "")


def collapse(batch: Iterable[Comment]) -> list[Shown]:
    """The batch without repeats, in an order that does not depend on the batch's own."""
    with_id: dict[str, list[Comment]] = defaultdict(list)
    without: dict[tuple[object, ...], Comment] = {}
    for comment in sorted(batch, key=_standing_order):
        if comment.id:
            with_id[comment.id].append(comment)
        else:
            # Where nobody is named, the same words at one time may be two people's.
            whose = comment.place if authors_of(comment) == (NOBODY,) else ""
            # A name may be written as another writer's id is.
            has_id = comment.author_id is not None
            said = (voter_of(comment), has_id, wording(comment.text), comment.posted, whose)
            without.setdefault(said, comment)
    shown = [item for comments in with_id.values() for item in _of_one_id(comments)]
    shown += [(comment,) for comment in without.values()]
    return sorted(shown, key=lambda item: _standing_order(item[0]))


def _standing_order(comment: Comment) -> tuple[object, ...]:
    posted, written = comment.posted, comment.written
    return (
        *(posted.latest, posted.earliest, written.earliest, written.latest),
        *(comment.id or "", comment.author_id or "", comment.author),
        *(wording(comment.text), comment.text, comment.reply_to or "", comment.place),
    )


def _of_one_id(comments: list[Comment]) -> Iterator[Shown]:
    """The words that stand under one id: versions where the times of edits tell their order."""
    if len(comments) == 1:
        yield (comments[0],)
        return
    distinct: dict[str, Comment] = {}
    for comment in sorted(comments, key=lambda one: one.written.earliest):
        distinct.setdefault(wording(comment.text), comment)
    versions = tuple(distinct.values())
    in_order = all(one.written.latest < later.written.earliest for one, later in pairwise(versions))
    if in_order:
        yield versions
    else:
        yield from ((comment,) for comment in versions)


class Matcher:
    """The known comments that no comment of the batch has been matched with yet."""

    def __init__(self, known: Iterable[KnownComment]) -> None:
        """For these comments, whose order does not matter."""
        self._known = sorted(known, key=lambda each: each.key)
        self._taken: set[str] = set()
        self._by_id: dict[str, list[KnownComment]] = defaultdict(list)
        self._by_words: dict[tuple[Author, str], list[KnownComment]] = defaultdict(list)
        self._by_second: dict[tuple[Author, Span], list[KnownComment]] = defaultdict(list)
        for one in self._known:
            if one.comment.id:
                self._by_id[one.comment.id].append(one)

    def pair(self, shown: Sequence[Shown]) -> dict[int, KnownComment]:
        """For each place in `shown` the known comment that it is; each is used once."""
        pairs: dict[int, KnownComment] = {}
        left: Sequence[int] = range(len(shown))
        for way in (self._same_id_and_words, self._same_id):
            left = self._pair_by(way, shown, left, pairs)
        if not left:
            return pairs
        self._index_by_author([shown[place][-1] for place in left])
        if not self._by_words:
            return pairs
        # Those that tell most choose first, so that a batch handed in again finds what it found.
        left = sorted(left, key=lambda place: _telling_order(shown[place][-1]))
        for way in (self._unchanged, self._nothing_to_learn, self._same_words):
            left = self._pair_by(way, shown, left, pairs)
        rivals = _by_author_and_second(shown[place][-1] for place in left)
        alone = [place for place in left if not _crowded(shown[place][-1], rivals)]
        self._pair_by(self._same_second, shown, alone, pairs)
        return pairs

    def _pair_by(
        self,
        way: Callable[[Comment], KnownComment | None],
        shown: Sequence[Shown],
        places: Iterable[int],
        pairs: dict[int, KnownComment],
    ) -> list[int]:
        """Pair what one way recognises; what is left."""
        left = []
        for place in places:
            found = way(shown[place][-1])
            if found:
                pairs[place] = found
                self._taken.add(found.key)
            else:
                left.append(place)
        return left

    def _index_by_author(self, comments: Sequence[Comment]) -> None:
        """Make the known comments findable by author and words, or by author and second."""
        all_have_ids = all(comment.id for comment in comments)
        for one in self._free(self._known):
            if one.comment.id and all_have_ids:
                continue  # two comments with different ids are never one
            for author in authors_of(one.comment):
                for words in {wording(version.text) for version in one.versions}:
                    self._by_words[author, words].append(one)
                if one.comment.posted.is_exact and not one.comment.id:
                    self._by_second[author, one.comment.posted].append(one)

    def _free(self, candidates: Iterable[KnownComment]) -> list[KnownComment]:
        return [one for one in candidates if one.key not in self._taken]

    def _same_id_and_words(self, comment: Comment) -> KnownComment | None:
        words = wording(comment.text)
        fitting = [
            one
            for one in self._free(self._by_id.get(comment.id or "", ()))
            if any(wording(version.text) == words for version in one.versions)
        ]
        if len(fitting) > 1:  # a source that gives one id to several comments
            fitting.sort(key=lambda one: not _tells_nothing_new(one.comment, comment))
        return fitting[0] if fitting else None

    def _same_id(self, comment: Comment) -> KnownComment | None:
        return next(iter(self._free(self._by_id.get(comment.id or "", ()))), None)

    def _unchanged(self, comment: Comment) -> KnownComment | None:
        told = (comment.posted, comment.id, comment.author_id)
        fitting = self._of_same_words(comment)
        alike = (
            one
            for one in fitting
            if (one.comment.posted, one.comment.id, one.comment.author_id) == told
        )
        return next(alike, None)

    def _nothing_to_learn(self, comment: Comment) -> KnownComment | None:
        fitting = self._of_same_words(comment)
        return next((one for one in fitting if _tells_nothing_new(one.comment, comment)), None)

    def _same_words(self, comment: Comment) -> KnownComment | None:
        return next(iter(self._of_same_words(comment)), None)

    def _of_same_words(self, comment: Comment) -> list[KnownComment]:
        """Those that it can be by author, words and time, the ones that fewest others can be first."""
        words = wording(comment.text)
        fitting = {
            one.key: one
            for author in authors_of(comment)
            for one in self._free(self._by_words.get((author, words), ()))
            if _can_be_one(one.comment, comment)
        }
        return sorted(fitting.values(), key=lambda one: (one.comment.posted.latest, one.key))

    def _same_second(self, comment: Comment) -> KnownComment | None:
        fitting = {
            one.key: one
            for author in authors_of(comment)
            for one in self._free(self._by_second.get((author, comment.posted), ()))
            if _can_be_one(one.comment, comment)
        }
        return next(iter(fitting.values())) if len(fitting) == 1 else None


def authors_of(comment: Comment) -> tuple[Author, ...]:
    """What an author is known by: the id, the name, both, or nothing."""
    return authors_called(comment.author, comment.author_id)


def authors_called(author: str, author_id: str | None) -> tuple[Author, ...]:
    """The same by the name and the id."""
    name = name_of(author)
    told = [("id", author_id)] if author_id else []
    if name:
        told.append(("name", name))
    return tuple(told) or (NOBODY,)


def _can_be_one(known: Comment, comment: Comment) -> bool:
    """Whether ids, author and time allow two comments with the same words to be one."""
    if known.id and comment.id and known.id != comment.id:
        return False
    if known.author_id and comment.author_id and known.author_id != comment.author_id:
        return False
    return may_be_one_time(known.posted, comment.posted)


def _telling_order(comment: Comment) -> tuple[object, ...]:
    posted = comment.posted
    return (comment.id is None, comment.author_id is None, posted.latest - posted.earliest)


def _tells_nothing_new(known: Comment, comment: Comment) -> bool:
    """Whether what is known says all that the comment says."""
    return (
        comment.posted.earliest <= known.posted.earliest
        and known.posted.latest <= comment.posted.latest
        and comment.id in {None, known.id}
        and comment.author_id in {None, known.author_id}
    )


def _by_author_and_second(comments: Iterable[Comment]) -> dict[tuple[Author, Span], int]:
    counted: dict[tuple[Author, Span], int] = defaultdict(int)
    for comment in comments:
        for author in authors_of(comment):
            counted[author, comment.posted] += 1
    return counted


def _crowded(comment: Comment, rivals: dict[tuple[Author, Span], int]) -> bool:
    """Whether the author's second does not tell which comment an edited one was."""
    if comment.id or authors_of(comment) == (NOBODY,):
        return True  # an id would have told
    return any(rivals[author, comment.posted] > 1 for author in authors_of(comment))
