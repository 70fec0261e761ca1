"""Backups: one moment while others write, proved to restore, and open about the answer in them."""

from __future__ import annotations

import sqlite3
import stat
import threading
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from sqlmodel import func, select

from service.errors import AlreadyThere, BadInput, BadSetting, CopyDiffers
from service.settings import DATABASE_FILE, Settings
from service.store import backing_up
from service.store.backing_up import DIGESTS, MARK, READ_ME, back_up, check_backup
from service.store.database import Database
from service.store.moving import move
from service.store.tables import GameRow, TokenRow
from service.store.tokens import make_token
from tests.api.asking import PATH, done
from tests.api.conftest import running
from tests.conftest import Clock
from tests.store import test_moving
from tests.store.conftest import NOW
from tests.store.test_moving import play, record, say_nothing

unmade = test_moving.unmade


def test_a_backup_is_a_data_folder_of_its_own(settings: Settings, tmp_path: Path) -> None:
    with running(settings, Clock()) as service:
        told = play(service)
        made = back_up(settings, tmp_path / "backups", NOW, say_nothing)
    assert sorted(file.name for file in made.folder.iterdir()) == sorted(
        [DATABASE_FILE, DIGESTS, READ_ME]
    )
    assert check_backup(made.folder) == made.tables
    with running(Settings(data_folder=made.folder), Clock()) as service:
        assert record(service) == told


def test_name_and_first_line_say_that_it_holds_the_answer_until_the_reveal(
    settings: Settings, tmp_path: Path
) -> None:
    with running(settings, Clock()) as service:
        play(service)
        sealed = back_up(settings, tmp_path, NOW, say_nothing)
        done(service.host.post(f"{PATH}/guesses/end"))
        done(service.host.post(f"{PATH}/mystery/reveal"))
        revealed = back_up(settings, tmp_path, NOW, say_nothing)
    assert sealed.folder.name == f"loopstart-backup-2026-03-01T180000Z-{MARK}"
    assert revealed.folder.name == "loopstart-backup-2026-03-01T180000Z"
    first = (sealed.folder / READ_ME).read_text("utf-8").splitlines()[0]
    assert "holds the sealed answer of windy-island" in first
    assert "sealed answer" not in (revealed.folder / READ_ME).read_text("utf-8")


def test_a_backup_is_one_moment_while_others_write(database: Database, tmp_path: Path) -> None:
    """Each transaction adds a game and a token: no backup may hold one without the other."""
    stop, troubles = threading.Event(), list[Exception]()

    def write() -> None:
        number = 0
        try:
            while not stop.is_set():
                number += 1
                with database.writing() as session:
                    make_token(session, f"token {number}", "host", NOW)
                    session.flush()
                    session.add(
                        GameRow(
                            slug=f"game-{number}",
                            name="x" * 2000,
                            zone="UTC",
                            chart={},
                            next_from="x",
                            hosts=[],
                            languages=[],
                            wants="title",
                            names_per_comment=1,
                            created=NOW,
                        )
                    )
        except Exception as trouble:  # noqa: BLE001 - it is told below, whatever it is
            troubles.append(trouble)

    writer = threading.Thread(target=write)
    writer.start()
    counts = []
    try:
        for number in range(5):
            made = back_up(database._settings, tmp_path / str(number), NOW, say_nothing)
            copy = Database(Settings(data_folder=made.folder))
            with copy.reading() as session:
                of_each = [
                    session.exec(select(func.count()).select_from(table)).one()
                    for table in (TokenRow, GameRow)
                ]
            copy.dispose()
            assert of_each[0] == of_each[1]
            counts.append(of_each[0])
    finally:
        stop.set()
        writer.join()
    assert troubles == []
    assert counts == sorted(counts)
    assert counts[-1] > counts[0], "nobody wrote meanwhile"


def test_a_backup_is_its_owner_s_alone(sqlite: Settings, tmp_path: Path) -> None:
    made = back_up(sqlite, tmp_path, NOW, say_nothing)
    assert stat.S_IMODE(made.folder.stat().st_mode) == 0o700
    assert stat.S_IMODE((made.folder / DATABASE_FILE).stat().st_mode) == 0o600


def test_a_copy_that_differs_is_no_backup(
    settings: Settings, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = backing_up._tidy

    def spoil(file: Path) -> None:
        real(file)
        with closing(sqlite3.connect(file)) as copy, copy:
            copy.execute("INSERT INTO tokens VALUES (7, 'x', 'host', 'y', '2026-03-01 18:00:00')")

    monkeypatch.setattr(backing_up, "_tidy", spoil)
    with pytest.raises(CopyDiffers, match="table tokens"):
        back_up(settings, tmp_path / "backups", NOW, say_nothing)
    assert list((tmp_path / "backups").iterdir()) == []


def test_a_folder_that_cannot_be_written_is_one_sentence(sqlite: Settings, tmp_path: Path) -> None:
    taken = tmp_path / "taken"
    taken.write_text("a file, no folder", "utf-8")
    with pytest.raises(BadInput, match=r"no backup can be written to .*: make room there"):
        back_up(sqlite, taken, NOW, say_nothing)
    back_up(sqlite, tmp_path, NOW, say_nothing)
    with pytest.raises(AlreadyThere, match="wait a second"):
        back_up(sqlite, tmp_path, NOW, say_nothing)


def test_a_full_disk_leaves_nothing_of_a_backup(
    sqlite: Settings, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(source: object, file: Path, tell: object) -> None:
        del source, tell
        file.write_bytes(b"half of it")
        raise sqlite3.OperationalError("database or disk is full")

    monkeypatch.setattr(backing_up, "_copy", full)
    with pytest.raises(BadInput, match=r"written to .* \(database or disk is full\): make room"):
        back_up(sqlite, tmp_path / "backups", NOW, say_nothing)
    assert list((tmp_path / "backups").iterdir()) == []


def test_a_broken_database_is_neither_backed_up_nor_moved(
    sqlite: Settings, unmade: Settings, tmp_path: Path
) -> None:
    file = sqlite.data_folder / DATABASE_FILE
    whole = file.read_bytes()
    file.write_bytes(whole[:8192] + b"\xa5" * (len(whole) - 8192))
    says = "the database that is to be copied cannot be read"
    with pytest.raises(BadSetting, match=says):
        back_up(sqlite, tmp_path / "backups", NOW, say_nothing)
    with pytest.raises(BadSetting, match=says):
        move(sqlite, unmade, say_nothing)
    assert not (tmp_path / "backups").exists()
    assert not (unmade.data_folder / DATABASE_FILE).exists()


def spoil_bytes(file: Path) -> None:
    file.write_bytes(b"no database at all" + file.read_bytes()[18:])


def spoil_rows(file: Path) -> None:
    with closing(sqlite3.connect(file)) as copy, copy:
        copy.execute("DELETE FROM tokens")


@pytest.mark.parametrize(
    ("spoil", "says", "kind"),
    [
        pytest.param(spoil_bytes, "cannot be opened", BadSetting, id="the file"),
        pytest.param(spoil_rows, "table tokens", CopyDiffers, id="its rows"),
    ],
)
def test_an_earlier_backup_that_was_spoiled_is_found_out(
    database: Database, tmp_path: Path, spoil: Any, says: str, kind: type[Exception]
) -> None:
    with database.writing() as session:
        make_token(session, "host", "host", NOW)
    made = back_up(database._settings, tmp_path, NOW, say_nothing)
    spoil(made.folder / DATABASE_FILE)
    with pytest.raises(kind, match=says):
        check_backup(made.folder)


def test_what_is_no_backup_is_told_so(tmp_path: Path) -> None:
    with pytest.raises(BadInput, match="is no backup"):
        check_backup(tmp_path)
