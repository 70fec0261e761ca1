"""Announced results: each a revision with its record, never changed, only followed by another."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy.orm import defer
from sqlmodel import Session, col, select

from service.counting.record import RecordAbout, SealedRecord
from service.counting.result import TieStep
from service.errors import NotFound
from service.store.columns import id_of
from service.store.readings import Counted
from service.store.recording import record_of
from service.store.rounds import name_of
from service.store.tables import GameRow, RoundRow
from service.store.tables_counting import RevisionRow

#: What of a record is of the revision and not of the count.
_OF_REVISION = ("revision", "game", "marks", "digest")


def revisions_of(session: Session, row: RoundRow) -> Sequence[RevisionRow]:
    """The revisions of a round's result, oldest first; a record is read where it is looked at."""
    of_round = select(RevisionRow).where(RevisionRow.round_id == id_of(row))
    without = of_round.options(defer(RevisionRow.record))  # type: ignore[arg-type]
    return session.exec(without.order_by(col(RevisionRow.number))).all()


@dataclass(frozen=True, slots=True)
class RevisionTold:
    """A revision without its record, which may be as large as all comments together."""

    number: int
    announced: datetime
    reason: str | None
    digest: str | None


def revisions_told(session: Session, row: RoundRow) -> tuple[RevisionTold, ...]:
    """The revisions of a round's result, oldest first."""
    told = (
        select(RevisionRow.number, RevisionRow.announced, RevisionRow.reason, RevisionRow.digest)
        .where(RevisionRow.round_id == id_of(row))
        .order_by(col(RevisionRow.number))
    )
    return tuple(RevisionTold(*one) for one in session.exec(told))


def revision_numbered(session: Session, row: RoundRow, number: int | None) -> RevisionRow:
    """The revision of that number; without one, the newest.

    Raises:
        NotFound: there is none.
    """
    found = revisions_of(session, row)
    for revision in reversed(found):
        if number in (None, revision.number):
            return revision
    wanted = name_of(row) if number is None else f"{name_of(row)}, {number}"
    todo = f"its result has {len(found)}" if found else "its result is not announced"
    raise NotFound("revision", wanted, todo)


def record_text(session: Session, row: RoundRow, number: int | None) -> RevisionRow:
    """The revision with the record that is asked for.

    Raises:
        NotFound: there is none, or it was announced before records were kept.
    """
    revision = revision_numbered(session, row, number)
    if revision.record is None:
        raise NotFound(
            "record",
            f"{name_of(row)}, revision {revision.number}",
            "it was announced before records were kept: count it again for a new revision",
        )
    return revision


def record_now(
    session: Session,
    game: GameRow,
    row: RoundRow,
    said: tuple[str | None, datetime],
) -> tuple[RecordAbout, SealedRecord]:
    """The record that the count would be announced with; `said` is the reason and the time."""
    before = revisions_of(session, row)
    reason, now = said
    about = RecordAbout(
        game=game.slug,
        name=game.name,
        seal=game.seal,
        round=row.number,
        announced=now,
        salt=bytes.fromhex(row.salt or ""),
        runoff_of=row.runoff_of,
        revision=len(before) + 1,
        reason=reason,
        before=before[-1].digest if before else None,
    )
    return about, record_of(session, game, row, about)


def is_the_same_count(record: SealedRecord, before: RevisionRow) -> bool:
    """Whether a record tells no other count than the revision before."""
    if before.record is None:
        return False
    return _count_in(record.text) == _count_in(before.record)


def keep_revision(
    session: Session,
    row: RoundRow,
    about: RecordAbout,
    record: SealedRecord,
    result: dict[str, Any],
) -> None:
    """Keep an announced result and show it from now on."""
    session.add(
        RevisionRow(
            round_id=id_of(row),
            number=about.revision,
            announced=about.announced,
            reason=about.reason,
            result=result,
            record=record.text,
            digest=record.digest,
        )
    )
    row.result = result
    session.add(row)
    session.flush()


def public_result(counted: Counted, words: str) -> dict[str, Any]:
    """The result as it is kept: for everybody, so without a voter's name or words."""
    result = counted.result
    return {
        "winner": result.winner,
        "tally": [{"page": page, "votes": votes} for page, votes in result.tally],
        "steps": [_step(step) for step in result.steps],
        "why": result.why,
        "comments": result.figures.comments,
        "ballots": result.figures.ballots,
        "set_aside": dict(result.figures.set_aside),
        "looks": result.figures.looks,
        "looks_why": counted.change.why,
        "announcement": words,
    }


def _step(step: TieStep) -> dict[str, Any]:
    return {
        "rule": step.rule,
        "tied": list(step.tied),
        "kept": list(step.kept),
        "why": step.why,
        "values": [list(value) for value in step.values],
    }


def _count_in(text: str) -> dict[str, Any]:
    record: dict[str, Any] = json.loads(text)
    return {name: value for name, value in record.items() if name not in _OF_REVISION}
