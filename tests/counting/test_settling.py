"""Each comment counts, or is set aside by the first cause that holds."""

from __future__ import annotations

import pytest

from service.counting.round import ReadComment
from tests.counting.rounds import (
    causes,
    chat,
    comment,
    count,
    hour,
    look,
    reading,
    ruling,
    stood,
    takes_back,
    vote,
)

ONE_COMMENT = {
    "a vote in time counts": (vote("a", 3), "counts"),
    "a vote at the opening counts": (vote("a", 3, 0), "counts"),
    "a vote a moment before the opening is set aside": (vote("a", 3, -0.001), "before the opening"),
    "a vote a moment before the closing counts": (vote("a", 3, 47.999), "counts"),
    "a vote at the closing is late": (vote("a", 3, 48), "after the closing"),
    "a vote a day after the closing is late": (vote("a", 3, 72), "after the closing"),
    "a span up to the opening cannot be told": (vote("a", 3, (-1, 0)), "cannot tell when"),
    "a span from the opening counts": (vote("a", 3, (0, 5)), "counts"),
    "a span over the opening cannot be told": (vote("a", 3, (-1, 5)), "cannot tell when"),
    "a span up to the closing cannot be told": (vote("a", 3, (40, 48)), "cannot tell when"),
    "a span that ends before the closing counts": (vote("a", 3, (40, 47.9)), "counts"),
    "a span over the closing cannot be told": (vote("a", 3, (40, 60)), "cannot tell when"),
    "a span over both cannot be told": (vote("a", 3, (-9, 60)), "cannot tell when"),
    "a span all before the opening is set aside": (vote("a", 3, (-9, -1)), "before the opening"),
    "a span from the closing on is late": (vote("a", 3, (48, 60)), "after the closing"),
    "chat chooses no page": (chat("a"), "chooses no page"),
    "a withdrawal alone chooses no page": (takes_back("a"), "chooses no page"),
    "a doubtful comment needs a look": (look("a", 3, 4), "needs a look"),
    "a page that is not votable": (vote("a", 12), "page not votable"),
    "a page that is not on the chart": (vote("a", 99), "page not votable"),
}


@pytest.mark.parametrize(("one", "outcome"), ONE_COMMENT.values(), ids=ONE_COMMENT.keys())
def test_one_comment(one: ReadComment, outcome: str) -> None:
    result = count(one, votable=frozenset(range(1, 10)))
    assert causes(result) == {"a": outcome}


ORDER_OF_CAUSES = {
    "the host's own before the opening": (
        comment("a", reading("counts", 12), -1, is_host=True),
        "the host's own",
    ),
    "the host's own when it cannot be told": (
        comment("a", reading("look"), (40, 60), is_host=True),
        "the host's own",
    ),
    "the host's own even where ruled": (
        comment("a", reading("counts", 3), 1, ruling(3), is_host=True),
        "the host's own",
    ),
    "early chat": (chat("a", -1), "before the opening"),
    "a late doubtful comment": (look("a", 3, at=50), "after the closing"),
    "a late page not votable": (vote("a", 12, 50), "after the closing"),
    "chat of which cannot be told when": (chat("a", (40, 60)), "cannot tell when"),
    "a doubtful comment of which cannot be told when": (
        look("a", 3, at=(40, 60)),
        "cannot tell when",
    ),
    "a doubtful comment for a page not votable": (look("a", 12), "needs a look"),
}


@pytest.mark.parametrize(("one", "outcome"), ORDER_OF_CAUSES.values(), ids=ORDER_OF_CAUSES.keys())
def test_the_first_cause_that_holds_is_the_one_given(one: ReadComment, outcome: str) -> None:
    result = count(one, votable=frozenset(range(1, 10)))
    assert causes(result) == {"a": outcome}


def test_a_page_not_votable_is_told_before_another_ballot_that_stands() -> None:
    result = count(
        vote("a", 12, 1, voter="mo"), vote("b", 3, 2, voter="mo"), votable=frozenset({3})
    )
    assert causes(result) == {"a": "page not votable", "b": "counts"}


def test_without_a_closing_nothing_is_late() -> None:
    result = count(vote("a", 3, 1000), vote("b", 3, (40, 2000)), closes=None)
    assert causes(result) == {"a": "counts", "b": "counts"}


def test_the_latest_ballot_of_a_voter_stands() -> None:
    result = count(vote("a", 3, 1, voter="mo"), vote("b", 4, 2, voter="mo"))
    assert causes(result) == {"a": "another ballot stands", "b": "counts"}
    assert stood(result) == {"b": (4,)}


def test_the_first_ballot_of_a_voter_stands_where_the_round_says_so() -> None:
    result = count(vote("a", 3, 1, voter="mo"), vote("b", 4, 2, voter="mo"), standing="first")
    assert causes(result) == {"a": "counts", "b": "another ballot stands"}


def test_the_latest_before_the_closing_stands_and_not_a_late_one() -> None:
    result = count(vote("a", 3, 1, voter="mo"), vote("b", 4, 50, voter="mo"))
    assert causes(result) == {"a": "counts", "b": "after the closing"}


def test_the_first_after_the_opening_stands_and_not_an_early_one() -> None:
    result = count(vote("a", 3, -1, voter="mo"), vote("b", 4, 5, voter="mo"), standing="first")
    assert causes(result) == {"a": "before the opening", "b": "counts"}


def test_ballots_of_two_voters_do_not_replace_each_other() -> None:
    result = count(vote("a", 3, 1, voter="mo"), vote("b", 4, 2, voter="Mo"))
    assert causes(result) == {"a": "counts", "b": "counts"}


@pytest.mark.parametrize("standing", ["latest", "first"])
@pytest.mark.parametrize(
    "other",
    [
        pytest.param(chat("b", 2, voter="mo"), id="chat"),
        pytest.param(look("b", 4, at=2, voter="mo"), id="a doubtful comment"),
        pytest.param(vote("b", 12, 2, voter="mo"), id="a page not votable"),
        pytest.param(takes_back("b", 50, voter="mo"), id="a late withdrawal"),
        pytest.param(takes_back("b", (40, 60), voter="mo"), id="a withdrawal at a time unknown"),
        pytest.param(takes_back("b", -1, voter="mo"), id="an early withdrawal"),
    ],
)
def test_what_is_set_aside_leaves_the_ballot_before_it(other: ReadComment, standing: str) -> None:
    result = count(
        vote("a", 3, 1, voter="mo"), other, standing=standing, votable=frozenset(range(1, 10))
    )
    assert stood(result) == {"a": (3,)}


@pytest.mark.parametrize("standing", ["latest", "first"])
def test_a_withdrawal_takes_back_the_ballots_before_it(standing: str) -> None:
    result = count(
        vote("a", 3, 1, voter="mo"),
        vote("b", 4, 2, voter="mo"),
        takes_back("c", 3, voter="mo"),
        standing=standing,
    )
    assert causes(result) == {"a": "withdrawn", "b": "withdrawn", "c": "chooses no page"}
    assert result.winner is None


@pytest.mark.parametrize(
    ("standing", "counts"), [("latest", "d"), ("first", "c")], ids=["latest", "first"]
)
def test_a_ballot_after_a_withdrawal_counts_again(standing: str, counts: str) -> None:
    result = count(
        vote("a", 3, 1, voter="mo"),
        takes_back("b", 2, voter="mo"),
        vote("c", 4, 3, voter="mo"),
        vote("d", 5, 4, voter="mo"),
        standing=standing,
    )
    assert list(stood(result)) == [counts]
    assert causes(result)["a"] == "withdrawn"


def test_a_withdrawal_of_one_voter_leaves_the_others() -> None:
    result = count(vote("a", 3, 1, voter="mo"), takes_back("b", 2, voter="jo"))
    assert stood(result) == {"a": (3,)}


def test_a_ballot_of_several_pages_counts_its_votable_ones_and_says_what_was_left_out() -> None:
    result = count(vote("a", (12, 3, 10, 4)), choices=4, votable=frozenset(range(1, 10)))
    (ballot,) = result.ballots
    assert ballot.pages == (3, 4)
    assert ballot.left_out == (12, 10)


def test_a_ballot_of_several_pages_of_which_none_is_votable_is_set_aside() -> None:
    result = count(vote("a", (12, 10)), choices=2, votable=frozenset({3}))
    (aside,) = result.set_aside
    assert aside.cause == "page not votable"
    assert aside.why == "Pages 12 and 10 cannot be chosen in this round."
    assert aside.pages == (12, 10)


def test_a_page_named_twice_gives_one_vote() -> None:
    result = count(vote("a", (3, 3)), choices=2)
    assert result.tally == ((3, 1),)


def test_a_reading_of_more_pages_than_the_round_allows_needs_a_look() -> None:
    result = count(vote("a", (3, 4, 5)), choices=2)
    assert causes(result) == {"a": "needs a look"}
    assert result.set_aside[0].pages == (3, 4, 5)


def test_a_voter_of_two_names_is_one_voter_by_id() -> None:
    one = vote("a", 3, 1, voter="id 7")
    other = ReadComment("b", "id 7", "Renamed", one.written, reading("counts", 3))
    result = count(one, other)
    assert len(result.ballots) == 1


def test_ballots_and_those_set_aside_are_listed_oldest_first() -> None:
    result = count(vote("c", 3, 5), chat("x", 9), vote("a", 3, 7), vote("b", 3, 5), chat("y", 2))
    assert [ballot.key for ballot in result.ballots] == ["b", "c", "a"]
    assert [aside.key for aside in result.set_aside] == ["y", "x"]


def test_every_comment_set_aside_says_why_in_a_sentence() -> None:
    result = count(
        chat("a"),
        look("b", 3),
        vote("c", 12),
        vote("d", 3, 60),
        vote("e", 3, -60),
        vote("f", 3, (40, 60)),
        vote("g", 3, 1, voter="mo"),
        vote("h", 4, 2, voter="mo"),
        vote("i", 4, 2, voter="jo"),
        takes_back("j", 3, voter="jo"),
        votable=frozenset({3, 4}),
    )
    whys = {aside.key: aside.why for aside in result.set_aside}
    assert whys == {
        "a": "read as none",
        "b": "read as look",
        "c": "Page 12 cannot be chosen in this round.",
        "d": "It was written at the closing or after it.",
        "e": "It was written before the opening.",
        "f": "It may have been written on either side of the closing: rule whether in time.",
        "g": "This voter wrote a later ballot.",
        "i": "This voter took it back.",
        "j": "read as none",
    }


def test_a_repeated_page_is_given_since_the_first_time() -> None:
    result = count(
        vote("a", 3, 1, voter="mo"), vote("b", 4, 2, voter="mo"), vote("c", 3, 3, voter="mo"),
        vote("d", 3, 4, voter="mo"), chat("e", 5, voter="mo"),
    )  # fmt: skip
    (ballot,) = result.ballots
    assert ballot.key == "d"
    assert ballot.written.earliest == hour(4)
    assert ballot.given(3).earliest == hour(3)
