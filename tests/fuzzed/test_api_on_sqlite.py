"""The whole API on SQLite, fuzzed by its own document: no server error, no undocumented answer."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

from service.settings import Settings
from tests.fuzzed.rounds import (
    CALLERS,
    DRAWN,
    FEW,
    app_on,
    at_the_ends,
    check,
    drawn,
    one_after_another,
)
from tests.fuzzed.world import App

Json = Any


@pytest.fixture(scope="module")
def app(module_upgraded_sqlite: Settings) -> Iterator[App]:
    with app_on(module_upgraded_sqlite) as made:
        yield made


def test_the_ends_of_every_value(app: App, document: Json) -> None:
    # What is refused for its form never gets to a database: in a small run one of them is enough.
    check(at_the_ends(app, document, wrong=DRAWN > FEW), 200)


@pytest.mark.parametrize("caller", CALLERS)
def test_what_is_drawn_for_each_operation(app: App, document: Json, caller: str) -> None:
    check(drawn(app, document, caller), 80)


def test_one_operation_after_another(app: App, document: Json) -> None:
    check(one_after_another(app, document), 30)
