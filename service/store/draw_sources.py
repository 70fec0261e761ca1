"""A draw as a round's row keeps it: sources named beforehand, and the round's own value."""

from __future__ import annotations

import secrets
from datetime import UTC, datetime
from typing import Any

from sqlmodel import Session

from service.counting.sources import DrawRules, DrawSource, commitment_of
from service.mystery.seal import draw_value_of
from service.store.columns import id_of
from service.store.tables import AnswerRow, GameRow, RoundRow
from service.store.tables_counting import DrawValueRow


def keep_own_value(session: Session, game: GameRow, row: RoundRow) -> str:
    """Fix the round's own value at its opening and answer what is published of it.

    It comes from the salt of the game's seal, so that after the reveal anybody can see that it was
    fixed long before; a game without a sealed answer has a random one.
    """
    answer = session.get(AnswerRow, id_of(game))
    value = secrets.token_bytes(32)
    if answer is not None:
        value = draw_value_of(answer.salt, game.slug, row.number)
    session.add(DrawValueRow(round_id=id_of(row), value=value))
    return commitment_of(value)


def draw_rules_of(row: RoundRow) -> DrawRules:
    """The sources and the commitment of a round."""
    return DrawRules(sources_of(row), row.commitment or "")


def sources_of(row: RoundRow) -> tuple[DrawSource, ...]:
    """The sources that the round names."""
    return tuple(
        DrawSource(kept["name"], datetime.fromisoformat(kept["expected"]), kept["if_late"])
        for kept in row.sources or ()
    )


def sources_to_json(sources: tuple[DrawSource, ...]) -> list[dict[str, Any]]:
    """The sources as a row keeps them."""
    return [
        {
            "name": source.name.strip(),
            "expected": source.expected.astimezone(UTC).isoformat(),
            "if_late": source.if_late,
        }
        for source in sources
    ]
