"""Stopped while it works, a server lets what was begun end, and takes nothing new."""

from __future__ import annotations

import signal
import threading
import time

import httpx
import pytest

from service.settings import Settings
from tests.scripts import test_export
from tests.scripts.test_start import Server, start

played = test_export.played
MANY = 6000


def export() -> bytes:
    lines = ["author,posted,text"]
    lines += [
        f"viewer {n},2026-03-13T19:{n // 60 % 60:02}:{n % 60:02}Z,I would say {n % 12 + 1} or so, {n}"
        for n in range(MANY)
    ]
    return "\n".join(lines).encode()


def hand_in(server: Server, token: str, answers: list[httpx.Response]) -> None:
    answers.append(
        httpx.post(
            f"{server.url}/api/games/harbour/rounds/1/batches?watch=this-one",
            files={"file": ("comments.csv", export())},
            headers={"Authorization": f"Bearer {token}"},
            timeout=120,
        )
    )


@pytest.mark.parametrize("name", ["SIGTERM", "SIGINT"])
def test_an_import_that_was_begun_is_kept_whole(played: tuple[Settings, str], name: str) -> None:
    settings, token = played
    server = start("--no-token", LOOPSTART_DATA_FOLDER=str(settings.data_folder))
    answers: list[httpx.Response] = []
    client = threading.Thread(target=hand_in, args=(server, token, answers))
    client.start()
    far = f"{server.url}/api/progress/this-one"
    headers = {"Authorization": f"Bearer {token}"}
    while httpx.get(far, headers=headers).json()["step"] in ("waiting", "done"):
        time.sleep(0.01)
    server.process.send_signal(getattr(signal, name))
    client.join(timeout=120)
    printed, _ = server.process.communicate(timeout=60)
    assert server.process.returncode == 0, printed
    [answer] = answers
    assert (answer.status_code, answer.json()["new"]) == (201, MANY)
    with pytest.raises(httpx.ConnectError):
        httpx.get(server.url)
