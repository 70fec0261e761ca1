"""announce.py: words in the terminal; words, pictures and a calendar in a folder."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from client import in_process
from defusedxml.ElementTree import fromstring

from service.settings import Settings
from service.store.upgrade import upgrade
from tests.scripts.running import run_script, sentences

Json = Any
GAME: Json = {
    "slug": "harbour",
    "name": "The harbour mystery",
    "zone": "UTC",
    "chart": {"columns": 4, "rows": 3},
}
COMMENTS = "author,posted,text\nMaren,2026-03-13T19:00:00Z,5\nTove,2026-03-13T19:30:00Z,page 5\n"


@pytest.fixture
def played(tmp_path: Path) -> dict[str, str]:
    """A game with an announced round in a data folder of its own."""
    settings = Settings(data_folder=tmp_path / "data")
    upgrade(settings)
    with in_process(settings) as host:
        host.post("/games", GAME)
        times = {"opens": "2026-03-13T18:00"}
        host.post("/games/harbour/rounds", times)
        host.post("/games/harbour/rounds/1/open")
        host.hand_in("/games/harbour/rounds/1/batches", "comments.csv", COMMENTS.encode())
        host.post("/games/harbour/rounds/1/close")
        host.post("/games/harbour/rounds/1/announce")
    return {"LOOPSTART_DATA_FOLDER": str(settings.data_folder)}


def test_the_words_are_printed(played: dict[str, str]) -> None:
    told = run_script("announce.py", "--game", "harbour", "--round", "1", environment=played)
    assert (told.returncode, told.stderr) == (0, "")
    assert "--- result, " in told.stdout
    assert (
        "The harbour mystery, round 1: page 5 is next.\n\nPage 5 wins with 2 votes." in told.stdout
    )
    assert "--- next round, " in told.stdout
    short = run_script(
        *("announce.py", "--game", "harbour", "--round", "1", "--short", "--limit", "40"),
        environment=played,
    )
    assert "; longer than your 40" in short.stdout
    assert len(short.stdout) < len(told.stdout)


def test_everything_is_written_to_a_folder(played: dict[str, str], tmp_path: Path) -> None:
    out = tmp_path / "posts"
    command = ("announce.py", "--game", "harbour", "--round", "1", "--out", str(out))
    told = run_script(*command, "--theme", "dark", environment=played)
    assert (told.returncode, told.stderr) == (0, "")
    names = sorted(file.name for file in out.iterdir())
    assert f"{len(names)} files written to {out}." in told.stdout
    assert {"harbour-round-1-result.txt", "harbour-round-1-map-square.png"} <= set(names)
    assert "harbour-round-1-closing.ics" in names
    for file in out.glob("*.png"):
        assert file.read_bytes().startswith(b"\x89PNG")
        assert file.with_suffix(".svg").exists()
        words = (out / f"{file.stem}-alternative-text.txt").read_text("utf-8")
        root = fromstring(file.with_suffix(".svg").read_text("utf-8"))
        assert words == f"{root.findtext('{*}desc')}\n"
    again = run_script(*command, environment=played)
    assert again.returncode == 2
    assert "there is a file" in sentences(again.stderr)[-1]
    assert sorted(file.name for file in out.iterdir()) == names


@pytest.mark.parametrize("number", ["2", "0"])
def test_a_round_that_is_not_there_is_told_in_one_sentence(
    played: dict[str, str], number: str
) -> None:
    told = run_script("announce.py", "--game", "harbour", "--round", number, environment=played)
    assert told.returncode in {1, 2}
    assert len(sentences(told.stderr)) == 1
