"""A comment as the record of a count has it, and how a record tells times."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from service.comments.spans import Span
from service.counting.pseudonyms import name_pseudonym, pseudonym_of
from service.counting.result import Ballot, SetAside
from service.counting.round import ReadComment, Ruling

Json = Any


def utc(at: datetime) -> str:
    """An instant as a record has it: RFC 3339 in UTC, with `Z`."""
    return at.astimezone(UTC).isoformat().replace("+00:00", "Z")


def entry_of(one: ReadComment, outcome: Ballot | SetAside, salt: bytes) -> Json:
    """A comment as the record has it: under pseudonyms and without its words."""
    return {
        "voter": pseudonym_of(one.voter, salt),
        "name": name_pseudonym(one.author, salt),
        "written": _span(one.written),
        "host": one.is_host,
        "reading": {
            "outcome": one.reading.outcome,
            "pages": list(one.reading.pages),
            "reason": one.reading.reason,
        },
        "rulings": [_ruling(ruling) for ruling in one.rulings],
        "outcome": "counts" if isinstance(outcome, Ballot) else outcome.cause,
        "pages": list(outcome.pages),
    }


def _span(span: Span) -> Json:
    return {"earliest": utc(span.earliest), "latest": utc(span.latest)}


def _ruling(ruling: Ruling) -> Json:
    """A ruling without its reason, which may quote the comment or name its writer."""
    return {
        "at": utc(ruling.at),
        "pages": list(ruling.pages),
        "withdraws": ruling.withdraws,
        "in_time": ruling.in_time,
    }
