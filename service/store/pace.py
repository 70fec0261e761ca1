"""The pace of a stored game: its situation, the words to paste, and what everybody may see."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from sqlmodel import Session

from service.announce.pace_picture import PacePicture, pace_picture, points_of
from service.announce.pace_words import (
    UpdatePost,
    finish_words,
    open_now_words,
    opening_day_words,
    update_words,
)
from service.counting.wording import pages_in_words
from service.errors import BadRules, NotFound
from service.pace.forecast import CONFIDENCE, Finish, NotEnough
from service.pace.progress import ChartProgress, PageProgress, since
from service.pace.rounds import Opening, RoundPlan
from service.pace.settled import up_to
from service.pace.situation import Situation
from service.store.answers import check_tells_nothing
from service.store.games import chart_of, page_states
from service.store.pace_plans import PacePlan, plan_of, told_stitches
from service.store.rounds import round_under_way
from service.store.stitch_log import log_of, settled
from service.store.tables import GameRow

#: An update post tells of so many days where nothing else is said.
_FORTNIGHT = timedelta(days=14)


@dataclass(frozen=True, slots=True)
class Paragraph:
    """Words for the update post; where they would tell the answer, why they are stopped."""

    text: str = ""
    stopped: str = ""


@dataclass(frozen=True, slots=True)
class Next:
    """When the pages in hand are finished and the next round is to open, in words too."""

    finish: Finish | NotEnough
    opening: Opening | None
    words: str


def situation_of(session: Session, game: GameRow, today: date) -> Situation:
    """Where the game stands on that day: its pages as they are now, its log until then."""
    states = page_states(session, game)
    log = settled(session, game, log_of(session, game))
    return Situation(
        chart=chart_of(game),
        told=told_stitches(session, game),
        stitched=states.stitched,
        in_hand=states.in_hand,
        log=up_to(log, today),
        as_of=today,
    )


def fortnight_until(today: date) -> date:
    """The first day of the fortnight that ends with that day."""
    return today - _FORTNIGHT + timedelta(days=1)


def what_is_next(session: Session, game: GameRow, here: Situation, confidence: float) -> Next:
    """The finish of the pages in hand and the opening of the next round.

    While a round is open or waits to be announced no other is to be opened.
    """
    plan = plan_of(session, game)
    finish, opening = here.next_round(plan.rounds, confidence)
    if isinstance(finish, NotEnough):
        return Next(finish, opening, finish.why)
    named = pages_in_words(here.in_hand)
    is_done = not any(page.left for page in here.pages_in_hand)
    words = finish_words(named, finish, confidence)
    if is_done:
        words = f"All crosses of {named} are done."
    under_way = round_under_way(session, game)
    if under_way is not None:
        opening = None
        state = f"Round {under_way.number} is {under_way.state}"
        words += f" {state}: announce it before another one is opened."
    elif opening is not None:
        words += " " + (open_now_words(opening) if is_done else opening_day_words(opening))
    return Next(finish, opening, words)


def update_paragraph(
    session: Session,
    game: GameRow,
    here: Situation,
    first: date | None = None,
    confidence: float = CONFIDENCE,
) -> Paragraph:
    """The paragraph for the update post, told since `first`; a fortnight, if that is left out.

    It is checked for the sealed answer: pieces and the game are named by the host.

    Raises:
        BadLog: `first` is still to come.
    """
    told = since(here.log, first or fortnight_until(here.as_of), here.as_of)
    finish, _ = here.next_round(plan_of(session, game).rounds, confidence)
    post = UpdatePost(
        game=game.name,
        pages=here.pages_in_hand,
        chart=here.whole_chart,
        since=told,
        finish=finish,
        confidence=confidence,
        details=here.details_to_come,
    )
    try:
        check_tells_nothing(session, game, game.name, "the game's name")
        for piece in told.pieces:
            # Not quoted: the message must not tell what the paragraph must not.
            check_tells_nothing(session, game, piece.piece, "the name of another piece")
    except BadRules as trouble:
        return Paragraph(stopped=str(trouble))
    return Paragraph(update_words(post))


def picture_of(
    game: GameRow, here: Situation, confidence: float | None, page: int | None = None
) -> str:
    """The picture of a page's log; of the page in hand, if none is named.

    It shows the forecast with that `confidence`, without one none.

    Raises:
        NotFound: nothing is logged of that page, or its stitches are not known.
    """
    wanted = page if page is not None else next(iter(reversed(here.in_hand)), None)
    if wanted is None:
        raise NotFound("page in hand", game.slug, "name a page, or put one in hand")
    total = here.totals.get(wanted)
    log = [(one.first, one.last, one.done) for one in here.log.of_game if one.entry.page == wanted]
    if not log or total is None:
        todo = "log it first" if total else "tell its stitches first"
        raise NotFound("picture of page", str(wanted), todo)
    finish: Finish | NotEnough | None = None
    if confidence is not None and here.in_hand == (wanted,):
        finish, _ = here.next_round(RoundPlan(), confidence)
    return pace_picture(
        PacePicture(
            game=game.name,
            page=wanted,
            points=points_of(log),
            total=total,
            finish=finish if isinstance(finish, Finish) else None,
            confidence=confidence or CONFIDENCE,
            rests=here.log.rests,
        )
    )


@dataclass(frozen=True, slots=True)
class Shown:
    """What everybody may see of the pace: None is not shown, or there is nothing to show."""

    pages: list[PageProgress] | None = None
    chart: ChartProgress | None = None
    finish: Finish | None = None
    next_opening: date | None = None
    picture: str | None = None
    update: str | None = None


def shown_of(session: Session, game: GameRow, today: date) -> Shown:
    """What the host chose to show. Nothing else of the log is worked out for the public."""
    plan = plan_of(session, game)
    if not plan.shows:
        return Shown()
    here = situation_of(session, game, today)
    coming = what_is_next(session, game, here, CONFIDENCE)
    finish, opening = coming.finish, coming.opening
    update = None
    if "update" in plan.shows:
        update = update_paragraph(session, game, here).text or None
    return Shown(
        pages=list(here.pages_in_hand) if "page" in plan.shows else None,
        chart=here.whole_chart if "chart" in plan.shows else None,
        finish=finish if "forecast" in plan.shows and isinstance(finish, Finish) else None,
        next_opening=opening.sensible if "next round" in plan.shows and opening else None,
        picture=_shown_picture(game, here, plan) if "picture" in plan.shows else None,
        update=update,
    )


def _shown_picture(game: GameRow, here: Situation, plan: PacePlan) -> str | None:
    confidence = CONFIDENCE if "forecast" in plan.shows else None
    try:
        return picture_of(game, here, confidence)
    except NotFound:
        return None
