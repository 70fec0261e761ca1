"""The days to come, each with its share of the pace: weekdays differ, days of rest bring nothing."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from datetime import date
from functools import cached_property
from itertools import accumulate

from service.pace.settled import DAY

#: Nothing is told of what lies further ahead: 20 years.
HORIZON = 7_305
#: On a weekday with a smaller share nothing is finished, as far as anybody can say.
HARDLY_ANY = 0.1
_CLOSE = 1e-9


class DaysToCome:
    """The days from `start` on, as days of the mean pace: a weekday's share each, 0 in a rest."""

    def __init__(
        self,
        start: date,
        by_weekday: Sequence[float],
        rests: Sequence[tuple[date, date]] = (),
    ) -> None:
        self.start = start
        self._by_weekday = by_weekday
        self._rests = rests

    @cached_property
    def shares(self) -> list[float]:
        """The share of each day."""
        first = self.start.weekday()
        shares = [self._by_weekday[(first + number) % 7] for number in range(HORIZON)]
        for begins, ends in self._rests:
            low = max(0, (begins - self.start).days)
            for number in range(low, min(HORIZON, (ends - self.start).days + 1)):
                shares[number] = 0.0
        return shares

    @cached_property
    def _sums(self) -> list[float]:
        return list(accumulate(self.shares, initial=0.0))

    def day(self, number: int) -> date:
        """The day that is `number`-th, from 1."""
        return self.start + (number - 1) * DAY

    def number_of(self, worth: float) -> int | None:
        """How many days bring `worth` days of the mean pace; None beyond the horizon."""
        number = bisect_left(self._sums, worth - _CLOSE)
        return number if number <= HORIZON else None

    def nearest_to(self, worth: float) -> int | None:
        """The number of whole days that comes nearest to it; None beyond the horizon."""
        number = self.number_of(worth)
        if number is None or number == 0:
            return number
        too_many, too_few = self._sums[number] - worth, worth - self._sums[number - 1]
        return number if too_many <= too_few else number - 1

    def from_working_day(self, number: int) -> int:
        """That day, or the next on which something may be finished."""
        while number < HORIZON and self.shares[number - 1] < HARDLY_ANY:
            number += 1
        return number

    def is_rest(self, day: date) -> bool:
        """Whether the host rests on that day."""
        return any(begins <= day <= ends for begins, ends in self._rests)

    def working_days(self, first: date, last: date) -> int:
        """How many days from `first` to `last`, both included, are no rest."""
        days = (first + number * DAY for number in range((last - first).days + 1))
        return sum(not self.is_rest(day) for day in days)
