"""Lists inside JSON, at any depth, and the objects in them with what those are nested in."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from service.comments.json_values import Json, pointer, scalar
from service.comments.meanings import meanings_of

#: The names on the way to a list, without its indexes: items of one shape are of one kind.
Shape = tuple[str, ...]
#: Stands for every index of a list.
ELEMENT = "*"
_DEEPEST_FIELD = 8
#: How many fields of one object are looked at.
_MOST_FIELDS = 500


@dataclass(slots=True)
class Item:
    """One object of a list: where it stands, its fields by their paths, the item it is nested in.

    `pointer` is where it stands in its document, `value` what stands there. `key` is its name
    where it stands in an object of objects instead of a list.
    """

    place: str
    shape: Shape
    fields: dict[Shape, str]
    parent: Item | None
    pointer: str
    value: Json
    key: str = ""
    nested: set[str] = field(default_factory=set)


@dataclass(frozen=True, slots=True)
class _Node:
    value: Json
    path: tuple[str | int, ...]
    shape: Shape
    parent: Item | None


def items_of(root: Json, place: str, within: tuple[str, ...] = ()) -> Iterator[Item]:
    """Every object that stands in a list (or is the root), in the document's order.

    `place` is put before the places inside the document, `within` is where in it the root stands.
    """
    waiting = [_Node(root, within, (), None)]
    while waiting:
        node = waiting.pop()
        inner: Iterator[_Node]
        if isinstance(node.value, list):
            inner = _elements(node)
        elif isinstance(node.value, dict) and (not node.shape or node.shape[-1:] == (ELEMENT,)):
            item = _item(node, place)
            yield item
            inner = _members(node, item)
        elif isinstance(node.value, str) and node.shape[-1:] == (ELEMENT,):
            fields: dict[Shape, str] = {(): node.value}
            where = pointer(node.path)
            yield Item(_at(place, where), node.shape, fields, node.parent, where, node.value)
            continue
        elif isinstance(node.value, dict):
            inner = _members(node, node.parent)
        else:
            continue
        waiting.extend(reversed(list(inner)))


def _at(place: str, where: str) -> str:
    return ", ".join(part for part in (place, where) if part) or "the whole"


def _item(node: _Node, place: str) -> Item:
    fields, where = dict(_scalars(node.value)), pointer(node.path)
    last = node.path[-1] if node.shape else ""
    item = Item(_at(place, where), node.shape, fields, node.parent, where, node.value)
    item.key = last if isinstance(last, str) else ""
    if item.parent:
        item.parent.nested.add(node.shape[-2] if len(node.shape) > 1 else "")
    return item


def _elements(node: _Node) -> Iterator[_Node]:
    shape = (*node.shape, ELEMENT)
    for index, value in enumerate(node.value):
        yield _Node(value, (*node.path, index), shape, node.parent)


def _members(node: _Node, parent: Item | None) -> Iterator[_Node]:
    as_list = _is_list_by_name(node.value)
    for name, value in node.value.items():
        if isinstance(value, dict | list):
            shape = (*node.shape, ELEMENT if as_list else name)
            yield _Node(value, (*node.path, name), shape, parent)


def _is_list_by_name(value: dict[str, Json]) -> bool:
    """Whether an object holds its objects by their ids, as a list would."""
    inner = list(value.values())
    if len(inner) < 2 or not all(isinstance(one, dict) and one for one in inner):
        return False
    shared = set.intersection(*(set(one) for one in inner))
    named = any(meanings_of(name) for name in value)
    return not named and any("text" in meanings_of(name) for name in shared)


def _scalars(value: dict[str, Json]) -> Iterator[tuple[Shape, str]]:
    """The fields of an object and of the objects in it, by their paths; lists stay out.

    A list of strings, or of objects with nothing but a text, is one text in pieces.
    """
    waiting: list[tuple[Shape, Json]] = [((), value)]
    given = 0
    while waiting and given < _MOST_FIELDS:
        path, one = waiting.pop(0)
        if isinstance(one, dict):
            if len(path) < _DEEPEST_FIELD:
                waiting.extend(((*path, name), each) for name, each in one.items())
            continue
        words = words_in(one)
        if words:
            given += 1
            yield path, words


def words_in(value: Json) -> str:
    """What a value says as one text: a scalar, or a list of pieces; "" where it is neither."""
    return _pieces(value) if isinstance(value, list) else scalar(value)


def _pieces(values: list[Json]) -> str:
    joined = []
    for value in values:
        inner = list(value.values()) if isinstance(value, dict) else [value]
        if len(inner) != 1 or not isinstance(inner[0], str):
            return ""
        joined.append(inner[0])
    return "".join(joined)
