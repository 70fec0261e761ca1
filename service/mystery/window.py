"""Which guesses count: made in the window, and no more of them than one voter may make."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal, get_args

from service.comments.spans import Answer as Compared
from service.comments.spans import Span
from service.errors import BadRules
from service.mystery.judged import JudgedGuess, to_the_second

InWindow = Literal["before", "in time", "after", "cannot tell"]
Standing = Literal["counts", "cannot tell", "set aside"]
GuessCause = Literal[
    "the host's own",
    "offers no name",
    "before guessing opened",
    "after guessing ended",
    "ruled out",
    "cannot tell when",
    "beyond the voter's guesses",
    "cannot tell which guess",
]
GUESS_CAUSES: tuple[GuessCause, ...] = get_args(GuessCause)
_CANNOT_TELL = {"cannot tell when", "cannot tell which guess"}


@dataclass(frozen=True, slots=True)
class Window:
    """When guesses count, and how many of one voter; shown before guessing opens.

    From `opens` on, before `ends`. `opens` is None while the host has not opened guessing, and no
    guess counts; `ends` is None while it has no end. `per_voter` is how many guesses one voter may
    make, None any number; a comment that offers a name is one guess.

    Raises:
        BadRules: fewer than one guess a voter.
    """

    opens: datetime | None
    ends: datetime | None = None
    per_voter: int | None = None

    def __post_init__(self) -> None:
        if self.per_voter is not None and self.per_voter < 1:
            raise BadRules(f"a voter may make {self.per_voter} guesses", "allow one guess or more")


@dataclass(frozen=True, slots=True)
class SettledGuess:
    """A guess, and the cause for which it does not count or cannot be told to; None: it counts."""

    guess: JudgedGuess
    cause: GuessCause | None = None

    @property
    def standing(self) -> Standing:
        """Whether the guess counts."""
        if self.cause is None:
            return "counts"
        return "cannot tell" if self.cause in _CANNOT_TELL else "set aside"


def settle_guesses(guesses: Iterable[JudgedGuess], window: Window) -> tuple[SettledGuess, ...]:
    """Which guesses count, in the order given. A ruling on a guess's time goes before the times.

    Raises:
        BadTime: a bound of the window without an offset.
    """
    timed = [SettledGuess(guess, _cause_in_time(guess, window)) for guess in guesses]
    if window.per_voter is None:
        return tuple(timed)
    of_voter: dict[str, list[SettledGuess]] = defaultdict(list)
    for one in timed:
        if one.standing != "set aside":
            of_voter[one.guess.voter].append(one)
    return tuple(_within(one, of_voter[one.guess.voter], window.per_voter) for one in timed)


def in_window(written: Span, opens: datetime | None, ends: datetime | None) -> InWindow:
    """Whether a guess was made from `opens` on, before `ends`; None is no bound.

    Raises:
        BadTime: a bound without an offset.
    """
    written = to_the_second(written)
    state: InWindow = "in time"
    if opens is not None:
        bound = Span.at(opens).earliest
        if written.latest < bound:
            return "before"
        if written.earliest < bound:
            state = "cannot tell"
    if ends is not None:
        bound = Span.at(ends).earliest
        if written.earliest >= bound:
            return "after"
        if written.latest >= bound:
            state = "cannot tell"
    return state


def _cause_in_time(guess: JudgedGuess, window: Window) -> GuessCause | None:
    if guess.is_host:
        return "the host's own"
    if guess.outcome == "none":
        return "offers no name"
    if guess.in_time is not None:
        return None if guess.in_time else "ruled out"
    if window.opens is None:
        return "before guessing opened"
    causes: dict[InWindow, GuessCause] = {
        "before": "before guessing opened",
        "after": "after guessing ended",
        "cannot tell": "cannot tell when",
    }
    return causes.get(in_window(guess.written, window.opens, window.ends))


def _within(one: SettledGuess, voters: Sequence[SettledGuess], most: int) -> SettledGuess:
    """The guess with its place among its voter's own: too late a one does not count."""
    if one.standing == "set aside" or one.guess.in_time:
        return one
    others = [other for other in voters if other is not one]
    surely = sum(_is_sure(other) and _is_before(other, one) for other in others)
    if surely >= most:
        return SettledGuess(one.guess, "beyond the voter's guesses")
    perhaps = sum(not _is_before(one, other) for other in others)
    if perhaps >= most and one.standing == "counts":
        return SettledGuess(one.guess, "cannot tell which guess")
    return one


def _is_sure(one: SettledGuess) -> bool:
    """Whether it certainly is a guess that counts against its voter's number."""
    return one.standing == "counts" and one.guess.outcome != "look"


def _is_before(one: SettledGuess, other: SettledGuess) -> bool:
    ours, theirs = to_the_second(one.guess.written), to_the_second(other.guess.written)
    return ours.is_before(theirs) is Compared.YES
