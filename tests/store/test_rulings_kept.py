"""Rulings and picks: added with a reason, never changed, the last one holds."""

from __future__ import annotations

from dataclasses import replace

import pytest

from service.comments.spans import Span
from service.counting.round import Ruling, TieBreak
from service.errors import (
    BadRules,
    BadRuling,
    NotFound,
    WrongState,
)
from service.store.counting import count_stored
from service.store.database import Database
from service.store.round_rules import DraftRules
from service.store.rulings import rule_on_comment
from tests.store.handing_in import OPENS, after, comment, delivery, handed_in, open_first_round
from tests.store.playing import (
    announced,
    closed,
    found,
    kept,
    pick,
    rule,
)


def test_a_later_ruling_follows_and_both_are_kept(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Odd", "12 or 40")]))
    first = Ruling((12,), "named first", after(2))
    second = Ruling((40,), "she wrote me", after(3))
    rule(database, game, "12 or 40", first)
    rule(database, game, "12 or 40", second)
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    assert counted.comments[0].rulings == (first, second)
    assert counted.result.tally == ((40, 1),)


def test_a_ruling_that_waited_for_another_comes_after_it(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Odd", "12 or 40")]))
    rule(database, game, "12 or 40", Ruling((12,), "sent later, kept first", after(3)))
    rule(database, game, "12 or 40", Ruling((40,), "sent first, kept later", after(2)))
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    assert [one.at for one in counted.comments[0].rulings] == [after(3), after(3)]
    assert counted.result.tally == ((40, 1),)


def test_a_ruling_on_time_alone_is_kept_as_such(database: Database, game: str) -> None:
    open_first_round(database, game)
    unsure = replace(comment("Odd", "12"), posted=Span(after(-1), after(1)))
    handed_in(database, game, delivery([unsure]))
    rule(database, game, "12", Ruling((), "I saw it before", after(3), in_time=False))
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    assert counted.comments[0].rulings[0].in_time is False
    [aside] = counted.result.set_aside
    assert not aside.needs_look


BAD_RULINGS = [
    pytest.param(Ruling((64,), "so", OPENS), "not on the chart", id="a page off the chart"),
    pytest.param(Ruling((1, 2), "so", OPENS), "may choose", id="more pages than choices"),
    pytest.param(Ruling((1,), "  ", OPENS), "no reason", id="no reason"),
    pytest.param(Ruling((1,), "so", OPENS, withdraws=True), "both", id="a page and a withdrawal"),
]


@pytest.mark.parametrize(("ruling", "says"), BAD_RULINGS)
def test_a_ruling_that_cannot_be_is_refused(
    database: Database, game: str, ruling: Ruling, says: str
) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Odd", "12 or 40")]))
    with pytest.raises(BadRuling, match=says):
        rule(database, game, "12 or 40", ruling)
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    assert counted.comments[0].rulings == ()


@pytest.mark.parametrize("key", ["c0", "", "a\x00b", "../etc", "'; DROP TABLE comments"])
def test_a_ruling_on_no_comment_is_refused(database: Database, game: str, key: str) -> None:
    open_first_round(database, game)
    with pytest.raises(NotFound), database.writing() as session:
        rule_on_comment(session, *found(session, game), key, Ruling((), "so", OPENS))


def test_a_ruling_after_the_announcement_leaves_the_announced_result_as_it_is(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Odd", "12")]))
    closed(database, game)
    announced(database, game)
    before = kept(database, game).result
    rule(database, game, "12", Ruling((), "she asked me to", after(60)))
    assert kept(database, game).result == before
    with database.reading() as session:
        assert count_stored(session, *found(session, game)).result.winner is None


PICK: tuple[TieBreak, ...] = ("most joined edges", "host's pick")


def test_a_tie_waits_for_the_hosts_pick(database: Database, game: str) -> None:
    open_first_round(database, game, DraftRules(opens=OPENS, tie_breaks=PICK))
    handed_in(database, game, delivery([comment("Maren", "13"), comment("Tove", "21")]))
    with pytest.raises(WrongState, match="close it first"):
        pick(database, game, 21)
    closed(database, game)
    with pytest.raises(WrongState, match="pick one of the tied pages 13, 21 first"):
        announced(database, game)
    with pytest.raises(BadRuling, match="page 22 is not among the tied"):
        pick(database, game, 22)
    pick(database, game, 13)
    pick(database, game, 21)
    announced(database, game)
    result = kept(database, game).result
    assert result is not None
    assert result["winner"] == 21


def test_a_round_whose_rules_decide_takes_no_pick(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Maren", "13"), comment("Tove", "21")]))
    closed(database, game)
    with pytest.raises(BadRules, match="have no host's pick"):
        pick(database, game, 13)
