"""Comments as viewers may write them, each read by the very reader that reads the votes."""

from __future__ import annotations

from functools import lru_cache

from service.announce.sentences import page_ranges
from service.ballots.reader import read_vote
from service.ballots.reading import Question, Reading
from service.counting.wording import pages_in_words, sentence
from service.pages.board_contexts import Example

_SIGNS = {"counts": "counts", "look": "host looks", "none": "no vote"}


@lru_cache(maxsize=64)
def examples_of(question: Question, votable: tuple[int, ...]) -> tuple[Example, ...]:
    """Examples for this round; `votable` are its pages, ascending."""
    if not votable:
        return ()
    return tuple(_example(text, question, votable) for text in _texts(question, votable))


def _texts(question: Question, votable: tuple[int, ...]) -> list[str]:
    one, other = votable[len(votable) // 3], votable[-1]
    texts = [f"{one}", f"page {one} please!"]
    if other != one:
        texts.append(f"I love {other}, but my vote is {one}")
        texts.append(f"{one} and {other}" if question.choices > 1 else f"{one} or {other}")
    outside = question.chart.page_count + 1
    return [*texts, f"{outside}", "So beautiful already!"]


def _example(text: str, question: Question, votable: tuple[int, ...]) -> Example:
    reading = read_vote(text, question)
    return Example(text, _SIGNS[reading.outcome], _told(reading, frozenset(votable)))


def _told(reading: Reading, votable: frozenset[int]) -> str:
    pages = pages_in_words(reading.pages)
    if reading.outcome == "counts" and votable.issuperset(reading.pages):
        return f"A vote for {pages}."
    if reading.outcome == "counts":
        return f"A vote for {pages}, which this round cannot choose."
    if reading.outcome == "look":
        of_pages = f" It may mean {page_ranges(reading.pages)}." if reading.pages else ""
        return f"The host decides what it says.{of_pages}"
    return sentence(reading.why) if reading.why.endswith(".") else f"{sentence(reading.why)}."
