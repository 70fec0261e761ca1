"""Small marks over the fields of a record, so that whoever checks it can name what was altered.

They keep nothing secret and prove nothing: that is for the digest. Outside the comments each field
has a mark. Of the comments, which are many, each has one (a row), and each field has one over all
of them (a column): where a row and a column do not fit, the field at their crossing was altered.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from typing import Any

import rfc8785

Json = Any

#: Hexadecimal digits of a mark.
DIGITS = 16


def marks_of(record: dict[str, Json]) -> dict[str, Json]:
    """The marks of a record; its own `marks` and `digest` are left out.

    `whole` is the mark of the other marks, by which an altered mark is told from an altered field.
    """
    body = {name: value for name, value in record.items() if name not in ("marks", "digest")}
    comments = body.pop("comments")
    columns: dict[str, list[Json]] = {}
    for place, comment in enumerate(comments):
        for path, value in leaves(comment):
            columns.setdefault(path, []).append([place, value])
    marks = {
        "fields": {path: mark(value) for path, value in leaves(body)},
        "rows": [mark(comment) for comment in comments],
        "columns": {path: mark(values) for path, values in columns.items()},
    }
    return marks | {"whole": mark(marks)}


def leaves(value: Json, path: str = "") -> Iterator[tuple[str, Json]]:
    """The fields of a record with their paths, as in `revision.reason` and `result.steps[0].rule`.

    A list without objects in it is one field.
    """
    if isinstance(value, dict) and value:
        for name, part in value.items():
            yield from leaves(part, f"{path}.{name}" if path else name)
    elif isinstance(value, list) and any(isinstance(part, dict) for part in value):
        for place, part in enumerate(value):
            yield from leaves(part, f"{path}[{place}]")
    else:
        yield path, value


def mark(value: Json) -> str:
    """The first digits of SHA-256 over the canonical JSON (RFC 8785) of a value."""
    return hashlib.sha256(rfc8785.dumps(value)).hexdigest()[:DIGITS]
