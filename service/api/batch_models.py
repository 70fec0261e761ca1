"""Batches in JSON."""

from __future__ import annotations

from datetime import datetime

from pydantic import Field

from service.api.shapes import Out, example
from service.api.tally_models import UnreadableOut
from service.comments.formats import Format
from service.store.batches import BatchReport


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
            "repeated": False,
            "unreadable": [{"place": "line 17", "text": "", "why": "The record has no text."}],
            "mapping": {"author": "Name", "posted": "Time", "text": "Comment"},
            "notes": ["Times without an offset were read in Atlantic/Faroe."],
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
    unreadable: list[UnreadableOut]
    mapping: dict[str, str]
    notes: list[str]

    @classmethod
    def of(cls, report: BatchReport) -> BatchOut:
        """The report for JSON."""
        batch = report.batch
        return cls(
            batch=batch.number,
            name=batch.name,
            format=batch.format,
            handed_in=batch.handed_in,
            new=report.new,
            edited=report.edited,
            unchanged=report.unchanged,
            repeated=report.repeated,
            unreadable=[UnreadableOut(**one) for one in batch.unreadable],
            mapping=batch.mapping,
            notes=batch.notes,
        )
