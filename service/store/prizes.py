"""The prize of a game: set up before anybody wins, asked for by the winner, sent by the host."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session

from service.errors import WrongState
from service.mystery.prize import Claim, Prize, check_asked, check_sent
from service.store.answers import check_tells_nothing
from service.store.columns import id_of
from service.store.games import take_game
from service.store.tables import GameRow
from service.store.tables_mystery import PrizeRow, WinnerRow
from service.store.window import guessing_state
from service.store.winners import claim_of, no_claim, winners_of


def set_prize(session: Session, game: GameRow, prize: Prize, now: datetime) -> PrizeRow:
    """Set a prize up, or set it up anew while guessing has not opened.

    Raises:
        WrongState: guessing has opened with another prize, or a winner is announced.
        BadRules: its words give the sealed answer away.
    """
    take_game(session, game)
    kept = session.get(PrizeRow, id_of(game))
    if kept is not None and guessing_state(game, now) != "not open":
        raise WrongState("the prize", "promised", "changed", "what viewers guessed for stays")
    if winners_of(session, game):
        todo = "a prize is set up before anybody wins it"
        raise WrongState(f"the guessing of game {game.slug}", "won", "given a prize", todo)
    check_tells_nothing(session, game, prize.offer, "what the prize offers")
    check_tells_nothing(session, game, prize.choose_from, "where the prize may be chosen from")
    row = kept or PrizeRow(game_id=id_of(game), offer="", choose_from="", claim_days=1, at=now)
    row.offer, row.choose_from = prize.offer, prize.choose_from
    row.claim_days, row.at = prize.claim_days, now
    session.add(row)
    session.flush()
    return row


def prize_of(session: Session, game: GameRow) -> PrizeRow | None:
    """The game's prize; None where it has none."""
    return session.get(PrizeRow, id_of(game))


def ask_for_prize(
    session: Session, game: GameRow, asked_for: str, at: datetime | None, now: datetime
) -> None:
    """Keep what the winner asked for, now or at `at`; asking again replaces it until it is sent.

    Raises:
        WrongState: nothing is to be claimed, or it was claimed too late.
        BadRules: the time cannot be.
    """
    row, claim = _open_claim(session, game)
    asked_at = now if at is None else at
    check_asked(claim, row.at.replace(microsecond=0), asked_at, now)
    row.asked_for, row.asked_at = asked_for, asked_at
    session.add(row)
    session.flush()


def send_prize(session: Session, game: GameRow, at: datetime | None, now: datetime) -> None:
    """Keep that the prize was sent, now or at `at`.

    Raises:
        WrongState: nothing is asked for, or it was sent already.
        BadRules: the time cannot be.
    """
    row, claim = _open_claim(session, game)
    sent_at = now if at is None else at
    check_sent(claim, sent_at, now)
    row.sent_at = sent_at
    session.add(row)
    session.flush()


def _open_claim(session: Session, game: GameRow) -> tuple[WinnerRow, Claim]:
    take_game(session, game)
    winners = winners_of(session, game)
    claim = claim_of(winners[-1]) if winners else None
    if claim is None:
        raise no_claim(game)
    return winners[-1], claim
