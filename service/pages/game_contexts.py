"""What the desk of one game shows: its map, its rounds, its guesses in short."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import ClassVar

from markupsafe import Markup
from sqlmodel import Session

from service.announce.map_picture import Look, draw_map
from service.announce.page_map import PageMap, map_in_words
from service.comments.times import zone_of
from service.counting.wording import how_many
from service.pace.forecast import CONFIDENCE
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_frame import (
    GameBar,
    TimeShown,
    desk_address,
    game_bar,
    round_address,
    time_or_none,
)
from service.pages.rendering import Context, inline
from service.store.games import chart_of, page_states
from service.store.pace import situation_of, what_is_next
from service.store.pictures import map_of_game
from service.store.rounds import all_rounds
from service.store.stitch_log import today_of
from service.store.tables import GameRow, RoundRow
from service.store.window import guessing_state

STATES = (("stitched", "Stitched"), ("in hand", "In hand"), ("unstitched", "Not stitched yet"))


@dataclass(frozen=True, slots=True)
class RoundLine:
    """A round in the game's list."""

    title: str
    to: str
    state: str
    closes: TimeShown | None
    winner: int | None


@dataclass(frozen=True, slots=True)
class GamePage(Context):
    """The desk of a game."""

    template: ClassVar[str] = "game.html"

    frame: Frame
    bar: GameBar
    done: str
    picture: Markup
    in_words: str
    stitched: str
    rounds: tuple[RoundLine, ...]
    may_draft: bool
    guessing: str
    sealed: bool
    pace: str


@dataclass(frozen=True, slots=True)
class PageOfChart(Context):
    """One page of the chart, and what state it is in."""

    template: ClassVar[str] = "chart_page.html"

    frame: Frame
    bar: GameBar
    page: int
    state: str
    states: tuple[tuple[str, str], ...]
    beside: str
    typed: Typed


def game_page(
    session: Session, desk: SignedIn, game: GameRow, now: datetime, done: str = ""
) -> GamePage:
    """The desk of a game as it stands."""
    at = desk_address(game.slug)
    states, chart, rounds = page_states(session, game), chart_of(game), all_rounds(session, game)
    shown = map_of_game(session, game)
    here = situation_of(session, game, today_of(game, now))
    return GamePage(
        frame=desk.frame(game.name, at),
        bar=game_bar(session, game, now, at),
        done=done,
        picture=map_with_links(shown, at),
        in_words=map_in_words(shown),
        stitched=f"{len(states.stitched):,} of {how_many(chart.page_count, 'page')} stitched",
        rounds=tuple(_line(game, row) for row in reversed(rounds)),
        may_draft=not any(row.state == "draft" and row.runoff_of is None for row in rounds),
        guessing=guessing_state(game, now),
        sealed=game.seal is not None,
        pace=what_is_next(session, game, here, CONFIDENCE).words,
    )


def map_with_links(shown: PageMap, at: str) -> Markup:
    """The map, with every page leading to where its state is said."""
    links = {page: f"{at}/pages/{page}" for page in shown.chart.pages}
    drawn = draw_map(replace(shown, title="Pages"), Look(heading=False, links=links))
    return inline(drawn)


def page_of_chart(
    session: Session,
    desk: SignedIn,
    game: GameRow,
    page: int,
    now: datetime,
    typed: Typed = NOTHING,
) -> PageOfChart:
    """One page of the chart."""
    at = f"{desk_address(game.slug)}/pages/{page}"
    beside = sorted(chart_of(game).neighbours(page))
    return PageOfChart(
        frame=desk.frame(f"Page {page}", at),
        bar=game_bar(session, game, now, at),
        page=page,
        state=page_states(session, game).state_of(page),
        states=STATES,
        beside=", ".join(map(str, beside)) or "none",
        typed=typed,
    )


def round_title(row: RoundRow) -> str:
    """What a round is called."""
    if row.runoff_of is not None:
        return f"Round {row.number}, runoff of round {row.runoff_of}"
    return f"Round {row.number}"


def _line(game: GameRow, row: RoundRow) -> RoundLine:
    return RoundLine(
        title=round_title(row),
        to=round_address(game.slug, row.number),
        state=row.state,
        closes=time_or_none(row.closes, zone_of(game.zone)),
        winner=None if row.result is None else row.result["winner"],
    )
