"""receipt.py answers "why was my vote not counted?" from a stored game."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from client import in_process

from service.settings import Settings
from service.store.upgrade import upgrade
from tests.conftest import Clock
from tests.scripts.running import run_script

EXPORT = (
    "Name,Time,Comment\r\n"
    "Maren,2026-03-01T19:00:00Z,13 please\r\n"
    "Odd,2026-03-01T19:01:00Z,12 or 40\r\n"
    "Odd,2026-03-01T19:02:00Z,lovely thread\r\n"
)


@pytest.fixture
def games(tmp_path: Path, clock: Clock) -> dict[str, str]:
    """A folder with a game whose first round is open, as the environment names it."""
    settings = Settings(data_folder=tmp_path)
    upgrade(settings)
    with in_process(settings, clock) as host:
        host.post(
            "/games",
            {
                "slug": "harbour", "name": "The harbour mystery", "zone": "Atlantic/Faroe",
                "chart": {"columns": 9, "rows": 7}, "hosts": ["Island Guild"],
            },
        )  # fmt: skip
        host.post("/games/harbour/rounds", {})
        host.post("/games/harbour/rounds/1/open")
        clock.go_on(hours=2)
        host.hand_in("/games/harbour/rounds/1/batches", "x.csv", EXPORT.encode())
        [look] = host.get("/games/harbour/rounds/1/comments", filter="look")
        ruling = {"pages": [], "reason": "she only thinks aloud"}
        host.post(f"/games/harbour/rounds/1/comments/{look['key']}/rulings", ruling)
    return {"LOOPSTART_DATA_FOLDER": str(tmp_path)}


def test_a_receipt_is_told_in_words(games: dict[str, str]) -> None:
    told = run_script("receipt.py", "ODD", "--game", "harbour", "--round", "1", environment=games)
    assert (told.returncode, told.stderr) == (0, "")
    for words in (
        "2026-03-01 19:01 UTC: “12 or 40”",
        "Read: look 12, 40",
        "no page, because: she only thinks aloud",
        "Outcome: set aside, chooses no page. The host's ruling: she only thinks aloud",
        "No ballot stands; of the last comment: chooses no page.",
    ):
        assert words in told.stdout, told.stdout


def test_a_receipt_may_be_data(games: dict[str, str]) -> None:
    told = run_script(
        "receipt.py", "maren", "--game", "harbour", "--round", "1", "--json", environment=games
    )
    [receipt] = json.loads(told.stdout)
    assert receipt["pages"] == [13]


def test_a_voter_who_is_not_there_is_one_sentence(games: dict[str, str]) -> None:
    told = run_script(
        "receipt.py", "Nobody", "--game", "harbour", "--round", "1", environment=games
    )
    assert (told.returncode, len(told.stderr.splitlines())) == (2, 1)
    assert "there is no voter 'Nobody' here" in told.stderr
