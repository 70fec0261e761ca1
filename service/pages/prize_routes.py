"""Routes of the prize: set up, won, asked for, sent, passed on."""

from __future__ import annotations

from fastapi import APIRouter
from fastapi.responses import Response
from sqlmodel import Session

from service.api.guess_models import WinnerIn
from service.api.prize_models import AskedForIn, PassOnIn, PrizeIn, SentIn
from service.api.shapes import moment_or_none
from service.comments.times import zone_of
from service.pages.form_reading import read_as, said
from service.pages.guess_acts import SentGuessForm
from service.store.prizes import ask_for_prize, send_prize, set_prize
from service.store.tables import GameRow
from service.store.winners import announce_winner, pass_prize_on

router = APIRouter(prefix="/desk/games/{slug}/prize", include_in_schema=False)


@router.post("/set")
def post_prize(sent: SentGuessForm) -> Response:
    """Sets a prize up, before anybody wins it."""
    given, faults = read_as(PrizeIn, said(sent.words, "offer", "choose_from", "claim_days"))
    if given is None:
        return sent.refuse("prize", faults)

    def set_up(session: Session, game: GameRow) -> None:
        set_prize(session, game, given.to_prize(), sent.now)

    return sent.do("prize", set_up, ("prize", "prize"), {"BadRules": ("offer",)})


@router.post("/winner")
def post_winner(sent: SentGuessForm) -> Response:
    """Announces who named the piece first; guessing ends with it."""
    given, faults = read_as(WinnerIn, said(sent.words, "reason"))
    if given is None:
        return sent.refuse("winner", faults)

    def announce(session: Session, game: GameRow) -> None:
        announce_winner(session, game, given.reason or "", sent.now)

    return sent.do("winner", announce, ("winner", "words"), {})


@router.post("/asked-for")
def post_asked_for(sent: SentGuessForm) -> Response:
    """Keeps what the winner asked for."""
    given, faults = read_as(AskedForIn, said(sent.words, "asked_for", "at"))
    if given is None:
        return sent.refuse("asked", faults)

    def ask(session: Session, game: GameRow) -> None:
        at = moment_or_none(given.at, zone_of(game.zone))
        ask_for_prize(session, game, given.asked_for, at, sent.now)

    return sent.do("asked", ask, ("asked", "prize"))


@router.post("/sent")
def post_sent(sent: SentGuessForm) -> Response:
    """Keeps that the prize was sent."""
    given, faults = read_as(SentIn, said(sent.words, "at"))
    if given is None:
        return sent.refuse("sent", faults)

    def send(session: Session, game: GameRow) -> None:
        send_prize(session, game, moment_or_none(given.at, zone_of(game.zone)), sent.now)

    return sent.do("sent", send, ("sent", "prize"))


@router.post("/pass-on")
def post_pass_on(sent: SentGuessForm) -> Response:
    """Passes the prize on to the next right guesser."""
    given, faults = read_as(PassOnIn, said(sent.words, "declined"))
    if given is None:
        return sent.refuse("pass", faults)

    def pass_on(session: Session, game: GameRow) -> None:
        pass_prize_on(session, game, given.declined or "", sent.now)

    return sent.do("pass", pass_on, ("passed", "words"), {"WrongState": ("declined",)})
