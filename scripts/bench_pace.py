"""How often the forecast's range holds the true day, in logs made up with a pace that is known.

Each log is made by chance from a start that is told, as a stitcher of its kind would; what comes
after its last entry is known here and hidden from the forecast. The range says 8 times in 10.
"""

import argparse
import statistics
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, timedelta
from random import Random

from service.pace.entry import Entry
from service.pace.forecast import CONFIDENCE, Finish, Outlook, finish_of, outlook
from service.pace.settled import settle_log

FIRST = date(2026, 1, 5)
DAY = timedelta(days=1)
#: Days made up after the log, in which whatever is left is finished.
AFTER = 900
LEFT = (600, 7000)
LOGS = 1000

Rests = list[tuple[int, int]]


@dataclass(frozen=True)
class Made:
    """A made-up run of days: stitches on each, those before `known` in the log, and rests."""

    stitches: list[int]
    known: int
    rests: Rests = field(default_factory=list)


def steady(chance: Random, days: int) -> Made:
    """Every day, about 150."""
    return Made([_about(chance, 150, 45) for _ in range(days + AFTER)], days)


def irregular(chance: Random, days: int) -> Made:
    """On 6 days in 10, a few stitches or very many."""
    return Made([_now_and_then(chance) for _ in range(days + AFTER)], days)


def weekends(chance: Random, days: int) -> Made:
    """Saturdays and Sundays alone."""
    shift = chance.randrange(7)
    made = [
        round(chance.gammavariate(8, 60)) if (number + shift) % 7 > 4 else 0
        for number in range(days + AFTER)
    ]
    return Made(made, days)


def rest_weeks(chance: Random, days: int) -> Made:
    """Irregular, with a week of nothing about every seventh week that nobody told the log."""
    shift, free = chance.randrange(7), chance.random
    idle = [free() < 1 / 7 for _ in range((days + AFTER) // 7 + 2)]
    made = [
        0 if idle[(number + shift) // 7] else _now_and_then(chance)
        for number in range(days + AFTER)
    ]
    return Made(made, days)


def told_rests(chance: Random, days: int) -> Made:
    """Steady, with a week of rest in the log and ten days of rest to come, both told."""
    past, later = chance.randrange(days - 10), days + chance.randrange(2, 12)
    rests = [(past, past + 6), (later, later + 9)]
    made = [
        0 if any(first <= number <= last for first, last in rests) else _about(chance, 150, 45)
        for number in range(days + AFTER)
    ]
    return Made(made, days, rests)


def big_weekend(chance: Random, days: int) -> Made:
    """Steady, with one weekend of 900 more on each day in the last weeks of the log."""
    made = steady(chance, days)
    place = chance.randrange(max(0, days - 56), days - 1)
    for number in (place, place + 1):
        made.stitches[number] += 900
    return made


def by_day(made: Made, chance: Random) -> list[Entry]:
    """The log of a host who writes down every day on which she stitched."""
    del chance
    return [
        Entry(number + 1, FIRST + number * DAY, "on the day", stitches, page=1)
        for number, stitches in enumerate(made.stitches[: made.known])
        if stitches
    ]


def by_update(made: Made, chance: Random) -> list[Entry]:
    """The log of a host who tells a total every 4 to 10 days."""
    entries: list[Entry] = []
    before = 0
    while (now := before + chance.randint(4, 10)) <= made.known:
        stitches = sum(made.stitches[before:now])
        first = None if entries else FIRST
        day = FIRST + (now - 1) * DAY
        entries.append(Entry(now, day, "since last time", stitches, page=1, first=first))
        before = now
    return entries


@dataclass(frozen=True)
class Kind:
    """A kind of log: its name, how many weeks it holds, how its days are made and told."""

    name: str
    weeks: int
    make: Callable[[Random, int], Made]
    tell: Callable[[Made, Random], list[Entry]] = by_day


KINDS = (
    Kind("steady, a short log", 4, steady),
    Kind("steady", 8, steady),
    Kind("steady, a long log", 26, steady),
    Kind("irregular, a short log", 4, irregular),
    Kind("irregular", 8, irregular),
    Kind("irregular, a long log", 26, irregular),
    Kind("weekends only, a short log", 4, weekends),
    Kind("weekends only", 8, weekends),
    Kind("weekends only, a long log", 26, weekends),
    Kind("weeks without, not told", 8, rest_weeks),
    Kind("weeks without, not told, a long log", 26, rest_weeks),
    Kind("rests that are told", 8, told_rests),
    Kind("one big weekend, a short log", 4, big_weekend),
    Kind("one big weekend", 8, big_weekend),
    Kind("irregular, told by updates", 10, irregular, by_update),
    Kind("irregular, told by updates, a long log", 26, irregular, by_update),
)


@dataclass
class Tried:
    """What became of the logs of one kind: where the true day lay, and how wide the ranges were."""

    before: int = 0
    within: int = 0
    after: int = 0
    widths: list[int] = field(default_factory=list)

    @property
    def share(self) -> float:
        """In how many of 100 the range held the true day."""
        return 100 * self.within / max(1, self.before + self.within + self.after)

    def told(self) -> str:
        """The figures in a line."""
        width = statistics.median(self.widths) if self.widths else 0
        return (
            f"{self.share:.1f} of 100 (true day before it in {self.before}, after it in "
            f"{self.after}, of {self.before + self.within + self.after}), half of the ranges within "
            f"{width:.0f} days"
        )


def try_kind(kind: Kind, logs: int, chance: Random) -> Tried:
    """Forecasts so many logs of a kind, each with another number of stitches left."""
    tried = Tried()
    for _ in range(logs):
        made = kind.make(chance, kind.weeks * 7 + chance.randint(-3, 3))
        entries = kind.tell(made, chance)
        left = chance.randint(*LEFT)
        rests = [
            Entry(10_000 + first, FIRST + last * DAY, "rest", first=FIRST + first * DAY)
            for first, last in made.rests
        ]
        log = settle_log([*entries, *rests], {1: None})
        seen = outlook(log, entries[-1].day + DAY, CONFIDENCE)
        finish = finish_of(seen, left) if isinstance(seen, Outlook) else seen
        if isinstance(finish, Finish):
            _count(tried, finish, true_day(made, entries[-1].day, left))
    return tried


def true_day(made: Made, last: date, left: int) -> date:
    """The day on which what is left is done, after the log's last."""
    number = (last - FIRST).days
    while left > 0:
        number += 1
        left -= made.stitches[number]
    return FIRST + number * DAY


def add_pace(options: argparse.ArgumentParser) -> None:
    """The options of `pace`."""
    options.add_argument(
        "--logs", type=int, default=LOGS, metavar="N", help=f"logs of each kind ({LOGS})"
    )
    options.add_argument("--start", type=int, default=1, metavar="N", help="of the chance (1)")


def pace(given: argparse.Namespace) -> None:
    """Prints of every kind in how many of 100 logs the range held the true day."""
    chance = Random(given.start)  # noqa: S311 - a simulation that can be repeated
    shares = [_tried(kind, given.logs, chance) for kind in KINDS]
    print(f"all kinds: {statistics.mean(shares):.1f} of 100")


def _tried(kind: Kind, logs: int, chance: Random) -> float:
    tried = try_kind(kind, logs, chance)
    print(f"{kind.name}, {kind.weeks} weeks: {tried.told()}", flush=True)
    return tried.share


def _count(tried: Tried, finish: Finish, day: date) -> None:
    if day < finish.earliest:
        tried.before += 1
    elif finish.latest is not None and day > finish.latest:
        tried.after += 1
    else:
        tried.within += 1
    if finish.latest is not None:
        tried.widths.append((finish.latest - finish.earliest).days + 1)


def _about(chance: Random, mean: float, stray: float) -> int:
    return max(0, round(chance.gauss(mean, stray)))


def _now_and_then(chance: Random) -> int:
    return round(chance.gammavariate(2.5, 100)) if chance.random() < 0.6 else 0
