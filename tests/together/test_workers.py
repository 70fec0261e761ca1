"""Several processes that serve from one PostgreSQL database: whichever answers, it is one service.

All but one are held (SIGSTOP) while a request is sent, so that it is known which process answers.
"""

from __future__ import annotations

import os
import re
import signal
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import httpx
import pytest

from service.settings import Settings
from tests.scripts.running import run_script
from tests.together.clients import OverHttp
from tests.together.holding import ask
from tests.together.schedules import first_export, game_of
from tests.together.serving import Served, served

CHILDREN = Path("/proc/self/task")
pytestmark = [
    pytest.mark.postgres,
    pytest.mark.skipif(not CHILDREN.exists(), reason="this system does not list processes so"),
]
AT = "/desk/games/harbour/rounds/1"
FORM = re.compile(r'name="(?P<name>[^"]+)"[^>]* value="(?P<value>[^"]*)"')
PASSWORD = "gorse kettle lantern seven"


@pytest.fixture(scope="module")
def server(module_postgres: Settings) -> Iterator[Served]:
    with served({"DATABASE_URL": module_postgres.database_url}, "--workers", "2") as several:
        client = OverHttp(several.url, several.token)
        ask(client, "POST", "/api/games", game_of("harbour"))
        ask(client, "POST", "/api/games/harbour/rounds", {"opens": "2026-03-13T18:00:00Z"})
        ask(client, "POST", "/api/games/harbour/rounds/1/open")
        client.close()
        yield several


def workers_of(server: Served) -> list[int]:
    """The processes that serve."""
    parent = server.process
    children = Path(f"/proc/{parent}/task/{parent}/children").read_text().split()
    lines = {int(one): Path(f"/proc/{one}/cmdline").read_bytes() for one in children}
    return [number for number, line in lines.items() if b"spawn_main" in line]


@contextmanager
def only(server: Served, place: int) -> Iterator[None]:
    """Only that one of the processes answers meanwhile; connections from before are not used."""
    workers = workers_of(server)
    held = [one for number, one in enumerate(workers) if number != place]
    for one in held:
        os.kill(one, signal.SIGSTOP)
    try:
        yield
    finally:
        for one in held:
            os.kill(one, signal.SIGCONT)


class Browser:
    """A browser whose every request is a connection of its own."""

    def __init__(self, server: Served) -> None:
        self._url, self.cookies = server.url, httpx.Cookies()

    def ask(self, method: str, path: str, **more: object) -> httpx.Response:
        with httpx.Client(
            base_url=self._url,
            cookies=self.cookies,
            headers={"Accept": "text/html", "Origin": self._url},
            timeout=60,
        ) as web:
            answer = web.request(method, path, **more)  # type: ignore[arg-type]
            self.cookies = web.cookies
        return answer

    def send(self, page: str, to: str, **fields: str) -> httpx.Response:
        """Open a page and send a form of it."""
        form = dict(FORM.findall(self.ask("GET", page).text))
        return self.ask("POST", to, data={"form_token": form["form_token"], **fields})

    def sign_in(self, server: Served) -> None:
        path = str(as_host(server, "POST", "/api/desk/links").json()["path"])
        assert self.send(path, path).status_code == 303


def as_host(server: Served, method: str, path: str, **more: object) -> httpx.Response:
    headers = {"Authorization": f"Bearer {server.token}"}
    answer = httpx.request(method, server.url + path, headers=headers, timeout=60, **more)  # type: ignore[arg-type]
    assert answer.status_code in (200, 201, 204), answer.text
    return answer


def test_an_export_sent_to_one_process_is_handed_in_by_another(server: Served) -> None:
    browser = Browser(server)
    with only(server, 0):
        browser.sign_in(server)
        glance = browser.send(f"{AT}/hand-in", f"{AT}/hand-in", paste=first_export())
    assert glance.status_code == 200, glance.text
    found = re.search(rf'action="({AT}/hand-in/[^"]+)"', glance.text)
    assert found is not None
    token = dict(FORM.findall(glance.text))["form_token"]
    fields = {"form_token": token, "do": "keep", "watch": "workers-1"}
    with only(server, 1):
        kept = browser.ask("POST", found[1], data=fields)
        assert kept.status_code == 303, kept.text
    with only(server, 0):
        far = browser.ask("GET", "/desk/progress/workers-1").json()
        assert far == {"step": "done", "done": 23, "total": 23}
        gone = browser.ask("POST", found[1], data=fields)
        assert gone.status_code == 404


def test_how_far_a_request_is_is_told_by_whichever_process_is_asked(server: Served) -> None:
    batch = {"file": ("more.csv", b"id,author,posted,text\n1,Odd,2026-03-13T20:00:00Z,4 please\n")}
    with only(server, 0):
        path = "/api/games/harbour/rounds/1/batches?watch=workers-2"
        as_host(server, "POST", path, files=batch)
    with only(server, 1):
        assert as_host(server, "GET", "/api/progress/workers-2").json()["step"] == "done"


def test_tries_of_the_password_are_counted_for_all_processes_together(server: Served) -> None:
    as_host(server, "PUT", "/api/desk/password", json={"password": PASSWORD})
    browser, told = Browser(server), []
    for number in range(12):
        with only(server, number % 2):
            answer = browser.send("/desk/sign-in", "/desk/sign-in", password="not this one at all")
            told.append(answer.status_code)
    assert told == [403] * 10 + [429] * 2


def test_a_session_is_good_at_every_process_and_ends_at_every_one(server: Served) -> None:
    browser = Browser(server)
    with only(server, 0):
        browser.sign_in(server)
    with only(server, 1):
        assert browser.ask("GET", "/desk").status_code == 200
        as_host(server, "DELETE", "/api/desk/sessions")
    with only(server, 0):
        assert browser.ask("GET", "/desk").status_code in (303, 403)


def test_a_page_that_one_process_keeps_tells_what_another_changed(server: Served) -> None:
    for name in ("The tidal mystery", "The lantern mystery"):
        for place in (0, 1):
            with only(server, place):
                httpx.get(f"{server.url}/games/harbour", timeout=60)
        with only(server, 0):
            as_host(server, "PATCH", "/api/games/harbour", json={"name": name})
        with only(server, 1):
            assert name in httpx.get(f"{server.url}/games/harbour", timeout=60).text


def test_the_desk_lists_what_was_ruled_at_another_process(server: Served) -> None:
    browser = Browser(server)
    browser.sign_in(server)
    comments = {"file": ("comments.csv", first_export().encode())}
    as_host(server, "POST", "/api/games/harbour/rounds/1/batches", files=comments)
    looks = as_host(server, "GET", "/api/games/harbour/rounds/1/comments?filter=look").json()
    left = len(looks)
    assert left == 2
    for number, one in enumerate(looks):
        with only(server, number % 2):
            page = browser.ask("GET", f"{AT}/comments?show=look").text
            assert page.count('<article class="comment') == left
        with only(server, 1 - number % 2):
            path = f"/api/games/harbour/rounds/1/comments/{one['key']}/rulings"
            as_host(server, "POST", path, json={"pages": [12], "reason": "so she told"})
        left -= 1
    for place in (0, 1):
        with only(server, place):
            assert (
                '<article class="comment' not in browser.ask("GET", f"{AT}/comments?show=look").text
            )


def requests_told(server: Served, place: int) -> float:
    with only(server, place):
        told = as_host(server, "GET", "/api/metrics").text
    assert told.endswith("# EOF\n")
    assert "loopstart_info" in told
    lines = [line for line in told.splitlines() if line.startswith("loopstart_requests_total")]
    return sum(float(line.rsplit(" ", 1)[1]) for line in lines if "/api/health" in line)


def test_the_figures_are_those_of_all_processes(server: Served) -> None:
    before = requests_told(server, 0)
    for place in (0, 1, 1, 0, 1):
        with only(server, place):
            httpx.get(f"{server.url}/api/health", timeout=60)
    assert requests_told(server, 0) == requests_told(server, 1) == before + 5


def test_a_process_that_is_killed_is_followed_by_another_one(server: Served) -> None:
    first, second = workers_of(server)
    before = requests_told(server, 0)
    os.kill(first, signal.SIGKILL)
    ends = time.monotonic() + 60
    while first in workers_of(server) or len(workers_of(server)) < 2:
        assert httpx.get(f"{server.url}/api/health", timeout=60).status_code == 200
        assert time.monotonic() < ends
        time.sleep(0.2)
    assert second in workers_of(server)
    [new] = set(workers_of(server)) - {second}
    with only(server, workers_of(server).index(new)):
        assert httpx.get(f"{server.url}/api/ready", timeout=60).status_code == 200
    assert requests_told(server, 0) >= before


def test_several_processes_on_sqlite_are_refused_in_a_sentence(tmp_path: Path) -> None:
    environment = {"LOOPSTART_DATA_FOLDER": str(tmp_path), "LOOPSTART_WORKERS": "3"}
    told = run_script("start.py", "--port", "0", environment=environment)
    assert (told.returncode, told.stdout) == (2, "")
    assert told.stderr.startswith("setting workers: 3 processes cannot serve from SQLite")
    assert "PostgreSQL" in told.stderr
    assert list(tmp_path.iterdir()) == []
