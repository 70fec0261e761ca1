"""A comment's time as a span: as exact as its source and no more.

Comparing two spans answers yes, no, or cannot tell; nothing is decided on cannot tell.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from enum import Enum

from service.errors import BadTime


class Answer(Enum):
    """What comparing two spans says."""

    YES = "yes"
    NO = "no"
    CANNOT_TELL = "cannot tell"


@dataclass(frozen=True, slots=True)
class Span:
    """All instants at which something may have happened, `earliest` to `latest`, both included.

    Both are aware and in UTC. An exact time is a span of one instant.
    """

    earliest: datetime
    latest: datetime

    def __post_init__(self) -> None:
        earliest, latest = self.earliest, self.latest
        if earliest.tzinfo is latest.tzinfo is UTC and earliest <= latest:
            return  # as nearly all are
        if earliest.tzinfo is None or latest.tzinfo is None:
            raise BadTime(str(self.earliest), "a time has no zone", "give it with its offset")
        object.__setattr__(self, "earliest", self.earliest.astimezone(UTC))
        object.__setattr__(self, "latest", self.latest.astimezone(UTC))
        if self.latest < self.earliest:
            raise BadTime(
                f"{self.earliest.isoformat()} to {self.latest.isoformat()}",
                "a span of time ends before it begins",
                "give the earlier time first",
            )

    @classmethod
    def at(cls, instant: datetime) -> Span:
        """The span of one instant, for an exact time."""
        return cls(instant, instant)

    @property
    def is_exact(self) -> bool:
        """Whether the span is a single instant."""
        return self.earliest == self.latest

    def is_before(self, other: Span) -> Answer:
        """Whether this happened before `other`; the same instant cannot be told apart: no."""
        if self.latest < other.earliest:
            return Answer.YES
        if self.earliest >= other.latest:
            return Answer.NO
        return Answer.CANNOT_TELL
