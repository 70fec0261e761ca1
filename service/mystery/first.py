"""Who named the piece first, as far as the comments' times can prove it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from service.comments.spans import Answer as Compared
from service.comments.spans import Span
from service.mystery.guess import GuessOutcome, GuessReading

InWindow = Literal["in time", "cannot tell", "outside"]


@dataclass(frozen=True, slots=True)
class GuessRuling:
    """The host's decision on one guess, with a reason. A later one follows it, none is overwritten."""

    outcome: GuessOutcome
    reason: str
    at: datetime


def standing_ruling(rulings: Sequence[GuessRuling]) -> GuessOutcome | None:
    """What the host's rulings on one guess come to: the latest holds, of equal times the last."""
    if not rulings:
        return None
    return max(enumerate(rulings), key=lambda r: (r[1].at, r[0]))[1].outcome


@dataclass(frozen=True, slots=True)
class JudgedGuess:
    """A comment with its reading as a guess: `key` is unique in the game, `voter` who wrote it.

    `written` is when these words were written, as far as the batches tell. `ruling` is the host's
    standing one, and holds against the reading; `is_host` marks the host's own comments.
    """

    key: str
    author: str
    voter: str
    written: Span
    reading: GuessReading
    is_host: bool = False
    ruling: GuessOutcome | None = None

    @property
    def outcome(self) -> GuessOutcome:
        """What the comment counts as: the host's ruling, else the reading."""
        return self.ruling or self.reading.outcome


@dataclass(frozen=True, slots=True)
class FirstRight:
    """The first right guess: `key` where it is proved, else None.

    `tied` are the keys of right guesses that cannot be told apart, `looks_before` those of
    comments that may be right, or in time, and may stand before the first; the host settles them.
    """

    key: str | None
    tied: tuple[str, ...]
    looks_before: tuple[str, ...]
    why: str


def in_window(written: Span, opens: datetime | None, closes: datetime | None) -> InWindow:
    """Whether a guess was made in the window: from `opens` on, before `closes`; None is no bound.

    Raises:
        BadTime: a bound without an offset.
    """
    state: InWindow = "in time"
    if opens is not None:
        bound = Span.at(opens).earliest
        if written.latest < bound:
            return "outside"
        if written.earliest < bound:
            state = "cannot tell"
    if closes is not None:
        bound = Span.at(closes).earliest
        if written.earliest >= bound:
            return "outside"
        if written.latest >= bound:
            state = "cannot tell"
    return state


def _before(one: JudgedGuess, other: JudgedGuess) -> bool:
    return one.written.is_before(other.written) is Compared.YES


def _order(guess: JudgedGuess) -> tuple[datetime, datetime, str]:
    return (guess.written.earliest, guess.written.latest, guess.key)


def first_right(
    guesses: Iterable[JudgedGuess], opens: datetime | None, closes: datetime | None
) -> FirstRight:
    """The earliest right guess in the window, as far as it can be proved.

    The host's own comments are no guesses. Several right guesses of one voter are that voter's.
    A right guess that may lie outside the window is named in `looks_before`, never as the first.

    Raises:
        BadTime: a bound without an offset.
    """
    timed = [
        (guess, in_window(guess.written, opens, closes)) for guess in guesses if not guess.is_host
    ]
    right = [g for g, state in timed if g.outcome == "right" and state == "in time"]
    open_ = [
        g
        for g, state in timed
        if (g.outcome == "look" and state != "outside")
        or (g.outcome == "right" and state == "cannot tell")
    ]
    earliest = sorted((g for g in right if not any(_before(h, g) for h in right)), key=_order)
    looks = sorted((g for g in open_ if not any(_before(e, g) for e in earliest)), key=_order)
    one_voter = len({g.voter for g in earliest}) == 1
    key = earliest[0].key if one_voter else None
    tied = () if one_voter else tuple(g.key for g in earliest)
    return FirstRight(key, tied, tuple(g.key for g in looks), _why(earliest, looks, key=key))


def _why(earliest: list[JudgedGuess], looks: list[JudgedGuess], *, key: str | None) -> str:
    """A sentence or two for the host."""
    if not earliest:
        first = "No guess is right so far."
    elif key is not None:
        first = f"The first right guess is {earliest[0].author}'s."
    else:
        names = " and ".join(dict.fromkeys(g.author for g in earliest))
        first = (
            f"The right guesses of {names} cannot be told apart by their times: "
            "an export with exact times would settle it, or the host's ruling."
        )
    if not looks:
        return first
    many = len(looks) > 1
    before = "may stand before it" if earliest else "may be right"
    return (
        f"{first} {len(looks)} comment{'s' if many else ''} that "
        f"{'need' if many else 'needs'} a look {before}."
    )
