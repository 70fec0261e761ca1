"""The seal and the guessing, made ready for the board. No answer is read before the reveal."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session

from service.announce.mystery_words import ASKED_IN_WORDS
from service.comments.times import zone_of
from service.counting.wording import how_many
from service.pages.board_contexts import MysteryShown, NoteShown, RevealShown
from service.pages.times import moment, moment_or_none
from service.store.mystery_facts import mystery_facts
from service.store.reveals import revealed_of
from service.store.tables import GameRow


def mystery_shown(session: Session, game: GameRow, now: datetime) -> MysteryShown:
    """What everybody may know."""
    zone, facts = zone_of(game.zone), mystery_facts(session, game, now)
    return MysteryShown(
        seal=facts.seal or "",
        sealed=moment_or_none(facts.sealed, zone),
        notes=tuple(
            NoteShown(note.number, moment(note.at, zone), note.seal) for note in facts.notes
        ),
        guessing=facts.guessing,
        opens=moment_or_none(game.guesses_open, zone),
        ends=moment_or_none(game.guesses_close, zone),
        asked=ASKED_IN_WORDS[game.wants],  # type: ignore[index]  # checked when it was kept
        how_many=_how_many(game),
        offer="" if facts.prize is None else facts.prize.offer,
        choose_from="" if facts.prize is None else facts.prize.choose_from,
        winner_announced=moment_or_none(facts.winner_announced, zone),
        reveal=None if game.revealed is None else _reveal(session, game),
    )


def _reveal(session: Session, game: GameRow) -> RevealShown:
    told = revealed_of(session, game)
    noted = tuple(note.alias for note, _ in told.notes)
    return RevealShown(
        at=moment(told.revealed, zone_of(game.zone)),
        title=told.answer.title,
        designer=told.answer.designer,
        aliases=(*told.answer.aliases, *noted),
        proof=f"/api/games/{game.slug}/mystery/reveal",
    )


def _how_many(game: GameRow) -> str:
    """How many guesses count, as a sentence."""
    first = "the first name"
    if game.names_per_comment > 1:
        first = f"the first {how_many(game.names_per_comment, 'name')}"
    of_voter = "Guess as often as you like"
    if game.guesses_per_voter is not None:
        of_voter = f"Your first {how_many(game.guesses_per_voter, 'guess', 'guesses')} count"
        of_voter = of_voter.replace("first 1 guess count", "first guess counts")
    return f"{of_voter}; of each comment {first} counts."
