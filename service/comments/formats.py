"""What goes into reading an export and what comes out of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Literal, get_args

from service.comments.comment import Comment
from service.comments.told import Told, told_of
from service.errors import BadTime

Format = Literal["table", "spreadsheet", "json", "json lines", "activitystreams", "feed", "pasted"]
FORMATS: tuple[Format, ...] = get_args(Format)

#: What a column or field can mean.
Meaning = Literal["text", "author", "author_id", "id", "posted", "edited", "reply_to"]
MEANINGS: tuple[Meaning, ...] = get_args(Meaning)


@dataclass(frozen=True, slots=True)
class Source:
    """Where an export comes from, and what it cannot say itself.

    `name` is the file's, for messages and as a hint at the format. `zone` is the IANA zone of
    times without one. `copied_at` (aware) is when the page was copied, for "3 days ago".
    `columns` pairs meanings with headers or field names where the caller names them; a headerless
    table's columns are named by their numbers from 1, and fields of JSON also by a JSON Pointer
    (RFC 6901) inside a comment; "-" is no column. `format` is None to find it by content. `at` is
    where the comments stand inside: a JSON Pointer to their list, or the name of a sheet.
    """

    name: str
    zone: str
    copied_at: datetime
    columns: tuple[tuple[str, str], ...] = ()
    format: Format | None = None
    at: str | None = None

    def __post_init__(self) -> None:
        if self.copied_at.tzinfo is None:
            raise BadTime(
                self.copied_at.isoformat(),
                "the time of copying has no zone",
                "give it with its offset, as in 2026-03-01T18:00:00+01:00",
            )


@dataclass(frozen=True, slots=True)
class Unreadable:
    """What could not be read as a comment, or not be told apart: where, the words, and why."""

    place: str
    text: str
    why: str


@dataclass(frozen=True, slots=True)
class Export:
    """What an export held. `mapping` pairs meanings with the headers they were read from.

    `notes` are sentences for the host on how the export was read.
    """

    format: Format
    comments: tuple[Comment, ...]
    unreadable: tuple[Unreadable, ...]
    mapping: tuple[tuple[str, str], ...]
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class OpenExport:
    """An export that is being read: what it holds comes one by one, so that no size is too large.

    `items` can be gone through once; they raise BadExport where nothing more can be read.
    `notes` answers all sentences for the host once the items have been gone through. `columns` are
    the headers of a table, for the host to choose from where the mapping is wrong.
    `told` are the items as tuples of text, where that is quicker: one of the two is gone through.
    """

    format: Format
    mapping: tuple[tuple[str, str], ...]
    items: Iterator[Comment | Unreadable]
    notes: Callable[[], tuple[str, ...]]
    told: Iterator[Told | Unreadable] | None = None
    columns: tuple[str, ...] = ()

    @classmethod
    def of(cls, export: Export) -> OpenExport:
        """An export that has been read whole."""
        items: Iterator[Comment | Unreadable] = iter((*export.comments, *export.unreadable))
        return cls(export.format, export.mapping, items, lambda: export.notes)

    def all_told(self) -> Iterator[Told | Unreadable]:
        """All items as tuples of text."""
        if self.told is not None:
            return self.told
        return (one if isinstance(one, Unreadable) else told_of(one) for one in self.items)

    def whole(self) -> Export:
        """All that is still to come, read into memory."""
        found = list(self.items)
        return Export(
            format=self.format,
            comments=tuple(one for one in found if isinstance(one, Comment)),
            unreadable=tuple(one for one in found if isinstance(one, Unreadable)),
            mapping=self.mapping,
            notes=self.notes(),
        )
