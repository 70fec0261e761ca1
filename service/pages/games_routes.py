"""Routes of the front doors: the games for everybody, the desk for the host."""

from __future__ import annotations

from fastapi import APIRouter
from fastapi.responses import Response

from service.api.wiring import Reading
from service.pages.desk_access import Desk
from service.pages.frame import Frame
from service.pages.games_contexts import DeskPage, GamesPage, game_shown, is_public
from service.pages.rendering import answer_page
from service.store.games import all_games

router = APIRouter(include_in_schema=False)


@router.api_route("/", methods=["GET", "HEAD"])
def get_games(session: Reading) -> Response:
    """Every game that viewers may know of, with the way to its board."""
    games = tuple(
        game_shown(session, game) for game in all_games(session) if is_public(session, game)
    )
    return answer_page(GamesPage(Frame("Games"), games))


@router.get("/desk")
def get_desk(desk: Desk, session: Reading) -> Response:
    """The desk: the host's games."""
    games = tuple(game_shown(session, game) for game in all_games(session))
    return answer_page(DeskPage(desk.frame("Desk", "/desk"), games))
