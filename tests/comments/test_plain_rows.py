"""Plain rows of a table are told the short way as they are read the long way."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.comment import Comment
from service.comments.formats import OpenExport, Source, Unreadable
from service.comments.plain_rows import PlainRows
from service.comments.tables import lines_of, open_table
from service.comments.told import comment_told, told_of

COPIED = datetime(2026, 3, 9, 12, tzinfo=UTC)
SOURCE = Source("comments.csv", "Atlantic/Faroe", COPIED)
HEADERS = ("id", "author", "posted", "edited", "text", "reply to")
TIMES = (
    *(
        "2026-03-01T18:00:00Z",
        "2026-03-09T12:00:00Z",
        "2026-03-09T12:00:01Z",
        " 2026-03-02T18:00:00Z",
    ),
    *(
        "2026-02-30T18:00:00Z",
        "2026-03-02T24:00:00Z",
        "2016-12-31T23:59:60Z",
        "2026-03-02 18:00:00Z",
    ),
    *(
        "2026-03-02T18:00:00z",
        "2026-03-02T18:00:00+01:00",
        "2026-03-02T18:00",
        "3 days ago",
        "soon",
    ),
    *("0001-01-01T00:00:00Z", "２026-03-02T18:00:00Z", "3/4/2026", ""),
)
WORDS = (
    "page 12",
    " page 12 ",
    "12\r\nplease",
    "\u200b12",
    "a\0b",
    "Île 🧵",
    "",
    "   ",
    "x" * 140_000,
)
CELLS = st.tuples(
    st.sampled_from(("k1", " k2", "", "a\0b")),
    st.sampled_from(("Tove", " Tove  Ann ", "", "\u00c5sa", "a\tb")),
    st.sampled_from(TIMES),
    st.sampled_from(("", "", "no", "2026-03-03T18:00:00Z", "yes")),
    st.sampled_from(WORDS),
    st.sampled_from(("", "k1", " ")),
)
ROWS = st.lists(st.tuples(CELLS, st.integers(3, 8)), min_size=1, max_size=8)


def opened(rows: Sequence[tuple[Sequence[str], int]]) -> OpenExport:
    """The table of these rows, each with so many of its cells, or with empty ones behind them."""
    written = io.StringIO()
    writer = csv.writer(written)
    writer.writerow(HEADERS)
    for cells, many in rows:
        writer.writerow((*cells, "", "")[:many])
    return open_table(lines_of(written.getvalue()), SOURCE)


@given(ROWS)
@settings(max_examples=300)
def test_what_is_told_is_what_is_read(rows: Sequence[tuple[Sequence[str], int]]) -> None:
    read, told = opened(rows), opened(rows)
    items = [one if isinstance(one, Unreadable) else told_of(one) for one in read.items]
    assert list(told.all_told()) == items
    assert told.notes() == read.notes()
    assert told.mapping == read.mapping


def test_a_comment_that_was_told_is_the_same_comment() -> None:
    every = [
        (("k1", "Tove", at, edited, "page 12", "k0"), 6) for at in TIMES for edited in ("", "yes")
    ]
    read, told = opened(every), opened(every)
    comments = [one for one in read.items if isinstance(one, Comment)]
    assert len(comments) == 2 * len(TIMES)
    # An edit at the time of the posting is none.
    comments = [
        replace(one, edited=None if one.edited == one.posted else one.edited) for one in comments
    ]
    assert [
        comment_told(one) for one in told.all_told() if not isinstance(one, Unreadable)
    ] == comments


@pytest.mark.parametrize("at", ["2026-03-01T18:00:00Z", "2026-03-09T12:00:00Z"])
def test_nearly_all_rows_go_the_short_way(at: str, monkeypatch: pytest.MonkeyPatch) -> None:
    went: list[bool] = []
    told = PlainRows.told

    def noted(self: PlainRows, given: list[str], place: str) -> object:
        found = told(self, given, place)
        went.append(found is not None)
        return found

    monkeypatch.setattr(PlainRows, "told", noted)
    list(opened([(("k1", "Tove", at, "", "Île 🧵 12", ""), 6)]).all_told())
    assert went == [True]
