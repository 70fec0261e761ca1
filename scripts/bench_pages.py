"""The measure `pages` of bench.py: how fast pages answer while very many comments are stored.

A game has a round open with as many comments as are asked for, its counts shown while open, which is
the most that a board has to tell. It is served by a process of its own, and so is the plainest
FastAPI app there is: one route that answers with a small JSON, without a database and without any
header of security. Both are asked in turns over one connection each that stays open, always for the
whole page. Each time is the middle one of many.
"""

import environment

environment.enter("run")

import argparse
import http.client
import statistics
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from tempfile import TemporaryDirectory
from urllib.parse import urlsplit

from bench_intake import time_intake, write_export
from fastapi import FastAPI
from serving import serve, take_port, url_of

from service.app import create_app
from service.pages.desk_access import COOKIE
from service.settings import Settings
from service.store.announcing_settings import Announcing, set_announcing
from service.store.database import Database
from service.store.desk import begin_session
from service.store.games import game_named

ROWS = 100_000
ASKED = 400
#: Asked for in a row before it is another one's turn.
_IN_A_ROW = 20


@dataclass(frozen=True)
class Place:
    """A page that is measured: its address, and how many times as long as the bare route is let."""

    name: str
    address: str
    at_most: float
    at_desk: bool = False


PLACES = (
    Place("board", "/games/bench", 3),
    Place("overlay", "/games/bench?plain", 3),
    Place("list of games", "/", 8),
    Place("the desk's comments", "/desk/games/bench/rounds/1/comments", 8, at_desk=True),
    Place("those that count", "/desk/games/bench/rounds/1/comments?show=counts", 8, at_desk=True),
)


@dataclass(frozen=True)
class Asker:
    """An open connection to a server, and what is sent along."""

    connection: http.client.HTTPConnection
    headers: dict[str, str]

    def seconds(self, address: str) -> tuple[float, int]:
        """How long an answer takes, and how many bytes it has."""
        began = time.perf_counter()
        self.connection.request("GET", address, headers=self.headers)
        answer = self.connection.getresponse()
        content = answer.read()
        took = time.perf_counter() - began
        if answer.status != 200:
            raise SystemExit(f"{address} answered {answer.status}: {content[:200]!r}")
        return took, len(content)


def add_pages(options: argparse.ArgumentParser) -> None:
    """The options of `pages`."""
    options.add_argument(
        "--rows", type=int, default=ROWS, metavar="N", help=f"how many comments ({ROWS:,})"
    )
    options.add_argument(
        "--asked", type=int, default=ASKED, metavar="N", help=f"requests of each page ({ASKED})"
    )


def pages(given: argparse.Namespace) -> None:
    """Prints how long each page takes, in milliseconds and as times the bare route."""
    with TemporaryDirectory() as folder, ExitStack() as servers:
        key = _filled(Path(folder), given.rows)
        bare = servers.enter_context(_serving("bare", folder))
        own = servers.enter_context(_serving("loopstart", folder))
        for place in PLACES:
            cookie = {"Cookie": f"{COOKIE}={key}"} if place.at_desk else {}
            print(_told(place, Asker(bare, {}), Asker(own, cookie), given), flush=True)


def _told(place: Place, bare: Asker, own: Asker, given: argparse.Namespace) -> str:
    """One page's line."""
    first, size = own.seconds(place.address)
    floors: list[float] = []
    times: list[float] = []
    while len(times) < given.asked:
        floors += [bare.seconds("/")[0] for _ in range(_IN_A_ROW)]
        times += [own.seconds(place.address)[0] for _ in range(_IN_A_ROW)]
    floor, middle = statistics.median(floors), statistics.median(times)
    late = sorted(times)[len(times) * 99 // 100]
    return (
        f"{place.name}, {given.rows:,} comments stored, {size / 1000:.0f} kB: "
        f"{middle * 1000:.2f} ms (99 of 100 within {late * 1000:.2f}, the first {first * 1000:.0f}), "
        f"bare route {floor * 1000:.2f} ms, ratio {middle / floor:.1f} (at most {place.at_most:g})"
    )


def _filled(folder: Path, rows: int) -> str:
    """A database with so many comments; the key of a session at its desk."""
    export = folder / "comments.csv"
    write_export(export, rows)
    with export.open("rb") as file:
        time_intake(file, folder)
    database = Database(Settings(data_folder=folder))
    with database.writing() as session:
        set_announcing(session, game_named(session, "bench"), Announcing(counts_while_open=True))
        key = begin_session(session, "link", datetime.now(UTC))
    database.dispose()
    return key


@contextmanager
def _serving(what: str, folder: str) -> Iterator[http.client.HTTPConnection]:
    """A server in a process of its own, and a connection to it."""
    command = [sys.executable, str(Path(__file__).resolve()), what, folder]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as process:
        assert process.stdout is not None  # noqa: S101 - it was asked for
        where = urlsplit(process.stdout.readline().strip())
        connection = http.client.HTTPConnection(where.hostname or "", where.port, timeout=60)
        try:
            yield connection
        finally:
            connection.close()
            process.terminate()


def bare_app() -> FastAPI:
    """The plainest app there is."""
    app = FastAPI()

    @app.get("/")
    def get_it() -> dict[str, str]:
        return {"page": "bare"}

    return app


def main() -> int:
    """Serves what the command line names, until it is stopped."""
    what, folder = sys.argv[1:]
    # Counted as always, but never refused.
    settings = Settings(data_folder=Path(folder), rate_limit=100_000_000)
    app = bare_app() if what == "bare" else create_app(settings)
    with take_port("127.0.0.1", 0) as taken:
        return serve(app, taken, lambda: print(url_of(taken), flush=True), settings)


if __name__ == "__main__":
    sys.exit(main())
