"""Which guesses count: the window, and how many one voter may make."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Span
from service.errors import BadRules, BadRuling
from service.mystery.first import first_right
from service.mystery.guess import GuessOutcome, GuessReading
from service.mystery.judged import (
    GuessRuling,
    JudgedGuess,
    check_guess_ruling,
    standing_ruling,
    standing_time,
)
from service.mystery.window import GUESS_CAUSES, GuessCause, Window, settle_guesses

NOON = datetime(2026, 3, 1, 12, 0, tzinfo=UTC)
HOUR = Window(NOON, NOON + timedelta(hours=1))


def at(minute: int, until: int | None = None) -> Span:
    """A time in minutes after noon; with `until`, a span."""
    last = minute if until is None else until
    return Span(NOON + timedelta(minutes=minute), NOON + timedelta(minutes=last))


def guess(
    key: str, written: Span, outcome: GuessOutcome = "wrong", voter: str = "v"
) -> JudgedGuess:
    return JudgedGuess(key, f"Author of {key}", voter, written, GuessReading(outcome, "as given."))


def causes(guesses: list[JudgedGuess], window: Window) -> list[GuessCause | None]:
    return [one.cause for one in settle_guesses(guesses, window)]


def test_a_guess_has_one_cause_why_it_does_not_count() -> None:
    said = causes(
        [
            replace(guess("host", at(5)), is_host=True),
            guess("chat", at(5), "none"),
            guess("early", at(-9)),
            guess("late", at(61)),
            replace(guess("ruled", at(5)), in_time=False),
            guess("doubtful", at(-1, 1)),
            guess("counts", at(5)),
        ],
        HOUR,
    )
    assert said == [*GUESS_CAUSES[:6], None]


def test_no_guess_counts_before_the_host_has_opened_guessing() -> None:
    settled = settle_guesses([guess("a", at(5), "right")], Window(None))
    assert [one.cause for one in settled] == ["before guessing opened"]
    assert first_right(settled).key is None


def test_a_window_without_an_end_takes_every_later_guess() -> None:
    assert causes([guess("a", at(60 * 24 * 900))], Window(NOON)) == [None]


def test_a_guess_in_the_second_of_the_ending_may_be_out_of_time() -> None:
    ends = NOON + timedelta(minutes=30, milliseconds=400)
    assert causes([guess("a", at(30))], Window(NOON, ends)) == ["cannot tell when"]
    assert causes([guess("a", at(31))], Window(NOON, ends)) == ["after guessing ended"]


@pytest.mark.parametrize("written", [at(-9), at(61), at(-1, 1), at(5)], ids=str)
def test_a_ruling_on_the_time_goes_before_the_time(written: Span) -> None:
    one = guess("a", written)
    assert causes([replace(one, in_time=True)], HOUR) == [None]
    assert causes([replace(one, in_time=False)], HOUR) == ["ruled out"]


def test_guesses_beyond_a_voters_number_do_not_count() -> None:
    guesses = [guess("third", at(9)), guess("first", at(1)), guess("second", at(5))]
    two = replace(HOUR, per_voter=2)
    assert causes(guesses, two) == ["beyond the voter's guesses", None, None]
    assert causes([*guesses, guess("another's", at(10), voter="w")], two)[-1] is None


def test_what_is_no_guess_or_out_of_the_window_is_not_one_of_a_voters_guesses() -> None:
    one = replace(HOUR, per_voter=1)
    before = [guess("early", at(-5)), guess("chat", at(1), "none")]
    assert causes([*before, guess("counts", at(5))], one)[-1] is None


def test_it_cannot_be_told_which_guess_came_first() -> None:
    one = replace(HOUR, per_voter=1)
    same = [guess("a", at(5), "right"), guess("b", at(5))]
    assert causes(same, one) == ["cannot tell which guess"] * 2
    assert first_right(settle_guesses(same, one)).looks_before == ("a",)
    after_a_look = [guess("look", at(1), "look"), guess("right", at(5), "right")]
    assert causes(after_a_look, one) == [None, "cannot tell which guess"]


def test_a_ruling_lets_a_guess_in_beyond_the_voters_number() -> None:
    one = replace(HOUR, per_voter=1)
    guesses = [guess("a", at(1)), replace(guess("b", at(5)), in_time=True)]
    assert causes(guesses, one) == [None, None]


def test_a_voter_may_make_one_guess_at_least() -> None:
    with pytest.raises(BadRules, match="allow one guess or more"):
        Window(NOON, per_voter=0)


_SPANS = st.tuples(st.integers(-2, 5), st.integers(0, 3)).map(lambda p: at(p[0], p[0] + p[1]))
_ROWS = st.tuples(_SPANS, st.sampled_from(["right", "wrong"]), st.sampled_from("uv"))


@settings(max_examples=80)
@given(st.lists(_ROWS, max_size=4), st.integers(1, 2))
def test_what_is_certain_holds_whenever_the_guesses_were_written(rows, most: int) -> None:  # type: ignore[no-untyped-def]
    """Every instant that the spans allow is tried, in minutes, in every order within a minute."""
    guesses = [guess(f"k{i}", span, o, v) for i, (span, o, v) in enumerate(rows)]
    window = Window(NOON, per_voter=most)
    settled = settle_guesses(guesses, window)
    minutes = [
        range(
            int((g.written.earliest - NOON).total_seconds()) // 60,
            int((g.written.latest - NOON).total_seconds()) // 60 + 1,
        )
        for g in guesses
    ]
    for when in product(*minutes):
        for ours in (+1, -1):
            order = sorted(range(len(guesses)), key=lambda i: (when[i], ours * i))
            made = {"u": 0, "v": 0}
            for i in order:
                counts = when[i] >= 0 and made[guesses[i].voter] < most
                made[guesses[i].voter] += when[i] >= 0
                if settled[i].standing != "cannot tell":
                    assert counts == (settled[i].standing == "counts")


def test_a_ruling_decides_what_a_guess_is_and_whether_it_counts_apart() -> None:
    what = GuessRuling("right", "the same piece", NOON)
    when = GuessRuling(None, "I saw it in time", NOON + timedelta(days=1), in_time=True)
    assert (standing_ruling((what, when)), standing_time((what, when))) == ("right", True)
    later = GuessRuling("wrong", "another edition", NOON + timedelta(days=2), in_time=False)
    assert (standing_ruling((what, when, later)), standing_time((later, when))) == ("wrong", False)
    assert standing_time((what,)) is None


@pytest.mark.parametrize("ruling", [GuessRuling(None, "so", NOON), GuessRuling("look", "so", NOON)])
def test_a_ruling_that_decides_nothing_is_refused(ruling: GuessRuling) -> None:
    with pytest.raises(BadRuling):
        check_guess_ruling(ruling)
    check_guess_ruling(GuessRuling("wrong", "so", NOON))
