"""Announcements of the mystery, ready to paste: guessing, the winner, the prize, the reveal.

Only what is said of a winner names a viewer: the one the host announces. Only the reveal tells the
answer; in all others nothing depends on it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal
from zoneinfo import ZoneInfo

from service.announce.instants import instant_in_words
from service.counting.wording import how_many, listed, sentence

Wanted = Literal["title", "title and designer", "title or designer"]
ASKED_IN_WORDS: dict[Wanted, str] = {
    "title": "the title of the piece",
    "title and designer": "the title of the piece and its designer",
    "title or designer": "the title of the piece or its designer",
}


@dataclass(frozen=True, slots=True)
class Guessing:
    """What viewers are told of a game's guessing: its name, zone, rules, seal, and prize if any.

    `per_voter` is None for any number of guesses. `also` are further zones that times are told in.
    """

    game: str
    zone: ZoneInfo
    wants: Wanted
    names_per_comment: int
    per_voter: int | None
    opens: datetime
    ends: datetime | None
    seal: str
    offer: str = ""
    choose_from: str = ""
    claim_days: int = 0
    also: tuple[ZoneInfo, ...] = ()


@dataclass(frozen=True, slots=True)
class Winner:
    """Who is announced, and when the guess was written where that is known exactly.

    `also` are further zones that times are told in.
    """

    game: str
    zone: ZoneInfo
    author: str
    written: datetime | None
    offer: str = ""
    choose_from: str = ""
    claim_by: datetime | None = None
    also: tuple[ZoneInfo, ...] = ()


def opening_of_guessing(told: Guessing) -> str:
    """Guessing is open: what is asked, how many guesses count, until when, the prize, the seal."""
    names = how_many(told.names_per_comment, "name")
    guesses = "as many guesses as you like"
    if told.per_voter is not None:
        guesses = f"your first {how_many(told.per_voter, 'guess', 'guesses')}"
        guesses = guesses.replace("first 1 guess", "first guess")
    per_voter = f"{sentence(guesses)} count{'s' if told.per_voter == 1 else ''}"
    until = "when the first right guess is announced, or when I say so"
    if told.ends is not None:
        until = f"on {instant_in_words(told.ends, told.zone, told.also)}, or earlier with the first right guess"
    return _paragraphs(
        f"{told.game}: guessing is open.",
        f"What is it? Write {ASKED_IN_WORDS[told.wants]} in a comment. {per_voter}, and of each comment "
        f"{'the first name' if told.names_per_comment == 1 else f'the first {names}'}.",
        f"Guesses count from {instant_in_words(told.opens, told.zone, told.also)} on. Guessing ends {until}. "
        "The earliest right guess wins; an edited comment counts from its last edit.",
        _prize(told.offer, told.choose_from, told.claim_days),
        f"The answer was sealed beforehand, and the reveal can be checked by anybody: {told.seal}",
    )


def ending_of_guessing(
    game: str, ended: datetime, zone: ZoneInfo, also: Sequence[ZoneInfo] = ()
) -> str:
    """Guessing has ended; nothing is said of whether anybody was right."""
    when = instant_in_words(ended, zone, also)
    return f"{game}: guessing has ended.\n\nGuesses made before {when} count."


def winner_words(told: Winner, *, instead_of: str = "", ruled: str = "") -> str:
    """The first right guesser; `instead_of` is the reason why another was announced before.

    `ruled` is the host's reason where the times could not tell the first right guesses apart.
    """
    when = ""
    if told.written is not None:
        when = f", on {instant_in_words(told.written, told.zone, told.also)}"
    again = f"This corrects an earlier announcement: {_closed(instead_of)}" if instead_of else ""
    return _paragraphs(
        f"{told.game}: the piece is named.",
        again,
        f"{told.author} was the first to name it{when}. Guessing has ended.",
        _ruling(ruled),
        _claim(told),
    )


def passed_on_words(told: Winner) -> str:
    """The prize goes to the next right guesser. Who did not claim it is not named again."""
    return _paragraphs(
        f"{told.game}: the prize goes on.",
        f"It was not claimed, so it goes to the next right guesser: {told.author}.",
        _claim(told),
    )


def claim_reminder(told: Winner) -> str:
    """A reminder to the winner that the prize is still to be claimed."""
    return _paragraphs(
        f"{told.game}: a prize is waiting.",
        f"{told.author}, you named the piece and have not claimed your prize yet.",
        _claim(told),
        "If it is not claimed by then, it goes to the next right guesser.",
    )


def asked_for_words(game: str, author: str) -> str:
    """The winner has chosen; what, is between the winner and the host."""
    return f"{game}: the prize is claimed.\n\n{author} has chosen, and the prize will be sent."


def sent_words(
    game: str, author: str, sent: datetime, zone: ZoneInfo, also: Sequence[ZoneInfo] = ()
) -> str:
    """The prize is on its way."""
    return (
        f"{game}: the prize is on its way.\n\n"
        f"{author}'s prize was sent on {instant_in_words(sent, zone, also)}."
    )


def reveal_words(
    game: str, title: str, designer: str, aliases: Sequence[str], seal: tuple[str, str]
) -> str:
    """The answer, and how its seal can be checked: `seal` is the seal and the salt."""
    by = f" by {designer}" if designer.strip() else ""
    also = f"These names counted too: {listed(list(aliases))}." if aliases else ""
    return _paragraphs(
        f"{game}: the piece is {title}{by}.",
        also,
        f"The seal shown from the beginning was {seal[0]}. Everybody can check that this is what "
        f"was sealed: the reveal holds the salt {seal[1]}, and scripts/verify.py makes the seal "
        "again from both.",
    )


def _prize(offer: str, choose_from: str, days: int) -> str:
    if not offer.strip():
        return ""
    chosen = f" It may be chosen from: {_closed(choose_from)}" if choose_from.strip() else ""
    return (
        f"The prize for the first right guess: {_closed(offer)}{chosen} It must be claimed within "
        f"{how_many(days, 'day')} of the announcement, or it goes to the next right guesser."
    )


def _claim(told: Winner) -> str:
    if told.claim_by is None:
        return ""
    chosen = ""
    if told.choose_from.strip():
        chosen = f" It may be chosen from: {_closed(told.choose_from)}"
    until = instant_in_words(told.claim_by, told.zone, told.also)
    return f"The prize: {_closed(told.offer)}{chosen} Please claim it before {until}."


def _ruling(reason: str) -> str:
    if not reason:
        return ""
    return (
        "Another right guess may have been as early: their times cannot be told apart. So I had to "
        f"rule which was the first. My reason: {_closed(reason)}"
    )


def _closed(words: str) -> str:
    """The host's words as a sentence."""
    words = words.strip()
    return words if words.endswith((".", "!", "?")) else f"{words}."


def _paragraphs(*paragraphs: str) -> str:
    return "\n\n".join(paragraph for paragraph in paragraphs if paragraph)
