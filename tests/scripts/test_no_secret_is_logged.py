"""A whole evening with a running server: whatever it printed and logged holds no secret."""

from __future__ import annotations

import re
import socket
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import httpx
import pytest

from service.settings import Settings
from service.store.database import Database
from service.store.tokens import make_token
from service.store.upgrade import upgrade
from tests.scripts.test_start import start

ANSWER = ("Skerrymouth", "Astrolabe", "Quarmby")
VOTER, WORDS = "Quillon Brask", "because of the blue gannets"
PASSWORD, WRONG = "gorse kettle lantern seven", "gorse kettle lantern nine"
GUESSED = "a-token-that-somebody-guessed"
GAME: dict[str, Any] = {
    "slug": "harbour",
    "name": "By the harbour",
    "zone": "Atlantic/Faroe",
    "chart": {"columns": 3, "rows": 2},
    "answer": {"title": f"The {ANSWER[1]} of {ANSWER[0]}", "designer": f"Wenna {ANSWER[2]}"},
}


@pytest.mark.parametrize("log", ["plain", "json"])
def test_nothing_that_is_secret_is_printed_or_logged(tmp_path: Path, log: str) -> None:
    token = new_token(Settings(data_folder=tmp_path))
    server = start("--no-token", LOOPSTART_LOG=log, LOOPSTART_DATA_FOLDER=str(tmp_path))
    try:
        secrets = evening(server.url, token)
        broken(server.url)
    finally:
        told = server.printed + server.stop()
    if log == "json":
        assert '"route": "/api/games/{game}/rounds/{number}/batches"' in told
        assert '"status": 403' in told
    for secret in (*secrets, *ANSWER, VOTER, WORDS, PASSWORD, WRONG, GUESSED):
        assert len(secret) > 5
        assert secret.lower() not in told.lower(), secret


def new_token(settings: Settings) -> str:
    upgrade(settings)
    database = Database(settings)
    with database.writing() as session:
        token = make_token(session, "host", "host", datetime.now(UTC))
    database.dispose()
    return token


def evening(url: str, token: str) -> list[str]:
    """A game with its comments, and every way of signing in, right and wrong; the secrets made."""
    with httpx.Client(base_url=url, timeout=60) as host:
        host.headers["Authorization"] = f"Bearer {token}"
        done(host.post("/api/games", json=GAME))
        done(host.post("/api/games/harbour/rounds", json={}))
        done(host.post("/api/games/harbour/rounds/1/open"))
        export = f"Name,Time,Comment\n{VOTER},2020-03-01T19:00:00Z,2 {WORDS}\n"
        export += f"{VOTER},2020-03-01T19:01:00Z,Is it the {ANSWER[1]}?\n"
        done(host.post("/api/games/harbour/rounds/1/batches", files={"file": (VOTER, export)}))
        done(host.get("/api/games/harbour/rounds/1/receipts", params={"voter": VOTER}))
        done(host.get("/api/games/harbour/guesses"))
        link = done(host.post("/api/desk/links")).json()["path"]
        done(host.put("/api/desk/password", json={"password": PASSWORD}))
    stranger = httpx.get(f"{url}/api/games", headers={"Authorization": f"Bearer {GUESSED}"})
    assert stranger.status_code == 401
    assert httpx.get(f"{url}/api/games/{ANSWER[0]}", params={"is": ANSWER[1]}).status_code == 404
    with httpx.Client(base_url=url, timeout=60) as browser:
        forms = [sign_in(browser, link, {}, 303)]
        keys = list(browser.cookies.values())
    with httpx.Client(base_url=url, timeout=60) as browser:
        forms.append(sign_in(browser, "/desk/sign-in", {"password": WRONG}, 403))
        forms.append(sign_in(browser, "/desk/sign-in", {"password": PASSWORD}, 303))
        keys += browser.cookies.values()
        assert browser.post("/desk/sign-out", data={"form_token": forms[0]}).status_code == 403
    return [token, link.rsplit("/", 1)[1], *forms, *keys]


def sign_in(browser: httpx.Client, path: str, fields: dict[str, str], status: int) -> str:
    found = re.search(r'name="form_token" value="(\w+)"', browser.get(path).text)
    assert found is not None
    answer = browser.post(path, data={"form_token": found[1], **fields})
    assert answer.status_code == status, answer.text
    return found[1]


def broken(url: str) -> None:
    """What is no HTTP at all, with secrets in it."""
    where = httpx.URL(url)
    with socket.create_connection((where.host, where.port or 80), timeout=20) as connection:
        connection.sendall(f"GET /{ANSWER[0]} {PASSWORD} {GUESSED}\r\n\r\n".encode())
        assert connection.recv(65_536).startswith(b"HTTP/1.1 400 ")


def done(answer: httpx.Response) -> httpx.Response:
    assert answer.status_code < 300, answer.text
    return answer
