"""The document that the API is fuzzed by."""

from __future__ import annotations

from typing import Any

import pytest

from service.app import create_app
from service.settings import Settings


@pytest.fixture(scope="session")
def document(clean_environment: None) -> Any:
    """The API's own document; making it takes a second."""
    del clean_environment
    return create_app(Settings()).openapi()
