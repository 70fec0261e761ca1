"""Rows of a table that need no weighing: an instant as RFC 3339 writes it in UTC, and no edit.

Nearly all rows of a program's export are such. What is told of one here is what `comment_of` tells
of it, by far fewer steps; all others are left to that.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from service.comments.columns import ColumnMap
from service.comments.entries import LONGEST_TEXT, Times, clean
from service.comments.formats import Meaning
from service.comments.instants import PLAIN_INSTANT
from service.comments.told import Told

_MARKS = PLAIN_INSTANT[4:20:3]
_LENGTH = len(PLAIN_INSTANT)
#: How many authors are remembered: many more would take more memory than they save time.
_MOST_AUTHORS = 5_000


class PlainRows:
    """Tells comments of a table's plain rows."""

    def __init__(self, columns: ColumnMap, times: Times) -> None:
        self._width = len(columns.names)
        self._copied_at = times.source.copied_at
        self._authors: dict[str, str] = {}
        # An empty cell behind the last stands for every column that there is not.
        places: dict[Meaning, int] = columns.places
        self._columns = tuple(
            places.get(meaning, self._width)
            for meaning in ("text", "author", "author_id", "id", "reply_to", "edited", "posted")
        )
        self._none_is_plain = columns.clock is not None

    def told(self, given: Sequence[str], place: str) -> Told | None:
        """The comment of a row; None where it is not so plain."""
        if len(given) != self._width or self._none_is_plain:
            return None
        cells = (*given, "")
        text, author, author_id, source_id, reply_to, edited, posted = self._columns
        at = self._instant(cells[posted])
        words = clean(cells[text])
        if not at or not words or len(words) > LONGEST_TEXT or cells[edited]:
            return None
        written = cells[author]
        return (
            self._authors.get(written) or self._author(written),
            clean(cells[author_id]) or None,
            clean(cells[source_id]) or None,
            clean(cells[reply_to]) or None,
            place,
            *(at, at, None, None, words),
        )

    def _instant(self, written: str) -> str:
        """The text of the instant, or ""."""
        if len(written) != _LENGTH or written[4:20:3] != _MARKS or written[11:13] == "24":
            return ""
        try:
            at = datetime.fromisoformat(written)
        except ValueError:
            return ""
        return "" if at > self._copied_at else f"{written[:10]} {written[11:19]}.000000"

    def _author(self, written: str) -> str:
        if len(self._authors) >= _MOST_AUTHORS:
            self._authors.clear()
        author = self._authors[written] = " ".join(clean(written).split())
        return author
