"""The mystery in JSON: what everybody may know of seal and guessing, the reveal, announcements."""

from __future__ import annotations

from datetime import datetime
from typing import Literal

from pydantic import Field
from sqlmodel import Session

from service.api.prize_models import PrizeOut
from service.api.shapes import In, Out, Words, example
from service.mystery.answer import Wants
from service.store.mystery_facts import mystery_facts
from service.store.mystery_words import Announcement, Occasion
from service.store.reveals import Revealed
from service.store.tables import GameRow
from service.store.window import GuessingState

#: Names the shape of a reveal for whoever checks one.
REVEAL_FORMAT: Literal["loopstart reveal 1"] = "loopstart reveal 1"
_SEAL = "9b1c5f0e6a0c4f7f5a0d1f3a4b8e2c6d7f8091a2b3c4d5e6f708192a3b4c5d6e"
_NOTE = {"number": 1, "at": "2026-03-09T18:00:00Z", "seal": _SEAL}


class AliasIn(In):
    """Another name that counts from now on. Only the note's seal and time are told."""

    model_config = example({"alias": "Lamp Room at Night"})

    alias: Words


class AliasNoteOut(Out):
    """A note of an alias: when it was made, and the seal on it."""

    number: int
    at: datetime
    seal: str


class MysteryOut(Out):
    """What everybody may know. Nothing here depends on whether a guess is right.

    `winner_announced` is when the host announced a winner.
    """

    model_config = example(
        {
            "seal": _SEAL,
            "sealed": "2026-03-01T10:00:00Z",
            "alias_notes": [_NOTE],
            "wants": "title",
            "names_per_comment": 1,
            "guesses_per_voter": 3,
            "guessing": "open",
            "opens": "2026-03-01T18:00:00Z",
            "ends": None,
            "prize": None,
            "winner_announced": None,
            "revealed": None,
        }
    )

    seal: str | None
    sealed: datetime | None
    alias_notes: list[AliasNoteOut]
    wants: Wants
    names_per_comment: int
    guesses_per_voter: int | None
    guessing: GuessingState
    opens: datetime | None
    ends: datetime | None
    prize: PrizeOut | None
    winner_announced: datetime | None
    revealed: datetime | None

    @classmethod
    def of(cls, session: Session, game: GameRow, now: datetime) -> MysteryOut:
        """The public facts of a game's mystery; no answer is read for them."""
        facts = mystery_facts(session, game, now)
        return cls(
            seal=facts.seal,
            sealed=facts.sealed,
            alias_notes=[
                AliasNoteOut(number=note.number, at=note.at, seal=note.seal) for note in facts.notes
            ],
            wants=game.wants,
            names_per_comment=game.names_per_comment,
            guesses_per_voter=game.guesses_per_voter,
            guessing=facts.guessing,
            opens=game.guesses_open,
            ends=game.guesses_close,
            prize=None if facts.prize is None else PrizeOut.of(facts.prize),
            winner_announced=facts.winner_announced,
            revealed=facts.revealed,
        )


class AnswerOut(Out):
    """The answer as it was sealed."""

    title: str
    designer: str
    aliases: list[str]


class RevealedNoteOut(Out):
    """A note of an alias, opened."""

    number: int
    at: datetime
    alias: str
    salt: str
    seal: str


class RevealOut(Out):
    """The reveal: all that is needed to make the seals again. `scripts/verify.py` checks it.

    The seal is the SHA-256 of the canonical JSON (RFC 8785) of `answer` and `salt`; a note's seal
    that of its `alias`, `at`, `number` and `salt`, and the answer's `seal`.
    """

    model_config = example(
        {
            "format": REVEAL_FORMAT,
            "game": "windy-island",
            "name": "The windy island's mystery",
            "seal": _SEAL,
            "sealed": "2026-03-01T10:00:00Z",
            "revealed": "2026-04-12T20:00:00Z",
            "answer": {"title": "The Lamp Room", "designer": "Ines Orlay", "aliases": []},
            "salt": _SEAL,
            "alias_notes": [_NOTE | {"alias": "Lamp Room at Night", "salt": _SEAL}],
        }
    )

    format: Literal["loopstart reveal 1"] = REVEAL_FORMAT
    game: str
    name: str
    seal: str
    sealed: datetime
    revealed: datetime
    answer: AnswerOut
    salt: str
    alias_notes: list[RevealedNoteOut]

    @classmethod
    def of(cls, game: GameRow, told: Revealed) -> RevealOut:
        """The reveal for JSON."""
        answer = told.answer
        return cls(
            game=game.slug,
            name=game.name,
            seal=told.seal,
            sealed=told.sealed,
            revealed=told.revealed,
            answer=AnswerOut(
                title=answer.title, designer=answer.designer, aliases=list(answer.aliases)
            ),
            salt=told.salt.hex(),
            alias_notes=[
                RevealedNoteOut(
                    number=note.number,
                    at=note.at,
                    alias=note.alias,
                    salt=note.salt.hex(),
                    seal=seal,
                )
                for note, seal in told.notes
            ],
        )


class AnnouncementOut(Out):
    """Words to paste. `stopped` says why there are none: they would give the answer away."""

    model_config = example(
        {
            "occasion": "opening of guessing",
            "text": "The windy island's mystery: guessing is open.",
            "stopped": "",
        }
    )

    occasion: Occasion
    text: str
    stopped: str = Field(description="Empty where the announcement is ready.")

    @classmethod
    def of(cls, told: Announcement) -> AnnouncementOut:
        """The announcement for JSON."""
        return cls(occasion=told.occasion, text=told.text, stopped=told.stopped)
