"""How fast the piece grows: a mean of stitches a day, and how far it strays.

The plain case, one value a day, is the interval of a mean x +- t s / sqrt(N) of the NIST/SEMATECH
e-Handbook of Statistical Methods, section 1.3.5.2, "Confidence Limits for the Mean". Updates tell
of several days at once; where x stitches were made in d days, x has mean r d and variance v d, so

    r = sum(x) / sum(d)        v = sum((x - r d)^2 / d) / (N - 1)

which is the same where every d is 1.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from service.pace.settled import DAY
from service.pace.stretches import Stretch
from service.pace.student import t_of
from service.pace.weekdays import EVEN, WEEK, Week, mean_and_variance, weekdays_of

#: The pace is that of so many weeks, or updates where these are further apart.
LAST_WEEKS = 8
#: Fewer whole weeks than this make no weeks: then single days are compared instead.
FEWEST_WEEKS = 3
#: Stated minimum: without so many days and stretches there is not enough log to say.
FEWEST_DAYS = 10
FEWEST_STRETCHES = 3
#: Two days in a row with over so many times the stitches of any other two are one big weekend; of
#: updates, one that has over so many times the stitches a day of any other.
BIG_WEEKEND = 2.5
BIG_UPDATE = 1.75


@dataclass(frozen=True, slots=True)
class Pace:
    """Stitches a day in the last weeks of the log.

    `rate` is their mean, days without stitches among them; `variance` how far a single day strays
    from it, as far as days add up; `degrees` of freedom it was told from; `days` it was told from.
    `by_weekday` is each weekday's share of the mean, Monday first, all 1 where none stands out.
    `since` is the first of them. `big` says that one big weekend was counted as less.
    """

    rate: float
    variance: float
    degrees: int
    days: int
    since: date
    by_weekday: tuple[float, ...] = EVEN.shares
    big: bool = False

    @property
    def rough(self) -> bool:
        """Whether it was told from fewer than three weeks: no weekly habit is sure in these."""
        return self.days < FEWEST_WEEKS * WEEK

    def limits(self, confidence: float) -> tuple[float, float]:
        """The limits of the mean pace (e-Handbook 1.3.5.2), in stitches a day."""
        reach = t_of(confidence, self.degrees) * math.sqrt(self.variance / self.days)
        return self.rate - reach, self.rate + reach


def pace_of(stretches: Sequence[Stretch]) -> Pace | None:
    """The pace at the end of the stretches; None where there is not enough log to say.

    Whole weeks are compared, so that weekends do no harm and a week of rest shows; from fewer than
    three weeks, single days. Weeks that follow one another may be alike: a week without stitches
    lies across two of them, though hardly across three. What neighbours have in common is added to
    the variance, twice and no further (L. P. Hansen and R. J. Hodrick, Journal of Political Economy
    88, 1980), where it makes the range wider.

    One big weekend is counted as the next biggest: so winsorised (W. J. Dixon, Annals of
    Mathematical Statistics 31, 1960) it does not promise that the next weeks have one too.
    """
    days = sum(one.days for one in stretches)
    if days < FEWEST_DAYS or len(stretches) < FEWEST_STRETCHES:
        return None
    levelled, big = _without_big_weekend(_recent(stretches))
    weeks = _weeks(levelled)
    if len(weeks) < FEWEST_WEEKS:
        return _of_days(levelled, weeks, big=big)
    told = [one for week in weeks for one in week]
    rate, variance, shared = mean_and_variance([_together(week) for week in weeks])
    return _pace(
        told,
        (rate, variance + max(0.0, 2 * shared), len(weeks) - 1),
        weekdays_of(weeks).shares,
        big=big,
    )


def _of_days(stretches: Sequence[Stretch], weeks: Sequence[Week], *, big: bool) -> Pace:
    """The pace of a log of fewer than three weeks, from its single days.

    With two whole weeks, as far as weekdays stand out, only what differs within them counts.
    """
    weekdays = weekdays_of(weeks) if len(weeks) > 1 else EVEN
    told = [one for week in weeks for one in week] if weekdays.drawn else stretches
    rate, variance, _ = mean_and_variance([(one.stitches, one.days) for one in told])
    variance += weekdays.drawn * (weekdays.within - variance)
    degrees = len(told) - 1 if not weekdays.drawn else WEEK * (len(weeks) - 1)
    return _pace(told, (rate, variance, degrees), weekdays.shares, big=big)


def _pace(
    told: Sequence[Stretch],
    estimated: tuple[float, float, int],
    by_weekday: tuple[float, ...],
    *,
    big: bool,
) -> Pace:
    rate, variance, degrees = estimated
    days = sum(one.days for one in told)
    since = told[0].last - (told[0].days - 1) * DAY
    return Pace(rate, variance, degrees, days, since, by_weekday, big)


def _recent(stretches: Sequence[Stretch]) -> list[Stretch]:
    """The last eight weeks' stretches; where these are longer, the last eight of them."""
    days, first = 0, len(stretches)
    while first > 0:
        longer = days + stretches[first - 1].days
        if longer > LAST_WEEKS * WEEK and len(stretches) - first >= LAST_WEEKS:
            break
        days, first = longer, first - 1
    return list(stretches[first:])


def _weeks(stretches: Sequence[Stretch]) -> list[Week]:
    """Whole weeks counted back from the end, the oldest first; an update may make one longer."""
    weeks: list[Week] = []
    week: Week = []
    for one in reversed(stretches):
        week.insert(0, one)
        if sum(each.days for each in week) >= WEEK:
            weeks.insert(0, week)
            week = []
    return weeks


def _together(week: Week) -> tuple[float, int]:
    return sum(one.stitches for one in week), sum(one.days for one in week)


def _without_big_weekend(stretches: list[Stretch]) -> tuple[list[Stretch], bool]:
    """The stretches with one big weekend, or one big update, counted as the next biggest."""
    span = 2 if all(one.days == 1 for one in stretches) else 1
    pairs = [
        sum(one.stitches / one.days for one in stretches[place : place + span])
        for place in range(len(stretches) - span + 1)
    ]
    place = max(range(len(pairs)), key=pairs.__getitem__)
    apart = [pair for other, pair in enumerate(pairs) if abs(other - place) >= span]
    next_biggest = max(apart, default=0.0)
    most = (BIG_WEEKEND if span > 1 else BIG_UPDATE) * next_biggest
    if sum(pair > 0 for pair in apart) < FEWEST_STRETCHES or pairs[place] <= most:
        return stretches, False
    share = next_biggest / pairs[place]
    levelled = list(stretches)
    for number in range(place, place + span):
        one = levelled[number]
        levelled[number] = Stretch(one.last, one.days, one.stitches * share)
    return levelled, True
