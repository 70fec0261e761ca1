"""Routes for the pace: plan and stitches by hand, progress, forecast, what is next. For the host."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Annotated

from fastapi import APIRouter, Depends, Path, Query
from sqlmodel import Session

from service.announce.pace_words import needed_words, pace_words
from service.api.pace_models import PageStitchesIn, PageStitchesOut, PlanIn, PlanOut
from service.api.pace_out import (
    CalendarOut,
    FinishOut,
    NeededOut,
    OpeningOut,
    PaceNumbersOut,
    PaceOut,
    RoundToComeOut,
)
from service.api.problem_models import problems
from service.api.progress_out import (
    ChartProgressOut,
    PageProgressOut,
    ParagraphOut,
    PictureOut,
    ProgressOut,
)
from service.api.shapes import Day
from service.api.wiring import Now, Reading, Writing, host_only
from service.counting.wording import pages_in_words
from service.pace.forecast import CONFIDENCE, NotEnough, Outlook
from service.pace.progress import since
from service.pace.situation import Aim, Situation
from service.store.games import game_named
from service.store.pace import (
    fortnight_until,
    picture_of,
    situation_of,
    update_paragraph,
    what_is_next,
)
from service.store.pace_plans import page_rows, plan_of
from service.store.stitch_log import change_plan, tell_page_stitches, today_of
from service.store.tables import GameRow

router = APIRouter(
    prefix="/api/games/{game}/pace",
    tags=["pace"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 422),
)

#: A calendar of rounds further ahead says nothing.
MOST_ROUNDS = 500


@dataclass(frozen=True, slots=True)
class Asked:
    """On which day the pace is asked for, and with what confidence a range is told."""

    today: date | None
    confidence: float

    def situation(self, session: Session, game: GameRow, now: Now) -> Situation:
        """Where the game stands on that day."""
        return situation_of(session, game, self.today or today_of(game, now))


def _asked(
    today: Annotated[
        Day | None, Query(description="As it stood on that day; today, if nothing is said.")
    ] = None,
    confidence: Annotated[
        float, Query(description="How often a range is to hold the day: 0.5 to 0.99.")
    ] = CONFIDENCE,
) -> Asked:
    return Asked(today, confidence)


AskedFor = Annotated[Asked, Depends(_asked)]


@router.get("", summary="The pace, and what is next")
def get_pace(game: str, asked: AskedFor, session: Reading, now: Now) -> PaceOut:
    """How far page and chart are, when the pages in hand are finished, when to open a round."""
    kept = game_named(session, game)
    here = asked.situation(session, kept, now)
    seen = here.outlook(asked.confidence)
    next_ = what_is_next(session, kept, here, asked.confidence)
    pace = None
    if isinstance(seen, Outlook):
        pace = PaceNumbersOut.of(seen.pace, asked.confidence, pace_words(seen.pace))
    return PaceOut(
        today=here.as_of,
        logged_until=here.log.last_day,
        pages=[PageProgressOut.of(page) for page in here.pages_in_hand],
        details_to_come=[PageProgressOut.of(page) for page in here.details_to_come],
        chart=ChartProgressOut.of(here.whole_chart),
        pace=pace,
        finish=FinishOut.of(next_.finish, asked.confidence),
        opening=None if next_.opening is None else OpeningOut.of(next_.opening),
        chart_finish=FinishOut.of(here.chart_finish(asked.confidence), asked.confidence),
        words="" if isinstance(next_.finish, NotEnough) else next_.words,
        why_not=next_.finish.why if isinstance(next_.finish, NotEnough) else "",
    )


@router.get("/rounds", summary="The rounds to come")
def get_rounds(
    game: str,
    asked: AskedFor,
    session: Reading,
    now: Now,
    most: Annotated[int, Query(ge=1, le=MOST_ROUNDS, description="At most so many.")] = 12,
) -> CalendarOut:
    """A calendar of the rounds that choose the pages still unstitched, each with its range.

    Which page wins is not known, so each has their mean; every range is wider than the one before.
    """
    kept = game_named(session, game)
    here = asked.situation(session, kept, now)
    found = here.calendar(plan_of(session, kept).rounds, asked.confidence, most)
    of_all = here.chart.page_count - len(here.stitched) - len(here.in_hand)
    if isinstance(found, NotEnough):
        return CalendarOut(rounds=[], of_all=of_all, why_not=found.why)
    rounds = [RoundToComeOut.of(one, asked.confidence) for one in found]
    return CalendarOut(rounds=rounds, of_all=of_all, why_not="")


@router.get("/needed", summary="What it would take to be done by a day")
def get_needed(
    game: str,
    asked: AskedFor,
    session: Reading,
    now: Now,
    by: Annotated[Day, Query(description="The day by whose end it is to be done.")],
    aim: Annotated[Aim, Query(description="The pages in hand, or the whole chart.")] = "page",
) -> NeededOut:
    """The stitches a day that it takes from today on, rests left out, beside the pace."""
    here = asked.situation(session, game_named(session, game), now)
    found = here.needed(aim, by, asked.confidence)
    what = "the chart" if aim == "chart" else pages_in_words(here.in_hand)
    return NeededOut.of(found, needed_words(what, found))


@router.get("/progress", summary="What was stitched, by update and by piece")
def get_progress(
    game: str,
    asked: AskedFor,
    session: Reading,
    now: Now,
    first: Annotated[Day | None, Query(description="Since that day; a fortnight if not.")] = None,
) -> ProgressOut:
    """The totals by piece since a day, and what every update of the game's piece brought."""
    here = asked.situation(session, game_named(session, game), now)
    told = since(here.log, first or fortnight_until(here.as_of), here.as_of)
    return ProgressOut.of(told, here.updates)


@router.get("/update", summary="The paragraph for the update post")
def get_update(
    game: str,
    asked: AskedFor,
    session: Reading,
    now: Now,
    first: Annotated[Day | None, Query(description="Since that day; a fortnight if not.")] = None,
) -> ParagraphOut:
    """Words ready to paste, checked for the sealed answer; the host names pieces and game."""
    kept = game_named(session, game)
    here = asked.situation(session, kept, now)
    told = update_paragraph(session, kept, here, first, asked.confidence)
    return ParagraphOut(text=told.text, stopped=told.stopped)


@router.get("/picture", summary="A picture of the log with the forecast")
def get_picture(
    game: str,
    asked: AskedFor,
    session: Reading,
    now: Now,
    page: Annotated[int | None, Query(description="The page; that in hand if not.")] = None,
) -> PictureOut:
    """What was stitched of a page day by day, and the range in which it will be finished (SVG)."""
    kept = game_named(session, game)
    here = asked.situation(session, kept, now)
    return PictureOut(svg=picture_of(kept, here, asked.confidence, page))


@router.get("/plan", summary="How rounds are planned, and what is shown")
def get_plan(game: str, session: Reading) -> PlanOut:
    """The plan, with the stitches that were told by hand."""
    return _plan(session, game_named(session, game))


@router.put("/plan", summary="Plan the rounds, and choose what is shown")
def put_plan(game: str, plan: PlanIn, session: Writing) -> PlanOut:
    """Keeps the plan in place of the one before; what is left out is as in a new game."""
    kept = game_named(session, game)
    change_plan(session, kept, plan.to_plan())
    return _plan(session, kept)


@router.put("/pages/{page}", summary="Tell the stitches of a page")
def put_page_stitches(
    game: str, page: Annotated[int, Path()], told: PageStitchesIn, session: Writing
) -> PlanOut:
    """Keeps the crosses of a page and its details as counts of their own, entered by hand."""
    kept = game_named(session, game)
    tell_page_stitches(session, kept, page, told.to_told())
    return _plan(session, kept)


def _plan(session: Session, game: GameRow) -> PlanOut:
    plan = plan_of(session, game)
    return PlanOut(
        round_days=plan.rounds.round_days,
        margin_days=plan.rounds.margin_days,
        every=plan.every,
        shows=list(plan.shows),
        pages=[PageStitchesOut.of(row) for row in page_rows(session, game)],
    )
