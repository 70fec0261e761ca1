"""The measure `closing` of bench.py: closing and announcing a round of very many comments.

For each size a database is filled straight away, without an import: the comments of bench_intake.py,
the short votes read as votes and all else as chat. Then a process of its own closes the round and
announces it, which counts it and makes its record, and tells the seconds and the most memory that it
had. Grown in proportion, a comment costs the same at each size.
"""

import environment

environment.enter("run")

import argparse
import json
import os
import subprocess
import sys
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from resource import RUSAGE_SELF
from tempfile import TemporaryDirectory
from typing import Any

from bench_databases import KINDS, new_database
from bench_intake import LASTS, OPENS, open_bench_round, peak, rows, say
from sqlmodel import Session

from service.comments.comment import Comment
from service.comments.spans import Span
from service.comments.versions import key_of, name_of
from service.settings import Settings, read_settings
from service.store.announcing import announce_round
from service.store.columns import id_of
from service.store.comments import NEW_COLUMNS
from service.store.database import Database
from service.store.games import game_named
from service.store.many import add_many, as_kept, in_parts
from service.store.readings_kept import VoteReader, read_by
from service.store.rounds import close_round, round_numbered
from service.store.tables_comments import BatchRow
from service.store.upgrade import upgrade

SIZES = (100_000, 300_000, 1_000_000)
#: Words up to this length are votes in these rows, longer ones chat.
_VOTE = 24


def add_closing(options: argparse.ArgumentParser) -> None:
    """The options of `closing`."""
    options.add_argument(
        "--rows", type=int, nargs="+", default=SIZES, metavar="N", help="how many comments"
    )
    options.add_argument("--database", choices=[*KINDS, "both"], default="both")


def closing(given: argparse.Namespace) -> None:
    """Prints seconds and memory of closing and announcing at each size, and how they grow."""
    for kind in KINDS if given.database == "both" else (given.database,):
        first: float | None = None
        for many in given.rows:
            told = _measured(kind, many)
            whole = told["closing"] + told["announcing"]
            each = whole / many * 1e6
            first = first or each
            print(
                f"{kind}, {many:,} comments: closed in {told['closing']:.2f} s, announced in "
                f"{told['announcing']:.1f} s ({told['work']:.1f} s of its own work), {each:.0f} µs a "
                f"comment, {each / first:.2f} times that of the smallest; memory at most "
                f"{told['memory']:.0f} MB, {told['memory'] - told['before']:.0f} of it for this",
                flush=True,
            )


def _measured(kind: str, many: int) -> dict[str, float]:
    with new_database(kind) as url, TemporaryDirectory() as folder:
        settings = Settings(data_folder=Path(folder), database_url=url)
        began = time.perf_counter()
        _fill(settings, many)
        say(f"  {kind}: {many:,} comments filled in within {time.perf_counter() - began:.0f} s")
        environment_ = {**os.environ, **({"DATABASE_URL": url} if url else {})}
        command = [sys.executable, str(Path(__file__).resolve()), folder]
        done = subprocess.run(
            command, env=environment_, stdout=subprocess.PIPE, text=True, check=True
        )
    told: dict[str, float] = json.loads(done.stdout)
    return told


def _fill(settings: Settings, many: int) -> None:
    """A database with an open round of so many comments."""
    upgrade(settings)
    database = Database(settings)
    reader = VoteReader(open_bench_round(database))
    with database.writing() as session:
        row = round_numbered(session, game_named(session, "bench"), 1)
        row.read_by = read_by(reader.question)
        batch = _batch(id_of(row), many)
        session.add_all([row, batch])
        session.flush()
        made_by = (id_of(row), id_of(batch))
        for part in in_parts(_comments(many, reader, made_by)):
            add_many(session, "comments", NEW_COLUMNS, part)
    database.dispose()


def _batch(round_id: int, many: int) -> BatchRow:
    told: dict[str, Any] = {"name": "bench", "format": "table", "digest": "bench", "size": 0}
    return BatchRow(
        **told,
        round_id=round_id,
        number=1,
        mapping={},
        notes=[],
        unreadable=[],
        unreadable_count=0,
        new=many,
        edited=0,
        unchanged=0,
        gone=0,
        complete=False,
        copied_at=OPENS + LASTS,
        handed_in=OPENS + LASTS,
        handed_in_by="bench",
    )


def _comments(many: int, reader: VoteReader, made_by: tuple[int, int]) -> Iterator[tuple[Any, ...]]:
    """Each of the made-up comments as its row."""
    last = ""
    for number, (source_id, author, posted, words) in enumerate(rows(many), start=1):
        if source_id == last:
            continue
        last = source_id
        at = datetime.fromisoformat(posted).astimezone(UTC)
        key = key_of(Comment(author, words, Span.at(at), source_id))
        kept = reader.read(words) if len(words) <= _VOTE else ("", False)
        yield (
            *(number, *made_by, key, name_of(author), author, None, source_id, None, ""),
            *(as_kept(at), as_kept(at), None, None, words, *kept),
        )


def _close_and_announce(settings: Settings) -> dict[str, float]:
    """What it takes in this process."""
    database = Database(settings)
    now = OPENS + LASTS + timedelta(hours=1)
    before = peak(RUSAGE_SELF)
    began, worked = time.perf_counter(), time.process_time()
    with database.writing() as session:
        close_round(session, _round(session), None, now)
    closed = time.perf_counter()
    with database.writing() as session:
        game = game_named(session, "bench")
        announce_round(session, game, _round(session), keeps_in_hand=False, now=now)
    done = time.perf_counter()
    database.dispose()
    return {
        "closing": closed - began,
        "announcing": done - closed,
        "work": time.process_time() - worked,
        "memory": peak(RUSAGE_SELF),
        "before": before,
    }


def _round(session: Session) -> Any:
    return round_numbered(session, game_named(session, "bench"), 1)


def main() -> int:
    """Closes and announces the round of the folder's database, or of DATABASE_URL."""
    print(json.dumps(_close_and_announce(read_settings(data_folder=Path(sys.argv[1])))))
    return 0


if __name__ == "__main__":
    sys.exit(main())
