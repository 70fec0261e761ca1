"""One behaviour on two databases: the same game gives the same record, and moving keeps all of it."""

from __future__ import annotations

import itertools
import secrets
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import text
from sqlmodel import select

from service.errors import BadSetting, CopyDiffers
from service.settings import Settings
from service.store import many, moving
from service.store.database import Database
from service.store.digests import digests_of
from service.store.every_table import kept_tables
from service.store.moving import move
from service.store.tables import GameRow
from service.store.tokens import make_token
from service.store.upgrade import upgrade
from tests.api.asking import PATH, ROUND, csv, done, everything_kept, make_game
from tests.api.conftest import Service, running
from tests.conftest import Clock
from tests.store.conftest import NOW

Json = Any
COMMENTS = csv(
    ("Maren", "2026-03-01T19:00:00Z", "13 please"),
    ("Tove", "2026-03-01T19:00:01Z", "22, says “Ödland” \N{SPOOL OF THREAD}"),
    ("Ebbe", "2026-03-01T19:00:02Z", "Is it The Tarnished Astrolabe of Skerrymouth? 22"),
)
EDITED = csv(("Maren", "2026-03-01T19:00:00Z", "14 please"))


def say_nothing(table: str, rows: int) -> None:
    del table, rows


def begin_chance(patch: pytest.MonkeyPatch) -> None:
    """Have a game's salts be the same in each game that is played."""
    numbers = itertools.count(1)
    patch.setattr(secrets, "token_hex", lambda size=32: f"{next(numbers):0{2 * size}x}")
    patch.setattr(secrets, "token_bytes", lambda size=32: bytes([next(numbers)]) * size)


def play(service: Service) -> str:
    """A round from the opening to a second revision; the newest record."""
    host = service.host
    make_game(host)
    done(host.put(f"{PATH}/prize", {"offer": "a skein", "choose_from": "", "claim_days": 14}))
    done(host.post(f"{PATH}/rounds", {"tie_breaks": ["draw"]}), 201)
    done(host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    done(host.hand_in(f"{ROUND}/batches", COMMENTS, copied_at="2026-03-01T19:30:00Z"), 201)
    done(host.hand_in(f"{ROUND}/batches", EDITED, copied_at="2026-03-01T19:45:00Z"), 201)
    done(host.post(f"{ROUND}/close"))
    done(host.post(f"{ROUND}/announce"))
    [ruled] = [one for one in host.get(f"{ROUND}/comments").json() if one["author"] == "Tove"]
    body = {"pages": [13], "reason": "she wrote so elsewhere"}
    done(host.post(f"{ROUND}/comments/{ruled['key']}/rulings", body), 201)
    done(host.post(f"{ROUND}/revisions", {"reason": "a ruling came late"}), 201)
    return record(service)


def record(service: Service) -> str:
    answer = service.viewer.get(f"{ROUND}/record")
    assert answer.status_code == 200
    return answer.text


def in_a_file(folder: Path) -> Settings:
    return Settings(data_folder=folder)


@pytest.mark.postgres
def test_the_same_game_gives_the_same_record_on_both(
    sqlite: Settings, postgres: Settings, monkeypatch: pytest.MonkeyPatch
) -> None:
    records = []
    for settings in (sqlite, postgres):
        begin_chance(monkeypatch)
        with running(settings, Clock()) as service:
            records.append(play(service))
    assert records[0] == records[1]
    assert '"number":2' in records[0]


@pytest.mark.postgres
def test_a_game_moved_there_and_back_is_the_same(
    sqlite: Settings, empty_postgres: Settings, tmp_path: Path
) -> None:
    with running(sqlite, Clock()) as service:
        told = play(service)
        kept = everything_kept(service)
    there = move(sqlite, empty_postgres, say_nothing)
    back = in_a_file(tmp_path / "back")
    assert move(empty_postgres, back, say_nothing) == there
    stays = {table.name for table in kept_tables()}
    assert {one.table: one.rows for one in there} == {name: len(kept[name]) for name in stays}
    assert set(kept) - stays == {"waiting_exports", "waiting_pieces", "watched_requests"}
    for settings in (empty_postgres, back):
        with running(settings, Clock()) as service:
            assert record(service) == told
            assert everything_kept(service) == kept
            assert len(done(service.host.get(f"{ROUND}/comments"))) == 3


def test_what_comes_after_a_move_has_ids_of_its_own(sqlite: Settings, settings: Settings) -> None:
    if settings is sqlite:
        settings = in_a_file(sqlite.data_folder / "other")
    with running(sqlite, Clock()) as service:
        play(service)
    move(sqlite, settings, say_nothing)
    with running(settings, Clock()) as service:
        service.clock.go_on(hours=2)
        make_game(service.host, slug="another", answer=None)
        more = csv(("Odd", "2026-03-01T19:10:00Z", "15"))
        assert done(service.host.hand_in(f"{ROUND}/batches", more), 201)["new"] == 1
        done(service.host.post("/tokens", {"name": "one more", "role": "host"}), 201)


@pytest.fixture
def filled(sqlite: Settings) -> Settings:
    database = Database(sqlite)
    with database.writing() as session:
        make_token(session, "host", "host", NOW)
    database.dispose()
    return sqlite


def test_a_target_that_is_not_empty_is_refused(filled: Settings, settings: Settings) -> None:
    if settings is filled:
        settings = in_a_file(filled.data_folder / "other")
    move(filled, settings, say_nothing)
    before = digests(settings)
    with pytest.raises(BadSetting, match=r"not empty \(it has tokens\)"):
        move(filled, settings, say_nothing)
    assert digests(settings) == before


def digests(settings: Settings) -> Any:
    database = Database(settings)
    try:
        with database.reading() as session:
            return digests_of(session.connection())
    finally:
        database.dispose()


def test_another_programs_tables_are_no_empty_database(
    filled: Settings, empty_postgres: Settings
) -> None:
    database = Database(empty_postgres)
    with database.engine.begin() as connection:
        connection.execute(text("CREATE TABLE somebody_elses (id INTEGER)"))
    database.dispose()
    with pytest.raises(BadSetting, match="somebody_elses"):
        move(filled, empty_postgres, say_nothing)


def test_the_target_cannot_be_the_source(filled: Settings) -> None:
    with pytest.raises(BadSetting, match="one database"):
        move(filled, filled.model_copy(), say_nothing)


def test_a_source_that_was_not_upgraded_is_refused(
    empty_settings: Settings, tmp_path: Path
) -> None:
    with pytest.raises(BadSetting, match="not set up for this version"):
        move(empty_settings, in_a_file(tmp_path / "there"), say_nothing)


@pytest.fixture(params=["sqlite", "postgres"])
def unmade(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Settings]:
    """A database of each kind without a table."""
    if request.param == "sqlite":
        yield in_a_file(tmp_path / "unmade")
        return
    yield request.getfixturevalue("empty_postgres")


def test_a_copy_that_differs_leaves_the_target_empty(
    filled: Settings, unmade: Settings, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = many.add_rows

    def spoil(connection: Any, table: str, columns: Any, rows: Any) -> None:
        changed = [(*row[:1], f"{row[1]}!", *row[2:]) for row in rows]
        real(connection, table, columns, changed)

    monkeypatch.setattr(moving, "add_rows", spoil)
    with pytest.raises(CopyDiffers, match="differs in the table tokens"):
        move(filled, unmade, say_nothing)
    if unmade.database.get_backend_name() == "sqlite":
        assert list(unmade.data_folder.iterdir()) == []
    upgrade(unmade)
    assert {one.rows for one in digests(unmade)} == {0}


def test_a_digest_tells_any_change(filled: Settings) -> None:
    before = {one.table: one.digest for one in digests(filled)}
    database = Database(filled)
    with database.writing() as session:
        session.add(
            GameRow(
                slug="a",
                name="a",
                zone="UTC",
                chart={"b": 1, "a": [True, None]},
                next_from="x",
                hosts=[],
                languages=[],
                wants="title",
                names_per_comment=1,
                created=NOW,
            )
        )
    one = {each.table: each.digest for each in digests(filled)}
    assert {name for name in one if one[name] != before[name]} == {"games"}
    with database.writing() as session:
        session.exec(select(GameRow)).one().chart = {"b": 1, "a": ["1", None]}
    two = {each.table: each.digest for each in digests(filled)}
    assert one["games"] != two["games"]
    database.dispose()
