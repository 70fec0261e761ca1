"""Who wrote a comment, and the words that it was seen with, one after the other."""

from __future__ import annotations

import hashlib
import re
import unicodedata
from dataclasses import dataclass, replace
from datetime import datetime

from service.comments.comment import Comment
from service.comments.spans import Answer, Span

#: Signs that steer direction or join nothing: two texts are the same with or without them.
_HIDDEN = re.compile("[\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]")


@dataclass(frozen=True, slots=True)
class Version:
    """The words of a comment, and since when they stand.

    `seen` runs from the first to the last copying of a batch that showed these words; None where
    that was not kept. It narrows down when a later edit can have been made.
    """

    text: str
    written: Span
    seen: Span | None = None


@dataclass(frozen=True, slots=True)
class KnownComment:
    """A comment with all words it was seen with, oldest first.

    `key` is unique among the comments it was merged with, and stays the same.
    """

    key: str
    comment: Comment
    versions: tuple[Version, ...]


def voter_of(comment: Comment) -> str:
    """Who wrote it: the author's id, else the name without case, accents kept.

    Where a source tells neither, nobody can say that two comments have one writer: each is then
    its own.
    """
    if comment.author_id:
        return comment.author_id
    name = name_of(comment.author)
    if name:
        return name
    return f"unnamed {comment.id or _digest(wording(comment.text), _said(comment.posted))}"


def voter_in(known: KnownComment) -> str:
    """Who wrote a known comment; where its source tells nobody, a writer of its own.

    Two such comments may say the same at the same time and still be two people's.
    """
    if known.comment.author_id or name_of(known.comment.author):
        return voter_of(known.comment)
    return f"unnamed {known.key}"


def name_of(author: str) -> str:
    """The author's name as names are compared: without case, accents kept."""
    if author.isascii():
        return " ".join(author.split()).lower()
    return unicodedata.normalize("NFC", wording(author).casefold())


def wording(text: str) -> str:
    """The words by which two texts are the same, whatever spaces and line breaks a source keeps."""
    if not text.isascii():
        text = _HIDDEN.sub("", unicodedata.normalize("NFC", text))
    return " ".join(text.split())


def key_of(comment: Comment) -> str:
    """A short name for a comment seen for the first time, fit for a web address.

    The source's id decides where there is one, else the writer, the words and the time.
    """
    if comment.id:
        return key_of_id(comment.id)
    # A name may be written as another writer's id is: they are two, and their keys are.
    whose = ("author id", comment.author_id) if comment.author_id else (voter_of(comment),)
    return _digest(*whose, wording(comment.text), _said(comment.posted), _said(comment.written))


def key_of_id(source_id: str) -> str:
    """The key of a comment that has an id of its source's."""
    return _digest("id", source_id)


def may_be_one_time(one: Span, other: Span) -> bool:
    """Whether two spans can tell of the same instant."""
    return one.earliest <= other.latest and other.earliest <= one.latest


def narrowed(one: Span, other: Span) -> Span:
    """What two spans of the same instant say together; the first, where they do not meet."""
    if not may_be_one_time(one, other):
        return one
    return Span(max(one.earliest, other.earliest), min(one.latest, other.latest))


def version_at(known: KnownComment, closes: datetime | None) -> Version:
    """The words that stood at the closing; the newest words while there is no closing.

    That is the latest version provably written before it, unless a later one may have been
    written before it too: then that later one, whose time cannot be told, so that the host looks.
    Where all were written after the closing, the newest.
    """
    if closes is None:
        return known.versions[-1]
    closing = Span.at(closes)
    for version in reversed(known.versions):
        if version.written.is_before(closing) is not Answer.NO:
            return version
    return known.versions[-1]


def first_known(key: str, comment: Comment, copied_at: datetime) -> KnownComment:
    """A comment that no batch has shown before."""
    versions = (Version(comment.text, comment.written, Span.at(copied_at)),)
    return with_versions(KnownComment(key, comment, versions), versions)


def with_versions(known: KnownComment, versions: tuple[Version, ...]) -> KnownComment:
    """The comment with these versions; it reads and counts as the newest of them."""
    newest = versions[-1]
    edited = None if newest.written == known.comment.posted else newest.written
    comment = replace(known.comment, text=newest.text, edited=edited)
    return replace(known, comment=comment, versions=versions)


def _said(span: Span) -> str:
    return f"{span.earliest.isoformat()}/{span.latest.isoformat()}"


def _digest(*parts: str) -> str:
    joined = "\0".join(parts).encode("utf-8", "surrogatepass")
    return "c" + hashlib.sha256(joined).hexdigest()[:16]
