"""A stored count that lists only so much is the count of all, listed from its beginning."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from sqlmodel import select

from service.ballots.reading import Reading
from service.comments.comment import Comment
from service.comments.spans import Span
from service.counting.round import Ruling
from service.store import readings_kept
from service.store.counting import count_stored
from service.store.database import Database
from service.store.games import change_game, game_named
from service.store.readings import Counted
from service.store.tables import RoundRow
from service.store.tables_comments import CommentRow
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round
from tests.store.playing import found, rule


def some() -> list[Comment]:
    """Votes, chat, the host's own, late and early ones, and times that cannot be told."""
    talk = ("13 please", "what a lovely thread", "12 or 40", "page 21", "hello all")
    plain = [comment(f"Viewer {n % 17}", f"{talk[n % 5]}", n - 3) for n in range(60)]
    plain += [comment(f"Steady {n % 5}", f"page {n % 7 + 2} please", n * 1.5) for n in range(12)]
    plain += [comment("At Once", f"page {page} please", 9) for page in (3, 4)]
    wide = Span(after(-1), after(1))
    vague = [replace(comment(f"Vague {n}", talk[n % 5]), posted=wide) for n in range(10)]
    return [*plain, *vague, comment("Island Guild", "Which page?", 0.5), comment("", "hello", 5)]


def counted(database: Database, game: str, most: int | None) -> Counted:
    with database.reading() as session:
        return count_stored(session, *found(session, game), most)


def told(one: Counted) -> tuple[object, ...]:
    result = one.result
    return (result.tally, result.steps, result.winner, result.why, result.figures, one.change)


@pytest.fixture
def played(database: Database, game: str) -> Database:
    open_first_round(database, game)
    with database.writing() as session:
        found(session, game)[1].closes = after(40)
    handed_in(database, game, delivery(some(), copied=70))
    return database


@pytest.mark.parametrize("most", [0, 1, 4, 1000])
def test_what_is_listed_is_the_beginning_of_all(played: Database, game: str, most: int) -> None:
    whole, part = counted(played, game, None), counted(played, game, most)
    assert told(part) == told(whole)
    assert part.result.ballots == whole.result.ballots[:most]
    assert part.result.looks == whole.result.looks[:most]
    others = [one for one in whole.result.set_aside if not one.needs_look]
    assert [one for one in part.result.set_aside if not one.needs_look] == others[:most]
    causes = {cause for cause, _ in whole.result.figures.set_aside}
    assert causes >= {"the host's own", "before the opening", "after the closing",
                      "cannot tell when", "chooses no page", "needs a look"}  # fmt: skip


def test_readings_are_kept_and_not_made_again(
    played: Database, game: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole = counted(played, game, None)
    monkeypatch.setattr(readings_kept, "read_vote", _never)
    assert counted(played, game, None) == whole


def _never(*_: object) -> Reading:
    pytest.fail("a comment was read once more")


def test_readings_of_another_reader_are_not_used_and_the_next_batch_renews_them(
    played: Database, game: str
) -> None:
    whole = counted(played, game, None)
    with played.writing() as session:
        found(session, game)[1].read_by = "an older reader"
        for row in session.exec(select(CommentRow)):
            row.reading, row.speaks = '["counts",[1],null,"wrong",[]]', True
    assert counted(played, game, None) == whole
    handed_in(played, game, delivery([], copied=71))
    with played.reading() as session:
        assert session.exec(select(RoundRow)).one().read_by != "an older reader"
        assert {row.speaks for row in session.exec(select(CommentRow))} == {True, False}
    assert counted(played, game, None) == whole


@pytest.mark.parametrize(
    "change",
    [
        lambda database, game: rule(database, game, "hello", Ruling((7,), "a slip", after(71))),
        lambda database, game: _say_hosts(database, game, ("Viewer 3",)),
    ],
    ids=["a ruling on chat", "another host"],
)
def test_a_change_is_seen_at_the_next_count(
    played: Database, game: str, change: Callable[[Database, str], None]
) -> None:
    before = counted(played, game, 2)
    change(played, game)
    now, whole = counted(played, game, 2), counted(played, game, None)
    assert told(now) == told(whole) != told(before)


def _say_hosts(database: Database, game: str, hosts: tuple[str, ...]) -> None:
    with database.writing() as session:
        # As of a round that was opened before the host's names were frozen with it.
        found(session, game)[1].hosts = None
        change_game(session, game_named(session, game), {"hosts": list(hosts)})
