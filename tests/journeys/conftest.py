"""A database for a whole journey, on each of the two kinds."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from sqlalchemy.engine import URL

from service.settings import Settings
from service.store.upgrade import upgrade
from tests.conftest import _made_database


@pytest.fixture(scope="module")
def journey_sqlite(tmp_path_factory: pytest.TempPathFactory) -> Settings:
    settings = Settings(data_folder=tmp_path_factory.mktemp("journey"))
    upgrade(settings)
    return settings


@pytest.fixture(scope="module")
def journey_postgres(postgres_server: URL) -> Iterator[Settings]:
    for settings in _made_database(postgres_server):
        upgrade(settings)
        yield settings
