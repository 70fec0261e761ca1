"""The demo game's files as they are, read without any of the program's own readers."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

DEMO = Path(__file__).parents[2] / "demo"


@pytest.fixture(scope="session")
def demo_folder() -> Path:
    return DEMO


@pytest.fixture(scope="session")
def demo_game() -> dict[str, Any]:
    game: dict[str, Any] = json.loads((DEMO / "game.json").read_text(encoding="utf-8"))
    return game


@pytest.fixture(scope="session")
def demo_expected() -> dict[str, Any]:
    expected: dict[str, Any] = json.loads((DEMO / "expected.json").read_text(encoding="utf-8"))
    return expected
