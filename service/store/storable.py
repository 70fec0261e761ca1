"""What no database keeps is replaced before anything is compared, so that all copies agree."""

from __future__ import annotations

import re
from dataclasses import replace

from service.comments.comment import Comment
from service.comments.formats import Export, Unreadable

# PostgreSQL keeps no NUL, and neither database half a surrogate pair.
_NOT_KEPT = re.compile("[\x00\ud800-\udfff]")


def storable(text: str) -> str:
    """The text with one U+FFFD for each such character: places in the text stay where they are."""
    return _NOT_KEPT.sub("\ufffd", text)


def storable_export(export: Export) -> Export:
    """The export with every text of it storable."""
    return replace(
        export,
        comments=tuple(_comment(comment) for comment in export.comments),
        unreadable=tuple(
            Unreadable(storable(one.place), storable(one.text), storable(one.why))
            for one in export.unreadable
        ),
        mapping=tuple((meaning, storable(header)) for meaning, header in export.mapping),
        notes=tuple(storable(note) for note in export.notes),
    )


def _comment(comment: Comment) -> Comment:
    texts = (comment.author, comment.text, comment.id, comment.author_id, comment.reply_to)
    if not any(text and _NOT_KEPT.search(text) for text in (*texts, comment.place)):
        return comment
    return replace(
        comment,
        author=storable(comment.author),
        text=storable(comment.text),
        id=_or_none(comment.id),
        author_id=_or_none(comment.author_id),
        reply_to=_or_none(comment.reply_to),
        place=storable(comment.place),
    )


def _or_none(text: str | None) -> str | None:
    return None if text is None else storable(text)
