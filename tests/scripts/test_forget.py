"""forget.py, as a person runs it."""

from __future__ import annotations

from client import in_process

from service.settings import Settings
from tests.scripts import test_export
from tests.scripts.running import run_script, sentences

played = test_export.played


def test_a_voter_is_forgotten_in_all_games(played: tuple[Settings, str]) -> None:
    settings, _ = played
    here = {"LOOPSTART_DATA_FOLDER": str(settings.data_folder)}
    with in_process(settings) as host:
        host.post("/games", test_export.GAME | {"slug": "another", "answer": None})
    asked = run_script("forget.py", "maren", environment=here)
    assert (asked.returncode, sentences(asked.stderr)) == (
        2,
        ["nobody can be asked whether to remove this for good: add --yes."],
    )
    told = run_script("forget.py", "maren", "--yes", environment=here)
    assert (told.returncode, told.stderr) == (0, "")
    assert "harbour: words and name removed from 1 comment (rounds: 1)." in told.stdout
    assert b"Maren" not in (settings.data_folder / "loopstart.sqlite3").read_bytes()
    assert b"Tove" in (settings.data_folder / "loopstart.sqlite3").read_bytes()
    nobody = run_script("forget.py", "Nobody", "--yes", environment=here)
    assert nobody.returncode == 2
    assert "there is no voter 'Nobody' here" in nobody.stderr


def test_a_game_that_is_not_over_is_refused(played: tuple[Settings, str]) -> None:
    here = {"LOOPSTART_DATA_FOLDER": str(played[0].data_folder)}
    told = run_script("forget.py", "--everybody", "--game", "harbour", "--yes", environment=here)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert sentence.endswith("cannot be forgotten: announce round 1 first.")
