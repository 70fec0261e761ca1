"""A game's prize and its winners as the desk shows them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlmodel import Session

from service.comments.times import zone_of
from service.pages.game_frame import TimeShown, time_or_none, time_shown
from service.store.prizes import prize_of
from service.store.tables import GameRow
from service.store.tables_mystery import WinnerRow
from service.store.window import guessing_state
from service.store.winners import claim_of


@dataclass(frozen=True, slots=True)
class WinnerShown:
    """A winner as announced, with the claim."""

    number: int
    author: str
    cause: str
    announced: TimeShown
    claim: str
    claim_by: TimeShown | None
    asked_for: str
    is_last: bool


@dataclass(frozen=True, slots=True)
class PrizeShown:
    """The prize, and what can be done with it now."""

    offer: str
    choose_from: str
    days: str
    winners: tuple[WinnerShown, ...]
    may_change: bool
    may_ask: bool
    may_send: bool
    may_pass: bool


def prize_shown(
    session: Session, game: GameRow, winners: Sequence[WinnerRow], now: datetime
) -> PrizeShown:
    """The prize as it stands."""
    row = prize_of(session, game)
    claim = claim_of(winners[-1]) if winners else None
    state = None if claim is None else claim.state_at(now)
    changes = row is None or guessing_state(game, now) == "not open"
    return PrizeShown(
        offer="" if row is None else row.offer,
        choose_from="" if row is None else row.choose_from,
        days="14" if row is None else str(row.claim_days),
        winners=tuple(
            _winner(game, one, now, is_last=one is winners[-1]) for one in reversed(winners)
        ),
        may_change=changes and not winners,
        may_ask=state in ("to be claimed", "asked for", "unclaimed"),
        may_send=state == "asked for",
        may_pass=state in ("to be claimed", "unclaimed"),
    )


def _winner(game: GameRow, row: WinnerRow, now: datetime, *, is_last: bool) -> WinnerShown:
    claim, zone = claim_of(row), zone_of(game.zone)
    return WinnerShown(
        number=row.number,
        author=row.author,
        cause=row.cause,
        announced=time_shown(row.at, zone),
        claim="" if claim is None else claim.state_at(now),
        claim_by=time_or_none(None if claim is None else claim.claim_by, zone),
        asked_for=row.asked_for,
        is_last=is_last,
    )
