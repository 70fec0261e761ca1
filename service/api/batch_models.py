"""Batches in JSON."""

from __future__ import annotations

from datetime import datetime

from pydantic import Field

from service.api.shapes import In, Out, Words, example
from service.api.tally_models import UnreadableOut
from service.comments.formats import Format
from service.store.batches import BatchReport, Reach, reach_of
from service.store.tables import RoundRow


class BatchOut(Out):
    """What a batch held. It tells nothing of how its comments count or what they guess."""

    model_config = example(
        {
            "batch": 1,
            "name": "comments.csv",
            "format": "table",
            "handed_in": "2026-03-04T18:05:00Z",
            "new": 41,
            "edited": 0,
            "unchanged": 0,
            "gone": 0,
            "repeated": False,
            "complete": False,
            "first": "2026-03-01T18:02:11Z",
            "last": "2026-03-04T17:58:40Z",
            "copied_at": "2026-03-04T18:05:00Z",
            "past_closing": "yes",
            "unreadable_count": 1,
            "unreadable": [{"place": "line 17", "text": "", "why": "The record has no text."}],
            "mapping": {"author": "Name", "posted": "Time", "text": "Comment"},
            "notes": ["Times without an offset were read in Atlantic/Faroe."],
            "taken_back": None,
            "why_taken_back": "",
        }
    )

    batch: int = Field(description="The batch's number in its round.")
    name: str
    format: Format
    handed_in: datetime
    new: int
    edited: int
    unchanged: int
    repeated: bool = Field(
        description="Whether the same bytes had been handed in before; then nothing changed."
    )
    gone: int = Field(
        description="Comments that were deleted: earlier batches showed them, a later complete one "
        "does not. The host decides what becomes of them."
    )
    complete: bool = Field(description="Whether it was said to show every comment there was.")
    first: datetime | None = Field(description="When its first comment was posted, as far as told.")
    last: datetime | None = Field(description="When its last comment was posted, as far as told.")
    copied_at: datetime
    past_closing: Reach | None = Field(
        description="Whether it reaches past the closing, so that no ballot in time is missing; "
        "null while the round has no closing."
    )
    unreadable_count: int = Field(description="How much could not be read.")
    unreadable: list[UnreadableOut] = Field(description="The first thousand of these.")
    mapping: dict[str, str]
    notes: list[str]
    taken_back: datetime | None = Field(
        description="When the host took it back; then none of its comments is in the round."
    )
    why_taken_back: str

    @classmethod
    def of(cls, report: BatchReport, row: RoundRow) -> BatchOut:
        """The report for JSON, of a batch of the round `row`."""
        batch = report.batch
        return cls(
            batch=batch.number,
            name=batch.name,
            format=batch.format,
            handed_in=batch.handed_in,
            new=report.new,
            edited=report.edited,
            unchanged=report.unchanged,
            gone=report.gone,
            repeated=report.repeated,
            complete=batch.complete,
            first=batch.first,
            last=batch.last,
            copied_at=batch.copied_at,
            past_closing=reach_of(batch, row.closes),
            unreadable_count=batch.unreadable_count,
            unreadable=[UnreadableOut(**one) for one in batch.unreadable],
            mapping=batch.mapping,
            notes=batch.notes,
            taken_back=batch.taken_back,
            why_taken_back=batch.why_taken_back,
        )


class TakeBackIn(In):
    """Why a batch is taken back."""

    model_config = example({"reason": "The columns of names and of comments were mixed up."})

    reason: Words
