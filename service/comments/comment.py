"""A comment as it came from an export."""

from __future__ import annotations

from dataclasses import dataclass

from service.comments.spans import Span


@dataclass(frozen=True, slots=True)
class Comment:
    """One comment: who wrote what, when, and what it answers.

    `id` and `author_id` are the source's own, None where it gives none.
    `posted` is when it was first written, `edited` when its words were last changed (None: never,
    as far as the source says). `reply_to` is the id of the comment it answers.
    `place` says where in the export it stood, for messages ("line 12", "item 3").
    """

    author: str
    text: str
    posted: Span
    id: str | None = None
    author_id: str | None = None
    edited: Span | None = None
    reply_to: str | None = None
    place: str = ""

    @property
    def written(self) -> Span:
        """When these words were written: the last edit, else the posting."""
        return self.edited or self.posted
