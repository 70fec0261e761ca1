"""Rounds: drafted, opened, closed. Each change of state happens once, whoever asks twice."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import Session, col, func, select, update

from service.errors import BadRules, NotFound, WrongState
from service.store.columns import id_of
from service.store.draw_sources import sources_of, sources_to_json
from service.store.games import chart_of, page_states, take_game
from service.store.round_rules import DraftRules, check_draft, check_times
from service.store.tables import GameRow, RoundRow

#: Made once: every page and every request of a round asks it.
_BY_NUMBER = select(RoundRow).where(
    RoundRow.game_id == bindparam("game"), RoundRow.number == bindparam("number")
)


def draft_round(session: Session, game: GameRow, rules: DraftRules, now: datetime) -> RoundRow:
    """Draft the game's next round.

    Raises:
        BadRules, ClosesBeforeOpening, PageNotOnChart: the rules cannot be.
        WrongState: there is a draft already.
    """
    check_draft(rules, chart_of(game))
    take_game(session, game)
    for other in all_rounds(session, game):
        if other.state == "draft" and other.runoff_of is None:
            raise WrongState(
                name_of(other), "a draft", "followed by another draft", "change it, or open it"
            )
    return add_draft(session, game, rules, now)


def add_draft(
    session: Session, game: GameRow, rules: DraftRules, now: datetime, runoff_of: int | None = None
) -> RoundRow:
    """Add a draft of the next number, which has been found fit."""
    row = RoundRow(
        game_id=id_of(game),
        number=_newest(session, game) + 1,
        created=now,
        runoff_of=runoff_of,
        **_kept(rules),
    )
    session.add(row)
    session.flush()
    return row


def change_draft(session: Session, game: GameRow, row: RoundRow, rules: DraftRules) -> None:
    """Give a draft other rules.

    Raises:
        BadRules, ClosesBeforeOpening, PageNotOnChart: the rules cannot be.
        WrongState: the round has been opened, and its rules are frozen.
    """
    check_draft(rules, chart_of(game))
    if row.runoff_of is not None and row.state == "draft":
        _check_runoff_stays(row, rules)
    if not move(session, row, "draft", "draft", **_kept(rules)):
        raise WrongState(
            name_of(row), row.state, "changed", "its rules were frozen when it was opened"
        )


def rules_of(row: RoundRow) -> DraftRules:
    """The rules that a row keeps."""
    return DraftRules(
        opens=row.opens,
        closes=row.closes,
        choices=row.choices,
        standing=row.standing,  # type: ignore[arg-type]  # checked when it was kept
        tie_breaks=tuple(row.tie_breaks),  # type: ignore[arg-type]  # the same
        previous=row.given_previous,
        sources=sources_of(row),
    )


def round_numbered(session: Session, game: GameRow, number: int) -> RoundRow:
    """The game's round of that number.

    Raises:
        NotFound: there is none.
    """
    row = session.exec(_BY_NUMBER, params={"game": id_of(game), "number": number}).first()
    if row is None:
        raise no_such_round(game, number)
    return row


def no_such_round(game: GameRow, number: int) -> NotFound:
    """The error for a round that is not there."""
    return NotFound("round", f"{game.slug} {number}", "check its number, or draft and open it")


def all_rounds(session: Session, game: GameRow) -> Sequence[RoundRow]:
    """The game's rounds by their numbers."""
    of_game = select(RoundRow).where(RoundRow.game_id == id_of(game))
    return session.exec(of_game.order_by(col(RoundRow.number))).all()


def round_under_way(session: Session, game: GameRow) -> RoundRow | None:
    """The round that is open, or closed and not announced yet; the last one where there are two."""
    rounds = [row for row in all_rounds(session, game) if row.state in ("open", "closed")]
    return rounds[-1] if rounds else None


def name_of(row: RoundRow) -> str:
    """The round as a sentence names it."""
    return f"round {row.number}"


def take_round(session: Session, row: RoundRow, *, to_hand_in: bool = False) -> None:
    """Have the round for this transaction alone: another one that takes it waits.

    Whoever also takes the game takes that first: else two could wait for each other for ever.
    `to_hand_in`: for comments that are handed in, which a board may be a little behind with.
    """
    counted = {"changes": col(RoundRow.changes) + 1}
    if to_hand_in:
        counted["handed_in"] = col(RoundRow.handed_in) + 1
    session.exec(update(RoundRow).where(col(RoundRow.id) == id_of(row)).values(**counted))
    session.refresh(row)


def take_opened_rounds(session: Session, game: GameRow) -> list[RoundRow]:
    """Have all rounds that are opened: what their comments say together then stays as it is.

    The game is taken before (see "At the same time" in DEVELOPERS.md).
    """
    rounds = [row for row in all_rounds(session, game) if row.state != "draft"]
    for row in rounds:
        take_round(session, row)
    return rounds


def chosen_last(session: Session, game: GameRow) -> int | None:
    """The page chosen last: the one put in hand last, else the last announced winner."""
    in_hand = page_states(session, game).in_hand
    if in_hand:
        return in_hand[-1]
    # A runoff decides for the round before it, which may be older than another one.
    rounds = [row for row in all_rounds(session, game) if row.runoff_of is None]
    winners = [row.result["winner"] for row in rounds if row.result]
    return next((winner for winner in reversed(winners) if winner is not None), None)


def close_round(session: Session, row: RoundRow, at: datetime | None, now: datetime) -> None:
    """Close an open round at its announced time, or, without one, at `at` or now.

    Raises:
        WrongState: it is not open, or its announced closing is still to come or another one.
        BadRules: `at` is still to come.
        ClosesBeforeOpening: `at` is not after the opening.
    """
    take_round(session, row)
    closes = _closing(row, at, now)
    if not move(session, row, "open", "closed", closes=closes, closed=now):
        raise WrongState(name_of(row), row.state, "closed", "only an open round can be closed")


def _closing(row: RoundRow, at: datetime | None, now: datetime) -> datetime:
    """When the voting ended."""
    if row.state != "open" or row.opens is None:
        raise WrongState(name_of(row), row.state, "closed", "only an open round can be closed")
    if row.closes is not None:
        announced = row.closes.isoformat().replace("+00:00", "Z")
        if at not in (None, row.closes):
            todo = f"its closing was announced as {announced} and stays"
            raise WrongState(name_of(row), "open", "closed at another time", todo)
        if now < row.closes:
            raise WrongState(name_of(row), "open", "closed yet", f"it closes at {announced}")
        return row.closes
    closes = now if at is None else at
    if closes > now:
        raise BadRules("the closing is still to come", "close the round at a time that has passed")
    check_times(row.opens, closes)
    return closes


def _check_runoff_stays(row: RoundRow, rules: DraftRules) -> None:
    """Whether only what a runoff's own draft may say is changed: its times and its draw's sources."""
    before = rules_of(row)
    same = replace(rules, opens=before.opens, closes=before.closes, sources=before.sources)
    if same != before:
        raise BadRules(
            f"{name_of(row)} is the runoff of round {row.runoff_of}, whose rules it goes by",
            "change only its times and the sources of its draw",
        )


def next_number(session: Session, game: GameRow) -> int:
    """The number of the round to come: the draft's where there is one, else the next."""
    rounds = all_rounds(session, game)
    drafts = [row.number for row in rounds if row.state == "draft" and row.runoff_of is None]
    return drafts[0] if drafts else _newest(session, game) + 1


def _newest(session: Session, game: GameRow) -> int:
    newest = session.exec(
        select(func.max(RoundRow.number)).where(RoundRow.game_id == id_of(game))
    ).one()
    return newest or 0


def move(session: Session, row: RoundRow, state: str, to: str, **values: Any) -> bool:
    """Change the row only if it still is in `state`; say whether it was, and read it anew."""
    changed = session.exec(
        update(RoundRow)
        .where(col(RoundRow.id) == id_of(row), col(RoundRow.state) == state)
        .values(state=to, changes=col(RoundRow.changes) + 1, **values)
    )
    session.refresh(row)
    return changed.rowcount == 1


def _kept(rules: DraftRules) -> dict[str, Any]:
    """The rules as a row keeps them."""
    return {
        "opens": rules.opens,
        "closes": rules.closes,
        "choices": rules.choices,
        "standing": rules.standing,
        "tie_breaks": list(rules.tie_breaks),
        "given_previous": rules.previous,
        "sources": sources_to_json(rules.sources),
    }
