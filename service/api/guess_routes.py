"""Routes for guesses. The host alone: anybody else would learn what is right."""

from __future__ import annotations

from fastapi import APIRouter
from sqlmodel import Session

from service.api.guess_models import (
    FirstIn,
    GuessesOut,
    GuessingTimeIn,
    GuessRulingIn,
    WinnerIn,
)
from service.api.mystery_models import MysteryOut
from service.api.prize_models import WinnerOut
from service.api.problem_models import problems
from service.api.shapes import moment_or_none
from service.api.wiring import Now, Reading, Writing, host_only
from service.comments.times import zone_of
from service.store.columns import id_of
from service.store.games import game_named
from service.store.guesses import judge_guesses, pick_first, rule_on_guess
from service.store.tables import GameRow
from service.store.tables_mystery import GuessPickRow
from service.store.window import end_guessing, open_guessing
from service.store.winners import announce_winner, passed_voters, winners_of

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


@router.post("/open", summary="Open guessing")
def post_open_guessing(
    game: str, session: Writing, now: Now, when: GuessingTimeIn | None = None
) -> MysteryOut:
    """Opens guessing now, or from a time that has passed: the first progress was shown then.

    It needs a sealed answer. Guesses from before are set aside.
    """
    kept = game_named(session, game)
    at = moment_or_none((when or GuessingTimeIn()).at, zone_of(kept.zone))
    open_guessing(session, kept, at, now)
    return MysteryOut.of(session, kept, now)


@router.post("/end", summary="End guessing")
def post_end_guessing(
    game: str, session: Writing, now: Now, when: GuessingTimeIn | None = None
) -> MysteryOut:
    """Ends guessing without a winner, now or at a time that has passed.

    Announcing the winner ends it too. Later guesses are set aside.
    """
    kept = game_named(session, game)
    at = moment_or_none((when or GuessingTimeIn()).at, zone_of(kept.zone))
    end_guessing(session, kept, at, now)
    return MysteryOut.of(session, kept, now)


@router.post("/{key}/rulings", summary="Rule on a guess", status_code=201)
def post_guess_ruling(
    game: str, key: str, ruling: GuessRulingIn, session: Writing, now: Now
) -> GuessesOut:
    """Adds a ruling with its reason. Earlier rulings stay on record; the last one holds."""
    kept = game_named(session, game)
    rule_on_guess(session, kept, key, ruling.to_ruling(now))
    return _guesses(session, kept)


@router.post("/first", summary="Rule who was first", status_code=201)
def post_first(game: str, first: FirstIn, session: Writing, now: Now) -> GuessesOut:
    """Rules which of the right guesses that cannot be told apart was the first, with a reason."""
    kept = game_named(session, game)
    pick = GuessPickRow(game_id=id_of(kept), key=first.key, reason=first.reason, at=now)
    pick_first(session, kept, pick, passed_voters(winners_of(session, kept)))
    return _guesses(session, kept)


@router.post("/winner", summary="Announce the winner", status_code=201)
def post_winner(game: str, session: Writing, now: Now, said: WinnerIn | None = None) -> WinnerOut:
    """Announces who named the piece first; guessing ends with it.

    Refused while it cannot be told who was first, or a comment that needs a look may stand before.
    """
    kept = game_named(session, game)
    return WinnerOut.of(announce_winner(session, kept, (said or WinnerIn()).reason or "", now), now)


def _guesses(session: Session, game: GameRow) -> GuessesOut:
    return GuessesOut.of(judge_guesses(session, game), game.guesses_open, game.guesses_close)
