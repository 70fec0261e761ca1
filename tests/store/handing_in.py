"""Exports for the store's tests, handed in as a batch would be."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from service.comments.comment import Comment
from service.comments.content import Held
from service.comments.formats import Export, OpenExport, Unreadable
from service.comments.spans import Span
from service.store.batches import BatchReport, Delivery, digest_of, hand_in
from service.store.counting import question_of
from service.store.database import Database
from service.store.games import game_named
from service.store.opening import open_round
from service.store.readings_kept import VoteReader
from service.store.round_rules import DraftRules
from service.store.rounds import draft_round, round_numbered
from service.store.staging import Staged, staged

OPENS = datetime(2026, 3, 1, 18, 0, tzinfo=UTC)


def after(hours: float) -> datetime:
    """That long after the opening."""
    return OPENS + timedelta(hours=hours)


def comment(author: str, text: str, hours: float = 1, *, id: str | None = None) -> Comment:  # noqa: A002
    """A comment of an exact time, that long after the opening."""
    return Comment(author=author, text=text, posted=Span.at(after(hours)), id=id)


@dataclass(frozen=True)
class Handed:
    """An export that is to be handed in, and what is said beside it."""

    export: Export
    content: bytes
    copied_at: datetime
    complete: bool = False


def delivery(
    comments: Sequence[Comment],
    *,
    content: bytes | None = None,
    copied: float = 24,
    unreadable: tuple[Unreadable, ...] = (),
    complete: bool = False,
) -> Handed:
    """Those comments as an export; its bytes differ where the comments do."""
    return Handed(
        Export("table", tuple(comments), unreadable, (("text", "Comment"),), ("a note",)),
        repr(comments).encode("utf-8", "replace") if content is None else content,
        after(copied),
        complete,
    )


def open_first_round(database: Database, game: str, rules: DraftRules | None = None) -> None:
    """Round 1, open from OPENS on and without an announced closing."""
    with database.writing() as session:
        row = game_named(session, game)
        drafted = draft_round(session, row, rules or DraftRules(opens=OPENS), OPENS)
        open_round(session, row, drafted, OPENS)


def handed_in(database: Database, game: str, handed: Handed, number: int = 1) -> BatchReport:
    """The batch's report, once it is kept in the round of that number."""
    with database.reading() as session:
        row = game_named(session, game)
        question = question_of(row, round_numbered(session, row, number))
    with (
        staged(OpenExport.of(handed.export), VoteReader(question)) as read,
        database.writing() as session,
    ):
        of_round = round_numbered(session, game_named(session, game), number)
        return hand_in(session, of_round, delivered(handed, read))


def delivered(handed: Handed, read: Staged) -> Delivery:
    """The delivery of an export that was read."""
    return Delivery(
        name="comments.csv",
        size=len(handed.content),
        digest=digest_of(Held(handed.content)),
        staged=read,
        copied_at=handed.copied_at,
        by="this test",
        at=handed.copied_at,
        complete=handed.complete,
    )
