"""The stitch log and the plan, kept on both databases: nothing is overwritten, nothing half-kept."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import text

from service.chart.stitches import PageTold
from service.errors import BadChart, BadLog, LoopstartError, PageNotOnChart
from service.pace.entry import Details, Entry
from service.pace.rounds import RoundPlan
from service.pace.table import table_of
from service.store.database import Database
from service.store.games import game_named, set_page
from service.store.pace import shown_of, situation_of, update_paragraph
from service.store.pace_plans import PacePlan, plan_of, told_stitches
from service.store.stitch_log import (
    TakenIn,
    add_entries,
    change_plan,
    correct_entry,
    log_of,
    take_in_table,
    tell_page_stitches,
    today_of,
)

NOW = datetime(2026, 3, 30, 12, 0, tzinfo=UTC)
FIRST = date(2026, 3, 2)


def entry(number: int, amount: int, **other: Any) -> Entry:
    told: dict[str, Any] = {"page": 41} | other
    return Entry(
        0, FIRST + timedelta(days=number - 1), told.pop("how", "on the day"), amount, **told
    )


@pytest.fixture
def begun(database: Database, game: str) -> str:
    """A game with page 41 in hand, 40 stitched, and 1,000 stitches on every page."""
    with database.writing() as session:
        row = game_named(session, game)
        set_page(session, row, 40, "stitched", NOW)
        set_page(session, row, 41, "in hand", NOW)
        change_plan(session, row, PacePlan(RoundPlan(3, 2), 1_000, ("page",)))
    return game


def added(database: Database, game: str, *entries: Entry) -> list[int]:
    with database.writing() as session:
        row = game_named(session, game)
        return [one.number for one in add_entries(session, row, entries, NOW)]


def kept(database: Database, game: str) -> tuple[Entry, ...]:
    with database.reading() as session:
        return log_of(session, game_named(session, game))


def taken_in(database: Database, game: str, table: str) -> TakenIn:
    with database.writing() as session:
        return take_in_table(session, game_named(session, game), table, NOW)


def test_entries_are_kept_as_they_were_written(database: Database, begun: str) -> None:
    written = [
        entry(1, 100, note="by the window"),
        entry(5, 3_000, how="percent"),
        entry(2, 50, page=None, piece="The winter runner", details=Details(1, 2, 3)),
        Entry(0, FIRST + timedelta(days=40), "rest", first=FIRST + timedelta(days=30)),
    ]
    assert added(database, begun, *written) == [1, 2, 3, 4]
    assert [replace(one, number=0) for one in kept(database, begun)] == written
    assert added(database, begun, entry(6, 320, how="so far")) == [5]


def test_a_correction_is_added_and_what_it_corrects_stays(database: Database, begun: str) -> None:
    added(database, begun, entry(1, 100), entry(2, 200))
    with database.writing() as session:
        row = game_named(session, begun)
        [corrected] = correct_entry(session, row, replace(entry(2, 250), corrects=2), NOW)
    assert corrected.number == 3
    assert [one.amount for one in kept(database, begun)] == [100, 200, 250]
    with database.reading() as session:
        here = situation_of(session, game_named(session, begun), date(2026, 3, 30))
    assert here.page(41).done == 350


def test_an_entry_of_a_page_stitched_since_can_still_be_corrected(
    database: Database, begun: str
) -> None:
    added(database, begun, entry(1, 100))
    with database.writing() as session:
        row = game_named(session, begun)
        set_page(session, row, 41, "stitched", NOW)
        correct_entry(session, row, replace(entry(1, 90), corrects=1), NOW)
        with pytest.raises(BadLog, match="stitched and not in hand"):
            correct_entry(session, row, replace(entry(1, 90, page=40), corrects=2), NOW)
    assert [one.amount for one in kept(database, begun)] == [100, 90]


def test_details_may_come_to_a_page_that_is_stitched(database: Database, begun: str) -> None:
    assert added(database, begun, entry(1, 0, page=40, details=Details(backstitch=30))) == [1]


WRONG: list[Any] = [
    pytest.param(entry(40, 5), BadLog, "still to come", id="a day to come"),
    pytest.param(entry(3, -5), BadLog, "says -5 stitches", id="below 0"),
    pytest.param(entry(3, 901), BadLog, "1,011 stitches of the 1,000", id="more than there are"),
    pytest.param(entry(2, 5), BadLog, "second of that day", id="a day twice"),
    pytest.param(entry(3, 5, page=40), BadLog, "is stitched and not in hand", id="a stitched page"),
    pytest.param(entry(3, 5, page=12), BadLog, "is unstitched and not in hand", id="unstitched"),
    pytest.param(entry(3, 5, page=99), PageNotOnChart, "not on the chart", id="no such page"),
    pytest.param(replace(entry(3, 5), corrects=7), BadLog, "no entry 7", id="corrects nothing"),
]


@pytest.mark.parametrize(("wrong", "kind", "says"), WRONG)
def test_of_entries_with_a_wrong_one_none_is_kept(
    database: Database, begun: str, wrong: Entry, kind: type[LoopstartError], says: str
) -> None:
    added(database, begun, entry(1, 100))
    before = kept(database, begun)
    with pytest.raises(kind, match=says):
        added(database, begun, entry(2, 10), wrong)
    assert kept(database, begun) == before


def test_days_out_of_order_are_refused_and_nothing_is_kept(database: Database, begun: str) -> None:
    with pytest.raises(BadLog, match="out of order"):
        added(database, begun, entry(5, 10), entry(2, 10))
    assert kept(database, begun) == ()


def test_the_day_is_that_of_the_game_s_zone(database: Database, begun: str) -> None:
    with database.reading() as session:
        row = game_named(session, begun)
        assert today_of(row, datetime(2026, 7, 1, 23, 30, tzinfo=UTC)) == date(2026, 7, 2)
        assert today_of(row, datetime(2026, 1, 1, 23, 30, tzinfo=UTC)) == date(2026, 1, 1)


# Tables.


def test_a_log_goes_out_and_into_another_game_as_it_was(database: Database, begun: str) -> None:
    added(database, begun, entry(1, 100), entry(2, 20, page=None, piece="=Basket"), entry(4, 50))
    with database.writing() as session:
        correct_entry(session, game_named(session, begun), replace(entry(1, 110), corrects=1), NOW)
    table = table_of(kept(database, begun))
    with database.writing() as session:
        session.execute(text("DELETE FROM log_entries"))
    before = kept(database, begun)
    taken = taken_in(database, begun, table)
    assert before == ()
    assert (len(taken.new), taken.known) == (4, 0)
    assert table_of(kept(database, begun)) == table


def test_the_same_table_twice_changes_nothing_and_a_longer_one_adds_its_rows(
    database: Database, begun: str
) -> None:
    header = "day,page,stitches,corrects,entry\n"
    rows = ["2026-03-02,41,10,,a\n", "2026-03-03,41,20,,b\n", "2026-03-03,41,25,b,c\n"]
    table = header + "".join(rows)
    assert len(taken_in(database, begun, table).new) == 3
    before = kept(database, begun)
    again = taken_in(database, begun, table)
    assert (again.new, again.known) == ((), 3)
    assert kept(database, begun) == before
    longer = taken_in(database, begun, table + "2026-03-04,41,30,,d\n2026-03-04,41,35,d,e\n")
    assert ([one.number for one in longer.new], longer.known) == ([4, 5], 3)
    assert longer.new[1].corrects == 4


def test_a_table_may_hold_stitched_pages_and_is_taken_whole_or_not_at_all(
    database: Database, begun: str
) -> None:
    header = "day,page,stitches\n"
    history = header + "2026-03-02,40,900\n2026-03-03,41,10\n"
    with pytest.raises(BadLog, match="unstitched and not in hand"):
        taken_in(database, begun, history + "2026-03-04,12,5\n")
    assert kept(database, begun) == ()
    assert len(taken_in(database, begun, history).new) == 2


# Plan, and stitches by hand.


def test_the_plan_is_kept_and_replaced(database: Database, begun: str) -> None:
    with database.reading() as session:
        row = game_named(session, begun)
        assert plan_of(session, row) == PacePlan(RoundPlan(3, 2), 1_000, ("page",))
    with database.writing() as session:
        change_plan(session, game_named(session, begun), PacePlan(shows=("chart", "forecast")))
    with database.reading() as session:
        assert plan_of(session, game_named(session, begun)).shows == ("chart", "forecast")


def test_stitches_by_hand_are_kept_and_taken_away_again(database: Database, begun: str) -> None:
    with database.writing() as session:
        row = game_named(session, begun)
        tell_page_stitches(session, row, 41, PageTold(crosses=700, beads=9))
        assert told_stitches(session, row).of(41) == PageTold(crosses=700, beads=9)
        tell_page_stitches(session, row, 41, PageTold())
        assert told_stitches(session, row).pages == {}


def test_fewer_stitches_than_are_logged_are_refused_and_nothing_is_changed(
    database: Database, begun: str
) -> None:
    added(database, begun, entry(1, 600))
    with pytest.raises(BadLog, match="600 stitches of the 500"), database.writing() as session:
        tell_page_stitches(session, game_named(session, begun), 41, PageTold(crosses=500))
    with pytest.raises(BadLog, match="600 stitches of the 500"), database.writing() as session:
        change_plan(session, game_named(session, begun), PacePlan(every=500))
    with pytest.raises(BadChart), database.writing() as session:
        tell_page_stitches(session, game_named(session, begun), 41, PageTold(crosses=0))
    with database.reading() as session:
        assert told_stitches(session, game_named(session, begun)).every == 1_000


# What everybody sees.


def test_nothing_is_shown_that_the_host_did_not_choose(database: Database, begun: str) -> None:
    added(database, begun, *(entry(number, 30) for number in range(1, 15)))
    today = date(2026, 3, 16)
    seen: dict[str, set[str]] = {}
    with database.writing() as session:
        row = game_named(session, begun)
        for shows in (
            (),
            ("page",),
            ("chart",),
            ("forecast",),
            ("next round",),
            ("picture",),
            ("update",),
        ):
            change_plan(session, row, PacePlan(every=1_000, shows=shows))
            shown = shown_of(session, row, today)
            seen[" ".join(shows)] = {
                name
                for name in ("pages", "chart", "finish", "next_opening", "picture", "update")
                if getattr(shown, name) is not None
            }
    assert seen == {
        "": set(),
        "page": {"pages"},
        "chart": {"chart"},
        "forecast": {"finish"},
        "next round": {"next_opening"},
        "picture": {"picture"},
        "update": {"update"},
    }


def test_the_picture_shows_the_forecast_only_where_that_is_shown(
    database: Database, begun: str
) -> None:
    added(database, begun, *(entry(number, 30) for number in range(1, 15)))
    with database.writing() as session:
        row = game_named(session, begun)
        pictures = []
        for shows in (("picture",), ("picture", "forecast")):
            change_plan(session, row, PacePlan(every=1_000, shows=shows))
            pictures.append(shown_of(session, row, date(2026, 3, 16)).picture or "")
    assert ["middle of the forecast" in picture for picture in pictures] == [False, True]


def test_the_paragraph_tells_a_fortnight_unless_a_first_day_is_named(
    database: Database, begun: str
) -> None:
    added(database, begun, entry(1, 100), entry(20, 30))
    with database.reading() as session:
        row = game_named(session, begun)
        here = situation_of(session, row, date(2026, 3, 30))
        assert "30 stitches on the mystery" in update_paragraph(session, row, here).text
        told = update_paragraph(session, row, here, date(2026, 3, 1)).text
        assert "130 stitches on the mystery" in told
