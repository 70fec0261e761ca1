"""The desk's pages of comments hold just what the count of the whole round says of them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from service.comments.comment import Comment
from service.comments.spans import Span
from service.counting.round import Ruling
from service.errors import NotFound, WrongState
from service.store.comment_index import SHOWN, Shown
from service.store.comment_pages import CommentPage, SettledComment, comment_page
from service.store.counting import count_stored
from service.store.database import Database
from service.store.desk_counts import count_if_kept, count_kept
from service.store.rulings import rule_on_comment
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round
from tests.store.playing import closed, draft, found


def some() -> list[Comment]:
    """Votes, changes of mind, chat, the host's own, and times that cannot be told."""
    talk = ("13 please", "what a lovely thread", "12 or 40", "page 21", "I take it back")
    plain = [comment(f"Viewer {n % 11}", talk[n % 5], n - 3) for n in range(60)]
    wide = Span(after(-1), after(1))
    vague = [replace(comment(f"Vague {n}", talk[n % 5]), posted=wide) for n in range(10)]
    return [*plain, *vague, comment("Island Guild", "Which page?", 0.5), comment("", "hello", 5)]


@pytest.fixture
def played(database: Database, game: str) -> Database:
    open_first_round(database, game)
    handed_in(database, game, delivery(some(), copied=70))
    return database


def page(
    database: Database, game: str, shown: Shown = "all", start: str | None = None, limit: int = 7
) -> CommentPage:
    with database.reading() as session:
        return comment_page(session, *found(session, game), shown, (start, limit))


def whole_list(database: Database, game: str, shown: Shown) -> list[SettledComment]:
    """All pages of a list, one after the other."""
    part = page(database, game, shown)
    all_of_them, keys = list(part.comments), 0
    while part.later is not None:
        keys += 1
        assert keys < 100
        before = len(all_of_them)
        part = page(database, game, shown, part.later)
        assert part.before == before
        all_of_them += part.comments
    assert len(all_of_them) == part.total == part.many[shown]
    return all_of_them


def as_counted(database: Database, game: str) -> dict[str, tuple[object, ...]]:
    """What the whole count says of each comment: its cause, the sentence and the pages."""
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    told: dict[str, tuple[object, ...]] = {}
    for ballot in counted.ballots:
        told[ballot.comment.key] = (None, ballot.outcome.pages)
    for aside in counted.set_aside:
        told[aside.comment.key] = (aside.outcome.cause, aside.outcome.pages)
    return told


def assert_the_same(database: Database, game: str) -> None:
    told = as_counted(database, game)
    lists = {shown: whole_list(database, game, shown) for shown in SHOWN}
    assert {one.comment.key: (one.cause, one.pages) for one in lists["all"]} == told
    parts = [one.comment.key for shown in ("look", "set-aside", "counts") for one in lists[shown]]
    assert sorted(parts) == sorted(told)
    assert all(one.cause is None for one in lists["counts"])
    assert {one.cause for one in lists["look"]} <= {"needs a look", "cannot tell when"}
    for found_list in lists.values():
        times = [one.comment.written.earliest for one in found_list]
        assert times == sorted(times)


def test_the_lists_are_the_count_in_parts(played: Database, game: str) -> None:
    assert_the_same(played, game)


def test_rulings_move_their_voters_comments_only(played: Database, game: str) -> None:
    before = page(played, game).many
    assert before["look"] > 3
    looks = whole_list(played, game, "look")
    for number, one in enumerate(looks[:4]):
        words = Ruling((21,) if number % 2 else (), "seen", after(60))
        with played.writing() as session:
            rule_on_comment(session, *found(session, game), one.comment.key, words)
        assert_the_same(played, game)
    assert page(played, game).many["look"] < before["look"]


def test_a_closing_and_another_batch_are_seen_at_once(played: Database, game: str) -> None:
    whole = page(played, game).total
    closed(played, game, at=after(30), hours=71)
    assert_the_same(played, game)
    handed_in(played, game, delivery([comment("Late", "13", 29)], content=b"more", copied=72))
    assert page(played, game).total == whole + 1
    assert_the_same(played, game)


def test_a_page_begins_at_a_comment_even_once_it_is_ruled_on(played: Database, game: str) -> None:
    looks = whole_list(played, game, "look")
    third = looks[2].comment.key
    with played.writing() as session:
        rule_on_comment(session, *found(session, game), third, Ruling((), "chat", after(60)))
    part = page(played, game, "look", third)
    assert part.before == 2
    assert part.comments[0].comment.key == looks[3].comment.key


def test_the_page_before_is_reached_from_the_last(played: Database, game: str) -> None:
    part = page(played, game, "all", limit=20)
    second = page(played, game, "all", part.later, 20)
    assert second.earlier == part.comments[0].comment.key
    assert page(played, game, "all", second.earlier, 20).comments == part.comments


def test_an_unknown_key_and_a_draft_are_refused(played: Database, game: str) -> None:
    with pytest.raises(NotFound, match="no comment 'nobody'"):
        page(played, game, "all", "nobody")
    draft(played, game)
    with played.reading() as session, pytest.raises(WrongState):
        comment_page(session, *found(session, game, 2), "all", (None, 5))


def test_a_count_is_kept_until_something_comes_in(played: Database, game: str) -> None:
    with played.reading() as session:
        place = found(session, game)
        first = count_kept(session, *place)
        assert count_kept(session, *place) is first
        assert count_if_kept(session, *place) is first
    handed_in(played, game, delivery([comment("New", "13", 3)], content=b"new", copied=71))
    with played.reading() as session:
        place = found(session, game)
        assert count_if_kept(session, *place) is None
        assert count_kept(session, *place).result.votes(13) == first.result.votes(13) + 1
