"""Exports that a host has sent and not yet handed in: looked at first, with how they are read.

They lie in files without names that this process keeps: a few, for a while. Nothing of them is in
the database before they are handed in.
"""

from __future__ import annotations

import secrets
import shutil
import tempfile
import threading
import weakref
from collections import OrderedDict
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import BinaryIO

from service.api.uploads import Uploaded
from service.errors import NotFound

#: How many wait at once, and for how long.
_MOST = 6
_LASTS = timedelta(hours=1)


@dataclass(frozen=True, slots=True, weakref_slot=True)
class WaitingExport:
    """An export that waits: whose session sent it, its name, its bytes, and since when."""

    owner: int
    name: str
    content: Uploaded
    since: datetime


class WaitingExports:
    """The exports that wait, each under a name that only its sender was told."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._kept: OrderedDict[str, WaitingExport] = OrderedDict()

    def keep(self, owner: int, name: str, sent: BinaryIO, now: datetime) -> str:
        """Keep a copy of what was sent; under which name. The oldest makes room."""
        copy: BinaryIO = tempfile.TemporaryFile()  # noqa: SIM115 - kept
        sent.seek(0)
        shutil.copyfileobj(sent, copy)
        key = secrets.token_urlsafe(16)
        kept = WaitingExport(owner, name, Uploaded(copy, copy.tell()), now)
        # Whoever reads it holds it: its file is closed once nobody does.
        weakref.finalize(kept, copy.close)
        with self._lock:
            self._forget(now)
            while len(self._kept) >= _MOST:
                self._kept.popitem(last=False)
            self._kept[key] = kept
        return key

    def find(self, owner: int, key: str, now: datetime) -> WaitingExport:
        """The export of that name, for the session that sent it.

        Raises:
            NotFound: it was handed in, waited too long, or made room for others.
        """
        with self._lock:
            self._forget(now)
            found = self._kept.get(key)
        if found is None or found.owner != owner:
            raise NotFound("export waiting", key[:40], "choose the file again")
        return found

    def drop(self, key: str) -> None:
        """Forget an export; its file goes with the last who reads it."""
        with self._lock:
            self._kept.pop(key, None)

    def _forget(self, now: datetime) -> None:
        for key in [key for key, one in self._kept.items() if now - one.since > _LASTS]:
            del self._kept[key]
