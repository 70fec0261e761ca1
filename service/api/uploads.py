"""An export that was handed in: a file without a name that the framework keeps, read in pieces."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import BinaryIO

from fastapi import UploadFile

from service.comments.content import PIECE
from service.comments.entries import clean
from service.comments.formats import OpenExport, Source
from service.comments.intake import open_export
from service.errors import BadExport

#: What an upload without a file name is called in messages.
UNNAMED = "the export"


@dataclass(frozen=True, slots=True)
class Uploaded:
    """The bytes of an upload."""

    file: BinaryIO
    size: int

    @classmethod
    def of(cls, upload: UploadFile) -> Uploaded:
        """The bytes of what the framework has received."""
        return cls(upload.file, upload.file.seek(0, 2))

    def pieces(self) -> Iterator[bytes]:
        """The bytes from the beginning, a piece at a time."""
        self.file.seek(0)
        while piece := self.file.read(PIECE):
            yield piece


def name_of(upload: UploadFile) -> str:
    """What an upload is called in messages."""
    return clean(upload.filename or "") or UNNAMED


def open_as_before(
    content: Uploaded, source: Source, remembered: Mapping[str, str], most_at_once: int
) -> OpenExport:
    """Open an export, by the columns that were named for an earlier one where it has them.

    Raises:
        BadExport, BadTime: as reading it does.
    """
    if remembered and not source.columns:
        named = replace(source, columns=tuple(remembered.items()))
        try:
            opened = open_export(content, named, most_at_once)
        except BadExport:
            pass  # Another table than the one that they were named for.
        else:
            if opened.format in {"table", "json", "json lines"}:
                return _with_note(opened)
    return open_export(content, source, most_at_once)


def _with_note(opened: OpenExport) -> OpenExport:
    note = "The columns are those that were named for an earlier export of this game."
    return replace(opened, notes=lambda: (*opened.notes(), note))
