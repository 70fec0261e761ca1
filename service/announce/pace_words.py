"""Pace in words: how far it is, when the page is finished, when to open, and the update post."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from service.announce.instants import day_in_words
from service.counting.wording import how_many, listed, pages_in_words, sentence
from service.pace.estimate import Pace
from service.pace.forecast import Finish, NotEnough
from service.pace.progress import ChartProgress, PageProgress, Since
from service.pace.rounds import Needed, Opening


@dataclass(frozen=True, slots=True)
class UpdatePost:
    """What an update post tells: `game` is the game's name, `pages` those in hand.

    `details` are stitched pages that wait for details. `finish` is when the pages in hand are
    finished, None where the post does not say.
    """

    game: str
    pages: tuple[PageProgress, ...]
    chart: ChartProgress
    since: Since
    finish: Finish | NotEnough | None
    confidence: float
    details: tuple[PageProgress, ...] = ()


def update_words(post: UpdatePost) -> str:
    """One paragraph for the update post, with the totals by piece."""
    parts = [f"{post.game}: {_pages_in_words((*post.pages, *post.details))}."]
    if post.chart.percent > 0:
        parts.append(f"The whole chart is at {percent_in_words(post.chart.percent)}.")
    parts.append(_since_in_words(post.since))
    if isinstance(post.finish, Finish) and any(page.left for page in post.pages):
        named = pages_in_words(page.page for page in post.pages)
        parts.append(finish_words(named, post.finish, post.confidence))
    return " ".join(parts)


def page_words(page: PageProgress) -> str:
    """How far a page is: "page 41 has 3,412 of 4,900 stitches, 69.6 %"."""
    named = f"page {page.page}"
    if page.percent is None or page.total is None:
        return f"{named} has {how_many(page.done, 'stitch', 'stitches')}"
    if page.done >= page.total:
        if page.details_to_come:
            return f"{named} has all its crosses, with {listed(page.details_to_come)} to come"
        return f"{named} has all its {page.total:,} stitches"
    percent = percent_in_words(page.percent)
    return f"{named} has {page.done:,} of {page.total:,} stitches, {percent}"


def finish_words(what: str, finish: Finish, confidence: float) -> str:
    """When something is finished, with its range: a sentence."""
    named = sentence(what)
    if finish.earliest == finish.middle == finish.latest:
        return f"{named} should be finished on {day_in_words(finish.middle)}."
    middle = f"{named} should be finished around {day_in_words(finish.middle)}"
    often = often_in_words(confidence)
    if finish.latest is None:
        first = day_in_words(finish.earliest)
        return f"{middle}, hardly before {first}, and no latest day can be told yet."
    return f"{middle}; {often} it is {_from_to(finish.earliest, finish.latest)}."


def often_in_words(confidence: float) -> str:
    """A confidence for people: "8 times in 10"."""
    tenths = confidence * 10
    if math.isclose(tenths, round(tenths)):
        return f"{round(tenths)} times in 10"
    return f"{round(confidence * 100)} times in 100"


def percent_in_words(percent: float) -> str:
    """A percentage with one decimal, cut and not rounded: 100 % is said of what is done alone."""
    return f"{math.floor(percent * 10 + 1e-9) / 10:.1f} %".replace(".0 %", " %")


def pace_words(pace: Pace) -> str:
    """The pace of the last weeks, and what is to be known of it: for the host."""
    words = (
        f"The pace is {pace.rate:,.0f} stitches a day, days without stitching among them, told "
        f"from {how_many(pace.days, 'day')} since {day_in_words(pace.since)}."
    )
    if pace.big:
        words += " One big weekend among them was counted as the next biggest."
    if pace.rough:
        words += " From fewer than three weeks it is rough: no weekly habit can be seen yet."
    return words


def opening_day_words(opening: Opening) -> str:
    """When to open the next round: for the host."""
    if opening.too_late:
        return (
            f"Open the next round today: to be sure to close before the page is finished it should "
            f"have opened by {day_in_words(opening.latest)}. Opened today it closes on "
            f"{day_in_words(opening.closes)}."
        )
    words = f"Open the next round on {day_in_words(opening.sensible)}"
    closes = day_in_words(opening.closes)
    if opening.sensible == opening.latest:
        return f"{words}. Opened then it closes on {closes}."
    return (
        f"{words}, or at the latest on {day_in_words(opening.latest)}. Opened on the first of "
        f"these days it closes on {closes}."
    )


def open_now_words(opening: Opening) -> str:
    """That the next round is to open today, where the page is finished: for the host."""
    return f"Open the next round: opened today it closes on {day_in_words(opening.closes)}."


def needed_words(what: str, needed: Needed) -> str:
    """What it would take to be done by a day: for the host."""
    if not needed.stitches:
        return f"{sentence(what)} has no stitches left."
    a_day = math.ceil(needed.a_day)
    words = (
        f"To finish {what} by {day_in_words(needed.by)} takes {a_day:,} stitches a day "
        f"({needed.stitches:,} in {how_many(needed.days, 'day')})"
    )
    if needed.times_the_pace is None:
        return f"{words}."
    return f"{words}, {needed.times_the_pace:.1f} times the pace of the last weeks."


def _pages_in_words(pages: Sequence[PageProgress]) -> str:
    return "; ".join(page_words(page) for page in pages) or "no page is in hand"


def _since_in_words(since: Since) -> str:
    """The totals by piece, in one sentence."""
    days = _from_to(since.first, since.last)
    if not since.in_all:
        return f"Nothing was stitched {days}."
    others = [one for one in since.pieces if one.piece and one.stitches]
    game = f"{how_many(since.of_game, 'stitch', 'stitches')} on the mystery"
    words = f"{sentence(days)}: {game}"
    if others:
        named = [f"{one.stitches:,} on “{one.piece}”" for one in others]
        words += f", {listed(named)}, {since.in_all:,} in all"
        if since.share is not None:
            words += f"; the mystery had {percent_in_words(100 * since.share)} of them"
    return f"{words}, {since.a_day:,.0f} a day."


def _from_to(first: date, last: date) -> str:
    if first == last:
        return f"on {day_in_words(last)}"
    return f"from {day_in_words(first, year=first.year != last.year)} to {day_in_words(last)}"
