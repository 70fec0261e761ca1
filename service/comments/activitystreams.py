"""Comments as ActivityStreams 2.0 (W3C Recommendation, 23 May 2017): collections of notes."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from service.comments.comment import Comment
from service.comments.entries import Times, comment_of, shortened
from service.comments.formats import Export, Source, Unreadable
from service.comments.json_values import Json, pointer, scalar
from service.comments.markup import text_of
from service.comments.stream_actors import ACTORS, actors_in, author_of, first_id, types_of
from service.comments.stream_deletions import Deletions
from service.errors import BadExport

_CONTEXT = "www.w3.org/ns/activitystreams"
_COLLECTIONS = frozenset(
    {"Collection", "OrderedCollection", "CollectionPage", "OrderedCollectionPage"}
)
_WRAPPERS = frozenset({"Create", "Update", "Add"})
_OTHER_ACTIVITIES = frozenset(
    {"Accept", "Announce", "Arrive", "Block", "Dislike", "Flag", "Follow", "Ignore", "Invite"}
    | {"Join", "Leave", "Like", "Listen", "Move", "Offer", "Read", "Reject", "Remove"}
    | {"TentativeAccept", "TentativeReject", "Travel", "Undo", "View"}
)
#: What comments are about; a title of these is no comment.
_ABOUT = frozenset({"Video", "Article", "Page", "Event", "Audio", "Image", "Document", "Place"})
_MAPPING = (
    ("text", "content"),
    ("author", "attributedTo"),
    ("author_id", "attributedTo"),
    ("id", "id"),
    ("posted", "published"),
    ("edited", "updated"),
    ("reply_to", "inReplyTo"),
)


def is_one(value: Json) -> bool:
    """Whether a JSON value is of ActivityStreams: it says so, or is a collection or note of it."""
    if not isinstance(value, dict):
        return False
    context = value.get("@context")
    if context is not None:
        named = context if isinstance(context, list) else [context]
        return any(isinstance(one, str) and _CONTEXT in one for one in named)
    types = types_of(value)
    if types & _COLLECTIONS:
        return bool({"items", "orderedItems", "first"} & value.keys())
    if "Tombstone" in types:
        return True
    return bool(types & (_WRAPPERS | {"Note", "Delete", "Undo"})) and bool(
        {"attributedTo", "actor", "inReplyTo"} & value.keys()
    )


@dataclass(frozen=True, slots=True)
class _Node:
    """A value on the way: where it stands, what it answers, who acted and when."""

    value: Json
    path: tuple[str | int, ...]
    answers: str = ""
    actor: Json = None
    published: str = ""


@dataclass(slots=True)
class _Reading:
    """What is known while the document is read: names of actors by id, and what to tell."""

    times: Times
    place: str
    names: dict[str, str]
    told: Counter[str]
    deletions: Deletions
    waiting: list[_Node] = field(default_factory=list)

    def at(self, node: _Node) -> str:
        return ", ".join(part for part in (self.place, pointer(node.path)) if part) or "the whole"


def read_streams(values: Sequence[tuple[str, Json]], source: Source) -> Export:
    """The comments of collections, notes and activities, each with its place.

    Raises BadExport where the comments are elsewhere, behind links.
    """
    names = {own: name for _, value in values for own, name in actors_in(value)}
    times = Times(source)
    told: Counter[str] = Counter()
    deletions = Deletions.of(value for _, value in values)
    found: list[Comment | Unreadable] = []
    for place, value in values:
        reading = _Reading(times, place, names, told, deletions, [_Node(value, ())])
        while reading.waiting:
            found.extend(_visit(reading.waiting.pop(), reading))
    if not found and told["pages elsewhere"]:
        raise BadExport(
            source.name,
            "this ActivityStreams collection only links to its comments",
            "hand in the collection with its items, not only a link to them",
        )
    told["none"] = not found
    return Export(
        "activitystreams",
        tuple(one for one in found if isinstance(one, Comment)),
        tuple(one for one in found if isinstance(one, Unreadable)),
        _MAPPING,
        (*deletions.notes(), *_notes(told), *times.notes()),
    )


def _visit(node: _Node, reading: _Reading) -> Iterator[Comment | Unreadable]:
    """What a value is itself; what is inside it is put on `reading.waiting`."""
    value = node.value
    if isinstance(value, str):
        yield Unreadable(reading.at(node), shortened(value), "only a link, not the comment itself")
        return
    if not isinstance(value, dict):
        words = shortened(scalar(value))
        yield Unreadable(reading.at(node), words, "neither a comment nor a link to one")
        return
    types = types_of(value)
    if types & _COLLECTIONS or {"items", "orderedItems"} & value.keys():
        _open(node, types, reading)
    elif "Tombstone" in types or "Delete" in types:
        reading.deletions.met(value, reading.at(node))
    elif types & _WRAPPERS and "object" in value:
        actor, published = value.get("actor") or node.actor, scalar(value.get("published"))
        inner = value["object"]
        reading.waiting.append(_Node(inner, (*node.path, "object"), node.answers, actor, published))
    elif types & (_OTHER_ACTIVITIES | ACTORS):
        reading.told["others"] += 1
    else:
        yield from _note(node, types, reading)


def _open(node: _Node, types: set[str], reading: _Reading) -> None:
    """Put a collection's items on the way, in their order."""
    value, inner = node.value, []
    for name in ("items", "orderedItems"):
        held = value.get(name, [])
        for index, one in enumerate(held if isinstance(held, list) else [held]):
            inner.append(_Node(one, (*node.path, name, index), node.answers, node.actor))
    total = value.get("totalItems")
    for name in ("first", "next"):
        page = value.get(name)
        if isinstance(page, dict):
            inner.append(_Node(page, (*node.path, name), node.answers, node.actor))
        elif isinstance(page, str) and (name == "next" or not inner):
            reading.told["pages elsewhere"] += 1
    whole = not {"first", "next", "partOf"} & value.keys()
    if whole and isinstance(total, int) and total > len(inner):
        reading.told["missing"] += total - len(inner)
    if ("OrderedCollection" in types and "items" in value) or (
        "Collection" in types and "orderedItems" in value
    ):
        reading.told["wrong list"] += 1
    reading.waiting.extend(reversed(inner))


def _note(node: _Node, types: set[str], reading: _Reading) -> Iterator[Comment | Unreadable]:
    value = node.value
    own = scalar(value.get("id") or value.get("@id"))
    replies = value.get("replies")
    if isinstance(replies, dict | list):
        inner = replies if isinstance(replies, list) else [replies]
        reading.waiting.extend(_Node(one, (*node.path, "replies"), own) for one in reversed(inner))
    if types & _ABOUT or ("Question" in types and replies):
        reading.told["about"] += 1
        return
    content = _content(value)
    if content is None:
        yield Unreadable(
            reading.at(node), shortened(scalar(value.get("content"))), "its content is no text"
        )
        return
    author, author_id = author_of(value.get("attributedTo") or node.actor, reading.names)
    fields = {
        "text": content,
        "author": author,
        "author_id": author_id,
        "id": own,
        "posted": scalar(value.get("published")) or node.published,
        "edited": scalar(value.get("updated")),
        "reply_to": first_id(value.get("inReplyTo")) or node.answers,
    }
    if own and own in reading.deletions.ids:
        reading.deletions.leave_out(own, fields, reading.at(node))
    else:
        yield comment_of(fields, reading.at(node), reading.times)


def _content(value: dict[str, Json]) -> str | None:
    """A note's words; None where its content is no text. A vote in a poll is its name."""
    for plain, mapped in (("content", "contentMap"), ("name", "nameMap")):
        one = value.get(plain)
        if one is None and isinstance(value.get(mapped), dict):
            one = next((each for each in value[mapped].values() if isinstance(each, str)), None)
        if one is None or one == "":
            continue
        if not isinstance(one, str):
            return None
        is_html = plain == "content" and value.get("mediaType") in (None, "text/html")
        return text_of(one) if is_html else one
    return ""


def _notes(told: Counter[str]) -> Iterator[str]:
    sentences = {
        "missing": "Comments that the collection counts but does not hold: {}; it may be partial.",
        "pages elsewhere": "Links to further pages of comments that are not in this file: {}.",
        "wrong list": "Collections that keep their items under the other kind's name: {}; read all the same.",
        "others": "Entries that are no comments (likes, follows, people): {}, left out.",
        "none": "The export holds no comments.",
        "about": "Videos, articles or polls that the comments are about: {}, not read as comments.",
    }
    for what, sentence in sentences.items():
        if told[what]:
            yield sentence.format(told[what])
