"""The measure `load` of bench.py: single comments, the board and an import at the same time.

A server runs as a process of its own, once on each kind of database. 50 clients hand in one comment
after the other, 500 look at the board (its counts shown while open) once a second each, and after a
while somebody imports 100,000 comments into the same round. The plainest FastAPI app that keeps a
comment (bench_served.py), on the same kind of database, has the same clients in the same run, one
request for each of theirs, without an import. Clients are processes of their own (bench_clients.py).

With `--minutes` the load goes on for so long, the export is handed in again every minute with a
comment more, and the server's memory is told as time goes by.
"""

import argparse
import json
import os
import statistics
import subprocess
import sys
import threading
import time
from collections.abc import Iterator, MutableSequence
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from tempfile import TemporaryDirectory

from bench_clients import ADDRESS, hand_in_again, read_times, warm
from bench_databases import KINDS, new_database
from bench_intake import open_bench_round, write_export
from bench_served import memory_of
from sqlmodel import Session, text

from service.settings import Settings
from service.store.announcing_settings import Announcing, set_announcing
from service.store.database import Database
from service.store.games import game_named
from service.store.tokens import make_token
from service.store.upgrade import upgrade

ROWS = 100_000
SECONDS = 20
WRITERS, VIEWERS = 50, 500
#: Seconds between a viewer's looks, and before the import begins.
PAUSE = 1.0
ALONE = 8.0
#: Seconds.
Times = MutableSequence[float]
_HERE = Path(__file__).resolve().parent


@dataclass
class Load:
    """What became of it: requests by kind, spans of time by name, memory by second, faults."""

    requests: dict[str, tuple[Times, Times]] = field(default_factory=dict)
    spans: dict[str, tuple[float, float]] = field(default_factory=dict)
    memory: list[tuple[float, float]] = field(default_factory=list)
    faults: list[str] = field(default_factory=list)

    def figures(self, kind: str, span: str) -> tuple[float, float, float]:
        """Answers a second within a span, and the milliseconds that half and 99 of 100 took."""
        begins, ends = self.spans[span]
        sent, took = self.requests[kind]
        within = sorted(
            one for at, one in zip(sent, took, strict=True) if begins <= at + one < ends
        )
        if not within:
            return 0.0, 0.0, 0.0
        late = within[min(len(within) - 1, len(within) * 99 // 100)]
        return len(within) / (ends - begins), within[len(within) // 2] * 1000, late * 1000

    def told(self, kind: str, span: str) -> str:
        """The same in words."""
        many, middle, late = self.figures(kind, span)
        return f"{many:.0f} {kind} a second (half within {middle:.0f} ms, 99 of 100 {late:.0f})"


def add_load(options: argparse.ArgumentParser) -> None:
    """The options of `load`."""
    options.add_argument("--rows", type=int, default=ROWS, metavar="N", help="comments imported")
    options.add_argument("--seconds", type=int, default=SECONDS, metavar="N", help="at least")
    options.add_argument("--minutes", type=int, default=0, metavar="N", help="instead of --seconds")
    options.add_argument("--writers", type=int, default=WRITERS, metavar="N", help=f"({WRITERS})")
    options.add_argument("--viewers", type=int, default=VIEWERS, metavar="N", help=f"({VIEWERS})")
    options.add_argument("--database", choices=[*KINDS, "both"], default="both")


def load(given: argparse.Namespace) -> None:
    """Prints throughput and times under load beside those of the bare app, on each database."""
    for kind in KINDS if given.database == "both" else (given.database,):
        # A computer's speed may change within minutes, so the bare app is measured before and after.
        bare = [_bare(kind, given)]
        with new_database(kind) as url:
            own = _measured("loopstart", url, given)
        bare.append(_bare(kind, given))
        _tell(kind, bare, own, given)


def _bare(kind: str, given: argparse.Namespace) -> Load:
    with new_database(kind) as url:
        return _measured("bare", url, argparse.Namespace(**{**vars(given), "minutes": 0}))


def _tell(kind: str, bare: list[Load], own: Load, given: argparse.Namespace) -> None:
    floor = statistics.fmean(one.figures("comments", "alone")[0] for one in bare)
    for when, one in zip(("before", "after"), bare, strict=True):
        print(f"{kind}, bare {when}: {_both(one, 'alone')}")
    for span, (begins, ends) in own.spans.items():
        ratio = own.figures("comments", span)[0] / floor if floor else 0.0
        lasted = f" ({ends - begins:.0f} s)" if span == "import" else ""
        print(f"{kind}, {span}{lasted}: {_both(own, span)}; ratio {ratio:.2f} (at least 0.5)")
    first = own.spans["alone"][0]
    step = max(1, len(own.memory) // 10)
    shown = ", ".join(f"{at - first:.0f} s {mb:.0f} MB" for at, mb in own.memory[::step])
    print(f"{kind}, memory of the server: {shown}")
    faults = [f"bare: {fault}" for one in bare for fault in one.faults] + own.faults
    print(
        f"{kind}, {given.writers} writers, {given.viewers} viewers, {given.rows:,} imported: "
        + (f"{len(faults)} errors" if faults else "no error"),
        flush=True,
    )
    for fault in faults[:10]:
        print(f"  {fault}")


def _both(one: Load, span: str) -> str:
    return f"{one.told('comments', span)}, {one.told('views', span)}"


def _measured(what: str, url: str, given: argparse.Namespace) -> Load:
    """One server under the load."""
    made = Load()
    with TemporaryDirectory() as folder, ExitStack() as stack:
        settings = Settings(data_folder=Path(folder), database_url=url)
        token = _made_ready(settings) if what == "loopstart" else ""
        where, process = stack.enter_context(_serving(what, folder, url))
        body = _export(Path(folder), given.rows) if token else b""
        made.faults += warm(where, token) if token else []
        with _clients(what, (where, token), Path(folder), given) as clients:
            _go_on(made, (where, token, body), process.pid, given)
        for kind, (file, faults) in clients.items():
            made.requests[kind] = read_times(file)
            made.faults += faults
        if token:
            _check_kept(made, settings, given)
    return made


def _made_ready(settings: Settings) -> str:
    """A game with an open round whose counts are shown; a collector's token."""
    upgrade(settings)
    database = Database(settings)
    open_bench_round(database)
    with database.writing() as session:
        set_announcing(session, game_named(session, "bench"), Announcing(counts_while_open=True))
        token = make_token(session, "load", "collector", datetime.now(UTC))
    database.dispose()
    return token


def _export(folder: Path, rows: int) -> bytes:
    path = folder / "comments.csv"
    write_export(path, rows)
    return path.read_bytes()


def _go_on(made: Load, to: tuple[str, str, bytes], server: int, given: argparse.Namespace) -> None:
    """Lets the clients work for as long as is asked, imports, and notes when what was."""
    where, token, body = to
    time.sleep(2)  # everybody is connected, and what is only slow the first time is over
    begins = time.time()
    ends = begins + (given.minutes * 60 or given.seconds)
    watching = threading.Thread(target=_watch, args=(made, server, ends), daemon=True)
    watching.start()
    time.sleep(min(ALONE, ends - begins))
    made.spans["alone"] = (begins, time.time())
    imports = 0
    while token and (not imports or time.time() < ends):
        began = time.time()
        made.faults += hand_in_again(where, token, body, imports)
        made.spans.setdefault("import", (began, time.time()))
        imports += 1
        time.sleep(max(0.0, min(began + 60, ends) - time.time()))
    time.sleep(max(0.0, ends - time.time()))
    if token and time.time() - made.spans["import"][1] > 1:
        made.spans["after it"] = (made.spans["import"][1], time.time())
    watching.join()


def _watch(made: Load, server: int, ends: float) -> None:
    while time.time() < ends:
        made.memory.append((time.time(), memory_of(server)))
        time.sleep(1)


def _check_kept(made: Load, settings: Settings, given: argparse.Namespace) -> None:
    """Every comment that was answered for is kept, and once."""
    database = Database(settings)
    with database.reading() as session:
        kept = _count(session, "source_id LIKE 'single-%'")
        several = _count(session, "key LIKE '%-%'")
        imported = _count(session, "source_id LIKE 'k%'")
    database.dispose()
    answered = len(made.requests["comments"][0])
    # Those that were under way when the clients were stopped may be kept without an answer.
    if not answered <= kept <= answered + given.writers or several or imported != given.rows:
        made.faults.append(
            f"{answered} single comments answered for and {kept} kept, {several} of them several "
            f"times; {imported} of {given.rows} imported ones kept"
        )


def _count(session: Session, which: str) -> int:
    asked = text(f"SELECT count(*) FROM comments WHERE {which}")  # noqa: S608 - own words
    return int(session.connection().execute(asked).scalar_one())


@contextmanager
def _serving(what: str, folder: str, url: str) -> Iterator[tuple[str, subprocess.Popen[str]]]:
    """A server in a process of its own, and where it is."""
    command = [sys.executable, str(_HERE / "bench_served.py"), what, folder]
    environment = {**os.environ, **({"DATABASE_URL": url} if url else {})}
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=environment) as process:
        assert process.stdout is not None  # noqa: S101 - it was asked for
        try:
            yield process.stdout.readline().strip(), process
        finally:
            process.terminate()


@contextmanager
def _clients(
    what: str, to: tuple[str, str], folder: Path, given: argparse.Namespace
) -> Iterator[dict[str, tuple[Path, list[str]]]]:
    """The clients at work within the block; afterwards their files and what went wrong."""
    own = what == "loopstart"
    where, token = to
    told = {
        "comments": {
            "kind": "writers" if own else "plain writers",
            "address": ADDRESS if own else "/",
            "clients": given.writers,
            "pause": 0.0,
        },
        "views": {
            "kind": "viewers",
            "address": "/games/bench" if own else "/",
            "clients": given.viewers,
            "pause": PAUSE,
        },
    }
    found: dict[str, tuple[Path, list[str]]] = {}
    started: dict[str, subprocess.Popen[str]] = {}
    for kind, one in told.items():
        file = folder / f"{kind}.times"
        asked = json.dumps({**one, "where": where, "token": token, "first": 0, "file": str(file)})
        started[kind] = subprocess.Popen(
            [sys.executable, str(_HERE / "bench_clients.py"), asked],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )
        found[kind] = (file, [])
    yield found
    for kind, process in started.items():
        printed, _ = process.communicate()
        found[kind][1].extend(f"{kind}: {line}" for line in printed.splitlines())
