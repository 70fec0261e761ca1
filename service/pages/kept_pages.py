"""Pages for everybody, made once and sent to many.

A page is made anew only where something of its game changed, or a time in it has come. To know
that takes one small question to the database, whatever the number of comments.
"""

from __future__ import annotations

import hashlib
import threading
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from time import monotonic

from fastapi import Request, Response
from fastapi.responses import HTMLResponse
from sqlalchemy import text
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

#: The seconds that making a page may take at once, and of each second from then on, where nothing
#: but comments came in: else those that come in all the time would keep everybody waiting.
_AT_ONCE, _OF_EACH = 1.0, 0.1

#: A game's short name, and which page of it.
Name = tuple[str, str]


@dataclass(frozen=True, slots=True)
class Stand:
    """How a game stands: whatever happens in it changes a number, what is handed in the last one."""

    game: int
    changes: int
    of_rounds: int
    rounds: int
    handed_in: int

    @property
    def without_comments(self) -> Stand:
        """The same where nothing but comments came in between."""
        return replace(self, of_rounds=self.of_rounds - self.handed_in, handed_in=0)


@dataclass(slots=True)
class Allowance:
    """The seconds that are left for making a page anew for comments alone."""

    at: float
    left: float = _AT_ONCE

    def is_used_up(self) -> bool:
        """Whether nothing is left now."""
        now = monotonic()
        self.left = min(_AT_ONCE, self.left + (now - self.at) * _OF_EACH)
        self.at = now
        return self.left <= 0


@dataclass(frozen=True, slots=True)
class KeptPage:
    """A page as it is sent, how its game stood, and from when until when it is right."""

    stand: Stand | None
    made: datetime
    until: datetime
    content: bytes
    tag: str

    def answer(self, request: Request) -> Response:
        """The page, or only that the browser's copy of it is still good."""
        headers = {**_HEADERS, "ETag": self.tag}
        if self.tag in tags_of(request):
            return Response(status_code=304, headers=headers)
        return HTMLResponse(self.content, headers=headers)


class KeptPages:
    """The pages of one database by their names."""

    def __init__(self) -> None:
        self._kept: dict[Name, KeptPage] = {}
        self._allowances: dict[Name, Allowance] = {}
        self._making: dict[Name, threading.Lock] = {}
        self._lock = threading.Lock()

    def good(self, name: Name, stand: Stand | None, now: datetime) -> KeptPage | None:
        """The page as it is to be shown while the game stands so; None where it must be made.

        A count of very many comments takes seconds. While one makes the page anew everybody else is
        shown it as it was, and where comments come in all the time it is a little behind with them.
        """
        found, making = self._kept.get(name), self._making.get(name)
        if stand is None or found is None or found.stand is None:
            return None
        if making is not None and making.locked():
            return found
        if not found.made <= now < found.until:
            return None
        if found.stand == stand:
            return found
        allowed = self._allowances.get(name)
        if allowed is None or stand.without_comments != found.stand.without_comments:
            return None
        return found if allowed.is_used_up() else None

    def page(
        self, session: Session, name: Name, now: datetime, make: Callable[[GameRow], Context]
    ) -> KeptPage:
        """The page, made now if need be.

        Raises:
            NotFound: there is no such game.
        """
        stand = stand_of(session, name[0])
        found = self.good(name, stand, now)
        if found is not None:
            return found
        if stand is None:
            # Strangers may ask for any name: nothing is kept of those that are no game's.
            return _made(session, name[0], now, stand, make)
        with self._making.setdefault(name, threading.Lock()):
            began = monotonic()
            page = _made(session, name[0], now, stand, make)
            self._keep(name, page, monotonic() - began)
            return page

    def _keep(self, name: Name, page: KeptPage, took: float) -> None:
        """Keep the page, in place of the one that was made longest ago where there are too many."""
        with self._lock:
            self._kept.pop(name, None)
            while len(self._kept) >= _MOST_KEPT:
                oldest = next(iter(self._kept))
                del self._kept[oldest], self._allowances[oldest]
            self._kept[name] = page
            allowed = self._allowances.setdefault(name, Allowance(monotonic()))
            allowed.left -= took


def _made(
    session: Session,
    slug: str,
    now: datetime,
    stand: Stand | None,
    make: Callable[[GameRow], Context],
) -> KeptPage:
    """The page made now."""
    game = game_named(session, slug)
    content = html_of(make(game)).encode()
    tag = f'"{hashlib.sha256(content).hexdigest()[:32]}"'
    until = min([now + _MINUTE, *_to_come(session, game, now)])
    return KeptPage(stand, now, until, content, tag)


def stand_of(session: Session, slug: str) -> Stand | None:
    """How a game stands; None where there is none.

    Whatever changes a game counts its own or its round's changes up first.
    """
    if not slug.isascii() or not slug.isprintable():
        return None
    found = session.connection().execute(_STAND, {"slug": slug}).first()
    if found is None:
        return None
    return Stand(found[0], found[1], int(found[2]), found[3], int(found[4]))


_STAND = text("""
    SELECT g.id, g.changes, COALESCE(SUM(r.changes), 0), COUNT(r.id), COALESCE(SUM(r.handed_in), 0)
    FROM games g LEFT JOIN rounds r ON r.game_id = g.id WHERE g.slug = :slug
    GROUP BY g.id, g.changes
""")


def _to_come(session: Session, game: GameRow, now: datetime) -> list[datetime]:
    """The instants at which the page will tell something else."""
    rounds = all_rounds(session, game)
    times = [game.guesses_open, game.guesses_close]
    times += [at for row in rounds for at in (row.opens, row.closes)]
    return [at for at in times if at is not None and at > now]
