"""An export's bytes made into comments: the format is found by content."""

from __future__ import annotations

from dataclasses import replace

from service.comments.decoding import decode
from service.comments.formats import Export, Source
from service.comments.tables import read_table
from service.comments.times import zone_of


def read_export(content: bytes, source: Source) -> Export:
    """The comments that an export holds, in its own order.

    The format is told by content, `source.format` overrules it. Raises EmptyExport, BinaryExport,
    NoTextColumn, another BadExport, and BadTime for a zone that there is not. What cannot be read
    inside is among `unreadable`.
    """
    zone_of(source.zone)
    decoded = decode(content, source.name)
    export = read_table(decoded.text, source)
    return replace(export, notes=(*decoded.notes, *export.notes))
