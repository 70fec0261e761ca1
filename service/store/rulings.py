"""The host's rulings and picks: added with a reason, never changed, the last one holds."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session, col, select

from service.counting.acts import check_pick
from service.counting.round import Ruling
from service.counting.rulings import check_ruling
from service.errors import BadRules, WrongState
from service.store.answers import check_reason
from service.store.columns import id_of
from service.store.comments import comment_row
from service.store.counting import count_stored, counting_rules
from service.store.games import chart_of
from service.store.rounds import name_of, take_round
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import CommentRow, PickRow, RulingRow


def rule_on_comment(
    session: Session, game: GameRow, row: RoundRow, key: str, ruling: Ruling
) -> None:
    """Add a ruling on one comment of a round.

    Where the round is announced, its result stays until the host announces a new revision.

    Raises:
        NotFound: the round has no such comment.
        BadRuling: the ruling cannot be.
        WrongState: the round is a draft.
    """
    take_round(session, row)
    rules = counting_rules(row)
    comment = comment_row(session, row, key)
    check_ruling(ruling, rules, chart_of(game))
    session.add(
        RulingRow(
            comment_id=id_of(comment),
            pages=list(ruling.pages),
            withdraws=ruling.withdraws,
            in_time=ruling.in_time,
            reason=ruling.reason,
            at=_not_before_the_last(session, comment, ruling.at),
        )
    )
    session.flush()


def _not_before_the_last(session: Session, comment: CommentRow, at: datetime) -> datetime:
    """The time of a ruling: who waited for another one to be kept comes after it all the same."""
    of_comment = select(RulingRow.at).where(RulingRow.comment_id == id_of(comment))
    last = session.exec(of_comment.order_by(col(RulingRow.id).desc())).first()
    return at if last is None else max(at, last)


def pick_page(
    session: Session, game: GameRow, row: RoundRow, pick: tuple[int, str], now: datetime
) -> None:
    """Add the host's pick (page, reason) among the pages that the tie-breaks left tied.

    Raises:
        WrongState: the voting has not ended.
        BadRules: the round's chain of tie-breaks has no host's pick, or the reason, which will
            be read in public, gives the sealed answer away.
        BadRuling: no tie waits for a pick, the page is not among the tied, no reason is given.
    """
    take_round(session, row)
    if row.state not in ("closed", "announced"):
        raise WrongState(name_of(row), row.state, "given a pick", "close it first")
    if "host's pick" not in row.tie_breaks:
        raise BadRules(
            f"the tie-breaks of {name_of(row)} have no host's pick",
            "its chain was frozen at the opening and decides by itself",
        )
    page, reason = pick
    check_pick(page, reason, _waiting_for_pick(session, game, row))
    check_reason(session, game, pick)
    session.add(PickRow(round_id=id_of(row), page=page, reason=reason, at=now))
    session.flush()


def _waiting_for_pick(session: Session, game: GameRow, row: RoundRow) -> tuple[int, ...]:
    """The pages that the chain brings before the host; she may pick anew until announcing."""
    result = count_stored(session, game, row, most=0).result
    for step in result.steps:
        if step.rule == "host's pick":
            return step.tied
    return ()
