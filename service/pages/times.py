"""Instants as pages show them: in words, in several zones, and for the browser's own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from service.announce.instants import instant_in_words, local_in_words, time_left, zone_in_words


@dataclass(frozen=True, slots=True)
class Moment:
    """An instant: for the browser (RFC 3339), and in words in the host's zone and in UTC."""

    iso: str
    words: str


@dataclass(frozen=True, slots=True)
class Closing:
    """When a round closes: in each zone by its name, and how long that is from now.

    `left` is empty once it has passed. `now` is when the page was made.
    """

    iso: str
    now: str
    zones: tuple[tuple[str, str], ...]
    left: str


def moment(at: datetime, zone: ZoneInfo) -> Moment:
    """An instant for a page."""
    return Moment(iso_of(at), instant_in_words(at, zone))


def moment_or_none(at: datetime | None, zone: ZoneInfo) -> Moment | None:
    """An instant that may not be set."""
    return None if at is None else moment(at, zone)


def iso_of(at: datetime) -> str:
    """As RFC 3339 has it, in UTC."""
    return at.astimezone(UTC).isoformat().replace("+00:00", "Z")


def closing(at: datetime, zone: ZoneInfo, also: Sequence[ZoneInfo], now: datetime) -> Closing:
    """A closing in the host's zone, in UTC, and in the zones that she picked."""
    zones = dict.fromkeys((zone, *also, ZoneInfo("UTC")))
    return Closing(
        iso=iso_of(at),
        now=iso_of(now),
        zones=tuple((_named(at, one), local_in_words(at, one)) for one in zones),
        left=time_left(now, at) if now < at else "",
    )


def _named(at: datetime, zone: ZoneInfo) -> str:
    return zone_in_words(at, zone)
