"""A browser at the desk, as far as forms and links go: signed in by a link, with its cookie."""

from __future__ import annotations

import asyncio
import re
from collections.abc import Iterator
from html import unescape
from typing import Any

import httpx
import pytest
from fastapi import FastAPI

from service.settings import Settings
from service.store.desk import make_link
from tests.api.asking import open_round
from tests.api.conftest import Service, running
from tests.conftest import Clock

_TOKEN = re.compile(r'name="form_token" value="([0-9a-f]*)"')
_TAG = re.compile(r"<[^>]*>")


class Browser:
    """Asks for pages and sends forms; it follows where they lead."""

    def __init__(self, runner: asyncio.Runner, app: FastAPI) -> None:
        transport = httpx.ASGITransport(app, raise_app_exceptions=False)
        self._runner = runner
        self._app = app
        self.web = httpx.AsyncClient(
            transport=transport,
            base_url="http://loopstart.example",
            headers={"Accept": "text/html"},
        )
        self.token = ""
        self.asked: list[str] = []

    def get(self, path: str, *, follow: bool = True) -> httpx.Response:
        return self._sent(self._runner.run(self.web.get(path, follow_redirects=follow)))

    def post(
        self, path: str, fields: Any = None, *, token: str | None = None, **more: Any
    ) -> httpx.Response:
        """Send a form as a page of the desk would, with its token."""
        data = dict(fields or {}) | {"form_token": self.token if token is None else token}
        follow = more.pop("follow", True)
        sending = self.web.post(path, data=data, follow_redirects=follow, **more)
        return self._sent(self._runner.run(sending))

    def sign_in(self) -> None:
        wiring = self._app.state.wiring
        with wiring.database.writing() as session:
            key = make_link(session, wiring.clock())
        door = self.get(f"/desk/link/{key}")
        self.token = token_in(door.text)
        desk = self.post(f"/desk/link/{key}")
        assert desk.status_code == 200, desk.text
        self.token = token_in(desk.text)

    def _sent(self, answer: httpx.Response) -> httpx.Response:
        self.asked += [str(one.request.url) for one in (*answer.history, answer)]
        self.asked += [one.headers.get("location", "") for one in answer.history]
        return answer


def token_in(page: str) -> str:
    found = _TOKEN.search(page)
    assert found is not None, page
    return found[1]


def words_in(answer: httpx.Response) -> str:
    """What a page says, without its tags."""
    return " ".join(unescape(_TAG.sub(" ", answer.text)).split())


@pytest.fixture
def service(sqlite: Settings, clock: Clock) -> Iterator[Service]:
    with running(sqlite, clock) as made:
        yield made


@pytest.fixture
def stranger(service: Service) -> Browser:
    return Browser(service._runner, service.app)


@pytest.fixture
def browser(service: Service) -> Browser:
    """A browser that is signed in to the desk."""
    made = Browser(service._runner, service.app)
    made.sign_in()
    return made


@pytest.fixture
def other_browser(service: Service) -> Browser:
    made = Browser(service._runner, service.app)
    made.sign_in()
    return made


@pytest.fixture
def opened(service: Service) -> Service:
    """A round that can be voted in for some days."""
    open_round(service, closes="2026-03-04T18:00")
    return service
