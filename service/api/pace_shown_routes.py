"""The public route of the pace: what the host chose to show, and nothing else."""

from __future__ import annotations

from fastapi import APIRouter

from service.api.pace_out import FinishOut, PublicProgressOut
from service.api.problem_models import problems
from service.api.progress_out import ChartProgressOut, PageProgressOut
from service.api.wiring import Now, Reading
from service.pace.forecast import CONFIDENCE
from service.store.games import game_named
from service.store.pace import shown_of
from service.store.stitch_log import today_of

router = APIRouter(prefix="/api/games/{game}/progress", tags=["pace"])


@router.get("", summary="What everybody may see of the pace", responses=problems(404, 422))
def get_public_progress(game: str, session: Reading, now: Now) -> PublicProgressOut:
    """Progress, forecast and picture, as far as the host shows them; the rest is empty."""
    kept = game_named(session, game)
    shown = shown_of(session, kept, today_of(kept, now))
    return PublicProgressOut(
        pages=shown.pages and [PageProgressOut.of(page) for page in shown.pages],
        chart=shown.chart and ChartProgressOut.of(shown.chart),
        finish=shown.finish and FinishOut.of(shown.finish, CONFIDENCE),
        next_opening=shown.next_opening,
        picture=shown.picture,
        update=shown.update,
    )
