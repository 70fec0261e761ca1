"""What all shapes of the API share: what comes in, what goes out, times and words."""

from __future__ import annotations

import re
from datetime import date, datetime
from typing import Annotated, Any
from zoneinfo import ZoneInfo

from fastapi import Query
from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field

from service.ballots.languages import LANGUAGES
from service.comments.spans import Span
from service.comments.times import read_moment


def without_nul(words: str) -> str:
    """The words, refused where they hold a NUL."""
    if "\x00" in words:
        raise ValueError("a NUL character cannot be kept; leave it out")
    return words


#: Words of the host: a name, a reason. A NUL is refused because PostgreSQL cannot keep it.
Words = Annotated[
    str, Field(min_length=1, max_length=500, pattern=r"\S"), AfterValidator(without_nul)
]

_KNOWN = sorted(LANGUAGES)


def _known(code: str) -> str:
    if code not in LANGUAGES:
        raise ValueError(f"{code!r} is no language that votes are read in: use {', '.join(_KNOWN)}")
    return code


def _each_once(codes: list[str]) -> list[str]:
    for place, code in enumerate(codes):
        if code in codes[:place]:
            raise ValueError(
                f"{code!r} is there twice: name each language once, of {', '.join(_KNOWN)}"
            )
    return codes


#: The languages that votes may be in, by their codes.
Languages = Annotated[
    list[
        Annotated[
            str,
            Field(max_length=40, examples=["en"], json_schema_extra={"enum": _KNOWN}),
            AfterValidator(_known),
        ]
    ],
    Field(max_length=100, json_schema_extra={"uniqueItems": True}),
    AfterValidator(_each_once),
]

#: How much of a list is answered, and from where on.
Limit = Annotated[int, Query(ge=1, le=10_000, description="How many to answer at most.")]
Offset = Annotated[int, Query(ge=0, le=10_000_000, description="How many to leave out.")]

#: An instant as its sender wrote it; read with the game's zone at hand.
MomentIn = Annotated[
    str,
    Field(
        max_length=40,
        description="RFC 3339 with an offset, or a local time of the game's zone such as "
        "2026-03-01T18:00.",
        examples=["2026-03-01T18:00", "2026-03-01T18:00:00Z"],
    ),
]


def _as_written(day: object) -> object:
    """The day, refused where it is a number of seconds or holds a time: the document says neither."""
    if isinstance(day, date) or (isinstance(day, str) and _DAY.fullmatch(day)):
        return day
    raise ValueError("write a day as in 2026-03-16")


_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
#: Any day, as it is written in JSON and in addresses.
AnyDay = Annotated[date, Field(strict=False), BeforeValidator(_as_written)]
#: A day of the game's zone. Others than these are slips, and calendars end somewhere.
Day = Annotated[AnyDay, Field(ge=date(2000, 1, 1), le=date(2200, 1, 1))]

Page = Annotated[int, Field(description="A page's number on the chart.", examples=[12])]


class In(BaseModel):
    """What a caller sends. A name that is not known is refused, lest a slip be ignored.

    So is a value of another type than the document says: false is no number, "12" is none.
    """

    model_config = ConfigDict(extra="forbid", frozen=True, hide_input_in_errors=True, strict=True)


class Out(BaseModel):
    """What is answered. A message about one that cannot be never quotes it: logs tell no secret."""

    model_config = ConfigDict(frozen=True, hide_input_in_errors=True)


class SpanOut(Out):
    """A time as exact as its source: it happened from `earliest` to `latest`, both included."""

    earliest: datetime
    latest: datetime

    @classmethod
    def of(cls, span: Span) -> SpanOut:
        """The span for JSON."""
        return cls(earliest=span.earliest, latest=span.latest)


def example(shown: dict[str, Any]) -> ConfigDict:
    """The configuration of a shape that shows `shown` as its example."""
    return ConfigDict(json_schema_extra={"examples": [shown]})


def moment_or_none(text: str | None, zone: ZoneInfo) -> datetime | None:
    """The instant that a caller wrote, in UTC; None where it was left out.

    Raises:
        BadTime: it is no time, or one that the zone's clocks show twice or never.
    """
    return None if text is None else read_moment(text, zone)
