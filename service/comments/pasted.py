"""A page of comments, selected whole and pasted: authors, times, words, buttons, counts."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from service.comments.comment import Comment
from service.comments.entries import LONGEST_TEXT, TOO_LONG, Times, clean, shortened
from service.comments.formats import Export, Source, Unreadable
from service.comments.page_blocks import Block, Page, blocks_of
from service.comments.page_bodies import Body, body_of, learned_buttons, shows_counts
from service.comments.page_lines import Clock, Line, lines_read
from service.comments.plain_paste import read_plain
from service.comments.spans import Span
from service.comments.times import zone_of

_MAPPING = (
    ("text", "the lines below a time"),
    ("author", "the line above or beside it"),
    ("posted", "the time"),
)
#: How many lines a note lists one by one.
_LISTED = 40
#: How many lines a page may have above its comments before that looks like unread comments.
_ABOVE = 12


@dataclass(slots=True)
class _Told:
    """What the host should know about how a page was read."""

    times: Times
    page_counts: bool
    unreadable: list[Unreadable] = field(default_factory=list)
    counts: list[tuple[Line, Body]] = field(default_factory=list)
    folded: list[int] = field(default_factory=list)
    removed: list[Line] = field(default_factory=list)
    unnamed: list[int] = field(default_factory=list)


def lines_with_times(text: str, source: Source) -> list[Line]:
    """The lines of a pasted text. Forms that are times on some pages only are so where they rule."""
    texts = clean(text).split("\n")
    zone = zone_of(source.zone)
    lines = lines_read(texts, Clock(zone, source.copied_at))
    if any(line.stamp and line.stamp.when.kind == "relative" for line in lines):
        return lines
    short = lines_read(texts, Clock(zone, source.copied_at, bare=True))
    if _times(short) > max(1, _times(lines)):
        return short
    if _times(lines):
        return lines
    loose = lines_read(texts, Clock(zone, source.copied_at, loose=True))
    filled = sum(1 for line in lines if line.kind != "blank")
    return loose if _times(loose) > max(1, filled // 4) else lines


def has_time_lines(text: str, source: Source) -> bool:
    """Whether some lines of a text are times, as on pages of comments."""
    return _times(lines_with_times(text, source)) > 0


def _times(lines: Iterable[Line]) -> int:
    return sum(1 for line in lines if line.kind == "time")


def read_pasted(text: str, source: Source) -> Export:
    """The comments of a pasted page, or of a plain list where no line is a time.

    What cannot be told apart is in the notes or among `unreadable`, with its line.
    """
    lines = lines_with_times(text, source)
    if not _times(lines):
        return read_plain(lines, source)
    page = blocks_of(lines)
    learned = learned_buttons(page.blocks)
    bodies = [body_of(block, learned) for block in page.blocks]
    told = _Told(Times(source), page_counts=shows_counts(bodies))
    comments = [
        comment
        for block, body in zip(page.blocks, bodies, strict=True)
        if (comment := _comment(block, body, told)) is not None
    ]
    _judge_counts(told)
    _show_lines_of_no_comment(page, told)
    notes = (*_page_notes(page, told, learned), *told.times.notes())
    return Export("pasted", tuple(comments), tuple(told.unreadable), _MAPPING, notes)


def _show_lines_of_no_comment(page: Page, told: _Told) -> None:
    """Show what stands below all comments, and what is too much above them to be a page's head."""
    above = [line for line in page.above if line.kind != "blank"]
    for line in above[_ABOVE:]:
        why = "it stands above the first line that could be read as a time"
        told.unreadable.append(Unreadable(f"line {line.number}", shortened(line.text), why))
    for line in page.below:
        if line.kind in {"words", "time", "edited"}:
            why = "it stands below the last comment, and no time follows it"
            told.unreadable.append(Unreadable(f"line {line.number}", shortened(line.text), why))


def _comment(block: Block, body: Body, told: _Told) -> Comment | None:
    place = f"line {block.first}"
    for line in body.left_over:
        why = "it stands between two comments, and which one it belongs to cannot be told"
        told.unreadable.append(Unreadable(f"line {line.number}", shortened(line.text), why))
    told.removed.extend(body.removed)
    if body.folded:
        told.folded.append(block.first)
    text = clean(body.text)
    if not text:
        seen = " / ".join(line.text for line in block.body if line.kind != "blank")
        why = f"a comment by {block.author or 'nobody named'} without words that can be told"
        told.unreadable.append(Unreadable(place, shortened(seen), why))
        return None
    if len(text) > LONGEST_TEXT:
        told.unreadable.append(Unreadable(place, shortened(text), TOO_LONG))
        return None
    if body.count is not None and body.is_of_numbers and not told.page_counts:
        numbers = " / ".join([*text.split("\n"), body.count.text])
        why = (
            f"numbers by {block.author or 'nobody named'}: whether the last one is the writer's or "
            "a count of likes cannot be told, so the comment was left out"
        )
        told.unreadable.append(Unreadable(place, shortened(numbers), why))
        return None
    if not block.author:
        told.unnamed.append(block.first)
    if body.count is not None:
        told.counts.append((body.count, body))
    posted, edited = _spans(block, body, told.times, place)
    author = " ".join(clean(block.author).split())
    return Comment(author, text, posted, edited=edited, place=place)


def _spans(block: Block, body: Body, times: Times, place: str) -> tuple[Span, Span | None]:
    """When a comment was posted and, where the page says that it was edited, when."""
    stamp = block.stamp
    times.note(stamp.when, "", place)
    posted = stamp.when.span
    if stamp.edited_when is stamp.when:  # the page tells the edit alone
        return Span(min(times.unknown.earliest, posted.earliest), posted.latest), posted
    if not (stamp.edited or body.edited):
        return posted, None
    if stamp.edited_when and stamp.edited_when.span.latest >= posted.earliest:
        return posted, stamp.edited_when.span
    return posted, times.some_time_after(posted)


def _judge_counts(told: _Told) -> None:
    """Show numbers that may be the writer's where the page does not show that it counts likes."""
    for line, body in told.counts:
        leads_up = body.text.endswith((":", "：", "#", "=", "…", "..."))
        if body.may_want_the_count and (leads_up or not told.page_counts):
            why = "a number below the words, read as a count of likes; the writer may have meant it"
            told.unreadable.append(Unreadable(f"line {line.number}", line.text, why))


def _page_notes(page: Page, told: _Told, learned: frozenset[str]) -> Iterable[str]:
    above = [line for line in page.above if line.kind != "blank"]
    if above:
        words = " / ".join(shortened(line.text) for line in above[:_ABOVE])
        more = f" and {len(above) - _ABOVE} more" if len(above) > _ABOVE else ""
        yield f"Left out above the first comment (line {_numbers(above)}): {words}{more}."
    if learned:
        yield f"Taken for buttons of the page: {', '.join(sorted(learned))}."
    if told.counts:
        unsure = [line for line, body in told.counts if body.may_want_the_count]
        listed = ", ".join(f"{line.number} ({line.text})" for line in unsure[:_LISTED])
        listed += f" and {len(unsure) - _LISTED} more" if len(unsure) > _LISTED else ""
        doubt = f"; the writer may have meant those in line {listed}" if unsure else ""
        yield f"Numbers below the words, read as counts of likes: {len(told.counts)}{doubt}."
    if told.folded:
        numbers = ", ".join(map(str, told.folded[:_LISTED]))
        yield f"Folded comments, whose words may be cut off: {len(told.folded)} (line {numbers})."
    if told.removed:
        yield f"Comments removed at their source: {len(told.removed)} (line {_numbers(told.removed)})."
    if told.unnamed:
        numbers = ", ".join(map(str, told.unnamed[:_LISTED]))
        yield f"Comments without an author's name: {len(told.unnamed)} (line {numbers})."
    if page.doubtful:
        yield (
            "Lines that read like a time, but no comment ends before them, kept as words: "
            f"line {_numbers(page.doubtful)}."
        )


def _numbers(lines: Sequence[Line]) -> str:
    listed = ", ".join(str(line.number) for line in lines[:_LISTED])
    return listed + ("…" if len(lines) > _LISTED else "")
