"""Comments of before there were marks of ids told later are found as they should after the upgrade."""

from __future__ import annotations

from alembic import command
from sqlalchemy import text

from service.comments.versions import key_of_id
from service.settings import Settings
from service.store.engine import make_engine
from service.store.upgrade import alembic_config, upgrade

#: The key and the id of each comment, and whether the id was told later.
COMMENTS = [
    (key_of_id("t1"), "t1", False),
    (f"{key_of_id('t1')}-2", "t1", True),
    (key_of_id("né à l'île"), "né à l'île", False),
    ("c0123456789abcdef", "m1", True),
    ("cfedcba9876543210", None, False),
]


def test_ids_that_were_told_later_are_marked(empty_settings: Settings) -> None:
    engine = make_engine(empty_settings)
    at = "2026-03-01 18:00:00+00:00"
    if engine.dialect.name == "sqlite":
        at = "2026-03-01 18:00:00.000000"
    with engine.begin() as connection:
        command.upgrade(alembic_config(connection), "0100")
        for statement in (
            (
                "INSERT INTO games (id, slug, name, zone, chart, next_from, hosts, languages, wants,"
                " names_per_comment, created, changes) VALUES (1, 'old', 'Old', 'UTC', '{}', 'x',"
                " '[]', '[]', 'title', 1, :at, 0)"
            ),
            (
                "INSERT INTO rounds (id, game_id, number, state, choices, standing, tie_breaks,"
                " widened, why, created, changes) VALUES (1, 1, 1, 'open', 1, 'latest', '[]', :no, '',"
                " :at, 0)"
            ),
            (
                "INSERT INTO batches (id, round_id, number, digest, name, format, mapping, notes,"
                " unreadable, new, edited, unchanged, size, copied_at, handed_in, handed_in_by)"
                " VALUES (1, 1, 1, 'd', 'n', 'table', '{}', '[]', '[]', 5, 0, 0, 9, :at, :at, 'me')"
            ),
        ):
            connection.execute(text(statement), {"at": at, "no": False})
        for key, source_id, _ in COMMENTS:
            connection.execute(
                text(
                    "INSERT INTO comments (round_id, batch_id, key, author, source_id, place,"
                    " posted_earliest, posted_latest) VALUES (1, 1, :key, 'Tove', :id, '', :at, :at)"
                ),
                {"key": key, "id": source_id, "at": at},
            )
    engine.dispose()
    upgrade(empty_settings)
    engine = make_engine(empty_settings)
    with engine.connect() as connection:
        kept = connection.execute(text("SELECT key, source_id, id_later FROM comments ORDER BY id"))
        assert [(key, source_id, bool(later)) for key, source_id, later in kept] == COMMENTS
    engine.dispose()
