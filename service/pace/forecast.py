"""When so many stitches will be done: a middle day and a range with a stated confidence.

Method. In h days r h stitches are made on average, with r the pace. What h days bring strays from
that for two reasons: days differ, by the variance v of each, and r itself is only known from N
days. The limits for the sum of h days to come are those for a future mean times h,

    r h +- t sqrt(v h (1 + h / N))

with t of N's degrees of freedom (G. J. Hahn and W. Q. Meeker, Statistical Intervals, Wiley 1991,
"Prediction interval to contain the mean of m future observations"; both parts of the root are the
interval of a mean, see `estimate`). R stitches are done by day h in just those cases in which h
days bring R or more, so the earliest day is the h at which the upper limit reaches R, and the
latest the one at which the lower does. Both are roots of one quadratic equation (as in E. C.
Fieller, Journal of the Royal Statistical Society B 16, 1954); where the pace is not surely above
0 the lower limit never reaches R, and there is no latest day.

h counts days of the mean pace: a weekday on which little is stitched is worth less, a day of rest
nothing (`calendar`). The ends are rounded to the nearest whole day, so that the range holds the
finish as often as it says and not more often. scripts/bench.py pace counts how often it does.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from service.errors import BadLog
from service.pace.calendar import DaysToCome
from service.pace.estimate import FEWEST_DAYS, FEWEST_STRETCHES, LAST_WEEKS, Pace, pace_of
from service.pace.settled import DAY, SettledLog
from service.pace.stretches import Stretch, stretches_of
from service.pace.student import t_of

CONFIDENCE = 0.8
#: The log is old after so many days without an entry that are no rest, or twice its longest update.
LONGEST_SILENCE = 21


@dataclass(frozen=True, slots=True)
class Finish:
    """When something is finished: in the middle of what may be, and within which days.

    The range `earliest` to `latest`, both included, holds the day with the stated confidence.
    `latest` is None where no latest day can be told, or it is over 20 years ahead.
    """

    earliest: date
    middle: date
    latest: date | None


@dataclass(frozen=True, slots=True)
class Outlook:
    """What the log says of the days to come, asked `as_of` a day."""

    pace: Pace
    days: DaysToCome
    as_of: date
    confidence: float


@dataclass(frozen=True, slots=True)
class NotEnough:
    """There is not enough log to say; `why` is one sentence for the host."""

    why: str


def check_confidence(confidence: float) -> None:
    """Whether a range can be told with it.

    Raises:
        BadLog: it is not from 0.5 to 0.99.
    """
    if not 0.5 <= confidence <= 0.99:
        raise BadLog(f"a range with confidence {confidence:g}", "ask for 0.5 to 0.99")


def outlook(log: SettledLog, today: date, confidence: float = CONFIDENCE) -> Outlook | NotEnough:
    """What the log says of the days after its last, asked on `today`.

    Raises:
        BadLog: no range can be told with that confidence.
    """
    check_confidence(confidence)
    last = log.last_day
    if last is None:
        return NotEnough("Nothing is logged of the game's piece yet.")
    stretches = stretches_of(log)
    silent = sum(
        1
        for number in range(1, min(2_000, (today - last).days))
        if not log.is_rest(last + number * DAY)
    )
    # Who tells an update a month is not silent after four weeks.
    usual = max((one.days for one in stretches[-LAST_WEEKS:]), default=0)
    if silent > max(LONGEST_SILENCE, 2 * usual):
        return NotEnough(
            f"Nothing is logged since {last}, which is {silent} days: log what was stitched, or "
            "0 where nothing was."
        )
    pace = pace_of(stretches)
    if pace is None:
        return _too_little(stretches)
    if pace.rate <= 0:
        return NotEnough(f"Nothing was stitched on the game's piece since {pace.since}.")
    return Outlook(pace, DaysToCome(last + DAY, pace.by_weekday, log.rests), today, confidence)


def _too_little(stretches: Sequence[Stretch]) -> NotEnough:
    days = sum(one.days for one in stretches)
    told = f"{days} of the {FEWEST_DAYS} days"
    if days >= FEWEST_DAYS:
        told = f"{len(stretches)} of the {FEWEST_STRETCHES} days or updates with a known beginning"
    return NotEnough(f"There is not enough log to say: it tells of {told} that are needed.")


def finish_of(seen: Outlook, stitches: float, spread: float = 0.0) -> Finish | NotEnough:
    """When that many stitches more are done.

    `spread` is the variance of the number itself, where it is not known for sure.
    """
    if stitches <= 0:
        return Finish(seen.as_of, seen.as_of, seen.as_of)
    low, middle, high = crossings(seen.pace, stitches, seen.confidence, spread)
    days = seen.days
    at = days.number_of(middle)
    if at is None:
        return NotEnough("At this pace it takes more than 20 years.")
    before = days.nearest_to(low)
    first = min(at, days.from_working_day((0 if before is None else before) + 1))
    last = None if high is None else days.nearest_to(high)
    latest = None if last is None else _not_before(days.day(max(at, last)), seen.as_of)
    return Finish(
        _not_before(days.day(first), seen.as_of), _not_before(days.day(at), seen.as_of), latest
    )


def crossings(
    pace: Pace, stitches: float, confidence: float, spread: float = 0.0
) -> tuple[float, float, float | None]:
    """The days of the mean pace after which the stitches are done: earliest, middle, latest.

    The latest is None where the pace is not surely above 0. Earliest and latest are the roots of (r h - R)^2 = t^2 (v h (1 + h / N) + spread).
    """
    rate, variance = pace.rate, pace.variance
    t = t_squared(pace, confidence)
    square = rate * rate - t * variance / pace.days
    linear = 2 * rate * stitches + t * variance
    constant = stitches * stitches - t * spread
    root = math.sqrt(max(0.0, linear * linear - 4 * square * constant))
    earliest = max(0.0, 2 * constant / (linear + root))
    latest = (linear + root) / (2 * square) if square > 0 else None
    return earliest, stitches / rate, latest


def t_squared(pace: Pace, confidence: float) -> float:
    """The square of Student's t for that confidence."""
    return t_of(confidence, pace.degrees) ** 2


def _not_before(day: date, today: date) -> date:
    """What is not logged as finished is finished today at the earliest."""
    return max(day, today)
