"""Lists and fields of JSON as the caller names them: by name, or by a JSON Pointer.

JSON Pointer is RFC 6901 (April 2013), through the library jsonpointer.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import islice

from jsonpointer import EndOfList, JsonPointer, JsonPointerException

from service.comments.column_names import NO_COLUMN, meaning_called
from service.comments.formats import Meaning, Source
from service.comments.json_items import Item, Shape, words_in
from service.comments.json_values import Json
from service.comments.meanings import spelled
from service.errors import BadExport

#: A comment that is nothing but its text has no field; so it is called instead.
THE_TEXT_ITSELF = "the text itself"
_NOTHING = object()
_MOST_NAMED = 10


def parts_of(pointer: str, name: str) -> tuple[str, ...]:
    """The names on the way that a JSON Pointer tells. BadExport, about the export `name`."""
    try:
        return tuple(JsonPointer(pointer).parts)
    except JsonPointerException:
        raise BadExport(
            name,
            f"{pointer!r} is no JSON Pointer",
            "write it like /data/comments, with ~1 for / and ~0 for ~ in a name",
        ) from None


def list_named(root: Json, source: Source, place: str = "") -> Json:
    """What stands at `source.at`. BadExport where that is nothing, with the lists that there are."""
    pointer = source.at or ""
    parts_of(pointer, source.name)
    found = _resolved(pointer, root)
    if isinstance(found, dict | list):
        return found
    seen = ", ".join(islice(lists_in(root), _MOST_NAMED)) or "the whole, which is an empty pointer"
    what = "nothing" if found is _NOTHING else "no list and no object"
    raise BadExport(
        source.name, f"{what} stands at {pointer!r}", f"name one of these: {seen}", place
    )


def lists_in(root: Json) -> Iterator[str]:
    """The lists of a document that are not inside others, with how many stand in each."""
    waiting: list[tuple[str, Json]] = [("", root)]
    while waiting:
        where, value = waiting.pop()
        if isinstance(value, list):
            yield f"{where} ({len(value)})"
        elif isinstance(value, dict):
            inner = (
                (f"{where}/{name.replace('~', '~0').replace('/', '~1')}", each)
                for name, each in value.items()
                if isinstance(each, dict | list)
            )
            waiting.extend(reversed(list(inner)))


def _resolved(pointer: str, value: Json) -> Json:
    try:
        found = JsonPointer(pointer).resolve(value, _NOTHING)
    except JsonPointerException:
        return _NOTHING
    return _NOTHING if isinstance(found, EndOfList) else found


def with_pointers(items: Sequence[Item], source: Source) -> Source:
    """Give the comments the fields that the caller's pointers name, also those inside lists.

    A pointer begins at the comment; one that begins at the document's root is understood too, and
    is in the source that comes back as one from the comment. Raises BadExport for what is none.
    """
    return replace(
        source,
        columns=tuple(
            (meaning, _from_comment(items, name, source.name) if name.startswith("/") else name)
            for meaning, name in source.columns
        ),
    )


def _from_comment(items: Sequence[Item], name: str, export: str) -> str:
    """A field's pointer from the comment on; its words are put among the fields of each."""
    parts = parts_of(name, export)
    listed = [item for item in items if item.shape]
    if any(parts in item.fields for item in listed) or _add(listed, name):
        return name
    through = [item.pointer for item in listed if name.startswith(f"{item.pointer}/")]
    rest = name.removeprefix(max(through, key=len, default=""))
    if rest != name and (any(parts_of(rest, export) in item.fields for item in listed)):
        return rest
    return rest if _add(listed if rest != name else items, rest) else name


def _add(items: Sequence[Item], pointer: str) -> bool:
    path = tuple(JsonPointer(pointer).parts)
    found = False
    for item in items:
        words = words_in(_resolved(pointer, item.value))
        if words:
            item.fields[path] = words
            found = True
    return found


def place_named(name: str, paths: Sequence[Shape]) -> int | None:
    """The field the caller named: by its pointer, by its whole path, else by its last name."""
    if name == THE_TEXT_ITSELF and () in paths:
        return paths.index(())
    if name.startswith("/"):
        exact = tuple(JsonPointer(name).parts)
        if exact in paths:
            return paths.index(exact)
    wanted = name.strip("/").replace("/", ".")
    for alike in (str, spelled):
        for place, path in enumerate(paths):
            if path and alike(".".join(path)) == alike(wanted):
                return place
    return next((place for place, path in enumerate(paths) if path[-1:] == (name,)), None)


def has_named(places: Mapping[Meaning, Shape], source: Source, *meanings: str) -> bool:
    """Whether all fields that the caller named, or those of `meanings`, are where she says."""
    return all(
        _is_named(places.get(meaning_called(meaning, source.name)), name)
        for meaning, name in source.columns
        if not meanings or meaning in meanings
    )


def _is_named(place: Shape | None, name: str) -> bool:
    if place is None:
        return name == NO_COLUMN
    return place_named(name, [place]) is not None


def check_named(places: Mapping[Meaning, Shape], items: Sequence[Item], source: Source) -> None:
    """Raise BadExport where the caller named a field that no comment has."""
    for meaning, name in source.columns:
        if not _is_named(places.get(meaning_called(meaning, source.name)), name):
            seen = Counter(path for item in items for path in item.fields if path)
            told = ", ".join(".".join(path) for path, _ in seen.most_common(20))
            raise BadExport(
                source.name,
                f"no comment has a field {name!r}",
                f"name one of these: {told or 'none, there are no fields'}",
            )
