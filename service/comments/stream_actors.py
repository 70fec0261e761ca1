"""Objects of ActivityStreams 2.0 by their types and ids, and the names of those who act."""

from __future__ import annotations

import re
from collections.abc import Iterator

from service.comments.json_values import Json, scalar

ACTORS = frozenset({"Person", "Service", "Organization", "Group", "Application"})


def author_of(value: Json, names: dict[str, str]) -> tuple[str, str]:
    """The names of those who wrote it, and the first one's id."""
    told: list[str] = []
    first = ""
    for one in value if isinstance(value, list) else [value]:
        own = first_id(one)
        name = _name(one) or names.get(own) or _last_part(own)
        if name:
            told.append(name)
        first = first or own
    return " & ".join(told), first


def _name(value: Json) -> str:
    if not isinstance(value, dict):
        return ""
    mapped = value.get("nameMap")
    first = next(iter(mapped.values()), "") if isinstance(mapped, dict) else ""
    return scalar(value.get("name")) or scalar(first) or scalar(value.get("preferredUsername"))


def first_id(value: Json) -> str:
    """The id of a link or an object, or of the first of several; "" where there is none."""
    for one in value if isinstance(value, list) else [value]:
        own = one
        if isinstance(one, dict):
            own = scalar(one.get("id") or one.get("@id") or one.get("href"))
        if isinstance(own, str) and own:
            return own
    return ""


def _last_part(address: str) -> str:
    """What an address calls its actor: its last part, else its host."""
    path = re.sub(r"^[\w+.-]+:(?://)?|[?#].*$", "", address, flags=re.DOTALL)
    parts = [part for part in path.split("/") if part]
    if not parts:
        return address
    name = re.sub(r"(?:%[\da-fA-F]{2})+", _unescaped, parts[-1])
    return name.lstrip("@") if len(parts) > 1 else name


def _unescaped(found: re.Match[str]) -> str:
    """Letters that an address writes as percent signs with their UTF-8 bytes."""
    return bytes.fromhex(found.group().replace("%", "")).decode("utf-8", "replace")


def actors_in(root: Json) -> Iterator[tuple[str, str]]:
    """Ids and names of the actors that a document tells in full anywhere."""
    waiting = [root]
    while waiting:
        value = waiting.pop()
        if isinstance(value, list):
            waiting.extend(value)
        elif isinstance(value, dict):
            waiting.extend(value.values())
            own, name = first_id(value), _name(value)
            if own and name and types_of(value) & ACTORS:
                yield own, name


def types_of(value: dict[str, Json]) -> set[str]:
    """An object's types without the vocabulary's address before them."""
    told = value.get("type", value.get("@type"))
    named = told if isinstance(told, list) else [told]
    return {one.rpartition("#")[2].removeprefix("as:") for one in named if isinstance(one, str)}
