"""Rounds: drafted, opened and closed, each once, and frozen where they must be."""

from __future__ import annotations

import threading
from dataclasses import replace

import pytest
from sqlalchemy.exc import IntegrityError
from sqlmodel import update

from service.errors import (
    BadRules,
    ClosesBeforeOpening,
    LoopstartError,
    NotFound,
    PageNotOnChart,
    WrongState,
)
from service.store.database import Database
from service.store.games import game_named, set_page
from service.store.opening import votable_now
from service.store.round_rules import DraftRules
from service.store.rounds import all_rounds, change_draft, rules_of
from service.store.tables import RoundRow
from tests.store.handing_in import OPENS, after, comment, delivery, handed_in, open_first_round
from tests.store.playing import (
    RULES,
    announced,
    closed,
    draft,
    found,
    kept,
    opened,
    put_page,
)


def test_rounds_are_numbered_from_one(database: Database, game: str) -> None:
    assert draft(database, game) == 1
    opened(database, game)
    assert draft(database, game) == 2


def test_a_draft_keeps_its_rules(database: Database, game: str) -> None:
    rules = DraftRules(OPENS, None, 2, "first", ("reached first", "host's pick"), 7)
    draft(database, game, rules)
    assert rules_of(kept(database, game)) == rules
    assert kept(database, game).state == "draft"


CANNOT_BE = [
    pytest.param(replace(RULES, choices=0), BadRules, "0 pages", id="no choice"),
    pytest.param(replace(RULES, choices=64), BadRules, "of 63", id="more choices than pages"),
    pytest.param(
        replace(RULES, tie_breaks=("coin",)),  # type: ignore[arg-type]
        BadRules,
        "'coin' is no tie-break",
        id="an unknown tie-break",
    ),
    pytest.param(replace(RULES, tie_breaks=()), BadRules, "is empty", id="no tie-break"),
    pytest.param(
        replace(RULES, tie_breaks=("lowest number", "reached first")),
        BadRules,
        "may leave a tie",
        id="a chain that may not decide",
    ),
    pytest.param(
        replace(RULES, tie_breaks=("lowest number", "lowest number")),
        BadRules,
        "twice",
        id="a tie-break twice",
    ),
    pytest.param(
        replace(RULES, standing="loudest"),  # type: ignore[arg-type]
        BadRules,
        "loudest",
        id="an unknown standing",
    ),
    pytest.param(replace(RULES, closes=OPENS), ClosesBeforeOpening, "not after", id="no time"),
    pytest.param(
        replace(RULES, closes=after(-1)), ClosesBeforeOpening, "not after", id="backwards"
    ),
    pytest.param(replace(RULES, previous=64), PageNotOnChart, "page 64", id="a page off the chart"),
]


@pytest.mark.parametrize(("rules", "error", "says"), CANNOT_BE)
def test_rules_that_cannot_be_are_refused(
    database: Database, game: str, rules: DraftRules, error: type[LoopstartError], says: str
) -> None:
    with pytest.raises(error, match=says):
        draft(database, game, rules)
    draft(database, game)
    with pytest.raises(error, match=says), database.writing() as session:
        change_draft(session, *found(session, game), rules)
    assert rules_of(kept(database, game)) == RULES


def test_a_second_draft_is_refused(database: Database, game: str) -> None:
    draft(database, game)
    with pytest.raises(WrongState, match="round 1 is a draft and cannot be followed by another"):
        draft(database, game)


def test_a_draft_can_be_changed_and_an_open_round_cannot(database: Database, game: str) -> None:
    draft(database, game)
    other = replace(RULES, choices=3)
    with database.writing() as session:
        change_draft(session, *found(session, game), other)
    assert rules_of(kept(database, game)) == other
    opened(database, game)
    with pytest.raises(WrongState, match="frozen"), database.writing() as session:
        change_draft(session, *found(session, game), RULES)
    assert rules_of(kept(database, game)) == other


def test_opening_freezes_the_votable_pages(database: Database, game: str) -> None:
    """On 9 x 7 pages by rows, page 12 touches 3, 11, 13 and 21; 13 is stitched already."""
    put_page(database, game, 13, "stitched")
    put_page(database, game, 12, "in hand")
    draft(database, game)
    opened(database, game)
    put_page(database, game, 13, "unstitched")
    row = kept(database, game)
    assert (row.votable, row.stitched, row.previous) == ([3, 11, 21], [12, 13], 12)
    assert not row.widened


def test_round_one_of_a_bare_chart_lets_all_pages_be_chosen(database: Database, game: str) -> None:
    draft(database, game)
    opened(database, game)
    assert kept(database, game).votable == list(range(1, 64))


def test_the_page_put_in_hand_last_is_the_one_before(database: Database, game: str) -> None:
    put_page(database, game, 40, "in hand", hours=-5)
    put_page(database, game, 12, "in hand", hours=-3)
    put_page(database, game, 30, "in hand", hours=-4)
    draft(database, game)
    opened(database, game)
    assert kept(database, game).previous == 12


def test_the_host_may_say_which_page_was_chosen_last(database: Database, game: str) -> None:
    put_page(database, game, 12, "in hand")
    put_page(database, game, 1, "stitched")
    draft(database, game, replace(RULES, previous=1))
    opened(database, game)
    assert kept(database, game).votable == [2, 10]


def test_a_draft_shows_what_it_would_freeze(database: Database, game: str) -> None:
    put_page(database, game, 1, "in hand")
    draft(database, game)
    with database.reading() as session:
        votable, previous = votable_now(session, *found(session, game))
    assert (votable.pages, previous) == (frozenset({2, 10}), 1)


def test_a_chart_without_a_page_left_opens_no_round(database: Database, game: str) -> None:
    with database.writing() as session:
        for page in range(1, 64):
            set_page(session, game_named(session, game), page, "stitched", OPENS)
    draft(database, game)
    with pytest.raises(WrongState, match="there is none left to choose"):
        opened(database, game)
    assert kept(database, game).state == "draft"


def test_a_round_without_an_opening_opens_now(database: Database, game: str) -> None:
    draft(database, game, DraftRules())
    opened(database, game, now=after(3))
    assert (kept(database, game).opens, kept(database, game).opened) == (after(3), after(3))


def test_a_round_whose_closing_has_passed_is_not_opened_now(database: Database, game: str) -> None:
    draft(database, game, DraftRules(closes=after(2)))
    with pytest.raises(ClosesBeforeOpening):
        opened(database, game, now=after(3))
    assert kept(database, game).state == "draft"


def test_a_round_is_opened_once(database: Database, game: str) -> None:
    draft(database, game)
    opened(database, game)
    with pytest.raises(WrongState, match="round 1 is open and cannot be opened"):
        opened(database, game, now=after(1))
    assert kept(database, game).opened == OPENS


def test_a_round_opened_by_two_at_once_is_opened_once(database: Database, game: str) -> None:
    draft(database, game)
    told: list[str] = []
    start = threading.Barrier(2)

    def try_to_open() -> None:
        start.wait()
        try:
            opened(database, game)
        except WrongState:
            told.append("refused")
        else:
            told.append("opened")

    both = [threading.Thread(target=try_to_open) for _ in range(2)]
    for one in both:
        one.start()
    for one in both:
        one.join()
    assert sorted(told) == ["opened", "refused"]


def test_the_next_round_waits_for_the_announcement(database: Database, game: str) -> None:
    draft(database, game)
    opened(database, game)
    draft(database, game, DraftRules())
    with pytest.raises(WrongState, match="round 1 is open and cannot be followed"):
        opened(database, game, 2)
    closed(database, game)
    with pytest.raises(WrongState, match="round 1 is closed and cannot be followed"):
        opened(database, game, 2)
    announced(database, game)
    opened(database, game, 2)
    with database.reading() as session:
        states = [row.state for row in all_rounds(session, game_named(session, game))]
    assert states == ["announced", "open"]


def test_the_tables_themselves_refuse_a_second_open_round(database: Database, game: str) -> None:
    draft(database, game)
    opened(database, game)
    draft(database, game, DraftRules())
    with pytest.raises(IntegrityError), database.writing() as session:
        session.exec(update(RoundRow).values(state="open"))


def test_a_round_closes_at_its_announced_time(database: Database, game: str) -> None:
    draft(database, game)
    opened(database, game)
    with pytest.raises(WrongState, match="cannot be closed yet: it closes at 2026-03-03T18:00:00Z"):
        closed(database, game, hours=47)
    with pytest.raises(WrongState, match="closed at another time"):
        closed(database, game, after(40))
    assert kept(database, game).state == "open"
    closed(database, game, hours=60)
    row = kept(database, game)
    assert (row.state, row.closes, row.closed) == ("closed", after(48), after(60))


def test_a_round_without_a_closing_closes_by_the_hosts_act(database: Database, game: str) -> None:
    open_first_round(database, game)
    closed(database, game, hours=30)
    assert (kept(database, game).state, kept(database, game).closes) == ("closed", after(30))


def test_the_host_may_close_at_a_time_that_has_passed(database: Database, game: str) -> None:
    open_first_round(database, game)
    with pytest.raises(BadRules, match="still to come"):
        closed(database, game, after(31), hours=30)
    with pytest.raises(ClosesBeforeOpening):
        closed(database, game, after(-1), hours=30)
    closed(database, game, after(29), hours=30)
    assert kept(database, game).closes == after(29)


@pytest.mark.parametrize("state", ["draft", "closed", "announced"])
def test_only_an_open_round_is_closed(database: Database, game: str, state: str) -> None:
    draft(database, game)
    if state != "draft":
        opened(database, game)
        closed(database, game)
    if state == "announced":
        announced(database, game)
    with pytest.raises(WrongState, match=f"round 1 is {state} and cannot be closed"):
        closed(database, game, hours=70)
    assert kept(database, game).state == state


def test_the_next_round_goes_on_from_the_winner(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([comment("Maren", "1")]))
    closed(database, game)
    announced(database, game)
    put_page(database, game, 1, "stitched", hours=60)
    draft(database, game, DraftRules())
    opened(database, game, 2, after(70))
    row = kept(database, game, 2)
    assert (row.previous, row.votable) == (1, [2, 10])


@pytest.mark.parametrize("number", [2, 10**6])
def test_a_round_that_is_not_there_is_not_found(database: Database, game: str, number: int) -> None:
    draft(database, game)
    with pytest.raises(NotFound, match="no round"):
        kept(database, game, number)
