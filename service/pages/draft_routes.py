"""Routes of a round before its voting: drafted, changed, opened."""

from __future__ import annotations

from fastapi import APIRouter
from fastapi.responses import Response
from sqlmodel import Session

from service.api.wiring import Now, Parts, Reading
from service.comments.times import zone_of
from service.pages.acting import acted, shown_again
from service.pages.desk_access import Desk, DeskForm
from service.pages.draft_contexts import DraftPage, draft_page, new_draft_page
from service.pages.draft_form import PLACES, change_in
from service.pages.form_reading import Faults, typed_in, words_of
from service.pages.game_frame import round_address, went_well
from service.pages.rendering import answer_page
from service.pages.round_places import InDeskRound
from service.store.games import game_named
from service.store.opening import open_round
from service.store.round_rules import DraftRules
from service.store.rounds import change_draft, draft_round, rules_of

router = APIRouter(prefix="/desk/games/{slug}/rounds", include_in_schema=False)


@router.get("/new")
def get_new_round(slug: str, desk: Desk, session: Reading, now: Now) -> Response:
    """A round to be drafted."""
    return answer_page(new_draft_page(session, desk, game_named(session, slug), now))


@router.post("/new")
def post_new_round(slug: str, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Drafts the game's next round."""
    words = words_of(form)

    def again(session: Session, faults: Faults) -> DraftPage:
        typed = typed_in(form, "rules", faults)
        return new_draft_page(session, desk, game_named(session, slug), now, typed)

    given, faults = change_in(words, is_runoff=False)
    if given is None:
        return shown_again(parts, again, faults)

    def draft(session: Session) -> Response:
        game = game_named(session, slug)
        rules = given.to_rules(zone_of(game.zone), DraftRules())
        row = draft_round(session, game, rules, now)
        return went_well(round_address(slug, row.number), "drafted")

    return acted(parts, draft, again, words, PLACES)


@router.post("/{number}/rules")
def post_rules(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Changes a draft's rules."""
    words = words_of(form)
    with parts.database.reading() as session:
        is_runoff = place.found(session)[1].runoff_of is not None

    def again(session: Session, faults: Faults) -> DraftPage:
        typed = typed_in(form, "rules", faults)
        return draft_page(session, desk, place.found(session), (now, "", ""), typed)

    given, faults = change_in(words, is_runoff=is_runoff)
    if given is None:
        return shown_again(parts, again, faults)

    def change(session: Session) -> Response:
        game, row = place.found(session)
        change_draft(session, game, row, given.to_rules(zone_of(game.zone), rules_of(row)))
        return went_well(place.address, "changed")

    return acted(parts, change, again, words, PLACES)


@router.post("/{number}/open")
def post_open(place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Opens a draft: its rules and votable pages are frozen."""

    def again(session: Session, faults: Faults) -> DraftPage:
        typed = typed_in(form, "open", faults)
        return draft_page(session, desk, place.found(session), (now, "", ""), typed)

    def open_it(session: Session) -> Response:
        game, row = place.found(session)
        open_round(session, game, row, now)
        return went_well(place.address, "opened")

    return acted(parts, open_it, again, {})
