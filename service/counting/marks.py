"""Small marks over the fields of a record, so that whoever checks it can name what was altered.

They keep nothing secret and prove nothing: that is for the digest. Outside the comments each field
has a mark. Of the comments, which are many, each has one (a row), and each field has one over all
of them (a column): where a row and a column do not fit, the field at their crossing was altered.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from typing import Any

import rfc8785

Json = Any

#: Hexadecimal digits of a mark.
DIGITS = 16


class Marks:
    """The marks of a record, whose comments are told one after the other."""

    def __init__(self) -> None:
        self._rows: list[str] = []
        self._columns: dict[str, _Column] = {}

    def add(self, canonical: str) -> None:
        """Mark the next comment of the record, by its canonical JSON."""
        place, columns = len(self._rows), self._columns
        self._rows.append(_digits(canonical))
        for path, value in leaves(json.loads(canonical)):
            column = columns.get(path)
            if column is None:
                column = columns[path] = _Column()
            column.add(place, value)

    def told(self, body: dict[str, Json]) -> dict[str, Json]:
        """The marks with those of all the rest of the record, without its `marks` and `digest`.

        `whole` is the mark of the other marks, by which an altered mark is told from an altered field.
        """
        marks = {
            "fields": {path: mark(value) for path, value in leaves(body)},
            "rows": self._rows,
            "columns": {path: column.told() for path, column in self._columns.items()},
        }
        return marks | {"whole": _digits(plain_json(marks))}


class _Column:
    """The mark over one field of all comments, taken as they come."""

    def __init__(self) -> None:
        self._running = hashlib.sha256(b"[")
        self._is_first = True

    def add(self, place: int, value: Json) -> None:
        before = "" if self._is_first else ","
        self._is_first = False
        self._running.update(f"{before}[{place},{plain_json(value)}]".encode())

    def told(self) -> str:
        whole = self._running.copy()
        whole.update(b"]")
        return whole.hexdigest()[:DIGITS]


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


def plain_json(value: Json) -> str:
    """The canonical JSON (RFC 8785) of texts, whole numbers, yes and no, under names in ASCII.

    For these Python's own JSON is the same, and of very many comments it is many times as fast.
    """
    return "[]" if value == [] else _PLAIN(value)


_PLAIN = json.JSONEncoder(sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode


def _digits(canonical: str) -> str:
    return hashlib.sha256(canonical.encode()).hexdigest()[:DIGITS]
