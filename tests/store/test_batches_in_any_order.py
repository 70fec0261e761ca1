"""Laws of batches: their order never matters, twice changes nothing, none is left half."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from itertools import permutations
from pathlib import Path

import pytest
from sqlmodel import func, select

from service.comments.comment import Comment
from service.comments.versions import KnownComment
from service.settings import Settings
from service.store import leftovers
from service.store.batches import reach_of, some_batches
from service.store.comments import known_comments
from service.store.counting import count_stored
from service.store.database import Database
from service.store.games import game_named
from service.store.rounds import round_numbered
from service.store.tables_comments import BatchRow, CommentRow, VersionRow
from tests.store.handing_in import Handed, after, comment, delivery, handed_in, open_first_round
from tests.store.playing import found

ROOT = Path(__file__).parents[2]


def known(database: Database, game: str) -> dict[str, KnownComment]:
    with database.reading() as session:
        row = found(session, game)[1]
        return {one.key: one for one in known_comments(session, row)}


def rows(database: Database) -> tuple[int, ...]:
    with database.reading() as session:
        tables = (BatchRow, CommentRow, VersionRow)
        return tuple(
            session.exec(select(func.count()).select_from(table)).one() for table in tables
        )


def forget(database: Database) -> None:
    with database.writing() as session:
        for table in (VersionRow, CommentRow, BatchRow):
            for row in session.exec(select(table)).all():
                session.delete(row)
            session.flush()


def batches() -> list[Handed]:
    """Three batches of one game: an edit, a late comment, a deleted one, one of two names."""
    maren = comment("Maren", "13 please", 1, id="m1")
    tove = comment("Tove", "page 21", 2, id="t1")
    odd, late = comment("Odd", "7", 3), comment("Lis", "page 9", 30, id="l1")
    edited = comment("Maren", "page 14 please", 1, id="m1")
    return [
        delivery([maren, tove, odd, odd], copied=10),
        delivery([edited, tove, odd], copied=20),
        delivery([edited, odd, late], copied=40, complete=True),
    ]


def told(database: Database, game: str) -> tuple[object, ...]:
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    return (counted.result, counted.change, known(database, game))


def test_the_order_of_batches_never_matters(database: Database, game: str) -> None:
    open_first_round(database, game)
    outcomes = []
    for order in permutations(batches()):
        for one in order:
            handed_in(database, game, one)
        outcomes.append(told(database, game))
        forget(database)
    assert outcomes[0][0].tally == ((7, 1), (9, 1), (14, 1))  # type: ignore[attr-defined]
    for other in outcomes[1:]:
        assert other == outcomes[0]


def test_handing_in_again_changes_nothing_at_any_time(database: Database, game: str) -> None:
    open_first_round(database, game)
    for one in batches():
        handed_in(database, game, one)
    before = told(database, game), rows(database)
    for one in batches():
        again = handed_in(database, game, one)
        assert (again.repeated, again.new, again.edited, again.gone) == (True, 0, 0, 0)
    # In other bytes too: the same comments, copied when they were.
    for place, one in enumerate(batches()):
        other = Handed(one.export, b"%d" % place, one.copied_at, one.complete)
        report = handed_in(database, game, other)
        assert (report.new, report.edited, report.gone) == (0, 0, 0)
    assert (told(database, game), rows(database)[1:]) == (before[0], before[1][1:])


@pytest.mark.parametrize("at_once", [1, 7])
def test_a_batch_that_is_merged_in_parts_is_merged_alike(
    database: Database, game: str, monkeypatch: pytest.MonkeyPatch, at_once: int
) -> None:
    people = [comment(f"Viewer {n % 20}", f"page {n % 5 + 1}", n / 10) for n in range(60)]
    changed = [
        Comment(one.author, "rather 9", one.posted) if n % 7 == 0 else one
        for n, one in enumerate(people)
    ]
    outcomes: list[tuple[tuple[object, ...], int, int, int]] = []
    for size in (leftovers.AT_ONCE, at_once):
        monkeypatch.setattr(leftovers.Leftovers.__init__, "__defaults__", (size,))
        if not outcomes:
            open_first_round(database, game)
        handed_in(database, game, delivery(people, copied=10))
        report = handed_in(database, game, delivery(changed, copied=20))
        outcomes.append((told(database, game), report.new, report.edited, report.unchanged))
        forget(database)
    assert outcomes[0] == outcomes[1]
    assert outcomes[0][2] == 9


def test_a_comment_that_a_complete_batch_lacks_was_deleted_and_the_host_decides(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    first, second, last = batches()
    handed_in(database, game, first)
    # Not said to be complete, so it tells nothing of what it lacks.
    assert handed_in(database, game, second).gone == 0
    assert handed_in(database, game, last).gone == 1
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    [look] = counted.result.looks
    assert look.pages == (21,)
    assert "it was deleted between 2026-03-02 14:00 UTC and 2026-03-03 10:00 UTC" in look.why
    assert counted.result.figures.ballots == 3


def test_what_was_deleted_after_the_closing_stood_then(database: Database, game: str) -> None:
    open_first_round(database, game)
    first, second, last = batches()
    for one in (first, second, last):
        handed_in(database, game, one)
    with database.writing() as session:
        found(session, game)[1].closes = after(20)
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    # Tove's was shown at hour 20 and is gone at hour 40.
    assert "Tove" not in [look.author for look in counted.result.looks]
    assert dict(counted.result.tally)[21] == 1


def test_a_comment_that_comes_back_was_not_deleted(database: Database, game: str) -> None:
    open_first_round(database, game)
    first, second, last = batches()
    for one in (first, second, last):
        handed_in(database, game, one)
    handed_in(database, game, delivery([comment("Tove", "page 21", 2, id="t1")], copied=50))
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    assert counted.result.looks == ()


def test_a_batch_tells_the_time_it_covers_and_whether_it_reaches_past_the_closing(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    first, second, last = batches()
    for one in (first, second, last):
        handed_in(database, game, one)
    with database.reading() as session:
        kept = some_batches(session, found(session, game)[1], 99)
    assert [(one.first, one.last) for one in kept] == [
        (after(1), after(3)),
        (after(1), after(3)),
        (after(1), after(30)),
    ]
    assert [reach_of(one, after(20)) for one in kept] == ["no", "yes", "yes"]
    for batch in kept:
        batch.copied_told = False
    # The last shows a comment of hour 30; nobody told when the others were copied.
    assert [reach_of(one, after(20)) for one in kept] == ["no", "cannot tell", "yes"]
    assert reach_of(kept[0], None) is None


_IMPORT = """
import sys
from service.settings import read_settings
from service.store.database import Database
from service.store import keeping
from tests.store.handing_in import comment, delivery, handed_in

real = keeping._add_fresh
def adding(*given):
    real(*given)
    print("half way", flush=True)
    sys.stdin.readline()
keeping._add_fresh = adding
people = [comment(f"Viewer {n}", f"page {n % 63 + 1}", n / 1000) for n in range(300)]
handed_in(Database(read_settings()), "windy-island", delivery(people))
print("done", flush=True)
"""


def importing(settings: Settings) -> subprocess.Popen[str]:
    """A process that imports 300 comments and waits with them half stored."""
    told_it = {"LOOPSTART_DATA_FOLDER": str(settings.data_folder), "PYTHONPATH": str(ROOT)}
    if settings.database_url:
        told_it["DATABASE_URL"] = settings.database_url
    process = subprocess.Popen(  # noqa: S603 - this very Python, on words of this test
        [sys.executable, "-c", _IMPORT],
        env=os.environ | told_it,
        cwd=ROOT,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert process.stdout is not None
    assert process.stdout.readline() == "half way\n"
    return process


@pytest.mark.skipif(os.name == "nt", reason="Windows ends a process in another way")
def test_an_import_that_is_killed_leaves_nothing_and_can_be_made_again(
    settings: Settings, database: Database, game: str
) -> None:
    open_first_round(database, game)
    process = importing(settings)
    process.send_signal(signal.SIGKILL)
    process.communicate()
    assert process.returncode == -signal.SIGKILL
    assert rows(database) == (0, 0, 0)
    people = [comment(f"Viewer {n}", f"page {n % 63 + 1}", n / 1000) for n in range(300)]
    began = time.monotonic()
    assert handed_in(database, game, delivery(people)).new == 300
    # Nobody waits for the one that was killed.
    assert time.monotonic() - began < settings.database_wait
    with database.reading() as session:
        assert (
            len(
                list(known_comments(session, round_numbered(session, game_named(session, game), 1)))
            )
            == 300
        )
