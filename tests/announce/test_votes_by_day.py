"""The votes by day, in the game's zone, and the tally as bars: counted, drawn and told."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from defusedxml.ElementTree import fromstring
from hypothesis import given, settings
from hypothesis import strategies as st

from service.announce.map_picture import Look
from service.announce.tally_bars import MOST_BARS, bars_in_words, draw_tally, size_of_tally
from service.announce.votes_by_day import (
    MOST_DAYS,
    VotesByDay,
    dated,
    days_in_words,
    draw_days,
    votes_by_day,
)
from service.comments.spans import Span
from service.counting.result import Ballot

SYDNEY = ZoneInfo("Australia/Sydney")
OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
ENDS = datetime(2026, 3, 4, 18, tzinfo=UTC)


def ballot(at: datetime, *pages: int, until: datetime | None = None) -> Ballot:
    return Ballot("v", "", "k", pages or (1,), Span(at, until or at))


def by_day(
    ballots: Sequence[Ballot], zone: ZoneInfo, opens: datetime, ends: datetime
) -> VotesByDay:
    return votes_by_day(dated(ballots, zone), zone, opens, ends)


def texts(svg: str) -> list[str]:
    return [each.text or "" for each in fromstring(svg).findall(".//{*}text")]


def test_votes_are_counted_by_the_day_where_the_game_is_played() -> None:
    evening = datetime(2026, 3, 2, 13, 30, tzinfo=UTC)  # 00:30 on the 3rd in Sydney
    shown = by_day([ballot(evening), ballot(evening, 3, 4), ballot(OPENS)], SYDNEY, OPENS, ENDS)
    assert shown.days == (
        (date(2026, 3, 2), 1),
        (date(2026, 3, 3), 3),
        (date(2026, 3, 4), 0),
        (date(2026, 3, 5), 0),
    )
    assert (shown.undated, shown.total) == (0, 4)
    assert days_in_words(shown) == (
        "4 votes by the day they were written, in Australia/Sydney time. Monday 2 March: 1 vote; "
        "Tuesday 3 March: 3 votes."
    )


def test_a_vote_whose_day_cannot_be_told_is_on_no_day() -> None:
    unsure = ballot(OPENS, until=OPENS + timedelta(days=1))
    shown = by_day([unsure], ZoneInfo("UTC"), OPENS, ENDS)
    assert [votes for _, votes in shown.days] == [0, 0, 0, 0]
    assert days_in_words(shown).endswith("1 vote is of no certain day.")
    assert texts(draw_days(shown, "t"))[-1] == "and 1 vote of no certain day"


def test_a_long_round_is_told_by_weeks() -> None:
    long = by_day([ballot(OPENS)], ZoneInfo("UTC"), OPENS, OPENS + timedelta(days=MOST_DAYS))
    assert long.weekly
    # 1 March 2026 is a Sunday: its week began on Monday 23 February.
    assert long.days[0] == (date(2026, 2, 23), 1)
    assert [day.weekday() for day, _ in long.days] == [0] * len(long.days)
    just = by_day([], ZoneInfo("UTC"), OPENS, OPENS + timedelta(days=MOST_DAYS - 1))
    assert (just.weekly, len(just.days)) == (False, MOST_DAYS)


@settings(deadline=None, max_examples=50)
@given(
    st.lists(st.tuples(st.integers(-5000, 90_000), st.integers(0, 3000), st.integers(1, 3))),
    st.sampled_from([SYDNEY, ZoneInfo("Atlantic/Faroe"), ZoneInfo("America/New_York")]),
)
def test_no_vote_is_lost_between_the_days(
    votes: list[tuple[int, int, int]], zone: ZoneInfo
) -> None:
    given_votes = [
        ballot(
            OPENS + timedelta(minutes=start),
            *range(1, pages + 1),
            until=OPENS + timedelta(minutes=start + wide),
        )
        for start, wide, pages in votes
    ]
    shown = by_day(given_votes, zone, OPENS, ENDS)
    assert shown.total == sum(pages for _, _, pages in votes)
    step = timedelta(days=7 if shown.weekly else 1)
    days = [day for day, _ in shown.days]
    assert days == [days[0] + place * step for place in range(len(days))]
    root = fromstring(draw_days(shown, "A title & more", "caption"))
    bars = [each for each in root.findall(".//{*}rect") if "fill-tone-2" in each.get("class", "")]
    assert len(bars) == sum(votes > 0 for _, votes in shown.days)


def test_a_bar_is_as_high_as_its_votes() -> None:
    shown = by_day(
        [ballot(OPENS)] + [ballot(OPENS + timedelta(days=1))] * 4, ZoneInfo("UTC"), OPENS, ENDS
    )
    root = fromstring(draw_days(shown, "t", look=Look(plain=True)))
    first, second = (float(each.get("height", "")) for each in root.findall("{*}rect"))
    assert second == pytest.approx(4 * first, rel=0.001)


def test_the_tally_is_drawn_and_told() -> None:
    tally = ((33, 1200), (24, 7), (40, 1))
    assert bars_in_words(tally, 33) == (
        "The votes by page. Page 33: 1,200 votes, the winner; page 24: 7 votes; page 40: 1 vote."
    )
    svg = draw_tally(tally, 33, "The windy island", "Round 2")
    assert texts(svg) == ["The windy island", "Round 2", "33", "1,200", "24", "7", "40", "1"]
    high = fromstring(svg).get("height", "")
    assert float(high) == pytest.approx(size_of_tally(tally, "The windy island", "Round 2")[1])


def test_a_tally_of_many_pages_sums_up_the_rest() -> None:
    tally = tuple((page, 100 - page) for page in range(1, MOST_BARS + 3))
    last = texts(draw_tally(tally, 1, "t"))[-1]
    assert last == f"2 more pages together have {100 - 21 + 100 - 22} votes"
    assert bars_in_words(tally, 1).endswith(f"{last}.")


def test_nobody_voted() -> None:
    assert bars_in_words((), None) == "No page has a vote."
    assert texts(draw_tally((), None, "t")) == ["t", "No page has a vote."]
    assert "0 votes" in draw_days(by_day((), SYDNEY, OPENS, ENDS), "t")
