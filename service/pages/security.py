"""What browsers are told with every answer: load nothing from elsewhere, run nothing inline."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from urllib.parse import parse_qs

from starlette.types import ASGIApp, Message, Receive, Scope, Send

_OWN = (
    "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; "
    "img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; "
)
#: Of every page and of the API's answers.
POLICY = f"{_OWN}frame-ancestors 'none'"
#: Of a plain board, which a host lays over a video: whoever mixes the picture may frame it. It has
#: no form and no link, so that nobody can be made to click on anything in it.
OVERLAY_POLICY = f"{_OWN}frame-ancestors *"
# The documentation's pages carry their own script and style inline and search in a worker.
DOCUMENTATION_POLICY = (
    "default-src 'self'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; "
    "img-src 'self' data:; worker-src 'self' blob:; base-uri 'none'; form-action 'self'; "
    "frame-ancestors 'none'"
)
DOCUMENTATION = ("/docs", "/redoc", "/static-offline-docs")

_ALWAYS = {
    "X-Content-Type-Options": "nosniff",
    # Not "no-referrer": with that, browsers keep the origin of a form to themselves as well.
    "Referrer-Policy": "same-origin",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
}
_ALONE = {
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}
_YEAR = "max-age=31536000"


def is_plain(query: bytes) -> bool:
    """Whether a page is asked for as an overlay: `?plain`, with or without a value."""
    return "plain" in parse_qs(query.decode("latin-1"), keep_blank_values=True)


def headers_for(scope: Scope) -> Mapping[str, str]:
    """The headers that go with the answer to this request."""
    path = scope["path"]
    secure = {"Strict-Transport-Security": _YEAR} if scope["scheme"] == "https" else {}
    if path.startswith(DOCUMENTATION):
        return {"Content-Security-Policy": DOCUMENTATION_POLICY, **_ALWAYS, **_ALONE, **secure}
    if path.startswith("/games/") and is_plain(scope["query_string"]):
        return {"Content-Security-Policy": OVERLAY_POLICY, **_ALWAYS, **secure}
    # A picture of the API may stand in anybody's page.
    alone = {} if path.startswith("/api/") else _ALONE
    return {"Content-Security-Policy": POLICY, **_ALWAYS, **alone, **secure}


@lru_cache(maxsize=32)  # there are only a few
def _as_sent(headers: tuple[tuple[str, str], ...]) -> list[tuple[bytes, bytes]]:
    return [(name.lower().encode(), value.encode()) for name, value in headers]


class SecurityHeaders:
    """Puts them on every answer."""

    def __init__(self, app: ASGIApp) -> None:
        self._app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on and put the headers on the answer."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        more = _as_sent(tuple(headers_for(scope).items()))

        async def with_headers(message: Message) -> None:
            if message["type"] == "http.response.start":
                message["headers"] = [*message.get("headers", ()), *more]
            await send(message)

        await self._app(scope, receive, with_headers)
