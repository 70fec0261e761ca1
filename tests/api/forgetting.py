"""A game with a voter who is to be forgotten, and the search for what is left of her."""

from __future__ import annotations

from typing import Any

from sqlalchemy import event, text

from service.store.database import Database
from service.store.games import game_named
from service.store.revisions import record_now
from service.store.rounds import round_numbered
from tests.api.asking import PATH, ROUND, done, make_game
from tests.api.conftest import Service
from tests.store.conftest import NOW

Json = Any
TITLE = "The Tarnished Astrolabe of Skerrymouth"
#: What nobody may find any more of Wilhelmina, once she is forgotten.
TRACES = (
    "wilhelmina",
    "quiltbird",
    "user-7731",
    "post-4401",
    "zanzibar",
    "peppercorn",
    "marmalade",
)


def export(*rows: tuple[str, str, str, str, str], answers: str = "") -> str:
    lines = ["id,author_id,author,posted,text,reply_to"]
    lines += [f'{a},{b},"{c}",2026-03-01T{d}Z,"{e}",{answers}' for a, b, c, d, e in rows]
    return "\n".join(lines) + "\n"


FIRST = export(
    ("post-4401", "user-7731", "Wilhelmina Quiltbird", "19:00:00", "13 please, zanzibar"),
    ("post-2", "user-2", "Tove", "19:00:00", "22"),
    ("post-3", "user-3", "Ebbe", "19:00:00", f"Is it {TITLE}? 22"),
    ("post-4", "user-7731", "Wilhelmina Quiltbird", "19:10:00", f"peppercorn! it is {TITLE}"),
    ("post-5", "user-7731", "Wilhelmina Quiltbird", "19:20:00", "page 14 or 15, marmalade"),
    ("post-6", "user-6", "Odd", "19:20:00", "so many pages"),
)
LATER = export(
    ("post-4401", "user-7731", "Wilhelmina Quiltbird", "19:00:00", "14 please, not zanzibar"),
    ("post-7", "user-7", "Una", "19:25:00", "14"),
)
ANSWERS = export(("post-8", "user-8", "Ida", "19:26:00", "so do I, 14"), answers="post-4401")


def play(service: Service) -> None:
    """Round 1, closed and announced, with an edit, a ruling, a winner and a prize."""
    host = service.host
    make_game(host)
    done(host.put(f"{PATH}/prize", {"offer": "a skein", "choose_from": "", "claim_days": 14}))
    done(host.post(f"{PATH}/rounds", {"tie_breaks": ["reached first", "lowest number"]}), 201)
    done(host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    hand_in(service, FIRST, "2026-03-01T19:30:00Z")
    hand_in(service, LATER, "2026-03-01T19:40:00Z")
    hand_in(service, ANSWERS, "2026-03-01T19:41:00Z")
    done(host.post(f"{ROUND}/close"))
    rule(service, "marmalade", {"pages": [14], "reason": "Wilhelmina told me marmalade is 14"})
    done(host.post(f"{ROUND}/announce"))
    rule_on_guess(service, "peppercorn", {"outcome": "right", "reason": "peppercorn is no guess"})
    rule_on_guess(service, TITLE, {"outcome": "wrong", "reason": "she took it back"}, "Ebbe")
    done(host.post(f"{PATH}/guesses/winner"), 201)
    done(host.post(f"{PATH}/prize/asked-for", {"asked_for": "marmalade thread"}))


def hand_in(service: Service, content: str, copied: str, **more: str) -> Json:
    answer = service.host.hand_in(f"{ROUND}/batches", content, copied_at=copied, **more)
    return done(answer, 201)


def comments(service: Service) -> list[Json]:
    return list(done(service.host.get(f"{ROUND}/comments")))


def rule(service: Service, words: str, body: Json) -> None:
    [key] = [one["key"] for one in comments(service) if words in one["text"]]
    done(service.host.post(f"{ROUND}/comments/{key}/rulings", body), 201)


def rule_on_guess(service: Service, words: str, body: Json, author: str = "Wil") -> None:
    found = done(service.host.get(f"{PATH}/guesses"))["guesses"]
    [key] = [o["key"] for o in found if words in o["text"] and o["author"].startswith(author)]
    done(service.host.post(f"{PATH}/guesses/{key}/rulings", body), 201)


def forget(service: Service, who: str) -> Json:
    return done(service.host.post(f"{PATH}/forgotten/voters", {"voter": who}))


def record_of(service: Service) -> str:
    """What the record would be if the round were counted again now."""
    database: Database = service.app.state.wiring.database
    with database.reading() as session:
        game = game_named(session, "windy-island")
        row = round_numbered(session, game, 1)
        return record_now(session, game, row, ("again", NOW))[1].text


def guesses_of(service: Service) -> list[tuple[Any, ...]]:
    found = done(service.host.get(f"{PATH}/guesses"))
    first = found["first"] and found["first"]["key"]
    return [(first, one["key"], one["outcome"], one["standing"]) for one in found["guesses"]]


def traces(*where: Any) -> set[str]:
    """The traces found in bytes, or in what is printed of rows."""
    told = b"".join(one if isinstance(one, bytes) else repr(one).encode() for one in where).lower()
    return {trace for trace in TRACES if trace.encode() in told}


def files_of(service: Service) -> list[bytes]:
    """Every byte that the database keeps: of SQLite its files, of PostgreSQL those of its tables."""
    settings = service.app.state.wiring.settings
    if settings.database.get_backend_name() == "sqlite":
        return [file.read_bytes() for file in sorted(settings.data_folder.glob("loopstart*"))]
    engine = service.app.state.wiring.database.engine
    with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        connection.execute(text("CHECKPOINT"))
        asked = (
            "SELECT pg_read_binary_file(pg_relation_filepath(c.oid)) FROM pg_class c "
            "WHERE c.relkind IN ('r', 'i', 't') AND c.relfilenode <> 0 AND "
            "(c.relnamespace IN ('public'::regnamespace, 'pg_toast'::regnamespace)"
            " OR c.relname = 'pg_statistic')"
        )
        return [bytes(row[0]) for row in connection.execute(text(asked))]


def overwrite_nothing(service: Service) -> None:
    """Have SQLite leave what is deleted where it is: some systems' own wipes it, most do not."""
    engine = service.app.state.wiring.database.engine
    if engine.dialect.name == "sqlite":
        event.listen(
            engine, "connect", lambda made, _: made.execute("PRAGMA secure_delete = OFF").close()
        )
        engine.dispose()
