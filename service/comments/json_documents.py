"""Comments in JSON: the list is found at any depth, replies inside comments are read too."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import replace

from service.comments import activitystreams
from service.comments.column_names import check_holds, meaning_called
from service.comments.comment import Comment
from service.comments.entries import Times, comment_of, shortened
from service.comments.formats import Export, Format, Source, Unreadable
from service.comments.json_fields import FieldMap, called, map_fields
from service.comments.json_items import ELEMENT, Item, Shape, items_of
from service.comments.json_named import check_named, has_named, list_named, parts_of, with_pointers
from service.comments.json_values import Json, parsed
from service.comments.meanings import meanings_of, spelled
from service.errors import BadExport, NoTextColumn

_COMMENTS = frozenset({"comments", "kommentare", "commentaires", "comentarios", "commenti"})
_NO_COMMENTS = "The export holds no comments."
_NO_OBJECT = "no JSON object, so no comment can be told from it"


def read_json(text: str, source: Source) -> Export:
    """The comments of one JSON document. Raises BadExport with its line, NoTextColumn."""
    root = parsed(text, source.name)
    if source.at is None:
        return read_values([("", root)], source, "json")
    named = list_named(root, source)
    if activitystreams.is_one(root):
        inner = named if isinstance(named, list) else [named]
        return activitystreams.read_streams([(source.at, one) for one in inner], source)
    return read_values([("", named)], source, "json")


def read_json_lines(text: str, source: Source) -> Export:
    """The comments of JSON Lines: one value a line.

    Among `unreadable` are the lines that are broken, and those that are no object and that hold
    no comment.
    """
    values: list[tuple[str, Json]] = []
    words: dict[str, str] = {}
    broken: list[Unreadable] = []
    for number, line in enumerate(text.split("\n"), 1):
        if not line.strip("\ufeff \t\r"):
            continue
        place = f"line {number}"
        words[place] = line
        try:
            value = parsed(line.strip("\ufeff \t\r"), source.name, place)
            values.append((place, value if source.at is None else list_named(value, source, place)))
        except BadExport as error:
            broken.append(Unreadable(place, shortened(line), error.what.rpartition(": ")[2]))
    if not values:
        first = broken[0].place if broken else ""
        raise BadExport(source.name, "no line is JSON", "export the comments again", first)
    export = _read_lines(
        [(place, one) for place, one in values if isinstance(one, dict | list)], source
    )
    read = {_line_of(one.place) for one in export.comments}
    read |= {_line_of(one.place) for one in export.unreadable}
    odd = [
        Unreadable(place, shortened(words[place]), _NO_OBJECT)
        for place, value in values
        if not isinstance(value, dict) and place not in read
    ]
    unreadable = sorted((*broken, *odd, *export.unreadable), key=_number_of_line)
    return replace(export, unreadable=tuple(unreadable))


def _read_lines(values: Sequence[tuple[str, Json]], source: Source) -> Export:
    """The comments in the lines that are objects or lists of them."""
    if not values:
        return Export("json lines", (), (), (), (_NO_COMMENTS,))
    return read_values(values, source, "json lines")


def _line_of(place: str) -> str:
    return place.partition(",")[0]


def _number_of_line(one: Unreadable) -> int:
    return int(_line_of(one.place).removeprefix("line "))


def read_values(values: Sequence[tuple[str, Json]], source: Source, form: Format) -> Export:
    """The comments in parsed values, each with its place before the places inside it."""
    if all(activitystreams.is_one(value) for _, value in values):
        return activitystreams.read_streams(values, source)
    within = parts_of(source.at or "", source.name)
    items = [item for place, value in values for item in items_of(value, place, within)]
    if not any(item.shape or item.fields for item in items):
        return Export(form, (), (), (), (_NO_COMMENTS,))
    source = with_pointers(items, source)
    kinds = _kinds(items, source, roots_too=form == "json lines")
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
    times = Times(source, main.order)
    found = list(_read(items, chosen, kinds, times))
    notes = [*_field_notes(chosen, main), *times.notes()]
    return Export(
        form,
        tuple(one for one in found if isinstance(one, Comment)),
        tuple(one for one in found if isinstance(one, Unreadable)),
        main.pairs,
        tuple(notes),
    )


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


def _read(
    items: Sequence[Item],
    chosen: dict[Shape, FieldMap],
    kinds: dict[Shape, FieldMap],
    times: Times,
) -> Iterator[Comment | Unreadable]:
    for item in items:
        fields = chosen.get(item.shape)
        if fields:
            yield comment_of(_with_context(item, fields, chosen), item.place, times)
        elif item.shape in kinds:
            words = kinds[item.shape].fields(item).get("text", "")
            why = "it has comments under it, so it was taken for the post that they answer"
            yield Unreadable(item.place, shortened(words), why)


def _with_context(item: Item, fields: FieldMap, chosen: dict[Shape, FieldMap]) -> dict[str, str]:
    """An item's fields; what it does not say itself follows from where it is nested."""
    found = fields.fields(item)
    if not found.get("id") and item.key and not meanings_of(item.key):
        found["id"] = item.key
    parent = item.parent
    if not found.get("reply_to") and parent and parent.shape in chosen:
        found["reply_to"] = chosen[parent.shape].fields(parent).get("id", "") or parent.key
    return found


def _field_notes(chosen: dict[Shape, FieldMap], main: FieldMap) -> Iterator[str]:
    if main.is_markup:
        yield "The texts are HTML and were read as a reader sees them."
    if not main.places.keys() & {"author", "author_id"}:
        yield "No field tells the authors: every comment counts as a voter of its own."
    others = {
        (meaning, path[-1:])
        for fields in chosen.values()
        for meaning, path in fields.places.items()
    }
    others -= {(meaning, path[-1:]) for meaning, path in main.places.items()}
    listed = [f"{meaning} from {called(path)}" for meaning, path in sorted(others)]
    if any(meaning in main.places for meaning, _ in others):
        yield f"Some lists inside have other fields: {', '.join(listed)}."
