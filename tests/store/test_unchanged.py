"""Exports that are handed in again and again: what is as it was is told without merging, and alike."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from service.comments.comment import Comment
from service.comments.identity import merge_batch
from service.comments.spans import Span
from service.comments.versions import KnownComment
from service.store import keeping
from service.store.database import Database
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round
from tests.store.test_batches_in_any_order import forget, known
from tests.store.test_ids_and_none import merged

#: The same few again and again, now and then with other words, another time, or of somebody else.
COMMENTS = st.builds(
    comment,
    st.sampled_from(["Tove", "Tove", "Maren"]),
    st.sampled_from(["12", "12", "page 21"]),
    st.sampled_from([1, 1, 2]),
    id=st.sampled_from(["t1", "t2", "m1", "m2"]),
)
EDITED = st.tuples(COMMENTS, st.integers(3, 30)).map(
    lambda told: replace(told[0], edited=Span.at(after(told[1])))
)
VAGUE = COMMENTS.map(lambda one: replace(one, posted=Span(after(1), after(2))))
ANSWERS = COMMENTS.map(lambda one: replace(one, reply_to="t1", author_id="id of an author"))
BATCHES = st.lists(
    st.tuples(
        st.lists(st.one_of(COMMENTS, COMMENTS, EDITED, VAGUE, ANSWERS), min_size=1, max_size=6),
        st.integers(20, 30),
    ),
    min_size=2,
    max_size=4,
)


@pytest.fixture
def opened(database: Database, game: str, monkeypatch: pytest.MonkeyPatch) -> Database:
    """A round that treats every export as a large one."""
    monkeypatch.setattr(keeping, "_FEW", 0)
    open_first_round(database, game)
    return database


def all_at_once(batches: list[tuple[list[Comment], int]]) -> dict[str, KnownComment]:
    """What is known after the batches, each merged as values."""
    found: dict[str, KnownComment] = {}
    for batch, copied in batches:
        found |= merged_into(found, batch, copied)
    return found


def merged_into(
    found: dict[str, KnownComment], batch: list[Comment], copied: int
) -> dict[str, KnownComment]:
    merge = merge_batch(found.values(), batch, after(copied))
    return {one.key: one for one in (*merge.new, *merge.edited, *merge.confirmed)}


@given(BATCHES)
@settings(max_examples=150, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_whatever_is_handed_in_again_comes_to_what_merging_comes_to(
    opened: Database, game: str, batches: list[tuple[list[Comment], int]]
) -> None:
    forget(opened)
    for number, (batch, copied) in enumerate(batches):
        content = repr((number, batch)).encode()
        handed_in(opened, game, delivery(batch, content=content, copied=copied))
    assert known(opened, game) == all_at_once(batches)


def test_only_what_changed_is_merged(
    opened: Database, game: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    comments = [comment(f"Voter {number}", "12", id=f"w{number}") for number in range(40)]
    handed_in(opened, game, delivery(comments))
    weighed: list[int] = []

    def noted(*told: object) -> object:
        weighed.append(len(told[1]))  # type: ignore[arg-type]
        return merge_batch(*told)  # type: ignore[arg-type]

    monkeypatch.setattr(keeping, "merge_batch", noted)
    comments[7] = replace(comments[7], text="page 13")
    report = handed_in(
        opened, game, delivery([*comments, comment("New", "9", id="new")], copied=25)
    )
    assert (report.new, report.edited, report.unchanged) == (1, 1, 39)
    assert weighed == [1]
    seen = {one.versions[-1].seen for one in known(opened, game).values()}
    assert Span(after(24), after(25)) in seen
    assert {one.latest for one in seen if one} == {after(25)}


def test_an_older_export_that_comes_later_shows_them_earlier(opened: Database, game: str) -> None:
    comments = [comment("Tove", "12", id="t1"), comment("Maren", "13", id="m1")]
    handed_in(opened, game, delivery(comments, copied=24))
    report = handed_in(opened, game, delivery(comments, content=b"before", copied=20))
    assert (report.new, report.edited, report.unchanged) == (0, 0, 2)
    seen = {one.versions[-1].seen for one in known(opened, game).values()}
    assert seen == {Span(after(20), after(20) + timedelta(hours=4))}


def test_the_values_that_merging_is_compared_with_are_the_same_as_elsewhere() -> None:
    batches = [[comment("Tove", "12", id="t1")], [comment("Tove", "13", id="t1")]]
    told = [(batch, copied) for copied, batch in enumerate(batches, 24)]
    assert all_at_once(told) == merged(batches)
