"""The reveal: the sealed answer, published with all that is needed to check its seal."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlmodel import Session

from service.errors import SealBroken, WrongState
from service.mystery.answer import Answer
from service.mystery.notes import AliasNote, opens_note
from service.mystery.seal import check_reveal
from service.store.answers import KeptAnswer, alias_notes, kept_answer
from service.store.games import take_game
from service.store.tables import GameRow
from service.store.window import guessing_state


@dataclass(frozen=True, slots=True)
class Revealed:
    """What a reveal publishes; `notes` are the noted aliases, each with its published seal."""

    seal: str
    answer: Answer
    salt: bytes
    sealed: datetime
    revealed: datetime
    notes: tuple[tuple[AliasNote, str], ...]


def reveal_answer(session: Session, game: GameRow, now: datetime) -> Revealed:
    """Reveal the answer; a second time changes nothing.

    Raises:
        WrongState: no answer is sealed, or guessing is still open.
        SealBroken: the answer or an alias is not what was sealed.
    """
    take_game(session, game)
    kept = kept_answer(session, game)
    if game.revealed is None:
        if guessing_state(game, now) == "open":
            raise WrongState(
                f"guessing in game {game.slug}", "open", "followed by the reveal", "end it first"
            )
        game.revealed = now
        session.add(game)
        session.flush()
    return _checked(session, game, kept, game.revealed)


def revealed_of(session: Session, game: GameRow) -> Revealed:
    """The reveal of a game, for everybody.

    Raises:
        WrongState: the answer is not revealed, whether or not there is one.
        SealBroken: the answer or an alias is not what was sealed.
    """
    if game.revealed is None:
        todo = "wait for the host's reveal"
        raise WrongState(f"the mystery of game {game.slug}", "not revealed", "shown", todo)
    return _checked(session, game, kept_answer(session, game), game.revealed)


def _checked(session: Session, game: GameRow, kept: KeptAnswer, revealed: datetime) -> Revealed:
    seal = game.seal or ""
    seals = [row.seal for row in alias_notes(session, game)]
    notes = tuple(zip(kept.notes, seals, strict=True))
    holds = check_reveal(seal, kept.rules.answer, kept.salt).holds
    if not holds or not all(opens_note(published, note, seal) for note, published in notes):
        raise SealBroken(game.slug)
    return Revealed(seal, kept.rules.answer, kept.salt, kept.sealed, revealed, notes)
