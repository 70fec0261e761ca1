"""Pages for everybody, made once and sent to many.

A page is made anew only where something of its game changed, or a time in it has come. To know
that takes one small question to the database, whatever the number of comments.
"""

from __future__ import annotations

import hashlib
import threading
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from weakref import WeakKeyDictionary

from fastapi import Request, Response
from fastapi.responses import HTMLResponse
from sqlalchemy import Engine, text
from sqlmodel import Session

from service.api.pictures_out import tags_of
from service.pages.rendering import Context, html_of
from service.store.games import game_named
from service.store.rounds import all_rounds
from service.store.tables import GameRow

_MOST_KEPT = 64
#: Words such as "50 minutes" are told anew that often.
_MINUTE = timedelta(minutes=1)
#: A browser asks each time whether its copy is still good.
_HEADERS = {"Cache-Control": "no-cache"}

#: How a game stands: its changes, its rounds' changes, and how many there are.
Stand = tuple[int, int, int, int]


@dataclass(frozen=True, slots=True)
class _KeptPage:
    """A page as it is sent, how its game stood, and from when until when it is right."""

    stand: Stand | None
    made: datetime
    until: datetime
    content: bytes
    tag: str

    def is_good(self, stand: Stand | None, now: datetime) -> bool:
        """Whether it still tells how a game stands."""
        return stand is not None and self.stand == stand and self.made <= now < self.until


class KeptPages:
    """Pages by their names, of each database."""

    def __init__(self) -> None:
        self._kept: WeakKeyDictionary[Engine, dict[tuple[str, str], _KeptPage]] = (
            WeakKeyDictionary()
        )
        self._making: dict[tuple[str, str], threading.Lock] = {}
        self._lock = threading.Lock()

    def answer(
        self,
        request: Request,
        session: Session,
        name: tuple[str, str],
        now: datetime,
        make: Callable[[GameRow], Context],
    ) -> Response:
        """The page, or only that the browser's copy of it is still good.

        `name` is the game's short name, and which page of it.

        Raises:
            NotFound: there is no such game.
        """
        page = self._page(session, name, now, make)
        headers = {**_HEADERS, "ETag": page.tag}
        if page.tag in tags_of(request):
            return Response(status_code=304, headers=headers)
        return HTMLResponse(page.content, headers=headers)

    def _page(
        self,
        session: Session,
        name: tuple[str, str],
        now: datetime,
        make: Callable[[GameRow], Context],
    ) -> _KeptPage:
        kept = self._kept.setdefault(session.get_bind().engine, {})
        stand, found = stand_of(session, name[0]), kept.get(name)
        if found is not None and found.is_good(stand, now):
            return found
        if stand is None:
            # Strangers may ask for any name: nothing is kept of those that are no game's.
            return _made(session, name[0], now, stand, make)
        making = self._making.setdefault(name, threading.Lock())
        # A count of very many comments takes seconds. Meanwhile everybody else is shown the page
        # as it was: else a crowd of viewers would keep all threads waiting for it.
        if not making.acquire(blocking=found is None) and found is not None:
            return found
        try:
            page = _made(session, name[0], now, stand, make)
            self._keep(kept, name, page)
            return page
        finally:
            making.release()

    def _keep(
        self, kept: dict[tuple[str, str], _KeptPage], name: tuple[str, str], page: _KeptPage
    ) -> None:
        """Keep the page, in place of the one that was made longest ago where there are too many."""
        with self._lock:
            kept.pop(name, None)
            while len(kept) >= _MOST_KEPT:
                kept.pop(next(iter(kept)))
            kept[name] = page


def _made(
    session: Session,
    slug: str,
    now: datetime,
    stand: Stand | None,
    make: Callable[[GameRow], Context],
) -> _KeptPage:
    """The page made now."""
    game = game_named(session, slug)
    content = html_of(make(game)).encode()
    tag = f'"{hashlib.sha256(content).hexdigest()[:32]}"'
    until = min([now + _MINUTE, *_to_come(session, game, now)])
    return _KeptPage(stand, now, until, content, tag)


def stand_of(session: Session, slug: str) -> Stand | None:
    """How a game stands; None where there is none.

    Whatever changes a game counts its own or its round's changes up first.
    """
    if not slug.isascii() or not slug.isprintable():
        return None
    found = session.connection().execute(_STAND, {"slug": slug}).first()
    return None if found is None else (found[0], found[1], int(found[2]), found[3])


_STAND = text("""
    SELECT g.id, g.changes, COALESCE(SUM(r.changes), 0), COUNT(r.id)
    FROM games g LEFT JOIN rounds r ON r.game_id = g.id WHERE g.slug = :slug
    GROUP BY g.id, g.changes
""")


def _to_come(session: Session, game: GameRow, now: datetime) -> list[datetime]:
    """The instants at which the page will tell something else."""
    rounds = all_rounds(session, game)
    times = [game.guesses_open, game.guesses_close]
    times += [at for row in rounds for at in (row.opens, row.closes)]
    return [at for at in times if at is not None and at > now]
