"""Exports that a host has sent and not yet handed in: looked at first, with how they are read.

A few wait, for an hour. Where one process serves they lie in files without names that it keeps, and
nothing of them is in the database. Where several may serve, on PostgreSQL, they lie there.
"""

from __future__ import annotations

import secrets
import shutil
import tempfile
import threading
import weakref
from collections import OrderedDict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import BinaryIO, Protocol

from service.api.uploads import Uploaded
from service.store.database import Database
from service.store.games import game_named
from service.store.passing import (
    LASTS,
    MOST_WAITING,
    Waiter,
    drop_waiting,
    find_waiting,
    keep_waiting,
    no_such_export,
    pieces_of,
)


@dataclass(frozen=True, slots=True, weakref_slot=True)
class WaitingExport:
    """An export that waits: its name and its bytes."""

    name: str
    content: Uploaded


@dataclass(frozen=True, slots=True)
class SentBy:
    """Who sent an export to wait: the id of the session, and the game that it is for."""

    owner: int
    game: str


class WaitingExports(Protocol):
    """The exports that wait, each under a key that only its sender was told."""

    def keep(self, sent_by: SentBy, name: str, sent: BinaryIO, now: datetime) -> str:
        """Keep a copy of what was sent; under which key. The oldest makes room.

        Raises:
            NotFound: there is no such game.
        """

    def find(self, owner: int, key: str, now: datetime) -> WaitingExport:
        """The export of that key, for the session that sent it.

        Raises:
            NotFound: it was handed in, waited too long, or made room for others.
        """

    def drop(self, key: str) -> None:
        """Forget an export; its file goes with the last who reads it."""

    def drop_of(self, game: str) -> None:
        """Forget all exports that wait for a game."""


class WaitingHere:
    """Exports that wait in this process."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._kept: OrderedDict[str, tuple[SentBy, datetime, WaitingExport]] = OrderedDict()

    def keep(self, sent_by: SentBy, name: str, sent: BinaryIO, now: datetime) -> str:
        """See WaitingExports."""
        sent.seek(0)
        copy: BinaryIO = tempfile.TemporaryFile()  # noqa: SIM115 - kept
        shutil.copyfileobj(sent, copy)
        key = secrets.token_urlsafe(16)
        kept = _kept_in(copy, name)
        with self._lock:
            self._forget(now)
            while len(self._kept) >= MOST_WAITING:
                self._kept.popitem(last=False)
            self._kept[key] = (sent_by, now, kept)
        return key

    def find(self, owner: int, key: str, now: datetime) -> WaitingExport:
        """See WaitingExports."""
        with self._lock:
            self._forget(now)
            found = self._kept.get(key)
        if found is None or found[0].owner != owner:
            raise no_such_export(key)
        return found[2]

    def drop(self, key: str) -> None:
        """See WaitingExports."""
        with self._lock:
            self._kept.pop(key, None)

    def drop_of(self, game: str) -> None:
        """See WaitingExports."""
        with self._lock:
            of_game = [key for key, (by, _, _) in self._kept.items() if by.game == game]
        for key in of_game:
            self.drop(key)

    def _forget(self, now: datetime) -> None:
        for key in [key for key, (_, since, _) in self._kept.items() if now - since > LASTS]:
            del self._kept[key]


class WaitingForAll:
    """Exports that wait in the database, for all processes that serve."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def keep(self, sent_by: SentBy, name: str, sent: BinaryIO, now: datetime) -> str:
        """See WaitingExports."""
        key = secrets.token_urlsafe(16)
        content = Uploaded(sent, sent.seek(0, 2))
        with self._database.writing() as session:
            game = game_named(session, sent_by.game)
            who = Waiter(sent_by.owner, key)
            keep_waiting(session, who, game, name, content.pieces(), now)
        return key

    def find(self, owner: int, key: str, now: datetime) -> WaitingExport:
        """See WaitingExports. What is found is copied into a file without a name."""
        with self._database.reading() as session:
            row = find_waiting(session, Waiter(owner, key), now)
            return _kept_in(_file_of(pieces_of(session, row)), row.name)

    def drop(self, key: str) -> None:
        """See WaitingExports."""
        with self._database.writing() as session:
            drop_waiting(session, key)

    def drop_of(self, game: str) -> None:
        """See WaitingExports. What is forgotten is taken out of the database as a whole."""


def _file_of(pieces: Iterable[bytes]) -> BinaryIO:
    copy: BinaryIO = tempfile.TemporaryFile()  # noqa: SIM115 - kept
    copy.writelines(pieces)
    return copy


def _kept_in(copy: BinaryIO, name: str) -> WaitingExport:
    kept = WaitingExport(name, Uploaded(copy, copy.tell()))
    # Whoever reads it holds it: its file is closed once nobody does.
    weakref.finalize(kept, copy.close)
    return kept
