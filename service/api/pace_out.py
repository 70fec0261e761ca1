"""Pace, forecast and rounds to come, in JSON."""

from __future__ import annotations

from datetime import date

from service.api.progress_out import CHART, PAGE, ChartProgressOut, PageProgressOut
from service.api.shapes import Out, example
from service.pace.estimate import Pace
from service.pace.forecast import Finish, NotEnough
from service.pace.rounds import Needed, Opening, RoundToCome

_FINISH = {
    "earliest": "2026-03-27",
    "middle": "2026-03-28",
    "latest": "2026-03-30",
    "confidence": 0.8,
}
_OPENING = {
    "sensible": "2026-03-23",
    "latest": "2026-03-24",
    "closes": "2026-03-25",
    "too_late": False,
}


class FinishOut(Out):
    """When something is finished: the range holds the day as often as `confidence` says.

    `latest` is empty where no latest day can be told.
    """

    model_config = example(_FINISH)

    earliest: date
    middle: date
    latest: date | None
    confidence: float

    @classmethod
    def of(cls, finish: Finish | NotEnough, confidence: float) -> FinishOut | None:
        """The finish for JSON; None where there is not enough to say."""
        if isinstance(finish, NotEnough):
            return None
        return cls(
            earliest=finish.earliest,
            middle=finish.middle,
            latest=finish.latest,
            confidence=confidence,
        )


class OpeningOut(Out):
    """When the next round is to open; `closes` is that of a round opened on the sensible day."""

    model_config = example(_OPENING)

    sensible: date
    latest: date
    closes: date
    too_late: bool

    @classmethod
    def of(cls, opening: Opening) -> OpeningOut:
        """The opening for JSON."""
        return cls(
            sensible=opening.sensible,
            latest=opening.latest,
            closes=opening.closes,
            too_late=opening.too_late,
        )


class PaceNumbersOut(Out):
    """Stitches a day in the last weeks, and the limits between which their mean lies."""

    model_config = example(
        {
            "rate": 341.2,
            "lower": 268.4,
            "upper": 414.0,
            "days": 10,
            "since": "2026-03-16",
            "one_big_weekend": False,
            "rough": True,
            "words": "The pace is 341 stitches a day.",
        }
    )

    rate: float
    lower: float
    upper: float
    days: int
    since: date
    one_big_weekend: bool
    rough: bool
    words: str

    @classmethod
    def of(cls, pace: Pace, confidence: float, words: str) -> PaceNumbersOut:
        """The pace for JSON."""
        lower, upper = pace.limits(confidence)
        return cls(
            rate=round(pace.rate, 1),
            lower=round(max(0.0, lower), 1),
            upper=round(upper, 1),
            days=pace.days,
            since=pace.since,
            one_big_weekend=pace.big,
            rough=pace.rough,
            words=words,
        )


class PaceOut(Out):
    """Where the game stands and what is next. Where there is not enough log, `why_not` says why."""

    model_config = example(
        {
            "today": "2026-03-25",
            "logged_until": "2026-03-25",
            "pages": [PAGE],
            "details_to_come": [],
            "chart": CHART,
            "pace": None,
            "finish": _FINISH,
            "opening": _OPENING,
            "chart_finish": None,
            "words": "Page 41 should be finished around Saturday 28 March 2026.",
            "why_not": "",
        }
    )

    today: date
    logged_until: date | None
    pages: list[PageProgressOut]
    details_to_come: list[PageProgressOut]
    chart: ChartProgressOut
    pace: PaceNumbersOut | None
    finish: FinishOut | None
    opening: OpeningOut | None
    chart_finish: FinishOut | None
    words: str
    why_not: str


class RoundToComeOut(Out):
    """A round projected, by the order from now on; `finish` is that of the page it chooses."""

    model_config = example(
        {
            "number": 1,
            "opens": "2026-03-23",
            "latest": "2026-03-24",
            "closes": "2026-03-25",
            "finish": _FINISH,
        }
    )

    number: int
    opens: date
    latest: date
    closes: date
    finish: FinishOut | None

    @classmethod
    def of(cls, one: RoundToCome, confidence: float) -> RoundToComeOut:
        """The round for JSON."""
        return cls(
            number=one.number,
            opens=one.opens,
            latest=one.latest,
            closes=one.closes,
            finish=FinishOut.of(one.finish, confidence),
        )


class CalendarOut(Out):
    """The rounds to come. `of_all` is how many pages are unstitched; each range widens the next."""

    model_config = example(
        {"rounds": [], "of_all": 62, "why_not": "There is not enough log to say."}
    )

    rounds: list[RoundToComeOut]
    of_all: int
    why_not: str


class NeededOut(Out):
    """What it would take: `a_day` stitches on each of `days` days; compared with the pace."""

    model_config = example(
        {
            "by": "2026-03-29",
            "stitches": 1488,
            "days": 5,
            "a_day": 297.6,
            "times_the_pace": 0.87,
            "words": "To finish page 41 by Sunday 29 March 2026 takes 298 stitches a day.",
        }
    )

    by: date
    stitches: int
    days: int
    a_day: float
    times_the_pace: float | None
    words: str

    @classmethod
    def of(cls, needed: Needed, words: str) -> NeededOut:
        """The answer for JSON."""
        times = needed.times_the_pace
        return cls(
            by=needed.by,
            stitches=needed.stitches,
            days=needed.days,
            a_day=round(needed.a_day, 1),
            times_the_pace=None if times is None else round(times, 2),
            words=words,
        )


class PublicProgressOut(Out):
    """What the host lets everybody see of the pace; all else is empty."""

    model_config = example(
        {
            "pages": [PAGE],
            "chart": CHART,
            "finish": _FINISH,
            "next_opening": "2026-03-23",
            "picture": None,
            "update": None,
        }
    )

    pages: list[PageProgressOut] | None
    chart: ChartProgressOut | None
    finish: FinishOut | None
    next_opening: date | None
    picture: str | None
    update: str | None
