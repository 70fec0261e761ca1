"""Every module that describes tables, imported: whoever needs all of them imports this one."""

from __future__ import annotations

from sqlalchemy import Table

from service.store import (
    tables,
    tables_comments,
    tables_counting,
    tables_desk,
    tables_forgotten,
    tables_mystery,
    tables_pace,
    tables_passing,
    tables_words,
)
from service.store.columns import metadata

__all__ = [
    "kept_tables",
    "metadata",
    "tables",
    "tables_comments",
    "tables_counting",
    "tables_desk",
    "tables_forgotten",
    "tables_mystery",
    "tables_pace",
    "tables_passing",
    "tables_words",
]


def kept_tables() -> list[Table]:
    """The tables whose rows stay, those first that others refer to."""
    return [table for table in metadata.sorted_tables if not table.info.get("passing")]
