"""A stranger's words cut into pieces, so that those that decided can be marked. All of it is text."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol
from zoneinfo import ZoneInfo

from service.comments.spans import Span


class Found(Protocol):
    """Words that decided: the text's own characters from `start` to `end`, and by which rule."""

    @property
    def start(self) -> int: ...  # noqa: D102

    @property
    def end(self) -> int: ...  # noqa: D102

    @property
    def rule(self) -> str: ...  # noqa: D102


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of a text; `rule` says why it decided, and is empty where it did not."""

    words: str
    rule: str = ""


def pieces_of(text: str, found: Iterable[Found]) -> tuple[Piece, ...]:
    """The whole text in pieces, in its order; of spans that overlap the first is marked whole."""
    pieces: list[Piece] = []
    at = 0
    for one in sorted(found, key=lambda each: (each.start, -each.end)):
        start, end = max(at, one.start), min(one.end, len(text))
        if end <= start:
            continue
        if start > at:
            pieces.append(Piece(text[at:start]))
        pieces.append(Piece(text[start:end], one.rule))
        at = end
    if at < len(text):
        pieces.append(Piece(text[at:]))
    return tuple(pieces)


def short_time(at: datetime, zone: ZoneInfo) -> str:
    """A comment's time in the game's zone, short: there are many on a page."""
    return at.astimezone(zone).strftime("%a %d %b %Y, %H:%M")


def short_span(span: Span, zone: ZoneInfo) -> str:
    """The same of a span: "Sun 01 Mar 2026, 18:02", or between which times it was."""
    earliest = short_time(span.earliest, zone)
    if span.is_exact:
        return earliest
    latest = short_time(span.latest, zone)
    return earliest if earliest == latest else f"between {earliest} and {latest}"
