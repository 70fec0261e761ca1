"""backup.py, as a person runs it while the games are served."""

from __future__ import annotations

from pathlib import Path

from service.settings import Settings
from tests.scripts import test_export
from tests.scripts.running import run_script, sentences
from tests.scripts.test_start import start

played = test_export.played


def test_a_backup_is_made_and_proved_while_the_game_is_served(
    played: tuple[Settings, str], tmp_path: Path
) -> None:
    here = {"LOOPSTART_DATA_FOLDER": str(played[0].data_folder)}
    server = start(LOOPSTART_DATA_FOLDER=str(played[0].data_folder))
    try:
        told = run_script("backup.py", "--out", tmp_path / "kept", environment=here)
    finally:
        server.stop()
    assert (told.returncode, told.stderr) == (0, "")
    [folder] = (tmp_path / "kept").iterdir()
    assert folder.name.endswith("-holds-the-answer")
    assert f"Backup: {folder}" in told.stdout
    assert "It holds the sealed answer of harbour" in told.stdout
    checked = run_script("backup.py", "--check", folder, environment=here)
    assert (checked.returncode, checked.stderr) == (0, "")
    assert "every table as it was" in checked.stdout
    (folder / "loopstart.sqlite3").write_bytes(b"")
    spoiled = run_script("backup.py", "--check", folder, environment=here)
    assert spoiled.returncode == 1
    [sentence] = sentences(spoiled.stderr)
    assert "the copy differs in the table" in sentence
