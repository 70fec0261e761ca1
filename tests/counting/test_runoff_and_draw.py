"""The tie-breaks `neighbours`, `runoff` and `draw`: what each keeps, waits for and says."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from datetime import datetime

import pytest

from service.chart.grid import Chart
from service.counting.acts import drawn_pages
from service.counting.count import count_round
from service.counting.pseudonyms import digest_of_ballots, pseudonym_of
from service.counting.result import Result
from service.counting.round import ReadComment, RoundInput, Runoff
from service.counting.sources import (
    DrawInput,
    DrawRules,
    DrawSource,
    Lots,
    Told,
    check_sources,
    check_told,
    commitment_of,
    own_numbers,
)
from service.errors import BadDraw
from tests.counting.rounds import CLOSES, count, hour, round_of, vote

# The chart of these rounds:   1  2  3  4
#                              5  6  7  8
#                              9 10 11 12


def tie_of(*pages: int) -> tuple[ReadComment, ...]:
    return tuple(vote(f"for {page}", page) for page in pages)


def twice(*pages: int) -> tuple[ReadComment, ...]:
    return tuple(vote(f"{turn} for {page}", page) for page in pages for turn in (1, 2))


def test_neighbours_keeps_the_page_whose_joined_pages_have_most_votes() -> None:
    # Joined to 1: 2 and 5; to 12: 8 and 11.
    votes = (*twice(1, 12), vote("a", 8), vote("b", 11), vote("c", 5))
    result = count(*votes, tie_breaks=("neighbours",))
    (step,) = result.steps
    assert (step.tied, step.kept) == ((1, 12), (12,))
    assert step.values == ((1, "1"), (12, "2"))
    assert step.why == "The pages joined to page 12 have 2 votes, more than the other."


def test_neighbours_counts_corners_where_the_game_joins_them() -> None:
    votes = (*twice(1, 12), vote("a", 6))
    given = round_of(*votes, tie_breaks=("neighbours",))
    assert count_round(given).undecided == (1, 12)
    cornered = replace(given, chart=Chart(4, 3, joined="edge or corner"))
    assert count_round(cornered).winner == 1


@pytest.mark.parametrize(
    ("pages", "why"),
    [
        ((1, 12), "The pages joined to them have no vote in both cases, so the tie stays."),
        ((1, 4, 10), "The pages joined to them have no vote in all cases, so the tie stays."),
    ],
)
def test_neighbours_says_where_the_tie_stays(pages: tuple[int, ...], why: str) -> None:
    result = count(*tie_of(*pages), tie_breaks=("neighbours",))
    assert result.undecided == pages
    assert result.steps[0].why == why


def test_neighbours_may_keep_several() -> None:
    votes = (*twice(1, 3, 12), vote("a", 2))
    (step,) = count(*votes, tie_breaks=("neighbours",)).steps
    assert step.kept == (1, 3)
    assert step.why == (
        "The pages joined to pages 1 and 3 have 1 vote each, more than any other of them."
    )


def after_runoff(held: Runoff | None) -> Result:
    given = round_of(*tie_of(9, 4), tie_breaks=("runoff", "lowest number"))
    return count_round(replace(given, runoff=held))


def test_a_runoff_is_waited_for() -> None:
    result = after_runoff(None)
    assert result.undecided == (4, 9)
    assert [step.why for step in result.steps] == ["A runoff is to be held among pages 4 and 9."]
    assert result.why.endswith("and a runoff among them is to be held.")


def test_the_winner_of_the_runoff_wins_the_round() -> None:
    result = after_runoff(Runoff(2, (4, 9), 9, ((9, 7), (4, 3))))
    assert result.winner == 9
    (step,) = result.steps
    assert step.why == "Page 9 won the runoff, round 2, with 7 votes."
    assert step.values == ((4, "3"), (9, "7"))


@pytest.mark.parametrize("pages", [(4, 8), (4, 8, 9)])
def test_a_runoff_among_other_pages_decides_nothing(pages: tuple[int, ...]) -> None:
    result = after_runoff(Runoff(2, pages, 4))
    assert result.undecided == (4, 9)
    assert "but those tied are pages 4 and 9: it is to be held again." in result.steps[0].why


LOTTERY = DrawSource("the island lottery of 4 March", hour(60))
HARBOUR = DrawSource("the harbour's ferry count of 5 March", hour(80), "next numbers")
OWN = bytes(range(32))


def drawn(
    *told: Told,
    sources: tuple[DrawSource, ...] = (),
    value: bytes | None = None,
    closes: datetime | None = CLOSES,
    pages: tuple[int, ...] = (4, 9, 12),
) -> Result:
    rules = DrawRules(sources, commitment_of(OWN))
    given = round_of(*tie_of(*pages), tie_breaks=("draw",), draw=rules, closes=closes)
    known = DrawInput(tuple(enumerate(told, start=1)), value)
    return count_round(replace(given, drawn=known, salt=b"salt"))


def test_the_draw_waits_for_the_end_of_the_voting_and_for_every_source() -> None:
    waiting = drawn(value=OWN, closes=None)
    assert waiting.undecided == (4, 9, 12)
    assert waiting.why.endswith("and the draw among them is still to be held.")
    assert waiting.steps[0].why == (
        "The draw waits for the end of the voting, to be held among pages 4, 9 and 12."
    )
    waiting = drawn(Told(("4", "8")), sources=(LOTTERY, HARBOUR))
    assert "waits for the numbers of the harbour's ferry count" in waiting.steps[0].why
    assert "waits for the round's own value" in drawn().steps[0].why


def test_the_draw_takes_the_place_that_the_numbers_give() -> None:
    # Worked by hand: MD5 of 0000 + "4.8./" + 0000, its remainder by 3.
    lot = hashlib.md5(b"\0\0" + b"4.8./" + b"\0\0", usedforsecurity=False).hexdigest()
    place = int(lot, 16) % 3
    result = drawn(Told(("8", "4")), sources=(LOTTERY,), value=OWN)
    assert result.winner == (4, 9, 12)[place]
    (step,) = result.steps
    assert "the numbers of the island lottery of 4 March (8, 4)" in step.why
    turns = [turn for _, turn in step.values]
    assert sorted(turns) == ["drawn 1 of 3", "drawn 2 of 3", "drawn 3 of 3"]
    assert dict(step.values)[result.winner] == "drawn 1 of 3"


def test_a_source_that_was_left_out_counts_nothing() -> None:
    both = (LOTTERY, replace(HARBOUR, if_late="left out"))
    with_both = drawn(Told((), "cancelled"), Told(("77",)), sources=both)
    assert with_both.steps[0].values == drawn(Told(("77",)), sources=(LOTTERY,)).steps[0].values


def test_without_an_outside_source_the_own_value_and_the_ballots_draw() -> None:
    result = drawn(value=OWN)
    digest = digest_of_ballots(result.ballots, b"salt")
    key = (int.from_bytes(OWN, "big"), int(digest, 16))
    lots = Lots(((str(key[0]),), (str(key[1]),)), "")
    assert result.winner == drawn_pages((4, 9, 12), lots)[0]
    assert "the round's own value" in result.steps[0].why
    fallen = drawn(Told((), "the drum broke"), sources=(LOTTERY,), value=OWN)
    assert fallen.winner == result.winner
    assert "no outside source could be used" in fallen.steps[0].why


def test_the_ballots_decide_the_own_draw_too() -> None:
    winners = set()
    for number in range(12):
        more = tie_of(4, 9) + tuple(vote(f"x{number}{page}", page) for page in (4, 9))
        given = round_of(*more, tie_breaks=("draw",))
        winners.add(count_round(replace(given, drawn=DrawInput(value=OWN), salt=b"s")).winner)
    assert winners == {4, 9}


def test_numbers_known_before_the_voting_ended_count_nothing() -> None:
    early = replace(LOTTERY, expected=hour(47))
    result = drawn(Told(("4",)), sources=(early,), value=OWN)
    assert "the round's own value" in result.steps[0].why


def test_the_ballots_digest_is_the_same_for_voters_and_for_their_pseudonyms() -> None:
    result = count(*tie_of(4, 9))
    named = [replace(b, voter=pseudonym_of(b.voter, b"salt")) for b in result.ballots]
    assert digest_of_ballots(reversed(named), None) == digest_of_ballots(result.ballots, b"salt")
    assert digest_of_ballots(result.ballots, b"pepper") != digest_of_ballots(named, None)


BAD_SOURCES = {
    "too many": ([replace(LOTTERY, name=f"s{n}") for n in range(5)], "the draw has 5 sources"),
    "no name": ([replace(LOTTERY, name=" ")], "no name of its own"),
    "the same name": ([LOTTERY, replace(HARBOUR, name=LOTTERY.name)], "no name of its own"),
    "another way": ([replace(LOTTERY, if_late="who knows")], "'who knows' does not say"),  # type: ignore[arg-type]
    "too early": ([replace(LOTTERY, expected=hour(47))], "are known before the voting ends"),
}


@pytest.mark.parametrize(("sources", "says"), BAD_SOURCES.values(), ids=BAD_SOURCES.keys())
def test_sources_that_cannot_be_are_refused(sources: list[DrawSource], says: str) -> None:
    with pytest.raises(BadDraw, match=says):
        check_sources(tuple(sources), CLOSES)


def test_sources_named_well_are_taken() -> None:
    check_sources((LOTTERY, HARBOUR), CLOSES)
    check_sources((), None)


BAD_TOLD = {
    "before its time": (LOTTERY, Told(("4",)), 59, "are expected at 2026-03-04T06:00:00Z"),
    "nothing": (LOTTERY, Told(), 61, "give its numbers, or the reason to leave it out"),
    "waited for": (HARBOUR, Told((), "late"), 90, "the next numbers of .* are waited for"),
    "no number": (LOTTERY, Told(("four",)), 61, "'four' is no number of a draw"),
    "too early": (replace(LOTTERY, expected=hour(1)), Told(("4",)), 61, "count nothing"),
}


@pytest.mark.parametrize(("source", "told", "at", "says"), BAD_TOLD.values(), ids=BAD_TOLD.keys())
def test_numbers_that_cannot_be_are_refused(
    source: DrawSource, told: Told, at: float, says: str
) -> None:
    with pytest.raises(BadDraw, match=says):
        check_told(source, told, CLOSES, hour(at))


def test_numbers_are_kept_as_the_key_has_them() -> None:
    told = check_told(LOTTERY, Told(("007", " 4.50 ")), CLOSES, hour(61))
    assert told.numbers == ("7", "4.5")
    assert check_told(LOTTERY, Told((), " cancelled "), CLOSES, hour(61)) == Told((), "cancelled")


def test_the_own_numbers_tell_the_value_and_the_digest() -> None:
    assert own_numbers(b"\x01\x00", "ff") == (("256",), ("255",))


def test_a_rule_that_waits_is_not_passed_over() -> None:
    given = round_of(*tie_of(9, 4), tie_breaks=("draw", "lowest number"))
    assert isinstance(given, RoundInput)
    assert count_round(given).winner is None


def test_a_runoff_in_which_nobody_voted_leaves_the_tie_to_the_next_rule() -> None:
    result = after_runoff(Runoff(2, (4, 9), None))
    assert result.winner == 4
    assert [(step.rule, step.kept) for step in result.steps] == [
        ("runoff", (4, 9)),
        ("lowest number", (4,)),
    ]
