"""The votes of a round by the day they were written: counted, in words, and as a chart."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from xml.etree import ElementTree as ET
from zoneinfo import ZoneInfo

from babel.dates import format_date

from service.announce.drawing import Brush, picture, written
from service.announce.map_look import Look
from service.announce.text_fit import broken, width_of
from service.counting.result import Ballot
from service.counting.wording import how_many, sentence

_LOCALE = "en_GB"
#: The chart's own size in pixels, and the most days that are drawn each as a bar.
_WIDE, _HIGH = SIZE_OF_DAYS = (760.0, 360.0)
MOST_DAYS = 62


@dataclass(frozen=True, slots=True)
class VotesByDay:
    """The votes that count, by the day in the game's zone; `days` has every day between too.

    `undated` are votes whose time does not tell the day. A span of more than 62 days is told by
    its weeks: then each `date` is a Monday, and `weekly` says so.
    """

    days: tuple[tuple[date, int], ...]
    undated: int
    zone: ZoneInfo
    weekly: bool = False

    @property
    def total(self) -> int:
        """All votes."""
        return sum(votes for _, votes in self.days) + self.undated


@dataclass(frozen=True, slots=True)
class Dated:
    """Votes by the day they were written in one zone, and those whose day cannot be told."""

    days: tuple[tuple[date, int], ...]
    undated: int


def dated(ballots: Iterable[Ballot], zone: ZoneInfo) -> Dated:
    """The votes of the ballots that stand, by the day they were written there."""
    found: Counter[date] = Counter()
    undated = 0
    for ballot in ballots:
        first = ballot.written.earliest.astimezone(zone).date()
        if first == ballot.written.latest.astimezone(zone).date():
            found[first] += len(ballot.pages)
        else:
            undated += len(ballot.pages)
    return Dated(tuple(sorted(found.items())), undated)


def votes_by_day(votes: Dated, zone: ZoneInfo, opens: datetime, ends: datetime) -> VotesByDay:
    """The votes with every day of the voting, which begins at `opens` and lasts until `ends`."""
    found = Counter(dict(votes.days))
    undated = votes.undated
    begins = min(found, default=opens.astimezone(zone).date())
    begins = min(begins, opens.astimezone(zone).date())
    last = max(max(found, default=begins), ends.astimezone(zone).date(), begins)
    many = (last - begins).days + 1
    if many <= MOST_DAYS:
        days = (begins + timedelta(days=step) for step in range(many))
        return VotesByDay(tuple((day, found[day]) for day in days), undated, zone)
    weeks: Counter[date] = Counter()
    for day, many_votes in found.items():
        weeks[_monday(day)] += many_votes
    mondays = range((_monday(last) - _monday(begins)).days // 7 + 1)
    starts = (_monday(begins) + timedelta(weeks=step) for step in mondays)
    return VotesByDay(tuple((day, weeks[day]) for day in starts), undated, zone, weekly=True)


def days_in_words(shown: VotesByDay) -> str:
    """The alternative text of the chart."""
    unit = "week from" if shown.weekly else "day"
    zone = shown.zone.key.replace("_", " ")
    said = [f"{how_many(shown.total, 'vote')} by the {unit} they were written, in {zone} time."]
    given = [(day, votes) for day, votes in shown.days if votes]
    if given:
        told = "; ".join(f"{_day(day)}: {how_many(votes, 'vote')}" for day, votes in given)
        said.append(f"{sentence(told)}.")
    if shown.undated:
        verb = "is" if shown.undated == 1 else "are"
        said.append(f"{how_many(shown.undated, 'vote')} {verb} of no certain day.")
    return " ".join(said)


def draw_days(shown: VotesByDay, title: str, caption: str = "", look: Look | None = None) -> str:
    """The chart as SVG: a bar a day, its number above, its weekday and date below."""
    look = look or Look(ids="days")
    root = picture((_WIDE, _HIGH), look.ids, (title, days_in_words(shown)))
    brush = Brush(look.theme, look.ids)
    if not look.plain:
        brush.shape(root, "rect", {"width": _WIDE, "height": _HIGH}, fill="ground")
    y = 20.0
    for words, size, role in ((title, 22.0, "ink"), (caption, 15.0, "soft-ink")):
        for line in broken(words, size, _WIDE - 48, 1):
            y += size * 1.25
            at = (24.0, y, size)
            brush.text(root, line, at, role=role, anchor="start", bold=role == "ink")
    _draw_bars(brush, root, shown, (y + 34, _HIGH - 62))
    if shown.undated:
        words = f"and {how_many(shown.undated, 'vote')} of no certain day"
        brush.text(root, words, (24, _HIGH - 10, 13), role="soft-ink", anchor="start")
    return written(root)


def _draw_bars(
    brush: Brush, root: ET.Element, shown: VotesByDay, between: tuple[float, float]
) -> None:
    """The bars between `between`, the y of the highest bar's top and of the ground line."""
    top, ground = between
    step = (_WIDE - 48) / len(shown.days)
    wide = min(step * 0.72, 64.0)
    most = max((votes for _, votes in shown.days), default=0)
    size = min(14.0, step / 2.6)
    every = _labelled(shown, step)
    for place, (day, votes) in enumerate(shown.days):
        middle = 24 + step * (place + 0.5)
        high = (ground - top) * votes / most if most else 0.0
        if votes:
            bar = {"x": middle - wide / 2, "y": ground - high, "width": wide, "height": high}
            edge = {"rx": min(3.0, wide / 6), "stroke-width": 1.2}
            brush.shape(root, "rect", bar | edge, fill="tone-2", stroke="votable-thread")
            if size >= 7:
                at = (middle, ground - high - 6, size)
                brush.text(root, f"{votes:,}", at, bold=True)
        if place % every == 0:
            for line, words in enumerate(_below(day, weekly=shown.weekly)):
                at = (middle, ground + 19 + line * 16, 13.0)
                brush.text(root, words, at, role="soft-ink")
    base = {"x1": 24, "y1": ground, "x2": _WIDE - 24, "y2": ground, "stroke-width": 1.6}
    brush.shape(root, "line", base, stroke="soft-ink")


def _labelled(shown: VotesByDay, step: float) -> int:
    """Every which bar has room for its day."""
    words = (word for day, _ in shown.days[:14] for word in _below(day, weekly=shown.weekly))
    widest = max(width_of(word, 13.0) for word in words)
    return max(1, -int(-(widest + 6) // step))


def _below(day: date, *, weekly: bool) -> tuple[str, ...]:
    dated = format_date(day, "d MMM", locale=_LOCALE)
    return (dated,) if weekly else (format_date(day, "EEE", locale=_LOCALE), dated)


def _day(day: date) -> str:
    return format_date(day, "EEEE d MMMM", locale=_LOCALE)


def _monday(day: date) -> date:
    return day - timedelta(days=day.weekday())
