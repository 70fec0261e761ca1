"""Revisions of an announced result, and its record, in JSON."""

from __future__ import annotations

from datetime import datetime

from pydantic import ConfigDict, Field

from service.api.shapes import In, Out, Words, example
from service.store.tables_counting import RevisionRow

_REVISION = {
    "number": 1,
    "announced": "2026-03-04T19:30:00Z",
    "reason": None,
    "winner": 13,
    "digest": "d1" * 32,
}


class RevisionIn(In):
    """Why the result is announced again."""

    model_config = example({"reason": "a second export was found"})

    reason: Words


class RevisionOut(Out):
    """One announced result of a round."""

    model_config = example(_REVISION)

    number: int
    announced: datetime
    reason: str | None = Field(description="Why it follows the one before; null for the first.")
    winner: int | None
    digest: str | None = Field(description="SHA-256 of its record.")

    @classmethod
    def of(cls, row: RevisionRow) -> RevisionOut:
        """The revision for JSON."""
        return cls(
            number=row.number,
            announced=row.announced,
            reason=row.reason,
            winner=row.result["winner"],
            digest=row.digest,
        )


class RecordOut(Out):
    """A record in canonical JSON (RFC 8785); DEVELOPERS.md tells its format field by field."""

    model_config = ConfigDict(
        frozen=True,
        extra="allow",
        json_schema_extra={"examples": [{"format": "loopstart record 1", "digest": "d1" * 32}]},
    )

    format: str
    digest: str
