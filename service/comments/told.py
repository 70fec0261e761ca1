"""A comment as a tuple of text, to be handed from one process to another or put away."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from service.comments.comment import Comment
from service.comments.spans import Span

#: A comment: author, author's id, id, what it answers, place, the ends of when it was posted and
#: of when it was edited as `as_text` writes times, words.
Told = tuple[Any, ...]


def as_text(at: datetime) -> str:
    """A time, aware and in UTC, as text that is ordered as times are."""
    return at.isoformat(" ", "microseconds")[:26]


def from_text(told: str) -> datetime:
    """The time that was told so."""
    return datetime.fromisoformat(told).replace(tzinfo=UTC)


def told_of(one: Comment) -> Told:
    """A comment as it is handed over."""
    posted, edited = one.posted, one.edited
    earliest = as_text(posted.earliest)
    latest = earliest if posted.earliest == posted.latest else as_text(posted.latest)
    since = until = None
    if edited is not None and edited != posted:
        since, until = as_text(edited.earliest), as_text(edited.latest)
    return (
        *(one.author, one.author_id, one.id, one.reply_to, one.place),
        *(earliest, latest, since, until, one.text),
    )


def comment_told(told: Told) -> Comment:
    """The comment that was handed over."""
    author, author_id, source_id, reply_to, place, earliest, latest, since, until, words = told
    edited = None if since is None else Span(from_text(since), from_text(until))
    posted = Span(from_text(earliest), from_text(latest))
    return Comment(author, words, posted, source_id, author_id, edited, reply_to, place)
