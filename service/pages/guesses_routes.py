"""Routes of a game's guesses: seal, window, rulings, who was first, the reveal."""

from __future__ import annotations

import secrets
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query
from fastapi.responses import Response
from sqlmodel import Session

from service.api.game_models import AnswerIn
from service.api.guess_models import FirstIn, GuessRulingIn
from service.api.mystery_models import AliasIn
from service.api.shapes import moment_or_none
from service.api.wiring import Now, Reading
from service.comments.times import zone_of
from service.mystery.seal import SALT_BYTES
from service.pages.desk_access import Desk
from service.pages.form_reading import lines_in, read_as, said
from service.pages.guess_acts import SentGuessForm
from service.pages.guesses_contexts import LISTS, WantedGuesses, guesses_page
from service.pages.rendering import answer_page
from service.store.answers import note_alias, seal_answer
from service.store.columns import id_of
from service.store.games import game_named
from service.store.guesses import pick_first, rule_on_guess
from service.store.reveals import reveal_answer
from service.store.tables import GameRow
from service.store.tables_mystery import GuessPickRow
from service.store.window import end_guessing, open_guessing
from service.store.winners import passed_voters, winners_of

router = APIRouter(prefix="/desk/games/{slug}/guesses", include_in_schema=False)


async def _wanted(
    now: Now,
    show: str = "decides",
    start: Annotated[str, Query(alias="from", max_length=100)] = "",
    done: str = "",
) -> WantedGuesses:
    return WantedGuesses(now, show if show in dict(LISTS) else "decides", start, done)


@router.get("")
def get_guesses(
    slug: str, desk: Desk, session: Reading, wanted: Annotated[WantedGuesses, Depends(_wanted)]
) -> Response:
    """The guesses as they stand."""
    return answer_page(guesses_page(session, desk, game_named(session, slug), wanted))


@router.post("/seal")
def post_seal(sent: SentGuessForm) -> Response:
    """Seals the answer of a game that was made without one."""
    words = sent.words
    raw: dict[str, Any] = said(words, "title", "designer")
    given, faults = read_as(AnswerIn, raw | {"aliases": lines_in(words.get("aliases", ""))})
    if given is None:
        return sent.refuse("seal", faults)

    def seal(session: Session, game: GameRow) -> None:
        seal_answer(session, game, given.to_answer(), secrets.token_bytes(32), sent.now)

    return sent.do("seal", seal, ("sealed", "seal"), {"BadRules": ("title",)})


@router.post("/alias")
def post_alias(sent: SentGuessForm) -> Response:
    """Notes another name that counts from now on."""
    given, faults = read_as(AliasIn, said(sent.words, "alias"))
    if given is None:
        return sent.refuse("alias", faults)

    def note(session: Session, game: GameRow) -> None:
        note_alias(session, game, given.alias, secrets.token_bytes(SALT_BYTES), sent.now)

    return sent.do("alias", note, ("noted", "seal"), {"BadRules": ("alias",)})


@router.post("/open")
def post_open(sent: SentGuessForm) -> Response:
    """Opens guessing, now or from a time that has passed."""

    def begin(session: Session, game: GameRow) -> None:
        at = moment_or_none(sent.words.get("at", "").strip() or None, zone_of(game.zone))
        open_guessing(session, game, at, sent.now)

    return sent.do("window", begin, ("opened", "window"))


@router.post("/end")
def post_end(sent: SentGuessForm) -> Response:
    """Ends guessing, now or at a time that has passed."""

    def end(session: Session, game: GameRow) -> None:
        at = moment_or_none(sent.words.get("at", "").strip() or None, zone_of(game.zone))
        end_guessing(session, game, at, sent.now)

    return sent.do("window", end, ("ended", "window"))


@router.post("/{key}/ruling")
def post_ruling(key: str, sent: SentGuessForm) -> Response:
    """Adds a ruling on a guess; the last one holds."""
    pressed, reason = sent.words.get("rule", ""), sent.words.get("reason", "").strip()
    raw: dict[str, Any] = {"reason": reason or f"The host read it: {pressed}."}
    if pressed in ("counts", "does not count"):
        raw["in_time"] = pressed == "counts"
    else:
        raw["outcome"] = pressed
    given, faults = read_as(GuessRulingIn, raw)
    if given is None:
        faults = {"": "Press one of the buttons."} if "outcome" in faults else faults
        return sent.refuse(f"g-{key}", faults)

    def rule(session: Session, game: GameRow) -> None:
        rule_on_guess(session, game, key, given.to_ruling(sent.now))

    return sent.do(f"g-{key}", rule, ("ruled", "list"), {"BadRuling": ("reason",)})


@router.post("/{key}/first")
def post_first(key: str, sent: SentGuessForm) -> Response:
    """Rules that this was the first of the right guesses that cannot be told apart."""
    given, faults = read_as(FirstIn, {"key": key, **said(sent.words, "reason")})
    if given is None:
        return sent.refuse(f"g-{key}", faults)

    def pick(session: Session, game: GameRow) -> None:
        row = GuessPickRow(game_id=id_of(game), key=key, reason=given.reason, at=sent.now)
        pick_first(session, game, row, passed_voters(winners_of(session, game)))

    return sent.do(f"g-{key}", pick, ("first", "first"), {"BadRuling": ("reason",)})


@router.post("/reveal")
def post_reveal(sent: SentGuessForm) -> Response:
    """Publishes the answer with all that is needed to check its seal."""

    def reveal(session: Session, game: GameRow) -> None:
        reveal_answer(session, game, sent.now)

    return sent.do("reveal", reveal, ("revealed", "reveal"), {})
