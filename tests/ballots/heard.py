"""What a comment is heard to say in a round with all seven languages, in one short line."""

from __future__ import annotations

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

SEVEN = ("en", "fr", "de", "es", "it", "pt", "nl")
#: Nine pages across and seven down: corners 1, 9, 55 and 63, the middle 32.
CHART = Chart(9, 7)


def heard(text: str, choices: int = 1, languages: tuple[str, ...] = SEVEN) -> str:
    """The outcome, then its pages or its reason: "counts 42", "look 12 13", "none no-page"."""
    reading = read_vote(text, Question(CHART, choices, languages))
    said = [str(page) for page in reading.pages] or [reading.reason or ""]
    return " ".join([reading.outcome, *said]).strip()
