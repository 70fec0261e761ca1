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
from sqlalchemy import Engine
from sqlmodel import Session, col, func, select

from service.api.pictures_out import tags_of
from service.pages.rendering import Context, html_of
from service.store.columns import id_of
from service.store.games import game_named
from service.store.rounds import all_rounds
from service.store.tables import GameRow, RoundRow

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

    stand: Stand
    made: datetime
    until: datetime
    content: bytes
    tag: str


class KeptPages:
    """Pages by their names, of each database."""

    def __init__(self) -> None:
        self._kept: WeakKeyDictionary[Engine, dict[tuple[str, str], _KeptPage]] = (
            WeakKeyDictionary()
        )
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
        if found is not None and found.stand == stand and found.made <= now < found.until:
            return found
        game = game_named(session, name[0])
        content = html_of(make(game)).encode()
        tag = f'"{hashlib.sha256(content).hexdigest()[:32]}"'
        until = min([now + _MINUTE, *_to_come(session, game, now)])
        page = _KeptPage(stand, now, until, content, tag)
        with self._lock:
            kept.pop(name, None)
            while len(kept) >= _MOST_KEPT:
                kept.pop(next(iter(kept)))
            kept[name] = page
        return page


def stand_of(session: Session, slug: str) -> Stand:
    """How a game stands; whatever changes it counts its own or its round's changes up first."""
    game = game_named(session, slug)
    of_rounds = select(
        func.coalesce(func.sum(RoundRow.changes), 0), func.count(col(RoundRow.id))
    ).where(RoundRow.game_id == id_of(game))
    changes, many = session.exec(of_rounds).one()
    return id_of(game), game.changes, int(changes), int(many)


def _to_come(session: Session, game: GameRow, now: datetime) -> list[datetime]:
    """The instants at which the page will tell something else."""
    rounds = all_rounds(session, game)
    times = [game.guesses_open, game.guesses_close]
    times += [at for row in rounds for at in (row.opens, row.closes)]
    return [at for at in times if at is not None and at > now]
