"""The app: settings in, a service out. The only place where its parts are put together."""

from __future__ import annotations

import tomllib
import zoneinfo
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, asynccontextmanager
from datetime import UTC, datetime
from pathlib import Path

from fastapi import FastAPI
from fastapi_offline import FastAPIOffline

from service.api import (
    batch_routes,
    comment_routes,
    desk_routes,
    draw_routes,
    forget_routes,
    game_routes,
    guess_routes,
    log_routes,
    mystery_routes,
    pace_routes,
    pace_shown_routes,
    picture_routes,
    prize_routes,
    progress_routes,
    reading_routes,
    receipt_routes,
    result_routes,
    round_routes,
    service_routes,
    tally_routes,
    token_routes,
    words_routes,
)
from service.api.body_limit import BodyLimit
from service.api.gate import Gate
from service.api.gathered import Gathered
from service.api.hand_ins import HandIns
from service.api.metrics import Metrics
from service.api.passing import Passing
from service.api.problem_models import describe_problems, problems_anywhere
from service.api.problems import problem_handlers
from service.api.request_log import RequestLog
from service.api.wiring import Wiring, callers_with
from service.pages import board_routes, games_routes, sign_in_routes, statics, ways_in_routes
from service.pages.boards import Boards
from service.pages.desk_routers import DESK_ROUTERS
from service.pages.refusals import answer_problem
from service.pages.security import SecurityHeaders
from service.settings import Settings
from service.store.database import Database

_PROJECT = Path(__file__).parent.parent / "pyproject.toml"
_ROUTERS = (
    service_routes.router,
    game_routes.router,
    round_routes.router,
    draw_routes.router,
    result_routes.router,
    picture_routes.router,
    words_routes.router,
    comment_routes.router,
    receipt_routes.router,
    forget_routes.router,
    tally_routes.router,
    guess_routes.router,
    mystery_routes.router,
    prize_routes.router,
    log_routes.router,
    pace_routes.router,
    pace_shown_routes.router,
    reading_routes.router,
    progress_routes.router,
    token_routes.router,
    desk_routes.router,
)
#: Desk and board; they are no part of the API and its document.
PAGE_ROUTERS = (
    board_routes.router,
    statics.router,
    games_routes.router,
    sign_in_routes.router,
    ways_in_routes.router,
    *DESK_ROUTERS,
)


def now() -> datetime:
    """The time: the service's only clock."""
    return datetime.now(UTC)


def create_app(
    settings: Settings,
    *,
    local_token: str | None = None,
    clock: Callable[[], datetime] = now,
    figures_in: Path | None = None,
) -> FastAPI:
    """A service with these settings; it opens its database when it starts to serve.

    `local_token` makes the process that called the host, without a token that is kept.
    `figures_in` is the folder that several processes that serve have their figures in.
    """
    use_own_zones()
    metrics = Metrics(_version(), figures_in)

    app: FastAPI = FastAPIOffline(
        title="Loopstart",
        summary="Runs a mystery chart played with a community.",
        version=_version(),
        lifespan=_life(settings, clock, local_token, metrics),
        exception_handlers=problem_handlers(answer_problem),
        swagger_ui_parameters={"validatorUrl": None},
        responses=problems_anywhere(),
    )
    app.add_middleware(BodyLimit, settings=settings)
    app.add_middleware(Gate, settings=settings, answer=answer_problem)
    app.add_middleware(SecurityHeaders)
    app.add_middleware(RequestLog, metrics=metrics)
    # The first that fits is taken: what hundreds look at every second is not looked for long.
    for router in (PAGE_ROUTERS[0], batch_routes.router, *_ROUTERS, *PAGE_ROUTERS[1:]):
        app.include_router(router)
    describe_problems(app)
    return app


def _life(
    settings: Settings, clock: Callable[[], datetime], local_token: str | None, metrics: Metrics
) -> Callable[[FastAPI], AbstractAsyncContextManager[None]]:
    """What is open while the app serves."""

    @asynccontextmanager
    async def lifespan(app: FastAPI) -> AsyncIterator[None]:
        database = Database(settings)
        passing = Passing(settings, database, clock)
        app.state.boards = Boards(database)
        parts = Wiring(
            settings=settings,
            database=database,
            clock=clock,
            local_token=local_token,
            progress=passing.progress,
            metrics=metrics,
            waiting=passing.waiting,
            callers=Gathered(lambda _, tokens: callers_with(database, tokens)),
        )
        app.state.wiring, app.state.hand_ins = parts, HandIns(parts)
        try:
            yield
        finally:
            passing.end()
            database.dispose()

    return lifespan


def use_own_zones() -> None:
    """Take time zones from the tzdata package: an operating system's may be years old."""
    if zoneinfo.TZPATH:
        zoneinfo.reset_tzpath(to=[])
        zoneinfo.ZoneInfo.clear_cache()


def _version() -> str:
    """The version, from the one place where it is written."""
    return str(tomllib.loads(_PROJECT.read_text("utf-8"))["project"]["version"])
