"""A count in JSON: with its voters for the host, without them for everybody."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from typing import Any, Literal

from pydantic import Field

from service.api.chart_models import ChartOut
from service.api.revision_models import RevisionOut
from service.api.shapes import Out, SpanOut, example
from service.ballots.reading import Evidence
from service.counting.result import Cause, TieStep
from service.counting.round import Standing, TieBreak
from service.store.tables import RoundRow
from service.store.tables_counting import RevisionRow

_SPAN = {"earliest": "2026-03-02T09:12:00Z", "latest": "2026-03-02T09:12:00Z"}
_STEP = {
    "rule": "lowest number",
    "tied": [13, 21],
    "kept": [13],
    "why": "Page 13 is the lowest number.",
    "values": [[13, "13"], [21, "21"]],
}


class EvidenceOut(Out):
    """The words something was read from: the text's own characters from `start` to `end`."""

    start: int
    end: int
    text: str
    page: int | None
    rule: str

    @classmethod
    def of(cls, evidence: Evidence) -> EvidenceOut:
        """The evidence for JSON."""
        return cls(
            start=evidence.start,
            end=evidence.end,
            text=evidence.text,
            page=evidence.page,
            rule=evidence.rule,
        )


class UnreadableOut(Out):
    """What could not be read as a comment: where it stood, its words, and why."""

    place: str
    text: str
    why: str


class VotesOut(Out):
    """A page and its votes."""

    page: int
    votes: int


class StepOut(Out):
    """One tie-break: the pages it found tied, those it kept, and what it looked at."""

    model_config = example(_STEP)

    rule: TieBreak
    tied: list[int]
    kept: list[int]
    why: str
    values: list[tuple[int, str]]

    @classmethod
    def of(cls, step: TieStep) -> StepOut:
        """The step for JSON."""
        return cls(
            rule=step.rule,
            tied=list(step.tied),
            kept=list(step.kept),
            why=step.why,
            values=list(step.values),
        )


class BallotOut(Out):
    """What one voter chose: the comment that stands and its pages."""

    key: str
    author: str
    text: str
    pages: list[int]
    written: SpanOut
    ruled: bool


class SetAsideOut(Out):
    """A comment that does not count: the first cause that holds, and the words it was read from."""

    key: str
    author: str
    text: str
    cause: Cause
    why: str
    pages: list[int]
    written: SpanOut
    evidence: list[EvidenceOut]


class RulesOut(Out):
    """The rules a count went by."""

    opens: datetime
    closes: datetime | None
    choices: int
    standing: Standing
    tie_breaks: list[TieBreak]
    votable: list[int]
    stitched: list[int]


class FiguresOut(Out):
    """How much a count holds, whether or not all of it is listed."""

    ballots: int
    looks: int
    set_aside: dict[Cause, int] = Field(description="How many comments by the cause, looks too.")


class TallyOut(Out):
    """A count with everything that led to it, for the host.

    `ballots` and `set_aside` hold every comment once, up to the number of each that was asked for,
    the oldest; `figures` tells how many there are. `looks` are those of `set_aside` that only the
    host can settle, and `can_change` says whether they could change the winner.
    """

    model_config = example(
        {
            "game": "windy-island",
            "round": 2,
            "chart": {"columns": 9, "rows": 7, "page_count": 63, "order": "across",
                      "start": "top left", "back_and_forth": False, "no_page": [],
                      "joined": "edge", "size": None},
            "rules": {"opens": "2026-03-01T18:00:00Z", "closes": "2026-03-04T18:00:00Z",
                      "choices": 1, "standing": "latest", "tie_breaks": ["lowest number"],
                      "votable": [3, 11, 13, 21], "stitched": [12]},
            "format": "table",
            "mapping": {"author": "Name", "posted": "Time", "text": "Comment"},
            "notes": [],
            "unreadable": [],
            "unreadable_count": 0,
            "comments": 3,
            "figures": {"ballots": 2, "looks": 0, "set_aside": {"chooses no page": 1}},
            "ballots": [
                {"key": "c0f1e2d3c4b5a697", "author": "Maren", "text": "13 please!",
                 "pages": [13], "written": _SPAN, "ruled": False},
                {"key": "c1a2b3c4d5e6f708", "author": "Tove", "text": "page 21",
                 "pages": [21], "written": _SPAN, "ruled": False},
            ],
            "tally": [{"page": 13, "votes": 1}, {"page": 21, "votes": 1}],
            "set_aside": [
                {"key": "c9d8e7f6a5b4c3d2", "author": "Odd", "text": "What lovely thread",
                 "cause": "chooses no page", "why": "No page of the chart is named.",
                 "pages": [], "written": _SPAN, "evidence": []}
            ],
            "looks": [],
            "steps": [_STEP],
            "winner": 13,
            "undecided": [],
            "why": "Page 13 wins with 1 vote on 2 ballots, after a tie with page 21.",
            "can_change": False,
            "can_change_why": "No comment needs a look.",
            "can_change_by": None,
            "announcement": "Page 13 is next.",
            "announcement_why": None,
        }
    )  # fmt: skip

    game: str | None
    round: int | None
    chart: ChartOut
    rules: RulesOut
    format: str | None
    mapping: dict[str, str]
    notes: list[str]
    unreadable: list[UnreadableOut] = Field(description="The first thousand of each batch.")
    unreadable_count: int
    comments: int
    figures: FiguresOut
    ballots: list[BallotOut]
    tally: list[VotesOut]
    set_aside: list[SetAsideOut]
    looks: list[SetAsideOut]
    steps: list[StepOut]
    winner: int | None
    undecided: list[int]
    why: str
    can_change: bool
    can_change_why: str
    can_change_by: int | None = Field(
        description="The most votes by which another page may end ahead of the winner: 0 where it "
        "may just draw level, below 0 where it stays behind."
    )
    announcement: str | None = Field(
        description="The result in words, ready to paste; null where they would tell the answer."
    )
    announcement_why: str | None = Field(description="Why the announcement is left out.")


class ResultOut(Out):
    """An announced result, for everybody: it names no voter and quotes no comment."""

    model_config = example(
        {
            "game": "windy-island",
            "round": 2,
            "state": "announced",
            "announced": "2026-03-04T19:30:00Z",
            "revision": 1,
            "reason": None,
            "digest": "d1" * 32,
            "revisions": [
                {"number": 1, "announced": "2026-03-04T19:30:00Z", "reason": None, "winner": 13,
                 "digest": "d1" * 32}
            ],
            "winner": 13,
            "tally": [{"page": 13, "votes": 1}, {"page": 21, "votes": 1}],
            "steps": [_STEP],
            "why": "Page 13 wins with 1 vote on 2 ballots, after a tie with page 21.",
            "comments": 3,
            "ballots": 2,
            "set_aside": {"chooses no page": 1},
            "looks": 0,
            "looks_why": "No comment needs a look.",
            "announcement": "Page 13 is next.",
        }
    )  # fmt: skip

    game: str
    round: int
    state: Literal["announced"]
    announced: datetime
    revision: int = Field(description="Which of the revisions this is.")
    reason: str | None = Field(description="Why it was announced again; null for the first.")
    digest: str | None = Field(description="SHA-256 of its record.")
    revisions: list[RevisionOut] = Field(description="All of them, oldest first.")
    winner: int | None
    tally: list[VotesOut]
    steps: list[StepOut]
    why: str
    comments: int = Field(description="How many comments were read.")
    ballots: int
    set_aside: dict[Cause, int] = Field(description="How many comments by the cause.")
    looks: int = Field(description="How many still needed a look when it was announced.")
    looks_why: str = Field(description="Why those could not change the winner.")
    announcement: str

    @classmethod
    def of(
        cls, game: str, row: RoundRow, revision: RevisionRow, revisions: Iterable[RevisionRow]
    ) -> ResultOut:
        """One revision of the announced round's result."""
        kept: dict[str, Any] = revision.result
        return cls(
            game=game,
            round=row.number,
            state=row.state,
            announced=revision.announced,
            revision=revision.number,
            reason=revision.reason,
            digest=revision.digest,
            revisions=[RevisionOut.of(one) for one in revisions],
            **kept,
        )
