"""The round that an address of the desk names."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from fastapi import Depends, Path
from sqlmodel import Session

from service.api.places import RoundPlace
from service.pages.game_frame import round_address
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class DeskRound:
    """A game's short name and a round's number, as an address of the desk gives them."""

    slug: str
    number: int

    @property
    def address(self) -> str:
        """Where the round is on the desk."""
        return round_address(self.slug, self.number)

    @property
    def for_api(self) -> RoundPlace:
        """The same for what the API and the desk share."""
        return RoundPlace(self.slug, self.number)

    def found(self, session: Session) -> tuple[GameRow, RoundRow]:
        """The rows of game and round.

        Raises:
            NotFound: there is no such game or round.
        """
        return self.for_api.found(session)


async def _desk_round(slug: str, number: Annotated[int, Path(ge=1, le=1_000_000)]) -> DeskRound:
    return DeskRound(slug, number)


InDeskRound = Annotated[DeskRound, Depends(_desk_round)]
