"""Every request under an id of its own: in its answer, in each line of the log, in the figures.

A line of the log tells method, route, status, time and who asked: host, collector, desk (a browser
that is signed in) or anybody. It never holds the address as it was sent,
nor its query, a header or a body: those name voters and carry tokens.
"""

from __future__ import annotations

import logging
import re
from contextvars import ContextVar
from time import perf_counter
from uuid import uuid4

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from service.api.gate import who_asked
from service.api.metrics import Metrics

HEADER = "X-Request-ID"
_NAME = HEADER.lower().encode()
#: The id of the request that is being answered.
request_id: ContextVar[str] = ContextVar("request_id", default="")
_log = logging.getLogger("loopstart.requests")
# What a server before this one gave its request is kept, if it can be nothing else than an id.
_IS_ID = re.compile(r"[A-Za-z0-9_-]{8,64}")
_METHODS = {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"}


def _sent_id(scope: Scope) -> str:
    """The id that a server before this one gave the request; "" where it gave none."""
    for name, value in scope["headers"]:
        if name == _NAME:
            sent = value.decode("latin-1")
            return sent if _IS_ID.fullmatch(sent) else ""
    return ""


class RequestLog:
    """Gives each request its id, logs it when it is answered, and counts it."""

    def __init__(self, app: ASGIApp, metrics: Metrics) -> None:
        self._app = app
        self._metrics = metrics

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on under its id."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        known_as = _sent_id(scope) or uuid4().hex
        status = 500  # where the app raises, that is what its caller is told

        async def with_id(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                message["headers"] = [*message.get("headers", ()), (_NAME, known_as.encode())]
            await send(message)

        # Not taken back at the end: what the app raises is logged by the server, under this id.
        request_id.set(known_as)
        began = perf_counter()
        self._metrics.running.inc()
        try:
            await self._app(scope, receive, with_id)
        finally:
            self._metrics.running.dec()
            self._tell(scope, status, perf_counter() - began)

    def _tell(self, scope: Scope, status: int, seconds: float) -> None:
        # A method that is none could be any word, and each would be counted by itself.
        method = scope["method"] if scope["method"] in _METHODS else "other"
        route = getattr(scope.get("route"), "path", "none")
        self._metrics.answered(method, route, status, seconds)
        told = {
            "method": method,
            "route": route,
            "status": status,
            "ms": round(seconds * 1000, 1),
            "who": who_asked(scope.get("state", {})) or "anybody",
        }
        _log.info("%s %s %d", method, route, status, extra={"told": told})
