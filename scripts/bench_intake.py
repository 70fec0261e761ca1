"""The measure `intake` of bench.py: how fast an export is read, stored and settled.

The export is a CSV of made-up comments as a round of very many has them. Of 100 rows 45 are short
votes, which repeat as they do in life: a few pages are named by most, in ten wordings. The other
55 are chat of four to 22 words drawn one by one, so that hardly two are the same; some of it holds
numbers that choose nothing. Authors write one to six comments each, and one comment in 500 stands
twice. Ids, authors, times and texts stand in four columns.
"""

import argparse
import csv
import random
import re
import resource
import sqlite3
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import BinaryIO

from service.api.uploads import Uploaded
from service.ballots.reading import Question
from service.chart.grid import Chart
from service.comments.formats import Source
from service.comments.intake import open_export
from service.settings import Settings
from service.store.batches import Delivery, digest_of, hand_in
from service.store.counting import count_stored, question_of
from service.store.database import Database
from service.store.games import NewGame, game_named, make_game
from service.store.opening import open_round
from service.store.readings_kept import VoteReader
from service.store.round_rules import DraftRules
from service.store.rounds import draft_round, round_numbered
from service.store.staging import staged
from service.store.upgrade import upgrade

ROWS = 1_000_000
OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
LASTS = timedelta(hours=48)
PAGES = 63
_VOTES = (
    *("{}", "{} please", "page {}", "page {} please!", "Page {}", "I vote for {}", "{}!"),
    *("my vote: {}", "number {} 😊", "#{}"),
)
_WORDS = (
    "lovely thread colour needle linen hoop cat garden morning evening island harbour boat storm "
    "window light blue green stitching finished started again really beautiful patience border "
    "corner flower wave sail lantern gull rope stone wool village winter never always watching "
    "from my kitchen with tea and cake today last week thank you for this such calm so happy to "
    "see it grow what a joy hello everyone greetings"
).split()
_NUMBERS = ("I am {} years old", "watched it {} times", "since 20{:02}", "my {} cats agree")


@dataclass
class Timed:
    """Seconds by what was done, and for how many of them the processor worked here."""

    seconds: dict[str, float] = field(default_factory=dict)
    busy: float = 0.0

    @contextmanager
    def timing(self, what: str) -> Iterator[None]:
        """Times a block."""
        began, busy = time.perf_counter(), time.process_time()
        yield
        self.seconds[what] = self.seconds.get(what, 0.0) + time.perf_counter() - began
        self.busy += time.process_time() - busy


def add_intake(options: argparse.ArgumentParser) -> None:
    """The options of `intake`."""
    options.add_argument(
        "--rows", type=int, default=ROWS, metavar="N", help=f"how many comments ({ROWS:,})"
    )


def intake(given: argparse.Namespace) -> None:
    """Prints how long the way of an export takes, as times the floor, and what it takes for it."""
    with TemporaryDirectory() as folder:
        export = Path(folder) / "comments.csv"
        write_export(export, given.rows)
        say(f"{given.rows:,} rows, {export.stat().st_size / 1e6:.0f} MB; the floor first.")
        before = time_floor(export, Path(folder) / "before.sqlite3")
        say(f"  floor: {before:.1f} s")
        with export.open("rb") as file:
            timed = time_intake(file, Path(folder) / "data")
        after = time_floor(export, Path(folder) / "after.sqlite3")
        say(f"  floor again: {after:.1f} s")
    # A computer that others use too is not as fast all the time.
    floor = (before + after) / 2
    whole = sum(timed.seconds.values())
    parts = ", ".join(f"{what} {seconds:.1f} s" for what, seconds in timed.seconds.items())
    each = 1e6 / given.rows
    here, beside = timed.busy, busy_beside()
    print(
        f"intake, {given.rows:,} rows: {whole:.1f} s ({whole * each:.1f} µs a row; {parts}), "
        f"floor {floor:.1f} s ({floor * each:.2f} µs), ratio {whole / floor:.1f}; "
        f"processors worked {here:.1f} s here and {beside:.1f} s beside; "
        f"memory at most {peak(resource.RUSAGE_SELF):.0f} MB here and "
        f"{peak(resource.RUSAGE_CHILDREN):.0f} MB beside"
    )


def say(words: str) -> None:
    """Says how far it is, beside the figures."""
    print(words, file=sys.stderr, flush=True)


def peak(whose: int) -> float:
    """The most memory that this process had, or one that it started, in megabytes."""
    most = resource.getrusage(whose).ru_maxrss
    return most / (1e6 if sys.platform == "darwin" else 1e3)


def busy_beside() -> float:
    """The seconds for which processors worked for the processes that this one started."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def rows(many: int) -> Iterator[tuple[str, str, str, str]]:
    """The rows of the export: id, author, time and words."""
    chance = random.Random(many)  # noqa: S311 - the same rows each time, nothing secret
    for number in range(many):
        at = OPENS + LASTS * number / many
        author = f"Viewer {chance.randrange(many * 2 // 5 + 1)}"
        row = (f"k{number}", author, at.strftime("%Y-%m-%dT%H:%M:%SZ"), _words(chance))
        yield row
        if number % 500 == 499:
            yield row


def _words(chance: random.Random) -> str:
    if chance.random() < 0.45:
        page = min(PAGES, int(chance.paretovariate(0.6)))
        return chance.choice(_VOTES).format(page)
    said = chance.choices(_WORDS, k=chance.randint(4, 22))
    if chance.random() < 0.12:
        said.append(chance.choice(_NUMBERS).format(chance.randint(1, 40)))
    return " ".join(said).capitalize() + chance.choice((".", "!", "", "...", " 🧵"))


def write_export(path: Path, many: int) -> None:
    """Writes the export."""
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(("id", "author", "posted", "text"))
        writer.writerows(rows(many))


def time_floor(export: Path, database: Path) -> float:
    """Seconds of the least that must be done: rows read, digits found, everything stored."""
    began = time.perf_counter()
    connection = sqlite3.connect(database)
    connection.execute("CREATE TABLE comments (id, author, posted, text, numbers)")
    with export.open(encoding="utf-8", newline="") as file:
        connection.executemany(
            "INSERT INTO comments VALUES (?, ?, ?, ?, ?)",
            (
                (*row.values(), ",".join(re.findall(r"\d+", row["text"])))
                for row in csv.DictReader(file)
            ),
        )
    connection.commit()
    connection.close()
    return time.perf_counter() - began


def time_intake(file: BinaryIO, folder: Path) -> Timed:
    """Seconds of the whole way by its parts."""
    timed = Timed()
    settings = Settings(data_folder=folder)
    upgrade(settings)
    database = Database(settings)
    reader = VoteReader(open_bench_round(database))
    content = Uploaded(file, file.seek(0, 2))
    source = Source("comments.csv", "Atlantic/Faroe", OPENS + LASTS)
    with timed.timing("reading and staging"):
        read = staged(open_export(content, source), reader, content.size)
        made = read.__enter__()
    with timed.timing("storing"), database.writing() as session:
        row = round_numbered(session, game_named(session, "bench"), 1)
        digest = digest_of(content)
        delivery = Delivery("comments.csv", content.size, digest, made, OPENS + LASTS, "", OPENS)
        hand_in(session, row, delivery)
    read.__exit__(None, None, None)
    with timed.timing("settling"), database.reading() as session:
        game = game_named(session, "bench")
        count_stored(session, game, round_numbered(session, game, 1), 2000)
    database.dispose()
    return timed


def open_bench_round(database: Database) -> Question:
    """A game with an open round; what the round asks."""
    with database.writing() as session:
        new = NewGame("bench", "The bench", "Atlantic/Faroe", Chart(9, 7))
        game = make_game(session, new, OPENS)
        row = draft_round(session, game, DraftRules(opens=OPENS), OPENS)
        open_round(session, game, row, OPENS)
        return question_of(game, row)
