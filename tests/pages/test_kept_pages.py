"""Pages that are kept: a crowd never waits for one that is made anew, and strangers fill nothing."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import ClassVar

import pytest
from starlette.requests import Request

from service.errors import NotFound
from service.pages.frame import Frame
from service.pages.games_contexts import GamesPage
from service.pages.kept_pages import KeptPages
from service.pages.rendering import Context
from service.store.tables import GameRow
from tests.api.asking import PATH, done, make_game
from tests.api.conftest import Service

NAME = ("windy-island", "board")


@dataclass
class Asking:
    """Asks for a page of the game as a viewer does, in a transaction of its own."""

    service: Service
    kept: KeptPages
    plain: ClassVar[Request] = Request({"type": "http", "headers": [], "query_string": b""})

    def get(self, make: Callable[[GameRow], Context], name: tuple[str, str] = NAME) -> bytes:
        with self.service.app.state.wiring.database.reading() as session:
            now = self.service.clock.now
            return bytes(self.kept.answer(self.plain, session, name, now, make).body)


def page(title: str) -> Context:
    return GamesPage(Frame(title), ())


def test_a_crowd_is_shown_the_page_as_it_was_while_it_is_made_anew(service: Service) -> None:
    make_game(service.host)
    asking = Asking(service, KeptPages())
    first = asking.get(lambda _: page("first"))
    done(service.host.patch(PATH, {"name": "Another name"}))
    begun, may_end = threading.Event(), threading.Event()
    made: list[bytes] = []

    def slowly(game: GameRow) -> Context:
        begun.set()
        assert may_end.wait(30)
        return page(game.name)

    maker = threading.Thread(target=lambda: made.append(asking.get(slowly)))
    maker.start()
    assert begun.wait(30)
    for _ in range(3):
        assert asking.get(lambda _: pytest.fail("made twice")) == first
    may_end.set()
    maker.join(30)
    assert b"Another name" in made[0]
    assert asking.get(lambda _: pytest.fail("made again")) == made[0]


def test_a_page_that_could_not_be_made_is_tried_again(service: Service) -> None:
    make_game(service.host)
    asking = Asking(service, KeptPages())

    def fails(_: GameRow) -> Context:
        raise NotFound("thing", "x")

    for _ in range(2):
        with pytest.raises(NotFound):
            asking.get(fails)
    assert b"well" in asking.get(lambda _: page("well"))


def test_nothing_is_kept_of_games_that_are_not_there(service: Service) -> None:
    kept = KeptPages()
    asking = Asking(service, kept)
    for number in range(100):
        with pytest.raises(NotFound):
            asking.get(lambda _: page("never"), (f"none-{number}", "board"))
    assert kept._making == {}
    assert [pages for pages in kept._kept.values() if pages] == []


def test_only_so_many_pages_are_kept(service: Service) -> None:
    make_game(service.host)
    kept = KeptPages()
    asking = Asking(service, kept)
    for number in range(80):
        asking.get(lambda _: page("one"), ("windy-island", f"page {number}"))
    assert [len(pages) for pages in kept._kept.values()] == [64]
