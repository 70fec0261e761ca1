"""Announcements of guessing, winner, prize and reveal as a host pastes them."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from service.announce.mystery_words import (
    Guessing,
    Winner,
    claim_reminder,
    ending_of_guessing,
    opening_of_guessing,
    passed_on_words,
    reveal_words,
    winner_words,
)

ZONE = ZoneInfo("Atlantic/Faroe")
OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
ENDS = datetime(2026, 4, 12, 19, tzinfo=UTC)
SEAL = "ab" * 32
GUESSING = Guessing("The Windy Piece", ZONE, "title", 1, None, OPENS, None, SEAL)
WINNER = Winner("The Windy Piece", ZONE, "Maren", OPENS, "a skein", "the colour card", ENDS)


def test_an_opening_says_how_to_guess_and_shows_the_seal() -> None:
    assert opening_of_guessing(GUESSING) == (
        "The Windy Piece: guessing is open.\n\n"
        "What is it? Write the title of the piece in a comment. As many guesses as you like count, "
        "and of each comment the first name.\n\n"
        "Guesses count from Sunday 1 March 2026 at 18:00 Faroe time (Sunday 18:00 UTC) on. Guessing "
        "ends when the first right guess is announced, or when I say so. The earliest right guess "
        "wins; an edited comment counts from its last edit.\n\n"
        "The answer was sealed beforehand, and the reveal can be checked by anybody: " + SEAL
    )


def test_an_opening_tells_limits_end_and_prize() -> None:
    told = replace(GUESSING, per_voter=1, names_per_comment=3, ends=ENDS, wants="title or designer")
    words = opening_of_guessing(
        replace(told, offer="a skein", choose_from="the colour card", claim_days=14)
    )
    for said in (
        "Write the title of the piece or its designer in a comment.",
        "Your first guess counts, and of each comment the first 3 names.",
        "Guessing ends on Sunday 12 April 2026 at 20:00 Faroe time",
        "The prize for the first right guess: a skein. It may be chosen from: the colour card.",
        "within 14 days of the announcement, or it goes to the next right guesser.",
    ):
        assert said in words
    assert "Your first 2 guesses count" in opening_of_guessing(replace(told, per_voter=2))


def test_the_end_says_nothing_of_whether_anybody_was_right() -> None:
    assert ending_of_guessing("The Windy Piece", ENDS, ZONE) == (
        "The Windy Piece: guessing has ended.\n\nGuesses made before Sunday 12 April 2026 at 20:00 "
        "Faroe time (Sunday 19:00 UTC) count."
    )


def test_a_winner_is_named_with_the_time_and_the_claim() -> None:
    words = winner_words(WINNER)
    assert "Maren was the first to name it, on Sunday 1 March 2026 at 18:00 Faroe time" in words
    assert "Please claim it before Sunday 12 April 2026 at 20:00 Faroe time" in words
    assert "corrects" not in words
    assert "first to name it. Guessing" in winner_words(replace(WINNER, written=None))
    assert "prize" not in winner_words(replace(WINNER, claim_by=None))
    assert "corrects an earlier announcement: I misread." in winner_words(
        WINNER, instead_of="I misread"
    )


def test_a_winner_by_a_ruling_is_named_with_its_reason() -> None:
    assert "rule" not in winner_words(WINNER)
    words = winner_words(WINNER, ruled="hers stood above")
    assert "cannot be told apart" in words
    assert "My reason: hers stood above." in words


def test_a_reminder_and_the_passing_on_say_until_when() -> None:
    for words in (claim_reminder(WINNER), passed_on_words(WINNER)):
        assert "Maren" in words
        assert "The prize: a skein. It may be chosen from: the colour card." in words
        assert "before Sunday 12 April 2026" in words


def test_a_reveal_tells_answer_seal_and_salt() -> None:
    words = reveal_words("The Windy Piece", "The Night Ferry", "", ["Last Boat"], (SEAL, "cd" * 32))
    assert words.startswith("The Windy Piece: the piece is The Night Ferry.\n\n")
    assert "These names counted too: Last Boat." in words
    assert SEAL in words
    assert "cd" * 32 in words
