"""The routers of the desk's pages, in the order in which addresses are looked up."""

from __future__ import annotations

from fastapi import APIRouter

from service.pages import (
    comments_routes,
    draft_routes,
    game_routes,
    guesses_routes,
    hand_in_routes,
    pace_routes,
    prize_routes,
    round_routes,
    settings_routes,
    setup_routes,
    words_routes,
)

#: "rounds/new" stands before "rounds/{number}".
DESK_ROUTERS: tuple[APIRouter, ...] = (
    setup_routes.router,
    game_routes.router,
    draft_routes.router,
    round_routes.router,
    hand_in_routes.router,
    hand_in_routes.progress_router,
    comments_routes.router,
    words_routes.router,
    settings_routes.router,
    pace_routes.router,
    guesses_routes.router,
    prize_routes.router,
)
