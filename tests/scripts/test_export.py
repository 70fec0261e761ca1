"""export.py, and what a server with a whole game in it leaves behind: logs and files."""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Any

import httpx
import pytest
from client import in_process
from export import MARK, name_of, plain, table_of, write_new

from service.errors import AlreadyThere, BadInput
from service.settings import Settings
from service.store.upgrade import upgrade
from tests.api.searching import Secret
from tests.api.test_no_leak import WORDS
from tests.scripts.running import run_script
from tests.scripts.test_start import start

Json = Any
TITLE = "The Tarnished Astrolabe of Skerrymouth"
GAME: Json = {
    "slug": "harbour",
    "name": "The harbour mystery",
    "zone": "UTC",
    "chart": {"columns": 4, "rows": 3},
    "guesses_open": "2026-03-13T18:00",
    "answer": {"title": TITLE, "designer": "Wenna Quarmby"},
}
COMMENTS = (
    "author,posted,text\n"
    f"Maren,2026-03-13T19:00:00Z,Is it {TITLE}?\n"
    "Tove,2026-03-13T18:30:00Z,Is it Grey Gulls?\n"
)
GUESS: Json = {
    "written": {"earliest": "2026-03-13T19:00:00Z", "latest": "2026-03-13T19:00:00Z"},
    "author": "=Maren",
    "text": "Is it, say, “Grey Gulls”?",
    "outcome": "look",
    "standing": "counts",
    "cause": None,
    "why": "It may name it.",
    "rulings": [{"outcome": "wrong"}],
}


@pytest.fixture
def played(tmp_path: Path) -> tuple[Settings, str]:
    """A game with guesses in a data folder of its own, and a host's token."""
    settings = Settings(data_folder=tmp_path / "data")
    upgrade(settings)
    with in_process(settings) as host:
        host.post("/games", GAME)
        host.post("/games/harbour/rounds", {"opens": "2026-03-13T18:00"})
        host.post("/games/harbour/rounds/1/open")
        host.hand_in("/games/harbour/rounds/1/batches", "comments.csv", COMMENTS.encode())
        token = host.post("/tokens", {"name": "another host", "role": "host"})["token"]
    return settings, token


def test_an_export_of_guesses_says_that_it_holds_the_answer_until_the_reveal(
    played: tuple[Settings, str], tmp_path: Path
) -> None:
    environment = {"LOOPSTART_DATA_FOLDER": str(played[0].data_folder)}
    told = run_script("export.py", "--game", "harbour", "--out", tmp_path, environment=environment)
    assert told.returncode == 0, told.stderr
    assert "It holds the answer, as its name and its first line say" in told.stdout
    file = tmp_path / f"harbour-guesses-{MARK}.csv"
    first, _, *rows = csv.reader(file.read_text("utf-8-sig").splitlines())
    assert first == ["This file holds the answer of harbour: keep it to yourself until the reveal."]
    assert [(row[2], row[4]) for row in rows] == [("Tove", "wrong"), ("Maren", "right")]


def test_a_file_that_is_there_is_not_written_over(tmp_path: Path) -> None:
    file = tmp_path / "harbour-guesses.csv"
    write_new(file, "first")
    with pytest.raises(AlreadyThere, match="already"):
        write_new(file, "second")
    with pytest.raises(BadInput, match="cannot be written"):
        write_new(tmp_path / "nowhere" / "a.csv", "first")
    assert [each.read_text("utf-8-sig") for each in tmp_path.iterdir()] == ["first"]


def test_a_served_game_leaves_the_answer_in_no_log_line_and_no_file_name(
    played: tuple[Settings, str],
) -> None:
    settings, token = played
    secret = Secret(WORDS)
    server = start(LOOPSTART_DATA_FOLDER=str(settings.data_folder))
    game = f"{server.url}/api/games/harbour"
    with httpx.Client(headers={"Authorization": f"Bearer {token}"}) as host:
        assert secret.found_in(host.get(f"{game}/guesses").content)
        refused = (
            host.put(f"{game}/answer", json={"title": TITLE}),
            host.put(f"{game}/prize", json={"offer": "an astrolabe"}),
            host.get(f"{game}/mystery/reveal"),
            host.post(f"{game}/guesses/winner", json={"reason": 7}),
        )
    log = server.printed + server.stop()
    for answer in refused:
        assert answer.status_code in {409, 422}
        assert secret.found_in(answer.content) == set()
    assert "Serving on" in log
    assert secret.found_in(log) == set()
    names = "\n".join(file.name for file in settings.data_folder.rglob("*"))
    assert "loopstart.sqlite3" in names
    assert secret.found_in(names) == set()


def test_the_name_says_it_too() -> None:
    assert name_of("harbour", revealed=False) == "harbour-guesses-holds-the-answer.csv"
    assert name_of("harbour", revealed=True) == "harbour-guesses.csv"


def test_a_ruling_goes_before_the_reading_and_no_cell_is_a_formula() -> None:
    [_, row] = csv.reader(table_of("harbour", [GUESS], revealed=True).splitlines())
    assert row[2:6] == ["'=Maren", "Is it, say, “Grey Gulls”?", "wrong", "counts"]
    assert plain("@a") == "'@a"
    assert plain("a=b") == "a=b"
