"""Routes for the prize and the winners' claims. The host alone: they name who won."""

from __future__ import annotations

from datetime import datetime

from fastapi import APIRouter
from sqlmodel import Session

from service.api.prize_models import (
    AskedForIn,
    PassOnIn,
    PrizeForHostOut,
    PrizeIn,
    PrizeOut,
    SentIn,
    WinnerOut,
)
from service.api.problem_models import problems
from service.api.shapes import moment_or_none
from service.api.wiring import Now, Reading, Writing, host_only
from service.comments.times import zone_of
from service.store.games import game_named
from service.store.prizes import ask_for_prize, prize_of, send_prize, set_prize
from service.store.tables import GameRow
from service.store.winners import pass_prize_on, winners_of

router = APIRouter(
    prefix="/api/games/{game}/prize",
    tags=["prize"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 409, 422),
)


@router.put("", summary="Set a prize up")
def put_prize(game: str, prize: PrizeIn, session: Writing, now: Now) -> PrizeForHostOut:
    """Sets up what the first right guesser may have; it stays once guessing has opened.

    Caution: a prize may make the game a giveaway. Rules differ by country and by platform; find
    out what holds for you and your viewers before you promise anything. This is no legal advice.
    """
    kept = game_named(session, game)
    set_prize(session, kept, prize.to_prize(), now)
    return _prize(session, kept, now)


@router.get("", summary="The prize and the winners' claims")
def get_prize(game: str, session: Reading, now: Now) -> PrizeForHostOut:
    """What is offered, who was announced, and how far each claim has come."""
    return _prize(session, game_named(session, game), now)


@router.post("/asked-for", summary="Keep what the winner asked for")
def post_asked_for(game: str, asked: AskedForIn, session: Writing, now: Now) -> PrizeForHostOut:
    """The winner has claimed the prize. Until it is sent, asking again replaces it."""
    kept = game_named(session, game)
    at = moment_or_none(asked.at, zone_of(kept.zone))
    ask_for_prize(session, kept, asked.asked_for, at, now)
    return _prize(session, kept, now)


@router.post("/sent", summary="Keep that the prize was sent")
def post_sent(game: str, session: Writing, now: Now, sent: SentIn | None = None) -> PrizeForHostOut:
    """The prize is on its way, now or since a time that has passed."""
    kept = game_named(session, game)
    at = moment_or_none((sent or SentIn()).at, zone_of(kept.zone))
    send_prize(session, kept, at, now)
    return _prize(session, kept, now)


@router.post("/pass-on", summary="Pass the prize on", status_code=201)
def post_pass_on(
    game: str, session: Writing, now: Now, passing: PassOnIn | None = None
) -> PrizeForHostOut:
    """The prize was not claimed in time, or declined: it goes to the next right guesser."""
    kept = game_named(session, game)
    pass_prize_on(session, kept, (passing or PassOnIn()).declined or "", now)
    return _prize(session, kept, now)


def _prize(session: Session, game: GameRow, now: datetime) -> PrizeForHostOut:
    row = prize_of(session, game)
    return PrizeForHostOut(
        prize=None if row is None else PrizeOut.of(row),
        winners=[WinnerOut.of(winner, now) for winner in winners_of(session, game)],
    )
