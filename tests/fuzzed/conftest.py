"""The document that the API is fuzzed by, and a database of each kind."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from sqlalchemy.engine import URL

from service.app import create_app
from service.settings import Settings
from service.store.upgrade import upgrade
from tests.conftest import _made_database


@pytest.fixture(scope="session")
def document(clean_environment: None) -> Any:
    """The API's own document; making it takes a second."""
    del clean_environment
    return create_app(Settings()).openapi()


@pytest.fixture(scope="module")
def fuzzed_sqlite(tmp_path_factory: pytest.TempPathFactory) -> Settings:
    settings = Settings(data_folder=tmp_path_factory.mktemp("fuzzed"))
    upgrade(settings)
    return settings


@pytest.fixture(scope="module")
def fuzzed_postgres(postgres_server: URL) -> Iterator[Settings]:
    for settings in _made_database(postgres_server):
        upgrade(settings)
        yield settings
