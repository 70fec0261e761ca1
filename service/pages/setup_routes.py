"""Routes of setting a game up, in five short steps.

What is typed is kept with the host's session at every step, so that going back loses nothing. The
answer is in the body of a form and in that session, never in an address.
"""

from __future__ import annotations

import secrets
from collections.abc import Mapping

from fastapi import APIRouter
from fastapi.responses import RedirectResponse, Response
from starlette.datastructures import FormData

from service.api.making_games import make_game_of
from service.api.wiring import Now, Parts
from service.errors import LoopstartError, NotFound
from service.pages.desk_access import Desk, DeskForm, SignedIn
from service.pages.form_reading import REFUSED, lists_of, status_for, words_of
from service.pages.forms import field_of
from service.pages.frame import Frame
from service.pages.game_frame import desk_address, went_well
from service.pages.rendering import NOT_KEPT, answer_page
from service.pages.setup_contexts import setup_page
from service.pages.setup_form import AT_FIRST, FIELDS, STEPS, SetUp, Step, fault_in_making, set_up
from service.store.answers import check_tells_nothing
from service.store.desk_drafts import draft_of, drop_draft, keep_draft
from service.store.rounds import draft_round

NEW = "/desk/new"
router = APIRouter(include_in_schema=False)


@router.get(NEW)
def get_new() -> Response:
    """The first step."""
    return RedirectResponse(f"{NEW}/chart", 303, dict(NOT_KEPT))


@router.get(NEW + "/{step}")
def get_step(step: str, desk: Desk, parts: Parts) -> Response:
    """A step, with what was typed before."""
    known = _known(step)
    words = _kept(parts, desk)
    page = setup_page(_frame(desk, known), known, words, set_up(words), shows=known == "review")
    return answer_page(page)


@router.post(NEW + "/review")
def post_review(desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Makes the game, seals its answer and drafts its first round, all or nothing."""
    del form
    words = _kept(parts, desk)
    made = set_up(words)
    if made.faults or made.game is None or made.rules is None:
        return answer_page(
            setup_page(_frame(desk, "review"), "review", words, made, shows=True), 422
        )
    try:
        with parts.database.writing() as session:
            game = make_game_of(session, made.game, secrets.token_bytes(32), now)
            check_tells_nothing(session, game, game.name, "the game's name")
            draft_round(session, game, made.rules, now)
            drop_draft(session, desk.number)
    except REFUSED as error:
        return _refused(desk, words, made, error)
    return went_well(desk_address(game.slug), "made")


@router.post(NEW + "/{step}")
def post_step(step: str, desk: Desk, form: DeskForm, parts: Parts) -> Response:
    """Keeps what was typed and goes on, back, or shows the chart."""
    known = _known(step)
    words = _kept(parts, desk) | _typed(known, form)
    with parts.database.writing() as session:
        keep_draft(session, desk.number, words)
    made, wish = set_up(words), field_of(form, "do", "next")
    if wish == "back":
        return _to(STEPS[max(0, STEPS.index(known) - 1)])
    if wish == "show" or made.faults_in(known):
        page = setup_page(_frame(desk, known), known, words, made, shows=True)
        return answer_page(page, 422 if made.faults_in(known) else 200)
    return _to(STEPS[STEPS.index(known) + 1])


def _known(step: str) -> Step:
    for known in STEPS:
        if known == step:
            return known
    raise NotFound("step", step, f"begin at {NEW}")


def _kept(parts: Parts, desk: SignedIn) -> dict[str, str]:
    with parts.database.reading() as session:
        return {**AT_FIRST, **draft_of(session, desk.number)}


def _typed(step: Step, form: FormData) -> dict[str, str]:
    """The step's fields as they were sent; a box that is not ticked is not sent, so it is empty."""
    sent = words_of(form)
    found = {name: sent.get(name, "")[:10_000] for name in FIELDS[step]}
    if step == "game":
        found["languages"] = " ".join(lists_of(form).get("languages", ()))
    return found


def _refused(
    desk: SignedIn, words: Mapping[str, str], made: SetUp, error: LoopstartError
) -> Response:
    faults = fault_in_making(error, words)
    refused = SetUp(made.chart, made.game, made.rules, faults)
    page = setup_page(_frame(desk, "review"), "review", words, refused, shows=True)
    return answer_page(page, status_for(error))


def _frame(desk: SignedIn, step: Step) -> Frame:
    return desk.frame(f"A new game: {step}", NEW)


def _to(step: Step) -> Response:
    return RedirectResponse(f"{NEW}/{step}", 303, dict(NOT_KEPT))
