"""The window of a game's guesses: opened by the host, ended by her or by the announced winner."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any, Literal

from sqlmodel import Session

from service.errors import BadRules, ClosesBeforeOpening, WrongState
from service.mystery.window import Window
from service.store.games import take_game
from service.store.tables import GameRow

GuessingState = Literal["not open", "open", "ended"]


def window_of(game: GameRow) -> Window:
    """The game's window and the number of guesses a voter may make."""
    return Window(game.guesses_open, game.guesses_close, game.guesses_per_voter)


def guessing_state(game: GameRow, now: datetime) -> GuessingState:
    """Whether guessing is open. Once the answer is revealed it never is."""
    if game.revealed is not None or _is_past(game.guesses_close, now):
        return "ended"
    return "open" if _is_past(game.guesses_open, now) else "not open"


def open_guessing(session: Session, game: GameRow, at: datetime | None, now: datetime) -> None:
    """Open guessing now, or at `at`, which may have passed: the first progress was shown then.

    Raises:
        WrongState: it has been opened, or its answer is not sealed, or is revealed.
        BadRules: the opening is still to come.
        ClosesBeforeOpening: guessing would end before it begins.
    """
    take_game(session, game)
    if game.seal is None:
        raise WrongState(f"game {game.slug}", "without a sealed answer", "guessed", "seal it first")
    state = guessing_state(game, now)
    if state != "not open":
        raise WrongState(_name(game), state, "opened", "it is opened once")
    opens = now if at is None else at
    if opens > now:
        raise BadRules(
            "the opening of guessing is still to come", "name a time that has passed, or none"
        )
    if game.guesses_close is not None and game.guesses_close <= opens:
        raise ClosesBeforeOpening(opens.isoformat(), game.guesses_close.isoformat())
    game.guesses_open = opens
    session.add(game)
    session.flush()


def end_guessing(session: Session, game: GameRow, at: datetime | None, now: datetime) -> None:
    """End guessing now, or at `at`, which has passed.

    Raises:
        WrongState: it is not open, or its end was announced and is to stay.
        BadRules: the end is still to come.
        ClosesBeforeOpening: the end is not after the opening.
    """
    take_game(session, game)
    state = guessing_state(game, now)
    if state != "open" or game.guesses_open is None:
        raise WrongState(_name(game), state, "ended", "only open guessing can be ended")
    ends = now if at is None else at
    if ends > now:
        raise BadRules("the end of guessing is still to come", "end it at a time that has passed")
    if ends <= game.guesses_open:
        raise ClosesBeforeOpening(game.guesses_open.isoformat(), ends.isoformat())
    game.guesses_close = ends
    session.add(game)
    session.flush()


def check_window_change(game: GameRow, change: Mapping[str, Any], now: datetime) -> None:
    """Whether the times of guessing may still be changed to those in `change`.

    What has happened stays: guesses were made by it. Until the answer is sealed nobody could guess.

    Raises:
        WrongState: guessing has opened and would open otherwise, or has ended and would go on.
    """
    if game.seal is None:
        return
    for name, wish in (("guesses_open", "opened at another time"), ("guesses_close", "ended anew")):
        kept = getattr(game, name)
        over = _is_past(kept, now) or game.revealed is not None
        if name in change and over and change[name] != kept:
            state = guessing_state(game, now)
            raise WrongState(_name(game), state, wish, "what has been stays, for all who guessed")


def _is_past(time: datetime | None, now: datetime) -> bool:
    return time is not None and time <= now


def _name(game: GameRow) -> str:
    return f"guessing in game {game.slug}"
