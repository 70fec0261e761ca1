"""Turns at what belongs to no game: one transaction after the other.

A game and its rounds have rows to be taken (take_game, take_round). The ways into the desk, and what
waits for a while, have none that is always there.
"""

from __future__ import annotations

from typing import Literal

from sqlalchemy import text
from sqlmodel import Session

Of = Literal["ways into the desk", "exports that wait"]
# Any numbers will do, so long as everybody takes the same ones; upgrade.py has another.
_LOCKS: dict[Of, int] = {"ways into the desk": 7_205_312, "exports that wait": 7_205_313}


def take_turn(session: Session, of: Of) -> None:
    """Have something for this transaction alone: another one that takes it waits.

    On SQLite a transaction that writes is the only one. Whoever also takes a game or a round takes
    that first.
    """
    connection = session.connection()
    if connection.dialect.name == "postgresql":
        connection.execute(text("SELECT pg_advisory_xact_lock(:lock)"), {"lock": _LOCKS[of]})
