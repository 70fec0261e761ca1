"""What the host says of pages. A page that is being voted on stays unstitched until announced."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session, col, select

from service.errors import WrongState
from service.store.columns import id_of
from service.store.games import PageState, set_page, take_game
from service.store.rounds import name_of
from service.store.tables import GameRow, RoundRow


def say_page(session: Session, game: GameRow, page: int, state: PageState, now: datetime) -> None:
    """Keep what state the host says a page is in. Saying it again changes nothing.

    Raises:
        PageNotOnChart: the chart has no such page.
        WrongState: a round that is not announced yet may choose it; stitched before that, it
            could win and be in hand once more.
    """
    take_game(session, game)
    if state != "unstitched":
        _check_not_voted_on(session, game, page, state)
    set_page(session, game, page, state, now)


def _check_not_voted_on(session: Session, game: GameRow, page: int, state: PageState) -> None:
    of_game = select(RoundRow).where(RoundRow.game_id == id_of(game))
    for row in session.exec(of_game.where(col(RoundRow.state).in_(("open", "closed")))):
        if page in (row.votable or ()):
            raise WrongState(
                f"page {page}",
                f"one of the pages that {name_of(row)} may choose",
                "put in hand" if state == "in hand" else "called stitched",
                f"announce {name_of(row)} first",
            )
