"""Connections to a running server that end where their other side does nothing.

The server library waits without end for a request's head, and for a reader that takes nothing. Here
each connection is looked at every so many seconds and cut off where nothing has gone on meanwhile.
How long a body may take is the app's to say (service/api/body_limit.py).
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from functools import partial
from typing import Any

from uvicorn import Config
from uvicorn.protocols.http.h11_impl import H11Protocol, RequestResponseCycle
from uvicorn.server import ServerState


class WatchedConnection(H11Protocol):
    """A connection that is cut off after `wait` to twice `wait` seconds without anything."""

    def __init__(
        self,
        config: Config,
        server_state: ServerState,
        app_state: dict[str, Any],
        _loop: asyncio.AbstractEventLoop | None = None,
        *,
        wait: float,
    ) -> None:
        super().__init__(config, server_state, app_state, _loop)
        self.wait = wait
        self._next_look: asyncio.TimerHandle | None = None
        self._waits_since = 0.0
        self._unread = 0

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """A client has connected; from now on its request is waited for."""
        super().connection_made(transport)
        self._waits_since = self.loop.time()
        self._next_look = self.loop.call_later(self.wait, self._look)

    def on_response_complete(self) -> None:
        """An answer was given; from now on the next request is waited for."""
        self._waits_since = self.loop.time()
        super().on_response_complete()

    def connection_lost(self, exc: Exception | None) -> None:
        """The connection is gone, and with it what it waited for."""
        if self._next_look is not None:
            self._next_look.cancel()
        super().connection_lost(exc)

    def _look(self) -> None:
        unread = self.transport.get_write_buffer_size()
        reads_nothing = 0 < self._unread <= unread
        sends_nothing = (
            unread == 0
            and not self._is_answering()
            and self.loop.time() - self._waits_since >= self.wait
        )
        if reads_nothing or sends_nothing:
            self.transport.abort()
            return
        self._unread = unread
        self._next_look = self.loop.call_later(self.wait, self._look)

    def _is_answering(self) -> bool:
        cycle: RequestResponseCycle | None = self.cycle
        return cycle is not None and not cycle.response_complete


def watched(seconds: float) -> Callable[..., WatchedConnection]:
    """What makes connections that are cut off after so many seconds, in another process too."""
    return partial(WatchedConnection, wait=seconds)
