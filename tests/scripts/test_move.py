"""move.py, as a person runs it."""

from __future__ import annotations

from pathlib import Path

import pytest
from client import in_process

from service.settings import Settings
from tests.scripts.running import run_script, sentences
from tests.scripts.test_export import GAME


@pytest.mark.postgres
def test_a_database_is_moved_and_the_digests_are_shown(
    sqlite: Settings, empty_postgres: Settings
) -> None:
    with in_process(sqlite) as host:
        host.post("/games", GAME)
    here = {"LOOPSTART_DATA_FOLDER": str(sqlite.data_folder)}
    told = run_script("move.py", "--to", empty_postgres.database_url, environment=here)
    assert (told.returncode, told.stderr) == (0, "")
    [line] = [each for each in told.stdout.splitlines() if each.startswith("games ")]
    assert line.split()[1:3] == ["1", "rows"]
    assert "the digest of every table is the same on both" in told.stdout
    with in_process(empty_postgres) as host:
        assert host.get("/games/harbour")["name"] == GAME["name"]
    again = run_script("move.py", "--to", empty_postgres.database_url, environment=here)
    assert again.returncode == 2
    [refused] = sentences(again.stderr)
    assert "is not empty (it has games, answers): name a new file" in refused


def test_a_target_that_cannot_be_made_is_one_sentence(sqlite: Settings, tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file, no folder", "utf-8")
    url = f"sqlite:///{tmp_path}/taken/games.sqlite3"
    here = {"LOOPSTART_DATA_FOLDER": str(sqlite.data_folder)}
    told = run_script("move.py", "--to", url, environment=here)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert "cannot be made" in sentence
