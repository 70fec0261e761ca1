"""What a caller asks when comments are counted without being stored."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import Field

from service.api.chart_models import ChartIn
from service.api.shapes import In, Languages, MomentIn, Page, Words, example, moment_or_none
from service.ballots.reading import Question
from service.chart.grid import Chart
from service.chart.votable import NextFrom, votable_pages
from service.comments.formats import Format, Meaning, Source
from service.comments.times import read_moment, zone_of
from service.counting.round import RoundRules, Standing, TieBreak

Columns = Annotated[
    dict[Meaning, Words],
    Field(
        max_length=20,
        description="Which header stands for what, where it is not found by itself.",
        examples=[{"text": "Kommentar"}],
    ),
]
_Pages = Annotated[list[Page], Field(max_length=10_000)]


class TallyIn(In):
    """The question of a round that is not stored: its chart, its rules, how the export is read."""

    model_config = example(
        {
            "chart": {"columns": 9, "rows": 7},
            "zone": "Atlantic/Faroe",
            "opens": "2026-03-01T18:00",
            "closes": "2026-03-04T18:00",
            "stitched": [12, 13],
            "previous": 13,
            "hosts": ["Island Guild"],
            "tie_breaks": ["most joined edges", "lowest number"],
        }
    )

    chart: ChartIn
    zone: str = Field(max_length=64)
    opens: MomentIn
    closes: MomentIn | None = None
    stitched: _Pages = Field(default=[], description="Pages stitched or in hand.")
    votable: _Pages | None = Field(default=None, description="Found from the chart if left out.")
    next_from: NextFrom = "the previous page"
    previous: int | None = None
    hosts: list[Words] = Field(default=[], max_length=50)
    choices: int = 1
    standing: Standing = "latest"
    tie_breaks: list[TieBreak] = Field(
        default=["most joined edges", "reached first", "lowest number"], max_length=20
    )
    languages: Languages = Field(default=["en"])
    columns: Columns = Field(default={})
    copied_at: MomentIn | None = None
    format: Format | None = None

    def to_asked(self, name: str, now: datetime) -> TallyAsked:
        """The question itself, about the export `name`; without `copied_at` it was copied `now`.

        Raises:
            BadChart, BadTime, PageNotOnChart: a part of it cannot be.
        """
        zone = zone_of(self.zone)
        chart = self.chart.to_chart()
        source = Source(
            name=name,
            zone=self.zone,
            copied_at=moment_or_none(self.copied_at, zone) or now,
            columns=tuple(self.columns.items()),
            format=self.format,
        )
        question = Question(chart, self.choices, tuple(self.languages))
        return TallyAsked(question, self._rules(chart, zone), tuple(self.hosts), source)

    def _rules(self, chart: Chart, zone: ZoneInfo) -> RoundRules:
        stitched = frozenset(self.stitched)
        votable = votable_pages(chart, stitched, self.next_from, self.previous).pages
        return RoundRules(
            opens=read_moment(self.opens, zone),
            closes=moment_or_none(self.closes, zone),
            votable=votable if self.votable is None else frozenset(self.votable),
            stitched=stitched,
            choices=self.choices,
            standing=self.standing,
            tie_breaks=tuple(self.tie_breaks),
        )


@dataclass(frozen=True, slots=True)
class TallyAsked:
    """The question of a round that is not stored, and where its comments come from."""

    question: Question
    rules: RoundRules
    hosts: tuple[str, ...]
    source: Source
