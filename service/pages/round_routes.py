"""Routes of a round: how it stands, its closing, its tie, its announcement, its revisions."""

from __future__ import annotations

import re
from datetime import datetime
from typing import Any

from fastapi import APIRouter
from fastapi.responses import Response
from sqlmodel import Session
from starlette.datastructures import FormData

from service.api.draw_models import DrawnIn
from service.api.revision_models import RevisionIn
from service.api.round_models import PickIn, RunoffIn
from service.api.shapes import moment_or_none
from service.api.wiring import Now, Parts, Reading
from service.comments.times import zone_of
from service.pages.acting import Again, acted, shown_again
from service.pages.desk_access import Desk, DeskForm, SignedIn
from service.pages.draft_contexts import draft_page
from service.pages.form_reading import Faults, read_as, said, typed_in, words_of
from service.pages.game_frame import round_address, went_well
from service.pages.rendering import answer_page
from service.pages.round_contexts import RoundPage, round_page
from service.pages.round_places import DeskRound, InDeskRound
from service.store.announcing import announce_round, revise_round
from service.store.draws import tell_source
from service.store.rounds import close_round
from service.store.rulings import pick_page
from service.store.runoffs import draft_runoff

router = APIRouter(prefix="/desk/games/{slug}/rounds/{number}", include_in_schema=False)


@router.get("")
def get_round(
    place: InDeskRound,
    desk: Desk,
    session: Reading,
    now: Now,
    done: str = "",
    voters: str = "",
) -> Response:
    """The round as it stands."""
    found = place.found(session)
    if found[1].state == "draft":
        return answer_page(draft_page(session, desk, found, (now, voters, done)))
    return answer_page(round_page(session, desk, found, (now, done)))


@router.post("/close")
def post_close(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Closes the voting, at its announced time, now, or when the host says it ended."""
    words = words_of(form)

    def close(session: Session) -> Response:
        game, row = place.found(session)
        close_round(session, row, moment_or_none(_told(words, "at"), zone_of(game.zone)), now)
        return went_well(place.address, "closed")

    places = {"BadRules": ("at",), "ClosesBeforeOpening": ("at",)}
    return acted(parts, close, _again(place, desk, (form, "close"), now), words, places)


@router.post("/pick")
def post_pick(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Keeps the host's pick among the tied pages."""
    words = words_of(form)
    again = _again(place, desk, (form, "pick"), now)
    given, faults = read_as(PickIn, said(words, "page", "reason"))
    if given is None:
        return shown_again(parts, again, faults)

    def pick(session: Session) -> Response:
        game, row = place.found(session)
        pick_page(session, game, row, (given.page, given.reason), now)
        return went_well(f"{place.address}#tie", "picked")

    return acted(parts, pick, again, words, {"BadRules": ("reason",), "BadRuling": ("page",)})


@router.post("/draw")
def post_draw(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Tells the numbers of a source of the draw, or why it is left out."""
    words = words_of(form)
    again = _again(place, desk, (form, f"draw-{words.get('source', '')}"), now)
    raw: dict[str, Any] = said(words, "source", "reason")
    raw["numbers"] = re.findall(r"[^,;\s]+", words.get("numbers", ""))
    given, faults = read_as(DrawnIn, raw)
    if given is None:
        return shown_again(parts, again, faults)

    def tell(session: Session) -> Response:
        game, row = place.found(session)
        tell_source(session, game, row, given.source, given.to_told(), now)
        return went_well(f"{place.address}#tie", "told")

    return acted(parts, tell, again, words, {"BadDraw": ("numbers",), "BadRules": ("reason",)})


@router.post("/runoff")
def post_runoff(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Drafts a runoff among the tied pages."""
    words = words_of(form)
    again = _again(place, desk, (form, "runoff"), now)
    given, faults = read_as(RunoffIn, said(words, "opens", "closes"))
    if given is None:
        return shown_again(parts, again, faults)

    def draft(session: Session) -> Response:
        game, row = place.found(session)
        times = given.to_times(zone_of(game.zone))
        runoff = draft_runoff(session, game, row, times, now)
        return went_well(round_address(place.slug, runoff.number), "drafted")

    return acted(parts, draft, again, words, {"ClosesBeforeOpening": ("closes",)})


@router.post("/announce")
def post_announce(
    place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now
) -> Response:
    """Announces the result; its page is in hand from now on."""
    keeps = words_of(form).get("keeps") == "yes"

    def announce(session: Session) -> Response:
        game, row = place.found(session)
        announce_round(session, game, row, keeps_in_hand=keeps, now=now)
        return went_well(f"{place.address}/words", "announced")

    return acted(parts, announce, _again(place, desk, (form, "announce"), now), {})


@router.post("/revise")
def post_revise(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Announces the count as it is now, with its reason."""
    words = words_of(form)
    again = _again(place, desk, (form, "revise"), now)
    given, faults = read_as(RevisionIn, said(words, "reason"))
    if given is None:
        return shown_again(parts, again, faults)

    def revise(session: Session) -> Response:
        game, row = place.found(session)
        revise_round(session, game, row, given.reason, now)
        return went_well(f"{place.address}/words", "revised")

    return acted(parts, revise, again, words, {"BadRules": ("reason",)})


def _again(place: DeskRound, desk: SignedIn, sent: tuple[FormData, str], now: datetime) -> Again:
    """The round's page with one of its forms as it was sent."""
    form, name = sent

    def again(session: Session, faults: Faults) -> RoundPage:
        typed = typed_in(form, name, faults)
        return round_page(session, desk, place.found(session), (now, ""), typed)

    return again


def _told(words: dict[str, str], name: str) -> str | None:
    return words.get(name, "").strip() or None
