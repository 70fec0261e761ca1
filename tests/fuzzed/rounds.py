"""How much is asked, and the three passes that both databases are put through.

`LOOPSTART_TEST_FUZZ=50` in the environment asks some ten thousand times of each database, each time
anew; without it a run is small, and the same where every test must run.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from service.settings import Settings
from tests.fuzzed.fuzzing import Findings, fuzz, play, schema_of
from tests.fuzzed.world import App, make_world

Json = Any
#: Cases drawn for each operation.
FEW = 3
DRAWN = int(os.environ.get("LOOPSTART_TEST_FUZZ", FEW))
SEED = int(os.environ.get("LOOPSTART_TEST_SEED", "1"))
CALLERS = ("host", "collector", "viewer")


@contextmanager
def app_on(settings: Settings) -> Iterator[App]:
    """An app on the games, which are made on this empty database."""
    app = App(make_world(settings))
    try:
        yield app
    finally:
        app.close()


def check(found: Findings, least: int) -> None:
    """Nothing was found, and enough was asked."""
    told = f"{found.answers.total()} answers: {dict(sorted(found.answers.items()))}"
    print(told)  # noqa: T201 - how much was asked, for whoever looks at a large run
    assert not found.told(), found.told()
    assert found.answers.total() >= least, found.answers


def at_the_ends(app: App, document: Json, *, wrong: bool) -> Findings:
    """Every value at its ends; if `wrong`, past them too, and every name left out; as the host."""
    found = Findings()
    mode = "all" if wrong else "positive"
    fuzz(schema_of(app, "host", document, DRAWN, SEED, mode), "coverage", found)
    return found


def drawn(app: App, document: Json, caller: str) -> Findings:
    """What is drawn for each operation, right or wrong; the host more than the others."""
    found = Findings()
    examples = DRAWN if caller == "host" else max(1, DRAWN // 3)
    fuzz(schema_of(app, caller, document, examples, SEED), "fuzzing", found)
    return found


def one_after_another(app: App, document: Json) -> Findings:
    """Scenarios of operations that follow from one another: the host's, others can make nothing."""
    found = Findings()
    play(app, schema_of(app, "host", document, DRAWN, SEED), 2 * DRAWN, 12, found)
    return found
