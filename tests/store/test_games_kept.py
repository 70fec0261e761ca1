"""Games: made once, found by their short name, their pages' states said and said again."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sqlmodel import select

from service.chart.grid import Cell, Chart, DesignSize, chart_of_design
from service.errors import AlreadyThere, BadRules, NotFound, PageNotOnChart
from service.store.charts import chart_from_json, chart_to_json
from service.store.database import Database
from service.store.games import (
    NewGame,
    all_games,
    chart_of,
    game_named,
    make_game,
    page_states,
    set_page,
)
from service.store.tables import GameRow
from tests.store.handing_in import OPENS, after

NEW = NewGame("windy-island", "The windy island's mystery", "Atlantic/Faroe", Chart(9, 7))
CHARTS = [
    pytest.param(Chart(9, 7), id="plain"),
    pytest.param(
        Chart(4, 3, "down", "bottom right", True, frozenset({Cell(1, 1), Cell(4, 2)}), "edge or corner"),  # noqa: FBT003
        id="every rule another",
    ),
    pytest.param(chart_of_design(DesignSize(200, 150, 80, 60, 3)), id="from stitches"),
]  # fmt: skip


def make(database: Database, new: NewGame = NEW) -> None:
    with database.writing() as session:
        make_game(session, new, OPENS)


@pytest.mark.parametrize("chart", CHARTS)
def test_a_chart_comes_back_the_same(database: Database, chart: Chart) -> None:
    make(database, replace(NEW, chart=chart))
    with database.reading() as session:
        assert chart_of(game_named(session, "windy-island")) == chart
    assert chart_from_json(chart_to_json(chart)) == chart


def test_a_second_game_of_one_short_name_is_refused(database: Database) -> None:
    make(database)
    with pytest.raises(AlreadyThere, match="there is a game 'windy-island' already"):
        make(database, replace(NEW, name="another"))
    with database.reading() as session:
        assert [row.name for row in all_games(session)] == [NEW.name]


@pytest.mark.parametrize("slug", ["", "Windy", "a b", "-a", "a-", "a/b", "å", "a" * 65, "a\x00"])
def test_a_short_name_that_no_address_holds_is_refused(database: Database, slug: str) -> None:
    with pytest.raises(BadRules, match="cannot stand in an address"):
        make(database, replace(NEW, slug=slug))
    with database.reading() as session:
        assert session.exec(select(GameRow)).all() == []
        with pytest.raises(NotFound):
            game_named(session, slug)


def test_games_are_listed_by_their_short_names(database: Database) -> None:
    for slug in ("b", "c", "a"):
        make(database, replace(NEW, slug=slug))
    with database.reading() as session:
        assert [row.slug for row in all_games(session)] == ["a", "b", "c"]


def test_a_page_goes_from_hand_to_stitched_and_back(database: Database, game: str) -> None:
    told = []
    for hours, state in enumerate(("in hand", "stitched", "stitched", "unstitched", "unstitched")):
        with database.writing() as session:
            row = game_named(session, game)
            set_page(session, row, 63, state, after(hours))  # type: ignore[arg-type]
            told.append(page_states(session, row).state_of(63))
    assert told == ["in hand", "stitched", "stitched", "unstitched", "unstitched"]


@pytest.mark.parametrize("page", [0, -1, 64, 10**30])
def test_a_page_off_the_chart_is_refused(database: Database, game: str, page: int) -> None:
    with (
        pytest.raises(PageNotOnChart, match="name a page from 1 to 63"),
        database.writing() as session,
    ):
        set_page(session, game_named(session, game), page, "stitched", OPENS)
    with database.reading() as session:
        assert not page_states(session, game_named(session, game)).taken


def test_saying_that_a_page_is_in_hand_again_does_not_make_it_the_last(
    database: Database, game: str
) -> None:
    for hours, page in enumerate((5, 9, 5)):
        with database.writing() as session:
            set_page(session, game_named(session, game), page, "in hand", after(hours))
    with database.reading() as session:
        assert page_states(session, game_named(session, game)).in_hand == (5, 9)
