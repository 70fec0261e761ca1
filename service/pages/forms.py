"""Forms that only this desk's own pages can send.

Each form holds a token that is made from what the browser's own cookie holds: another site can
make a browser send the cookie, but cannot read it. The browser's word about where the form came
from is asked as well.
"""

from __future__ import annotations

import hmac
import secrets
from collections.abc import AsyncIterator
from hashlib import sha256
from typing import Annotated
from urllib.parse import urlsplit

from fastapi import Depends, Request, Response
from starlette.datastructures import FormData
from starlette.exceptions import HTTPException

from service.api.wiring import Parts
from service.errors import FormRefused

FIELD = "form_token"
#: What a form may hold that anybody can send: a key, a password.
_SMALL = 20_000


def form_token(key: str) -> str:
    """What a form holds for the browser whose cookie holds `key`."""
    return hmac.new(key.encode("utf-8", "surrogatepass"), b"forms", sha256).hexdigest()


def check_form(request: Request, form: FormData, key: str) -> None:
    """Whether a form was sent from a page that this browser was given.

    Raises:
        FormRefused: it was not.
    """
    sent = form.get(FIELD)
    told = sent if isinstance(sent, str) else ""
    same = hmac.compare_digest(told.encode("utf-8", "surrogatepass"), form_token(key).encode())
    if not key or not same or not _is_from_here(request):
        raise FormRefused


def _is_from_here(request: Request) -> bool:
    """What the browser says of where a form came from; a browser that says nothing is let through.

    Browsers tell `Sec-Fetch-Site` on safe connections only, so `Origin` is asked as well.
    """
    site = request.headers.get("sec-fetch-site")
    if site not in (None, "same-origin"):
        return False
    origin = request.headers.get("origin")
    return origin is None or urlsplit(origin).netloc == request.headers.get("host")


def is_https(request: Request) -> bool:
    """Whether the browser speaks to the service by https."""
    return request.url.scheme == "https"


def cookie_name(request: Request, name: str) -> str:
    """The cookie's name; the prefix makes browsers refuse one that another host planted."""
    return f"__Host-{name}" if is_https(request) else name


def put_cookie(
    request: Request, answer: Response, name: str, key: str, seconds: int | None = None
) -> None:
    """Have the browser keep `key`: unread by scripts, unsent from other sites."""
    answer.set_cookie(
        cookie_name(request, name),
        key,
        max_age=seconds,
        path="/",
        secure=is_https(request),
        httponly=True,
        samesite="strict",
    )


def drop_cookie(request: Request, answer: Response, name: str) -> None:
    """Have the browser forget a cookie."""
    answer.delete_cookie(
        cookie_name(request, name),
        path="/",
        secure=is_https(request),
        httponly=True,
        samesite="strict",
    )


def new_key() -> str:
    """What a cookie holds that only ties a form to a browser."""
    return secrets.token_urlsafe(16)


async def _small_form(request: Request) -> FormData:
    """A form that anybody may send: its size is asked before any of it is read."""
    told = request.headers.get("content-length", "")
    if not told.isdecimal() or int(told) > _SMALL:
        raise HTTPException(413, "this form is larger than any of this page's: send it from there.")
    return await request.form(max_files=0, max_fields=10)


async def _large_form(request: Request, parts: Parts) -> AsyncIterator[FormData]:
    """A form of the desk, which may hold an export; its files are gone with the request."""
    most = parts.settings.upload_bytes
    async with request.form(max_files=20, max_fields=2000, max_part_size=most) as form:
        yield form


SmallForm = Annotated[FormData, Depends(_small_form)]
LargeForm = Annotated[FormData, Depends(_large_form)]


def field_of(form: FormData, name: str, default: str = "") -> str:
    """A field's words; `default` where it was not sent, or a file was."""
    value = form.get(name, default)
    return value if isinstance(value, str) else default
