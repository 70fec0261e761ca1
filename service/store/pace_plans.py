"""What the host says of the pace: stitches by hand, how long rounds are, what the board shows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Literal, get_args

from sqlmodel import Session, select

from service.chart.stitches import NOTHING_TOLD, PageTold, ToldStitches, check_told
from service.errors import BadLog
from service.pace.rounds import RoundPlan
from service.store.columns import id_of
from service.store.games import chart_of, take_game
from service.store.tables import GameRow
from service.store.tables_pace import PacePlanRow, PageStitchesRow

Shown = Literal["page", "chart", "forecast", "next round", "picture", "update"]
SHOWN: tuple[Shown, ...] = get_args(Shown)


@dataclass(frozen=True, slots=True)
class PacePlan:
    """Rounds as planned, the crosses of a page that nothing else tells, and what everybody sees."""

    rounds: RoundPlan = field(default_factory=RoundPlan)
    every: int | None = None
    shows: tuple[Shown, ...] = ()


def plan_of(session: Session, game: GameRow) -> PacePlan:
    """The game's plan; without one, rounds of two days, a margin of one, and nothing shown."""
    row = session.get(PacePlanRow, id_of(game))
    if row is None:
        return PacePlan()
    shows = tuple(what for what in SHOWN if what in row.shows)
    return PacePlan(RoundPlan(row.round_days, row.margin_days), row.every, shows)


def keep_plan(session: Session, game: GameRow, plan: PacePlan) -> None:
    """Keep a plan in place of the one before. The caller checks the log against `every`.

    Raises:
        BadChart: pages of so many stitches cannot be.
        BadLog: something is to be shown that is not known.
    """
    take_game(session, game)
    for what in plan.shows:
        if what not in SHOWN:
            raise BadLog(f"{what!r} cannot be shown", f"show any of {', '.join(SHOWN)}")
    check_told(chart_of(game), ToldStitches(every=plan.every))
    row = session.get(PacePlanRow, id_of(game)) or PacePlanRow(
        game_id=id_of(game), round_days=1, margin_days=0, shows=[]
    )
    row.every, row.shows = plan.every, list(plan.shows)
    row.round_days, row.margin_days = plan.rounds.round_days, plan.rounds.margin_days
    session.add(row)
    session.flush()


def told_stitches(session: Session, game: GameRow) -> ToldStitches:
    """All stitches that the host told by hand."""
    pages = {row.page: _told(row) for row in page_rows(session, game)}
    return ToldStitches(plan_of(session, game).every, pages)


def page_rows(session: Session, game: GameRow) -> Sequence[PageStitchesRow]:
    """The pages of which something was told."""
    return session.exec(select(PageStitchesRow).where(PageStitchesRow.game_id == id_of(game))).all()


def keep_page_stitches(session: Session, game: GameRow, page: int, told: PageTold) -> None:
    """Keep what the host tells of a page; nothing told takes it away.

    Raises:
        BadChart: such a page cannot be.
        PageNotOnChart: there is no such page.
    """
    take_game(session, game)
    check_told(chart_of(game), ToldStitches(pages={page: told}))
    row = session.get(PageStitchesRow, (id_of(game), page))
    if told == NOTHING_TOLD:
        if row is not None:
            session.delete(row)
    else:
        row = row or PageStitchesRow(game_id=id_of(game), page=page)
        row.crosses, row.fractional = told.crosses, told.fractional
        row.backstitch, row.beads = told.backstitch, told.beads
        session.add(row)
    session.flush()


def _told(row: PageStitchesRow) -> PageTold:
    return PageTold(row.crosses, row.fractional, row.backstitch, row.beads)
