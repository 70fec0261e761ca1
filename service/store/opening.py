"""Opening a round: its rules, its votable pages and all that counting goes by are frozen."""

from __future__ import annotations

import secrets
from datetime import datetime
from typing import Any

from sqlmodel import Session

from service.chart.votable import Votable, votable_pages
from service.counting.sources import check_sources
from service.errors import WrongState
from service.store.draw_sources import keep_own_value, sources_of
from service.store.games import chart_of, page_states, take_game
from service.store.round_rules import check_times
from service.store.rounds import (
    all_rounds,
    chosen_last,
    move,
    name_of,
    round_numbered,
    take_round,
)
from service.store.runoffs import runoff_pages
from service.store.tables import GameRow, RoundRow

SALT_BYTES = 16


def votable_now(session: Session, game: GameRow, row: RoundRow) -> tuple[Votable, int | None]:
    """The pages that the draft would let voters choose if it opened now, and the page before."""
    if row.runoff_of is not None:
        first = round_numbered(session, game, row.runoff_of)
        return runoff_pages(session, game, first), first.previous
    previous = row.given_previous
    if previous is None:
        previous = chosen_last(session, game)
    taken = page_states(session, game).taken
    votable = votable_pages(chart_of(game), taken, game.next_from, previous)  # type: ignore[arg-type]
    return votable, previous


def open_round(session: Session, game: GameRow, row: RoundRow, now: datetime) -> None:
    """Open a draft: its rules, votable pages and the game's languages are frozen.

    Raises:
        WrongState: it is no draft, another round is not announced yet, or no page is left; of a
            runoff, there is no tie any more.
        ClosesBeforeOpening: its closing has passed.
        BadDraw: the numbers of a source would be known before the voting ends.
    """
    take_game(session, game)
    take_round(session, row)
    _check_may_open(session, game, row)
    opens = row.opens or now
    check_times(opens, row.closes)
    check_sources(sources_of(row), row.closes or opens)
    votable, previous = votable_now(session, game, row)
    if not votable.pages:
        raise WrongState(name_of(row), "a draft", "opened", _lower(votable.why))
    moved = move(
        session,
        row,
        "draft",
        "open",
        opens=opens,
        opened=now,
        previous=previous,
        votable=sorted(votable.pages),
        stitched=sorted(page_states(session, game).taken),
        languages=list(game.languages),
        hosts=list(game.hosts),
        salt=secrets.token_hex(SALT_BYTES),
        widened=votable.widened,
        why=votable.why,
        **_draw(session, game, row),
    )
    if not moved:
        raise WrongState(name_of(row), row.state, "opened", "a round is opened once")


def _check_may_open(session: Session, game: GameRow, row: RoundRow) -> None:
    """Whether it is a draft, and no other round stands before it but the one it is the runoff of."""
    if row.state != "draft":
        raise WrongState(name_of(row), row.state, "opened", "a round is opened once")
    for other in all_rounds(session, game):
        if other.state in ("open", "closed") and other.number != row.runoff_of:
            raise WrongState(
                name_of(other), other.state, "followed by another round", "announce it first"
            )


def _draw(session: Session, game: GameRow, row: RoundRow) -> dict[str, Any]:
    """What is published of the round's own value, where a tie may be drawn."""
    if "draw" not in row.tie_breaks:
        return {}
    return {"commitment": keep_own_value(session, game, row)}


def _lower(sentence: str) -> str:
    return sentence[:1].lower() + sentence[1:].rstrip(".")
