"""Comments handed in one by one by many at the same time, kept together in one transaction.

A collector may hand in each comment as it appears. Reading one takes a fraction of a millisecond; what
takes long is a thread, a transaction and a round taken for each. So those of a round that come while
others are kept wait, and are kept together next: each is a batch of its own, whole or not at all.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import ExitStack
from time import monotonic

from fastapi import Request

from service.api.batch_models import BatchOut
from service.api.gathered import Gathered
from service.api.handing_in import Sent, delivered, round_of
from service.api.places import RoundPlace
from service.api.wiring import Wiring
from service.errors import LoopstartError
from service.store.batches import Delivery
from service.store.batches_together import hand_in_all
from service.store.readings_kept import VoteReader

#: The bytes of an export that counts as a few comments.
_FEW = 10_000
#: The seconds after one has come in that others are expected.
_WHILE = 1.0


class HandIns:
    """Small exports on their way into the rounds of one database; for one event loop."""

    def __init__(self, parts: Wiring) -> None:
        self._parts = parts
        self._came = -_WHILE
        self._gathered: Gathered[RoundPlace, Sent, BatchOut] = Gathered(self._keep)

    @staticmethod
    def takes(sent: Sent) -> bool:
        """Whether an export is one of those that are kept together.

        Columns that are named are remembered for the game, which is taken before the round: two
        such transactions could wait for each other.
        """
        how = sent.how
        return sent.content.size <= _FEW and not how.columns and how.watch is None

    async def hand_in(self, place: RoundPlace, sent: Sent) -> BatchOut:
        """Read an export into the round, all or nothing.

        Raises:
            BadExport, BadTime: it cannot be read so.
            NotFound, WrongState: there is no such round, or it takes no comments.
        """
        self._came = monotonic()
        return await self._gathered.ask(place, sent)

    def is_busy(self) -> bool:
        """Whether comments come in one by one just now, which should not wait for a large export."""
        return monotonic() - self._came < _WHILE

    def _keep(self, place: RoundPlace, sent: list[Sent]) -> Sequence[BatchOut | Exception]:
        of_round = round_of(place, self._parts)
        reader = VoteReader(of_round.question)
        answers: dict[int, BatchOut | Exception] = {}
        deliveries: dict[int, Delivery] = {}
        with ExitStack() as read_in:
            for number, one in enumerate(sent):
                try:
                    read = read_in.enter_context(delivered(self._parts, of_round, one, reader))
                except Exception as error:  # noqa: BLE001 - raised where it was sent
                    answers[number] = error
                else:
                    deliveries[number] = read
            if deliveries:
                with self._parts.database.writing() as session:
                    _, row = place.found(session)
                    reports = hand_in_all(session, row, list(deliveries.values()))
                    for number, report in zip(deliveries, reports, strict=True):
                        answers[number] = (
                            report
                            if isinstance(report, LoopstartError)
                            else BatchOut.of(report, row)
                        )
        return [answers[number] for number in range(len(sent))]


def hand_ins_of(request: Request) -> HandIns:
    """The small exports on their way in the app that was asked."""
    found = request.app.state.hand_ins
    if not isinstance(found, HandIns):
        raise TypeError("the app has not been started: run its lifespan")
    return found
