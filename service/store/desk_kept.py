"""What was worked out for the desk, kept in this process while what it was made of stands.

A host looks at the same round again and again: counting it anew for every page would take longer
than reading it. What stands is asked for in the database each time, so that another process's
changes are seen at once.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Hashable
from typing import Generic, TypeVar
from weakref import WeakKeyDictionary

from sqlalchemy import Engine
from sqlmodel import Session

Kept = TypeVar("Kept")
#: Rounds or games of one database; a host works on one or two.
_MOST = 8


class KeptWhileStanding(Generic[Kept]):
    """One value for each key of each database, good while `stands` is the same."""

    def __init__(self) -> None:
        self._kept: WeakKeyDictionary[Engine, dict[Hashable, _Place[Kept]]] = WeakKeyDictionary()
        self._lock = threading.Lock()

    def of(
        self, session: Session, key: Hashable, stands: Hashable, make: Callable[[], Kept]
    ) -> Kept:
        """What was made for the key, or else is made now; who asks meanwhile waits for it."""
        place = self._place(session, key)
        with place.lock:
            if place.made is None or place.stood != stands:
                place.made, place.stood = (make(),), stands
            return place.made[0]

    def if_standing(self, session: Session, key: Hashable, stands: Hashable) -> Kept | None:
        """What was made for the key, if it is still good; nothing is made."""
        place = self._place(session, key)
        made = place.made
        return made[0] if made is not None and place.stood == stands else None

    def _place(self, session: Session, key: Hashable) -> _Place[Kept]:
        """Where the key's value is kept; the one asked for longest ago makes room."""
        with self._lock:
            places = self._kept.setdefault(session.get_bind().engine, {})
            found = places.pop(key, None) or _Place()
            while len(places) >= _MOST:
                places.pop(next(iter(places)))
            places[key] = found
            return found


class _Place(Generic[Kept]):
    """A value, and what stood when it was made."""

    def __init__(self) -> None:
        self.lock = threading.Lock()
        self.stood: Hashable = None
        self.made: tuple[Kept] | None = None
