"""Draws: what is told of their sources after the voting, and all that is known of them."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session, col, select

from service.counting.sources import DrawInput, Told, check_told
from service.errors import BadDraw, WrongState
from service.store.answers import check_tells_nothing
from service.store.columns import id_of
from service.store.draw_sources import sources_of
from service.store.rounds import name_of, take_round
from service.store.tables import GameRow, RoundRow
from service.store.tables_counting import DrawNumbersRow, DrawValueRow


def tell_source(
    session: Session, game: GameRow, row: RoundRow, place: int, told: Told, now: datetime
) -> None:
    """Keep the numbers of a source, or the reason why it is left out. The last word holds.

    Raises:
        WrongState: the voting has not ended.
        BadDraw: there is no such source, or this cannot be told of it.
        BadRules: the reason gives the sealed answer away.
    """
    take_round(session, row)
    if row.state not in ("closed", "announced") or row.closes is None:
        raise WrongState(name_of(row), row.state, "given numbers of a draw", "close it first")
    sources = sources_of(row)
    if not 1 <= place <= len(sources):
        named = f"it has {len(sources)}" if sources else "it has none"
        raise BadDraw(
            f"{name_of(row)} has no source number {place} for its draw ({named})",
            "they were named before the opening, and none is added afterwards",
        )
    kept = check_told(sources[place - 1], told, row.closes, now)
    if kept.reason:
        check_tells_nothing(session, game, kept.reason, "the reason about a source of the draw")
    session.add(
        DrawNumbersRow(
            round_id=id_of(row), place=place, numbers=list(kept.numbers), reason=kept.reason, at=now
        )
    )
    session.flush()


def drawn_so_far(session: Session, row: RoundRow) -> DrawInput:
    """What is known for the draw; the own value only once the voting has ended."""
    if "draw" not in row.tie_breaks:
        return DrawInput()
    of_round = select(DrawNumbersRow).where(DrawNumbersRow.round_id == id_of(row))
    told = {
        kept.place: Told(tuple(kept.numbers), kept.reason)
        for kept in session.exec(of_round.order_by(col(DrawNumbersRow.id)))
    }
    value = None
    if row.state in ("closed", "announced"):
        own = session.get(DrawValueRow, id_of(row))
        value = None if own is None else own.value
    return DrawInput(tuple(sorted(told.items())), value)
