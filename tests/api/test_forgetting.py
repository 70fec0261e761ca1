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
from service.store import cleaning
from service.store.backing_up import back_up
from service.store.batches import hand_in as hand_in_batch
from service.store.counting import question_of
from service.store.database import Database
from service.store.games import game_named
from service.store.readings_kept import VoteReader
from service.store.rereading import read_anew
from service.store.rounds import round_numbered
from service.store.staging import staged
from tests.api.asking import PATH, ROUND, assert_problem, csv, done, everything_kept, make_game
from tests.api.conftest import Service, running
from tests.api.forgetting import (
    FIRST,
    TITLE,
    TRACES,
    comments,
    export,
    files_of,
    forget,
    guesses_of,
    hand_in,
    overwrite_nothing,
    play,
    record_of,
    traces,
)
from tests.conftest import Clock
from tests.store.conftest import NOW
from tests.store.handing_in import comment, delivered, delivery
from tests.store.test_moving import say_nothing

Json = Any


def test_nothing_of_a_forgotten_voter_is_left_and_the_count_is_the_same(
    either_service: Service, tmp_path: Path
) -> None:
    service = either_service
    overwrite_nothing(service)
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


@pytest.mark.postgres
def test_what_another_may_still_see_is_not_told_to_be_wiped(
    postgres: Settings, monkeypatch: pytest.MonkeyPatch
) -> None:
    with running(postgres, Clock()) as service:
        play(service)
        engine = service.app.state.wiring.database.engine
        with engine.connect().execution_options(isolation_level="REPEATABLE READ") as other:
            other.execute(text("SELECT 1")).scalar()  # sees one moment from now on, locks nothing
            with monkeypatch.context() as patch:
                patch.setattr(cleaning, "_TRIES", 2)
                assert forget(service, "user-7731")["wiped"] is False
        assert forget(service, "user-7731")["wiped"] is True
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
    # A later version reads the words that are left anew.
    database: Database = service.app.state.wiring.database
    with database.writing() as session:
        row = round_numbered(session, game_named(session, "windy-island"), 1)
        row.read_by = "an earlier reader"
        session.add(row)
    assert (record_of(service), guesses_of(service)) == before
    with database.writing() as session:
        game = game_named(session, "windy-island")
        row = round_numbered(session, game, 1)
        read_anew(session, row, VoteReader(question_of(game, row)))
    assert (record_of(service), guesses_of(service)) == before
