"""Means and variances of stitches in so many days, and what single weekdays have of them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from service.pace.stretches import Stretch

WEEK = 7

Week = list[Stretch]


@dataclass(frozen=True, slots=True)
class Weekdays:
    """How weekdays differ: each one's share of the mean, Monday first; they average 1.

    `drawn` is how far the shares are the weekdays' own, 0 to 1: 0 where nothing but chance is seen
    in them. `within` is the variance of one weekday from week to week.
    """

    shares: tuple[float, ...]
    drawn: float = 0.0
    within: float = 0.0


EVEN = Weekdays((1.0,) * WEEK)


def mean_and_variance(values: Sequence[tuple[float, int]]) -> tuple[float, float, float]:
    """Of stitches in so many days: the mean a day, its variance, and what neighbours share of it.

    At least two values; see the module for the formula.
    """
    total = sum(days for _, days in values)
    rate = sum(stitches for stitches, _ in values) / total
    strays = [(stitches - rate * days) / math.sqrt(days) for stitches, days in values]
    degrees = len(values) - 1
    variance = sum(stray * stray for stray in strays) / degrees
    shared = sum(one * next_ for one, next_ in pairwise(strays)) / degrees
    return rate, variance, shared


def weekdays_of(weeks: Sequence[Week]) -> Weekdays:
    """Each weekday's share of the mean, drawn towards 1 as far as chance explains it.

    The factor is that of James and Stein in the form of B. Efron and C. Morris (Journal of the
    American Statistical Association 70, 1975): 1 - (k - 3) / (k - 1) / F for k weekdays, never
    below 0, with F the variance between weekdays over that within. Only of a log by day.
    """
    if any(one.days != 1 for week in weeks for one in week):
        return EVEN
    by_day: list[list[tuple[float, int]]] = [[] for _ in range(WEEK)]
    for week in weeks:
        for one in week:
            by_day[one.last.weekday()].append((one.stitches, 1))
    if any(len(values) < 2 for values in by_day):
        return EVEN
    told = [mean_and_variance(values) for values in by_day]
    means = [mean for mean, _, _ in told]
    mean, between, _ = mean_and_variance([(each, 1) for each in means])
    if mean <= 0 or between <= 0:
        return EVEN
    within = sum(variance for _, variance, _ in told) / WEEK
    by_chance = (WEEK - 3) / (WEEK - 1) * within / (len(weeks) * between)
    drawn = max(0.0, 1 - by_chance)
    return Weekdays(tuple(1 + drawn * (each / mean - 1) for each in means), drawn, within)
