"""Laws of merging: order and repetition change nothing, keys are unique, no words are lost."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.comment import Comment
from service.comments.identity import KnownComment, merge_batch
from service.comments.spans import Span

START = datetime(2026, 2, 27, 18, 0, tzinfo=UTC)


def at(hours: float) -> datetime:
    return START + timedelta(hours=hours)


def exactly(hours: float) -> Span:
    return Span.at(at(hours))


def between(first: float, last: float) -> Span:
    return Span(at(first), at(last))


def known_after(*batches: tuple[float, list[Comment]]) -> list[KnownComment]:
    """What is known after these batches, each with the hour of its copying."""
    known: dict[str, KnownComment] = {}
    for hour, batch in batches:
        merge = merge_batch(known.values(), batch, at(hour))
        for one in (*merge.new, *merge.edited, *merge.confirmed):
            known[one.key] = one
    return list(known.values())


TEXTS = st.sampled_from(["12", "14", "12 please", "no vote"])
SPANS = st.one_of(
    st.integers(0, 6).map(exactly),
    st.tuples(st.integers(0, 5), st.integers(1, 5)).map(lambda two: between(two[0], sum(two))),
)
ANY_COMMENTS = st.builds(
    Comment,
    author=st.sampled_from(["Gran T", "Annie", ""]),
    text=TEXTS,
    posted=SPANS,
    id=st.sampled_from([None, "c1", "c2"]),
    author_id=st.sampled_from([None, "a-1"]),
    edited=st.none() | st.integers(6, 9).map(exactly),
)
#: A source that gives an id to a comment of one author and one time, as sources do.
COMMENTS = ANY_COMMENTS.map(
    lambda one: (
        one
        if one.id is None
        else replace(one, author="Gran T", author_id="a-1", posted=exactly(int(one.id[1])))
    )
)
BATCHES = st.lists(COMMENTS, max_size=7)
ANY_BATCHES = st.lists(ANY_COMMENTS, max_size=7)


@given(ANY_BATCHES, st.randoms(use_true_random=False))
def test_the_order_inside_a_batch_does_not_matter(batch: list[Comment], random: object) -> None:
    shuffled = list(batch)
    random.shuffle(shuffled)  # type: ignore[attr-defined]
    first = merge_batch((), batch, at(10))
    assert merge_batch((), shuffled, at(10)) == first
    assert merge_batch(first.new, shuffled, at(12)) == merge_batch(first.new, batch, at(12))


@given(BATCHES, BATCHES)
@settings(max_examples=150)
def test_handing_in_a_batch_again_changes_nothing(one: list[Comment], other: list[Comment]) -> None:
    known = {each.key: each for each in known_after((10, one), (12, other))}
    again = merge_batch(known.values(), other, at(12))
    assert again.new == ()
    assert again.edited == ()
    assert all(known[each.key] == each for each in again.confirmed)


@given(ANY_BATCHES, ANY_BATCHES)
def test_keys_are_unique_and_nothing_known_is_lost(
    one: list[Comment], other: list[Comment]
) -> None:
    first = merge_batch((), one, at(10))
    second = merge_batch(first.new, other, at(12))
    keys = [each.key for each in (*first.new, *second.new)]
    assert len(set(keys)) == len(keys)
    before = {each.key: each for each in first.new}
    for after in (*second.edited, *second.confirmed):
        kept = [version.text for version in after.versions]
        assert all(version.text in kept for version in before[after.key].versions)
        assert after.comment.text == after.versions[-1].text
        assert after.comment.written == after.versions[-1].written


@given(COMMENTS)
def test_a_comment_is_itself_wherever_it_stands_in_the_export(comment: Comment) -> None:
    first = merge_batch((), [comment], at(10))
    moved = replace(comment, place="line 99")
    assert merge_batch(first.new, [moved], at(10)).new == ()


#: What one comment said from which hour on: its first words, then edits, all of them different.
STORIES = st.lists(
    st.tuples(st.integers(1, 30), st.booleans()), max_size=3, unique_by=lambda edit: edit[0]
).map(sorted)


def shown_at(hour: float, stories: list[list[tuple[int, bool]]], ids: bool) -> list[Comment]:  # noqa: FBT001
    """What a batch of that hour shows; some edits are told with their time, others are not."""
    shown = []
    for place, story in enumerate(stories):
        done = [edit for edit in story if edit[0] < hour]
        told = exactly(done[-1][0]) if done and done[-1][1] else None
        shown.append(
            Comment(
                f"Viewer {place}",
                f"words {len(done)}",
                exactly(0),
                id=f"c{place}" if ids else None,
                edited=told,
            )
        )
    return shown


@given(
    st.lists(STORIES, min_size=1, max_size=3),
    st.lists(st.integers(1, 31).map(lambda hour: hour + 0.5), min_size=2, max_size=4, unique=True),
    st.booleans(),
    st.randoms(use_true_random=False),
)
@settings(max_examples=300)
def test_the_order_of_batches_does_not_matter(
    stories: list[list[tuple[int, bool]]],
    hours: list[float],
    ids: bool,  # noqa: FBT001
    random: object,
) -> None:
    batches = [(hour, shown_at(hour, stories, ids)) for hour in sorted(hours)]
    in_order = {one.key: one for one in known_after(*batches)}
    random.shuffle(batches)  # type: ignore[attr-defined]
    known = {one.comment.author: one for one in known_after(*batches)}
    for one in in_order.values():
        other = known[one.comment.author]
        assert (other.comment, other.versions) == (one.comment, one.versions)
