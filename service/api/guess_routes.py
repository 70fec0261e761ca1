"""Routes for guesses. The host alone: anybody else would learn what is right."""

from __future__ import annotations

from fastapi import APIRouter
from sqlmodel import Session

from service.api.guess_models import GuessesOut, GuessRulingIn
from service.api.problem_models import problems
from service.api.wiring import Now, Reading, Writing, host_only
from service.store.games import game_named
from service.store.guesses import judge_guesses, rule_on_guess
from service.store.tables import GameRow

router = APIRouter(
    prefix="/api/games/{game}/guesses",
    tags=["guesses"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 409, 422),
)


@router.get("", summary="The guesses of a game, and who named the piece first")
def get_guesses(game: str, session: Reading) -> GuessesOut:
    """Every comment of the game read as a guess. Comments that offer no name are left out."""
    return _guesses(session, game_named(session, game))


@router.post("/{key}/rulings", summary="Rule on a guess", status_code=201)
def post_guess_ruling(
    game: str, key: str, ruling: GuessRulingIn, session: Writing, now: Now
) -> GuessesOut:
    """Adds a ruling with its reason. Earlier rulings stay on record; the last one holds."""
    kept = game_named(session, game)
    rule_on_guess(session, kept, key, ruling.to_ruling(now))
    return _guesses(session, kept)


def _guesses(session: Session, game: GameRow) -> GuessesOut:
    return GuessesOut.of(judge_guesses(session, game), game.guesses_open, game.guesses_close)
