"""A real server for the browser's tests: real HTTP on a free port, and a clock that the test sets."""

from __future__ import annotations

import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

import httpx
import uvicorn

from service.app import create_app
from service.settings import Settings
from tests.api.asking import GAME, csv
from tests.conftest import Clock

TOKEN = "the token of this test's own host"
Json = Any


@dataclass(frozen=True)
class Served:
    """A running server: where it is, its clock, and its host speaking to the API."""

    url: str
    clock: Clock
    host: httpx.Client

    def ask(self, method: str, path: str, content: Json = None) -> Json:
        """What the host does by the API; it must succeed."""
        answer = self.host.request(method, f"/api{path}", json=content)
        assert answer.is_success, (path, answer.text)
        return answer.json() if answer.content else None

    def hand_in(self, path: str, *comments: tuple[str, str, str]) -> Json:
        """Hands comments in: author, time and words of each."""
        files = {"file": ("comments.csv", csv(*comments).encode())}
        answer = self.host.post(f"/api{path}/batches", files=files)
        assert answer.is_success, answer.text
        return answer.json()

    def new_link(self) -> str:
        """A link that signs a browser in to the desk, once."""
        return self.url + str(self.ask("POST", "/desk/links")["path"])


@contextmanager
def serving(settings: Settings) -> Iterator[Served]:
    """Serves until the block ends."""
    clock = Clock()
    app = create_app(settings, local_token=TOKEN, clock=clock)
    with socket.create_server(("127.0.0.1", 0)) as taken:
        server = uvicorn.Server(uvicorn.Config(app, log_level="warning", lifespan="on"))
        thread = threading.Thread(target=server.run, kwargs={"sockets": [taken]})
        thread.start()
        url = f"http://127.0.0.1:{taken.getsockname()[1]}"
        headers = {"Authorization": f"Bearer {TOKEN}"}
        transport = httpx.HTTPTransport(retries=3)
        try:
            with httpx.Client(
                base_url=url, headers=headers, transport=transport, timeout=60
            ) as host:
                yield Served(url, clock, host)
        finally:
            server.should_exit = True
            thread.join(30)


def play(served: Served) -> None:
    """Three games: one with a result and an open round, one with hard names, one with counts."""
    served.ask("POST", "/games", GAME)
    served.ask("PUT", "/games/windy-island/announcing", {"zones": ["America/Vancouver"]})
    served.ask("PUT", "/games/windy-island/prize", PRIZE)
    place = "/games/windy-island/rounds"
    served.ask("POST", place, {"closes": "2026-03-01T21:00"})
    served.ask("POST", f"{place}/1/open")
    served.clock.go_on(hours=4)
    told = [(f"viewer {n}", f"2026-03-01T19:00:{n:02}Z", words) for n, words in enumerate(VOTES)]
    served.hand_in(f"{place}/1", *told, (BAD_NAME, "2026-03-01T20:00:00Z", "page 12 <b>please</b>"))
    served.ask("POST", f"{place}/1/close")
    served.ask("POST", f"{place}/1/announce")
    served.ask("POST", place, {"closes": "2026-03-04T18:00", "tie_breaks": ["neighbours", "draw"]})
    served.ask("POST", f"{place}/2/open")
    hard = GAME | {"slug": "hard-names", "name": HARD_NAME, "chart": {"columns": 20, "rows": 9}}
    served.ask("POST", "/games", hard)
    shown = GAME | {"slug": "counted", "name": "Counted", "chart": {"columns": 3, "rows": 2}}
    served.ask("POST", "/games", shown)
    served.ask("PUT", "/games/counted/announcing", {"counts_while_open": True})
    served.ask("POST", "/games/counted/rounds", {})
    served.ask("POST", "/games/counted/rounds/1/open")
    served.hand_in(
        "/games/counted/rounds/1",
        ("A", "2026-03-01T22:00:10Z", "3"),
        ("B", "2026-03-01T22:00:20Z", "3"),
        ("C", "2026-03-01T22:00:30Z", "5"),
    )


PRIZE = {"offer": "a skein of thread", "choose_from": "the colour card", "claim_days": 14}
VOTES = ("12", "12", "13", "13", "page 40", "the piece looks lovely")
BAD_NAME = '<img src=x onerror="document.title=1">'
HARD_NAME = (
    '<b>\u0644\u063a\u0632</b> \u0627\u0644\u062c\u0632\u064a\u0631\u0629 "&amp;" '
    "Rindfleischetikettierungsueberwachungsaufgabenuebertragungsgesetz" + "x" * 80
)
