"""The form of a record: each field that must be there, and what it may hold.

A shape is the name of a kind of value, a dictionary of shapes by name, a list of one shape for each
of its parts, or a tuple of words of which one, or of a shape and None for null. The name `*` stands
for any name.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from datetime import datetime
from typing import Any

from verifying.trouble import Trouble

FORMAT = "loopstart record 1"

VOTES = [{"page": "page", "votes": "number"}]
COMMENT = {
    "voter": "hash",
    "name": ("hash", None),
    "written": {"earliest": "moment", "latest": "moment"},
    "host": "yes or no",
    "reading": {
        "outcome": ("counts", "look", "none"),
        "pages": "pages",
        "reason": ("no-page", "off-chart", "withdrawn", None),
    },
    "rulings": [
        {
            "at": "moment",
            "pages": "pages",
            "withdraws": "yes or no",
            "in_time": ("yes or no", None),
        }
    ],
    "outcome": "words",
    "pages": "pages",
}
SOURCE = {
    "name": "words",
    "expected": "moment",
    "if_late": ("left out", "next numbers"),
    "numbers": ("texts", None),
    "left_out": ("text", None),
}
STEP = {
    "rule": "words",
    "tied": "pages",
    "kept": "pages",
    "values": [{"page": "page", "value": "text"}],
}
RECORD: dict[str, Any] = {
    "format": (FORMAT,),
    "game": {"slug": "words", "name": "text", "seal": ("hash", None)},
    "round": "page",
    "runoff_of": ("page", None),
    "revision": {
        "number": "page",
        "announced": "moment",
        "reason": ("text", None),
        "before": ("hash", None),
    },
    "rules": {
        "opens": "moment",
        "closes": ("moment", None),
        "choices": "page",
        "standing": ("latest", "first"),
        "tie_breaks": "texts",
        "votable": "pages",
        "stitched": "pages",
    },
    "chart": {
        "columns": "page",
        "rows": "page",
        "order": ("across", "down"),
        "start": ("top left", "top right", "bottom left", "bottom right"),
        "back_and_forth": "yes or no",
        "no_page": "cells",
        "joined": ("edge", "edge or corner"),
    },
    "salt": "hex",
    "comments": [COMMENT],
    "pick": ({"page": "page", "reason": "text"}, None),
    "runoff": (
        {
            "round": "page",
            "pages": "pages",
            "winner": ("page", None),
            "votes": VOTES,
            "digest": "text",
        },
        None,
    ),
    "draw": (
        {
            "commitment": "hash",
            "sources": [SOURCE],
            "value": ("hash", None),
            "key": ("text", None),
            "order": ("pages", None),
        },
        None,
    ),
    "result": {
        "comments": "number",
        "ballots": "number",
        "ballots_digest": "hash",
        "set_aside": {"*": "number"},
        "looks": "number",
        "tally": VOTES,
        "steps": [STEP],
        "winner": ("page", None),
        "undecided": "pages",
    },
    "marks": {
        "fields": {"*": "text"},
        "rows": "texts",
        "columns": {"*": "text"},
        "whole": "text",
    },
    "digest": "hash",
}


def troubles_of_form(value: Any, shape: Any = None, path: str = "") -> Iterator[Trouble]:
    """What is missing, what is there besides, and what holds another kind of value."""
    shape = RECORD if shape is None else shape
    if isinstance(shape, dict):
        yield from _of_object(value, shape, path)
    elif isinstance(shape, list):
        if not isinstance(value, list):
            yield Trouble(path, "it should be a list.")
            return
        for place, part in enumerate(value):
            yield from troubles_of_form(part, shape[0], f"{path}[{place}]")
    elif isinstance(shape, tuple):
        yield from _of_choices(value, shape, path)
    elif not KINDS[shape](value):
        yield Trouble(path, f"{value!r} cannot stand here ({shape}).")


def _of_object(value: Any, shape: dict[str, Any], path: str) -> Iterator[Trouble]:
    if not isinstance(value, dict):
        yield Trouble(path or "the record", "it should be an object of names and values.")
        return
    if "*" in shape:
        shape = dict.fromkeys(value, shape["*"])
    for name in [*shape, *(name for name in value if name not in shape)]:
        inner = f"{path}.{name}" if path else name
        if name not in value:
            yield Trouble(inner, "it is missing.")
        elif name not in shape:
            yield Trouble(inner, "a record has no such field.")
        else:
            yield from troubles_of_form(value[name], shape[name], inner)


def _of_choices(value: Any, shape: tuple[Any, ...], path: str) -> Iterator[Trouble]:
    """A choice of words to the letter, of null, or one other shape."""
    if value is None and None in shape:
        return
    others = [
        one for one in shape if one is not None and not (isinstance(one, str) and one not in KINDS)
    ]
    if others:
        yield from troubles_of_form(value, others[0], path)
    elif value not in shape:
        yield Trouble(path, f"it is {value!r}, which is none of: {', '.join(map(str, shape))}.")


def moment(text: str) -> datetime:
    """An instant of a record: RFC 3339 in UTC, with Z.

    Raises:
        ValueError: it is none.
    """
    if not re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d([.]\d{6})?Z", text, re.ASCII):
        raise ValueError(text)
    return datetime.fromisoformat(f"{text[:-1]}+00:00")


def _is_moment(value: Any) -> bool:
    try:
        return isinstance(value, str) and moment(value) is not None
    except ValueError:
        return False


def _is_number(value: Any) -> bool:
    return isinstance(value, int) and not isinstance(value, bool) and value >= 0


def _is_page(value: Any) -> bool:
    return _is_number(value) and value > 0


def _all(value: Any, fits: Callable[[Any], bool]) -> bool:
    return isinstance(value, list) and all(map(fits, value))


def _is_text(value: Any) -> bool:
    return isinstance(value, str)


KINDS: dict[str, Callable[[Any], bool]] = {
    "text": _is_text,
    "words": lambda value: isinstance(value, str) and bool(value.strip()),
    "texts": lambda value: _all(value, _is_text),
    "hash": lambda value: isinstance(value, str) and bool(re.fullmatch("[0-9a-f]{64}", value)),
    "hex": lambda value: isinstance(value, str) and bool(re.fullmatch("([0-9a-f]{2})+", value)),
    "moment": _is_moment,
    "yes or no": lambda value: isinstance(value, bool),
    "number": _is_number,
    "page": _is_page,
    "pages": lambda value: _all(value, _is_page),
    "cells": lambda value: _all(value, lambda cell: _all(cell, _is_page) and len(cell) == 2),
}
