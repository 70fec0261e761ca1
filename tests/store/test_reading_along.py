"""Votes read beside: the same readings in the same order, with a helper, without, or when it ends."""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO

import pytest

from service.ballots.reading import Question
from service.chart.grid import Chart
from service.store import reading_along
from service.store.reading_along import WORTH_IT, Helper, ReadingAlong
from service.store.readings_kept import VoteReader, kept_of, reading_from

QUESTION = Question(Chart(9, 7), 1, ("en", "fr"))
PARTS = [
    [f"page {part} please" if n % 3 else f"what a lovely thread {part} {n}" for n in range(8)]
    for part in range(1, 9)
]


@pytest.fixture
def along() -> Iterator[ReadingAlong]:
    made = ReadingAlong(VoteReader(QUESTION), WORTH_IT)
    yield made
    made.close()


def read_here() -> list[list[tuple[str, bool]]]:
    reader = VoteReader(QUESTION)
    return [[reader.read(words) for words in part] for part in PARTS]


def test_a_helper_reads_as_this_process_does(
    along: ReadingAlong, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(reading_along, "_QUEUE", 100)
    begun = [along.begin(part) for part in PARTS]
    assert all(part.answer is not None for part in begun)
    assert [along.end(part) for part in begun] == read_here()


def test_what_the_helper_has_no_time_for_is_read_here(along: ReadingAlong) -> None:
    begun = [along.begin(part) for part in PARTS]
    assert any(part.answer is None for part in begun)
    assert [along.end(part) for part in begun] == read_here()


def test_a_helper_that_ends_costs_nothing_but_time(
    along: ReadingAlong, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Helper, "_exchange", _ended)
    begun = [along.begin(part) for part in PARTS]
    assert [along.end(part) for part in begun] == read_here()


def _ended(helper: Helper, words: list[str]) -> list[tuple[str, bool]]:
    del helper, words
    raise BrokenPipeError


def test_a_helper_ends_when_nobody_asks_any_more() -> None:
    told = BytesIO()
    reading_along.answer(BytesIO(b""), told)
    reading_along.answer(BytesIO(b"\0\0\0"), told)
    assert told.getvalue() == b""


def test_a_small_export_is_read_without_a_helper() -> None:
    small = ReadingAlong(VoteReader(QUESTION), WORTH_IT - 1)
    assert [small.end(small.begin(part)) for part in PARTS] == read_here()
    assert all(small.begin(part).answer is None for part in PARTS)


@pytest.mark.parametrize(
    ("words", "speaks"),
    [
        ("42", True),
        ("12 or 40", True),
        ("forget my vote", True),
        ("what a lovely thread", False),
        ("I watched it 3 times since 2019", False),
    ],
)
def test_a_reading_is_kept_whole_and_chat_as_nothing(words: str, speaks: bool) -> None:  # noqa: FBT001
    kept, may_decide = VoteReader(QUESTION).read(words)
    reading = reading_from(kept)
    assert kept_of(reading) == (kept, speaks)
    assert may_decide is speaks
    assert (kept == "") is (words == "what a lovely thread")
