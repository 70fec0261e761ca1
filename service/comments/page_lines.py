"""Lines of a pasted page: times, buttons, counts, notices, and what people wrote."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from datetime import datetime, tzinfo
from typing import Literal

from service.comments import page_words
from service.comments.relative_times import plain
from service.comments.times import When, read_when

#: below: a button that stands right below a comment's words, such as "Translate".
Kind = Literal["blank", "time", "reply", "below", "button", "count", "removed", "edited", "words"]

_REPLY = page_words.words_of(page_words.REPLY)
_BELOW = page_words.words_of(page_words.BELOW_WORDS)
_BUTTONS = page_words.words_of(page_words.BUTTONS)
_EDITED = page_words.words_of(page_words.EDITED)
BADGES = page_words.words_of(page_words.BADGES)
_SEPARATORS = re.compile(r"\s*[·•∙‧|]\s*|\t+|\s{2,}")
_LONGEST_TIME = 90
_LONGEST_NAME = 100
_SIZE = r"(?:k|m|mio\.?|mrd\.?|tsd\.?|tys\.?|mil|mln|mn|md|rb|тыс\.?|млн|천|만|万|千|億|萬)"
_COUNT = re.compile(
    rf"[+]?\d{{1,3}}(?:[.,'\u00a0\u202f ]?\d{{3}})*(?:[.,]\d{{1,2}}(?= ?{_SIZE}))?( ?{_SIZE})?"
)
_HEARTS = re.compile(r"[👍❤♥♡🧡💛💚💙💜🤍👏🔥]\ufe0f? ?\d[\d.,]*k?|\d[\d.,]*k? ?[👍❤♥♡]\ufe0f?")
_ONE_WORD_BUTTONS = frozenset(word for word in _REPLY | _BUTTONS | {"translate"} if " " not in word)
_MARK = re.compile(r"\s*[(（\[]\s*([^()（）\[\]]{1,40})\s*[)）\]]\s*$")
_LEAD = re.compile(r"(?:posted|commented|written|wrote|said|replied|on|am|vom|le|el|il|em|op|den) ")


@dataclass(frozen=True, slots=True)
class Stamp:
    """A time on a page: when, what stands before it on its line, and whether it says edited.

    `edited_when` is the time of the edit, where the page tells that as well. `ends` says that
    buttons stand behind it on its line, which come below a comment's words.
    """

    when: When
    before: str = ""
    edited: bool = False
    edited_when: When | None = None
    ends: bool = False


@dataclass(slots=True)
class Line:
    """A line: its number from 1, its text without outer spaces, what it is, its time if any."""

    number: int
    text: str
    kind: Kind
    stamp: Stamp | None = None
    #: A count that can be nothing else, such as 1.2K.
    sure: bool = False


@dataclass(slots=True)
class Clock:
    """How times on this page are read.

    `bare`: "5d" alone is a time. `loose`: a time may follow a name with a comma, a dash or nothing
    but a space between them.
    """

    zone: tzinfo
    copied_at: datetime
    bare: bool = False
    loose: bool = False
    known: dict[str, When | None] = field(default_factory=dict)

    def read(self, words: str, *, bare: bool = False) -> When | None:
        """The time that these words are, or None. Pages say the same ones again and again."""
        if words not in self.known:
            when = read_when(words, self.zone, self.copied_at)
            if when is None and _LEAD.match(words.casefold()):
                when = read_when(words.partition(" ")[2], self.zone, self.copied_at)
            self.known[words] = None if when and when.kind == "number" else when
        when = self.known[words]
        return None if when and when.kind == "bare" and not (self.bare or bare) else when


def lines_read(texts: list[str], clock: Clock) -> list[Line]:
    """The lines of a page, each as what it is."""
    return [_line(number, text, clock) for number, text in enumerate(texts, 1)]


def _line(number: int, raw: str, clock: Clock) -> Line:
    text = raw.strip().strip("\u200b\u200e\u200f\ufeff\u2066\u2067\u2068\u2069").strip()
    if not text.strip("·•∙‧|–—-") or not text:
        return Line(number, text, "blank")
    words = plain(text)
    if len(text) <= _LONGEST_TIME + _LONGEST_NAME:
        stamp = stamp_of(text, clock)
        if stamp:
            return Line(number, text, "time", stamp)
    if len(text) > _LONGEST_TIME:
        return Line(number, text, "words")
    kind = _kind_of(words)
    found = _COUNT.fullmatch(words) if kind == "count" else None
    return Line(number, text, kind, sure=kind == "count" and not (found and not found[1]))


def _kind_of(words: str) -> Kind:
    words = words.rstrip(".…:")
    if words in _REPLY:
        return "reply"
    if words in _BELOW:
        return "below"
    if words in _BUTTONS or page_words.ABOUT_REPLIES.fullmatch(words):
        return "button"
    if page_words.PINNED.fullmatch(words):
        return "button"
    if _COUNT.fullmatch(words) or _HEARTS.fullmatch(words):
        return "count"
    if page_words.REMOVED.fullmatch(words):
        return "removed"
    if words.strip("()（）[] ") in _EDITED:
        return "edited"
    return _row_of_buttons(words)


def _row_of_buttons(words: str) -> Kind:
    """Several buttons on one line: "Like · Reply · 12"."""
    parts = [part for part in re.split(r"[ ·•∙‧|]+", words) if part]
    if len(parts) > 1 and all(part in _ONE_WORD_BUTTONS or part.isdigit() for part in parts):
        if any(part in _REPLY for part in parts):
            return "reply"
        if not all(part.isdigit() for part in parts):
            return "button"
    return "words"


def stamp_of(text: str, clock: Clock) -> Stamp | None:
    """The time that a line tells beside nothing but an author and marks, or None."""
    edited, edited_when = False, None
    mark = _MARK.search(text)
    if mark:
        found = _edit_mark(mark[1], clock)
        if found or not any(sign.isdigit() for sign in mark[1]):
            edited, edited_when = True, found[0] if found else None
            text = text[: mark.start()]
    alone = _without_buttons(text)
    parts = [part for part in _SEPARATORS.split(alone) if part.strip()]
    for place, part in enumerate(parts[:4]):
        # Beside a name, a mark or a button, "5d" is surely a time.
        when = clock.read(part, bare=len(parts) > 1 or alone != text)
        if when is None:
            continue
        ends = alone != text
        for after in parts[place + 1 :]:
            found = _edit_mark(after, clock)
            if found:
                edited, edited_when = True, edited_when or found[0]
            ends = ends or _kind_of(plain(after)) in {"reply", "button"}
        return Stamp(when, _author_in(parts[:place]), edited, edited_when, ends)
    found = _edit_mark(text, clock) if not mark else None
    if found and found[0]:
        return Stamp(found[0], "", edited=True, edited_when=found[0])
    return _loose(text, clock, edited=edited) if clock.loose else None


def _without_buttons(text: str) -> str:
    """A line without buttons at its end ("3 d Like Reply"); the line itself if nothing is left."""
    words = text.split(" ")
    while len(words) > 1 and plain(words[-1]) in _ONE_WORD_BUTTONS:
        words.pop()
    return " ".join(words)


def _loose(text: str, clock: Clock, *, edited: bool) -> Stamp | None:
    """A name and a time that only a comma, a dash, a bracket or a space keeps apart."""
    words = text.split(" ")
    for place in range(1, min(len(words), 8)):
        name = " ".join(words[:place]).rstrip(" ,-–—(")
        when = clock.read(" ".join(words[place:]).strip(" ,-–—()"))
        if when and name:
            return Stamp(when, name[:_LONGEST_NAME], edited)
    return None


def _edit_mark(words: str, clock: Clock) -> tuple[When | None] | None:
    """What "edited" or "edited 3 days ago" tells; None where the words are no such mark."""
    spoken = plain(words)
    if spoken in _EDITED:
        return (None,)
    first, _, rest = spoken.partition(" ")
    if first.rstrip(":,") in _EDITED and rest:
        when = clock.read(rest)
        return (when,) if when else None
    return None


def _author_in(parts: list[str]) -> str:
    """The name before a time on its line, without the marks beside it."""
    named = [part for place, part in enumerate(parts) if not place or plain(part) not in BADGES]
    return " · ".join(named)[:_LONGEST_NAME]
