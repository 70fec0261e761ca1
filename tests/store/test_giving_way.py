"""A large export gives way to comments that come in one by one."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

import pytest

from service.ballots.reading import Question
from service.chart.grid import Chart
from service.comments.formats import OpenExport
from service.store import staging, waiting_parts
from service.store.many import in_parts
from service.store.reading_along import WORTH_IT
from service.store.readings_kept import VoteReader
from service.store.staging import nobody_waits, say_nothing, staged
from tests.store.handing_in import comment, delivery

MANY = 20
EXPORT = delivery([comment(f"Voter {n}", f"page {n + 1}", id=f"c{n}") for n in range(MANY)]).export


def one_by_one(given: Iterable[object]) -> Iterator[list[object]]:
    return in_parts(given, 1)


@pytest.fixture
def slept(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    """How long it waited, each time, while it read in parts of one comment."""
    times: list[float] = []
    monkeypatch.setattr(staging, "sleep", times.append)
    monkeypatch.setattr(staging, "in_parts", one_by_one)
    # What waits to be read may all be read later.
    monkeypatch.setattr(waiting_parts, "_LATER", 1.0)
    return times


def unread_after(busy: Callable[[], bool]) -> int:
    """How many parts nobody has been asked to read when the export has been gone through."""
    reader = VoteReader(Question(Chart(9, 7)))
    with staged(OpenExport.of(EXPORT), reader, WORTH_IT, say_nothing, busy) as read:
        assert read.count == MANY
        return read.waiting.unread


def test_while_others_wait_it_leaves_them_most_of_the_time_and_reads_all_before(
    slept: list[float],
) -> None:
    assert unread_after(lambda: True) == 0
    assert len(slept) == MANY
    assert all(seconds > 0 for seconds in slept)


def test_where_nobody_waits_it_goes_on(slept: list[float]) -> None:
    assert unread_after(nobody_waits) > 0
    assert slept == []
