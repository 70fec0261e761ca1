"""Entries that cannot be: each is one sentence that names the day and what to do."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from service.errors import BadLog
from service.pace.entry import NO_DETAILS, Details, Entry, check_entry
from tests.pace.logs import day, entry, rest

TODAY = day(30)


@pytest.mark.parametrize(
    "good",
    [
        entry(1, 0),
        entry(30, 412),
        entry(5, 900, "since last time", first=day(2)),
        entry(5, 3412, "so far"),
        entry(5, 6_940, "percent"),
        entry(5, 10_000, "percent"),
        entry(5, 12, page=None, piece="The winter runner"),
        entry(5, 0, details=Details(backstitch=40, beads=3)),
        rest(40, 47),
    ],
)
def test_what_a_host_writes_can_be(good: Entry) -> None:
    check_entry(good, TODAY)


WRONG: list[Any] = [
    pytest.param(entry(31, 5), "still to come", id="tomorrow"),
    pytest.param(entry(3, -5), "says -5 stitches", id="below 0"),
    pytest.param(entry(3, 3_000_000), "says 3,000,000 stitches", id="too many"),
    pytest.param(entry(3, -1, "percent"), "says -0.01 %", id="percent below 0"),
    pytest.param(entry(3, 10_001, "percent"), "says 100.01 %", id="percent above 100"),
    pytest.param(entry(3, 1, details=Details(beads=-1)), "-1 beads", id="beads below 0"),
    pytest.param(entry(3, 1, page=None), "or neither", id="of nothing"),
    pytest.param(entry(3, 1, piece="A runner"), "both a page and", id="of two things"),
    pytest.param(entry(3, 1, "so far", page=None, piece="A"), "on the day or since", id="piece"),
    pytest.param(entry(3, 1, first=day(2)), "several days", id="a day with a first day"),
    pytest.param(entry(3, 1, "so far", first=day(4)), "begins on", id="ends before it begins"),
    pytest.param(replace(entry(3, 1), day=date(206, 3, 1)), "begins on 0206", id="long ago"),
    pytest.param(replace(entry(3, 1), how="guessed"), "'guessed'", id="told otherwise"),  # type: ignore[arg-type]
    pytest.param(replace(rest(3, 5), amount=5), "stitches, a page or", id="a rest with stitches"),
    pytest.param(replace(rest(3, 5), first=None), "no first day", id="a rest without a beginning"),
    pytest.param(rest(1, 1_200), "long before", id="a rest of years"),
    pytest.param(rest(1_100, 1_107), "years ahead", id="a rest in another decade"),
]


@pytest.mark.parametrize(("wrong", "says"), WRONG)
def test_what_cannot_be_is_refused_in_one_sentence(wrong: Entry, says: str) -> None:
    with pytest.raises(BadLog, match=says) as told:
        check_entry(wrong, TODAY)
    assert str(told.value).endswith(".")
    assert "\n" not in str(told.value)


def test_details_are_added_up_apart_from_one_another() -> None:
    assert Details(1, 2, 3) + Details(backstitch=5) == Details(1, 7, 3)
    assert not NO_DETAILS.any
    assert Details(beads=1).any
