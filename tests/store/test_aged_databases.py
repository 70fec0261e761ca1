"""Databases that earlier versions wrote are opened by the newest, with nothing lost.

They lie in `aged/`, as SQL of each kind, written by `aged/make.py` from each migration with a small
game of that age in plain SQL. What is expected was counted by hand from that SQL.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import psycopg
import pytest
from alembic.script import ScriptDirectory
from sqlalchemy.engine import make_url

from service.errors import BadSetting
from service.settings import DATABASE_FILE, Settings
from service.store.backing_up import back_up, check_backup
from service.store.database import Database
from service.store.games import game_named
from service.store.guesses import judge_guesses
from service.store.moving import move
from service.store.revisions import revisions_of
from service.store.rounds import round_numbered
from service.store.upgrade import alembic_config, upgrade
from tests.api.asking import done
from tests.api.conftest import running
from tests.conftest import BOTH, Clock
from tests.store.conftest import NOW
from tests.store.test_moving import say_nothing

AGED = Path(__file__).with_name("aged")
AGES = [step.revision for step in ScriptDirectory.from_config(alembic_config()).walk_revisions()]
EARLIER = AGES[:0:-1]
ROUND = "/games/harbour/rounds/2"
Json = Any


def load(settings: Settings, age: str) -> None:
    """Make the database as that version left it."""
    if settings.database.get_backend_name() == "sqlite":
        with closing(sqlite3.connect(settings.data_folder / DATABASE_FILE)) as made:
            made.executescript((AGED / f"{age}.sqlite.sql").read_text("utf-8"))
        return
    url = make_url(settings.database_url).set(drivername="postgresql")
    with psycopg.connect(url.render_as_string(hide_password=False)) as connection:
        connection.execute((AGED / f"{age}.postgresql.sql").read_bytes())


@pytest.fixture(params=BOTH)
def empty(request: pytest.FixtureRequest) -> Settings:
    made = request.getfixturevalue(f"empty_{request.param}")
    assert isinstance(made, Settings)
    return made


@pytest.fixture(params=EARLIER)
def aged(request: pytest.FixtureRequest, empty: Settings) -> Settings:
    """A database of that age, upgraded."""
    load(empty, request.param)
    upgrade(empty)
    return empty


def test_every_earlier_migration_has_its_databases() -> None:
    kept = {file.name for file in AGED.glob("*.*.sql")}
    wanted = {f"{age}.{kind}.sql" for age in EARLIER for kind in ("sqlite", "postgresql")}
    assert wanted <= kept, "run tests/store/aged/make.py once the migration is final"


def test_a_game_of_each_age_counts_and_goes_on(aged: Settings) -> None:
    clock = Clock()
    clock.now = datetime(2026, 3, 6, 18, 0, tzinfo=UTC)
    with running(aged, clock) as service:
        host = service.host
        # Maren's edit to 7, Tøve's 7, Ebbe's "2 or 10" ruled 10; Odd only guesses.
        tally = done(host.get(f"{ROUND}/tally"))
        assert tally["tally"] == [{"page": 7, "votes": 2}, {"page": 10, "votes": 1}]
        listed = {one["author"]: one for one in done(host.get(f"{ROUND}/comments"))}
        assert listed["Maren"]["text"] == "7 please"
        assert listed["Tøve  Ødegård"]["pages"] == [7]
        assert listed["Ebbe"]["rulings"][0]["reason"] == "she said so; below it"
        [first, second] = [
            done(host.get(f"/games/harbour/rounds/{number}/batches"))[0] for number in (1, 2)
        ]
        assert (first["new"], second["new"], second["unreadable"][0]["place"]) == (1, 4, "line 9")
        done(host.post(f"{ROUND}/close"))
        done(host.post(f"{ROUND}/announce"))
        assert done(service.viewer.get(f"{ROUND}/result"))["winner"] == 7
        assert done(service.viewer.get("/games/harbour"))["pages"]["in_hand"] == [7]


def test_the_answer_of_each_age_still_opens_its_seal(aged: Settings) -> None:
    database = Database(aged)
    with database.reading() as session:
        game = game_named(session, "harbour")
        guesses = judge_guesses(session, game)
        assert guesses.first.key == "c0000000000000005"
        [announced] = revisions_of(session, round_numbered(session, game, 1))
        assert announced.result["winner"] == 6
        assert announced.announced == datetime(2026, 3, 4, 18, 30, tzinfo=UTC)
    database.dispose()
    with running(aged, Clock()) as service:
        service.clock.now = datetime(2026, 3, 7, tzinfo=UTC)
        done(service.host.post("/games/harbour/guesses/end"))
        revealed = done(service.host.post("/games/harbour/mystery/reveal"))
        assert revealed["answer"]["title"] == "The Lamp Room"


def test_a_game_of_each_age_is_backed_up_moved_and_forgotten(
    aged: Settings, tmp_path: Path
) -> None:
    made = back_up(aged, tmp_path / "kept", NOW, say_nothing)
    assert check_backup(made.folder) == made.tables
    there = Settings(data_folder=tmp_path / "there")
    assert move(aged, there, say_nothing) == made.tables
    with running(there, Clock()) as service:
        path = "/games/harbour/forgotten/voters"
        assert done(service.host.post(path, {"voter": "user-1"}))["comments"] == 1
        tally = done(service.host.get(f"{ROUND}/tally"))
        assert tally["tally"] == [{"page": 7, "votes": 2}, {"page": 10, "votes": 1}]


def test_a_record_of_an_earlier_version_stays_as_it_was(empty: Settings) -> None:
    load(empty, "0010")
    upgrade(empty)
    with running(empty, Clock()) as service:
        told = service.viewer.get("/games/harbour/rounds/1/record").text
    assert told == '{"format":"loopstart record 1","note":"as it was announced"}'


def test_older_code_refuses_a_newer_database_with_one_sentence(
    settings: Settings, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The newest database, met by a version that knows all migrations but the newest."""
    real = ScriptDirectory.walk_revisions

    def without_newest(self: ScriptDirectory, *given: str) -> Any:
        return list(real(self, *given))[1:]

    monkeypatch.setattr(ScriptDirectory, "walk_revisions", without_newest)
    monkeypatch.setattr(ScriptDirectory, "get_current_head", lambda _: EARLIER[-1])
    says = rf"a newer version of this service made the database \(its tables are {AGES[0]}\)"
    with pytest.raises(BadSetting, match=says):
        upgrade(settings)
    database = Database(settings)
    with pytest.raises(BadSetting, match=says), database.reading():
        pytest.fail("it was used")
    database.dispose()
