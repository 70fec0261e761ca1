"""The host's rulings: the last one holds, and one that cannot be is refused."""

from __future__ import annotations

import pytest

from service.counting.count import count_round
from service.counting.round import ReadComment, Ruling
from service.counting.rulings import check_ruling
from service.errors import BadRuling
from tests.counting.rounds import (
    CHART,
    RULES,
    causes,
    chat,
    count,
    hour,
    look,
    round_of,
    ruling,
    stood,
    takes_back,
    vote,
)

RULED = {
    "pages for a doubtful comment": (look("a", 3, 4, rulings=(ruling(4),)), "counts", (4,)),
    "pages for chat": (chat("a", 1, ruling(4)), "counts", (4,)),
    "other pages for a vote": (vote("a", 3, 1, ruling(4)), "counts", (4,)),
    "nothing for a vote": (vote("a", 3, 1, ruling()), "chooses no page", ()),
    "nothing for a doubtful comment": (look("a", rulings=(ruling(),)), "chooses no page", ()),
    "a vote for a withdrawal": (takes_back("a", 1, ruling(4)), "counts", (4,)),
    "a page not votable": (look("a", rulings=(ruling(12),)), "page not votable", (12,)),
    "the last of two": (look("a", rulings=(ruling(3), ruling(4))), "counts", (4,)),
    "the last of two, nothing": (look("a", rulings=(ruling(3), ruling())), "chooses no page", ()),
    "in time": (vote("a", 3, (40, 60), ruling(in_time=True)), "counts", (3,)),
    "not in time at the closing": (
        vote("a", 3, (40, 60), ruling(in_time=False)),
        "after the closing",
        (3,),
    ),
    "not in time at the opening": (
        vote("a", 3, (-9, 9), ruling(in_time=False)),
        "before the opening",
        (3,),
    ),
    "in time with other pages": (vote("a", 3, (40, 60), ruling(4, in_time=True)), "counts", (4,)),
    "pages alone leave the time open": (
        vote("a", 3, (40, 60), ruling(4)),
        "cannot tell when",
        (4,),
    ),
    "pages, then in time": (
        look("a", at=(40, 60), rulings=(ruling(4), ruling(in_time=True))),
        "counts",
        (4,),
    ),
    "in time, then pages": (
        look("a", at=(40, 60), rulings=(ruling(in_time=True), ruling(4))),
        "counts",
        (4,),
    ),
    "in time, then not": (
        vote("a", 3, (40, 60), ruling(in_time=True), ruling(in_time=False)),
        "after the closing",
        (3,),
    ),
    "in time for a doubtful comment still needs a look": (
        look("a", 3, at=(40, 60), rulings=(ruling(in_time=True),)),
        "needs a look",
        (3,),
    ),
    "nothing, whenever it was written": (
        vote("a", 3, (40, 60), ruling()),
        "chooses no page",
        (),
    ),
    "in time for a late comment changes nothing": (
        vote("a", 3, 60, ruling(in_time=True)),
        "after the closing",
        (3,),
    ),
    "not in time for a comment in time changes nothing": (
        vote("a", 3, 1, ruling(in_time=False)),
        "counts",
        (3,),
    ),
}


@pytest.mark.parametrize(("one", "outcome", "pages"), RULED.values(), ids=RULED.keys())
def test_a_ruling(one: ReadComment, outcome: str, pages: tuple[int, ...]) -> None:
    result = count(one, votable=frozenset(range(1, 10)))
    assert causes(result) == {"a": outcome}
    named = [ballot.pages for ballot in result.ballots]
    named += [aside.pages for aside in result.set_aside]
    assert named == [pages]


def test_a_ruled_ballot_says_that_it_was_ruled() -> None:
    result = count(
        vote("a", 3), look("b", rulings=(ruling(3),)), vote("c", 3, (40, 60), ruling(in_time=True))
    )
    assert {ballot.key: ballot.ruled for ballot in result.ballots} == {
        "a": False,
        "b": True,
        "c": True,
    }


def test_a_ruling_may_take_back_the_ballot_before() -> None:
    result = count(
        vote("a", 3, 1, voter="mo"),
        look("b", at=2, voter="mo", rulings=(ruling(withdraws=True),)),
    )
    assert causes(result) == {"a": "withdrawn", "b": "chooses no page"}


def test_a_ruled_comment_replaces_the_ballot_before() -> None:
    result = count(vote("a", 3, 1, voter="mo"), look("b", at=2, voter="mo", rulings=(ruling(4),)))
    assert stood(result) == {"b": (4,)}


def test_the_reason_is_told_where_the_host_ruled_a_comment_out() -> None:
    result = count(vote("a", 3, 1, ruling()), vote("b", 3, (40, 60), ruling(in_time=False)))
    assert [aside.why for aside in result.set_aside] == [
        "The host's ruling: asked the writer",
        "The host ruled it not in time: asked the writer",
    ]


CANNOT_BE = {
    "more pages than choices": (
        Ruling((3, 4), "both", hour(60)),
        (
            "a ruling names pages 3 and 4, but in this round a voter may choose 1 page: rule fewer "
            "pages, or that the comment chooses nothing."
        ),
    ),
    "a page off the chart": (
        Ruling((13,), "meant it", hour(60)),
        "a ruling names page 13, which is not on the chart: name a page from 1 to 12.",
    ),
    "page 0": (
        Ruling((0,), "meant it", hour(60)),
        "a ruling names page 0, which is not on the chart: name a page from 1 to 12.",
    ),
    "no reason": (
        Ruling((3,), " ", hour(60)),
        "a ruling has no reason: say in a few words why.",
    ),
    "a page twice": (
        Ruling((3, 3), "meant it", hour(60)),
        "a ruling names pages 3 and 3: name each page once.",
    ),
    "chooses and takes back": (
        Ruling((3,), "both", hour(60), withdraws=True),
        "a ruling both chooses page 3 and takes a ballot back: rule one of the two.",
    ),
}


@pytest.mark.parametrize(("held", "message"), CANNOT_BE.values(), ids=CANNOT_BE.keys())
def test_a_ruling_that_cannot_be_is_refused(held: Ruling, message: str) -> None:
    with pytest.raises(BadRuling) as refused:
        check_ruling(held, RULES, CHART)
    assert str(refused.value) == message
    with pytest.raises(BadRuling):
        count_round(round_of(look("a", rulings=(held,))))


def test_as_many_pages_as_choices_may_be_ruled() -> None:
    result = count(look("a", rulings=(ruling(3, 4),)), choices=2)
    assert stood(result) == {"a": (3, 4)}


def test_a_ruling_that_was_followed_by_another_no_longer_counts_even_where_it_cannot_be() -> None:
    result = count(look("a", rulings=(ruling(3, 4), ruling(4))))
    assert stood(result) == {"a": (4,)}
