"""Comments in JSON Lines: one value a line, read line by line."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import chain

from service.comments import activitystreams
from service.comments.comment import Comment
from service.comments.entries import Times, shortened
from service.comments.formats import Export, OpenExport, Source, Unreadable
from service.comments.json_documents import plan_notes, read_items
from service.comments.json_items import items_of
from service.comments.json_named import list_named, parts_of, with_pointers
from service.comments.json_plan import Plan, planned
from service.comments.json_values import Json, parsed
from service.errors import BadExport

_NO_OBJECT = "no JSON object, so no comment can be told from it"
#: How many lines tell which field is what.
_LINES_LOOKED_AT = 5_000
#: How many lines that are no JSON at all, and nothing else before them, are no JSON Lines.
_MOST_BROKEN = 10_000


@dataclass(frozen=True, slots=True)
class _Line:
    """One line that is JSON: its place, its words for messages, and its value."""

    place: str
    words: str
    value: Json


def open_json_lines(lines: Iterable[str], source: Source) -> OpenExport:
    """The comments of JSON Lines, one value a line, opened to be read.

    Unreadable are the lines that are broken, and those that are no object and hold no comment.
    Raises BadExport where no line is JSON, NoTextColumn where no field holds texts.
    """
    read = _parsed(lines, source)
    first: list[_Line] = []
    broken: list[Unreadable] = []
    for one in read:
        if isinstance(one, _Line):
            first.append(one)
        else:
            broken.append(one)
        if len(first) >= _LINES_LOOKED_AT or (not first and len(broken) > _MOST_BROKEN):
            break
    if not first:
        place = broken[0].place if broken else ""
        raise BadExport(source.name, "no line is JSON", "export the comments again", place)
    values = [line for line in first if isinstance(line.value, dict | list)]
    if values and all(activitystreams.is_one(line.value) for line in values):
        return OpenExport.of(_streams([*first, *broken, *read], source))
    within = parts_of(source.at or "", source.name)
    first_items = [item for line in values for item in items_of(line.value, line.place, within)]
    plan = planned(first_items, source, roots_too=True)
    times = Times(source, plan.main.order if plan.main else None)

    def notes() -> tuple[str, ...]:
        return (*plan_notes(plan), *times.notes())

    seen: list[_Line | Unreadable] = [*first, *broken]
    ordered = sorted(seen, key=lambda one: _number_of(one.place))
    items = _comments(chain(ordered, read), plan, times)
    return OpenExport("json lines", plan.pairs, items, notes)


def _parsed(lines: Iterable[str], source: Source) -> Iterator[_Line | Unreadable]:
    for number, line in enumerate(_ended_by_newlines(lines), 1):
        words = line.strip("\ufeff \t\r\n")
        if not words:
            continue
        place = f"line {number}"
        try:
            value = parsed(words, source.name, place)
            if source.at is not None:
                value = list_named(value, source, place)
            yield _Line(place, line, value)
        except BadExport as error:
            yield Unreadable(place, shortened(line), error.what.rpartition(": ")[2])


def _ended_by_newlines(lines: Iterable[str]) -> Iterator[str]:
    """Lines that only LF ends: a lone CR is white space of JSON (RFC 8259, section 2)."""
    held = ""
    for line in lines:
        if line.endswith("\r"):
            held += line
        else:
            yield held + line
            held = ""
    if held:
        yield held


def _comments(
    lines: Iterable[_Line | Unreadable], plan: Plan, times: Times
) -> Iterator[Comment | Unreadable]:
    within = parts_of(plan.source.at or "", plan.source.name)
    by_pointer = any(name.startswith("/") for _, name in plan.source.columns)
    for line in lines:
        if isinstance(line, Unreadable):
            yield line
            continue
        is_nested = isinstance(line.value, dict | list)
        items = list(items_of(line.value, line.place, within)) if is_nested else []
        if by_pointer:
            with_pointers(items, plan.source)
        if any(item.shape not in plan.kinds for item in items):
            plan.learn(items)
        is_read = isinstance(line.value, dict)
        for one in read_items(items, plan, times):
            is_read = True
            yield one
        if not is_read:
            yield Unreadable(line.place, shortened(line.words), _NO_OBJECT)


def _streams(lines: Sequence[_Line | Unreadable], source: Source) -> Export:
    """Lines that are ActivityStreams documents: their notes answer one another, so read whole."""
    values = [
        (one.place, one.value)
        for one in lines
        if isinstance(one, _Line) and isinstance(one.value, dict | list)
    ]
    export = activitystreams.read_streams(values, source)
    read = {_line_of(one.place) for one in export.comments}
    read |= {_line_of(one.place) for one in export.unreadable}
    unreadable: list[Unreadable] = [one for one in lines if isinstance(one, Unreadable)]
    unreadable += [
        Unreadable(one.place, shortened(one.words), _NO_OBJECT)
        for one in lines
        if isinstance(one, _Line) and not isinstance(one.value, dict) and one.place not in read
    ]
    unreadable += export.unreadable
    unreadable.sort(key=lambda told: _number_of(told.place))
    return Export(export.format, export.comments, tuple(unreadable), export.mapping, export.notes)


def _line_of(place: str) -> str:
    return place.partition(",")[0]


def _number_of(place: str) -> int:
    return int(_line_of(place).removeprefix("line "))
