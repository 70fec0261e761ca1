"""Comments across batches: which are new, which were edited and when, which are the same.

Handing in a batch again changes nothing, and the order of comments inside a batch does not matter.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime

from service.comments.comment import Comment
from service.comments.matching import Matcher, Shown, collapse
from service.comments.spans import Span
from service.comments.versions import (
    KnownComment,
    Version,
    first_known,
    key_of,
    may_be_one_time,
    narrowed,
    version_at,
    voter_of,
    with_versions,
    wording,
)

__all__ = ["KnownComment", "Merge", "Version", "key_of", "merge_batch", "version_at", "voter_of"]


@dataclass(frozen=True, slots=True)
class Merge:
    """What a batch changed. Keys in `unchanged` showed no other words than before.

    `confirmed` are those of the unchanged of which more is known now: seen again later, or with a
    time, an id or an author's id that was not known.
    """

    new: tuple[KnownComment, ...]
    edited: tuple[KnownComment, ...]
    unchanged: tuple[str, ...]
    confirmed: tuple[KnownComment, ...] = ()


def merge_batch(
    known: Iterable[KnownComment], batch: Iterable[Comment], copied_at: datetime
) -> Merge:
    """Merge a batch copied at `copied_at` (aware) into the comments known so far.

    A comment is recognised by its id, else by author, words and a time that can be the same.
    Other words under the same id, or by the same author at the same exact second, are an edit,
    made at the time that the source gives, else between the two batches.
    """
    known = tuple(known)
    shown = collapse(batch)
    pairs = Matcher(known).pair(shown)
    keys = {one.key for one in known}
    counts: Counter[str] = Counter()
    new: list[KnownComment] = []
    edited: list[KnownComment] = []
    unchanged: list[str] = []
    confirmed: list[KnownComment] = []
    for place, versions in enumerate(shown):
        before = pairs.get(place)
        if before is None:
            new.append(_as_new(versions, copied_at, keys, counts))
            continue
        after = before
        for comment in versions:
            after = _seen_again(after, comment, copied_at)
        if len(after.versions) > len(before.versions):
            edited.append(after)
            continue
        unchanged.append(before.key)
        if after != before:
            confirmed.append(after)
    return Merge(tuple(new), tuple(edited), tuple(unchanged), tuple(confirmed))


def _as_new(
    versions: Shown, copied_at: datetime, keys: set[str], counts: Counter[str]
) -> KnownComment:
    key = plain = key_of(versions[0])
    while key in keys:
        counts[plain] += 1
        key = f"{plain}-{counts[plain] + 1}"
    keys.add(key)
    known = first_known(key, versions[0], copied_at)
    for later in versions[1:]:
        known = _seen_again(known, later, copied_at)
    return known


def _seen_again(known: KnownComment, comment: Comment, copied_at: datetime) -> KnownComment:
    """The known comment after a batch copied at `copied_at` showed it as `comment`."""
    before = known.comment
    if _nothing_new(known, comment, copied_at):
        return known
    posted = narrowed(before.posted, comment.posted)
    versions = tuple(
        replace(version, written=posted) if version.written == before.posted else version
        for version in known.versions
    )
    known = replace(
        known,
        comment=replace(
            before,
            posted=posted,
            id=before.id or comment.id,
            author=before.author or comment.author,
            author_id=before.author_id or comment.author_id,
            reply_to=before.reply_to or comment.reply_to,
        ),
    )
    place = _standing_at(versions, wording(comment.text), copied_at)
    if place is None:
        return with_versions(known, _with_other_words(versions, posted, comment, copied_at))
    again = _same_words(versions[place], posted, comment, copied_at)
    later = versions[place + 1 :]
    if later:
        later = (_not_before(later[0], posted, again), *later[1:])
    return with_versions(known, (*versions[:place], again, *later))


def _nothing_new(known: KnownComment, comment: Comment, copied_at: datetime) -> bool:
    """Whether a batch shows just what is known, so that nothing need be weighed."""
    before, newest = known.comment, known.versions[-1]
    return (
        newest.seen is not None
        and newest.seen.earliest <= copied_at <= newest.seen.latest
        and before.text == comment.text
        and (before.posted, before.edited) == (comment.posted, comment.edited)
        and (before.id, before.author_id, before.author, before.reply_to)
        == (comment.id, comment.author_id, comment.author, comment.reply_to)
    )


def _standing_at(versions: tuple[Version, ...], words: str, copied_at: datetime) -> int | None:
    """Which of the versions the batch shows; None where it shows new or taken up again words."""
    newest = len(versions) - 1
    if wording(versions[newest].text) == words:
        return newest
    seen = versions[newest].seen
    if seen is None or copied_at > seen.latest:
        return None
    same = [place for place, version in enumerate(versions) if wording(version.text) == words]
    return same[-1] if same else None


def _same_words(version: Version, posted: Span, comment: Comment, copied_at: datetime) -> Version:
    seen = version.seen or Span.at(copied_at)
    written = version.written
    if comment.edited:
        # Words that an earlier batch showed already stand from there, whatever was edited later.
        if may_be_one_time(written, comment.edited):
            written = narrowed(written, comment.edited)
        elif written == posted and comment.edited.latest <= seen.earliest:
            written = comment.edited
    if copied_at < written.earliest:
        # An older batch, handed in later, shows that these words stood before the last edit.
        written = comment.written if comment.written.latest <= copied_at else posted
    if written != posted and written.earliest <= copied_at < written.latest:
        # What a batch shows was written before it was copied.
        written = Span(written.earliest, copied_at)
    seen = Span(min(seen.earliest, copied_at), max(seen.latest, copied_at))
    return replace(version, written=written, seen=seen)


def _not_before(version: Version, posted: Span, before: Version) -> Version:
    """Words that follow others: the edit that made them came after those were seen last."""
    seen = before.seen
    if seen is None or version.written == posted:
        return version
    if not version.written.earliest < seen.latest <= version.written.latest:
        return version
    return replace(version, written=Span(seen.latest, version.written.latest))


def _with_other_words(
    versions: tuple[Version, ...], posted: Span, comment: Comment, copied_at: datetime
) -> tuple[Version, ...]:
    """The versions with the batch's words put in, at the place that the times of copying tell."""
    place = sum(
        1 for version in versions if version.seen is None or version.seen.earliest <= copied_at
    )
    earlier, later = versions[:place], versions[place:]
    now = Span.at(copied_at)
    if not earlier:
        first = Version(comment.text, comment.written, now)
        return (first, _edited_after(later[0], posted, copied_at), *later[1:])
    last = earlier[-1]
    since = last.seen.latest if last.seen else last.written.earliest
    between = Span(min(since, copied_at), copied_at)
    written = narrowed(comment.edited, between) if comment.edited else between
    put_in = Version(comment.text, written, now)
    if later:
        later = (_not_before(later[0], posted, put_in), *later[1:])
    return (*earlier, put_in, *later)


def _edited_after(version: Version, posted: Span, copied_at: datetime) -> Version:
    """Words thought to be the first, now that an older batch shows others: an edit since then."""
    if version.written != posted or version.seen is None:
        return version
    return replace(version, written=Span(copied_at, max(version.seen.earliest, copied_at)))
