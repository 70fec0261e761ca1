"""Whether a comment was written while the round was open."""

from __future__ import annotations

from typing import Any, Literal

from service.comments.spans import Span
from service.counting.round import RoundRules

Timing = Literal["in time", "before the opening", "after the closing", "cannot tell when"]


def timing_of(written: Span, rules: RoundRules) -> Timing:
    """Where `written` lies; a span that straddles the opening or the closing cannot be told.

    A comment written at the opening is in time, one written at the closing is late.
    """
    return timing_between((written.earliest, written.latest), (rules.opens, rules.closes))


def timing_between(written: tuple[Any, Any], held: tuple[Any, Any]) -> Timing:
    """The same of the ends of a span and of the round's, in anything that is ordered as time is.

    The closing is None where there is none yet.
    """
    earliest, latest = written
    opens, closes = held
    if latest < opens:
        return "before the opening"
    if closes is not None and earliest >= closes:
        return "after the closing"
    if earliest < opens or (closes is not None and latest >= closes):
        return "cannot tell when"
    return "in time"


def straddled(written: Span, rules: RoundRules) -> tuple[str, ...]:
    """What a span that cannot be told straddles: "the opening", "the closing" or both."""
    ends = (("the opening", rules.opens), ("the closing", rules.closes))
    return tuple(
        name for name, at in ends if at is not None and written.earliest < at <= written.latest
    )
