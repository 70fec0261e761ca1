"""One comment's raw fields made into a Comment, the same way for every format."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime

from service.comments.comment import Comment
from service.comments.dates import Order
from service.comments.formats import Source, Unreadable
from service.comments.spans import Span
from service.comments.times import When, read_instant, read_when, zone_of
from service.errors import BadTime

#: Before this, no comment was written: the beginning of a span where nothing is told.
LONG_AGO = datetime(1970, 1, 1, tzinfo=UTC)
_UNTEXTUAL = re.compile("[\0\ud800-\udfff]")
_NEVER = frozenset(
    {"", "0", "-", "–", "false", "no", "none", "null", "nan", "n/a", "never"}
    | {"non", "nein", "nee", "não", "nao", "falsch", "faux", "falso", "onwaar"}
)
_SHOWN = 160
#: Nobody writes a longer comment; what is longer is another file, or one that is broken.
LONGEST_TEXT = 131_072
TOO_LONG = f"a comment of more than {LONGEST_TEXT:,} characters"


def clean(text: str) -> str:
    """Text as it can be kept: one kind of line break, no outer spaces, no NUL or half character."""
    if not text:
        return text
    if not text.isascii() or "\0" in text:
        text = _UNTEXTUAL.sub("\ufffd", text)
    if "\r" in text:
        text = text.replace("\r\n", "\n").replace("\r", "\n")
    return text.strip()


def shortened(text: str) -> str:
    """The beginning of a text, for messages."""
    text = clean(text)
    return text if len(text) <= _SHOWN else text[:_SHOWN] + "…"


@dataclass(slots=True)
class Times:
    """Reads the times of one export, and keeps what the host should know about them."""

    source: Source
    order: Order | None = None
    seen: Counter[str] = field(default_factory=Counter)
    examples: dict[str, str] = field(default_factory=dict)

    @property
    def unknown(self) -> Span:
        """Any time up to the copying."""
        return Span(min(LONG_AGO, self.source.copied_at), self.source.copied_at)

    def read(self, text: str, place: str) -> Span | None:
        """The span of a time, None where `text` is none."""
        source = self.source
        when = read_when(text, zone_of(source.zone), source.copied_at, self.order)
        if when:
            self.note(when, text, place)
        return when.span if when else None

    def posted(self, text: str, place: str) -> Span:
        """When a comment was posted: any time up to the copying where it cannot be read."""
        if not text:
            self.count("no time", place, "")
            return self.unknown
        try:
            # Nearly all exports give the instant, and then there is nothing to tell of it.
            at = read_instant(text)
            if at > self.source.copied_at:
                self.count("future", place, text)
            span: Span | None = Span.at(at)
        except BadTime:
            span = self.read(text, place)
        if span is None:
            self.count("unreadable", place, text)
            return self.unknown
        return span

    def edited(self, text: str, posted: Span, place: str) -> Span | None:
        """When a comment was last edited; None where its source says that it was not.

        A mark without a time means at any time from the posting to the copying.
        """
        if text.casefold() in _NEVER:
            return None
        span = self.read(text, place)
        if span is None:
            return self.some_time_after(posted)
        if span.latest < posted.earliest:
            self.count("edited before", place, text)
            return None
        return None if span == posted else span

    def some_time_after(self, posted: Span) -> Span:
        """From the posting to the copying, for an edit without a time."""
        return Span(posted.earliest, max(self.source.copied_at, posted.earliest))

    def note(self, when: When, text: str, place: str) -> None:
        """Remember what the host should know about a time."""
        if when.kind in {"local", "day"}:
            self.count("local", place, text)
        if when.doubt:
            self.count(when.doubt, place, text)
        if when.span.earliest > self.source.copied_at:
            self.count("future", place, text)

    def count(self, what: str, place: str, text: str) -> None:
        """Count one more of a kind, keeping the first as the example."""
        self.seen[what] += 1
        self.examples.setdefault(what, f"{place}: {text}" if text else place)

    def notes(self) -> tuple[str, ...]:
        """What the host should know about this export's times, a sentence each."""
        said = {"zone": self.source.zone, "order": self.order or ""}
        lines = [
            sentence.format(count=self.seen[what], first=self.examples[what], **said)
            for what, sentence in _SENTENCES.items()
            if self.seen[what]
        ]
        if self.order:
            lines.append(f"Dates are read with the {self.order}, as some of them can only be.")
        return tuple(lines)


_SENTENCES: Mapping[str, str] = {
    "local": "Times without a zone: {count}, taken as local time in {zone} (first: {first}).",
    "repeated hour": (
        "Local times that the clocks showed twice: {count}, kept as both (first: {first})."
    ),
    "skipped hour": (
        "Local times that the clocks skipped: {count}, kept as both readings (first: {first})."
    ),
    "day or month first": (
        "Dates that may have the day or the month first: {count}, kept as both (first: {first})."
    ),
    "no time": (
        "Comments without a time: {count}, written at any time up to the copying (first: {first})."
    ),
    "unreadable": (
        "Times that cannot be read: {count}; those comments were written at any time up to the "
        "copying (first: {first})."
    ),
    "future": (
        "Times after the copying: {count}; check the time of copying and the zone (first: {first})."
    ),
    "edited before": (
        "Edits that are told to be earlier than the posting: {count}, left out (first: {first})."
    ),
}


def comment_of(fields: Mapping[str, str], place: str, times: Times) -> Comment | Unreadable:
    """The comment with these fields, by their meanings; what is missing is empty or not there."""
    given = fields.get
    text = clean(given("text", ""))
    author = " ".join(clean(given("author", "")).split())
    if not text:
        who = f" by {author}" if author else ""
        return Unreadable(place, "", f"a comment{who} without words")
    if len(text) > LONGEST_TEXT:
        return Unreadable(place, shortened(text), TOO_LONG)
    posted = times.posted(clean(given("posted", "")), place)
    edited = given("edited", "")
    return Comment(
        author=author,
        text=text,
        posted=posted,
        id=clean(given("id", "")) or None,
        author_id=clean(given("author_id", "")) or None,
        edited=times.edited(clean(edited), posted, place) if edited else None,
        reply_to=clean(given("reply_to", "")) or None,
        place=place,
    )
