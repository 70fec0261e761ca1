"""Guesses in JSON: for the host alone, since they tell what is right."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Literal

from pydantic import Field

from service.api.shapes import In, MomentIn, Out, SpanOut, Words, example
from service.counting.pseudonyms import shown_name
from service.mystery.guess import GuessOutcome
from service.mystery.judged import GuessRuling
from service.mystery.window import GuessCause, Standing
from service.store.guesses import FoundGuess, Guesses

_GUESS = {
    "key": "c0f1e2d3c4b5a697",
    "round": 1,
    "author": "Maren",
    "text": "Is it The Lamp Room?",
    "written": {"earliest": "2026-03-02T09:12:00Z", "latest": "2026-03-02T09:12:00Z"},
    "is_host": False,
    "outcome": "right",
    "why": "It names the title.",
    "standing": "counts",
    "cause": None,
    "evidence": [{"start": 6, "end": 19, "text": "The Lamp Room", "rule": "the title"}],
    "rulings": [],
}


class GuessRulingIn(In):
    """The host's decision on a guess: what it is, whether it was in time, or both."""

    model_config = example({"outcome": "right", "reason": "she spells it her own way"})

    outcome: Literal["right", "wrong", "none"] | None = None
    in_time: bool | None = Field(
        default=None,
        description="Whether it counts: made in the window, and among its writer's guesses.",
    )
    reason: Words

    def to_ruling(self, now: datetime) -> GuessRuling:
        """The ruling, made now."""
        return GuessRuling(self.outcome, self.reason, now, self.in_time)


class FirstIn(In):
    """The host's ruling on which of the guesses that cannot be told apart was the first."""

    model_config = example({"key": "c0f1e2d3c4b5a697", "reason": "hers stood above when I looked"})

    key: Annotated[str, Field(max_length=64)]
    reason: Words


class WinnerIn(In):
    """The announcing of the winner; a reason only where an earlier announcement is put right."""

    model_config = example({"reason": "a later export showed an earlier guess"})

    reason: Words | None = None


class GuessingTimeIn(In):
    """When guessing opened or ended; now, where it is left out."""

    model_config = example({"at": "2026-03-08T18:00"})

    at: MomentIn | None = None


class GuessRulingOut(Out):
    """A ruling that was made on a guess."""

    outcome: GuessOutcome | None
    in_time: bool | None
    reason: str
    at: datetime


class GuessEvidenceOut(Out):
    """The words a guess was read from: the text's own characters from `start` to `end`."""

    start: int
    end: int
    text: str
    rule: str


class GuessOut(Out):
    """A comment that offers a name, as it was read; `rulings` of the host go before that."""

    model_config = example(_GUESS)

    key: str
    round: int = Field(description="The round whose batch brought it first.")
    author: str
    text: str
    written: SpanOut
    is_host: bool
    outcome: GuessOutcome
    why: str
    standing: Standing = Field(description="Whether it counts, whatever it says.")
    cause: GuessCause | None = Field(description="Why it does not count, or cannot be told to.")
    evidence: list[GuessEvidenceOut]
    rulings: list[GuessRulingOut]

    @classmethod
    def of(cls, found: FoundGuess) -> GuessOut:
        """The guess for JSON."""
        judged = found.judged
        return cls(
            key=judged.key,
            round=found.round_number,
            author=shown_name(judged.author),
            text=found.text,
            written=SpanOut.of(judged.written),
            is_host=judged.is_host,
            outcome=judged.reading.outcome,
            why=judged.reading.why,
            standing=found.settled.standing,
            cause=found.settled.cause,
            evidence=[
                GuessEvidenceOut(start=one.start, end=one.end, text=one.text, rule=one.rule)
                for one in judged.reading.evidence
            ],
            rulings=[
                GuessRulingOut(
                    outcome=one.outcome, in_time=one.in_time, reason=one.reason, at=one.at
                )
                for one in found.rulings
            ],
        )


class GuessesOut(Out):
    """Who named the piece first, and every comment that offers a name, oldest first.

    `tied` cannot be told apart by time; `looks_before` may be right and earlier.
    """

    model_config = example(
        {
            "opens": "2026-03-01T18:00:00Z",
            "closes": None,
            "first": _GUESS,
            "tied": [],
            "looks_before": [],
            "why": "It is the earliest right guess.",
            "guesses": [_GUESS],
        }
    )

    opens: datetime | None
    closes: datetime | None
    first: GuessOut | None
    tied: list[GuessOut]
    looks_before: list[GuessOut]
    why: str
    guesses: list[GuessOut]

    @classmethod
    def of(cls, judged: Guesses, opens: datetime | None, closes: datetime | None) -> GuessesOut:
        """The guesses for JSON; comments that offer no name are left out."""
        out = {one.judged.key: GuessOut.of(one) for one in judged.found}
        first = judged.first
        return cls(
            opens=opens,
            closes=closes,
            first=None if first.key is None else out[first.key],
            tied=[out[key] for key in first.tied],
            looks_before=[out[key] for key in first.looks_before],
            why=first.why,
            guesses=[one for one in out.values() if one.outcome != "none" or one.rulings],
        )
