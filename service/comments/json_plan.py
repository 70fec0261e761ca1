"""Which of the lists inside JSON hold comments, and with which fields."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field

from service.comments.column_names import check_holds, meaning_called
from service.comments.formats import Source
from service.comments.json_fields import FieldMap, called, map_fields
from service.comments.json_items import ELEMENT, Item, Shape
from service.comments.json_named import check_named, has_named, with_pointers
from service.comments.meanings import spelled
from service.errors import NoTextColumn

_COMMENTS = frozenset({"comments", "kommentare", "commentaires", "comentarios", "commenti"})


@dataclass(slots=True)
class Plan:
    """How items are read: those of `chosen` shapes as comments, the rest of `kinds` are posts.

    `main` is the fields of most comments; None where there is nothing to read. The pointers of
    `source` begin at a comment.
    """

    source: Source
    kinds: dict[Shape, FieldMap] = field(default_factory=dict)
    chosen: dict[Shape, FieldMap] = field(default_factory=dict)
    main: FieldMap | None = None

    @property
    def pairs(self) -> tuple[tuple[str, str], ...]:
        """Meanings with their fields, for the host."""
        return self.main.pairs if self.main else ()

    def learn(self, items: Sequence[Item]) -> None:
        """Take in lists that were not seen when planning, where they plainly hold comments."""
        groups: dict[Shape, list[Item]] = defaultdict(list)
        for item in items:
            if item.shape not in self.kinds:
                groups[item.shape].append(item)
        for shape, group in groups.items():
            fields = map_fields(group, self.source)
            if "text" in fields.places and fields.tells_who_or_when:
                self.kinds[shape] = self.chosen[shape] = fields


def planned(items: Sequence[Item], source: Source, *, roots_too: bool) -> Plan:
    """The plan that these items tell. `roots_too` says that whole values are items of a list.

    Raises NoTextColumn where no field holds texts, BadExport for a field that is not there or
    does not hold what the caller says.
    """
    if not any(item.shape or item.fields for item in items):
        return Plan(source)
    source = with_pointers(items, source)
    kinds = _kinds(items, source, roots_too=roots_too)
    chosen = _without_posts(kinds) if source.at is None else kinds
    chosen = {
        shape: fields
        for shape, fields in chosen.items()
        if has_named(fields.places, source, "text")
    } or chosen
    fitting = [shape for shape, fields in chosen.items() if has_named(fields.places, source)]
    main = chosen[max(fitting or chosen, key=lambda shape: _size(items, shape))]
    check_named(main.places, items[:50], source)
    for meaning, _ in source.columns:
        known = meaning_called(meaning, source.name)
        if known in main.columns:
            check_holds(known, called(main.places[known]), main.columns[known], source.name)
    return Plan(source, kinds, chosen, main)


def _size(items: Sequence[Item], shape: Shape) -> int:
    return sum(1 for item in items if item.shape == shape)


def _kinds(items: Sequence[Item], source: Source, *, roots_too: bool) -> dict[Shape, FieldMap]:
    """The lists that hold comments, with their fields. Raises NoTextColumn where none does."""
    groups: dict[Shape, list[Item]] = defaultdict(list)
    for item in items:
        groups[item.shape].append(item)
    by_names = {shape: map_fields(group, source) for shape, group in groups.items()}
    told = {shape: fields for shape, fields in by_names.items() if "text" in fields.places}
    if source.at is not None and (ELEMENT,) in groups:
        return told | {(ELEMENT,): _of_the_list_named(groups[ELEMENT,], source)}
    lists = {shape: fields for shape, fields in told.items() if shape or roots_too}
    surely = {shape: fields for shape, fields in lists.items() if fields.tells_who_or_when}
    # Else: a lone comment, texts without authors or times, or names that say nothing.
    for kinds in (surely, _alone(told, has_who=True), lists, _alone(told)):
        if kinds:
            return kinds
    unnamed = {shape: group for shape, group in groups.items() if shape or roots_too}
    if unnamed:
        shape, group = max(unnamed.items(), key=lambda kind: len(kind[1]))
        fields = map_fields(group, source, content_too=True)
        if "text" in fields.places:
            return {shape: fields}
    raise _no_text(items, source)


def _of_the_list_named(items: Sequence[Item], source: Source) -> FieldMap:
    """The fields of the list that the caller named, by their names, else by what they hold."""
    fields = map_fields(items, source)
    if "text" not in fields.places:
        fields = map_fields(items, source, content_too=True)
    if "text" not in fields.places:
        raise _no_text(items, source)
    return fields


def _no_text(items: Sequence[Item], source: Source) -> NoTextColumn:
    seen = tuple(dict.fromkeys(called(path) for item in items[:50] for path in item.fields))
    return NoTextColumn(
        source.name, seen[:30], "name it, as in --columns text=FIELD, or its list, as in --at /data"
    )


def _alone(told: dict[Shape, FieldMap], *, has_who: bool = False) -> dict[Shape, FieldMap]:
    root = told.get(())
    return {(): root} if root and (root.tells_who_or_when or not has_who) else {}


def _without_posts(kinds: dict[Shape, FieldMap]) -> dict[Shape, FieldMap]:
    """Without the posts that comments answer: what has a list named "comments" inside."""
    posts = {_around(shape) for shape in kinds if _holds_comments(shape)}
    answers = {shape for shape in kinds if _holds_comments(_around(shape))}
    return {
        shape: fields for shape, fields in kinds.items() if shape not in posts or shape in answers
    }


def _around(shape: Shape) -> Shape:
    """The kind of item that a list of this shape stands in."""
    shape = shape[:-1]
    while shape and shape[-1] != ELEMENT:
        shape = shape[:-1]
    return shape


def _holds_comments(shape: Shape) -> bool:
    """Whether a list is named "comments", and is no list of replies."""
    names = [spelled(name) for name in shape[len(_around(shape)) : -1]]
    return bool(set(names) & _COMMENTS) and not any("repl" in name for name in names)
