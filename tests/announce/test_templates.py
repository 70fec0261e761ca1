"""Templates of a host's own: blanks filled in, words that fit their numbers, one clear sentence."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from service.announce.instants import instant_in_words, time_left
from service.announce.templates import (
    BLANKS,
    DEFAULTS,
    LENGTHS,
    NUMBERS,
    OCCASIONS,
    Length,
    Occasion,
    Values,
    check_template,
    fill,
)
from service.announce.words import (
    Heading,
    next_round_values,
    opening_values,
    reminder_values,
    result_values,
    tie_values,
)
from service.ballots.reading import Reading
from service.chart.grid import Chart
from service.chart.votable import Votable
from service.comments.spans import Span
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import ReadComment, RoundInput, RoundRules
from service.errors import BadTemplate

ZONE = ZoneInfo("Atlantic/Faroe")
HEADING = Heading("The Windy Chart", 2, ZONE)
OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
CLOSES = datetime(2026, 3, 8, 18, tzinfo=UTC)
RULES = RoundRules(
    OPENS, CLOSES, frozenset({3, 11}), tie_breaks=("most joined edges", "host's pick")
)


def counted(*pages: int) -> Result:
    """The result of a round in which each of these pages was chosen once."""
    read = (Reading("counts", (page,), None, "read") for page in pages)
    comments = tuple(
        ReadComment(f"c{place}", f"v{place}", "A", Span.at(OPENS), each)
        for place, each in enumerate(read)
    )
    return count_round(RoundInput(Chart(9, 7), RULES, comments))


WON = counted(3)
TIED = counted(3, 11)
VOTABLE = Votable(frozenset({4, 5}), widened=False, why="They touch page 3.")
FILLED: dict[Occasion, Values] = {
    "opening": opening_values(HEADING, RULES, why_these="They touch page 2."),
    "reminder": reminder_values(HEADING, RULES, datetime(2026, 3, 7, 13, tzinfo=UTC)),
    "result": result_values(HEADING, WON, digest="ab12"),
    "tie": tie_values(HEADING, TIED, RULES),
    "next round": next_round_values(HEADING, VOTABLE, opens=OPENS, closes=CLOSES),
}


@pytest.mark.parametrize("occasion", OCCASIONS)
def test_every_occasion_fills_the_blanks_that_it_promises(occasion: Occasion) -> None:
    assert set(FILLED[occasion]) == set(BLANKS[occasion])
    numbers = {name for name, value in FILLED[occasion].items() if isinstance(value, int)}
    assert numbers == NUMBERS & set(BLANKS[occasion])


@pytest.mark.parametrize("occasion", OCCASIONS)
@pytest.mark.parametrize("length", LENGTHS)
def test_every_template_that_is_there_can_be_filled_in(occasion: Occasion, length: Length) -> None:
    template = DEFAULTS[length][occasion]
    check_template(occasion, template)
    words = fill(template, FILLED[occasion])
    assert words.startswith("The Windy Chart, round 2")
    assert "$" not in words
    assert "  " not in words
    assert words == words.strip()


def test_what_is_said_in_short_fits_the_shortest_common_length() -> None:
    for occasion in OCCASIONS:
        assert len(fill(DEFAULTS["short"][occasion], FILLED[occasion])) <= 280


def test_a_reminder_says_how_long_there_is() -> None:
    words = fill(DEFAULTS["full"]["reminder"], FILLED["reminder"])
    assert words == (
        "The Windy Chart, round 2: there is still time to vote, 1 day and 5 hours.\n\n"
        "Which page is stitched next? Choose one of these 2 pages: 3 and 11.\n\n"
        "Write the page's number in a comment. You may change your mind: your latest ballot before "
        "the closing counts.\n\n"
        "Voting closes on Sunday 8 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC)."
    )


def test_a_tie_says_what_decides() -> None:
    words = fill(DEFAULTS["full"]["tie"], FILLED["tie"])
    assert words.startswith("The Windy Chart, round 2: a tie between pages 3 and 11.\n\n")
    assert "What follows decides: the host's pick, with a reason." in words
    assert "have 1 vote each, and there is no winner yet. 2 voters took part." in words


def test_an_empty_blank_leaves_no_hole() -> None:
    assert fill("$a $b\n\n$b\n\n$c. $b $b Go!", {"a": "A", "b": "", "c": "C"}) == "A\n\nC. Go!"
    assert fill("$b $a", {"a": "A", "b": ""}) == "A"


def test_a_dollar_sign_and_what_is_filled_in_stay_as_they_are() -> None:
    assert fill("$$5 for $game", {"game": "$round & ${x}"}) == "$5 for $round & ${x}"


@pytest.mark.parametrize(
    ("locale", "forms", "said"),
    [
        ("en_GB", "vote|votes", {0: "votes", 1: "vote", 2: "votes", 21: "votes"}),
        # Unicode CLDR, plural rules of these languages; French has a form for millions too.
        ("fr", "vote|votes de|votes", {0: "vote", 1: "vote", 2: "votes", 1_000_000: "votes de"}),
        (
            "pl",
            "głos|głosy|głosów|głosu",
            {1: "głos", 2: "głosy", 4: "głosy", 5: "głosów", 12: "głosów", 22: "głosy"},
        ),
        ("ja", "票", {1: "票", 2: "票"}),
    ],
)
def test_a_word_fits_its_number(locale: str, forms: str, said: dict[int, str]) -> None:
    for number, word in said.items():
        assert fill(f"${{voters|{forms}}}", {"voters": number}, locale) == word


def test_numbers_are_written_as_the_language_has_them() -> None:
    assert fill("$voters", {"voters": 12345}) == "12,345"
    assert fill("$voters", {"voters": 12345}, "de") == "12.345"


WRONG = [
    ("Hello $nobody", "asks for $nobody"),
    ("Hello $left", "asks for $left"),
    ("It costs $5", "in line 1 of the template '$5' is no blank to fill in"),
    ("One\ntwo ${round", "in line 2 of the template '${round' is no blank to fill in"),
    ("One ${page_count|page}", "gives 1 forms of a word for $page_count: give 2, for one, other"),
    ("${pages|page|pages}", "gives forms of a word for $pages, which is no number"),
    ("  \n ", "the template is empty"),
    ("x" * 20_001, "the template has 20,001 characters"),
]


@pytest.mark.parametrize(("template", "says"), WRONG)
def test_a_template_that_cannot_be_filled_in_says_why_in_one_sentence(
    template: str, says: str
) -> None:
    with pytest.raises(BadTemplate) as refused:
        check_template("opening", template)
    message = str(refused.value)
    assert says in message
    assert message.endswith(".")
    assert "\n" not in message


def test_a_time_is_told_in_every_zone_that_was_asked_for() -> None:
    also = (ZoneInfo("America/New_York"), ZoneInfo("Australia/Sydney"), ZONE, ZoneInfo("UTC"))
    # New York changed its clocks in the morning of that day: 14:00 there, no longer 13:00.
    assert instant_in_words(CLOSES, ZONE, also) == (
        "Sunday 8 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC; Sunday 14:00 New York time; "
        "Monday 9 March at 05:00 Sydney time)"
    )


def test_a_time_is_told_in_another_language() -> None:
    told = instant_in_words(CLOSES, ZONE, (ZoneInfo("Australia/Sydney"),), "fr")
    assert told.startswith("dimanche 8 mars 2026, 18:00 ")
    assert "dimanche 18:00 UTC; lundi 9 mars 2026, 05:00 Sydney" in told


@pytest.mark.parametrize(
    ("minutes", "words"),
    [
        (-5, "less than a minute"),
        (0, "less than a minute"),
        (1, "1 minute"),
        (59, "59 minutes"),
        (60, "1 hour"),
        (61, "1 hour and 1 minute"),
        (6 * 60 + 30, "6 hours"),
        (24 * 60, "1 day"),
        (25 * 60 + 59, "1 day and 1 hour"),
        (8 * 24 * 60 + 120, "8 days"),
    ],
)
def test_time_left_is_cut_down(minutes: int, words: str) -> None:
    until = datetime.fromtimestamp(OPENS.timestamp() + minutes * 60, UTC)
    assert time_left(OPENS, until) == words
