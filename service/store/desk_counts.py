"""A round's count and a game's guesses for the desk: worked out once, until something comes in."""

from __future__ import annotations

from collections.abc import Hashable

from sqlmodel import Session

from service.store.columns import id_of
from service.store.counting import count_stored
from service.store.desk_kept import KeptWhileStanding
from service.store.guesses import Guesses, judge_guesses
from service.store.readings import Counted
from service.store.rounds import all_rounds
from service.store.tables import GameRow, RoundRow

_counts: KeptWhileStanding[Counted] = KeptWhileStanding()
_guesses: KeptWhileStanding[Guesses] = KeptWhileStanding()


def count_kept(session: Session, game: GameRow, row: RoundRow) -> Counted:
    """The count of a round as it stands, without the list of its comments.

    Raises:
        WrongState: the round is a draft.
    """

    def count() -> Counted:
        return count_stored(session, game, row, most=0)

    return _counts.of(session, id_of(row), _stands(session, game), count)


def count_if_kept(session: Session, game: GameRow, row: RoundRow) -> Counted | None:
    """The same, where it has been counted already."""
    return _counts.if_standing(session, id_of(row), _stands(session, game))


def guesses_kept(session: Session, game: GameRow) -> Guesses:
    """The guesses of a game as they stand.

    Raises:
        WrongState: the game has no sealed answer.
    """

    def judge() -> Guesses:
        return judge_guesses(session, game)

    return _guesses.of(session, id_of(game), _stands(session, game), judge)


def guesses_if_kept(session: Session, game: GameRow) -> Guesses | None:
    """The same, where they have been read already: all comments are read for them."""
    return _guesses.if_standing(session, id_of(game), _stands(session, game))


def _stands(session: Session, game: GameRow) -> Hashable:
    """What the counts of a game go by: a runoff decides for another round, a ruling for a guess."""
    rounds = tuple((row.number, row.state, row.changes) for row in all_rounds(session, game))
    window = (game.guesses_open, game.guesses_close, game.seal, game.revealed)
    return (rounds, game.changes, tuple(game.hosts), window)
