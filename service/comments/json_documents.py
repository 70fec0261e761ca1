"""Comments in JSON: the list is found at any depth, replies inside comments are read too."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from service.comments import activitystreams
from service.comments.comment import Comment
from service.comments.entries import Times, comment_of, shortened
from service.comments.formats import Export, Source, Unreadable
from service.comments.json_fields import FieldMap, called
from service.comments.json_items import Item, Shape, items_of
from service.comments.json_named import list_named, parts_of
from service.comments.json_plan import Plan, planned
from service.comments.json_values import Json, parsed
from service.comments.meanings import meanings_of

_NO_COMMENTS = "The export holds no comments."


def read_json(text: str, source: Source) -> Export:
    """The comments of one JSON document. Raises BadExport with its line, NoTextColumn."""
    root = parsed(text, source.name)
    if source.at is None:
        return _read(root, source)
    named = list_named(root, source)
    if activitystreams.is_one(root):
        inner = named if isinstance(named, list) else [named]
        return activitystreams.read_streams([(source.at, one) for one in inner], source)
    return _read(named, source)


def _read(value: Json, source: Source) -> Export:
    """The comments in a parsed value: the document, or what the caller named in it."""
    if activitystreams.is_one(value):
        return activitystreams.read_streams([("", value)], source)
    items = list(items_of(value, "", parts_of(source.at or "", source.name)))
    plan = planned(items, source, roots_too=False)
    times = Times(source, plan.main.order if plan.main else None)
    found = list(read_items(items, plan, times))
    return Export(
        "json",
        tuple(one for one in found if isinstance(one, Comment)),
        tuple(one for one in found if isinstance(one, Unreadable)),
        plan.pairs,
        (*plan_notes(plan), *times.notes()),
    )


def read_items(items: Sequence[Item], plan: Plan, times: Times) -> Iterator[Comment | Unreadable]:
    """The comments among the items; what those answer is told as unreadable."""
    for item in items:
        fields = plan.chosen.get(item.shape)
        if fields:
            yield comment_of(_with_context(item, fields, plan.chosen), item.place, times)
        elif item.shape in plan.kinds:
            words = plan.kinds[item.shape].fields(item).get("text", "")
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


def plan_notes(plan: Plan) -> Iterator[str]:
    """What the host should know of the fields that were read."""
    main = plan.main
    if main is None:
        if not plan.chosen:
            yield _NO_COMMENTS
        return
    if main.is_markup:
        yield "The texts are HTML and were read as a reader sees them."
    if not main.places.keys() & {"author", "author_id"}:
        yield "No field tells the authors: every comment counts as a voter of its own."
    others = {
        (meaning, path[-1:])
        for fields in plan.chosen.values()
        for meaning, path in fields.places.items()
    }
    others -= {(meaning, path[-1:]) for meaning, path in main.places.items()}
    listed = [f"{meaning} from {called(path)}" for meaning, path in sorted(others)]
    if any(meaning in main.places for meaning, _ in others):
        yield f"Some lists inside have other fields: {', '.join(listed)}."
