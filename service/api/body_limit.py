"""How large a body may be and how long it may take, held before and while it is received.

The framework receives a body before it asks who sent it. So whoever sends more than a small one is
asked for first: a stranger's is not received at all.
"""

from __future__ import annotations

import asyncio
from time import monotonic

from sqlalchemy.exc import DatabaseError
from starlette.concurrency import run_in_threadpool
from starlette.datastructures import Headers
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from service.api.database_trouble import sentence_of
from service.api.wiring import caller_of_header, wiring_of
from service.errors import AccessRefused, ExportTooLarge, TokenMissing
from service.settings import Settings

#: A form's own lines around the export.
_ROOM = 100_000
#: What anybody may send: room for any question, none for an export.
STRANGERS = 20_000
#: The largest body that is no form with files, in bytes: it is held in memory whole.
LARGEST_PLAIN = 2_000_000
#: The bytes a second that a body must bring, beyond the time that it may stand still.
SLOWEST = 1000


class BodyLimit:
    """Lets no body through that is too large, a stranger's, or too slow (413, 401, 408)."""

    def __init__(self, app: ASGIApp, settings: Settings) -> None:
        self._app = app
        self._settings = settings

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on; its body is looked at while the app receives it."""
        if scope["type"] == "http":
            receive = _Body(scope, self._settings, receive).receive
        await self._app(scope, receive, send)


class _Body:
    """One request's body: what has come of it, and how long that was waited for.

    What is raised are the framework's own exceptions, with the error behind them: it takes any other
    for a body that it cannot read.
    """

    def __init__(self, scope: Scope, settings: Settings, receive: Receive) -> None:
        headers = Headers(scope=scope)
        told = headers.get("content-length", "")
        self._scope = scope
        self._receive = receive
        self._wait = settings.slow_wait
        self._told = int(told[:20]) if told.isdecimal() else 0
        self._megabytes = settings.upload_limit
        self._has_files = headers.get("content-type", "").lower().startswith("multipart/")
        # At the desk every form asks for the session before it is received.
        self._is_known = not scope["path"].startswith("/api/")
        self._received = 0
        self._waited = 0.0
        self._is_whole = False

    async def receive(self) -> Message:
        """The next piece.

        Raises:
            HTTPException: the body is larger than its sender may send, or comes too slowly.
        """
        if self._is_whole:
            # Whoever asks now wants to know whether the sender is still there.
            return await self._receive()
        await self._check(self._told)
        message = await self._in_time()
        self._received += len(message.get("body", b""))
        self._is_whole = not message.get("more_body", False)
        await self._check(self._received)
        return message

    async def _in_time(self) -> Message:
        """The next piece, waited for. While the service itself is busy with one nothing is counted."""
        began = monotonic()
        left = self._wait + self._received / SLOWEST - self._waited
        try:
            async with asyncio.timeout(max(left, 0.0)):
                message = await self._receive()
        except TimeoutError:
            detail = "the request's body came too slowly: send it again on a better connection."
            raise HTTPException(408, detail, {"Connection": "close"}) from None
        self._waited += monotonic() - began
        return message

    async def _check(self, size: int) -> None:
        """Whether a body of that size is taken from its sender."""
        if size > STRANGERS and not self._is_known:
            await run_in_threadpool(self._ask_who)
            self._is_known = True
        if self._has_files and size > self._megabytes * 1_000_000 + _ROOM:
            raise HTTPException(413) from ExportTooLarge(self._megabytes)
        if not self._has_files and size > LARGEST_PLAIN:
            most = LARGEST_PLAIN // 1_000_000
            detail = (
                f"this body is larger than {most} MB: send less, or an export as a form's file."
            )
            raise HTTPException(413, detail)

    def _ask_who(self) -> None:
        request = Request(self._scope)
        try:
            header = request.headers.get("authorization", "")
            if caller_of_header(wiring_of(request), header) is None:
                raise HTTPException(401) from TokenMissing()
        except AccessRefused as error:
            raise HTTPException(401) from error
        except DatabaseError as error:
            detail = sentence_of(error)
            if detail is None:
                raise
            raise HTTPException(503, detail) from None
