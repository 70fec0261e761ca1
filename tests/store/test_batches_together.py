"""Small batches kept in one transaction: what is kept is the same as one after the other."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import ExitStack
from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlmodel import select

from service.comments.comment import Comment
from service.comments.formats import OpenExport
from service.comments.versions import KnownComment
from service.errors import LoopstartError, WrongState
from service.store import batches
from service.store.batches import BatchReport
from service.store.batches_together import hand_in_all
from service.store.counting import question_of
from service.store.database import Database
from service.store.games import game_named
from service.store.readings_kept import VoteReader
from service.store.round_rules import DraftRules
from service.store.rounds import draft_round, round_numbered
from service.store.staging import staged
from service.store.tables_comments import BatchRow, CommentRow
from tests.store.handing_in import (
    OPENS,
    Handed,
    comment,
    delivered,
    delivery,
    handed_in,
    open_first_round,
)
from tests.store.test_batches_in_any_order import forget, known

WRITTEN = st.builds(
    comment,
    st.sampled_from(["Tove", "Maren", "Jógvan"]),
    st.sampled_from(["12", "page 21", "lovely boats"]),
    st.integers(1, 3),
    id=st.sampled_from(["c1", "c2", "c3", "c4", None]),
)
#: Comments, when they were copied, whether the export before is sent again, whether it is complete.
EXPORTS = st.lists(
    st.tuples(
        st.lists(WRITTEN, max_size=3),
        st.integers(22, 25),
        st.booleans(),
        st.sampled_from([0, 0, 1]),
    ),
    min_size=1,
    max_size=6,
)
Told = list[tuple[list[Comment], int, bool, int]]


@pytest.fixture
def opened(database: Database, game: str) -> Database:
    open_first_round(database, game)
    return database


def together(
    database: Database, game: str, handed: Sequence[Handed]
) -> list[BatchReport | LoopstartError]:
    """The reports of all of them, kept in one transaction."""
    with database.reading() as session:
        row = game_named(session, game)
        reader = VoteReader(question_of(row, round_numbered(session, row, 1)))
    with ExitStack() as read_in:
        deliveries = [
            delivered(one, read_in.enter_context(staged(OpenExport.of(one.export), reader)))
            for one in handed
        ]
        with database.writing() as session:
            row = game_named(session, game)
            return hand_in_all(session, round_numbered(session, row, 1), deliveries)


def kept_batches(database: Database) -> list[dict[str, object]]:
    """The batches as they are kept, but for the ids of their rows."""
    with database.reading() as session:
        rows = session.exec(select(BatchRow).order_by(BatchRow.number)).all()  # type: ignore[arg-type]
        return [row.model_dump(exclude={"id"}) for row in rows]


def kept_rows(database: Database) -> list[tuple[object, ...]]:
    """What the comments' rows say beside what is known of them."""
    with database.reading() as session:
        numbers = {row.id: row.number for row in session.exec(select(BatchRow))}
        rows = session.exec(select(CommentRow)).all()
    return sorted(
        (row.key, numbers[row.batch_id], row.voter, row.reading, row.speaks, row.id_later)
        for row in rows
    )


def everything(
    database: Database, game: str
) -> tuple[dict[str, KnownComment], list[dict[str, object]], list[tuple[object, ...]]]:
    return known(database, game), kept_batches(database), kept_rows(database)


def exports_of(told: Told) -> list[Handed]:
    """The exports that are told so."""
    found: list[Handed] = []
    for number, (comments, copied, is_again, complete) in enumerate(told):
        content = repr((number, comments)).encode()
        if is_again and found:
            found.append(found[-1])
        else:
            one = delivery(comments, content=content, copied=copied, complete=bool(complete))
            found.append(one)
    return found


def with_own_ids(comments: list[Comment], whose: str) -> list[Comment]:
    """The comments as most collectors hand them in: each has an id, and no other has it."""
    return [replace(one, id=f"{whose}-{number}") for number, one in enumerate(comments)]


@given(EXPORTS, st.lists(WRITTEN, max_size=3), st.sampled_from([0, 0, 1]))
@settings(max_examples=100, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_together_the_same_is_kept_as_one_after_the_other(
    opened: Database, game: str, told: Told, before: list[Comment], complete: int
) -> None:
    first = delivery(before, content=b"before", copied=24, complete=bool(complete))
    check_alike(opened, game, first, exports_of(told))


@given(EXPORTS, st.lists(WRITTEN, max_size=3), st.sampled_from([0, 0, 1]))
@settings(max_examples=100, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_so_it_is_where_every_comment_has_an_id_of_its_own(
    opened: Database, game: str, told: Told, before: list[Comment], complete: int
) -> None:
    before = with_own_ids(before, "before")
    first = delivery(before, content=b"before", copied=24, complete=bool(complete))
    told = [
        (with_own_ids(one[0], str(number)), one[1], False, 0) for number, one in enumerate(told)
    ]
    check_alike(opened, game, first, exports_of(told))


def check_alike(database: Database, game: str, first: Handed, exports: list[Handed]) -> None:
    """Whether the same is kept and told of exports together as one after the other."""
    forget(database)
    handed_in(database, game, first)
    reports = [handed_in(database, game, one) for one in exports]
    kept = everything(database, game)
    forget(database)
    handed_in(database, game, first)
    made = together(database, game, exports)
    assert everything(database, game) == kept
    assert [_told(one) for one in made] == [_told(one) for one in reports]


def _told(report: BatchReport | LoopstartError) -> tuple[object, ...]:
    assert isinstance(report, BatchReport)
    of_batch = report.batch.number
    return of_batch, report.new, report.edited, report.unchanged, report.gone, report.repeated


def test_a_draft_takes_none_of_them(database: Database, game: str) -> None:
    with database.writing() as session:
        draft_round(session, game_named(session, game), DraftRules(opens=OPENS), OPENS)
    one, other = (delivery([comment("Tove", "12", id=number)]) for number in ("t1", "t2"))
    with pytest.raises(WrongState, match="open it first"):
        together(database, game, [one, other])
    assert kept_batches(database) == []


def test_an_id_that_is_told_later_is_known_again_by_itself(opened: Database, game: str) -> None:
    """Its key was made of its words, so that no key of the id leads to it."""
    nameless = comment("Tove", "page 21", 2)
    named = replace(nameless, id="t1")
    handed_in(opened, game, delivery([nameless]))
    handed_in(opened, game, delivery([named], copied=25))
    [row] = kept_rows(opened)
    assert row[-1] is True
    other = replace(named, text="page 22", posted=named.posted)
    report = handed_in(opened, game, delivery([other], copied=26))
    assert (report.new, report.edited) == (0, 1)
    alone, also = replace(named, text="page 23"), comment("Maren", "9", id="m1")
    made = together(opened, game, [delivery([one], copied=27) for one in (alone, also)])
    assert [_told(one)[1:3] for one in made] == [(0, 1), (1, 0)]
    assert len(known(opened, game)) == 2


def test_only_those_whose_own_words_cannot_be_kept_are_left_out(
    opened: Database, game: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One of several that fails leaves nothing of itself, and the others as they are."""
    plainly = batches.hand_in
    refused = WrongState("this batch", "bad", "kept", "send another")

    def but_for_one(*given: object) -> BatchReport:
        report = plainly(*given)  # type: ignore[arg-type]
        if report.batch.size == len(b"refuse me"):
            raise refused
        return report

    monkeypatch.setattr("service.store.batches_together.hand_in", but_for_one)
    without_ids = [comment(name, "12") for name in ("Tove", "Maren", "Jógvan")]
    contents = [b"one", b"refuse me", b"three"]
    made = together(
        opened,
        game,
        [
            delivery([one], content=content)
            for one, content in zip(without_ids, contents, strict=True)
        ],
    )
    assert made[1] is refused
    assert [_told(made[place])[1] for place in (0, 2)] == [1, 1]
    assert {one.comment.author for one in known(opened, game).values()} == {"Tove", "Jógvan"}
    assert [batch["number"] for batch in kept_batches(opened)] == [1, 2]


def test_what_comes_together_is_newest_last(opened: Database, game: str) -> None:
    exports = [
        delivery([comment(f"Voter {number}", "12", id=f"c{number}")]) for number in range(60)
    ]
    made = together(opened, game, exports)
    assert [_told(one)[0] for one in made] == list(range(1, 61))
    kept = kept_batches(opened)
    assert [batch["new"] for batch in kept] == [1] * 60
    assert {batch["handed_in"] for batch in kept} == {OPENS + timedelta(hours=24)}
