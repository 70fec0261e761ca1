"""Comments in JSON: the list is found at any depth, replies inside comments are read too."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from service.comments import activitystreams
from service.comments.comment import Comment
from service.comments.entries import Times, comment_of, shortened
from service.comments.formats import Export, Format, Source, Unreadable
from service.comments.json_fields import FieldMap, called, check_named, map_fields
from service.comments.json_items import ELEMENT, Item, Shape, items_of
from service.comments.json_values import Json, parsed
from service.comments.meanings import meanings_of, spelled
from service.errors import NoTextColumn

_COMMENTS = frozenset({"comments", "kommentare", "commentaires", "comentarios", "commenti"})
NO_COMMENTS = "The export holds no comments."


def read_json(text: str, source: Source) -> Export:
    """The comments of one JSON document. Raises BadExport with its line, NoTextColumn."""
    return read_values([("", parsed(text, source.name))], source, "json")


def read_values(values: Sequence[tuple[str, Json]], source: Source, form: Format) -> Export:
    """The comments in parsed values, each with its place before the places inside it."""
    if all(activitystreams.is_one(value) for _, value in values):
        return activitystreams.read_streams(values, source)
    items = [item for place, value in values for item in items_of(value, place)]
    if not any(item.shape or item.fields for item in items):
        return Export(form, (), (), (), (NO_COMMENTS,))
    kinds = kinds_of(items, source, roots_too=form == "json lines")
    chosen = without_posts(kinds)
    main = max(chosen.items(), key=lambda kind: size_of(items, kind[0]))[1]
    check_named(main, [called(path) for item in items[:50] for path in item.fields], source)
    times = Times(source, main.order)
    found = list(read_items(items, chosen, kinds, times))
    notes = [*field_notes(chosen, main), *times.notes()]
    return Export(
        form,
        tuple(one for one in found if isinstance(one, Comment)),
        tuple(one for one in found if isinstance(one, Unreadable)),
        main.pairs,
        tuple(notes),
    )


def size_of(items: Sequence[Item], shape: Shape) -> int:
    """How many of the items are of this shape."""
    return sum(1 for item in items if item.shape == shape)


def kinds_of(items: Sequence[Item], source: Source, *, roots_too: bool) -> dict[Shape, FieldMap]:
    """The lists that hold comments, with their fields. Raises NoTextColumn where none does."""
    groups: dict[Shape, list[Item]] = defaultdict(list)
    for item in items:
        groups[item.shape].append(item)
    by_names = {shape: map_fields(group, source) for shape, group in groups.items()}
    told = {shape: fields for shape, fields in by_names.items() if "text" in fields.places}
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
    seen = tuple(dict.fromkeys(called(path) for item in items[:50] for path in item.fields))
    raise NoTextColumn(source.name, seen[:30])


def _alone(told: dict[Shape, FieldMap], *, has_who: bool = False) -> dict[Shape, FieldMap]:
    root = told.get(())
    return {(): root} if root and (root.tells_who_or_when or not has_who) else {}


def without_posts(kinds: dict[Shape, FieldMap]) -> dict[Shape, FieldMap]:
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


def read_items(
    items: Sequence[Item],
    chosen: dict[Shape, FieldMap],
    kinds: dict[Shape, FieldMap],
    times: Times,
) -> Iterator[Comment | Unreadable]:
    """The comments of the chosen lists; what those answer is told as unreadable."""
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


def field_notes(chosen: dict[Shape, FieldMap], main: FieldMap) -> Iterator[str]:
    """What the host should know of the fields that were read."""
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
