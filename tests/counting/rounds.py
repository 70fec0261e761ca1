"""Rounds made in a line: a chart of 4 x 3 pages, a round of two days, comments at hours."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

from service.ballots.reading import NoneReason, Outcome, Reading
from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import ReadComment, RoundInput, RoundRules, Ruling

OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)
CLOSES = OPENS + timedelta(hours=48)
CHART = Chart(4, 3)
RULES = RoundRules(OPENS, CLOSES, votable=frozenset(CHART.pages))


def hour(hours: float) -> datetime:
    """The instant so many hours after the opening."""
    return OPENS + timedelta(hours=hours)


def span(earliest: float, latest: float) -> Span:
    """A time that is known only to lie between two hours."""
    return Span(hour(earliest), hour(latest))


def reading(outcome: Outcome, *pages: int, reason: NoneReason | None = None) -> Reading:
    if outcome == "none":
        reason = reason or "no-page"
    return Reading(outcome, pages, reason, f"read as {outcome}")


def comment(
    key: str,
    read: Reading,
    at: float | tuple[float, float],
    *rulings: Ruling,
    voter: str = "",
    is_host: bool = False,
) -> ReadComment:
    written = Span.at(hour(at)) if isinstance(at, int | float) else span(*at)
    voter = voter or key
    return ReadComment(key, voter, voter.title(), written, read, is_host, rulings)


def vote(
    key: str,
    page: int | tuple[int, ...],
    at: float | tuple[float, float] = 1,
    *rulings: Ruling,
    voter: str = "",
) -> ReadComment:
    pages = (page,) if isinstance(page, int) else page
    return comment(key, reading("counts", *pages), at, *rulings, voter=voter)


def chat(
    key: str, at: float | tuple[float, float] = 1, *rulings: Ruling, voter: str = ""
) -> ReadComment:
    return comment(key, reading("none"), at, *rulings, voter=voter)


def takes_back(
    key: str, at: float | tuple[float, float] = 1, *rulings: Ruling, voter: str = ""
) -> ReadComment:
    return comment(key, reading("none", reason="withdrawn"), at, *rulings, voter=voter)


def look(
    key: str,
    *pages: int,
    at: float | tuple[float, float] = 1,
    rulings: tuple[Ruling, ...] = (),
    voter: str = "",
) -> ReadComment:
    return comment(key, reading("look", *pages), at, *rulings, voter=voter)


def ruling(*pages: int, withdraws: bool = False, in_time: bool | None = None) -> Ruling:
    return Ruling(pages, "asked the writer", hour(60), withdraws, in_time)


def round_of(*comments: ReadComment, rules: RoundRules = RULES, **changed: Any) -> RoundInput:
    """A round with those comments; `changed` are fields of its rules."""
    return RoundInput(CHART, replace(rules, **changed), comments)


def count(*comments: ReadComment, **changed: Any) -> Result:
    return count_round(round_of(*comments, **changed))


def causes(result: Result) -> dict[str, str]:
    """Every comment's outcome by key: "counts" or the cause for which it was set aside."""
    found: dict[str, str] = {ballot.key: "counts" for ballot in result.ballots}
    found.update((aside.key, aside.cause) for aside in result.set_aside)
    return found


def stood(result: Result) -> dict[str, tuple[int, ...]]:
    """The ballots that stand: comment and pages."""
    return {ballot.key: ballot.pages for ballot in result.ballots}
