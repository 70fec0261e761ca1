"""Merging in parts: comments that share nothing are merged apart, and the outcome is the same."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.comment import Comment
from service.comments.identity import KnownComment, Merge, merge_batch
from service.comments.links import Groups, Link, links_of, links_of_known
from tests.comments.test_merging_laws import ANY_COMMENTS, at, exactly, known_after

FEW = st.lists(ANY_COMMENTS, max_size=7)


def in_parts(known: Sequence[KnownComment], batch: Sequence[Comment], hour: float) -> list[Merge]:
    """Every group of comments that share something, merged by itself."""
    return by_links([*map(links_of_known, known), *map(links_of, batch)], known, batch, hour)


def by_links(
    links: Sequence[Sequence[Link]],
    known: Sequence[KnownComment],
    batch: Sequence[Comment],
    hour: float,
) -> list[Merge]:
    groups = Groups(len(links))
    first: dict[Link, int] = {}
    for place, shared in enumerate(links):
        for link in shared:
            groups.join(place, first.setdefault(link, place))
    parts: dict[int, tuple[list[KnownComment], list[Comment]]] = defaultdict(lambda: ([], []))
    for place, one in enumerate(known):
        parts[groups.root_of(place)][0].append(one)
    for place, comment in enumerate(batch, len(known)):
        parts[groups.root_of(place)][1].append(comment)
    return [merge_batch(*part, at(hour)) for part in parts.values()]


def told(*merges: Merge) -> list[object]:
    return [
        {one.key: one for merge in merges for one in merge.new},
        {one.key: one for merge in merges for one in merge.edited},
        {one.key: one for merge in merges for one in merge.confirmed},
        sorted(key for merge in merges for key in merge.unchanged),
        sum(len(merge.new) for merge in merges),
    ]


@given(FEW, FEW, FEW)
@settings(max_examples=300)
def test_merging_in_parts_is_merging_all_at_once(
    one: list[Comment], other: list[Comment], last: list[Comment]
) -> None:
    known = known_after((10, one), (12, other))
    for hour in (11, 14):
        whole = merge_batch(known, last, at(hour))
        assert told(*in_parts(known, last, hour)) == told(whole)


WITH_IDS = st.lists(ANY_COMMENTS.filter(lambda one: one.id), max_size=7)


@given(WITH_IDS, WITH_IDS, FEW)
def test_where_all_known_ones_have_ids_an_id_is_enough(
    one: list[Comment], other: list[Comment], last: list[Comment]
) -> None:
    known = known_after((10, one), (12, other))
    links = [
        *map(links_of_known, known),
        *(links_of(each)[: 1 if each.id else None] for each in last),
    ]
    for hour in (11, 14):
        parts = by_links(links, known, last, hour)
        assert told(*parts) == told(merge_batch(known, last, at(hour)))


def test_comments_that_share_nothing_are_of_different_groups() -> None:
    batch = [
        Comment("Annie", "12", exactly(1)),
        Comment("Annie", "14", exactly(2)),
        Comment("Tove", "12", exactly(1)),
        Comment("annie ", "12", exactly(5)),
    ]
    links = [set(links_of(one)) for one in batch]
    assert [bool(links[0] & other) for other in links[1:]] == [False, False, True]


@given(st.integers(1, 30), st.lists(st.tuples(st.integers(0, 29), st.integers(0, 29))))
def test_a_group_is_never_cut_and_parts_are_no_larger_than_asked(
    size: int, pairs: list[tuple[int, int]]
) -> None:
    groups = Groups(size)
    for one, other in pairs:
        if max(one, other) < size:
            groups.join(one, other)
    parts = groups.parts(4)
    roots: dict[int, list[int]] = defaultdict(list)
    for one in range(size):
        roots[groups.root_of(one)].append(one)
    for members in roots.values():
        assert len({parts[one] for one in members}) == 1
    for part in set(parts):
        of_part = {groups.root_of(one) for one in range(size) if parts[one] == part}
        assert sum(len(roots[root]) for root in of_part) <= 4 or len(of_part) == 1
