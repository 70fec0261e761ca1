"""A comment with its reading as a guess, when it was written, and what the host ruled on it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from service.comments.spans import Span
from service.errors import BadRuling
from service.mystery.guess import GUESS_OUTCOMES, GuessOutcome, GuessReading

_REST_OF_THE_SECOND = timedelta(microseconds=999_999)


@dataclass(frozen=True, slots=True)
class GuessRuling:
    """The host's decision on one guess, with a reason. A later one follows it, none is overwritten.

    `outcome` says what the comment means, `in_time` whether it counts: made in the window, and
    among the guesses that its writer may make. A ruling decides the one, the other or both; None
    leaves it open.
    """

    outcome: GuessOutcome | None
    reason: str
    at: datetime
    in_time: bool | None = None


def check_guess_ruling(ruling: GuessRuling) -> None:
    """Whether the ruling can be made.

    Raises:
        BadRuling: it decides nothing, or the outcome cannot be ruled.
    """
    if ruling.outcome is None and ruling.in_time is None:
        raise BadRuling(
            "the ruling decides nothing", "say what the guess is, or whether it was in time"
        )
    if ruling.outcome is not None and (
        ruling.outcome not in GUESS_OUTCOMES or ruling.outcome == "look"
    ):
        raise BadRuling(f"a guess is ruled {ruling.outcome!r}", "rule right, wrong or none")


def standing_ruling(rulings: Iterable[GuessRuling]) -> GuessOutcome | None:
    """What the host's rulings say a guess is: the latest holds, of equal times the last."""
    said = [ruling for ruling in rulings if ruling.outcome is not None]
    return _latest(said).outcome if said else None


def standing_time(rulings: Iterable[GuessRuling]) -> bool | None:
    """What the host's rulings say of whether a guess counts; None where they say nothing."""
    said = [ruling for ruling in rulings if ruling.in_time is not None]
    return _latest(said).in_time if said else None


def _latest(rulings: list[GuessRuling]) -> GuessRuling:
    return max(enumerate(rulings), key=lambda r: (r[1].at, r[0]))[1]


@dataclass(frozen=True, slots=True)
class JudgedGuess:
    """A comment with its reading as a guess: `key` is unique in the game, `voter` who wrote it.

    `written` is when these words were written, as far as the batches tell. `ruling` and `in_time`
    are the host's standing rulings, and hold against the reading and the times; `is_host` marks
    the host's own comments.
    """

    key: str
    author: str
    voter: str
    written: Span
    reading: GuessReading
    is_host: bool = False
    ruling: GuessOutcome | None = None
    in_time: bool | None = None

    @property
    def outcome(self) -> GuessOutcome:
        """What the comment counts as: the host's ruling, else the reading."""
        return self.ruling or self.reading.outcome


def to_the_second(span: Span) -> Span:
    """The span as exact as it can be trusted for comparing two guesses.

    A time in whole seconds is any instant of that second: most sources cut the rest off, so that
    it is not before another one of the same second that comes with a fraction.
    """
    if span.latest.microsecond:
        return span
    return Span(span.earliest, span.latest + _REST_OF_THE_SECOND)
