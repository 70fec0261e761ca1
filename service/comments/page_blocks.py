"""A pasted page cut into blocks, one a comment: the author, the time, what stands below."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field

from service.comments.page_lines import BADGES, Line, Stamp
from service.comments.relative_times import plain

#: Kinds of lines that end a comment's words, so that another comment can begin after them.
_ENDING = frozenset({"reply", "below", "button", "removed"})
#: The share of comments with a button to answer that makes such a button the rule on this page.
_RULE = 0.6


@dataclass(slots=True)
class Block:
    """One comment as it stands on the page; `first` is the number of its first line."""

    author: str
    stamp: Stamp
    first: int
    body: list[Line]


@dataclass(slots=True)
class Page:
    """A page's blocks, and the lines that are in none: above the first, below the last.

    `doubtful` are lines that read like a time and start no block.
    """

    above: list[Line]
    blocks: list[Block]
    doubtful: list[Line] = field(default_factory=list)
    below: list[Line] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class _Start:
    """Where a block starts: its first line, its author, and its time's line, as indexes."""

    first: int
    author: str
    stamp: int


def blocks_of(lines: Sequence[Line]) -> Page:
    """The blocks of a page that has times; the time stands above the words or below them."""
    if _times_stand_last(lines):
        page = _with_times_last(lines)
        if page.blocks:
            return page
    times = [place for place, line in enumerate(lines) if line.kind == "time"]
    rule = _answering_is_the_rule(lines, times)
    badges = _badges(lines, times) if rule else frozenset()
    starts: list[_Start] = []
    doubtful: list[Line] = []
    authors: Counter[str] = Counter()
    for place in times:
        start = _start(lines, place, starts[-1].stamp if starts else -1, badges)
        if start is None:
            continue
        if starts and not _fits(lines, start, starts[-1], rule=rule, authors=authors):
            doubtful.append(lines[place])
            continue
        starts.append(start)
        authors[start.author] += 1
    ends = [start.first for start in starts[1:]] + [len(lines)]
    blocks = [
        Block(
            start.author,
            lines[start.stamp].stamp or _never(),
            lines[start.first].number,
            list(lines[start.stamp + 1 : end]),
        )
        for start, end in zip(starts, ends, strict=True)
    ]
    return Page(list(lines[: starts[0].first]) if starts else list(lines), blocks, doubtful)


def _never() -> Stamp:
    raise AssertionError("a line of a time carries its stamp")


def _before(lines: Sequence[Line], place: int, after: int) -> int | None:
    """The nearest line with something on it before `place` and after `after`."""
    for one in range(place - 1, after, -1):
        if lines[one].kind != "blank":
            return one
    return None


def _next(lines: Sequence[Line], place: int) -> Line | None:
    for one in range(place + 1, len(lines)):
        if lines[one].kind != "blank":
            return lines[one]
    return None


def _answering_is_the_rule(lines: Sequence[Line], times: Sequence[int]) -> bool:
    answered = sum(
        1
        for place, end in zip(times, [*times[1:], len(lines)], strict=True)
        if any(line.kind == "reply" for line in lines[place + 1 : end])
    )
    return answered >= _RULE * len(times)


def _badges(lines: Sequence[Line], times: Sequence[int]) -> frozenset[str]:
    """Marks of authors that this page uses: always between a name and the time."""
    seen: Counter[str] = Counter()
    bare: set[str] = set()
    for place in times:
        near = _before(lines, place, -1)
        if near is None or lines[near].kind != "words":
            continue
        own = plain(lines[near].text)
        above = lines[near - 1] if near else None
        if above is not None and above.kind == "words":
            seen[own] += 1
        else:
            bare.add(own)
    return frozenset(own for own, times_seen in seen.items() if times_seen > 1 and own not in bare)


def _start(lines: Sequence[Line], place: int, last: int, badges: frozenset[str]) -> _Start | None:
    """The start of the block whose time stands at `place`, None where no block can start there.

    `last` is the time's place of the block before.
    """
    stamp = lines[place].stamp
    if stamp and stamp.before:
        return _Start(place, stamp.before, place)
    near = _before(lines, place, last)
    if near is None:
        return _Start(place, "", place) if last < 0 else None
    line = lines[near]
    if line.kind in _ENDING:
        return _Start(place, "", place)  # nobody's name stands above the time
    first = near
    for _ in range(3):
        above = lines[first - 1] if first - 1 > last else None
        marked = plain(lines[first].text) in BADGES | badges
        if not marked or above is None or above.kind not in {"words", "count"}:
            break
        first -= 1
    return _Start(first, lines[first].text, place)


def _fits(
    lines: Sequence[Line], start: _Start, last: _Start, *, rule: bool, authors: Counter[str]
) -> bool:
    """Whether a new comment can start here: words of a comment may read like a time too."""
    between = lines[last.stamp + 1 : start.first]
    if any(line.kind in {"reply", "removed", "button"} for line in between):
        return True
    stamp = lines[start.stamp].stamp
    if stamp and stamp.before:
        return True
    if not any(line.kind != "blank" for line in between):
        return not rule and any(sign.isdigit() for sign in lines[start.stamp].text)
    if not rule:
        return True
    # On this page comments end with a button to answer, and this one would not.
    above = lines[start.first - 1].kind
    told = any(sign.isdigit() for sign in lines[start.stamp].text)
    return start.author in authors or (told and above in {"blank", "count", "below"})


def _times_stand_last(lines: Sequence[Line]) -> bool:
    """Whether times stand below the words: buttons follow them, never words."""
    times = [
        place
        for place, line in enumerate(lines)
        if line.kind == "time" and line.stamp and not line.stamp.before
    ]
    below = sum(1 for place in times if _buttons_follow(lines, place))
    above = sum(1 for line in lines[: times[0]] if line.kind != "blank") if times else 0
    return above >= 2 and below > 0.8 * len(times)


def _buttons_follow(lines: Sequence[Line], place: int) -> bool:
    stamp, following = lines[place].stamp, _next(lines, place)
    if stamp and stamp.ends:
        return True
    return following is None or following.kind in {"reply", "button"}


def _with_times_last(lines: Sequence[Line]) -> Page:
    above: list[Line] = []
    blocks: list[Block] = []
    waiting: list[Line] = []
    ended = True
    for line in lines:
        if line.kind == "blank" and not waiting:
            continue
        if line.kind == "time" and line.stamp and waiting:
            author, *body = waiting
            while body and plain(body[0].text) in BADGES:
                body.pop(0)
            blocks.append(Block(author.text, line.stamp, author.number, body))
            waiting, ended = [], True
        elif ended and line.kind in {"reply", "button", "count", "below", "blank"}:
            (blocks[-1].body if blocks else above).append(line)
        else:
            waiting.append(line)
            ended = False
    return Page(above, blocks, below=waiting)
