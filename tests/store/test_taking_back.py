"""A batch taken back: its comments are as if they had never come, and it can be seen that it was."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import Session

from service.counting.round import Ruling
from service.errors import NotFound, WrongState
from service.store.announcing import announce_round
from service.store.batches import some_batches
from service.store.columns import id_of
from service.store.comment_index import index_of
from service.store.comments import known_comments
from service.store.counting import count_stored
from service.store.database import Database
from service.store.deleted import completes
from service.store.games import game_named
from service.store.rounds import close_round, round_numbered
from service.store.rulings import rule_on_comment
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import BatchRow, GuessRulingRow
from service.store.taking_back import take_back
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round

MAREN = comment("Maren", "13 please", 1, id="m1")
TOVE = comment("Tove", "page 21", 2, id="t1")
#: Handed in with the columns of names and of words mixed up.
MIXED = [comment("40 for me", "Bryn", 3), comment("page 9", "Odd", 4)]
WHY = "names and words were mixed up"
NOW = datetime(2026, 3, 3, 12, 0, tzinfo=UTC)


def taken_back(database: Database, game: str, number: int) -> BatchRow:
    with database.writing() as session:
        found = game_named(session, game)
        row = round_numbered(session, found, 1)
        return take_back(session, found, row, number, (WHY, NOW))


def found(
    database: Database, game: str, ask: Callable[[Session, GameRow, RoundRow], object]
) -> object:
    with database.reading() as session:
        row = game_named(session, game)
        return ask(session, row, round_numbered(session, row, 1))


def words(database: Database, game: str) -> object:
    return found(
        database, game, lambda s, _, row: sorted(one.comment.text for one in known_comments(s, row))
    )


def tally(database: Database, game: str) -> object:
    return found(database, game, lambda s, g, row: sorted(count_stored(s, g, row, 10).result.tally))


def test_its_comments_count_no_more_and_it_stays_in_the_list(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN, TOVE]))
    before = words(database, game), tally(database, game)
    handed_in(database, game, delivery([*MIXED, comment("Ida", "13", 5)], copied=25))
    assert (words(database, game), tally(database, game)) != before
    batch = taken_back(database, game, 2)
    assert (batch.taken_back, batch.why_taken_back) == (NOW, WHY)
    assert (words(database, game), tally(database, game)) == before
    listed = found(
        database,
        game,
        lambda s, _, row: (
            [one.number for one in some_batches(s, row, 9) if one.taken_back is None],
            [(one.number, one.why_taken_back) for one in some_batches(s, row, 9)],
        ),
    )
    assert listed == ([1], [(1, ""), (2, WHY)])


def test_the_same_bytes_can_be_handed_in_again_and_taken_back_again(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    for number in (1, 2):
        report = handed_in(database, game, delivery([MAREN, TOVE]))
        assert (report.batch.number, report.new, report.repeated) == (number, 2, False)
        taken_back(database, game, number)
        assert words(database, game) == []
    handed_in(database, game, delivery([MAREN, TOVE]))
    assert tally(database, game) == [(13, 1), (21, 1)]


def test_the_desks_list_forgets_it_at_once(database: Database, game: str) -> None:
    """The next comments may get the numbers in the database that these had."""
    open_first_round(database, game)

    def many(session: Session, game_row: GameRow, row: RoundRow) -> int:
        return index_of(session, game_row, row).many("all")

    handed_in(database, game, delivery(MIXED))
    assert found(database, game, many) == 2
    taken_back(database, game, 1)
    assert found(database, game, many) == 0
    handed_in(database, game, delivery([MAREN]))
    assert found(database, game, many) == 1


def test_what_it_showed_as_deleted_is_deleted_no_more(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN], copied=10))
    report = handed_in(database, game, delivery([TOVE], copied=20, complete=True))
    assert report.gone == 1
    assert found(database, game, lambda s, _, row: completes(s, row)) == [after(20)]
    taken_back(database, game, 2)
    assert found(database, game, lambda s, _, row: completes(s, row)) == []
    assert tally(database, game) == [(13, 1)]


@pytest.mark.parametrize("later", [[TOVE, MAREN], [comment("Tove", "rather 22", 2, id="t1")]])
def test_one_that_shows_comments_of_an_earlier_one_stays(
    database: Database, game: str, later: list[object]
) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([TOVE], copied=10))
    handed_in(database, game, delivery(later, copied=20))  # type: ignore[arg-type]
    before = words(database, game)
    with pytest.raises(WrongState, match=r"batch 2 of round 1 is joined to a comment of earlier"):
        taken_back(database, game, 2)
    assert words(database, game) == before


def test_only_the_last_one_goes(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN]))
    handed_in(database, game, delivery([TOVE]))
    with pytest.raises(WrongState, match=r"followed by batch 2 .* take batch 2 back first"):
        taken_back(database, game, 1)
    taken_back(database, game, 2)
    with pytest.raises(WrongState, match=r"batch 2 of round 1 is taken back already"):
        taken_back(database, game, 2)
    taken_back(database, game, 1)
    with pytest.raises(NotFound, match="batch '3'"):
        taken_back(database, game, 3)


def test_no_ruling_is_lost_with_it(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN]))
    with database.writing() as session:
        row = game_named(session, game)
        of_round = round_numbered(session, row, 1)
        key = next(iter(known_comments(session, of_round))).key
        rule_on_comment(session, row, of_round, key, Ruling((14,), "read", NOW))
    with pytest.raises(WrongState, match="ruled on in part"):
        taken_back(database, game, 1)
    assert tally(database, game) == [(14, 1)]


def test_no_ruling_on_a_guess_is_lost_with_it(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN]))
    with database.writing() as session:
        row = game_named(session, game)
        key = next(iter(known_comments(session, round_numbered(session, row, 1)))).key
        session.add(GuessRulingRow(game_id=id_of(row), key=key, reason="read", at=NOW))
    with pytest.raises(WrongState, match="ruled on in part"):
        taken_back(database, game, 1)


def test_an_announced_round_keeps_its_batches(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN]))
    with database.writing() as session:
        row = game_named(session, game)
        of_round = round_numbered(session, row, 1)
        close_round(session, of_round, after(24), NOW)
        announce_round(session, row, of_round, keeps_in_hand=False, now=NOW)
    with pytest.raises(WrongState, match=r"round 1 is announced .* announce a new revision"):
        taken_back(database, game, 1)
