"""What a host has typed while she sets a game up, kept with her session until the game is made.

It may hold the answer that is not sealed yet, so it goes with the session, and at the latest with
the game's making. No address and no log ever has it.
"""

from __future__ import annotations

from collections.abc import Mapping

from sqlmodel import Session

from service.store.tables_desk import DeskSessionRow


def draft_of(session: Session, number: int) -> dict[str, str]:
    """What was typed in the session of that id, by field; nothing at first."""
    row = session.get(DeskSessionRow, number)
    return {} if row is None or row.draft is None else dict(row.draft)


def keep_draft(session: Session, number: int, typed: Mapping[str, str]) -> None:
    """Keep what was typed in place of what was kept before."""
    row = session.get(DeskSessionRow, number)
    if row is not None:
        row.draft = dict(typed)
        session.add(row)
        session.flush()


def drop_draft(session: Session, number: int) -> None:
    """Forget what was typed."""
    row = session.get(DeskSessionRow, number)
    if row is not None:
        row.draft = None
        session.add(row)
        session.flush()
