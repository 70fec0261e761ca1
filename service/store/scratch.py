"""A round that is counted without being stored: in a database that is a file without a name.

So a count of a million comments needs no more memory than one that is stored, and nothing is left
of it, whatever happens.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime

from sqlalchemy import StaticPool
from sqlmodel import Session, create_engine

from service.ballots.reading import Question
from service.counting.round import RoundRules
from service.store.charts import chart_to_json
from service.store.columns import id_of, metadata
from service.store.tables import GameRow, RoundRow

_SWIFT = (
    "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -16000;"
    "PRAGMA temp_store = FILE;"
)


def _connect() -> sqlite3.Connection:
    # An empty name is a file that SQLite takes away itself; the thread that answers may change.
    connection = sqlite3.connect("", check_same_thread=False)
    connection.executescript(_SWIFT)
    return connection


@contextmanager
def passing_round(
    question: Question, rules: RoundRules, hosts: tuple[str, ...], zone: str, now: datetime
) -> Iterator[tuple[Session, GameRow, RoundRow]]:
    """A round of these rules that takes comments, and is gone afterwards."""
    engine = create_engine("sqlite://", creator=_connect, poolclass=StaticPool)
    try:
        metadata.create_all(engine)
        with Session(engine, expire_on_commit=False) as session:
            game = GameRow(
                slug="passing",
                name="",
                zone=zone,
                chart=chart_to_json(question.chart),
                next_from="any stitched page",
                hosts=list(hosts),
                languages=list(question.languages),
                wants="title",
                names_per_comment=1,
                created=now,
            )
            session.add(game)
            session.flush()
            row = _round(id_of(game), question, rules, now)
            session.add(row)
            session.flush()
            yield session, game, row
    finally:
        engine.dispose()


def _round(game_id: int, question: Question, rules: RoundRules, now: datetime) -> RoundRow:
    return RoundRow(
        game_id=game_id,
        number=1,
        state="open",
        opens=rules.opens,
        closes=rules.closes,
        choices=rules.choices,
        standing=rules.standing,
        tie_breaks=list(rules.tie_breaks),
        votable=sorted(rules.votable),
        stitched=sorted(rules.stitched),
        languages=list(question.languages),
        created=now,
        opened=now,
    )
