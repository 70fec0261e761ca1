"""A comment taken apart: quoted lines, sentences, clauses."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass

from service.mystery.compare import Mention
from service.mystery.names import Word

_QUOTED_LINE = re.compile(r"^[^\S\n]*(?:>|&gt;|＞)[^\n]*", re.MULTILINE)
_TAG = re.compile(r"</?[a-zA-Z][^<>\n]{0,80}>")
_STOP = re.compile(r"[.!?…\n。！？]")
_PAUSE = re.compile(r"[,;:()/|•\[\]{}—–、，：；]|(?:^|\s)-+(?:\s|$)|--|[\"“”«»„]\s*[-–]")
_QUOTE_MARKS = "\"“”«»„'‘’"
_ABBREVIATIONS = frozenset(("mr", "mrs", "ms", "dr", "st", "no", "vs", "nr", "prof"))


@dataclass(frozen=True, slots=True)
class Clause:
    """Words first to last of a comment (both included) with no pause between them.

    `sentence` numbers the sentences; `end` is what stands behind the clause ("?", ",", "").
    `alternative` says that an "or" led to it.
    """

    first: int
    last: int
    sentence: int
    end: str
    alternative: bool = False


@dataclass(frozen=True, slots=True)
class Parsed:
    """A comment's words, those of quoted lines apart, and the clauses of the writer's own."""

    text: str
    words: tuple[Word, ...]
    clauses: tuple[Clause, ...]

    def forms(self, clause: Clause) -> str:
        """A clause's words as patterns read them, somebody addressed with @ as "somebody"."""
        words = self.words[clause.first : clause.last + 1]
        return " ".join("somebody" if w.handle else w.form for w in words)

    def clause_at(self, word: int) -> Clause:
        """The clause that this word stands in, or the next one (an "or" stands in none)."""
        return next((c for c in self.clauses if word <= c.last), self.clauses[-1])

    def join(self, indexes: Sequence[int]) -> str:
        """The words at these indexes as patterns read them, without handles."""
        return " ".join(self.words[at].form for at in indexes if not self.words[at].handle)

    def others(self, mention: Mention) -> tuple[Word, ...]:
        """The comment's words that are not the mention's."""
        return (*self.words[: mention.first], *self.words[mention.last + 1 :])

    def span(self, first: int, last: int) -> tuple[int, int]:
        """Where in the text the words first to last stand."""
        return self.words[first].start, self.words[last].end


def _blank(found: re.Match[str]) -> str:
    return " " * len(found[0])


def own_and_quoted(text: str) -> tuple[str, str]:
    """The text with its quoted lines blanked, and with all else blanked: places stay the same."""
    unquoted = _QUOTED_LINE.sub(_blank, text)
    quoted = "".join(
        char if kept == " " or char == "\n" else " "
        for char, kept in zip(text, unquoted, strict=True)
    )
    return _TAG.sub(_blank, unquoted), quoted if unquoted != text else ""


def _is_picture(char: str) -> bool:
    return unicodedata.category(char) in ("So", "Cs") or 0x1F000 <= ord(char) <= 0x1FAFF


def _break(gap: str, before: Word) -> str:
    """What stands between two words: "" for nothing, a pause mark, or a stop."""
    stop = _STOP.search(gap)
    initial = (len(before.form) == 1 and before.capital) or before.form in _ABBREVIATIONS
    if initial and gap[:1] == "." and gap.strip() == ".":
        return ""
    if stop:
        marks = {char for char in gap if _STOP.match(char)}
        return "?" if "?" in marks or "？" in marks else stop[0]
    pause = _PAUSE.search(gap)
    if pause:
        return pause[0].strip() or "-"
    return "*" if any(map(_is_picture, gap)) else ""


def is_stop(end: str) -> bool:
    """Whether a clause's end also ends its sentence."""
    return end == "" or bool(_STOP.fullmatch(end))


def clauses_of(text: str, words: Sequence[Word], mentions: Sequence[Mention]) -> tuple[Clause, ...]:
    """The clauses of a comment; no pause inside a mention counts, and "or" parts two clauses."""
    inside = {at for m in mentions for at in range(m.first, m.last)}
    whole = {at for m in mentions for at in range(m.first, m.last + 1)}
    clauses: list[Clause] = []
    first, sentence, alternative = 0, 0, False
    for at, word in enumerate(words):
        if word.form in ("or", "oder", "ou", "lub", "eller") and at not in whole:
            if first < at:
                clauses.append(Clause(first, at - 1, sentence, "or", alternative))
            first, alternative = at + 1, True
            continue
        after = words[at + 1].start if at + 1 < len(words) else len(text)
        end = "" if at in inside else _break(text[word.end : after], word)
        if end or at + 1 == len(words):
            clauses.append(Clause(first, at, sentence, end, alternative))
            first, alternative = at + 1, False
            sentence += is_stop(end)
    return tuple(clause for clause in clauses if clause.first <= clause.last)


def is_quoted(text: str, start: int, end: int) -> bool:
    """Whether text[start:end] stands between quotation marks."""
    before = text[:start].rstrip()[-1:]
    after = text[end:].lstrip(" .,!?")[:1]
    return before != "" and before in _QUOTE_MARKS and after != "" and after in _QUOTE_MARKS
