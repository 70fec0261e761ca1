"""Comments with an id and comments without one, in one batch or in several, merged as all at once."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from service.comments.comment import Comment
from service.comments.identity import merge_batch
from service.comments.versions import KnownComment
from service.store.database import Database
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round
from tests.store.test_batches_in_any_order import forget, known

TOVE = comment("Tove", "page 21", 2, id="t1")
NAMELESS = replace(TOVE, id=None)
COMMENTS = st.builds(
    comment,
    st.sampled_from(["Tove", "Maren"]),
    st.sampled_from(["12", "page 21"]),
    st.integers(1, 3),
    id=st.sampled_from([None, None, "t1", "t2", "m1"]),
)
BATCHES = st.lists(st.lists(COMMENTS, min_size=1, max_size=5), min_size=1, max_size=3)


def merged(batches: list[list[Comment]]) -> dict[str, KnownComment]:
    """What is known after the batches, copied an hour apart, each merged all at once."""
    found: dict[str, KnownComment] = {}
    for hour, batch in enumerate(batches, 24):
        merge = merge_batch(found.values(), batch, after(hour))
        for one in (*merge.new, *merge.edited, *merge.confirmed):
            found[one.key] = one
    return found


@pytest.fixture
def opened(database: Database, game: str) -> Database:
    open_first_round(database, game)
    return database


@pytest.mark.parametrize(
    "batches", [[[TOVE, NAMELESS]], [[NAMELESS], [TOVE]], [[TOVE], [NAMELESS]]]
)
def test_one_of_them_without_its_id_is_one_comment(
    opened: Database, game: str, batches: list[list[Comment]]
) -> None:
    for hour, batch in enumerate(batches, 24):
        handed_in(opened, game, delivery(batch, copied=hour))
    kept = known(opened, game)
    assert kept == merged(batches)
    assert len(kept) == (2 if len(batches) == 1 else 1)  # one batch shows both at once: two


@given(BATCHES)
@settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_whatever_has_ids_is_merged_as_all_at_once(
    opened: Database, game: str, batches: list[list[Comment]]
) -> None:
    forget(opened)
    for number, batch in enumerate(batches):
        content = repr((number, batch)).encode()
        handed_in(opened, game, delivery(batch, content=content, copied=24 + number))
    assert known(opened, game) == merged(batches)
