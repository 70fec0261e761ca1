"""A round played in the store, step by step, each step one transaction."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session

from service.counting.round import Ruling
from service.store.announcing import announce_round
from service.store.counting import count_stored
from service.store.database import Database
from service.store.games import game_named
from service.store.opening import open_round
from service.store.pages import say_page
from service.store.round_rules import DraftRules
from service.store.rounds import close_round, draft_round, round_numbered
from service.store.rulings import pick_page, rule_on_comment
from service.store.tables import GameRow, RoundRow
from tests.store.handing_in import OPENS, after

RULES = DraftRules(opens=OPENS, closes=after(48))


def found(session: Session, game: str, number: int = 1) -> tuple[GameRow, RoundRow]:
    row = game_named(session, game)
    return row, round_numbered(session, row, number)


def draft(database: Database, game: str, rules: DraftRules = RULES) -> int:
    with database.writing() as session:
        return draft_round(session, game_named(session, game), rules, OPENS).number


def opened(database: Database, game: str, number: int = 1, now: datetime = OPENS) -> None:
    with database.writing() as session:
        open_round(session, *found(session, game, number), now)


def closed(database: Database, game: str, at: datetime | None = None, hours: float = 49) -> None:
    with database.writing() as session:
        close_round(session, found(session, game)[1], at, after(hours))


def announced(database: Database, game: str, number: int = 1, *, keeps: bool = False) -> None:
    with database.writing() as session:
        row = found(session, game, number)
        announce_round(session, *row, keeps_in_hand=keeps, now=after(50))


def put_page(database: Database, game: str, page: int, state: str, hours: float = 0) -> None:
    with database.writing() as session:
        say_page(session, game_named(session, game), page, state, after(hours))  # type: ignore[arg-type]


def kept(database: Database, game: str, number: int = 1) -> RoundRow:
    with database.reading() as session:
        return found(session, game, number)[1]


def key_of(database: Database, game: str, words: str) -> str:
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    [key] = [comment.key for comment in counted.comments if comment.text == words]
    return key


def rule(database: Database, game: str, words: str, ruling: Ruling) -> None:
    key = key_of(database, game, words)
    with database.writing() as session:
        rule_on_comment(session, *found(session, game), key, ruling)


def pick(database: Database, game: str, page: int) -> None:
    with database.writing() as session:
        pick_page(session, *found(session, game), (page, "the thread is here"), after(49))
