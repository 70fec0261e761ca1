"""The size of what may be handed in, held before and while it is received."""

from __future__ import annotations

from starlette.datastructures import Headers
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from service.api.problems import AnswerProblem, problem_of
from service.errors import ExportTooLarge

#: A form's own lines around the export.
_ROOM = 100_000


class UploadLimit:
    """Refuses a request that is larger than the limit, with one sentence (413)."""

    def __init__(self, app: ASGIApp, megabytes: int, answer: AnswerProblem) -> None:
        self._app = app
        self._answer = answer
        self._error = ExportTooLarge(megabytes)
        self._most = megabytes * 1_000_000 + _ROOM

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on, counting the bytes of its body."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        told = Headers(scope=scope).get("content-length", "")
        if told.isdecimal() and int(told) > self._most:
            refused = self._answer(Request(scope), problem_of(self._error), {})
            await refused(scope, receive, send)
            return
        received = 0

        async def counted() -> Message:
            nonlocal received
            message = await receive()
            received += len(message.get("body", b""))
            if received > self._most:
                # Not the error itself: the framework takes that for a body it cannot read.
                raise HTTPException(413) from self._error
            return message

        await self._app(scope, counted, send)
