"""What a host should do next: one thing for every state of a game, the most pressing first."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.announce.next_step import GameNow, NextStep, RoundNow, what_next

NOW = datetime(2026, 3, 4, 18, 0, tzinfo=UTC)
SOON, LATER = NOW + timedelta(hours=3), NOW + timedelta(days=3)
PAST = NOW - timedelta(hours=1)
#: Between two rounds, with pages left.
GAME = GameNow(round=None, rounds=2, pages_left=40, in_hand=(12,))
CLOSED = RoundNow(3, "closed", closes=PAST, batches=1, covers=True, winner=13)


def asked(game: GameNow) -> NextStep:
    return what_next(game, NOW)


CASES: list[tuple[str, GameNow, tuple[str, str, datetime | None, bool]]] = [
    (
        "no answer is sealed",
        GameNow(round=None, rounds=0, pages_left=63, sealed=False),
        ("Seal the answer", "answer", None, False),
    ),
    (
        "no answer is sealed, and the first round is drafted",
        GameNow(round=RoundNow(1, "draft"), rounds=0, pages_left=63, sealed=False),
        ("Seal the answer", "answer", None, False),
    ),
    (
        "a game without an answer that is being played",
        GameNow(round=RoundNow(1, "open"), rounds=0, pages_left=63, sealed=False),
        ("Let round 1 run, and close it when it is time", "round", None, False),
    ),
    (
        "nothing has been voted on",
        GameNow(round=None, rounds=0, pages_left=63),
        ("Draft the first round", "new round", None, False),
    ),
    (
        "a draft",
        replace(GAME, round=RoundNow(3, "draft")),
        ("Open round 3", "round", None, False),
    ),
    (
        "a draft that is planned",
        replace(GAME, round=RoundNow(3, "draft", planned=LATER)),
        ("Open round 3", "round", LATER, False),
    ),
    (
        "a draft whose time has come",
        replace(GAME, round=RoundNow(3, "draft", planned=PAST)),
        ("Open round 3", "round", PAST, True),
    ),
    (
        "an open round with days to go",
        replace(GAME, round=RoundNow(3, "open", closes=LATER)),
        ("Let round 3 run", "hand in", LATER, False),
    ),
    (
        "an open round that closes today",
        replace(GAME, round=RoundNow(3, "open", closes=SOON)),
        ("Remind your viewers of round 3", "words", SOON, False),
    ),
    (
        "an open round that the host closes",
        replace(GAME, round=RoundNow(3, "open")),
        ("Let round 3 run, and close it when it is time", "round", None, False),
    ),
    (
        "an open round whose time is over",
        replace(GAME, round=RoundNow(3, "open", closes=PAST)),
        ("Close round 3", "round", PAST, True),
    ),
    (
        "a closed round whose last export is too old",
        replace(GAME, round=replace(CLOSED, covers=False)),
        ("Hand in the comments of round 3", "hand in", None, False),
    ),
    (
        "looks that could change the winner",
        replace(GAME, round=replace(CLOSED, looks=2, can_change=True)),
        ("Look at 2 comments of round 3", "looks", None, False),
    ),
    (
        "looks that cannot",
        replace(GAME, round=replace(CLOSED, looks=2)),
        ("Announce round 3", "round", None, False),
    ),
    (
        "a tie that waits for a pick",
        replace(GAME, round=replace(CLOSED, winner=None, waits="host's pick", tied=(3, 7))),
        ("Pick a page in round 3", "round", None, False),
    ),
    (
        "a tie that waits for a draw",
        replace(GAME, round=replace(CLOSED, winner=None, waits="draw", tied=(3, 7))),
        ("Give the numbers of the draw of round 3", "round", None, False),
    ),
    (
        "a tie that waits for a runoff",
        replace(GAME, round=replace(CLOSED, winner=None, waits="runoff", tied=(3, 7))),
        ("Hold the runoff of round 3", "round", None, False),
    ),
    (
        "nobody voted",
        replace(GAME, round=replace(CLOSED, winner=None)),
        ("Announce round 3", "round", None, False),
    ),
    ("between two rounds", GAME, ("Draft the next round", "new round", None, False)),
    (
        "somebody has named the piece",
        replace(GAME, right=True, guessing="open"),
        ("See who named the piece first", "guesses", None, False),
    ),
    (
        "the winner has asked for the prize",
        replace(GAME, right=True, winner=True, claim="asked for", claim_by=LATER),
        ("Send the prize", "prize", None, False),
    ),
    (
        "the prize was not claimed",
        replace(GAME, right=True, winner=True, claim="unclaimed", claim_by=PAST),
        ("Pass the prize on", "prize", PAST, True),
    ),
    (
        "guessing is over, and the prize is sent",
        replace(GAME, winner=True, guessing="ended", claim="sent"),
        ("Reveal the answer", "guesses", None, False),
    ),
    (
        "guessing is over, and the prize can be claimed yet",
        replace(GAME, winner=True, guessing="ended", claim="to be claimed", claim_by=LATER),
        ("Draft the next round", "new round", None, False),
    ),
    (
        "every page is stitched, and people guess",
        replace(GAME, pages_left=0, guessing="open"),
        ("End the guessing", "guesses", None, False),
    ),
    (
        "every page is stitched, and a prize waits",
        replace(
            GAME, pages_left=0, winner=True, guessing="ended", claim="to be claimed", claim_by=SOON
        ),
        ("Wait for the prize to be claimed", "prize", SOON, False),
    ),
    (
        "all is done",
        replace(GAME, pages_left=0, winner=True, guessing="ended", revealed=True, claim="sent"),
        ("Nothing is left to do", "game", None, False),
    ),
    (
        "revealed, with pages left",
        replace(GAME, guessing="ended", revealed=True),
        ("Draft the next round", "new round", None, False),
    ),
]


@pytest.mark.parametrize(
    ("game", "expected"), [case[1:] for case in CASES], ids=[case[0] for case in CASES]
)
def test_every_state_has_its_step(
    game: GameNow, expected: tuple[str, str, datetime | None, bool]
) -> None:
    step = asked(game)
    assert (step.what, step.place, step.by, step.overdue) == expected


def test_a_closing_goes_before_a_prize() -> None:
    prize = replace(GAME, right=True, winner=True, claim="asked for")
    late = replace(prize, round=RoundNow(3, "open", closes=PAST))
    assert asked(late).what == "Close round 3"
    running = replace(prize, round=RoundNow(3, "open", closes=LATER))
    assert asked(running).what == "Send the prize"


def test_what_is_said_of_looks_and_ties_is_in_sentences() -> None:
    one = replace(GAME, round=replace(CLOSED, looks=1))
    assert asked(one).why == "Page 13 has won. 1 comment still needs a look, and cannot change it."
    tie = replace(GAME, round=replace(CLOSED, winner=None, waits="host's pick", tied=(3, 7)))
    assert asked(tie).why == "Pages 3 and 7 are tied."
    assert asked(GAME).why.startswith("Page 12 is in hand.")


ROUNDS = st.builds(
    RoundNow,
    number=st.integers(1, 9),
    state=st.sampled_from(("draft", "open", "closed")),
    planned=st.sampled_from((None, PAST, LATER)),
    closes=st.sampled_from((None, PAST, SOON, LATER)),
    covers=st.booleans(),
    looks=st.integers(0, 3),
    can_change=st.booleans(),
    waits=st.sampled_from((None, "draw", "runoff", "host's pick")),
    tied=st.sampled_from(((), (1, 2))),
    winner=st.sampled_from((None, 4)),
)
GAMES = st.builds(
    GameNow,
    round=st.none() | ROUNDS,
    rounds=st.integers(0, 3),
    pages_left=st.integers(0, 2),
    in_hand=st.sampled_from(((), (4,), (4, 5))),
    sealed=st.booleans(),
    revealed=st.booleans(),
    guessing=st.sampled_from(("not open", "open", "ended")),
    right=st.booleans(),
    winner=st.booleans(),
    claim=st.sampled_from(("none", "to be claimed", "unclaimed", "asked for", "sent")),
    claim_by=st.none() | st.just(PAST),
)


@given(GAMES)
def test_there_is_always_one_step_said_in_whole_sentences(game: GameNow) -> None:
    step = asked(game)
    assert step.what
    assert step.why.endswith(".")
    assert step.why[0].isupper()
    assert not step.overdue or step.by is None or step.by <= NOW
