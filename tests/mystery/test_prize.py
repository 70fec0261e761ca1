"""The prize: what can be offered, until when it can be claimed, and what follows what."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from service.errors import BadRules, WrongState
from service.mystery.prize import (
    CAUTION,
    Claim,
    Prize,
    check_asked,
    check_passed_on,
    check_sent,
    claim_end,
)

WON = datetime(2026, 3, 1, 18, tzinfo=UTC)
END = WON + timedelta(days=14)
OPEN = Claim(END)
ASKED = replace(OPEN, asked_for="the sea green one", asked_at=WON + timedelta(days=1))
SENT = replace(ASKED, sent_at=WON + timedelta(days=2))
PASSED = replace(OPEN, passed_on=END)


@pytest.mark.parametrize(("offer", "days"), [(" ", 14), ("a skein", 0), ("a skein", 366)])
def test_a_prize_that_cannot_be_is_refused(offer: str, days: int) -> None:
    with pytest.raises(BadRules):
        Prize(offer, claim_days=days)
    assert Prize("a skein", claim_days=365).claim_days == 365


def test_the_caution_says_that_rules_differ_and_that_it_is_no_advice() -> None:
    for words in ("country to country", "platforms", "no legal advice"):
        assert words in CAUTION


def test_a_claim_ends_at_the_same_time_of_day_across_a_change_of_clocks() -> None:
    """Clocks of the Faroes go forward on 29 March 2026 at 01:00 UTC (the zone's own rules)."""
    faroe = ZoneInfo("Atlantic/Faroe")
    end = claim_end(datetime(2026, 3, 27, 20, 0, 5, 700, tzinfo=UTC), 3, faroe)
    assert end == datetime(2026, 3, 30, 19, 0, 5, tzinfo=UTC)


def test_a_claim_never_ends_at_a_time_that_the_clocks_skip() -> None:
    """02:30 on 29 March 2026 does not exist in Berlin; half past three follows it."""
    won = datetime(2026, 3, 28, 1, 30, tzinfo=UTC)
    assert claim_end(won, 1, ZoneInfo("Europe/Berlin")) == datetime(2026, 3, 29, 1, 30, tzinfo=UTC)


@pytest.mark.parametrize(
    ("claim", "now", "state"),
    [
        (OPEN, END - timedelta(seconds=1), "to be claimed"),
        (OPEN, END, "unclaimed"),
        (ASKED, END, "asked for"),
        (SENT, END, "sent"),
        (PASSED, END, "passed on"),
    ],
)
def test_how_far_a_claim_has_come(claim: Claim, now: datetime, state: str) -> None:
    assert claim.state_at(now) == state


def test_a_prize_is_asked_for_before_its_time_is_over() -> None:
    just = END - timedelta(seconds=1)
    check_asked(OPEN, WON, just, END + timedelta(days=9))
    check_asked(ASKED, WON, just, just)
    with pytest.raises(WrongState, match="could be claimed before 2026-03-15T18:00:00Z"):
        check_asked(OPEN, WON, END, END)
    for claim in (SENT, PASSED):
        with pytest.raises(WrongState):
            check_asked(claim, WON, just, just)
    for at in (WON - timedelta(days=1), END):
        with pytest.raises(BadRules):
            check_asked(OPEN, WON, at, just)


def test_a_prize_is_sent_once_it_is_asked_for() -> None:
    check_sent(ASKED, WON + timedelta(days=1), END)
    for claim in (OPEN, SENT, PASSED):
        with pytest.raises(WrongState):
            check_sent(claim, END, END)
    for at in (WON, END + timedelta(days=1)):
        with pytest.raises(BadRules):
            check_sent(ASKED, at, END)


def test_a_prize_goes_on_only_unclaimed_or_declined() -> None:
    before = END - timedelta(seconds=1)
    check_passed_on(OPEN, END, declined=False)
    for claim in (OPEN, ASKED):
        check_passed_on(claim, before, declined=True)
    for claim in (OPEN, ASKED, SENT, PASSED):
        with pytest.raises(WrongState):
            check_passed_on(claim, before, declined=False)
    for claim in (SENT, PASSED):
        with pytest.raises(WrongState):
            check_passed_on(claim, END, declined=True)
