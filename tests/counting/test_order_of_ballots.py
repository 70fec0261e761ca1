"""Which comment of a voter stands where times are spans, checked against every order."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from itertools import permutations, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Span
from service.counting.round import Standing
from service.counting.standing import Said, given_since, what_stands
from tests.counting.rounds import (
    OPENS,
    causes,
    count,
    ruling,
    span,
    stood,
    takes_back,
    vote,
)

Times = tuple[float, float]


def said(*ones: tuple[tuple[int, ...], int, int]) -> list[Said]:
    return [
        Said(f"k{place}", span(earliest, latest), pages)
        for place, (pages, earliest, latest) in enumerate(ones)
    ]


def hours(at: Span) -> range:
    return range(
        (at.earliest - OPENS) // timedelta(hours=1), (at.latest - OPENS) // timedelta(hours=1) + 1
    )


def every_order(ones: list[Said]) -> Iterator[list[tuple[int, Said]]]:
    """All orders that the spans allow, with the hours; the same hour in every order too."""
    for times in product(*(hours(one.written) for one in ones)):
        timed = list(zip(times, ones, strict=True))
        for order in permutations(timed):
            if [time for time, _ in order] == sorted(times):
                yield list(order)


def played(order: list[tuple[int, Said]], standing: Standing) -> tuple[int, ...]:
    """The pages that stand when the comments are taken one after another."""
    pages: tuple[int, ...] = ()
    for _, one in order:
        if one.takes_back or standing == "latest" or not pages:
            pages = one.pages
    return pages


def since(page: int, order: list[tuple[int, Said]], standing: Standing) -> int:
    """Since which hour `page` has been on the ballot that stood, to the end."""
    begun = None
    for place, (time, _) in enumerate(order):
        now = played(order[: place + 1], standing)
        begun = None if page not in now else time if begun is None else begun
    assert begun is not None
    return begun


spans = st.tuples(st.integers(0, 3), st.integers(0, 2)).map(lambda t: (t[0], t[0] + t[1]))
pages = st.sampled_from([(), (3,), (3,), (4,), (3, 4), (4, 3)])
some_said = st.lists(st.builds(lambda p, t: (p, *t), pages, spans), min_size=1, max_size=4).map(
    lambda ones: said(*ones)
)


@settings(max_examples=400, deadline=None)
@given(some_said, st.sampled_from(["latest", "first"]))
def test_what_stands_is_what_stands_in_every_order_the_times_allow(
    ones: list[Said], standing: Standing
) -> None:
    outcomes = {frozenset(played(order, standing)) for order in every_order(ones)}
    stands = what_stands(ones, standing)
    if len(outcomes) > 1:
        assert stands.ballot is None
        assert len(stands.unclear) > 1
    else:
        assert not stands.unclear
        pages_left = frozenset(stands.ballot.pages) if stands.ballot else frozenset()
        assert {pages_left} == outcomes


@settings(max_examples=400, deadline=None)
@given(some_said, st.sampled_from(["latest", "first"]))
def test_a_vote_is_given_within_the_span_that_all_orders_allow(
    ones: list[Said], standing: Standing
) -> None:
    ballot = what_stands(ones, standing).ballot
    for page in ballot.pages if ballot else ():
        times = [since(page, order, standing) for order in every_order(ones)]
        assert given_since(page, ones, standing) == span(min(times), max(times))


@settings(max_examples=400, deadline=None)
@given(some_said, st.sampled_from(["latest", "first"]))
def test_unclear_are_the_ballots_that_may_stand_and_the_withdrawals_that_may_undo_them(
    ones: list[Said], standing: Standing
) -> None:
    orders = [[one for _, one in order] for order in every_order(ones)]
    unclear = what_stands(ones, standing).unclear
    if not unclear:
        return
    may_stand = [one for one in ones if any(standing_one(o, standing) is one for o in orders)]
    backs = [one for one in ones if one.takes_back]
    if standing == "latest":
        undoing = [back for back in backs if any(order[-1] is back for order in orders)]
    else:
        undoing = [
            back
            for back in backs
            for one in may_stand
            if len({order.index(back) < order.index(one) for order in orders}) == 2
        ]
    expected = {one.key for one in (*may_stand, *undoing)}
    assert {one.key for one in unclear} == expected


def standing_one(order: list[Said], standing: Standing) -> Said | None:
    """The ballot that stands when the comments are taken in that order."""
    stands: Said | None = None
    for one in order:
        if one.takes_back:
            stands = None
        elif standing == "latest" or stands is None:
            stands = one
    return stands


@settings(max_examples=200, deadline=None)
@given(some_said, st.sampled_from(["latest", "first"]))
def test_ruling_unclear_comments_to_nothing_always_comes_to_an_end(
    ones: list[Said], standing: Standing
) -> None:
    left = list(ones)
    while left and (unclear := what_stands(left, standing).unclear):
        left.remove(unclear[0])
    assert not left or not what_stands(left, standing).unclear


OVERLAPPING = {
    "two pages in overlapping times": ((3, (1, 5)), (4, (3, 8)), "cannot tell when"),
    "two pages in the same second": ((3, (2, 2)), (4, (2, 2)), "cannot tell when"),
    "two pages, one ending as the other begins": ((3, (1, 3)), (4, (3, 8)), "cannot tell when"),
    "the same page in overlapping times": ((3, (1, 5)), (3, (3, 8)), "counts"),
    "two pages one after the other": ((3, (1, 3)), (4, (3.1, 8)), "counts"),
}


@pytest.mark.parametrize("standing", ["latest", "first"])
@pytest.mark.parametrize(("one", "other", "outcome"), OVERLAPPING.values(), ids=OVERLAPPING.keys())
def test_two_ballots_whose_order_cannot_be_told_need_a_look_where_they_differ(
    one: tuple[int, Times], other: tuple[int, Times], outcome: str, standing: str
) -> None:
    result = count(
        vote("a", one[0], one[1], voter="mo"),
        vote("b", other[0], other[1], voter="mo"),
        standing=standing,
    )
    assert outcome in causes(result).values()
    assert len(result.looks) == (2 if outcome == "cannot tell when" else 0)


@pytest.mark.parametrize(
    ("standing", "counts"), [("latest", "b"), ("first", "a")], ids=["latest", "first"]
)
def test_of_two_ballots_for_the_same_page_the_likelier_one_is_shown_as_standing(
    standing: str, counts: str
) -> None:
    result = count(
        vote("b", 3, (3, 8), voter="mo"), vote("a", 3, (1, 5), voter="mo"), standing=standing
    )
    assert list(stood(result)) == [counts]
    assert result.ballots[0].given(3) == span(1, 5)


def test_the_same_pages_in_another_order_of_preference_do_not_differ() -> None:
    result = count(
        vote("a", (3, 4), (1, 5), voter="mo"), vote("b", (4, 3), (2, 6), voter="mo"), choices=2
    )
    assert result.tally == ((3, 1), (4, 1))
    assert not result.looks


def test_a_ruling_that_one_chooses_nothing_lets_the_other_stand() -> None:
    result = count(vote("a", 3, (1, 5), ruling(), voter="mo"), vote("b", 4, (3, 8), voter="mo"))
    assert stood(result) == {"b": (4,)}


def test_a_ballot_surely_before_two_of_unknown_order_is_replaced_all_the_same() -> None:
    result = count(
        vote("a", 5, 0, voter="mo"),
        vote("b", 3, (1, 5), voter="mo"),
        vote("c", 4, (3, 8), voter="mo"),
    )
    assert causes(result) == {
        "a": "another ballot stands",
        "b": "cannot tell when",
        "c": "cannot tell when",
    }


def test_a_ballot_surely_after_two_of_unknown_order_stands() -> None:
    result = count(
        vote("a", 5, 9, voter="mo"),
        vote("b", 3, (1, 5), voter="mo"),
        vote("c", 4, (3, 8), voter="mo"),
    )
    assert stood(result) == {"a": (5,)}
    assert not result.looks


@pytest.mark.parametrize("standing", ["latest", "first"])
def test_a_withdrawal_that_may_be_before_or_after_the_ballot_needs_a_look(standing: str) -> None:
    result = count(
        vote("a", 5, (1, 5), voter="mo"), takes_back("b", (3, 8), voter="mo"), standing=standing
    )
    assert causes(result) == {"a": "cannot tell when", "b": "cannot tell when"}


def test_where_the_first_stands_a_withdrawal_among_the_ballots_is_looked_at_too() -> None:
    result = count(
        vote("a", 3, (1, 4), voter="mo"),
        takes_back("b", 2, voter="mo"),
        vote("c", 5, 9, voter="mo"),
        standing="first",
    )
    assert set(causes(result).values()) == {"cannot tell when"}


def test_of_two_withdrawals_only_the_one_beside_the_ballot_is_left_to_the_host() -> None:
    stands = what_stands(said(((), 0, 0), ((), 0, 1), ((3,), 1, 1)), "first")
    assert {one.key for one in stands.unclear} == {"k1", "k2"}
