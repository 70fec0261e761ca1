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
STEPS = ("import", "close", "announce", "migrate")

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="this system has no fork")


@pytest.fixture(params=["sqlite", pytest.param("postgres", marks=pytest.mark.postgres)])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path}/games.sqlite3"
    settings: Settings = request.getfixturevalue("empty_postgres")
    return settings.database_url


@pytest.mark.parametrize("step", STEPS)
def test_what_is_left_is_as_before_or_as_after(step: str, url: str) -> None:
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
