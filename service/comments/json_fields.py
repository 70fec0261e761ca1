"""Which field of JSON objects means what: by the names on the way to it, else by its content."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from service.comments.column_content import Choosing, Column, by_content
from service.comments.column_names import NO_COLUMN, meaning_called
from service.comments.columns import by_name, without_doubtful_ids
from service.comments.dates import Order, order_of
from service.comments.formats import MEANINGS, Meaning, Source
from service.comments.json_items import Item, Shape
from service.comments.json_named import THE_TEXT_ITSELF, place_named
from service.comments.json_values import pointer
from service.comments.markup import looks_like_markup, text_of
from service.comments.meanings import Known, meanings_of, spelled

_LOOKED_AT = 500
#: How much worse a name is for each level that it stands deeper.
_DEEPER = 50
_MARKUP_NAMES = frozenset({"html", "markup"})
_OF_AUTHOR: dict[str, Known] = {
    **dict.fromkeys(("id", "uid", "uuid", "key", "url", "uri", "href"), "author_id"),
    **dict.fromkeys(
        (
            *("name", "displayname", "username", "fullname", "nickname", "nick", "handle"),
            *("login", "title", "preferredusername"),
            *("nom", "nombre", "nome", "naam"),
        ),
        "author",
    ),
}
#: Objects that a comment is wrapped in, and that are nothing of their own.
_WRAPPERS = frozenset(
    {
        "comment",
        "node",
        "data",
        "item",
        "object",
        "attributes",
        "entry",
        "fields",
        "message",
        "value",
    }
)
_OF_TEXT = frozenset({"raw", "plain", "original", "value", "source", *_MARKUP_NAMES})


@dataclass(frozen=True, slots=True)
class FieldMap:
    """For each meaning the path of its field; whether the texts are HTML; the dates' order.

    `columns` are what stands in the first of them.
    """

    places: dict[Meaning, Shape]
    is_markup: bool = False
    order: Order | None = None
    columns: dict[Meaning, Column] = field(default_factory=dict)

    @property
    def pairs(self) -> tuple[tuple[str, str], ...]:
        """Meanings with their fields, for the host."""
        return tuple((one, called(self.places[one])) for one in MEANINGS if one in self.places)

    @property
    def tells_who_or_when(self) -> bool:
        """Whether these are surely comments: not every object with a text is one."""
        return bool(self.places.keys() & {"author", "author_id", "posted"})

    def fields(self, item: Item) -> dict[str, str]:
        """An item's fields by their meanings."""
        found: dict[str, str] = {
            meaning: item.fields[path]
            for meaning, path in self.places.items()
            if path in item.fields
        }
        if self.is_markup and "text" in found:
            found["text"] = text_of(found["text"])
        return found


def called(path: Shape) -> str:
    """A field's path as the host may name it: as in author.name, else by a JSON Pointer."""
    if not path:
        return THE_TEXT_ITSELF
    plain = all(re.fullmatch(r"[^\W\d][^./]*", part) and part == part.strip() for part in path)
    return ".".join(path) if plain else pointer(path)


def map_fields(items: Sequence[Item], source: Source, *, content_too: bool = False) -> FieldMap:
    """The fields of items of one kind. `content_too` also tries what stands in them.

    `places` lacks "text" where no field holds it.
    """
    sample = items[:_LOOKED_AT]
    paths = list(dict.fromkeys(path for item in sample for path in item.fields))
    columns = [
        Column(place, tuple(item.fields.get(path, "").strip() for item in sample))
        for place, path in enumerate(paths)
    ]
    choosing = Choosing(columns)
    for meaning, name in source.columns:
        place = place_named(name, paths)
        if place is not None:
            choosing.take(meaning_called(meaning, source.name), place)
        elif name == NO_COLUMN:
            choosing.without.add(meaning_called(meaning, source.name))
    by_name(choosing, [claims_of(path) for path in paths])
    if content_too:
        by_content(choosing, has_header=True)
    without_doubtful_ids(choosing)
    places = {meaning: paths[place] for meaning, place in choosing.places.items()}
    if "text" not in places:
        return FieldMap(places)
    posted = choosing.places.get("posted")
    return FieldMap(
        places,
        _is_markup(places["text"], columns[choosing.places["text"]].filled),
        order_of(list(columns[posted].values)) if posted is not None else None,
        {meaning: columns[place] for meaning, place in choosing.places.items()},
    )


def claims_of(path: Shape) -> dict[Known, int]:
    """What a field may mean by its name and the names of the objects it stands in."""
    if not path:
        return {"text": 0}
    leaf = spelled(path[-1]).replace(" ", "")
    depth = _DEEPER * (len(path) - 1)
    for place, above in enumerate(reversed(path[:-1])):
        claim = _within(above, leaf, nearest=place == 0)
        if claim:
            return {claim: depth}
    if leaf in _MARKUP_NAMES or leaf in {"texthtml", "bodyhtml", "contenthtml", "messagehtml"}:
        return {"text": depth + _DEEPER}
    claims = {meaning: rank + depth for meaning, rank in meanings_of(path[-1]).items()}
    if not all(spelled(above) in _WRAPPERS for above in path[:-1]):
        claims.pop("id", None)  # a video's id, a badge's: whatever the object around it is
    return claims


def _within(above: str, leaf: str, *, nearest: bool) -> Known | None:
    """What a field means because of an object around it; None where that says nothing."""
    around = meanings_of(above)
    if "author" in around:
        return _OF_AUTHOR.get(leaf, "other")
    if "reply_to" in around:
        return "reply_to" if leaf in {"id", "uri", "url", "uuid", "key"} else "other"
    if "author_id" in around and nearest:
        return "author_id"
    if "posted" in around and nearest:
        return "posted"
    if "edited" in around and nearest:
        return "edited"
    if "text" in around and nearest and leaf in _OF_TEXT:
        return "text"
    return None


def _is_markup(path: Shape, texts: Sequence[str]) -> bool:
    if spelled(path[-1] if path else "").split()[-1:] in (["html"], ["markup"]):
        return True
    marked = sum(1 for text in texts if looks_like_markup(text))
    return marked > 0 and 10 * marked >= len(texts)
