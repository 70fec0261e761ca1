"""What the lists of games show."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from service.pages.frame import Frame
from service.pages.rendering import Context
from service.store.tables import GameRow


@dataclass(frozen=True, slots=True)
class GameShown:
    """A game in a list."""

    slug: str
    name: str


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


def game_shown(game: GameRow) -> GameShown:
    """A game for a list."""
    return GameShown(game.slug, game.name)
