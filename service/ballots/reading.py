"""What one comment says as a vote: the values that reading it gives."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple, get_args

from service.chart.grid import Chart

Outcome = Literal["counts", "look", "none"]
NoneReason = Literal["no-page", "off-chart", "withdrawn"]
OUTCOMES: tuple[Outcome, ...] = get_args(Outcome)


@dataclass(frozen=True, slots=True)
class Question:
    """What the round asks: the chart, how many pages one voter may name, the languages."""

    chart: Chart
    choices: int = 1
    languages: tuple[str, ...] = ("en",)


class Evidence(NamedTuple):
    """The words something was read from: `text` is the comment's own [start:end].

    `page` is the page they were read as, None where they decided without naming one.
    `rule` says in a few words which rule decided, for the host to read.
    """

    start: int
    end: int
    text: str
    page: int | None
    rule: str


class Reading(NamedTuple):
    """What a comment says: the outcome, its pages in order of preference, and why.

    `reason` is set for `none` only. `why` is a sentence for the host.
    """

    outcome: Outcome
    pages: tuple[int, ...]
    reason: NoneReason | None
    why: str
    evidence: tuple[Evidence, ...] = ()
