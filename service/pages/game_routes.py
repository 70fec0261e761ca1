"""Routes of a game's desk and of the state of its pages."""

from __future__ import annotations

from fastapi import APIRouter
from fastapi.responses import Response

from service.api.game_models import PageIn
from service.api.wiring import Now, Parts, Reading
from service.errors import PageNotOnChart
from service.pages.desk_access import Desk, DeskForm
from service.pages.form_reading import REFUSED, fault_of, read_as, status_for, typed_in, words_of
from service.pages.game_contexts import game_page, page_of_chart
from service.pages.game_frame import desk_address, went_well
from service.pages.rendering import answer_page
from service.store.games import chart_of, game_named
from service.store.pages import say_page

router = APIRouter(prefix="/desk/games/{slug}", include_in_schema=False)

_DONE = {
    "made": "The game is made, and its first round is drafted.",
    "page": "The page's state is kept.",
}


@router.get("")
def get_game(slug: str, desk: Desk, session: Reading, now: Now, done: str = "") -> Response:
    """The desk of a game."""
    return answer_page(
        game_page(session, desk, game_named(session, slug), now, _DONE.get(done, ""))
    )


@router.get("/pages/{page}")
def get_page(slug: str, page: int, desk: Desk, session: Reading, now: Now) -> Response:
    """One page of the chart, to say its state."""
    game = game_named(session, slug)
    chart = chart_of(game)
    if page not in chart.pages:
        raise PageNotOnChart(page, chart.page_count)
    return answer_page(page_of_chart(session, desk, game, page, now))


@router.post("/pages/{page}")
def post_page(slug: str, page: int, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Keeps the state of a page."""
    words = words_of(form)
    given, faults = read_as(PageIn, {"state": words.get("state", "")})
    status = 422
    if given is not None:
        try:
            with parts.database.writing() as session:
                say_page(session, game_named(session, slug), page, given.state, now)
        except REFUSED as error:
            faults, status = fault_of(error, words, {}), status_for(error)
        else:
            return went_well(desk_address(slug), "page")
    with parts.database.reading() as session:
        game = game_named(session, slug)
        if page not in chart_of(game).pages:
            raise PageNotOnChart(page, chart_of(game).page_count)
        shown = page_of_chart(session, desk, game, page, now, typed_in(form, "page", faults))
    return answer_page(shown, status)
