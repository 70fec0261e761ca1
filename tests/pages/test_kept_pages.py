"""Pages that are kept: a crowd never waits for one that is made anew, and strangers fill nothing."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass

import pytest

from service.errors import NotFound
from service.pages.frame import Frame
from service.pages.games_contexts import GamesPage
from service.pages.kept_pages import KeptPages
from service.pages.rendering import Context
from service.store.tables import GameRow
from tests.api.asking import PATH, ROUND, done, make_game, open_round
from tests.api.conftest import Service

NAME = ("windy-island", "board")


@dataclass
class Asking:
    """Asks for a page of the game as a viewer does, in a transaction of its own."""

    service: Service
    kept: KeptPages

    def get(self, make: Callable[[GameRow], Context], name: tuple[str, str] = NAME) -> bytes:
        with self.service.app.state.wiring.database.reading() as session:
            return self.kept.page(session, name, self.service.clock.now, make).content


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
    assert kept._kept == {}


def test_only_so_many_pages_are_kept(service: Service) -> None:
    make_game(service.host)
    kept = KeptPages()
    asking = Asking(service, kept)
    for number in range(80):
        asking.get(lambda _: page("one"), ("windy-island", f"page {number}"))
    assert len(kept._kept) == len(kept._allowances) == 64


def test_where_comments_come_in_all_the_time_the_page_is_a_little_behind(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Making it anew for each would take all the time there is; what the host does is shown at once."""
    open_round(service)
    time, titles = [100.0], iter("abcdefgh")
    monkeypatch.setattr("service.pages.kept_pages.monotonic", lambda: time[0])
    asking = Asking(service, KeptPages())

    def slowly(_: GameRow) -> Context:
        time[0] += 0.7
        return page(f"made as {next(titles)}")

    def shown() -> str:
        return asking.get(slowly).decode().partition("made as ")[2][0]

    assert shown() == "a"
    hand_in_one(service, 1)
    assert shown() == "b"  # as long as it does not come to more than a second
    hand_in_one(service, 2)
    assert shown() == "b"
    time[0] += 3.2
    assert shown() == "b"
    time[0] += 0.2  # a tenth of the time since then is for making it anew
    assert shown() == "c"
    hand_in_one(service, 3)
    assert shown() == "c"
    done(service.host.patch(PATH, {"name": "Another name"}))
    assert shown() == "d"


def hand_in_one(service: Service, number: int) -> None:
    """One more comment in the round."""
    export = f"id,author,posted,text\nc{number},Viewer {number},2026-03-01T19:00:00Z,page 5\n"
    done(service.host.hand_in(f"{ROUND}/batches", export), 201)
