"""Every module that describes tables, imported: whoever needs all of them imports this one."""

from __future__ import annotations

from service.store import (
    tables,
    tables_comments,
    tables_counting,
    tables_desk,
    tables_forgotten,
    tables_mystery,
    tables_pace,
    tables_words,
)
from service.store.columns import metadata

__all__ = [
    "metadata",
    "tables",
    "tables_comments",
    "tables_counting",
    "tables_desk",
    "tables_forgotten",
    "tables_mystery",
    "tables_pace",
    "tables_words",
]
