"""Forgetting: words, names and ids are gone from every byte; counts and records stay as they were."""

from __future__ import annotations

import json
from datetime import timedelta
from pathlib import Path
from random import Random
from typing import Any

import pytest
from sqlalchemy import text

from service.comments.formats import OpenExport
from service.counting.pseudonyms import FORGOTTEN
from service.settings import Settings
from service.store.backing_up import back_up
from service.store.batches import hand_in as hand_in_batch
from service.store.counting import question_of
from service.store.database import Database
from service.store.games import game_named
from service.store.readings_kept import VoteReader
from service.store.revisions import record_now
from service.store.rounds import round_numbered
from service.store.staging import staged
from tests.api.asking import PATH, ROUND, assert_problem, csv, done, everything_kept, make_game
from tests.api.conftest import Service, running
from tests.conftest import Clock
from tests.store.conftest import NOW
from tests.store.handing_in import comment, delivered, delivery
from tests.store.test_moving import say_nothing

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


def test_nothing_of_a_forgotten_voter_is_left_and_the_count_is_the_same(
    either_service: Service, tmp_path: Path
) -> None:
    service = either_service
    play(service)
    assert traces(*files_of(service)) == set(TRACES)
    before = (record_of(service), guesses_of(service), done(service.viewer.get(f"{ROUND}/result")))
    assert forget(service, "wilhelmina  QUILTBIRD") == {
        "comments": 3,
        "rounds": [1],
        "wiped": True,
    }
    assert traces(*everything_kept(service).values()) == set()
    assert traces(*files_of(service)) == set()
    backup = back_up(service.app.state.wiring.settings, tmp_path, NOW, say_nothing)
    assert traces(*(file.read_bytes() for file in backup.folder.iterdir())) == set()
    after = (record_of(service), guesses_of(service), done(service.viewer.get(f"{ROUND}/result")))
    assert after == before
    shown = [one for one in comments(service) if not one["author"]]
    assert [(one["text"], one["cause"]) for one in shown] == [
        ("", "chooses no page"),
        ("", "another ballot stands"),
        ("", None),
    ]
    told = [service.host.get(path).text for path in (f"{PATH}/prize", f"{PATH}/guesses")]
    assert "a viewer who asked to be forgotten" in told[0]
    assert traces(*(one.encode() for one in told)) == set()


def test_a_forgotten_comment_does_not_come_back(either_service: Service) -> None:
    service = either_service
    play(service)
    forget(service, "user-7731")
    before = record_of(service)
    everybody_else = "Left out: 3 comments that were forgotten on request."
    again = hand_in(service, FIRST + "\n", "2026-03-01T19:50:00Z", complete="true")
    assert everybody_else in again["notes"]
    by_name = csv(("Wilhelmina Quiltbird", "2026-03-01T19:00:00Z", "13 please, zanzibar"))
    assert hand_in(service, by_name, "2026-03-01T19:51:00Z")["new"] == 0
    new = export(("post-9", "user-7731", "W. Q.", "19:59:00", "31, peppercorn"))
    assert hand_in(service, new, "2026-03-01T19:59:30Z")["new"] == 0
    assert traces(*everything_kept(service).values()) == set()
    assert len(comments(service)) == 8
    hidden = {one["key"] for one in comments(service) if not one["author"]}
    assert len(hidden) == 3
    # Of the others only Una's and Ida's are not in the complete export: they were deleted.
    assert record_of(service) != before
    gone = [one["author"] for one in comments(service) if "deleted" in one["reading"]["why"]]
    assert gone == ["Una", "Ida"]


def test_somebody_else_of_the_name_goes_on(service: Service) -> None:
    play(service)
    other = export(("post-10", "user-10", "Wilhelmina Quiltbird", "19:27:00", "40"))
    assert hand_in(service, other, "2026-03-01T19:42:00Z")["new"] == 1
    answer = service.host.post(f"{PATH}/forgotten/voters", {"voter": "Wilhelmina Quiltbird"})
    assert_problem(answer, 422, "2 voters have the name .* give the author's id")
    assert forget(service, "user-7731")["comments"] == 3
    more = export(("post-11", "user-10", "Wilhelmina Quiltbird", "19:28:00", "41"))
    assert hand_in(service, more, "2026-03-01T19:43:00Z")["new"] == 1
    [kept] = [one for one in comments(service) if one["text"] == "40"]
    assert kept["author"] == "Wilhelmina Quiltbird"


def test_who_was_forgotten_takes_part_in_later_rounds(service: Service) -> None:
    play(service)
    forget(service, "user-7731")
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{PATH}/rounds/2/open"))
    service.clock.go_on(hours=1)
    new = export(("post-12", "user-7731", "Wilhelmina Quiltbird", "20:30:00", "13"))
    path = f"{PATH}/rounds/2/batches"
    assert done(service.host.hand_in(path, new), 201)["new"] == 1
    answer = service.host.get(f"{PATH}/rounds/2/receipts", voter="user-7731")
    assert done(answer)[0]["pages"] == [13]
    assert forget(service, "user-7731") == {"comments": 1, "rounds": [2], "wiped": True}


def test_a_receipt_finds_nobody_who_was_forgotten(service: Service) -> None:
    play(service)
    forget(service, "user-7731")
    answer = service.host.get(f"{ROUND}/receipts", voter="Wilhelmina Quiltbird")
    assert_problem(answer, 404, "there is no voter")


def test_forgetting_twice_does_no_harm(service: Service) -> None:
    play(service)
    forget(service, "user-7731")
    before = everything_kept(service)
    assert forget(service, "user-7731") == {"comments": 0, "rounds": [], "wiped": True}
    after = everything_kept(service)
    # Both note that they had the game and its rounds for themselves.
    assert {name for name in after if after[name] != before[name]} == {"games", "rounds"}


@pytest.mark.parametrize(
    ("who", "status", "says"),
    [("Nobody Known", 404, "there is no voter"), ("island guild", 422, "the host's own name")],
)
def test_who_cannot_be_forgotten_is_told_why(
    service: Service, who: str, status: int, says: str
) -> None:
    play(service)
    own = export(("post-20", "user-20", "Island Guild", "19:29:00", "13 would be mine"))
    hand_in(service, own, "2026-03-01T19:42:00Z")
    before = everything_kept(service)
    answer = service.host.post(f"{PATH}/forgotten/voters", {"voter": who})
    assert_problem(answer, status, says)
    assert everything_kept(service) == before


def test_a_whole_game_is_forgotten_after_its_end(either_service: Service) -> None:
    service = either_service
    host = service.host
    play(service)
    own = export(("post-20", "user-20", "Island Guild", "19:29:00", "13 would be mine"))
    hand_in(service, own, "2026-03-01T19:42:00Z")
    path = f"{PATH}/forgotten/everybody"
    assert_problem(host.post(path), 409, "reveal the answer first")
    done(host.post(f"{PATH}/mystery/reveal"))
    before = (record_of(service), guesses_of(service))
    assert done(host.post(path))["comments"] == 9
    assert (record_of(service), guesses_of(service)) == before
    rows = everything_kept(service)
    assert traces(*rows.values(), *files_of(service)) == set()
    kept = repr([rows[name] for name in ("comments", "versions", "rulings", "winners", "batches")])
    assert [name for name in ("Tove", "Ebbe", "Odd", "Una", "Ida", "post-") if name in kept] == []
    assert_problem(
        host.hand_in(f"{ROUND}/batches", FIRST + "\n\n"), 409, "forgotten and cannot be given"
    )
    assert done(host.post(path))["comments"] == 0


def test_an_open_game_is_not_forgotten_as_a_whole(service: Service) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    path = f"{PATH}/forgotten/everybody"
    assert_problem(service.host.post(path), 409, "announce round 1 first")


def test_a_file_that_is_read_meanwhile_is_wiped_when_asked_again(sqlite: Settings) -> None:
    hasty = sqlite.model_copy(update={"database_wait": 0.3})
    with running(hasty, Clock()) as service:
        play(service)
        database: Database = service.app.state.wiring.database
        with database.reading() as session:
            session.connection().execute(text("SELECT count(*) FROM comments")).scalar()
            assert forget(service, "user-7731")["wiped"] is False
        assert forget(service, "user-7731") == {"comments": 0, "rounds": [], "wiped": True}
        assert traces(*files_of(service)) == set()


@pytest.mark.parametrize("form", ["csv", "json"])
def test_nobody_can_be_called_as_one_who_was_forgotten(service: Service, form: str) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    called = f"{FORGOTTEN}{'ab' * 32}"
    row = {"id": "1", "author_id": called, "author": called, "text": "13"}
    row["posted"] = "2026-03-01T19:00:00Z"
    content = json.dumps([row]) if form == "json" else csv_of(row)
    done(service.host.hand_in(f"{ROUND}/batches", content, f"comments.{form}"), 201)
    [one] = comments(service)
    assert (one["author"], one["text"], one["pages"]) == (called.strip(), "13", [13])
    [receipt] = done(service.host.get(f"{ROUND}/receipts", voter=called.strip()))
    assert receipt["voter"] == called.strip()


def test_who_has_no_name_is_forgotten_by_the_comment(service: Service) -> None:
    play(service)
    nameless = "posted,text\n2026-03-01T19:05:00Z,marmalade 31 from nobody\n"
    hand_in(service, nameless, "2026-03-01T19:42:00Z")
    [key] = [one["key"] for one in comments(service) if "from nobody" in one["text"]]
    assert forget(service, f"unnamed {key}")["comments"] == 1
    assert hand_in(service, nameless + "\n", "2026-03-01T19:43:00Z")["new"] == 0
    assert "from nobody" not in repr(everything_kept(service))


def test_an_export_that_was_read_already_brings_nobody_back(either_service: Service) -> None:
    """Read before the forgetting, kept after it: reading is done before the round is taken."""
    service = either_service
    play(service)
    database: Database = service.app.state.wiring.database
    again = comment("Wilhelmina Quiltbird", "zanzibar 13, once more", 1, id="post-4401")
    handed = delivery([again], copied=2)
    with database.reading() as session:
        game = game_named(session, "windy-island")
        question = question_of(game, round_numbered(session, game, 1))
    with staged(OpenExport.of(handed.export), VoteReader(question)) as read:
        forget(service, "user-7731")
        with database.writing() as session:
            row = round_numbered(session, game_named(session, "windy-island"), 1)
            assert hand_in_batch(session, row, delivered(handed, read)).new == 0
    assert traces(*everything_kept(service).values()) == set()


def csv_of(row: dict[str, str]) -> str:
    cells = [",".join(row), ",".join(f'"{cell}"' for cell in row.values())]
    return "\n".join(cells) + "\n"


def test_a_voter_who_is_forgotten_while_the_round_is_open_keeps_one_ballot(
    service: Service,
) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.now += timedelta(hours=2)
    hand_in(service, FIRST, "2026-03-01T19:30:00Z")
    before = done(service.host.get(f"{ROUND}/tally"))
    forget(service, "user-7731")
    hand_in(service, FIRST + "\n", "2026-03-01T19:45:00Z")
    after = done(service.host.get(f"{ROUND}/tally"))
    assert after["tally"] == before["tally"]
    assert [one["key"] for one in after["looks"]] == [one["key"] for one in before["looks"]]


WORDS = ("13", "22 please", "14 or 15", "so nice", "not 13 any more", f"it is {TITLE}", "13 and 22")


@pytest.mark.parametrize("seed", range(12))
def test_whoever_is_forgotten_no_record_changes(service: Service, seed: int) -> None:
    """Times that are the same, ties that are drawn, edits: what is left counts as the words did."""
    chance = Random(seed)  # noqa: S311 - a test's own
    make_game(service.host, guesses_per_voter=1)
    done(service.host.post(f"{PATH}/rounds", {"tie_breaks": ["draw"]}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    names = [f"Voter {number}" for number in range(6)]
    for batch in range(2):
        rows = [
            (f"post-{n}", f"id {who}" if n % 2 else "", who, f"19:{chance.choice('01')}0:00", words)
            for n in range(12)
            for who, words in [(names[n % 6], chance.choice(WORDS))]
        ]
        copied = f"2026-03-01T19:{30 + 10 * batch}:00Z"
        hand_in(service, export(*rows), copied, complete=chance.choice(("true", "false")))
    before = (record_of(service), guesses_of(service))
    for who in chance.sample(names, 3):
        forget(service, who)
        assert (record_of(service), guesses_of(service)) == before
