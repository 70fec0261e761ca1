"""The pages as a browser gets them: with cookies, forms and where they were sent from."""

from __future__ import annotations

import asyncio
import re
from collections.abc import Iterator
from html import unescape
from typing import Any

import httpx
import pytest
from fastapi import FastAPI
from fastapi.routing import APIRoute

from service.app import PAGE_ROUTERS
from service.settings import Settings
from tests.api.conftest import Service, running
from tests.conftest import Clock

TOKEN = re.compile(r'name="form_token" value="([0-9a-f]+)"')
PASSWORD = "gorse kettle lantern seven"


class Browser:
    """A browser without scripts, on a connection that is safe or not."""

    def __init__(self, runner: asyncio.Runner, app: FastAPI, scheme: str = "http") -> None:
        transport = httpx.ASGITransport(app, raise_app_exceptions=False)
        self._runner = runner
        self.web = httpx.AsyncClient(
            transport=transport,
            base_url=f"{scheme}://loopstart.example",
            headers={"Accept": "text/html,application/xhtml+xml,*/*;q=0.8"},
        )

    def get(self, path: str, **more: Any) -> httpx.Response:
        return self._runner.run(self.web.get(path, **more))

    def post(self, path: str, form: dict[str, str], **more: Any) -> httpx.Response:
        """Sends a form as it is."""
        return self._runner.run(self.web.post(path, data=form, **more))

    def send(self, page: str, to: str, **fields: str) -> httpx.Response:
        """Opens a page and sends a form of it."""
        return self.post(to, {"form_token": token_in(self.get(page)), **fields})


def token_in(answer: httpx.Response) -> str:
    found = TOKEN.search(answer.text)
    assert found is not None, answer.text
    return found[1]


def words_in(answer: httpx.Response) -> str:
    """The text of a page, without its picture."""
    body = re.sub(r"<svg.*?</svg>|<script.*?</script>", "", answer.text, flags=re.DOTALL)
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", body.partition("<body")[2])).split())


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


def page_routes() -> list[APIRoute]:
    """Every route of desk and board."""
    found = [route for router in PAGE_ROUTERS for route in router.routes]
    routes = [route for route in found if isinstance(route, APIRoute)]
    assert len(routes) == len(found) > 10
    assert not any(route.include_in_schema for route in routes)
    return routes


def browser_of(service: Service, scheme: str = "http") -> Browser:
    return Browser(service._runner, service.app, scheme)


def new_link(service: Service) -> str:
    answer = service.host.post("/desk/links")
    assert answer.status_code == 201, answer.text
    return str(answer.json()["path"])


def signed_in(service: Service, scheme: str = "http") -> Browser:
    """A browser that came in by a link."""
    browser, link = browser_of(service, scheme), new_link(service)
    answer = browser.send(link, link)
    assert (answer.status_code, answer.headers["location"]) == (303, "/desk")
    return browser


@pytest.fixture
def browser(service: Service) -> Browser:
    """A browser that is not signed in."""
    return browser_of(service)


@pytest.fixture
def desk(service: Service) -> Browser:
    """A browser that is signed in."""
    return signed_in(service)
