"""Rules that no round can be counted by are refused in one sentence."""

from __future__ import annotations

from datetime import datetime
from typing import Any

import pytest

from service.counting.rules import check_rules
from service.errors import BadInput, BadRules, BadTime, ClosesBeforeOpening
from tests.counting.rounds import CHART, CLOSES, OPENS, RULES, count, round_of, vote

CANNOT_BE = {
    "closing at the opening": (
        {"closes": OPENS},
        ClosesBeforeOpening,
        (
            "the closing 2026-03-01T18:00:00+00:00 is not after the opening "
            "2026-03-01T18:00:00+00:00: give a closing later than the opening."
        ),
    ),
    "closing before the opening": (
        {"opens": CLOSES, "closes": OPENS},
        ClosesBeforeOpening,
        (
            "the closing 2026-03-01T18:00:00+00:00 is not after the opening "
            "2026-03-03T18:00:00+00:00: give a closing later than the opening."
        ),
    ),
    "an opening without a zone": (
        {"opens": datetime(2026, 3, 1, 18)},  # noqa: DTZ001 - that is what is refused
        BadTime,
        "a time has no zone (it says '2026-03-01T18:00:00'): give it with its offset.",
    ),
    "no choice": (
        {"choices": 0},
        BadRules,
        "a voter may choose 0 pages: let a voter choose 1 or more.",
    ),
    "an unknown standing": (
        {"standing": "best"},
        BadRules,
        "'best' does not say which ballot stands: give one of: latest, first.",
    ),
    "an unknown tie-break": (
        {"tie_breaks": ("lowest number", "a duel")},
        BadRules,
        (
            "'a duel' is no tie-break: give any of: most joined edges, neighbours, reached first, "
            "runoff, draw, lowest number, host's pick."
        ),
    ),
    "a tie-break twice": (
        {"tie_breaks": ("lowest number", "lowest number")},
        BadRules,
        "a tie-break is named twice: name each once, in the order to apply them.",
    ),
    "votable pages off the chart": (
        {"votable": frozenset({0, 3, 13})},
        BadRules,
        "the votable pages hold pages 0 and 13, not on the chart: name pages from 1 to 12.",
    ),
}


@pytest.mark.parametrize(("changed", "error", "message"), CANNOT_BE.values(), ids=CANNOT_BE.keys())
def test_rules_that_cannot_be_are_refused(
    changed: dict[str, Any], error: type[BadInput], message: str
) -> None:
    with pytest.raises(error) as refused:
        check_rules(round_of(**changed).rules, CHART)
    assert str(refused.value) == message
    with pytest.raises(error):
        count(vote("a", 3), **changed)


def test_a_round_without_a_closing_or_a_votable_page_may_be_counted() -> None:
    check_rules(RULES, CHART)
    assert count(vote("a", 3), closes=None, votable=frozenset()).winner is None
