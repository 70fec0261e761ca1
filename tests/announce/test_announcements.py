"""Announcements as a host pastes them."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.announce.sentences import page_ranges
from service.announce.words import Heading, next_round_words, opening_words, result_words
from service.ballots.reading import Reading
from service.chart.grid import Chart
from service.chart.votable import Votable
from service.comments.spans import Span
from service.counting.changes import can_looks_change
from service.counting.count import count_round
from service.counting.figures import figures_of
from service.counting.result import CAUSES, Ballot, Result, SetAside, TieStep
from service.counting.round import ReadComment, RoundInput, RoundRules

ZONE = ZoneInfo("Atlantic/Faroe")
HEADING = Heading("The Windy Chart", 2, ZONE)
OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
CLOSES = datetime(2026, 3, 8, 18, tzinfo=UTC)
RULES = RoundRules(
    OPENS,
    CLOSES,
    frozenset({3, 11, 12, 13, 22}),
    tie_breaks=("most joined edges", "reached first", "lowest number", "host's pick"),
)
MORNING = Span.at(datetime(2026, 3, 2, 9, tzinfo=UTC))
EVENING = Span.at(datetime(2026, 3, 2, 19, 30, tzinfo=UTC))


def ballot(key: str, *pages: int, written: Span = MORNING, ruled: bool = False) -> Ballot:
    return Ballot(f"voter {key}", f"Author {key}", key, pages, written, ruled=ruled)


def result(*ballots: Ballot, **changed: object) -> Result:
    """A result that page 3 won with one vote, unless it is changed."""
    counted = ballots or (ballot("a", 3),)
    plain = Result(counted, (), ((3, 1),), (), 3, (), "Page 3 wins.", figures_of(counted))
    other = replace(plain, **changed)  # type: ignore[arg-type]
    return replace(other, figures=figures_of((*other.ballots, *other.set_aside)))


def test_an_opening_says_all_that_a_voter_needs() -> None:
    words = opening_words(HEADING, RULES, why_these="The next page must share an edge with page 2.")
    assert words == (
        "The Windy Chart, round 2: the vote is open.\n\n"
        "Which page is stitched next? Choose one of these 5 pages: 3, 11 to 13 and 22. The next "
        "page must share an edge with page 2.\n\n"
        "Write the page's number in a comment. You may change your mind: your latest ballot "
        "before the closing counts.\n\n"
        "Voting closes on Sunday 8 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC).\n\n"
        "If pages tie for the most votes, this decides: the page that touches most stitched "
        "pages; then the page that reached its votes first; then the lowest page number; then "
        "the host's pick, with a reason."
    )


OPENINGS = {
    "all pages": ({"votable": frozenset(range(1, 64))}, "Choose any page from 1 to 63."),
    "one page": ({"votable": frozenset({7})}, "Only page 7 can be chosen."),
    "two pages": ({"votable": frozenset({7, 8})}, "Choose one of these 2 pages: 7 and 8."),
    "no page": ({"votable": frozenset()}, "No page can be chosen."),
    "several choices": (
        {"choices": 3},
        "Choose up to 3 of these 5 pages: 3, 11 to 13 and 22.",
    ),
    "more choices than pages": (
        {"choices": 9, "votable": frozenset({7, 8})},
        "Choose up to 2 of these 2 pages: 7 and 8.",
    ),
    "several choices, several numbers": (
        {"choices": 3},
        "Write the pages' numbers in a comment; each of them gets one vote.",
    ),
    "the first stands": (
        {"standing": "first"},
        "Your first ballot counts, a later one does not replace it.",
    ),
    "no closing": ({"closes": None}, "Voting closes when it is announced."),
    "no tie-break": (
        {"tie_breaks": ()},
        "If pages tie for the most votes, there is no winner.",
    ),
    "one tie-break": (
        {"tie_breaks": ("lowest number",)},
        "If pages tie for the most votes, this decides: the lowest page number.",
    ),
}


@pytest.mark.parametrize(("changed", "words"), OPENINGS.values(), ids=OPENINGS.keys())
def test_an_opening_follows_the_rules(changed: dict[str, object], words: str) -> None:
    assert words in opening_words(HEADING, replace(RULES, **changed))  # type: ignore[arg-type]


def test_a_closing_by_the_hosts_act_is_told_as_she_says_it() -> None:
    words = opening_words(HEADING, replace(RULES, closes=None), until="when the next video goes up")
    assert "Voting closes when the next video goes up." in words


def test_a_plain_result() -> None:
    assert result_words(HEADING, result()) == (
        "The Windy Chart, round 2: page 3 is next.\n\n"
        "Page 3 wins with 1 vote. 1 voter took part.\n\n"
        "1 vote: page 3\n\n"
        "1 ballot counted."
    )


def test_a_result_lists_the_votes_from_most_to_least() -> None:
    ballots = [ballot(str(place), 3) for place in range(1200)]
    words = result_words(
        HEADING, result(*ballots, tally=((3, 1200), (4, 2), (5, 2), (6, 2), (9, 2), (1, 1)))
    )
    assert "Page 3 wins with 1,200 votes. 1,200 voters took part." in words
    assert "1,200 votes: page 3\n2 votes each: pages 4 to 6 and 9\n1 vote: page 1" in words
    assert "1,200 ballots counted." in words


def test_a_tie_is_told_with_the_steps_that_broke_it() -> None:
    steps = (
        TieStep("most joined edges", (3, 11), (3, 11), "Neither of them touches one."),
        TieStep("host's pick", (3, 11), (3,), "The host picked page 3: nearest the harbour"),
    )
    words = result_words(
        HEADING,
        result(ballot("a", 3), ballot("b", 11), tally=((3, 1), (11, 1)), steps=steps),
    )
    assert (
        "Pages 3 and 11 were tied with 1 vote each, and this is how the tie was broken:\n"
        "1. Neither of them touches one.\n"
        "2. The host picked page 3: nearest the harbour.\n\n"
    ) in words


def reached(late: Span) -> str:
    step = TieStep("reached first", (3, 11), (3,), "Page 3 reached that number of votes first.")
    return result_words(
        HEADING,
        result(
            ballot("a", 11, written=late), ballot("b", 3), tally=((3, 1), (11, 1)), steps=(step,)
        ),
    )


def test_reached_first_tells_when_in_both_zones() -> None:
    assert (
        "1. Page 3 reached that number of votes first. "
        "Page 3: Monday 2 March 2026 at 09:00 Faroe time (Monday 09:00 UTC). "
        "Page 11: Monday 2 March 2026 at 19:30 Faroe time (Monday 19:30 UTC).\n"
    ) in reached(EVENING)


def test_reached_first_tells_no_time_that_is_not_exact() -> None:
    assert "1. Page 3 reached that number of votes first.\n" in reached(
        Span(EVENING.earliest, CLOSES)
    )


def test_a_tie_that_waits_is_told_as_undecided() -> None:
    step = TieStep("host's pick", (3, 11), (3, 11), "The host has yet to pick: pages 3 and 11.")
    words = result_words(
        HEADING,
        result(
            ballot("a", 3),
            ballot("b", 11),
            tally=((3, 1), (11, 1)),
            steps=(step,),
            winner=None,
            undecided=(3, 11),
        ),
    )
    assert words.startswith("The Windy Chart, round 2: a tie between pages 3 and 11.\n\n")
    assert "Pages 3 and 11 have 1 vote each, and there is no winner yet. 2 voters" in words
    assert "this is how far the tie-breaks came:\n1. The host has yet to pick" in words


def test_a_round_without_votes() -> None:
    words = result_words(
        HEADING,
        Result(
            (), (), (), (), None, (), "Nobody chose a page, so there is no winner.", figures_of(())
        ),
    )
    assert words == (
        "The Windy Chart, round 2: no page was chosen.\n\n"
        "Nobody chose a page, so there is no winner.\n\n"
        "No ballot counted."
    )


def aside(number: int) -> tuple[SetAside, ...]:
    return tuple(
        SetAside(f"{cause} {one}", "v", "A", cause, "why")
        for cause in CAUSES
        for one in range(number)
    )


def test_what_was_not_counted_is_told_in_numbers_one_of_each() -> None:
    words = result_words(HEADING, result(set_aside=aside(1)))
    assert words.endswith(
        "1 ballot counted. 9 comments were not counted: 1 was the host's own, 1 came before the "
        "opening, 1 came after the closing, 1 was written at a time that cannot be told, 1 chose "
        "no page, 1 is still to be looked at, 1 named a page that could not be chosen, 1 was "
        "taken back by its writer and 1 gave way to another ballot of its writer."
    )


def test_what_was_not_counted_is_told_in_numbers_several_of_each() -> None:
    words = result_words(HEADING, result(set_aside=aside(2)))
    assert words.endswith(
        "18 comments were not counted: 2 were the host's own, 2 came before the opening, 2 came "
        "after the closing, 2 were written at times that cannot be told, 2 chose no page, 2 are "
        "still to be looked at, 2 named pages that could not be chosen, 2 were taken back by "
        "their writers and 2 gave way to other ballots of their writers."
    )


def test_a_single_comment_not_counted_is_singular() -> None:
    words = result_words(HEADING, result(set_aside=aside(1)[:1]))
    assert words.endswith("1 comment was not counted: 1 was the host's own.")


def test_rulings_and_pages_left_out_are_told_in_numbers() -> None:
    left_out = replace(ballot("b", 3), left_out=(40,))
    words = result_words(HEADING, result(ballot("a", 3, ruled=True), left_out))
    assert (
        "2 ballots counted, 1 of them by a ruling of the host. 1 ballot also named a page that "
        "could not be chosen."
    ) in words


def test_open_looks_are_told_with_whether_they_could_change_the_result() -> None:
    rules = replace(RULES, tie_breaks=())
    readings = (
        Reading("counts", (3,), None, "read"),
        Reading("counts", (3,), None, "read"),
        Reading("look", (3,), None, "read"),
    )
    comments = tuple(
        ReadComment(f"c{place}", f"v{place}", "Author", MORNING, reading)
        for place, reading in enumerate(readings)
    )
    given = RoundInput(Chart(9, 7), rules, comments)
    counted = count_round(given)
    change = can_looks_change(given, counted)
    words = result_words(HEADING, counted, change=change)
    assert (
        "1 comment still needs a look, but it cannot change the winner: no other page can come "
        "closer than 1 vote."
    ) in words


def test_what_comes_next_stands_at_the_end() -> None:
    assert result_words(HEADING, result(), then="See you on Friday.").endswith(
        "\n\nSee you on Friday."
    )


VOTABLE = Votable(frozenset({4, 12}), widened=False, why="The next page must touch page 3.")


def test_the_next_round_is_told_with_its_pages_and_times() -> None:
    words = next_round_words(replace(HEADING, round=3), VOTABLE, opens=OPENS, closes=CLOSES)
    assert words == (
        "The Windy Chart, round 3 opens on Sunday 1 March 2026 at 18:00 Faroe time (Sunday 18:00 "
        "UTC).\n\n"
        "Choose one of these 2 pages: 4 and 12. The next page must touch page 3.\n\n"
        "Voting closes on Sunday 8 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC)."
    )


def test_the_next_round_is_told_while_its_times_are_open() -> None:
    words = next_round_words(replace(HEADING, round=3), VOTABLE, opens=None, closes=None)
    assert words == (
        "The Windy Chart, round 3 comes next.\n\n"
        "Choose one of these 2 pages: 4 and 12. The next page must touch page 3."
    )


def test_a_finished_chart_has_no_next_round() -> None:
    words = next_round_words(
        HEADING, Votable(frozenset(), widened=False, why="Every page is stitched."), opens=OPENS,
        closes=None,
    )  # fmt: skip
    assert words == "The Windy Chart: there is no further round.\n\nEvery page is stitched."


@pytest.mark.parametrize(
    ("pages", "words"),
    [
        ((), ""),
        ((7,), "7"),
        ((8, 7), "7 and 8"),
        ((7, 8, 9), "7 to 9"),
        ((1, 3, 4, 6, 7, 8, 20), "1, 3, 4, 6 to 8 and 20"),
    ],
    ids=str,
)
def test_pages_in_a_row_are_told_as_a_range(pages: tuple[int, ...], words: str) -> None:
    assert page_ranges(pages) == words


@settings(max_examples=100, deadline=None)
@given(st.frozensets(st.integers(1, 60)))
def test_ranges_name_every_page_and_no_other(pages: frozenset[int]) -> None:
    named: set[int] = set()
    for part in page_ranges(pages).replace(" and ", ", ").split(", ") if pages else ():
        first, _, last = part.partition(" to ")
        named.update(range(int(first), int(last or first) + 1))
    assert named == pages


def test_no_announcement_names_a_voter() -> None:
    names = ["Marit of the Mill", "Old Bo", "7731-id"]
    comments = tuple(
        ReadComment(name, name, name, MORNING, Reading("counts", (page,), None, f"{name} said it"))
        for name, page in zip(names, (3, 11, 40), strict=True)
    )
    given = RoundInput(Chart(9, 7), RULES, comments, host_pick=(3, "it is near the harbour"))
    counted = count_round(given)
    words = result_words(HEADING, counted, change=can_looks_change(given, counted))
    assert "Page 3 wins" in words
    assert not [name for name in names if name in words]
