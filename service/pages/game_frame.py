"""What stands around every page of a game on the desk: its bar, and what is next, always on top."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

from fastapi.responses import RedirectResponse, Response
from sqlmodel import Session

from service.announce.instants import instant_in_words, time_left
from service.announce.next_step import NextStep, Place, what_next
from service.comments.times import zone_of
from service.pages.rendering import NOT_KEPT
from service.store.desk_kept import KeptWhileStanding
from service.store.game_now import game_now, stand_of
from service.store.tables import GameRow


@dataclass(frozen=True, slots=True)
class TimeShown:
    """An instant in the game's zone in words, and for programs."""

    words: str
    exact: str


@dataclass(frozen=True, slots=True)
class NextShown:
    """What the host should do now: where, and by when."""

    what: str
    why: str
    to: str
    is_here: bool
    by: TimeShown | None
    left: str
    overdue: bool


@dataclass(frozen=True, slots=True)
class GameBar:
    """The game that a page is about, with the ways to its other pages."""

    name: str
    at: str
    board: str
    step: NextShown


def desk_address(slug: str) -> str:
    """Where a game's desk is."""
    return f"/desk/games/{slug}"


def round_address(slug: str, number: int) -> str:
    """Where a round is on the desk."""
    return f"{desk_address(slug)}/rounds/{number}"


def game_bar(
    session: Session, game: GameRow, now: datetime, here: str, *, quickly: bool = False
) -> GameBar:
    """The bar of a page of the game at the address `here`; see `game_now` for `quickly`."""

    def work_out() -> tuple[NextStep, int | None]:
        known = game_now(session, game, now, quickly=quickly)
        return what_next(known, now), None if known.round is None else known.round.number

    if quickly:
        # Good for as long as nothing changes and the minute lasts, in which a time may come.
        stands = (stand_of(session, game), now.replace(second=0, microsecond=0))
        step, number = _steps.of(session, game.slug, stands, work_out)
    else:
        step, number = work_out()
    return GameBar(
        name=game.name,
        at=desk_address(game.slug),
        board=f"/games/{game.slug}",
        step=_shown(step, game, number, (now, here)),
    )


_steps: KeptWhileStanding[tuple[NextStep, int | None]] = KeptWhileStanding()


def time_shown(at: datetime, zone: ZoneInfo, also: Sequence[ZoneInfo] = ()) -> TimeShown:
    """An instant in words, with the weekday."""
    return TimeShown(instant_in_words(at, zone, also), at.isoformat())


def time_or_none(at: datetime | None, zone: ZoneInfo) -> TimeShown | None:
    """The same, where there is one."""
    return None if at is None else time_shown(at, zone)


def typed_time(at: datetime | None, zone: ZoneInfo) -> str:
    """An instant as a field for local times holds it."""
    return "" if at is None else at.astimezone(zone).strftime("%Y-%m-%dT%H:%M")


def went_well(to: str, done: str = "") -> Response:
    """Where a form that was done leads; `done` names what the page then says."""
    path, mark, part = to.partition("#")
    joined = f"{path}{'&' if '?' in path else '?'}done={done}" if done else path
    return RedirectResponse(f"{joined}{mark}{part}", 303, dict(NOT_KEPT))


def _shown(
    step: NextStep, game: GameRow, number: int | None, moment: tuple[datetime, str]
) -> NextShown:
    now, here = moment
    to = _where(step.place, desk_address(game.slug), number)
    return NextShown(
        what=step.what,
        why=step.why,
        to=to,
        is_here=to.partition("?")[0].partition("#")[0] == here,
        by=time_or_none(step.by, zone_of(game.zone)),
        left="" if step.by is None or step.by <= now else time_left(now, step.by),
        overdue=step.overdue,
    )


def _where(place: Place, desk: str, number: int | None) -> str:
    at_round = f"{desk}/rounds/{number}"
    return {
        "game": desk,
        "new round": f"{desk}/rounds/new",
        "round": at_round,
        "hand in": f"{at_round}/hand-in",
        "looks": f"{at_round}/comments?show=look",
        "words": f"{at_round}/words",
        "guesses": f"{desk}/guesses",
        "prize": f"{desk}/guesses#prize",
        "answer": f"{desk}/guesses#seal",
    }[place]
