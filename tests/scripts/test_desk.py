"""desk.py as a host meets it: a link, a password, and everybody out."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import httpx
import pytest

from service.settings import Settings
from tests.browser.serving import TOKEN, Served, serving
from tests.scripts.running import run_script, sentences

PASSWORD = "gorse kettle lantern seven"
FIELD = re.compile(r'name="form_token" value="(\w+)"')


@pytest.fixture
def served(sqlite: Settings) -> Iterator[Served]:
    """A server without any game."""
    with serving(sqlite) as server:
        yield server


def enter(browser: httpx.Client, address: str, **fields: str) -> int:
    """Sends the form at that address; the status of the answer."""
    page = browser.get(address)
    token = FIELD.search(page.text)
    assert token is not None, (page.status_code, page.text)
    return browser.post(address, data={"form_token": token[1], **fields}).status_code


def desk(served: Served, *words: str, given: bytes = b"") -> str:
    told = run_script("desk.py", *words, "--server", served.url, "--token", TOKEN, given=given)
    assert (told.returncode, told.stderr) == (0, "")
    return told.stdout


def test_a_link_is_made_for_a_running_server(served: Served) -> None:
    said = desk(served, "link")
    link = re.search(rf"^  ({served.url}/desk/link/[\w-]+)$", said, re.MULTILINE)
    assert link is not None, said
    assert "once, within 60 minutes" in said
    with httpx.Client() as browser:
        assert enter(browser, link[1]) == 303
        assert browser.get(f"{served.url}/desk").status_code == 200
        assert desk(served, "sign-out") == "Signed out: 1.\n"
        assert browser.get(f"{served.url}/desk").status_code == 303


def test_a_password_is_read_from_standard_input_and_never_printed(served: Served) -> None:
    said = desk(served, "password", given=PASSWORD.encode() + b"\n")
    assert "The password is set" in said
    assert PASSWORD not in said
    with httpx.Client() as browser:
        assert enter(browser, f"{served.url}/desk/sign-in", password="another one") == 403
        assert enter(browser, f"{served.url}/desk/sign-in", password=PASSWORD) == 303


def test_a_password_that_is_guessed_early_is_one_sentence(served: Served) -> None:
    told = run_script(
        "desk.py", "password", "--server", served.url, "--token", TOKEN, given=b"iloveyou1234\n"
    )
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert "guessed early" in sentence


def test_without_a_server_it_is_the_desk_of_this_computers_games(tmp_path: Path) -> None:
    environment = {"LOOPSTART_DATA_FOLDER": str(tmp_path), "LOOPSTART_PORT": "8999"}
    assert run_script("start.py", "--no-serve", environment=environment).returncode == 0
    told = run_script("desk.py", "link", environment=environment)
    assert told.returncode == 0, told.stderr
    assert "  http://127.0.0.1:8999/desk/link/" in told.stdout
