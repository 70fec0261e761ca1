"""What was announced before records were kept is the first revision after the upgrade."""

from __future__ import annotations

import json

from alembic import command
from sqlalchemy import text

from service.settings import Settings
from service.store.database import Database
from service.store.engine import make_engine
from service.store.games import game_named
from service.store.revisions import revisions_of
from service.store.rounds import round_numbered
from service.store.upgrade import alembic_config, upgrade

AT = "2026-03-01 18:00:00+00:00"
RESULT = {"winner": 13, "tally": [{"page": 13, "votes": 2}]}


def test_an_announced_result_becomes_the_first_revision(empty_settings: Settings) -> None:
    engine = make_engine(empty_settings)
    at = AT if engine.dialect.name == "postgresql" else AT.removesuffix("+00:00") + ".000000"
    with engine.begin() as connection:
        command.upgrade(alembic_config(connection), "0002")
        connection.execute(
            text(
                "INSERT INTO games (id, slug, name, zone, chart, next_from, hosts, languages, wants,"
                " names_per_comment, created, changes) VALUES (1, 'old', 'Old', 'UTC', '{}', 'x',"
                " '[]', '[]', 'title', 1, :at, 0)"
            ),
            {"at": at},
        )
        for number, state in ((1, "announced"), (2, "closed")):
            connection.execute(
                text(
                    "INSERT INTO rounds (game_id, number, state, choices, standing, tie_breaks,"
                    " widened, why, created, announced, result, changes) VALUES (1, :number,"
                    " :state, 1, 'latest', '[]', :no, '', :at, :announced, :result, 0)"
                ),
                {
                    "number": number,
                    "state": state,
                    "no": False,
                    "at": at,
                    "announced": at if state == "announced" else None,
                    "result": json.dumps(RESULT) if state == "announced" else None,
                },
            )
    engine.dispose()
    upgrade(empty_settings)
    database = Database(empty_settings)
    with database.reading() as session:
        game = game_named(session, "old")
        [first] = revisions_of(session, round_numbered(session, game, 1))
        assert (first.number, first.result, first.record, first.reason) == (1, RESULT, None, None)
        assert first.announced.isoformat() == "2026-03-01T18:00:00+00:00"
        assert list(revisions_of(session, round_numbered(session, game, 2))) == []
    database.dispose()
