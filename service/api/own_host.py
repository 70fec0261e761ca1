"""Pages of this service load nothing from anywhere else: it works without internet."""

from __future__ import annotations

from starlette.datastructures import MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

# The documentation's pages carry their own script and style inline and search in a worker.
POLICY = (
    "default-src 'self'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; "
    "img-src 'self' data:; worker-src 'self' blob:; frame-ancestors 'none'"
)


class OwnHostOnly:
    """Tells browsers with every answer to ask no other host for anything."""

    def __init__(self, app: ASGIApp) -> None:
        self._app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on and put the policy on the answer."""

        async def with_policy(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                headers["Content-Security-Policy"] = POLICY
                headers["X-Content-Type-Options"] = "nosniff"
            await send(message)

        await self._app(scope, receive, with_policy)
