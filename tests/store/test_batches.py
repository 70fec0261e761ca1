"""Batches: all or nothing, the same bytes once, every word that was seen is kept."""

from __future__ import annotations

import threading
from dataclasses import replace
from datetime import timedelta

import pytest
from sqlmodel import func, select

from service.comments.formats import Unreadable
from service.comments.spans import Span
from service.comments.versions import KnownComment
from service.errors import WrongState
from service.store.announcing import announce_round
from service.store.batches import BatchReport
from service.store.comments import known_comments
from service.store.database import Database
from service.store.games import game_named
from service.store.round_rules import DraftRules
from service.store.rounds import close_round, draft_round, round_numbered
from service.store.tables_comments import BatchRow, CommentRow, VersionRow
from tests.store.handing_in import OPENS, after, comment, delivery, handed_in, open_first_round

MAREN = comment("Maren", "13 please", 1, id="m1")
TOVE = comment("Tove", "page 21", 2, id="t1")


def figures(report: BatchReport) -> tuple[int, int, int, bool]:
    return report.new, report.edited, report.unchanged, report.repeated


def kept(database: Database, game: str) -> dict[str, KnownComment]:
    with database.reading() as session:
        row = round_numbered(session, game_named(session, game), 1)
        return {one.comment.id or one.key: one for one in known_comments(session, row)}


def counts(database: Database) -> tuple[int, ...]:
    """The rows of batches, of comments and of the words that comments had before."""
    with database.reading() as session:
        tables = (BatchRow, CommentRow, VersionRow)
        return tuple(
            session.exec(select(func.count()).select_from(table)).one() for table in tables
        )


def test_a_batch_keeps_its_comments_as_they_were(database: Database, game: str) -> None:
    open_first_round(database, game)
    shy = comment("", "  spaces stay\n\tand lines 🧵 ", 3)
    full = comment("Åse", "7", 4, id="a1")
    report = handed_in(database, game, delivery([shy, full]))
    assert figures(report) == (2, 0, 0, False)
    known = list(kept(database, game).values())
    assert {one.comment for one in known} == {shy, full}
    assert [len(one.versions) for one in known] == [1, 1]
    assert all(one.versions[0].seen == Span.at(after(24)) for one in known)


def test_the_same_bytes_again_change_nothing(database: Database, game: str) -> None:
    open_first_round(database, game)
    first = handed_in(database, game, delivery([MAREN, TOVE]))
    before = counts(database), kept(database, game)
    again = handed_in(database, game, delivery([MAREN, TOVE], copied=30))
    assert figures(first) == (2, 0, 0, False)
    assert figures(again) == (0, 0, 2, True)
    assert again.batch.number == first.batch.number == 1
    assert (counts(database), kept(database, game)) == before


def test_the_same_comments_in_other_bytes_are_unchanged(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN, TOVE]))
    again = handed_in(database, game, delivery([TOVE, MAREN], copied=30))
    assert figures(again) == (0, 0, 2, False)
    assert counts(database) == (2, 2, 0)


def test_the_same_bytes_read_another_way_are_another_batch(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN], content=b"the file"))
    other = handed_in(database, game, delivery([MAREN, TOVE], content=b"the file"))
    assert figures(other) == (0, 0, 1, True)
    pasted = delivery([TOVE], content=b"the file")
    pasted = replace(pasted, export=replace(pasted.export, format="pasted"))
    report = handed_in(database, game, pasted)
    assert figures(report) == (1, 0, 0, False)


def test_an_edit_adds_a_version_and_keeps_the_first_words(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN, TOVE], copied=10))
    changed = comment("Maren", "rather 14", 1, id="m1")
    report = handed_in(database, game, delivery([changed, TOVE], copied=20))
    assert figures(report) == (0, 1, 1, False)
    words = [(one.text, one.written) for one in kept(database, game)["m1"].versions]
    # Seen unedited at 10 hours and edited at 20: the edit was made between the two.
    assert words == [
        ("13 please", Span.at(after(1))),
        ("rather 14", Span(after(10), after(20))),
    ]
    assert kept(database, game)["m1"].comment.edited == Span(after(10), after(20))


def test_a_key_stays_when_its_comment_is_edited(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN], copied=10))
    before = kept(database, game)["m1"].key
    handed_in(database, game, delivery([comment("Maren", "14", 1, id="m1")], copied=20))
    assert kept(database, game)["m1"].key == before


def test_seeing_a_comment_again_narrows_a_later_edit(database: Database, game: str) -> None:
    open_first_round(database, game)
    handed_in(database, game, delivery([MAREN], copied=10))
    handed_in(database, game, delivery([MAREN, TOVE], copied=15))
    handed_in(database, game, delivery([comment("Maren", "14", 1, id="m1")], copied=20))
    assert kept(database, game)["m1"].versions[-1].written == Span(after(15), after(20))


def test_a_batch_reports_what_could_not_be_read(database: Database, game: str) -> None:
    open_first_round(database, game)
    lost = Unreadable("line 3", "??", "The record has no text.")
    report = handed_in(database, game, delivery([MAREN], unreadable=(lost,)))
    assert report.batch.unreadable == [
        {"place": "line 3", "text": "??", "why": "The record has no text."}
    ]
    assert (report.batch.format, report.batch.mapping, report.batch.notes) == (
        "table",
        {"text": "Comment"},
        ["a note"],
    )


def test_an_empty_export_is_a_batch_of_nothing(database: Database, game: str) -> None:
    open_first_round(database, game)
    assert figures(handed_in(database, game, delivery([]))) == (0, 0, 0, False)


@pytest.mark.parametrize("how_many", [1, 2500])
def test_a_batch_of_any_size_comes_back_whole(database: Database, game: str, how_many: int) -> None:
    open_first_round(database, game)
    comments = [comment(f"viewer {n}", f"page {n % 63 + 1}", n / 1000) for n in range(how_many)]
    handed_in(database, game, delivery(comments))
    assert {one.comment for one in kept(database, game).values()} == set(comments)


def test_a_draft_takes_no_comments(database: Database, game: str) -> None:
    with database.writing() as session:
        draft_round(session, game_named(session, game), DraftRules(), OPENS)
    with pytest.raises(WrongState, match="round 1 is a draft and cannot be given comments"):
        handed_in(database, game, delivery([MAREN]))
    assert counts(database) == (0, 0, 0)


def test_a_closed_round_takes_comments_and_so_does_an_announced_one(
    database: Database, game: str
) -> None:
    open_first_round(database, game)
    with database.writing() as session:
        row = round_numbered(session, game_named(session, game), 1)
        close_round(session, row, after(48), after(49))
    assert figures(handed_in(database, game, delivery([MAREN]))) == (1, 0, 0, False)
    with database.writing() as session:
        game_row = game_named(session, game)
        row = round_numbered(session, game_row, 1)
        announce_round(session, game_row, row, keeps_in_hand=False, now=after(50))
        before = row.result
    handed_in(database, game, delivery([TOVE]))
    assert counts(database) == (2, 2, 0)
    with database.reading() as session:
        assert round_numbered(session, game_named(session, game), 1).result == before


def test_an_import_that_fails_leaves_nothing_behind(
    database: Database, game: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_first_round(database, game)

    def fail(*_: object) -> None:
        raise RuntimeError("the power went")

    monkeypatch.setattr("service.store.batches.count_gone", fail)
    with pytest.raises(RuntimeError, match="the power went"):
        handed_in(database, game, delivery([MAREN, TOVE]))
    assert counts(database) == (0, 0, 0)
    monkeypatch.undo()
    assert figures(handed_in(database, game, delivery([MAREN, TOVE]))) == (2, 0, 0, False)


def test_the_same_batch_from_two_hands_at_once_counts_once(database: Database, game: str) -> None:
    open_first_round(database, game)
    reports: list[BatchReport] = []
    start = threading.Barrier(2)

    def send() -> None:
        start.wait()
        reports.append(handed_in(database, game, delivery([MAREN, TOVE])))

    senders = [threading.Thread(target=send) for _ in range(2)]
    for sender in senders:
        sender.start()
    for sender in senders:
        sender.join()
    assert sorted(figures(report) for report in reports) == [(0, 0, 2, True), (2, 0, 0, False)]
    assert counts(database) == (1, 2, 0)


def test_a_time_of_microseconds_and_a_span_come_back_exact(database: Database, game: str) -> None:
    open_first_round(database, game)
    wide = Span(after(1), after(25) - timedelta(microseconds=1))
    vague = replace(comment("Odd", "9", id="o1"), posted=wide)
    handed_in(database, game, delivery([vague]))
    assert kept(database, game)["o1"].comment.posted == wide


@pytest.mark.parametrize("together", [True, False])
def test_a_name_that_is_written_as_anothers_id_is_another_writers(
    database: Database, game: str, *, together: bool
) -> None:
    open_first_round(database, game)
    named = comment("maren", "13", 1)
    known = replace(comment("Maren Odd", "13", 1), author_id="maren")
    batches = [[named, known]] if together else [[named], [known]]
    reports = [handed_in(database, game, delivery(batch)) for batch in batches]
    assert sum(report.new for report in reports) == 2
    again = handed_in(database, game, delivery([known, named], copied=30))
    assert figures(again) == (0, 0, 2, False)
