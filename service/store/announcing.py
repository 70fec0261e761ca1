"""Announcing a round, and announcing it again where it was counted anew.

An announced result is a revision with its record. Whatever changes afterwards, a ruling or an
export that was found late, changes no revision: the host announces another one, with a reason.
"""

from __future__ import annotations

import secrets
from datetime import datetime

from sqlmodel import Session, select

from service.errors import BadRules, WrongState
from service.store.answers import check_announcement, check_tells_nothing
from service.store.columns import id_of
from service.store.counting import count_stored
from service.store.games import page_states, set_page, take_game
from service.store.opening import SALT_BYTES
from service.store.readings import Counted
from service.store.revisions import (
    is_the_same_count,
    keep_revision,
    public_result,
    record_now,
    revisions_of,
)
from service.store.rounds import name_of, next_number, round_numbered, take_round
from service.store.tables import GameRow, RoundRow
from service.store.words import stored_result


def announce_round(
    session: Session, game: GameRow, row: RoundRow, *, keeps_in_hand: bool, now: datetime
) -> None:
    """Announce a closed round. The winner's page is in hand from now on.

    The pages in hand before become stitched, unless the host keeps them in hand. A runoff puts no
    page in hand by itself: the round whose tie it breaks is announced with it.

    Raises:
        WrongState: it is not closed, undecided, or an open look could change the winner.
        BadRules: the host's words in it would give the sealed answer away.
    """
    take_game(session, game)
    take_round(session, row)
    if row.state != "closed":
        todo = "an announced result stays" if row.state == "announced" else "close it first"
        raise WrongState(name_of(row), row.state, "announced", todo)
    # Who waited for the closing to be kept announces after it all the same.
    now = max(now, row.closed or now)
    counted = count_stored(session, game, row, most=0)
    _check_decided(row, counted)
    row.state, row.announced = "announced", now
    _keep(session, game, row, counted, (None, now))
    if row.runoff_of is not None:
        _announce_first(session, game, row, keeps_in_hand=keeps_in_hand, now=now)
        return
    winner = counted.result.winner
    if winner is None:
        return
    if not keeps_in_hand:
        for page in page_states(session, game).in_hand:
            set_page(session, game, page, "stitched", now)
    set_page(session, game, winner, "in hand", now)


def revise_round(
    session: Session, game: GameRow, row: RoundRow, reason: str, now: datetime
) -> None:
    """Announce the round's count as it is now, as a new revision. No page changes its state by it.

    A new revision of a runoff makes one of the round whose tie it breaks as well.

    Raises:
        WrongState: the round is not announced, its count is the same, undecided, or an open look
            could change the winner.
        BadRules: no reason, or words of the host that would give the sealed answer away.
    """
    take_game(session, game)
    take_round(session, row)
    if row.state != "announced":
        raise WrongState(name_of(row), row.state, "announced again", "announce it first")
    if not reason.strip():
        raise BadRules("a new revision has no reason", "say in a few words why")
    check_tells_nothing(session, game, reason, "the reason for the new revision")
    counted = count_stored(session, game, row, most=0)
    _check_decided(row, counted)
    _keep(session, game, row, counted, (reason.strip(), now))
    if row.runoff_of is not None:
        first = round_numbered(session, game, row.runoff_of)
        if first.state == "announced":
            again = f"{name_of(row)}, its runoff, was counted again: {reason.strip()}"
            revise_round(session, game, first, again, now)


def _announce_first(
    session: Session, game: GameRow, runoff: RoundRow, *, keeps_in_hand: bool, now: datetime
) -> None:
    """Announce the round whose tie the runoff breaks, where nothing else stands in the way."""
    first = session.exec(
        select(RoundRow).where(RoundRow.game_id == id_of(game), RoundRow.number == runoff.runoff_of)
    ).one()
    take_round(session, first)
    if first.state != "closed":
        return
    counted = count_stored(session, game, first, most=0)
    if counted.result.winner is not None and not counted.change.possible:
        announce_round(session, game, first, keeps_in_hand=keeps_in_hand, now=now)


def _keep(
    session: Session,
    game: GameRow,
    row: RoundRow,
    counted: Counted,
    said: tuple[str | None, datetime],
) -> None:
    """Keep the count as the newest revision, with its record and its words."""
    check_announcement(session, game, counted.round_input.host_pick)
    if row.salt is None:
        # Opened before there were records.
        row.salt = secrets.token_hex(SALT_BYTES)
    before = revisions_of(session, row)
    if before:  # the same of the revision that this one follows
        said = (said[0], max(said[1], before[-1].announced))
    about, record = record_now(session, game, row, said)
    if before and is_the_same_count(record, before[-1]):
        raise WrongState(
            name_of(row), "announced", "announced again", "its count is the same as before"
        )
    taken = page_states(session, game).taken
    words = stored_result(
        counted, game, row, taken=taken, digest=record.digest, to_come=next_number(session, game)
    )
    keep_revision(session, row, about, record, public_result(counted, words))


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
        waits = result.steps[-1] if result.steps and result.steps[-1].waits else None
        todo = f"pick one of the tied pages {tied} first"
        if waits is not None and waits.rule != "host's pick":
            todo = _lower(waits.why)
        raise WrongState(name_of(row), "undecided", "announced", todo)


def _lower(sentence: str) -> str:
    return sentence[:1].lower() + sentence[1:].rstrip(".")
