"""Comments made ready for counting: the words that stood at the closing, read as votes."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.comments.comment import Comment
from service.comments.versions import KnownComment, Version, name_of, version_at, voter_in
from service.counting.changes import Change, can_looks_change
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import ReadComment, RoundInput, Ruling


@dataclass(frozen=True, slots=True)
class Counted:
    """A round's count with all that led to it. `texts` are the words that were read, by key."""

    round_input: RoundInput
    result: Result
    change: Change
    texts: Mapping[str, str]


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
        return comment.author_id in self.ids or _bare(comment.author) in self.names


def _bare(name: str) -> str:
    """A name as names are compared, without the sign before it."""
    name = name_of(name)
    return name.lstrip("@").lstrip() or name


@dataclass(frozen=True, slots=True)
class Asked:
    """How comments are to be read: the round's question, the host's own names, the closing."""

    question: Question
    hosts: Hosts
    closes: datetime | None


def read_comments(
    known: Iterable[KnownComment], asked: Asked, rulings: Mapping[str, tuple[Ruling, ...]]
) -> tuple[tuple[ReadComment, ...], dict[str, str]]:
    """Every comment read as a vote, and the words of each that were read."""
    read: list[ReadComment] = []
    texts: dict[str, str] = {}
    for one in known:
        version: Version = version_at(one, asked.closes)
        texts[one.key] = version.text
        read.append(
            ReadComment(
                key=one.key,
                voter=voter_in(one),
                author=one.comment.author,
                written=version.written,
                reading=read_vote(version.text, asked.question),
                is_host=asked.hosts.wrote(one.comment),
                rulings=rulings.get(one.key, ()),
            )
        )
    return tuple(read), texts


def count(round_input: RoundInput, texts: Mapping[str, str]) -> Counted:
    """Count the round and see whether its looks could change the result."""
    result = count_round(round_input)
    return Counted(round_input, result, can_looks_change(round_input, result), texts)
