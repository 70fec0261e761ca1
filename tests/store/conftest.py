"""What the store's tests share: a database of each kind, and a game in it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime

import pytest

from service.chart.grid import Chart
from service.settings import Settings
from service.store.database import Database
from service.store.games import NewGame, make_game

NOW = datetime(2026, 3, 1, 18, 0, tzinfo=UTC)


@pytest.fixture
def database(settings: Settings) -> Iterator[Database]:
    made = Database(settings)
    yield made
    made.dispose()


@pytest.fixture
def game(database: Database) -> str:
    """The short name of a game on a chart of 9 x 7 pages."""
    with database.writing() as session:
        make_game(
            session,
            NewGame(
                slug="windy-island",
                name="The windy island's mystery",
                zone="Atlantic/Faroe",
                chart=Chart(9, 7),
                hosts=("Island Guild",),
            ),
            NOW,
        )
    return "windy-island"
