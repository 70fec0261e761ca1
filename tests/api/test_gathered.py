"""Questions of many at once, answered together: none with an answer older than itself."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import Awaitable, Callable, Sequence

import pytest

from service.api.gathered import AT_MOST, Gathered


class Answering:
    """Answers questions, each with how often anything was answered before; notes what it was given."""

    def __init__(self) -> None:
        self.given: list[tuple[str, list[int]]] = []
        self.may_answer = threading.Event()
        self.may_answer.set()

    def answer(self, place: str, asked: list[int]) -> Sequence[int | Exception]:
        self.given.append((place, asked))
        number = len(self.given)
        assert self.may_answer.wait(30)
        if 13 in asked:
            raise RuntimeError("nothing for any of them")
        return [ValueError(f"no {one}") if one < 0 else number for one in asked]


def run(what: Callable[[Gathered[str, int, int], Answering], Awaitable[None]]) -> None:
    answering = Answering()

    async def within() -> None:
        await what(Gathered(answering.answer), answering)

    asyncio.run(within())


async def _until(found: Callable[[], bool]) -> None:
    async with asyncio.timeout(30):
        while not found():  # noqa: ASYNC110 - a thread makes it so, and has no event
            await asyncio.sleep(0.01)


def test_who_asks_while_others_are_answered_is_answered_with_the_next() -> None:
    async def ask(gathered: Gathered[str, int, int], answering: Answering) -> None:
        answering.may_answer.clear()
        first = asyncio.create_task(gathered.ask("here", 1))
        await _until(lambda: bool(answering.given))
        others = [asyncio.create_task(gathered.ask("here", number)) for number in (2, 3, 4)]
        await asyncio.sleep(0.05)
        answering.may_answer.set()
        assert await first == 1
        assert await asyncio.gather(*others) == [2, 2, 2]
        assert answering.given == [("here", [1]), ("here", [2, 3, 4])]

    run(ask)


def test_questions_of_different_places_do_not_wait_for_each_other() -> None:
    async def ask(gathered: Gathered[str, int, int], answering: Answering) -> None:
        answering.may_answer.clear()
        both = [asyncio.create_task(gathered.ask(place, 1)) for place in ("here", "there")]
        await _until(lambda: len(answering.given) == 2)
        answering.may_answer.set()
        assert sorted(await asyncio.gather(*both)) == [1, 2]
        assert gathered._waiting == {}

    run(ask)


def test_each_is_told_its_own_error() -> None:
    async def ask(gathered: Gathered[str, int, int], answering: Answering) -> None:
        asked = [gathered.ask("here", number) for number in (5, -7, 6)]
        told = await asyncio.gather(*asked, return_exceptions=True)
        assert [str(one) for one in told] == ["1", "no -7", "1"]
        assert len(answering.given) == 1

    run(ask)


def test_where_nothing_can_be_answered_all_are_told_so_and_the_next_are_answered() -> None:
    async def ask(gathered: Gathered[str, int, int], _: Answering) -> None:
        asked = [gathered.ask("here", number) for number in (12, 13)]
        told = await asyncio.gather(*asked, return_exceptions=True)
        assert [type(one) for one in told] == [RuntimeError, RuntimeError]
        assert await gathered.ask("here", 1) == 2

    run(ask)


def test_who_has_gone_keeps_nobody_from_being_answered() -> None:
    async def ask(gathered: Gathered[str, int, int], answering: Answering) -> None:
        answering.may_answer.clear()
        first, second = (asyncio.create_task(gathered.ask("here", number)) for number in (1, 2))
        await _until(lambda: bool(answering.given))
        first.cancel()
        answering.may_answer.set()
        assert await second == 1
        with pytest.raises(asyncio.CancelledError):
            await first

    run(ask)


def test_only_so_many_are_answered_at_once() -> None:
    async def ask(gathered: Gathered[str, int, int], answering: Answering) -> None:
        asked = [gathered.ask("here", number + 20) for number in range(2 * AT_MOST + 1)]
        await asyncio.gather(*asked)
        assert [len(one) for _, one in answering.given] == [AT_MOST, AT_MOST, 1]

    run(ask)
