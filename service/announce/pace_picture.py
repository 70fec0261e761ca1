"""A picture of the stitch log with the forecast, as SVG (W3C, Scalable Vector Graphics 1.1 and 2).

What differs in colour differs in form too: done is a solid line, the middle of the forecast a
dashed one, the range is hatched, and each is named in the picture. Ink and lines on the light
ground have the contrast that WCAG 2.2 asks of text (4.5) and of graphics (3); `title` and `desc`
say the same in words.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from service.announce.instants import day_in_words, short_day
from service.announce.pace_words import finish_words, often_in_words, percent_in_words
from service.announce.svg_elements import Drawing
from service.pace.forecast import Finish
from service.pace.settled import DAY

GROUND = "#ffffff"
INK = "#222222"
DONE = "#0b5c8f"
RANGE = "#8a4b00"
RULE = "#767676"
WIDE, HIGH = 720, 420
_LEFT, _RIGHT, _TOP, _BOTTOM = 78, 24, 74, 318
#: A range may reach years ahead; the picture shows at most so many times the days until the middle.
_MOST_AHEAD = 3
_MOST_DAYS = 4_000


@dataclass(frozen=True, slots=True)
class PacePicture:
    """What the picture shows of one page: `name` tells its ids apart on a page with others.

    `points` are what was done at the end of each day that the log tells of, from nothing on;
    `total` the crosses of the page.
    """

    game: str
    page: int
    points: tuple[tuple[date, int], ...]
    total: int
    finish: Finish | None
    confidence: float
    rests: tuple[tuple[date, date], ...] = ()
    name: str = "pace"


def points_of(brought: Sequence[tuple[date | None, date, int]]) -> tuple[tuple[date, int], ...]:
    """The points of a line through a page's log: (first day, last day, done after it) each.

    Days that the log does not tell of are level.
    """
    points: list[tuple[date, int]] = []
    done = 0
    for first, last, after in brought:
        start = (first or last) - DAY
        if not points or points[-1][0] < start:
            points.append((start, done))
        points.append((last, after))
        done = after
    return tuple(points)


def pace_picture(shown: PacePicture) -> str:
    """The picture as one SVG element, ready for a page or a file of its own.

    A page without an entry has nothing to show: `points` hold at least two.
    """
    scale = _Scale(shown)
    drawing = Drawing(shown.name, (WIDE, HIGH), _title(shown), _description(shown))
    fillings = drawing.hatching("range", RANGE), drawing.dots("rest", RULE)
    drawing.box((0, 0), (WIDE, HIGH), fill=GROUND)
    drawing.text((_LEFT, 28), _title(shown), font_size=18, font_weight="bold", fill=INK)
    _draw_axes(drawing, scale)
    _draw_rests(drawing, scale, fillings[1])
    _draw_total(drawing, scale)
    _draw_forecast(drawing, scale, fillings[0])
    points: list[tuple[float, float]] = [
        (scale.x(day), scale.y(done)) for day, done in shown.points
    ]
    drawing.lines(points, stroke=DONE, stroke_width=3)
    drawing.dot(points[-1], 5, fill=DONE)
    _draw_legend(drawing, scale, fillings)
    return drawing.whole()


class _Scale:
    """Where days and stitches lie in the picture."""

    def __init__(self, shown: PacePicture) -> None:
        self.shown = shown
        self.first = shown.points[0][0]
        self.known = shown.points[-1]
        self.last, self.is_cut = _last_day(shown)
        self.days = max(1, (self.last - self.first).days)
        self.rests = [
            (begins, ends)
            for begins, ends in shown.rests
            if ends > self.first and begins <= self.last
        ]

    def x(self, day: date) -> float:
        """The place of the end of a day."""
        share = min(1.0, max(0.0, (day - self.first).days / self.days))
        return round(_LEFT + share * (WIDE - _LEFT - _RIGHT), 1)

    def y(self, stitches: float) -> float:
        """The height of so many stitches."""
        return round(_BOTTOM - stitches / self.shown.total * (_BOTTOM - _TOP), 1)


def _last_day(shown: PacePicture) -> tuple[date, bool]:
    """The last day that is shown, and whether the range goes on beyond it."""
    first, (known, _) = shown.points[0][0], shown.points[-1]
    if shown.finish is None:
        return known + DAY, False
    middle = min(shown.finish.middle, first + _MOST_DAYS * DAY)
    most = middle + (_MOST_AHEAD - 1) * max(7, (middle - known).days) * DAY
    latest = shown.finish.latest
    if latest is None or latest > most:
        return max(most, known), True
    return max(latest, known) + DAY, False


def _title(shown: PacePicture) -> str:
    return f"{shown.game}: page {shown.page}"


def _description(shown: PacePicture) -> str:
    day, done = shown.points[-1]
    words = (
        f"From {day_in_words(shown.points[0][0] + DAY)} to {day_in_words(day)} {done:,} of "
        f"{shown.total:,} stitches were made, {percent_in_words(100 * done / shown.total)}."
    )
    if shown.finish is not None and done < shown.total:
        words += " " + finish_words(f"page {shown.page}", shown.finish, shown.confidence)
    return words


def _draw_axes(drawing: Drawing, scale: _Scale) -> None:
    total = scale.shown.total
    for stitches in range(0, total, _round_step(total / 4)):
        y = scale.y(stitches)
        # The label of the page's own total must not be written over.
        if y < scale.y(total) + 16:
            continue
        drawing.line((_LEFT, y), (WIDE - _RIGHT, y), stroke=RULE, stroke_width=0.6)
        drawing.text((_LEFT - 8, y + 5), f"{stitches:,}", text_anchor="end", fill=INK)
    with_year = scale.first.year != scale.last.year
    for number in range(0, scale.days + 1, max(1, -(-scale.days // 5))):
        day = scale.first + number * DAY
        x = scale.x(day)
        anchor = "end" if x > WIDE - _RIGHT - 30 else "middle"
        drawing.line((x, _BOTTOM), (x, _BOTTOM + 6), stroke=INK)
        words = short_day(day, year=with_year)
        drawing.text((x, _BOTTOM + 22), words, text_anchor=anchor, fill=INK)


def _round_step(about: float) -> int:
    """The next larger of 1, 2 or 5 times a power of ten."""
    power = 1
    while power * 10 <= about:
        power *= 10
    return next(power * each for each in (1, 2, 5, 10) if power * each >= about)


def _draw_rests(drawing: Drawing, scale: _Scale, filling: str) -> None:
    for first, last in scale.rests:
        x = scale.x(first - DAY)
        size = (round(scale.x(last) - x, 1), _BOTTOM - _TOP)
        drawing.box((x, _TOP), size, fill=filling)


def _draw_total(drawing: Drawing, scale: _Scale) -> None:
    y = scale.y(scale.shown.total)
    drawing.line((_LEFT, y), (WIDE - _RIGHT, y), stroke=INK, stroke_width=1.5)
    words = f"{scale.shown.total:,}"
    drawing.text((_LEFT - 8, y + 5), words, text_anchor="end", fill=INK)


def _draw_forecast(drawing: Drawing, scale: _Scale, filling: str) -> None:
    """The range from the last known point to the page's whole height, and its middle."""
    finish, (known, done) = scale.shown.finish, scale.known
    if finish is None or done >= scale.shown.total:
        return
    start, top = (scale.x(known), scale.y(done)), scale.y(scale.shown.total)
    middle = (scale.x(finish.middle), top)
    area: list[tuple[float, float]] = [start, (scale.x(finish.earliest), top)]
    if scale.is_cut:
        # A range that goes on beyond the picture leaves it at its right side.
        area += [(WIDE - _RIGHT, top), (WIDE - _RIGHT, _height_at_the_side(scale, finish))]
    elif finish.latest is not None:
        area.append((scale.x(finish.latest), top))
    drawing.area(area, fill=filling, stroke=RANGE, stroke_width=1.2)
    drawing.line(start, middle, stroke=GROUND, stroke_width=7)
    drawing.line(start, middle, stroke=INK, stroke_width=2.5, stroke_dasharray="8 5")
    anchor = "end" if middle[0] > WIDE - 150 else "middle"
    words = short_day(finish.middle, year=True)
    at = (middle[0], top - 10)
    drawing.text(at, words, text_anchor=anchor, font_weight="bold", fill=INK)


def _height_at_the_side(scale: _Scale, finish: Finish) -> float:
    """How high the slowest way has come where the picture ends."""
    known, done = scale.known
    if finish.latest is None:
        return scale.y(done)
    ahead = max(1, (finish.latest - known).days)
    return scale.y(done + (scale.shown.total - done) * (scale.last - known).days / ahead)


def _draw_legend(drawing: Drawing, scale: _Scale, fillings: tuple[str, str]) -> None:
    """What the line, the dashes, the hatching and the dots are, below the picture."""
    shown, done = scale.shown, scale.known[1]
    first, second, right = 368, 398, _LEFT + 330
    percent = percent_in_words(100 * done / shown.total)
    drawing.line((_LEFT, first - 5), (_LEFT + 30, first - 5), stroke=DONE, stroke_width=3)
    drawing.dot((_LEFT + 30, first - 5), 5, fill=DONE)
    drawing.text((_LEFT + 46, first), f"stitched: {done:,}, {percent}", fill=INK)
    if shown.finish is not None and done < shown.total:
        start, end = (right, first - 5), (right + 34, first - 5)
        drawing.line(start, end, stroke=INK, stroke_width=2.5, stroke_dasharray="8 5")
        drawing.text((right + 46, first), "middle of the forecast", fill=INK)
        drawing.box((_LEFT, second - 13), (34, 16), fill=fillings[0], stroke=RANGE)
        words = f"{often_in_words(shown.confidence)}: {_range_in_words(shown.finish)}"
        drawing.text((_LEFT + 46, second), words, fill=INK)
    if scale.rests:
        drawing.box((right, second - 13), (34, 16), fill=fillings[1], stroke=RULE)
        drawing.text((right + 46, second), "rest", fill=INK)


def _range_in_words(finish: Finish) -> str:
    earliest = short_day(finish.earliest)
    if finish.latest is None:
        return f"after {earliest}"
    if finish.latest == finish.earliest:
        return f"on {earliest}"
    far = finish.latest.year != finish.earliest.year
    return f"{earliest} to {short_day(finish.latest, year=far)}"
