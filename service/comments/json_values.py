"""JSON as values: parsing that names the line, and scalars as the text they stand for."""

from __future__ import annotations

import json
from typing import Any

from service.comments.entries import clean
from service.errors import BadExport

#: Any value of JSON.
Json = Any

_TOO_DEEP = "the JSON is nested too deep to be an export of comments"


def parsed(text: str, name: str, place: str = "") -> Json:
    """The value that a JSON text holds.

    Raises BadExport, with the line where it breaks (or `place`, where the text is one line of
    many), also for what is nested too deep.
    """
    try:
        # Names of fields reach messages; without escapes they cannot hold what may not be kept.
        return json.loads(text, object_pairs_hook=_kept if "\\u" in text else None)
    except json.JSONDecodeError as error:
        where = place or f"line {error.lineno}"
        raise BadExport(
            name,
            f"the JSON is broken or cut off here ({error.msg}, column {error.colno})",
            "export the comments again, whole",
            where,
        ) from None
    except RecursionError:
        raise BadExport(name, _TOO_DEEP, "hand in the list of comments alone", place) from None
    except ValueError:  # a number of thousands of digits
        raise BadExport(
            name, "the JSON holds a number that is too long", "export the comments again", place
        ) from None


def _kept(pairs: list[tuple[str, Json]]) -> dict[str, Json]:
    return {clean(name): value for name, value in pairs}


def scalar(value: Json) -> str:
    """A string, number, true or false as text; "" for anything else."""
    if isinstance(value, str):
        return value
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int):
        return str(value) if abs(value) < 10**30 else ""
    if isinstance(value, float) and abs(value) < 1e17:
        return str(int(value)) if value.is_integer() else repr(value)
    return ""


def pointer(parts: tuple[str | int, ...]) -> str:
    """Where a value stands, as RFC 6901 (April 2013) writes it, section 3."""
    return "".join(f"/{str(part).replace('~', '~0').replace('/', '~1')}" for part in parts)
