"""Before any work is done: no endless head, not too many requests at once or of one sender.

Whoever is signed in or sends a token that is known is not counted: giving out a token is a limit of
its own. That is known only once the request was looked at, so that it is counted first and given
back; and it is counted apart from what strangers send, so that a crowd of viewers behind the same
address does not shut the host out.
"""

from __future__ import annotations

from typing import Any

from starlette.datastructures import Headers
from starlette.requests import Request
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from service.api.allowance import Allowance, network_of
from service.api.problems import AnswerProblem, Problem
from service.settings import Settings

#: The bytes of a request's address and headers.
LARGEST_HEAD = 32_768
#: An answer counts once more for each so many of its bytes: a record may have hundreds of megabytes.
BYTES_A_REQUEST = 250_000
#: And once more for each so many seconds of drawing: a picture as PNG takes some tenths of one.
SECONDS_A_REQUEST = 0.005


class Gate:
    """Refuses what is too much, with one sentence and `Retry-After` (429 and 503)."""

    def __init__(self, app: ASGIApp, settings: Settings, answer: AnswerProblem) -> None:
        self._app = app
        self._answer = answer
        self._at_once = settings.at_once
        self._running = 0
        self._allowance = Allowance(settings.rate_limit) if settings.rate_limit else None

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on, if there is room for it."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        if _size_of_head(scope) > LARGEST_HEAD:
            detail = (
                "this request's address and headers are too long: send fewer than 32 KB of them."
            )
            await self._refuse(scope, receive, send, Problem(431, detail), {})
            return
        if self._running >= self._at_once:
            detail = "this service answers as many requests as it can: try again in a moment."
            await self._refuse(scope, receive, send, Problem(503, detail), _after(1))
            return
        # Routes write into it who asks; see caller_is.
        scope.setdefault("state", {})
        self._running += 1
        try:
            await self._counted(scope, receive, send)
        finally:
            self._running -= 1

    async def _counted(self, scope: Scope, receive: Receive, send: Send) -> None:
        if self._allowance is None:
            await self._app(scope, receive, send)
            return
        sender = _sender_of(scope)
        if wait := self._allowance.take(sender):
            few = "a second" if wait == 1 else f"{wait} seconds"
            detail = f"too many requests came from this network address: wait {few} and try again."
            await self._refuse(scope, receive, send, Problem(429, detail), _after(wait))
            return
        sent = 0

        async def measured(message: Message) -> None:
            nonlocal sent
            sent += len(message.get("body", b""))
            await send(message)

        try:
            await self._app(scope, receive, measured)
        finally:
            state = scope["state"]
            cost = sent // BYTES_A_REQUEST + int(state.get("drawn_for", 0.0) / SECONDS_A_REQUEST)
            self._allowance.charge(sender, cost if who_asked(state) is None else -1)

    async def _refuse(
        self,
        scope: Scope,
        receive: Receive,
        send: Send,
        problem: Problem,
        headers: dict[str, str],
    ) -> None:
        refused = self._answer(Request(scope), problem, headers)
        await refused(scope, receive, send)


def _after(seconds: int) -> dict[str, str]:
    return {"Retry-After": str(seconds)}


def _size_of_head(scope: Scope) -> int:
    size = len(scope["path"]) + len(scope["query_string"])
    return size + sum(len(name) + len(value) + 4 for name, value in scope["headers"])


def caller_is(request: Request, role: str) -> None:
    """Note who asks, once it is known: the role of a token, or "desk" for who is signed in."""
    request.state.asked_by = role


def drawn_for(request: Request, seconds: float) -> None:
    """Note how long drawing took, where it was not kept from before."""
    request.state.drawn_for = seconds


def who_asked(state: dict[str, Any]) -> str | None:
    """What `caller_is` noted; None for a stranger."""
    role = state.get("asked_by")
    return role if isinstance(role, str) else None


def _sender_of(scope: Scope) -> str:
    """Who is counted: a network address, apart for requests that claim to be somebody's."""
    client = scope.get("client")
    headers = Headers(scope=scope)
    claims = "authorization" in headers or "loopstart_desk=" in headers.get("cookie", "")
    return f"{network_of(client[0]) if client else ''} {'claims' if claims else ''}"
