"""What was counted of a round, kept while nothing comes in: many look at an open round at once."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Generic, TypeVar
from weakref import WeakKeyDictionary

from sqlalchemy import Engine
from sqlmodel import Session

from service.store.columns import id_of
from service.store.tables import RoundRow

Kept = TypeVar("Kept")
#: Rounds of one database; a game has one open at a time.
_MOST_ROUNDS = 8


class KeptCounts(Generic[Kept]):
    """Counts by round, of each database.

    Whatever is handed in or ruled changes the round's number of changes first. Whoever asks while
    it is counted waits for that count, so that a crowd of viewers costs one.
    """

    def __init__(self) -> None:
        self._kept: WeakKeyDictionary[Engine, dict[int, _Round[Kept]]] = WeakKeyDictionary()
        self._lock = threading.Lock()

    def of(self, session: Session, row: RoundRow, count: Callable[[], Kept]) -> Kept:
        """What was counted of the round as it stands, or else is counted now."""
        kept = self._round(session.get_bind().engine, id_of(row))
        stands = (row.changes, row.state)
        with kept.lock:
            if kept.counted is None or kept.stood != stands:
                kept.stood, kept.counted = stands, (count(),)
            return kept.counted[0]

    def _round(self, engine: Engine, number: int) -> _Round[Kept]:
        """What is kept of a round; the one that was asked for longest ago makes room."""
        with self._lock:
            rounds = self._kept.setdefault(engine, {})
            found = rounds.pop(number, None) or _Round()
            while len(rounds) >= _MOST_ROUNDS:
                rounds.pop(next(iter(rounds)))
            rounds[number] = found
            return found


class _Round(Generic[Kept]):
    """A round's count, and how the round stood when it was made."""

    def __init__(self) -> None:
        self.lock = threading.Lock()
        self.stood: tuple[int, str] | None = None
        self.counted: tuple[Kept] | None = None
