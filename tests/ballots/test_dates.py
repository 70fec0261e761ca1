"""Days of a month are no pages."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

NO_PAGE = [
    "the 12th of May",
    "12 May 2026",
    "the 23rd of June!",
    "4th of July",
    "Christmas is the 25th of December",
    "12 december, mark your calendars",
    "we open on 3 March",
]
CHOSEN = {
    "42 may be nice": "counts 42",
    "page 12. May the wind be kind": "counts 12",
    "12 please, see you on the 4th of May": "counts 12",
    "born on the 12th of May, so page 9": "counts 9",
}


@pytest.mark.parametrize("text", NO_PAGE)
def test_a_date_chooses_no_page(text: str) -> None:
    assert heard(text) == "none no-page"


@pytest.mark.parametrize(("text", "said"), CHOSEN.items())
def test_a_choice_beside_a_date_counts(text: str, said: str) -> None:
    assert heard(text) == said
