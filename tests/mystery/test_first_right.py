"""Who named the piece first, as far as times prove it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Answer, Span
from service.errors import BadTime
from service.mystery.first import FirstRight, first_right
from service.mystery.guess import GuessOutcome, GuessReading
from service.mystery.judged import GuessRuling, JudgedGuess, standing_ruling
from service.mystery.window import Window, in_window, settle_guesses

NOON = datetime(2026, 3, 1, 12, 0, tzinfo=UTC)
LONG_AGO = datetime(2020, 1, 1, tzinfo=UTC)


def at(minute: float, until: float | None = None) -> Span:
    """A time in minutes after noon; with `until`, a span."""
    last = minute if until is None else until
    return Span(NOON + timedelta(minutes=minute), NOON + timedelta(minutes=last))


def guess(
    key: str,
    written: Span,
    outcome: GuessOutcome = "right",
    *,
    voter: str = "",
    ruling: GuessOutcome | None = None,
    is_host: bool = False,
) -> JudgedGuess:
    reading = GuessReading(outcome, "as given.")
    return JudgedGuess(key, f"Author of {key}", voter or key, written, reading, is_host, ruling)


def first_of(
    guesses: list[JudgedGuess], opens: datetime | None, ends: datetime | None, **more: Any
) -> FirstRight:
    """The first right one of a game that opened long ago, unless it says when."""
    return first_right(settle_guesses(guesses, Window(opens or LONG_AGO, ends)), **more)


def test_the_earliest_right_guess_is_first() -> None:
    first = first_of([guess("b", at(9)), guess("a", at(5)), guess("c", at(7))], None, None)
    assert (first.key, first.tied, first.looks_before) == ("a", (), ())
    assert "Author of a" in first.why


def test_wrong_guesses_and_chat_are_no_matter() -> None:
    guesses = [guess("w", at(1), "wrong"), guess("n", at(2), "none"), guess("r", at(3))]
    assert first_of(guesses, None, None).key == "r"


def test_without_a_right_guess_there_is_no_first() -> None:
    first = first_of([guess("w", at(1), "wrong")], None, None)
    assert (first.key, first.tied, first.looks_before) == (None, (), ())
    assert first.why == "No guess is right so far."


def test_the_same_instant_cannot_be_told_apart() -> None:
    first = first_of([guess("a", at(5)), guess("b", at(5)), guess("c", at(6))], None, None)
    assert (first.key, first.tied) == (None, ("a", "b"))
    assert "same second" in first.why
    assert "fractions of a second" in first.why


def test_a_whole_second_is_not_before_a_fraction_of_it() -> None:
    """The one source may have cut off what the other tells."""
    half = guess("half", at(5 + 0.5 / 60))
    assert first_of([guess("whole", at(5)), half], None, None).tied == ("whole", "half")
    assert first_of([guess("whole", at(5)), half], None, None).key is None
    next_second = guess("next", at(5 + 1 / 60))
    assert first_of([guess("whole", at(5)), next_second], None, None).key == "whole"


def test_fractions_of_one_second_are_told_apart() -> None:
    guesses = [guess("b", at(5 + 0.6 / 60)), guess("a", at(5 + 0.4 / 60))]
    assert first_of(guesses, None, None).key == "a"


def test_the_host_rules_who_was_first_of_those_that_cannot_be_told_apart() -> None:
    guesses = [guess("a", at(5)), guess("b", at(5)), guess("c", at(6))]
    ruled = first_of(guesses, None, None, picked="b")
    assert (ruled.key, ruled.tied) == ("b", ("a", "b"))
    assert "by the host's ruling" in ruled.why
    later = first_of(guesses, None, None, picked="c")
    assert (later.key, later.tied) == (None, ("a", "b"))


def test_a_voter_who_is_passed_over_is_not_the_first() -> None:
    guesses = [
        guess("a", at(5), voter="v"),
        guess("again", at(6), voter="v"),
        guess("look", at(4), "look", voter="v"),
        guess("next", at(9)),
    ]
    first = first_of(guesses, None, None, without=frozenset("v"))
    assert (first.key, first.looks_before) == ("next", ())


def test_overlapping_spans_cannot_be_told_apart() -> None:
    first = first_of([guess("day", at(0, 600)), guess("exact", at(30))], None, None)
    assert (first.key, first.tied) == (None, ("day", "exact"))


def test_a_span_that_ends_before_another_begins_is_first() -> None:
    assert first_of([guess("b", at(10, 20)), guess("a", at(0, 9))], None, None).key == "a"


def test_a_later_guess_is_not_tied_through_a_wide_one() -> None:
    """The wide span overlaps both, but the late guess is provably after the early one."""
    guesses = [guess("early", at(1)), guess("late", at(50)), guess("wide", at(0, 100))]
    assert first_of(guesses, None, None).tied == ("wide", "early")


def test_two_tied_guesses_of_one_voter_are_that_voters() -> None:
    guesses = [guess("a", at(0, 10), voter="v"), guess("b", at(5), voter="v"), guess("c", at(20))]
    first = first_of(guesses, None, None)
    assert (first.key, first.tied) == ("a", ())


def test_a_look_that_may_be_earlier_stands_before() -> None:
    guesses = [
        guess("before", at(1), "look"),
        guess("maybe", at(0, 60), "look"),
        guess("after", at(31), "look"),
        guess("right", at(30)),
    ]
    first = first_of(guesses, None, None)
    assert first.key == "right"
    assert first.looks_before == ("maybe", "before")
    assert "2 comments that need a look" in first.why


def test_one_look_is_told_in_the_singular() -> None:
    first = first_of([guess("look", at(1), "look"), guess("right", at(2))], None, None)
    assert "1 comment that needs a look may stand before it" in first.why


def test_looks_stand_alone_where_nothing_is_right() -> None:
    first = first_of([guess("look", at(1), "look")], None, None)
    assert (first.key, first.looks_before) == (None, ("look",))
    assert "may be right" in first.why


def test_the_hosts_own_comments_are_no_guesses() -> None:
    guesses = [guess("host", at(1), is_host=True), guess("look", at(1), "look", is_host=True)]
    first = first_of([*guesses, guess("viewer", at(5))], None, None)
    assert (first.key, first.looks_before) == ("viewer", ())


def test_a_ruling_holds_against_the_reading() -> None:
    guesses = [
        guess("ruled out", at(1), "right", ruling="wrong"),
        guess("ruled in", at(3), "look", ruling="right"),
        guess("read", at(5), "right"),
    ]
    first = first_of(guesses, None, None)
    assert (first.key, first.looks_before) == ("ruled in", ())


def test_of_several_rulings_the_latest_holds() -> None:
    early = GuessRuling("right", "the same piece", NOON)
    late = GuessRuling("wrong", "another edition", NOON + timedelta(days=1))
    assert standing_ruling(()) is None
    assert standing_ruling((early,)) == "right"
    assert standing_ruling((late, early)) == "wrong"
    assert standing_ruling((early, GuessRuling("none", "slipped", NOON))) == "none"


@pytest.mark.parametrize(
    ("written", "state"),
    [
        (at(-1), "before"),
        (at(0), "in time"),
        (at(59), "in time"),
        (at(60), "after"),
        (at(-5, 5), "cannot tell"),
        (at(50, 70), "cannot tell"),
        (at(-9, -1), "before"),
        (at(-9, 99), "cannot tell"),
    ],
    ids=str,
)
def test_the_window_opens_at_its_opening_and_ends_before_its_closing(
    written: Span, state: str
) -> None:
    assert in_window(written, NOON, NOON + timedelta(hours=1)) == state


def test_guesses_outside_the_window_are_set_aside() -> None:
    guesses = [guess("too early", at(-9)), guess("late", at(61)), guess("in", at(30))]
    first = first_of(guesses, NOON, NOON + timedelta(hours=1))
    assert (first.key, first.tied, first.looks_before) == ("in", (), ())


def test_a_right_guess_that_may_be_out_of_time_is_for_the_host() -> None:
    guesses = [guess("straddles", at(-5, 5)), guess("in", at(30))]
    first = first_of(guesses, NOON, None)
    assert (first.key, first.looks_before) == ("in", ("straddles",))


def test_a_bound_without_a_zone_is_refused() -> None:
    with pytest.raises(BadTime):
        first_of([guess("a", at(1))], datetime(2026, 3, 1), None)  # noqa: DTZ001


_SPANS = st.tuples(st.integers(0, 30), st.integers(0, 8)).map(lambda p: at(p[0], p[0] + p[1]))
_GUESSES = st.lists(
    st.tuples(_SPANS, st.sampled_from(["right", "look", "wrong"]), st.sampled_from("uvw")),
    max_size=7,
).map(lambda rows: [guess(f"k{i}", s, o, voter=v) for i, (s, o, v) in enumerate(rows)])  # type: ignore[arg-type]


@settings(max_examples=120)
@given(_GUESSES, st.randoms(use_true_random=False))
def test_the_order_of_the_comments_never_matters(guesses: list[JudgedGuess], random) -> None:  # type: ignore[no-untyped-def]
    shuffled = list(guesses)
    random.shuffle(shuffled)
    assert first_of(shuffled, None, None) == first_of(guesses, None, None)


@settings(max_examples=120)
@given(_GUESSES)
def test_nobody_else_can_have_been_before_the_first(guesses: list[JudgedGuess]) -> None:
    """Whatever instants within their spans the comments were written at, no tie or look aside."""
    first = first_of(guesses, None, None)
    by_key = {g.key: g for g in guesses}
    named = {first.key, *first.tied, *first.looks_before} - {None}
    right = [g for g in guesses if g.outcome == "right"]
    assert bool(right) == (first.key is not None or first.tied != ())
    if first.key is None:
        return
    winner = by_key[first.key]
    for other in guesses:
        if other.outcome in ("right", "look") and other.key not in named:
            # A span is half open: its latest instant is not in it.
            later = (
                winner.written.latest < other.written.latest
                or winner.written.is_before(other.written) is Answer.YES
            )
            assert later or other.voter == winner.voter
