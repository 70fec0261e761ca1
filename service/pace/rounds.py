"""When the next round must open, the rounds to come, and what it would take to be done by a date.

Days are whole days of the game's zone. A vote that opens on a day with `round_days` days of voting
closes so many days later, and `margin_days` after that its result is to be announced and the next
page prepared.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from service.errors import BadLog
from service.pace.calendar import HORIZON
from service.pace.forecast import Finish, NotEnough, Outlook, finish_of
from service.pace.settled import DAY

#: A round of more days, or a longer margin, is a slip of typing.
MOST_DAYS = 365
#: Viewers have seen something of a page once so much of it is done.
SEEN = 0.5


@dataclass(frozen=True, slots=True)
class RoundPlan:
    """How long the voting of a round lasts, and the margin between its closing and the finish.

    Raises:
        BadLog: fewer than 1 day of voting, a margin below 0, or more than a year.
    """

    round_days: int = 2
    margin_days: int = 1

    def __post_init__(self) -> None:
        if not 1 <= self.round_days <= MOST_DAYS or not 0 <= self.margin_days <= MOST_DAYS:
            raise BadLog(
                f"a round of {self.round_days} days with a margin of {self.margin_days}",
                f"give a round of 1 to {MOST_DAYS} days and a margin of 0 to {MOST_DAYS}",
            )

    @property
    def days(self) -> int:
        """From the opening to the finish of the page."""
        return self.round_days + self.margin_days


@dataclass(frozen=True, slots=True)
class Opening:
    """When the next round is to open.

    `latest` is the last day on which it still closes, with the margin, before the earliest day of
    the page's finish; `sensible` the day on which half of the page is likely to be seen, but not
    after the latest. Where `too_late`, the latest has passed: then the round opens today, and may
    close only after the page is finished.
    """

    sensible: date
    latest: date
    closes: date
    too_late: bool


@dataclass(frozen=True, slots=True)
class RoundToCome:
    """A round projected: `number` from 1 counts from now; its page's finish is `finish`.

    `opens` and `closes` follow from the page before it, `latest` is its latest opening.
    """

    number: int
    opens: date
    latest: date
    closes: date
    finish: Finish | NotEnough


@dataclass(frozen=True, slots=True)
class Needed:
    """What it would take to make `stitches` by the end of `by`.

    `days` are those from today on that are neither logged yet nor rest, `a_day` the stitches on each of them.
    `times_the_pace` compares that with the pace of the last weeks; None where that is not known.
    """

    by: date
    stitches: int
    days: int
    a_day: float
    times_the_pace: float | None


def next_opening(
    seen: Outlook, left: int, total: int, plan: RoundPlan
) -> tuple[Finish | NotEnough, Opening | None]:
    """When the page in hand is finished, and when the next round is to open.

    `left` of the page's `total` stitches are still to be made.
    """
    finish = finish_of(seen, left)
    if isinstance(finish, NotEnough):
        return finish, None
    half = finish_of(seen, left - (1 - SEEN) * total)
    return finish, _opening(seen, finish, half, plan)


def rounds_to_come(
    seen: Outlook, in_hand: tuple[int, int], pages: Sequence[int], plan: RoundPlan, most: int
) -> tuple[RoundToCome, ...]:
    """The calendar of the rounds that choose the pages still unstitched, at most so many.

    `in_hand` are the stitches left of the page in hand and all of it, `pages` are the stitches of each unstitched page. Which is chosen when is not known, so the
    k-th has their mean, and the spread of k drawn from them without replacement (k s^2 (M - k) / M
    for M pages; W. G. Cochran, Sampling Techniques, Wiley 1977, chapter 2) is added to what the
    pace brings. So each range is as wide as all that lies before it makes it.
    """
    many = len(pages)
    mean = sum(pages) / many if many else 0.0
    variance = sum((page - mean) ** 2 for page in pages) / (many - 1) if many > 1 else 0.0
    found: list[RoundToCome] = []
    left, total = in_hand
    before = finish_of(seen, left)
    half = finish_of(seen, left - (1 - SEEN) * total)
    for number in range(1, min(many, most) + 1):
        if isinstance(before, NotEnough):
            break
        opening = _opening(seen, before, half, plan)
        spread = number * variance * (many - number) / many
        done = left + number * mean
        half = finish_of(seen, done - SEEN * mean, spread)
        before = finish_of(seen, done, spread)
        found.append(RoundToCome(number, opening.sensible, opening.latest, opening.closes, before))
    return tuple(found)


def needed(stitches: int, by: date, today: date, seen: Outlook | NotEnough) -> Needed:
    """What it would take to make so many stitches from today until the end of `by`.

    Where today is logged already, tomorrow is the first day.

    Raises:
        BadLog: the day has passed, is over 20 years ahead, or all days until it are rest.
    """
    number = (by - today).days + 1
    if not 1 <= number <= HORIZON:
        raise BadLog(
            f"{by} is no day from today on within 20 years (today is {today})",
            "give a later day" if number < 1 else "give an earlier day",
        )
    days, pace = number, None
    if isinstance(seen, Outlook):
        pace = seen.pace.rate
        days = seen.days.working_days(max(today, seen.days.start), by)
    if not days:
        raise BadLog(f"every day until {by} is one of rest", "give a later day")
    a_day = max(0, stitches) / days
    return Needed(by, max(0, stitches), days, a_day, a_day / pace if pace else None)


def _opening(seen: Outlook, finish: Finish, half: Finish | NotEnough, plan: RoundPlan) -> Opening:
    latest = finish.earliest - plan.days * DAY
    too_late = latest < seen.as_of
    wanted = half.middle if isinstance(half, Finish) else latest
    sensible = max(seen.as_of, min(wanted, latest))
    return Opening(sensible, latest, sensible + plan.round_days * DAY, too_late)
