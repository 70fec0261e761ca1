"""What everybody may know of a game's mystery: the seal, guessing, the prize. No answer is read."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlmodel import Session

from service.store.answers import alias_notes, sealed_at
from service.store.prizes import prize_of
from service.store.tables import GameRow
from service.store.tables_mystery import AliasNoteRow, PrizeRow
from service.store.window import GuessingState, guessing_state
from service.store.winners import winners_of


@dataclass(frozen=True, slots=True)
class MysteryFacts:
    """Public facts. Nothing here depends on whether a guess is right.

    Of `notes` only number, time and seal are public. `winner_announced` is when the host
    announced a winner.
    """

    seal: str | None
    sealed: datetime | None
    notes: tuple[AliasNoteRow, ...]
    guessing: GuessingState
    prize: PrizeRow | None
    winner_announced: datetime | None
    revealed: datetime | None


def mystery_facts(session: Session, game: GameRow, now: datetime) -> MysteryFacts:
    """The public facts of a game's mystery."""
    winners = winners_of(session, game)
    return MysteryFacts(
        seal=game.seal,
        sealed=sealed_at(session, game),
        notes=alias_notes(session, game),
        guessing=guessing_state(game, now),
        prize=prize_of(session, game),
        winner_announced=winners[0].at if winners else None,
        revealed=game.revealed,
    )
