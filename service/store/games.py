"""Games: made, found, their pages' states, and the seal on their answer."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal, get_args

from sqlalchemy import bindparam
from sqlmodel import Session, col, delete, select, update

from service.chart.grid import Chart
from service.chart.votable import NextFrom
from service.errors import AlreadyThere, BadRules, ClosesBeforeOpening, NotFound, PageNotOnChart
from service.mystery.answer import Wants
from service.store.charts import chart_from_json, chart_to_json
from service.store.columns import id_of, keep_new
from service.store.tables import GameRow, PageRow

PageState = Literal["stitched", "in hand", "unstitched"]
PAGE_STATES: tuple[PageState, ...] = get_args(PageState)
#: Made once: every page and every request asks it.
_BY_SLUG = select(GameRow).where(GameRow.slug == bindparam("slug"))
_SLUG = re.compile(r"[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?")


@dataclass(frozen=True, slots=True)
class NewGame:
    """What a host says when she makes a game; the answer is sealed apart."""

    slug: str
    name: str
    zone: str
    chart: Chart
    next_from: NextFrom = "the previous page"
    hosts: tuple[str, ...] = ()
    languages: tuple[str, ...] = ("en",)
    wants: Wants = "title"
    names_per_comment: int = 1
    guesses_per_voter: int | None = None
    guesses_open: datetime | None = None
    guesses_close: datetime | None = None


@dataclass(frozen=True, slots=True)
class PageStates:
    """The pages stitched, and those in hand, the one put in hand last coming last."""

    stitched: frozenset[int]
    in_hand: tuple[int, ...]

    @property
    def taken(self) -> frozenset[int]:
        """All that is stitched or in hand."""
        return self.stitched | frozenset(self.in_hand)

    def state_of(self, page: int) -> PageState:
        """The state of one page."""
        if page in self.stitched:
            return "stitched"
        return "in hand" if page in self.in_hand else "unstitched"


def make_game(session: Session, new: NewGame, now: datetime) -> GameRow:
    """Keep a new game.

    Raises:
        AlreadyThere: there is a game of that short name.
        BadRules: a short name that no address can hold.
        ClosesBeforeOpening: guessing would end before it begins.
    """
    check_short_name(new.slug)
    _check_guessing(new.guesses_open, new.guesses_close)
    row = GameRow(
        slug=new.slug,
        name=new.name,
        zone=new.zone,
        chart=chart_to_json(new.chart),
        next_from=new.next_from,
        hosts=list(new.hosts),
        languages=list(new.languages),
        wants=new.wants,
        names_per_comment=new.names_per_comment,
        guesses_per_voter=new.guesses_per_voter,
        guesses_open=new.guesses_open,
        guesses_close=new.guesses_close,
        created=now,
    )
    keep_new(session, row, AlreadyThere("game", new.slug, "choose another short name"))
    return row


def check_short_name(slug: str) -> None:
    """Whether an address can hold a game's short name.

    Raises:
        BadRules: it cannot.
    """
    if not _SLUG.fullmatch(slug):
        raise BadRules(
            f"the game's short name {slug!r} cannot stand in an address",
            "use 1 to 64 small letters a to z, digits and hyphens, no hyphen first or last",
        )


def change_game(session: Session, game: GameRow, change: Mapping[str, Any]) -> None:
    """Change what may change of a game: `change` are its fields by name.

    Raises:
        BadRules: a field that cannot be without a value.
        ClosesBeforeOpening: guessing would end before it begins.
    """
    take_game(session, game)
    for name, value in change.items():
        if value is None and name not in ("guesses_open", "guesses_close"):
            raise BadRules(f"the game's {name} cannot be left empty", "leave it out to keep it")
        setattr(game, name, value)
    _check_guessing(game.guesses_open, game.guesses_close)
    session.add(game)
    session.flush()


def remember_columns(session: Session, game: GameRow, columns: Mapping[str, str]) -> None:
    """Keep the columns that were named for an export, for those to come."""
    take_game(session, game)
    game.columns = dict(columns)
    session.add(game)
    session.flush()


def _check_guessing(opens: datetime | None, closes: datetime | None) -> None:
    if opens is not None and closes is not None and closes <= opens:
        raise ClosesBeforeOpening(opens.isoformat(), closes.isoformat())


def game_named(session: Session, slug: str) -> GameRow:
    """The game of that short name.

    Raises:
        NotFound: there is none.
    """
    # Anything else, such as a NUL that PostgreSQL refuses, cannot be the name of a game.
    found = None
    if _SLUG.fullmatch(slug):
        found = session.exec(_BY_SLUG, params={"slug": slug}).first()
    if found is None:
        raise NotFound("game", slug, "check its short name, or make the game first")
    return found


def all_games(session: Session) -> Sequence[GameRow]:
    """All games by their short names."""
    return session.exec(select(GameRow).order_by(col(GameRow.slug))).all()


def chart_of(game: GameRow) -> Chart:
    """The game's chart."""
    return chart_from_json(game.chart)


def take_game(session: Session, game: GameRow) -> None:
    """Have the game for this transaction alone: another one that takes it waits."""
    changes = col(GameRow.changes)
    session.exec(update(GameRow).where(col(GameRow.id) == id_of(game)).values(changes=changes + 1))
    session.refresh(game)


def page_states(session: Session, game: GameRow) -> PageStates:
    """The states of the game's pages."""
    rows = session.exec(
        select(PageRow)
        .where(PageRow.game_id == id_of(game))
        .order_by(col(PageRow.since), col(PageRow.page))
    ).all()
    return PageStates(
        frozenset(row.page for row in rows if row.state == "stitched"),
        tuple(row.page for row in rows if row.state == "in hand"),
    )


def set_page(session: Session, game: GameRow, page: int, state: PageState, now: datetime) -> None:
    """Say what state a page is in. Saying it again changes nothing.

    Raises:
        PageNotOnChart: the chart has no such page.
    """
    chart = chart_of(game)
    if page not in chart.pages:
        raise PageNotOnChart(page, chart.page_count)
    take_game(session, game)
    kept = session.get(PageRow, (id_of(game), page))
    if state == "unstitched":
        here = (col(PageRow.game_id) == id_of(game), col(PageRow.page) == page)
        session.exec(delete(PageRow).where(*here))
    elif kept is None:
        session.add(PageRow(game_id=id_of(game), page=page, state=state, since=now))
    elif kept.state != state:
        kept.state, kept.since = state, now
        session.add(kept)
    session.flush()
