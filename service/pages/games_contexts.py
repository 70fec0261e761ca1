"""What the lists of games show."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from sqlmodel import Session

from service.pages.frame import Frame
from service.pages.rendering import Context
from service.store.pictures import map_of_game
from service.store.rounds import all_rounds
from service.store.tables import GameRow


@dataclass(frozen=True, slots=True)
class GameShown:
    """A game in a list."""

    slug: str
    name: str
    caption: str


@dataclass(frozen=True, slots=True)
class GamesPage(Context):
    """The games of this service, for everybody."""

    template: ClassVar[str] = "games.html"

    frame: Frame
    games: tuple[GameShown, ...]


@dataclass(frozen=True, slots=True)
class DeskPage(Context):
    """The host's games."""

    template: ClassVar[str] = "desk.html"

    frame: Frame
    games: tuple[GameShown, ...]


def game_shown(session: Session, game: GameRow) -> GameShown:
    """A game for a list."""
    return GameShown(game.slug, game.name, map_of_game(session, game).caption)


def is_public(session: Session, game: GameRow) -> bool:
    """Whether viewers may know of a game: its answer is sealed, or a round was opened."""
    if game.seal is not None:
        return True
    return any(row.state != "draft" for row in all_rounds(session, game))
