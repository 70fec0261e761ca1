"""Routes for ties: their odds, the numbers of a draw, a runoff."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Query

from service.api.draw_models import DrawnIn, DrawOut
from service.api.odds_models import OddsOut
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.round_models import RoundOut, RunoffIn
from service.api.wiring import AnyCaller, Now, Reading, Writing, host_only
from service.comments.times import zone_of
from service.counting.odds import MOST_VOTERS
from service.store.draws import drawn_so_far, tell_source
from service.store.odds import odds_of_stored
from service.store.runoffs import draft_runoff

router = APIRouter(prefix="/api/games/{game}/rounds/{number}", tags=["ties"])

_HOST: dict[str, Any] = {"dependencies": [host_only]}
_CHANGES = problems(401, 403, 404, 409, 422)
_Voters = Annotated[
    int | None,
    Query(
        ge=1,
        le=MOST_VOTERS,
        description="How many are expected; as many as in the last round if left out.",
    ),
]


@router.get("/odds", summary="The odds of a tie", responses=_CHANGES, **_HOST)
def get_odds(place: InRound, session: Reading, voters: _Voters = None) -> OddsOut:
    """How likely a tie is with so many voters, and how often each tie-break would decide it."""
    game, row = place.found(session)
    return OddsOut.of(odds_of_stored(session, game, row, voters))


@router.get("/draw", summary="How a tie is drawn", responses=problems(401, 404, 422))
def get_draw(place: InRound, session: Reading, caller: AnyCaller) -> DrawOut:
    """The sources named beforehand, the commitment, and the numbers as far as they are told."""
    _, row = place.shown(session, caller)
    return DrawOut.of(row, drawn_so_far(session, row))


@router.post("/draw", summary="Tell the numbers of a source", responses=_CHANGES, **_HOST)
def post_draw(place: InRound, drawn: DrawnIn, session: Writing, now: Now) -> DrawOut:
    """Tells the numbers of a source after the closing, or why it is left out. The last word holds."""
    game, row = place.found(session)
    tell_source(session, game, row, drawn.source, drawn.to_told(), now)
    return DrawOut.of(row, drawn_so_far(session, row))


@router.post("/runoff", summary="Draft a runoff", status_code=201, responses=_CHANGES, **_HOST)
def post_runoff(
    place: InRound, session: Writing, now: Now, times: RunoffIn | None = None
) -> RoundOut:
    """Drafts a new round among just the tied pages, by the tie-breaks that follow in the chain."""
    game, row = place.found(session)
    said = (times or RunoffIn()).to_times(zone_of(game.zone))
    return RoundOut.of(game, draft_runoff(session, game, row, said, now))
