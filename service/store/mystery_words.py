"""Announcements of a stored game's mystery, each checked before it is shown as ready."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from sqlmodel import Session

from service.announce.mystery_words import (
    Guessing,
    asked_for_words,
    claim_reminder,
    ending_of_guessing,
    opening_of_guessing,
    reveal_words,
    sent_words,
)
from service.comments.times import zone_of
from service.errors import BadRules
from service.store.announcing_settings import announcing_of
from service.store.answers import check_tells_nothing
from service.store.prizes import prize_of
from service.store.reveals import revealed_of
from service.store.tables import GameRow
from service.store.tables_mystery import WinnerRow
from service.store.window import guessing_state
from service.store.winners import told_of, winners_of

Occasion = Literal[
    "opening of guessing",
    "end of guessing",
    "winner",
    "claim reminder",
    "prize asked for",
    "prize sent",
    "prize passed on",
    "reveal",
]


@dataclass(frozen=True, slots=True)
class Announcement:
    """Words to paste for an occasion; where they would tell the answer, why they are stopped."""

    occasion: Occasion
    text: str = ""
    stopped: str = ""


def mystery_announcements(
    session: Session, game: GameRow, now: datetime
) -> tuple[Announcement, ...]:
    """All that can be announced by now, in the order of the game."""
    return tuple(
        _checked(session, game, occasion, text, of_host)
        for occasion, text, of_host in _ready(session, game, now)
    )


def _checked(
    session: Session, game: GameRow, occasion: Occasion, text: str, of_host: dict[str, str]
) -> Announcement:
    """The announcement, unless the words that are not Loopstart's own give the answer away."""
    try:
        for what, words in of_host.items():
            check_tells_nothing(session, game, words, what)
    except BadRules as told:
        return Announcement(occasion, stopped=str(told))
    return Announcement(occasion, text)


def _ready(
    session: Session, game: GameRow, now: datetime
) -> Iterator[tuple[Occasion, str, dict[str, str]]]:
    named = {"the game's name": game.name}
    zone = zone_of(game.zone)
    also = announcing_of(session, game).also
    prize = prize_of(session, game)
    offered = dict(named)
    if prize is not None:
        offered |= {
            "what the prize offers": prize.offer,
            "where the prize may be chosen from": prize.choose_from,
        }
    if game.guesses_open is not None and game.seal is not None:
        yield "opening of guessing", opening_of_guessing(_guessing(session, game)), offered
        if guessing_state(game, now) == "ended" and game.guesses_close is not None:
            ended = ending_of_guessing(game.name, game.guesses_close, zone, also)
            yield "end of guessing", ended, named
    for row in winners_of(session, game):
        by_author = offered | {"the winner's name": row.author, "the reason": row.reason}
        occasion: Occasion = "prize passed on" if row.cause == "passed on" else "winner"
        yield occasion, row.announcement, by_author
        for what, words in _of_claim(session, game, row, now):
            yield what, words, by_author
    if game.revealed is not None:
        told = revealed_of(session, game)
        answer = told.answer
        aliases = (*answer.aliases, *(note.alias for note, _ in told.notes))
        seal = (told.seal, told.salt.hex())
        yield "reveal", reveal_words(game.name, answer.title, answer.designer, aliases, seal), {}


def _of_claim(
    session: Session, game: GameRow, row: WinnerRow, now: datetime
) -> Iterator[tuple[Occasion, str]]:
    """What there is to say of one winner's claim."""
    if row.claim_by is None or row.passed_on is not None:
        return
    if row.asked_at is None and now < row.claim_by:
        yield "claim reminder", claim_reminder(told_of(session, game, row))
    if row.asked_at is not None:
        yield "prize asked for", asked_for_words(game.name, row.author)
    if row.sent_at is not None:
        yield (
            "prize sent",
            sent_words(
                game.name,
                row.author,
                row.sent_at,
                zone_of(game.zone),
                announcing_of(session, game).also,
            ),
        )


def _guessing(session: Session, game: GameRow) -> Guessing:
    if game.guesses_open is None or game.seal is None:
        raise TypeError("the opening is announced of guessing that has one")
    prize = prize_of(session, game)
    return Guessing(
        game=game.name,
        zone=zone_of(game.zone),
        wants=game.wants,  # type: ignore[arg-type]  # checked when it was kept
        names_per_comment=game.names_per_comment,
        per_voter=game.guesses_per_voter,
        opens=game.guesses_open,
        ends=game.guesses_close,
        seal=game.seal,
        offer="" if prize is None else prize.offer,
        choose_from="" if prize is None else prize.choose_from,
        claim_days=0 if prize is None else prize.claim_days,
        also=announcing_of(session, game).also,
    )
