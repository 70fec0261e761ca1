"""How large a body may be, whose, and how slow; a stranger's export is not received at all."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from typing import Any

import httpx
import pytest
from starlette.exceptions import HTTPException
from starlette.types import Message, Receive, Scope, Send

from service.api import body_limit
from service.api.body_limit import LARGEST_PLAIN, STRANGERS, BodyLimit
from service.settings import Settings
from tests.api.asking import PATH, assert_problem, everything_kept, open_round, votes
from tests.api.conftest import Service

BATCHES = f"{PATH}/rounds/1/batches"
FORM = b'--xyz\r\nContent-Disposition: form-data; name="file"; filename="a.csv"\r\n\r\n'
LARGE = votes("13") + "x" * STRANGERS


class Counting:
    """A body that tells how much of it was asked for."""

    def __init__(self, pieces: int, begins: bytes = b"") -> None:
        self._pieces = pieces
        self._begins = begins
        self.asked = 0

    async def __aiter__(self) -> AsyncIterator[bytes]:
        for _ in range(self._pieces):
            self.asked += 1
            yield self._begins + b"x" * 10_000
            self._begins = b""


@pytest.mark.parametrize("who", ["nobody", "a guesser"])
@pytest.mark.parametrize("has_length", [True, False], ids=["with its length", "without"])
def test_a_strangers_export_is_not_received(
    service: Service, who: str, *, has_length: bool
) -> None:
    open_round(service)
    before = everything_kept(service)
    caller = service.viewer if who == "nobody" else service.caller("no token of this service")
    body = Counting(100, FORM)
    headers = {"Content-Type": "multipart/form-data; boundary=xyz"}
    if has_length:
        headers["Content-Length"] = "1000000"
    answer = caller.ask("POST", f"/api{BATCHES}", content=body, headers=headers)
    says = "carries no token" if who == "nobody" else "is not known here"
    assert_problem(answer, 401, says)
    assert answer.headers["www-authenticate"] == "Bearer"
    assert body.asked <= 4
    assert everything_kept(service) == before


def test_a_collector_hands_in_what_a_stranger_may_not(service: Service) -> None:
    open_round(service)
    answer = service.collector().hand_in(BATCHES, LARGE)
    assert answer.status_code == 201, answer.text


@pytest.mark.parametrize("has_length", [True, False], ids=["with its length", "without"])
def test_a_body_without_a_file_is_held_in_memory_and_has_a_limit(
    service: Service, *, has_length: bool
) -> None:
    body = Counting(LARGEST_PLAIN // 10_000 + 100)
    headers = {"Content-Type": "application/json"}
    if has_length:
        headers["Content-Length"] = str(LARGEST_PLAIN + 1)
    answer = service.host.ask("POST", "/api/games", content=body, headers=headers)
    assert_problem(answer, 413, "larger than 2 MB")
    assert body.asked <= LARGEST_PLAIN // 10_000 + 1


async def receive_all(settings: Settings, receive: Receive) -> bytes:
    """What an app behind the limit receives, with the host's own form of a page."""
    got = b""

    async def app(scope: Scope, receive: Receive, send: Send) -> None:
        nonlocal got
        del scope, send
        more = True
        while more:
            message = await receive()
            got += message["body"]
            more = message["more_body"]

    scope: dict[str, Any] = {"type": "http", "path": "/desk", "headers": []}
    await BodyLimit(app, settings)(scope, receive, None)  # type: ignore[arg-type]
    return got


def drops(*pauses: float) -> Receive:
    """A body of one byte after each pause, in seconds."""
    left = list(pauses)

    async def receive() -> Message:
        await asyncio.sleep(left.pop(0))
        return {"type": "http.request", "body": b"x", "more_body": bool(left)}

    return receive


def test_a_body_that_stands_still_is_cut_off() -> None:
    with pytest.raises(HTTPException) as told:
        asyncio.run(receive_all(Settings(slow_wait=1), drops(0, 0, 5)))
    assert told.value.status_code == 408
    assert told.value.detail.endswith(".")
    assert told.value.headers == {"Connection": "close"}


def test_a_body_that_comes_drop_by_drop_is_cut_off(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(body_limit, "SLOWEST", 1000)
    with pytest.raises(HTTPException) as told:
        asyncio.run(receive_all(Settings(slow_wait=1), drops(*[0.3] * 10)))
    assert told.value.status_code == 408


def test_whoever_brings_enough_may_take_longer(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(body_limit, "SLOWEST", 2)
    assert asyncio.run(receive_all(Settings(slow_wait=1), drops(*[0.3] * 6))) == b"x" * 6


def test_the_time_in_which_the_service_itself_is_busy_is_not_counted() -> None:
    async def busy() -> bytes:
        got = b""

        async def app(scope: Scope, receive: Receive, send: Send) -> None:
            nonlocal got
            del scope, send
            for _ in range(3):
                got += (await receive())["body"]
                await asyncio.sleep(0.6)

        scope: dict[str, Any] = {"type": "http", "path": "/desk", "headers": []}
        limit = BodyLimit(app, Settings(slow_wait=1))
        await limit(scope, drops(0, 0, 0), None)  # type: ignore[arg-type]
        return got

    assert asyncio.run(busy()) == b"xxx"


def test_a_slow_body_is_told_as_a_problem(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("service.api.body_limit._Body._in_time", too_slow)
    answer: httpx.Response = service.host.hand_in(BATCHES, votes("13"))
    assert_problem(answer, 408, "came too slowly")


async def too_slow(self: object) -> Message:
    del self
    raise HTTPException(408, "the request's body came too slowly: send it again.")
