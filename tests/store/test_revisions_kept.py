"""Announced results as revisions: with a record, never changed, followed only with a reason."""

from __future__ import annotations

import json
from typing import Any

import pytest
from verifying.report import check

from service.counting.round import Ruling, TieBreak
from service.errors import BadRules, NotFound, WrongState
from service.mystery.answer import Answer
from service.store.announcing import revise_round
from service.store.answers import seal_answer
from service.store.database import Database
from service.store.games import change_game, game_named, page_states
from service.store.revisions import record_text, revision_numbered, revisions_of
from service.store.round_rules import DraftRules
from service.store.tables_counting import RevisionRow
from tests.store.handing_in import OPENS, after, comment, delivery, handed_in, open_first_round
from tests.store.playing import announced, closed, found, kept, key_of, pick, rule

Json = dict[str, Any]
FIRST = [comment("Maren", "13"), comment("Tove", "13"), comment("Odd", "3")]
LATE = [comment("Liv", "3", 2), comment("Rakul", "3", 3), comment("Gunnar", "3", 4)]


def announced_round(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery(FIRST))
    closed(database, game)
    announced(database, game)


def revised(
    database: Database, game: str, reason: str = "a second export", number: int = 1
) -> None:
    with database.writing() as session:
        revise_round(session, *found(session, game, number), reason, after(60))


def revisions(database: Database, game: str, number: int = 1) -> list[RevisionRow]:
    with database.reading() as session:
        told = list(revisions_of(session, found(session, game, number)[1]))
        for one in told:
            session.refresh(one, ["record"])  # it is read only where it is looked at
        return told


def record(revision: RevisionRow) -> Json:
    told: Json = json.loads(revision.record or "")
    return told


def test_what_waited_for_a_closing_or_a_revision_comes_after_it(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery(FIRST))
    closed(database, game, hours=55)
    announced(database, game)  # five hours before, by its own time
    handed_in(database, game, delivery(LATE))
    with database.writing() as session:
        revise_round(session, *found(session, game), "a second export", after(51))
    assert [one.announced for one in revisions(database, game)] == [after(55), after(55)]
    for one in revisions(database, game):
        assert check(record(one), one.digest).fits


def test_the_first_announcement_is_the_first_revision_and_its_record_verifies(
    database: Database, game: str
) -> None:
    announced_round(database, game)
    [first] = revisions(database, game)
    assert (first.number, first.reason, first.announced) == (1, None, after(50))
    told = record(first)
    assert check(told, first.digest).fits
    assert told["result"]["winner"] == 13
    assert first.digest in first.result["announcement"]


def test_a_late_export_makes_a_new_revision_and_the_old_one_stays(
    database: Database, game: str
) -> None:
    announced_round(database, game)
    [before] = revisions(database, game)
    handed_in(database, game, delivery(LATE))
    assert kept(database, game).result == before.result
    revised(database, game)
    first, second = revisions(database, game)
    assert (first.record, first.result, first.digest) == (
        before.record,
        before.result,
        before.digest,
    )
    assert (second.number, second.reason, second.result["winner"]) == (2, "a second export", 3)
    assert kept(database, game).result == second.result
    told = record(second)
    assert check(told, second.digest).fits
    assert told["revision"]["before"] == first.digest
    assert told["salt"] == record(first)["salt"]


def test_a_changed_ruling_makes_a_new_revision(database: Database, game: str) -> None:
    announced_round(database, game)
    with database.reading() as session:
        texts = [one.text for one in FIRST]
        assert texts.count("3") == 1
        assert found(session, game)[1].state == "announced"
    rule(database, game, "3", Ruling((13,), "she meant the other page", after(55)))
    revised(database, game, "asked her")
    assert [one.result["tally"] for one in revisions(database, game)] == [
        [{"page": 13, "votes": 2}, {"page": 3, "votes": 1}],
        [{"page": 13, "votes": 3}],
    ]
    rulings = [one["rulings"] for one in record(revisions(database, game)[1])["comments"]]
    assert [len(some) for some in rulings].count(1) == 1


def test_a_revision_changes_no_page_s_state(database: Database, game: str) -> None:
    announced_round(database, game)
    handed_in(database, game, delivery(LATE))
    revised(database, game)
    with database.reading() as session:
        assert page_states(session, game_named(session, game)).in_hand == (13,)


def test_the_same_count_is_no_new_revision(database: Database, game: str) -> None:
    announced_round(database, game)
    with pytest.raises(WrongState, match="its count is the same as before"):
        revised(database, game)
    with database.writing() as session:
        change_game(session, game_named(session, game), {"name": "Another name"})
    with pytest.raises(WrongState, match="its count is the same as before"):
        revised(database, game)


@pytest.mark.parametrize("reason", ["", "  "])
def test_a_revision_needs_a_reason(database: Database, game: str, reason: str) -> None:
    announced_round(database, game)
    handed_in(database, game, delivery(LATE))
    with pytest.raises(BadRules, match="has no reason"):
        revised(database, game, reason)
    assert len(revisions(database, game)) == 1


def test_a_reason_that_gives_the_answer_away_is_refused(database: Database, game: str) -> None:
    with database.writing() as session:
        answer = Answer("The Tarnished Astrolabe", "Wenna Quarmby", ())
        seal_answer(session, game_named(session, game), answer, bytes(32), OPENS)
    announced_round(database, game)
    handed_in(database, game, delivery(LATE))
    with pytest.raises(BadRules, match="gives the sealed answer"):
        revised(database, game, "since the tarnished astrolabe has that page")


def test_only_an_announced_round_has_revisions(database: Database, game: str) -> None:
    open_first_round(database, game)
    with pytest.raises(WrongState, match="announce it first"):
        revised(database, game)
    assert revisions(database, game) == []


def test_a_look_that_could_change_the_winner_stops_a_revision(
    database: Database, game: str
) -> None:
    announced_round(database, game)
    handed_in(database, game, delivery([comment("Liv", "3 or 13", 2), comment("Jo", "3", 2)]))
    with pytest.raises(WrongState, match="rule on the comments that need a look"):
        revised(database, game)


def test_a_tie_that_a_recount_makes_takes_a_pick(database: Database, game: str) -> None:
    chain: tuple[TieBreak, ...] = ("host's pick",)
    open_first_round(database, game, DraftRules(opens=OPENS, tie_breaks=chain))
    handed_in(database, game, delivery(FIRST))
    closed(database, game)
    announced(database, game)
    handed_in(database, game, delivery(LATE[:1]))
    with pytest.raises(WrongState, match="pick one of the tied pages 3, 13 first"):
        revised(database, game)
    pick(database, game, 3)
    revised(database, game)
    assert [one.result["winner"] for one in revisions(database, game)] == [13, 3]


def test_a_revision_is_found_by_its_number_and_the_newest_without(
    database: Database, game: str
) -> None:
    announced_round(database, game)
    handed_in(database, game, delivery(LATE))
    revised(database, game)
    with database.reading() as session:
        row = found(session, game)[1]
        assert revision_numbered(session, row, None).number == 2
        assert record_text(session, row, 1).number == 1
        with pytest.raises(NotFound, match="its result has 2"):
            revision_numbered(session, row, 3)


def test_what_was_announced_before_records_can_be_counted_again(
    database: Database, game: str
) -> None:
    announced_round(database, game)
    with database.writing() as session:
        row = found(session, game)[1]
        [old] = revisions_of(session, row)
        old.record = old.digest = None
        row.salt = row.hosts = None
        session.add_all([old, row])
    with database.reading() as session, pytest.raises(NotFound, match="before records were kept"):
        record_text(session, found(session, game)[1], None)
    revised(database, game, "so that it has a record")
    second = revisions(database, game)[1]
    assert check(record(second), second.digest).troubles == ()
    assert record(second)["revision"]["before"] is None


def test_the_host_s_own_names_are_frozen_at_the_opening(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery(FIRST))
    with database.writing() as session:
        change_game(session, game_named(session, game), {"hosts": ["Maren", "Tove"]})
    closed(database, game)
    announced(database, game)
    result = kept(database, game).result
    assert result is not None
    assert (result["winner"], result["ballots"]) == (13, 3)


def test_the_key_of_a_comment_is_nowhere_in_a_record(database: Database, game: str) -> None:
    announced_round(database, game)
    [first] = revisions(database, game)
    assert key_of(database, game, "3") not in (first.record or "")
