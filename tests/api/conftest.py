"""The service as its callers meet it: the host, a collector, a viewer without any token."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import httpx
import pytest
from fastapi import FastAPI

from service.app import create_app
from service.settings import Settings
from tests.conftest import Clock

HOST_TOKEN = "the token of this test's own host"
Json = Any


class Caller:
    """Sends requests to the app within this process; with a token, or without."""

    def __init__(self, runner: asyncio.Runner, app: FastAPI, token: str | None) -> None:
        transport = httpx.ASGITransport(app, raise_app_exceptions=False)
        headers = {} if token is None else {"Authorization": f"Bearer {token}"}
        self._runner = runner
        self._web = httpx.AsyncClient(
            transport=transport, base_url="http://loopstart.example", headers=headers
        )

    def ask(self, method: str, path: str, **content: Any) -> httpx.Response:
        return self._runner.run(self._web.request(method, path, **content))

    def get(self, path: str, **query: Any) -> httpx.Response:
        return self.ask("GET", f"/api{path}", params=query)

    def post(self, path: str, body: Json = None) -> httpx.Response:
        return self.ask("POST", f"/api{path}", json=body)

    def put(self, path: str, body: Json) -> httpx.Response:
        return self.ask("PUT", f"/api{path}", json=body)

    def patch(self, path: str, body: Json) -> httpx.Response:
        return self.ask("PATCH", f"/api{path}", json=body)

    def delete(self, path: str) -> httpx.Response:
        return self.ask("DELETE", f"/api{path}")

    def hand_in(
        self, path: str, content: bytes | str, name: str = "comments.csv", **fields: str
    ) -> httpx.Response:
        raw = content.encode() if isinstance(content, str) else content
        return self.ask("POST", f"/api{path}", files={"file": (name, raw)}, data=fields)

    def count(self, content: bytes | str, question: Json, name: str = "x.csv") -> httpx.Response:
        return self.hand_in("/tally", content, name, question=json.dumps(question))


class Service:
    """A running app and whoever calls it."""

    def __init__(self, runner: asyncio.Runner, app: FastAPI, clock: Clock) -> None:
        self._runner = runner
        self.app = app
        self.clock = clock
        self.host = self.caller(HOST_TOKEN)
        self.viewer = self.caller(None)

    def caller(self, token: str | None) -> Caller:
        return Caller(self._runner, self.app, token)

    def collector(self, name: str = "a collector") -> Caller:
        answer = self.host.post("/tokens", {"name": name, "role": "collector"})
        assert answer.status_code == 201, answer.text
        return self.caller(answer.json()["token"])


@contextmanager
def running(settings: Settings, clock: Clock) -> Iterator[Service]:
    app = create_app(settings, local_token=HOST_TOKEN, clock=clock)
    with asyncio.Runner() as runner:
        lifespan = app.router.lifespan_context(app)
        runner.run(lifespan.__aenter__())
        yield Service(runner, app, clock)
        runner.run(lifespan.__aexit__(None, None, None))


@pytest.fixture
def service(sqlite: Settings, clock: Clock) -> Iterator[Service]:
    """A service on a SQLite file of this test's own."""
    with running(sqlite, clock) as made:
        yield made


@pytest.fixture
def either_service(settings: Settings, clock: Clock) -> Iterator[Service]:
    """A service on each of the two databases."""
    with running(settings, clock) as made:
        yield made
