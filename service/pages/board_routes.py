"""Routes of the board: the games, and what viewers see of each."""

from __future__ import annotations

from fastapi import APIRouter, Request
from fastapi.responses import Response

from service.api.wiring import wiring_of
from service.pages.boards import boards_of

router = APIRouter(include_in_schema=False)


@router.api_route("/games/{game}", methods=["GET", "HEAD"])
async def get_board(request: Request, game: str, plain: str | None = None) -> Response:
    """The board of a game; with `?plain`, or `?plain=dark`, to be laid over a video."""
    which = "board"
    if plain is not None:
        which = "dark" if plain == "dark" else "light"
    # Taken by hand: hundreds of viewers look at once, and each dependency would cost its part.
    page = await boards_of(request).page((game, which), wiring_of(request).clock())
    return page.answer(request)
