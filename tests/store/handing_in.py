"""Exports for the store's tests, handed in as a batch would be."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime, timedelta

from service.comments.comment import Comment
from service.comments.formats import Export, Unreadable
from service.comments.spans import Span
from service.store.batches import BatchReport, Delivery, hand_in
from service.store.database import Database
from service.store.games import game_named
from service.store.opening import open_round
from service.store.round_rules import DraftRules
from service.store.rounds import draft_round, round_numbered

OPENS = datetime(2026, 3, 1, 18, 0, tzinfo=UTC)


def after(hours: float) -> datetime:
    """That long after the opening."""
    return OPENS + timedelta(hours=hours)


def comment(author: str, text: str, hours: float = 1, *, id: str | None = None) -> Comment:  # noqa: A002
    """A comment of an exact time, that long after the opening."""
    return Comment(author=author, text=text, posted=Span.at(after(hours)), id=id)


def delivery(
    comments: Sequence[Comment],
    *,
    content: bytes | None = None,
    copied: float = 24,
    unreadable: tuple[Unreadable, ...] = (),
) -> Delivery:
    """Those comments as an export; its bytes differ where the comments do."""
    return Delivery(
        name="comments.csv",
        content=repr(comments).encode("utf-8", "replace") if content is None else content,
        export=Export("table", tuple(comments), unreadable, (("text", "Comment"),), ("a note",)),
        copied_at=after(copied),
        by="this test",
        at=after(copied),
    )


def open_first_round(database: Database, game: str, rules: DraftRules | None = None) -> None:
    """Round 1, open from OPENS on and without an announced closing."""
    with database.writing() as session:
        row = game_named(session, game)
        drafted = draft_round(session, row, rules or DraftRules(opens=OPENS), OPENS)
        open_round(session, row, drafted, OPENS)


def handed_in(database: Database, game: str, handed: Delivery) -> BatchReport:
    """The batch's report, once it is kept in round 1."""
    with database.writing() as session:
        return hand_in(session, round_numbered(session, game_named(session, game), 1), handed)
