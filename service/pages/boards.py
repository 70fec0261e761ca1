"""The boards of all games as many look at them: who looks at the same moment is answered together."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime

from fastapi import Request
from sqlmodel import Session

from service.api.gathered import Gathered
from service.pages.board import board_page, plain_page
from service.pages.kept_pages import KeptPage, KeptPages, Name, Stand, stand_of
from service.pages.rendering import Context
from service.store.database import Database
from service.store.tables import GameRow

#: What a page of a game is made by, by what it is called.
_PAGES: dict[str, Callable[[Session, GameRow, datetime], Context]] = {
    "board": board_page,
    "light": lambda session, row, now: plain_page(session, row, now, "light"),
    "dark": lambda session, row, now: plain_page(session, row, now, "dark"),
}


class Boards:
    """The pages of one database's games for everybody, asked for by one event loop."""

    def __init__(self, database: Database) -> None:
        self._database = database
        self._kept = KeptPages()
        self._looking: Gathered[None, tuple[Name, datetime], KeptPage | None] = Gathered(self._look)
        self._making: Gathered[Name, datetime, KeptPage] = Gathered(self._make)

    async def page(self, name: Name, now: datetime) -> KeptPage:
        """The page of that name (a game's short name, and a key of `_PAGES`) as it is to be shown.

        Raises:
            NotFound: there is no such game.
        """
        kept = await self._looking.ask(None, (name, now))
        return await self._making.ask(name, now) if kept is None else kept

    def _look(self, place: None, asked: list[tuple[Name, datetime]]) -> Sequence[KeptPage | None]:
        """The pages that can be shown as they are kept."""
        del place
        stands: dict[str, Stand | None] = {}
        with self._database.reading() as session:
            for (slug, _), _ in asked:
                if slug not in stands:
                    stands[slug] = stand_of(session, slug)
        return [self._kept.good(name, stands[name[0]], now) for name, now in asked]

    def _make(self, name: Name, asked: list[datetime]) -> Sequence[KeptPage]:
        """One page for all who wait for it."""
        now = max(asked)
        with self._database.reading() as session:
            page = self._kept.page(
                session, name, now, lambda row: _PAGES[name[1]](session, row, now)
            )
        return [page] * len(asked)


def boards_of(request: Request) -> Boards:
    """The boards of the app that was asked."""
    boards = request.app.state.boards
    if not isinstance(boards, Boards):
        raise TypeError("the app has not been started: run its lifespan")
    return boards
