"""Which field of a record was altered, told by the record's own marks, and whether its digest fits.

Outside the comments each field has a mark. Of the comments each has one (its row), and each field
has one over all comments (its column): the altered field stands where both do not fit.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from verifying.canonical import sha256
from verifying.trouble import Trouble

DIGITS = 16
_ALTERED = "it was altered after the record was made."


def troubles_of_marks(record: dict[str, Any]) -> list[Trouble]:
    """The altered fields; the digest itself where all else fits."""
    told = record["marks"]
    made = marks_of(record)
    if told["whole"] != mark({name: told[name] for name in told if name != "whole"}):
        found = list(_altered_marks(made, told))
    else:
        found = [*_of_fields(made, told), *_of_comments(made, told)]
    if not found and record["digest"] != digest_of(record):
        found = [Trouble("digest", f"it is not that of this record, which is {digest_of(record)}.")]
    return found


def digest_of(record: dict[str, Any]) -> str:
    """SHA-256 of all of the record but its digest."""
    return sha256({name: value for name, value in record.items() if name != "digest"})


def marks_of(record: dict[str, Any]) -> dict[str, Any]:
    """The marks that the record's fields should have."""
    body = {name: value for name, value in record.items() if name not in ("marks", "digest")}
    comments = body.pop("comments")
    columns: dict[str, list[Any]] = {}
    for place, comment in enumerate(comments):
        for path, value in fields_of(comment):
            columns.setdefault(path, []).append([place, value])
    marks = {
        "fields": {path: mark(value) for path, value in fields_of(body)},
        "rows": [mark(comment) for comment in comments],
        "columns": {path: mark(values) for path, values in columns.items()},
    }
    marks["whole"] = mark(marks)
    return marks


def fields_of(value: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Every field with its path; a list without objects in it is one field."""
    if isinstance(value, dict) and value:
        for name, part in value.items():
            yield from fields_of(part, f"{path}.{name}" if path else name)
    elif isinstance(value, list) and any(isinstance(part, dict) for part in value):
        for place, part in enumerate(value):
            yield from fields_of(part, f"{path}[{place}]")
    else:
        yield path, value


def mark(value: Any) -> str:
    """The first digits of SHA-256 over the canonical form."""
    return sha256(value)[:DIGITS]


def _altered_marks(made: dict[str, Any], told: dict[str, Any]) -> Iterator[Trouble]:
    """The marks themselves do not fit together: each that differs from what it should be."""
    found = False
    for group in ("fields", "columns"):
        for path in sorted({*made[group], *told[group]}):
            if made[group].get(path) != told[group].get(path):
                found = True
                yield Trouble(f"marks.{group}.{path}", _ALTERED)
    for place in range(max(len(made["rows"]), len(told["rows"]))):
        if made["rows"][place : place + 1] != told["rows"][place : place + 1]:
            found = True
            yield Trouble(f"marks.rows[{place}]", _ALTERED)
    if not found:
        yield Trouble("marks.whole", _ALTERED)


def _of_fields(made: dict[str, Any], told: dict[str, Any]) -> Iterator[Trouble]:
    for path in sorted({*made["fields"], *told["fields"]}):
        if path not in made["fields"]:
            yield Trouble(path, "it was taken out after the record was made.")
        elif path not in told["fields"]:
            yield Trouble(path, "it was put in after the record was made.")
        elif made["fields"][path] != told["fields"][path]:
            yield Trouble(path, _ALTERED)


def _of_comments(made: dict[str, Any], told: dict[str, Any]) -> Iterator[Trouble]:
    if len(made["rows"]) != len(told["rows"]):
        why = f"there are {len(made['rows'])}, but the record was made of {len(told['rows'])}."
        yield Trouble("comments", why)
        return
    rows = [place for place, row in enumerate(made["rows"]) if row != told["rows"][place]]
    paths = sorted(
        path
        for path in {*made["columns"], *told["columns"]}
        if made["columns"].get(path) != told["columns"].get(path)
    )
    for place in rows:
        for path in paths or [""]:
            yield Trouble(f"comments[{place}].{path}".rstrip("."), _ALTERED)
