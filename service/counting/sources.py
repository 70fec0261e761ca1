"""Where the numbers of a draw come from, named before the voting and told after it.

Outside sources are named in the rules of a round, with what happens where one is late or
cancelled (RFC 3797, sections 3.1 and 5). Where none is named, or all are left out, the round's own
value stands in: it was fixed before the opening, and its SHA-256 published, so that it cannot be
chosen afterwards; together with the ballots' digest nobody knows it before the voting has ended.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Literal, get_args

from service.counting.draw import plain_number
from service.counting.wording import listed
from service.errors import BadDraw, BadTime

IfLate = Literal["left out", "next numbers"]
IF_LATE: tuple[IfLate, ...] = get_args(IfLate)

#: "At most three or four", RFC 3797 section 3.1: each one more may be late.
MOST_SOURCES = 4


@dataclass(frozen=True, slots=True)
class DrawSource:
    """A source of numbers outside the game, such as a public lottery.

    `name` says which numbers, so that everybody finds the same. `expected` (aware) is when they
    will be known. `if_late` says what happens where they are late or cancelled: the source is
    `left out`, or its `next numbers` are waited for.
    """

    name: str
    expected: datetime
    if_late: IfLate = "left out"


@dataclass(frozen=True, slots=True)
class DrawRules:
    """What was announced of the draw: its sources in their order, none for the own value alone.

    `commitment` is SHA-256 of the round's own value in hexadecimal; empty before the opening.
    """

    sources: tuple[DrawSource, ...] = ()
    commitment: str = ""


@dataclass(frozen=True, slots=True)
class Told:
    """What became of a source: its numbers, or, where there are none, why it is left out."""

    numbers: tuple[str, ...] = ()
    reason: str = ""


@dataclass(frozen=True, slots=True)
class DrawInput:
    """What is known for the draw by now: `told` by the place of the source, counted from 1.

    `value` is the round's own value; None while nobody may know it.
    """

    told: tuple[tuple[int, Told], ...] = ()
    value: bytes | None = None


#: A draw without outside sources, and one of which nothing is known yet.
NO_SOURCES = DrawRules()
NOTHING_TOLD = DrawInput()


@dataclass(frozen=True, slots=True)
class Lots:
    """The numbers that a draw goes by, source by source, and where they are from, in words.

    `waits` says for what the draw still waits; empty where it can be held. `own` says that the
    round's own value stands in for outside sources.
    """

    numbers: tuple[tuple[str, ...], ...]
    origin: str
    waits: str = ""
    own: bool = False


def check_sources(sources: tuple[DrawSource, ...], closes: datetime | None = None) -> None:
    """Refuse sources that no draw can be held by; with `closes`, also those that come too early.

    Raises:
        BadDraw: too many sources, one without a name or named twice, an unknown way for late ones,
            or one whose numbers are known before the voting ends.
        BadTime: a time without a zone.
    """
    if len(sources) > MOST_SOURCES:
        raise BadDraw(
            f"the draw has {len(sources)} sources", f"name at most {MOST_SOURCES}, or none"
        )
    names = [source.name.strip() for source in sources]
    if "" in names or len(set(names)) != len(names):
        raise BadDraw(
            "a source of the draw has no name of its own", "say which numbers of what day"
        )
    for source in sources:
        if source.if_late not in IF_LATE:
            raise BadDraw(
                f"{source.if_late!r} does not say what happens where {source.name!r} is late",
                f"give one of: {', '.join(IF_LATE)}",
            )
        if source.expected.tzinfo is None:
            raise BadTime(source.expected.isoformat(), "a time has no zone", "give its offset")
        if closes is not None and is_too_early(source, closes):
            raise BadDraw(
                f"the numbers of {source.name!r} are known before the voting ends",
                "name numbers that come after the closing",
            )


def check_told(source: DrawSource, told: Told, closes: datetime, now: datetime) -> Told:
    """What is told of a source after the closing, its numbers as the key has them.

    Raises:
        BadDraw: numbers that are none, or before they can be known; neither numbers nor a reason;
            a source left out that the rules wait for, or whose time has not come.
    """
    if is_too_early(source, closes):
        raise BadDraw(
            f"the numbers of {source.name!r} were known before the voting ended and count nothing",
            "tell those of the other sources",
        )
    if now < source.expected:
        raise BadDraw(
            f"the numbers of {source.name!r} are expected at {_utc(source.expected)}",
            "tell them when that time has come",
        )
    if told.numbers:
        return Told(tuple(map(plain_number, told.numbers)), told.reason.strip())
    if not told.reason.strip():
        raise BadDraw(
            f"nothing is told of {source.name!r}", "give its numbers, or the reason to leave it out"
        )
    if source.if_late != "left out":
        raise BadDraw(
            f"the next numbers of {source.name!r} are waited for, as was said before the voting",
            "tell them when they are there",
        )
    return Told((), told.reason.strip())


def is_too_early(source: DrawSource, closes: datetime) -> bool:
    """Whether the numbers could be known while there was still voting; then they count nothing."""
    return source.expected < closes


def lots_of(rules: DrawRules, known: DrawInput, closes: datetime | None, digest: str) -> Lots:
    """The numbers to draw by, as far as they are there; `digest` is that of the ballots."""
    if closes is None:
        return Lots((), "", "the draw waits for the end of the voting")
    told = dict(known.told)
    numbers: list[tuple[str, ...]] = []
    names: list[str] = []
    for place, source in enumerate(rules.sources, start=1):
        if is_too_early(source, closes):
            continue
        if place not in told:
            return Lots((), "", f"the draw waits for the numbers of {source.name}")
        if told[place].numbers:
            numbers.append(told[place].numbers)
            names.append(f"{source.name} ({', '.join(told[place].numbers)})")
    if numbers:
        return Lots(tuple(numbers), f"the numbers of {listed(names)}")
    if known.value is None:
        return Lots((), "", "the draw waits for the round's own value")
    origin = "the round's own value, fixed before the opening, and the digest of the ballots"
    if rules.sources:
        origin += ", since no outside source could be used"
    return Lots(own_numbers(known.value, digest), origin, own=True)


def own_numbers(value: bytes, digest: str) -> tuple[tuple[str, ...], ...]:
    """The own value and the ballots' digest as two sources of one number each."""
    return ((str(int.from_bytes(value, "big")),), (str(int(digest, 16)),))


def commitment_of(value: bytes) -> str:
    """What is published of the own value before the voting: its SHA-256 in hexadecimal."""
    return hashlib.sha256(value).hexdigest()


def _utc(at: datetime) -> str:
    return at.astimezone(UTC).isoformat().replace("+00:00", "Z")
