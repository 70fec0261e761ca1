"""The round that an address names."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from fastapi import Depends, Path
from sqlmodel import Session

from service.api.wiring import Caller
from service.store.games import game_named
from service.store.rounds import no_such_round, round_numbered
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class RoundPlace:
    """A game's short name and a round's number, as an address gives them."""

    game: str
    number: int

    def found(self, session: Session) -> tuple[GameRow, RoundRow]:
        """The rows of game and round.

        Raises:
            NotFound: there is no such game or round.
        """
        row = game_named(session, self.game)
        return row, round_numbered(session, row, self.number)

    def shown(self, session: Session, caller: Caller | None) -> tuple[GameRow, RoundRow]:
        """The same, where this caller may see it: a draft is nobody's business but the host's.

        Raises:
            NotFound: there is no such game or round that this caller may see.
        """
        game, row = self.found(session)
        if row.state == "draft" and (caller is None or caller.role != "host"):
            raise no_such_round(game, self.number)
        return game, row


async def _round_place(
    game: str,
    number: Annotated[int, Path(ge=1, le=1_000_000, description="The round's number.")],
) -> RoundPlace:
    return RoundPlace(game, number)


InRound = Annotated[RoundPlace, Depends(_round_place)]
