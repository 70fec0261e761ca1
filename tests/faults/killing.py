"""Kills a process at random points of its work, again and again, and looks what is left.

    python tests/faults/killing.py STEP DATABASE_URL --kills 100 --seed 7

STEP is one of steps.py. Each time the database is put back to what it was, a process of its own
does the step, and SIGKILL ends it somewhere in it. What is left must be all as before, and then the
step must be possible once more, or all as after, and then asking for it once more must change
nothing. Prints what was found as JSON.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import signal
import sys
import time
from collections import Counter
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path
from random import Random

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "scripts")]

import psycopg  # noqa: E402 - only once the project is found
from psycopg import sql  # noqa: E402
from sqlalchemy import MetaData, select  # noqa: E402
from sqlalchemy.engine import make_url  # noqa: E402

from service.app import create_app  # noqa: E402
from service.ballots.reader import read_vote  # noqa: E402
from service.ballots.reading import Question  # noqa: E402
from service.chart.grid import Chart  # noqa: E402
from service.settings import Settings  # noqa: E402
from service.store.engine import make_engine  # noqa: E402
from tests.faults.steps import STEPS, clock  # noqa: E402

PATIENCE = 60


class OnSqlite:
    """A SQLite file that is put back by copying it."""

    def __init__(self, url: str) -> None:
        self.settings = Settings(database_url=url)
        self._file = Path(self.settings.database.database or "")

    def _beside(self) -> list[Path]:
        return [self._file.with_name(self._file.name + end) for end in ("", "-wal", "-shm")]

    def keep(self) -> None:
        """Keep what there is, to be put back."""
        shutil.copy(self._file, f"{self._file}.kept")

    def put_back(self) -> None:
        """Put back what was kept."""
        for file in self._beside():
            file.unlink(missing_ok=True)
        shutil.copy(f"{self._file}.kept", self._file)

    def settle(self) -> None:
        """Nothing is left to be done by anybody else."""


class OnPostgres:
    """A PostgreSQL database that is put back from a template."""

    def __init__(self, url: str) -> None:
        self.settings = Settings(database_url=url)
        plain = make_url(url).set(drivername="postgresql")
        self._name = str(plain.database)
        self._server = plain.set(database="postgres").render_as_string(hide_password=False)

    def _do(self, words: str, *names: str) -> None:
        with psycopg.connect(self._server, autocommit=True) as connection:
            connection.execute(sql.SQL(words).format(*map(sql.Identifier, names)))

    def keep(self) -> None:
        """Keep what there is, to be put back."""
        self._do("CREATE DATABASE {} TEMPLATE {}", f"{self._name}_kept", self._name)

    def put_back(self) -> None:
        """Put back what was kept."""
        self._do("DROP DATABASE {} WITH (FORCE)", self._name)
        self._do("CREATE DATABASE {} TEMPLATE {}", self._name, f"{self._name}_kept")

    def settle(self) -> None:
        """Wait until the server has noticed that its client is dead."""
        asked = "SELECT count(*) FROM pg_stat_activity WHERE datname = %s"
        ends = time.monotonic() + PATIENCE
        with psycopg.connect(self._server, autocommit=True) as connection:
            while time.monotonic() < ends:
                [count] = connection.execute(asked, (self._name,)).fetchone() or (0,)
                if not count:
                    return
                time.sleep(0.01)

    def forget(self) -> None:
        """Take the template away."""
        self._do("DROP DATABASE {} WITH (FORCE)", f"{self._name}_kept")


def state_of(settings: Settings, *, whole: bool = True) -> str:
    """The digest of all tables, whatever version they are of.

    Ids, and how often a round was had, are no part of what is done again: PostgreSQL gives no id
    twice, used or not, and who asks again has had the round for a moment.
    """
    engine = make_engine(settings)
    found = sha256()
    with engine.connect() as connection:
        tables = MetaData()
        tables.reflect(connection)
        for table in tables.sorted_tables:
            names = [c.name for c in table.columns if whole or not _is_number(c.name)]
            asked = select(*(table.columns[name] for name in names))
            rows = sorted(repr(tuple(row)) for row in connection.execute(asked))
            found.update(repr((table.name, names, rows)).encode())
    engine.dispose()
    return found.hexdigest()


def _is_number(column: str) -> bool:
    return column in ("id", "changes", "handed_in") or column.endswith("_id")


def warm_up() -> None:
    """Have what each process needs at first made here, once, so that it gets to its work."""
    question = Question(Chart(9, 7), 1, ("en",))
    for words in ("page 12 please", "13 or 14, but not 15", "so nice, I would say the corner"):
        read_vote(words, question)
    create_app(Settings(), clock=clock)


def child(settings: Settings, step: Callable[[Settings], None]) -> int:
    """A process that does the step and ends; its number."""
    number = os.fork()
    if number:
        return number
    try:
        step(settings)
        os._exit(0)
    except BaseException as trouble:  # noqa: BLE001 - the child must not go on as its parent
        sys.stderr.write(f"{trouble!r}\n")
        os._exit(1)


def done(settings: Settings, step: Callable[[Settings], None]) -> float:
    """Do the step in a process of its own; the seconds that it took."""
    began = time.monotonic()
    _, status = os.waitpid(child(settings, step), 0)
    if status:
        sys.exit("the step failed where nobody killed it")
    return time.monotonic() - began


def asked_again(settings: Settings, step: Callable[[Settings], None]) -> str:
    """The digest after what is done was asked for: it is refused, or done in vain."""
    os.waitpid(child(settings, step), 0)
    return state_of(settings, whole=False)


def kill_at(settings: Settings, step: Callable[[Settings], None], after: float) -> bool:
    """Have the step begun and killed after so many seconds; whether it was killed in time."""
    number = child(settings, step)
    time.sleep(after)
    os.kill(number, signal.SIGKILL)
    _, status = os.waitpid(number, 0)
    return os.WIFSIGNALED(status)


def main() -> None:
    """Kills, looks and tells."""
    parser = argparse.ArgumentParser()
    parser.add_argument("step", choices=STEPS)
    parser.add_argument("url")
    parser.add_argument("--kills", type=int, default=100)
    parser.add_argument("--seed", type=int, default=0)
    given = parser.parse_args()
    on = OnSqlite(given.url) if given.url.startswith("sqlite") else OnPostgres(given.url)
    begin_it, step = STEPS[given.step]
    warm_up()
    # In a process of its own: a fork must not take open connections or threads along.
    done(on.settings, begin_it)
    on.keep()
    before = state_of(on.settings)
    took = done(on.settings, step)
    after = state_of(on.settings)
    done_again = state_of(on.settings, whole=False)
    if asked_again(on.settings, step) != done_again:
        sys.exit("asking for what is done changed something")
    chance, found = Random(given.seed), Counter[str]()  # noqa: S311 - where to kill, no secret
    for number in range(given.kills):
        on.put_back()
        # Every second one late in the step, where the database is written to.
        at = chance.uniform(0.5 * (number % 2), 1.05)
        killed = kill_at(on.settings, step, took * at)
        on.settle()
        left = state_of(on.settings)
        found["killed"] += killed
        found["before" if left == before else "after" if left == after else "between"] += 1
        if left == before:
            # A busy machine is slower one minute than another.
            took = (took + done(on.settings, step)) / 2
            found["done again"] += state_of(on.settings, whole=False) == done_again
        elif left == after:
            found["asked again"] += asked_again(on.settings, step) == done_again
    if isinstance(on, OnPostgres):
        on.forget()
    told = {"changes": before != after, "seconds": round(took, 2)}
    sys.stdout.write(json.dumps(found | told) + "\n")


if __name__ == "__main__":
    main()
