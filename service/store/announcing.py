"""Announcing a round: refused while undecided, then kept as it was, and its page put in hand."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlmodel import Session, col, update

from service.counting.result import TieStep
from service.errors import WrongState
from service.store.answers import check_announcement
from service.store.columns import id_of
from service.store.counting import count_stored
from service.store.games import page_states, set_page
from service.store.readings import Counted
from service.store.rounds import name_of, take_round
from service.store.tables import GameRow, RoundRow
from service.store.words import stored_result


def announce_round(
    session: Session, game: GameRow, row: RoundRow, *, keeps_in_hand: bool, now: datetime
) -> None:
    """Announce a closed round. The winner's page is in hand from now on.

    The pages in hand before become stitched, unless the host keeps them in hand.

    Raises:
        WrongState: it is not closed, undecided, or an open look could change the winner.
        BadRules: the host's words in it would give the sealed answer away.
    """
    take_round(session, row)
    if row.state != "closed":
        todo = "an announced result stays" if row.state == "announced" else "close it first"
        raise WrongState(name_of(row), row.state, "announced", todo)
    counted = count_stored(session, game, row, most=0)
    _check_decided(row, counted)
    check_announcement(session, game, counted.round_input.host_pick)
    words = stored_result(counted, game, row, page_states(session, game).taken)
    session.exec(
        update(RoundRow)
        .where(col(RoundRow.id) == id_of(row), col(RoundRow.state) == "closed")
        .values(state="announced", announced=now, result=_kept(counted, words))
    )
    session.refresh(row)
    winner = counted.result.winner
    if winner is None:
        return
    if not keeps_in_hand:
        for page in page_states(session, game).in_hand:
            set_page(session, game, page, "stitched", now)
    set_page(session, game, winner, "in hand", now)


def _check_decided(row: RoundRow, counted: Counted) -> None:
    """Whether there is a result that no open look can change. Nobody's vote is a result too."""
    result = counted.result
    if counted.change.possible:
        raise WrongState(
            name_of(row),
            "undecided",
            "announced",
            f"rule on the comments that need a look, since {_lower(counted.change.why)}",
        )
    if result.undecided:
        tied = ", ".join(str(page) for page in result.undecided)
        raise WrongState(
            name_of(row), "undecided", "announced", f"pick one of the tied pages {tied} first"
        )


def _kept(counted: Counted, words: str) -> dict[str, Any]:
    """The result as the row keeps it: for everybody, so without a voter's name or words."""
    result = counted.result
    return {
        "winner": result.winner,
        "tally": [{"page": page, "votes": votes} for page, votes in result.tally],
        "steps": [_step(step) for step in result.steps],
        "why": result.why,
        "comments": result.figures.comments,
        "ballots": result.figures.ballots,
        "set_aside": dict(result.figures.set_aside),
        "looks": result.figures.looks,
        "looks_why": counted.change.why,
        "announcement": words,
    }


def _step(step: TieStep) -> dict[str, Any]:
    return {
        "rule": step.rule,
        "tied": list(step.tied),
        "kept": list(step.kept),
        "why": step.why,
        "values": [list(value) for value in step.values],
    }


def _lower(sentence: str) -> str:
    return sentence[:1].lower() + sentence[1:].rstrip(".")
