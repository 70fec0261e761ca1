"""The one client of the API that every script uses.

It speaks to a running server, or, without one, to the service within the script's own process:
the same requests, the same answers, no port. There it is the host by a token that only lives in
memory.
"""

from __future__ import annotations

import asyncio
import secrets
import threading
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager, suppress
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING, Any, BinaryIO

import httpx

from service.errors import AccessRefused, BadInput, ProblemAnswered, ServerUnreachable

if TYPE_CHECKING:
    from fastapi import FastAPI

    from service.settings import Settings

Json = Any
Send = Callable[..., httpx.Response]
#: Is told what a request is doing, how many comments are done, and of how many (0: not known).
Tell = Callable[[str, int, int], None]
Watched = Callable[..., httpx.Response]
#: The seconds between two looks at how far a request is.
BETWEEN_LOOKS = 0.25

#: In seconds. Reading a large export may take minutes, finding a server may not.
PATIENCE = httpx.Timeout(600, connect=10)


class Client:
    """Requests to the API, each answering with the JSON that came back.

    Every request raises:
        AccessRefused: the token is missing, wrong or too weak.
        ProblemAnswered: the API refused, with its own sentence.
        ServerUnreachable: nobody answers.
    """

    def __init__(self, send: Send, place: str, watched: Watched) -> None:
        self._send = send
        self._place = place
        self._watched = watched

    def get(self, path: str, **wanted: Any) -> Json:
        """Reads."""
        return self._ask("GET", path, params=wanted)

    def post(self, path: str, content: Json = None) -> Json:
        """Makes or does something."""
        return self._ask("POST", path, json=content)

    def put(self, path: str, content: Json) -> Json:
        """Sets something."""
        return self._ask("PUT", path, json=content)

    def patch(self, path: str, content: Json) -> Json:
        """Changes a part of something."""
        return self._ask("PATCH", path, json=content)

    def delete(self, path: str) -> Json:
        """Takes something away."""
        return self._ask("DELETE", path)

    def ask(self, method: str, path: str, content: Json = None) -> Json:
        """Any request; what is sent is JSON."""
        return self._ask(method, path, json=content)

    def hand_in(
        self, path: str, name: str, content: bytes | BinaryIO, **fields: str | None
    ) -> Json:
        """Hands in an export under its file name, with the form's other fields that are given.

        A file is sent in pieces, so that no size is too large.
        """
        given = {key: value for key, value in fields.items() if value is not None}
        return self._ask("POST", path, files={"file": (name, content)}, data=given)

    @contextmanager
    def telling(self, tell: Tell) -> Iterator[None]:
        """Has how far requests are told to `tell` while they take."""
        plain = self._send
        self._send = partial(self._watched, tell)
        try:
            yield
        finally:
            self._send = plain

    def fetch(self, path: str, **wanted: Any) -> bytes:
        """Reads a file: a picture, a calendar."""
        return self._sent("GET", path, params=wanted).content

    def _ask(self, method: str, path: str, **content: Any) -> Json:
        answer = self._sent(method, path, **content)
        return _json_of(answer, self._place) if answer.content else None

    def _sent(self, method: str, path: str, **content: Any) -> httpx.Response:
        """The answer to a request that was granted."""
        try:
            answer = self._send(method, f"/api{path}", **content)
        except (httpx.InvalidURL, UnicodeError) as trouble:
            raise BadInput(
                f"the request {method} {path!r} cannot be sent ({trouble})",
                "leave out line breaks and half characters",
            ) from None
        except ValueError as trouble:
            raise BadInput(
                f"what is to be sent to {path!r} is no JSON ({trouble})",
                "write numbers as JSON does",
            ) from None
        except httpx.HTTPError as trouble:
            why = str(trouble) or type(trouble).__name__
            raise ServerUnreachable(self._place, why) from None
        if answer.is_success:
            return answer
        detail = _detail(answer, self._place)
        if answer.status_code in {401, 403}:
            raise AccessRefused(detail)
        raise ProblemAnswered(answer.status_code, detail)


def _json_of(answer: httpx.Response, place: str) -> Json:
    try:
        return answer.json()
    except ValueError:
        raise ProblemAnswered(answer.status_code, _not_loopstart(answer, place)) from None


def _detail(answer: httpx.Response, place: str) -> str:
    """The sentence of the problem details."""
    try:
        problem = answer.json()
    except ValueError:
        problem = None
    if isinstance(problem, dict) and isinstance(problem.get("detail"), str):
        return str(problem["detail"])
    return _not_loopstart(answer, place)


def _not_loopstart(answer: httpx.Response, place: str) -> str:
    return (
        f"{place} answered {answer.status_code} without saying why: check that this is the "
        "address of a Loopstart server."
    )


@contextmanager
def at_server(url: str, token: str | None) -> Iterator[Client]:
    """A client of the running server at `url`.

    Raises:
        BadInput: `url` is no address of a server.
    """
    place = url.rstrip("/").removesuffix("/api")
    try:
        address = httpx.URL(place)
    except httpx.InvalidURL:
        address = httpx.URL("")
    if address.scheme not in {"http", "https"} or not address.host:
        raise BadInput(
            f"the server {url!r} is no address", "give one such as http://127.0.0.1:8642"
        )
    if token is not None and not (token.isascii() and token.isprintable()):
        raise AccessRefused(
            "the token holds letters that no token has: check that it was copied whole."
        )
    with httpx.Client(base_url=address, headers=_header(token), timeout=PATIENCE) as web:
        yield Client(web.request, place, partial(_watched_at_server, web))


def chosen(server: str | None, token: str | None) -> AbstractContextManager[Client]:
    """A client of the server that was named, else of the service within this process.

    Raises:
        BadInput: a token without a server.
        BadSetting: a setting cannot be used.
    """
    if server is not None:
        return at_server(server, token)
    if token is not None:
        raise BadInput("--token goes with a server", "add --server URL, or leave the token out")
    from service.settings import read_settings  # noqa: PLC0415 - as below

    return in_process(read_settings())


@contextmanager
def in_process(settings: Settings, clock: Callable[[], datetime] | None = None) -> Iterator[Client]:
    """A client of the service run within this process, as its host.

    `clock` tells the service the time, where it is not the computer's.
    """
    # Takes a second, which a mistyped option or a client of a running server need not wait for.
    from service.app import create_app, now  # noqa: PLC0415

    token = secrets.token_urlsafe(32)
    app = create_app(settings, local_token=token, clock=clock or now)
    transport = httpx.ASGITransport(app, raise_app_exceptions=False)
    with asyncio.Runner() as runner:
        web = httpx.AsyncClient(
            transport=transport, base_url="http://loopstart", headers=_header(token)
        )
        stop = asyncio.Event()
        life = runner.run(_begin(app, stop))

        def send(method: str, path: str, **content: Any) -> httpx.Response:
            return runner.run(web.request(method, path, **content))

        def watched(tell: Tell, method: str, path: str, **content: Any) -> httpx.Response:
            return runner.run(_watched_here(web, tell, method, path, **content))

        try:
            yield Client(send, "the service in this process", watched)
        finally:
            runner.run(_end(web, stop, life))


async def _watched_here(
    web: httpx.AsyncClient, tell: Tell, method: str, path: str, **content: Any
) -> httpx.Response:
    watch = secrets.token_urlsafe(16)
    request = asyncio.create_task(web.request(method, _named(path, watch), **content))
    while not (await asyncio.wait({request}, timeout=BETWEEN_LOOKS))[0]:
        tell(*_far(await web.get(f"/api/progress/{watch}")))
    return request.result()


def _watched_at_server(
    web: httpx.Client, tell: Tell, method: str, path: str, **content: Any
) -> httpx.Response:
    watch = secrets.token_urlsafe(16)
    ended = threading.Event()

    def look() -> None:
        while not ended.wait(BETWEEN_LOOKS):
            with suppress(httpx.HTTPError):
                tell(*_far(web.get(f"/api/progress/{watch}")))

    looking = threading.Thread(target=look, daemon=True)
    looking.start()
    try:
        return web.request(method, _named(path, watch), **content)
    finally:
        ended.set()
        looking.join()


def _named(path: str, watch: str) -> httpx.URL:
    return httpx.URL(path).copy_add_param("watch", watch)


def _far(answer: httpx.Response) -> tuple[str, int, int]:
    """How far a request is; a server that does not tell leaves the caller waiting."""
    if not answer.is_success:
        return "waiting", 0, 0
    far = answer.json()
    return far["step"], far["done"], far["total"]


async def _begin(app: FastAPI, stop: asyncio.Event) -> asyncio.Task[None]:
    """Starts the app's lifespan; it begins and ends within one task, as it may require."""
    ready = asyncio.Event()

    async def live() -> None:
        async with app.router.lifespan_context(app):
            ready.set()
            await stop.wait()

    life = asyncio.create_task(live())
    waiting = asyncio.create_task(ready.wait())
    await asyncio.wait({life, waiting}, return_when=asyncio.FIRST_COMPLETED)
    if life.done():
        waiting.cancel()
        life.result()
    return life


async def _end(web: httpx.AsyncClient, stop: asyncio.Event, life: asyncio.Task[None]) -> None:
    await web.aclose()
    stop.set()
    await life


def _header(token: str | None) -> dict[str, str]:
    return {"Authorization": f"Bearer {token}"} if token else {}
