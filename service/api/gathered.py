"""Questions of many requests at once, answered together by one thread.

Hundreds may ask the database the same moment, and each would cost a thread, a connection and a
transaction of its own. Here whoever asks while others are answered waits, and all who wait are
answered together next. An answer is never older than its question.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Hashable, Sequence
from typing import Generic, TypeVar

from anyio import CapacityLimiter, to_thread

Place = TypeVar("Place", bound=Hashable)
Question = TypeVar("Question")
Answer = TypeVar("Answer")
#: So many are answered together: nobody is to wait for very many others.
AT_MOST = 100
#: How many threads answer questions of different places at the same time.
_THREADS = 4


class Gathered(Generic[Place, Question, Answer]):
    """Has questions of a place answered together: `answer` is given at least one of them.

    It answers each with an answer or with the error to be raised. What it raises itself, all that it
    was given raise. For one event loop alone.
    """

    def __init__(
        self, answer: Callable[[Place, list[Question]], Sequence[Answer | Exception]]
    ) -> None:
        self._answer = answer
        self._waiting: dict[Place, list[tuple[Question, asyncio.Future[Answer]]]] = {}
        self._tasks: set[asyncio.Task[None]] = set()
        self._threads: CapacityLimiter | None = None

    async def ask(self, place: Place, question: Question) -> Answer:
        """The answer, asked for from now on."""
        future: asyncio.Future[Answer] = asyncio.get_running_loop().create_future()
        waiting = self._waiting.get(place)
        if waiting is not None:
            waiting.append((question, future))
        else:
            self._waiting[place] = [(question, future)]
            # A task of its own: whoever asked first may be gone before the others are answered.
            task = asyncio.create_task(self._answer_all(place))
            self._tasks.add(task)
            task.add_done_callback(self._tasks.discard)
        return await future

    async def _answer_all(self, place: Place) -> None:
        """Answer those who wait, and those who come meanwhile."""
        if self._threads is None:
            self._threads = CapacityLimiter(_THREADS)
        waiting = self._waiting[place]
        while waiting:
            asked = waiting[:AT_MOST]
            del waiting[:AT_MOST]
            questions = [question for question, _ in asked]
            try:
                answers: Sequence[Answer | Exception] = await to_thread.run_sync(
                    self._answer, place, questions, limiter=self._threads
                )
            except Exception as error:  # noqa: BLE001 - raised where it was asked
                answers = [error] * len(asked)
            for (_, future), answer in zip(asked, answers, strict=True):
                _tell(future, answer)
        del self._waiting[place]


def _tell(future: asyncio.Future[Answer], answer: Answer | Exception) -> None:
    if future.done():
        return  # whoever asked has gone
    if isinstance(answer, Exception):
        future.set_exception(answer)
    else:
        future.set_result(answer)
