"""A process killed in the midst of its work leaves the database as it was before, or as after.

How often is set by LOOPSTART_TEST_KILLS; where by LOOPSTART_TEST_SEED, which is printed.
"""

from __future__ import annotations

import json
import os
import time
from pathlib import Path

import pytest

from service.settings import Settings
from tests.scripts.running import ROOT, run_python

KILLS = os.environ.get("LOOPSTART_TEST_KILLS", "2")
SEED = os.environ.get("LOOPSTART_TEST_SEED", str(time.time_ns() % 1_000_000))
#: On SQLite an export waits in the process itself.
STEPS = ("import", "close", "announce", "announced", "revise", "forget", "migrate")

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="this system has no fork")


@pytest.mark.parametrize("step", STEPS)
def test_what_is_left_on_sqlite_is_as_before_or_as_after(step: str, tmp_path: Path) -> None:
    look_what_is_left(step, f"sqlite:///{tmp_path}/games.sqlite3")


@pytest.mark.postgres
@pytest.mark.parametrize("step", [*STEPS, "wait"])
def test_what_is_left_on_postgresql_is_as_before_or_as_after(
    step: str, empty_postgres: Settings
) -> None:
    look_what_is_left(step, empty_postgres.database_url)


def look_what_is_left(step: str, url: str) -> None:
    told = run_python(
        ROOT / "tests" / "faults" / "killing.py", step, url, "--kills", KILLS, "--seed", SEED
    )
    print(f"seed {SEED}: {told.stdout}")  # noqa: T201 - to do the same again
    assert told.returncode == 0, told.stderr
    found = json.loads(told.stdout)
    assert found["changes"], "the step changed nothing"
    assert found.get("between", 0) == 0
    assert found.get("before", 0) + found.get("after", 0) == int(KILLS)
    assert found.get("done again", 0) == found.get("before", 0)
    assert found.get("asked again", 0) == found.get("after", 0)
