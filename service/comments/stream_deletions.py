"""What was deleted in a document of ActivityStreams 2.0, and which deletions were undone.

W3C Recommendation "Activity Vocabulary" (23 May 2017): Delete and Undo in section 3.1, Tombstone
in section 3.3. A Tombstone has the id of what stood there.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from itertools import islice

from service.comments.entries import shortened
from service.comments.json_values import Json
from service.comments.stream_actors import first_id, types_of

_MOST_NAMED = 20


@dataclass(slots=True)
class Deletions:
    """The ids of what was deleted, and what was met of it on the way through the document.

    `marks` are the deletions met, by id or by place where they tell none; `shown` are the notes
    that were left out for them, the first words of each.
    """

    ids: frozenset[str]
    undone: frozenset[str]
    marks: set[str] = field(default_factory=set)
    shown: dict[str, str] = field(default_factory=dict)

    @classmethod
    def of(cls, values: Iterable[Json]) -> Deletions:
        """The deletions told anywhere in these values, without those that were undone."""
        found = [each for value in values for each in _acts(value)]
        undone = frozenset(own for kind, owns, _ in found if kind == "Undo" for own in owns)
        ids = (
            own
            for kind, owns, act in found
            if kind == "Delete" and not (act and act in undone)
            for own in owns
        )
        return cls(frozenset(ids), undone)

    def met(self, value: dict[str, Json], place: str) -> None:
        """Remember a Delete or a Tombstone that stands at `place`."""
        own = first_id(value)
        if "Delete" in types_of(value):
            if own and own in self.undone:
                return
            self.marks.update(_objects(value) or [place])
        else:
            self.marks.add(own or place)

    def leave_out(self, own: str, fields: Mapping[str, str], place: str) -> None:
        """Remember a note that is no comment because it was deleted."""
        by = f" by {shortened(fields['author'])}" if fields["author"] else ""
        self.shown.setdefault(own, f"{place}{by}: {shortened(fields['text'])}")

    def notes(self) -> Iterator[str]:
        """What the host should know of them, a sentence each."""
        if self.shown:
            named = "; ".join(islice(self.shown.values(), _MOST_NAMED))
            if len(self.shown) > _MOST_NAMED:
                named += f"; and {len(self.shown) - _MOST_NAMED} more"
            yield f"Comments deleted at their source, left out: {len(self.shown)} ({named})."
        if left := self.marks - self.shown.keys():
            yield f"Comments deleted at their source, which left only a mark: {len(left)}."


def _acts(root: Json) -> Iterator[tuple[str, list[str], str]]:
    """Deletions with the ids they tell and their own, and what is undone; not what stands in it."""
    waiting = [root]
    while waiting:
        value = waiting.pop()
        if isinstance(value, list):
            waiting.extend(value)
        if not isinstance(value, dict):
            continue
        types = types_of(value)
        if "Undo" in types:
            yield "Undo", _objects(value), ""
            continue
        if "Delete" in types:
            yield "Delete", _objects(value), first_id(value)
            continue
        if "Tombstone" in types and (own := first_id(value)):
            yield "Delete", [own], ""
        waiting.extend(value.values())


def _objects(value: dict[str, Json]) -> list[str]:
    """The ids of an activity's objects."""
    held = value.get("object")
    return [own for one in (held if isinstance(held, list) else [held]) if (own := first_id(one))]
