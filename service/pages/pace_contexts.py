"""What desk and board show of the pace: the log, the forecast, when to open the next round."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar

from markupsafe import Markup
from sqlmodel import Session

from service.announce.instants import day_in_words
from service.announce.pace_words import finish_words, page_words, percent_in_words
from service.counting.wording import pages_in_words, sentence
from service.errors import NotFound
from service.pace.entry import PERCENT, Entry
from service.pace.forecast import CONFIDENCE, Finish
from service.pace.progress import ChartProgress, PageProgress
from service.pace.situation import Situation
from service.pace.standing import standing_entries
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_frame import GameBar, desk_address, game_bar
from service.pages.rendering import Context, inline
from service.store.games import page_states
from service.store.pace import picture_of, shown_of, situation_of, update_paragraph, what_is_next
from service.store.pace_plans import SHOWN, plan_of
from service.store.stitch_log import log_of, today_of
from service.store.tables import GameRow

#: How an entry tells its number.
HOWS = (
    ("on the day", "Stitches of that day"),
    ("since last time", "Stitches since the last entry"),
    ("so far", "Stitches of the page so far"),
    ("percent", "Percent of the page so far"),
)
_SHOWS = {
    "page": "How far the page in hand is",
    "chart": "How far the whole chart is",
    "forecast": "When the page will be finished",
    "next round": "When the next round opens",
    "picture": "A picture of the log",
    "update": "The paragraph for the update post",
}
_ENTRIES_SHOWN = 20


@dataclass(frozen=True, slots=True)
class PaceOnBoard:
    """What the host lets everybody see: sentences, the picture, her update post."""

    lines: tuple[str, ...]
    picture: Markup | None
    update: str


@dataclass(frozen=True, slots=True)
class LogLine:
    """An entry of the log that stands, in words."""

    number: int
    day: str
    said: str
    note: str


@dataclass(frozen=True, slots=True)
class PacePage(Context):
    """The stitch log at the desk. `logging` is the page in hand, None while there is none."""

    template: ClassVar[str] = "pace.html"

    frame: Frame
    bar: GameBar
    done: str
    coming: str
    lines: tuple[str, ...]
    picture: Markup | None
    update: str
    stopped: str
    logging: int | None
    today: str
    hows: tuple[tuple[str, str], ...]
    entries: tuple[LogLine, ...]
    round_days: int
    margin_days: int
    every: int | None
    shows: tuple[str, ...]
    showable: tuple[tuple[str, str], ...]
    typed: Typed


def pace_on_board(session: Session, game: GameRow, now: datetime) -> PaceOnBoard | None:
    """What everybody may see of the pace; None for nothing."""
    shown = shown_of(session, game, today_of(game, now))
    lines = [*(page_line(page) for page in shown.pages or ())]
    if shown.chart is not None:
        lines.append(chart_line(shown.chart))
    if shown.finish is not None:
        lines.append(_finish_line(session, game, shown.finish))
    if shown.next_opening is not None:
        lines.append(f"The next round is planned for {day_in_words(shown.next_opening)}.")
    if not (lines or shown.picture or shown.update):
        return None
    picture = inline(shown.picture) if shown.picture else None
    return PaceOnBoard(tuple(lines), picture, shown.update or "")


def pace_page(
    session: Session,
    desk: SignedIn,
    game: GameRow,
    moment: tuple[datetime, str],
    typed: Typed = NOTHING,
) -> PacePage:
    """The stitch log and what follows from it; the moment is now, and what was just done."""
    now, done = moment
    today, plan = today_of(game, now), plan_of(session, game)
    here = situation_of(session, game, today)
    post = update_paragraph(session, game, here)
    at = f"{desk_address(game.slug)}/pace"
    return PacePage(
        frame=desk.frame("Pace", at),
        bar=game_bar(session, game, now, at),
        done=done,
        coming=what_is_next(session, game, here, CONFIDENCE).words,
        lines=(*map(page_line, here.pages_in_hand), chart_line(here.whole_chart)),
        picture=_picture(game, here),
        update=post.text,
        stopped=post.stopped,
        logging=here.in_hand[-1] if here.in_hand else None,
        today=today.isoformat(),
        hows=HOWS,
        entries=_entries(log_of(session, game)),
        round_days=plan.rounds.round_days,
        margin_days=plan.rounds.margin_days,
        every=plan.every,
        shows=plan.shows,
        showable=tuple((what, _SHOWS[what]) for what in SHOWN),
        typed=typed,
    )


def page_line(page: PageProgress) -> str:
    """How far a page is, as a sentence."""
    return f"{sentence(page_words(page))}."


def chart_line(chart: ChartProgress) -> str:
    """How far the chart is, as a sentence."""
    return f"The whole chart is at {percent_in_words(chart.percent)}."


def _finish_line(session: Session, game: GameRow, finish: Finish) -> str:
    return finish_words(pages_in_words(page_states(session, game).in_hand), finish, CONFIDENCE)


def _picture(game: GameRow, here: Situation) -> Markup | None:
    try:
        return inline(picture_of(game, here, CONFIDENCE))
    except NotFound:
        return None  # nothing is logged of the page in hand


def _entries(log: tuple[Entry, ...]) -> tuple[LogLine, ...]:
    """The newest entries that stand, newest first."""
    standing = sorted(
        (one.entry for one in standing_entries(log)), key=lambda one: (one.day, one.number)
    )
    newest = standing[: -_ENTRIES_SHOWN - 1 : -1]
    return tuple(LogLine(one.number, day_in_words(one.day), _said(one), one.note) for one in newest)


def _said(one: Entry) -> str:
    if one.is_rest:
        return "a rest" if one.first is None else f"a rest since {day_in_words(one.first)}"
    of = f"page {one.page}" if one.page is not None else one.piece
    if one.how == "percent":
        return f"{of}: {one.amount / PERCENT:g} %"
    told = {"on the day": "", "since last time": " since last time", "so far": " so far"}
    return f"{of}: {one.amount:,} stitches{told[one.how]}"
