"""Routes of the board: the games, and what viewers see of each."""

from __future__ import annotations

from datetime import datetime

from fastapi import APIRouter, Request
from fastapi.responses import Response
from sqlmodel import Session

from service.announce.palette import Theme
from service.api.wiring import wiring_of
from service.pages.board import board_page, plain_page
from service.pages.kept_pages import KeptPages

router = APIRouter(include_in_schema=False)

_kept = KeptPages()


@router.api_route("/games/{game}", methods=["GET", "HEAD"])
def get_board(request: Request, game: str, plain: str | None = None) -> Response:
    """The board of a game; with `?plain`, or `?plain=dark`, to be laid over a video."""
    # Taken by hand: each dependency that is not async costs a change of threads, and hundreds of
    # viewers look at once.
    parts = wiring_of(request)
    now = parts.clock()
    with parts.database.reading() as session:
        return _answer(request, session, game, now, plain)


def _answer(
    request: Request, session: Session, game: str, now: datetime, plain: str | None
) -> Response:
    if plain is not None:
        theme: Theme = "dark" if plain == "dark" else "light"
        return _kept.answer(
            request,
            session,
            (game, f"plain {theme}"),
            now,
            lambda row: plain_page(session, row, now, theme),
        )
    return _kept.answer(
        request, session, (game, "board"), now, lambda row: board_page(session, row, now)
    )
