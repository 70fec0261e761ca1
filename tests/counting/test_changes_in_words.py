"""What open looks could change is told in whole sentences, however many pages it is about."""

from __future__ import annotations

import pytest

from service.ballots.reading import Reading
from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.changes import can_looks_change
from service.counting.count import count_round
from service.counting.round import ReadComment, RoundInput, RoundRules
from tests.counting.rounds import OPENS

AT = Span.at(OPENS)


def told(sure: tuple[int, ...], pages: int) -> str:
    """The sentence about one look beside sure votes, where that many pages can be chosen."""
    readings = [Reading("counts", (page,), None, "read") for page in sure]
    readings.append(Reading("look", (1, 2), None, "read"))
    comments = tuple(
        ReadComment(f"c{place}", f"v{place}", "Author", AT, reading)
        for place, reading in enumerate(readings)
    )
    rules = RoundRules(
        OPENS, None, frozenset(range(1, pages + 1)), tie_breaks=("host's pick",)
    )  # fmt: skip
    given = RoundInput(Chart(9, 7), rules, comments)
    change = can_looks_change(given, count_round(given))
    assert change.possible
    return change.why


@pytest.mark.parametrize("sure", [(), (13,), (13, 14)], ids=["no vote", "a winner", "a tie"])
@pytest.mark.parametrize("pages", [14, 15, 20, 63])
def test_no_sentence_breaks_off_or_lists_many_pages(sure: tuple[int, ...], pages: int) -> None:
    why = told(sure, pages)
    assert why.endswith(".")
    assert ",." not in why
    assert why.count(",") < 8


def test_a_tie_that_many_pages_may_change_says_so() -> None:
    assert told((13, 14), 63) == (
        "1 comment still needs a look and could settle or change the tie, in which any of 63 "
        "pages may yet play a part."
    )


def test_a_winner_out_of_many_pages_is_told_by_their_number() -> None:
    assert told((), 63) == (
        "1 comment still needs a look and could make a winner of any of 63 pages."
    )
