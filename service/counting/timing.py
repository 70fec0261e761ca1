"""Whether a comment was written while the round was open."""

from __future__ import annotations

from typing import Literal

from service.comments.spans import Span
from service.counting.round import RoundRules

Timing = Literal["in time", "before the opening", "after the closing", "cannot tell when"]


def timing_of(written: Span, rules: RoundRules) -> Timing:
    """Where `written` lies; a span that straddles the opening or the closing cannot be told.

    A comment written at the opening is in time, one written at the closing is late.
    """
    if written.latest < rules.opens:
        return "before the opening"
    if rules.closes is not None and written.earliest >= rules.closes:
        return "after the closing"
    if written.earliest < rules.opens:
        return "cannot tell when"
    if rules.closes is not None and written.latest >= rules.closes:
        return "cannot tell when"
    return "in time"


def straddled(written: Span, rules: RoundRules) -> tuple[str, ...]:
    """What a span that cannot be told straddles: "the opening", "the closing" or both."""
    ends = (("the opening", rules.opens), ("the closing", rules.closes))
    return tuple(
        name for name, at in ends if at is not None and written.earliest < at <= written.latest
    )
