"""A round's comments as rows, and as values with all the words they were seen with."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, delete, insert, select, update

from service.comments.comment import Comment
from service.comments.spans import Span
from service.comments.versions import KnownComment, Version
from service.errors import NotFound
from service.store.columns import id_of
from service.store.tables import RoundRow
from service.store.tables_comments import BatchRow, CommentRow, VersionRow

_KEY = re.compile(r"[a-z0-9-]+")


def known_comments(session: Session, row: RoundRow) -> list[KnownComment]:
    """All comments of a round, in the order in which they were handed in."""
    of_round = col(CommentRow.round_id) == id_of(row)
    versions: dict[int, list[VersionRow]] = defaultdict(list)
    joined = select(VersionRow).join(CommentRow).where(of_round)
    for version in session.exec(joined.order_by(col(VersionRow.number))):
        versions[version.comment_id].append(version)
    rows = session.exec(select(CommentRow).where(of_round).order_by(col(CommentRow.id)))
    return [_known(comment, versions[id_of(comment)]) for comment in rows]


def comment_row(session: Session, row: RoundRow, key: str) -> CommentRow:
    """The row of one comment of a round.

    Raises:
        NotFound: the round has no comment of that key.
    """
    found = None
    # A key is plain; anything else, such as a NUL that PostgreSQL refuses, is none.
    if _KEY.fullmatch(key):
        of_round = select(CommentRow).where(CommentRow.round_id == id_of(row))
        found = session.exec(of_round.where(CommentRow.key == key)).first()
    if found is None:
        raise NotFound("comment", key, f"see the keys in the comments of round {row.number}")
    return found


def keep_new_comments(session: Session, batch: BatchRow, new: Sequence[KnownComment]) -> None:
    """Keep comments that no batch has shown before, with their versions."""
    if not new:
        return
    made_by = {"round_id": batch.round_id, "batch_id": id_of(batch)}
    values = [made_by | _comment_values(one) for one in new]
    ids = session.exec(
        insert(CommentRow).returning(col(CommentRow.id), sort_by_parameter_order=True),
        params=values,
    )
    versions = [
        version
        for comment_id, one in zip(ids.scalars().all(), new, strict=True)
        for version in _version_values(comment_id, one)
    ]
    session.exec(insert(VersionRow), params=versions)


def keep_changed_comments(
    session: Session, batch: BatchRow, changed: Sequence[KnownComment]
) -> None:
    """Keep what a batch changed of comments that were known: their words, their times."""
    if not changed:
        return
    of_round = select(CommentRow.key, CommentRow.id).where(CommentRow.round_id == batch.round_id)
    ids = {key: comment_id for key, comment_id in session.exec(of_round) if comment_id is not None}
    # Given ids, this changes each comment by its own.
    values = [{"id": ids[one.key]} | _comment_values(one) for one in changed]
    session.exec(update(CommentRow), params=values)
    # The merge may put words that an earlier batch missed between two others.
    for some in batched([ids[one.key] for one in changed]):
        session.exec(delete(VersionRow).where(col(VersionRow.comment_id).in_(some)))
    versions = [version for one in changed for version in _version_values(ids[one.key], one)]
    session.exec(insert(VersionRow), params=versions)


def batched(ids: Sequence[int], size: int = 500) -> Iterator[Sequence[int]]:
    """The ids in parts: a statement takes only so many values."""
    for start in range(0, len(ids), size):
        yield ids[start : start + size]


def _known(row: CommentRow, versions: Sequence[VersionRow]) -> KnownComment:
    comment = Comment(
        author=row.author,
        text=versions[-1].text,
        posted=Span(row.posted_earliest, row.posted_latest),
        id=row.source_id,
        author_id=row.author_id,
        edited=_span(row.edited_earliest, row.edited_latest),
        reply_to=row.reply_to,
        place=row.place,
    )
    words = tuple(
        Version(
            text=version.text,
            written=Span(version.written_earliest, version.written_latest),
            seen=_span(version.seen_earliest, version.seen_latest),
        )
        for version in versions
    )
    return KnownComment(row.key, comment, words)


def _comment_values(one: KnownComment) -> dict[str, Any]:
    comment = one.comment
    edited = comment.edited
    return {
        "key": one.key,
        "author": comment.author,
        "author_id": comment.author_id,
        "source_id": comment.id,
        "reply_to": comment.reply_to,
        "place": comment.place,
        "posted_earliest": comment.posted.earliest,
        "posted_latest": comment.posted.latest,
        "edited_earliest": edited and edited.earliest,
        "edited_latest": edited and edited.latest,
    }


def _version_values(comment_id: int, one: KnownComment) -> list[dict[str, Any]]:
    return [
        {
            "comment_id": comment_id,
            "number": number,
            "text": version.text,
            "written_earliest": version.written.earliest,
            "written_latest": version.written.latest,
            "seen_earliest": version.seen and version.seen.earliest,
            "seen_latest": version.seen and version.seen.latest,
        }
        for number, version in enumerate(one.versions, start=1)
    ]


def _span(earliest: datetime | None, latest: datetime | None) -> Span | None:
    return None if earliest is None or latest is None else Span(earliest, latest)
