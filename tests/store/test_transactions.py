"""One transaction a request: whole or not at all, and two at once do not lose each other's work."""

from __future__ import annotations

import threading
from datetime import UTC, datetime, timedelta, timezone

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError, InternalError, OperationalError, StatementError
from sqlmodel import select

from service.settings import Settings
from service.store.columns import Row, id_of
from service.store.database import Database
from service.store.games import game_named, take_game
from service.store.tables import GameRow, PageRow, TokenRow

NOW = datetime(2026, 3, 1, 18, 0, tzinfo=UTC)


def token(name: str, created: datetime = NOW) -> TokenRow:
    return TokenRow(name=name, role="host", digest=name, created=created)


def keep(database: Database, *rows: Row) -> None:
    with database.writing() as session:
        session.add_all(rows)
        session.flush()


def test_a_transaction_is_kept_whole(database: Database) -> None:
    with database.writing() as session:
        session.add(token("one"))
        session.add(token("two"))
    with database.reading() as session:
        assert {row.name for row in session.exec(select(TokenRow))} == {"one", "two"}


def test_an_error_drops_the_whole_transaction(database: Database) -> None:
    with pytest.raises(IntegrityError):
        keep(database, token("one"), token("two"), token("one"))
    with database.reading() as session:
        assert session.exec(select(TokenRow)).all() == []


@pytest.mark.parametrize(
    "given",
    [
        pytest.param(datetime(2026, 3, 1, 18, 0, 0, 123456, tzinfo=UTC), id="UTC"),
        pytest.param(
            datetime(2026, 3, 1, 23, 45, 0, 123456, tzinfo=timezone(timedelta(hours=5.75))),
            id="another offset",
        ),
    ],
)
def test_a_time_comes_back_aware_and_in_utc(database: Database, given: datetime) -> None:
    with database.writing() as session:
        session.add(token("one", given))
    with database.reading() as session:
        kept = session.exec(select(TokenRow.created)).one()
    assert kept == datetime(2026, 3, 1, 18, 0, 0, 123456, tzinfo=UTC)
    assert kept.tzinfo is UTC


def test_a_time_is_found_by_comparing_it(database: Database) -> None:
    with database.writing() as session:
        session.add(token("early", NOW))
        session.add(token("late", NOW + timedelta(seconds=1)))
    limit = datetime(2026, 3, 1, 19, 0, 0, 500000, tzinfo=timezone(timedelta(hours=1)))
    with database.reading() as session:
        found = session.exec(select(TokenRow.name).where(TokenRow.created > limit)).all()
    assert found == ["late"]


def test_a_time_without_its_zone_is_refused(database: Database) -> None:
    with pytest.raises(StatementError, match="without its zone"):
        keep(database, token("one", datetime(2026, 3, 1)))  # noqa: DTZ001 - that is the point


def test_a_row_of_nothing_is_refused(database: Database) -> None:
    with pytest.raises(IntegrityError, match=r"(?i)foreign key"):
        keep(database, PageRow(game_id=12345, page=1, state="stitched", since=NOW))


def test_a_state_that_is_none_is_refused(database: Database, game: str) -> None:
    with database.reading() as session:
        game_id = id_of(game_named(session, game))
    with pytest.raises(IntegrityError, match="ck_pages_state"):
        keep(database, PageRow(game_id=game_id, page=1, state="unravelled", since=NOW))


def test_sqlite_is_set_to_wait_and_to_let_readers_on(sqlite: Settings) -> None:
    database = Database(sqlite)
    with database.reading() as session:
        values = {
            name: session.connection().execute(text(f"PRAGMA {name}")).scalar()
            for name in ("journal_mode", "foreign_keys", "busy_timeout")
        }
    database.dispose()
    assert values == {"journal_mode": "wal", "foreign_keys": 1, "busy_timeout": 30_000}


def test_reading_goes_on_beside_a_writer(database: Database, game: str) -> None:
    with database.writing() as writing:
        row = game_named(writing, game)
        row.name = "another name"
        writing.add(row)
        writing.flush()
        with database.reading() as reading:
            assert game_named(reading, game).name == "The windy island's mystery"


def test_a_reader_sees_one_moment(database: Database) -> None:
    with database.reading() as reading:
        assert reading.exec(select(TokenRow)).all() == []
        keep(database, token("meanwhile"))
        assert reading.exec(select(TokenRow)).all() == []
    with database.reading() as reading:
        assert len(reading.exec(select(TokenRow)).all()) == 1


def test_a_reading_transaction_cannot_write_on_postgresql(postgres: Settings) -> None:
    database = Database(postgres)
    with database.reading() as session:
        session.add(token("one"))
        with pytest.raises(InternalError, match="read-only transaction"):
            session.flush()
    database.dispose()


def test_writers_wait_for_each_other_and_lose_nothing(database: Database, game: str) -> None:
    """Each reads a number, then writes it plus one: without waiting, some would be lost."""
    troubles: list[Exception] = []

    def add_one() -> None:
        try:
            for _ in range(5):
                with database.writing() as session:
                    row = game_named(session, game)
                    take_game(session, row)
                    row.names_per_comment += 1
                    session.add(row)
        except Exception as trouble:  # noqa: BLE001 - it is told below, whatever it is
            troubles.append(trouble)

    writers = [threading.Thread(target=add_one) for _ in range(4)]
    for writer in writers:
        writer.start()
    for writer in writers:
        writer.join()
    with database.reading() as session:
        row = session.exec(select(GameRow)).one()
    assert troubles == []
    assert (row.names_per_comment, row.changes) == (21, 20)


@pytest.mark.parametrize("kind", ["sqlite", "postgres"])
def test_a_writer_gives_up_after_the_wait(request: pytest.FixtureRequest, kind: str) -> None:
    settings: Settings = request.getfixturevalue(kind)
    patient = Database(settings)
    hasty = Database(settings.model_copy(update={"database_wait": 0.2}))
    with patient.writing() as first:
        first.add(token("one"))
        first.flush()
        with pytest.raises(OperationalError, match="lock"):
            keep(hasty, token("one"))
    patient.dispose()
    hasty.dispose()
