"""Comments made ready for counting: the words that stood at the closing, and how they were read."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from functools import lru_cache

from service.ballots.reading import Question, Reading
from service.comments.comment import Comment
from service.comments.spans import Span
from service.comments.versions import KnownComment, name_of, version_at
from service.counting.changes import Change
from service.counting.result import Ballot, Result, SetAside
from service.counting.round import ReadComment, RoundInput, Ruling
from service.counting.running import Listed, written_order
from service.store.comments import StoredComment, last_seen
from service.store.deleted import gone_at
from service.store.readings_kept import VoteReader, reading_from


@dataclass(frozen=True, slots=True)
class Counted:
    """A round's count. `ballots` and `set_aside` are the comments that it lists, oldest first.

    `round_input` has what was counted by, without the comments.
    """

    round_input: RoundInput
    result: Result
    change: Change
    ballots: tuple[Listed[Ballot], ...]
    set_aside: tuple[Listed[SetAside], ...]

    @property
    def comments(self) -> list[ReadComment]:
        """The comments that it lists, oldest first."""
        found = [one.comment for one in self.ballots] + [one.comment for one in self.set_aside]
        return sorted(found, key=written_order)


@dataclass(frozen=True, slots=True)
class Hosts:
    """Who the host is in the comments: by author id, or by name as names are compared.

    Some sources put "@" before every name; that is no part of hers.
    """

    ids: frozenset[str]
    names: frozenset[str]

    @classmethod
    def of(cls, told: Iterable[str]) -> Hosts:
        """The host by names or author ids that she told, whichever they are."""
        told = tuple(told)
        return cls(frozenset(told), frozenset(filter(None, map(_bare, told))))

    def wrote(self, comment: Comment) -> bool:
        """Whether a comment is the host's own."""
        return self.are(comment.author_id, comment.author)

    def are(self, author_id: str | None, author: str) -> bool:
        """Whether this author is the host."""
        return author_id in self.ids or (bool(self.names) and _bare(author) in self.names)


@lru_cache(maxsize=1000)
def _bare(name: str) -> str:
    """A name as names are compared, without the sign before it."""
    name = name_of(name)
    return name.lstrip("@").lstrip() or name


@dataclass(frozen=True, slots=True)
class Asked:
    """How comments are to be heard: the round's question, the host's own names, the closing.

    `complete` are the times of copying of complete batches, earliest first: what they do not show
    any more was deleted.
    """

    question: Question
    hosts: Hosts
    closes: datetime | None
    complete: tuple[datetime, ...] = ()


def read_comment(
    one: StoredComment, asked: Asked, reader: VoteReader | None, rulings: tuple[Ruling, ...]
) -> ReadComment:
    """A comment by the words that stood at the closing, as they were read.

    With a `reader` they are read now; without one their kept reading is good.
    """
    known = one.known
    version = version_at(known, asked.closes)
    kept = None if reader and not one.is_forgotten else one.readings[known.versions.index(version)]
    if kept is None:
        reader = reader or VoteReader(asked.question)
        kept = reader.read(version.text)[0]
    reading = reading_from(kept)
    return ReadComment(
        key=known.key,
        voter=one.voter,
        author=known.comment.author,
        written=version.written,
        reading=_of_deleted(reading, gone_of(known, asked.complete), asked.closes),
        is_host=asked.hosts.wrote(known.comment),
        rulings=rulings,
        text=version.text,
    )


def gone_of(known: KnownComment, complete: tuple[datetime, ...]) -> Span | None:
    """Between when a comment was deleted; None while it stands."""
    return gone_at(last_seen(known), complete) if complete else None


def _of_deleted(reading: Reading, gone: Span | None, closes: datetime | None) -> Reading:
    """A reading that would decide something, of a comment that may be gone before the closing.

    Whether its writer took the vote back or tidied up, only the host can say.
    """
    if gone is None or (closes is not None and gone.earliest >= closes):
        return reading
    if reading.outcome == "none" and reading.reason != "withdrawn":
        return reading
    between = " and ".join(_said(at) for at in (gone.earliest, gone.latest))
    why = f"it was deleted between {between}; before that it was read so: {reading.why}"
    return Reading("look", reading.pages, None, why, reading.evidence)


def _said(at: datetime) -> str:
    return at.strftime("%Y-%m-%d %H:%M UTC")


Rulings = Mapping[str, tuple[Ruling, ...]]
