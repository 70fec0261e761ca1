"""A comment's text made plain for reading, each plain character knowing where it came from.

Case, accents, character width, styled digits, invisible characters and HTML entities change
nothing about what a comment says, so they are levelled here once. Evidence is shown in the words
the writer wrote: every plain character keeps the offsets of the original it stands for.
"""

from __future__ import annotations

import html
import re
import unicodedata
from typing import NamedTuple

_ENTITY = re.compile(r"&(?:#\d{1,7}|#[xX][0-9a-fA-F]{1,6}|[A-Za-z]{2,31});")
#: "Number" as Romance languages shorten it: "nº", "N°", "n.º", which is no word "no".
_NUMERO_MARKS = frozenset("º°")
_NUMERO = re.compile(r"(?<!\w)[nN]\.?[º°]\.?")

#: Letters that Unicode does not decompose, quotation marks and dashes of many scripts.
_LEVELLED = {
    "ø": "o", "ł": "l", "đ": "d", "ı": "i", "æ": "ae", "œ": "oe", "þ": "th", "ð": "d",
    "“": '"', "”": '"', "„": '"', "‟": '"', "«": '"', "»": '"', "「": '"', "」": '"',
    "『": '"', "』": '"', "‹": '"', "›": '"', "‘": "'", "’": "'", "‚": "'", "ʼ": "'", "´": "'",
    "`": "'", "–": "-", "—": "-", "−": "-", "‑": "-", "‐": "-", "⁃": "-", "―": "-",
    "。": ".", "、": ",", "，": ",", "؟": "?", "،": ",", "।": ".", "！": "!", "？": "?",
    "：": ":", "；": ";", "⁄": "/", "×": "x", "✕": "x", "✖": "x", "🔟": "10", "\r": "\n",
    "\u2028": "\n", "\u2029": "\n", "\u0085": "\n", "ー": "ー", "№": "no.",
    # Arabic as it is typed: the forms of alef, of the last letter and of hamza's seat are levelled.
    "أ": "ا", "إ": "ا", "آ": "ا", "ٱ": "ا", "ى": "ي", "ی": "ي", "ئ": "ي", "ة": "ه", "ؤ": "و",
    "ک": "ك", "٪": "%",
    # The wave that East Asian writers end a sentence with strikes nothing out.
    "\uff5e": "\u301c", "\u037e": "?",
}  # fmt: skip

#: Emoji presentation, the keycap's frame, and marks that only steer direction or shape.
#: Marks laid over a letter to strike it out.
_OVERLAYS = ("\u0334", "\u0335", "\u0336", "\u0337", "\u0338")
_INVISIBLE = frozenset({"\ufe0e", "\ufe0f", "\u20e3", "\u00ad", "\u034f", "\u180e"}) | frozenset(
    # Vowel points and the stretched stroke of Arabic, the points of Hebrew: hardly ever typed.
    map(
        chr,
        (0x0640, 0x0670, *range(0x064B, 0x0660), *range(0x0591, 0x05BE), *range(0x05BF, 0x05C8)),
    )
)

#: Marks and letters that are one letter together with the one before them: the voice marks of
#: kana, also half wide, and the later letters of a Korean syllable.
_COMPOSING = frozenset(
    map(chr, (0x3099, 0x309A, 0xFF9E, 0xFF9F, *range(0x1161, 0x1176), *range(0x11A8, 0x11C3)))
)


def _level(character: str) -> str:
    """One character of the original as the plain characters it is read as, perhaps none."""
    if character in _LEVELLED:
        return _LEVELLED[character]
    category = unicodedata.category(character)
    if character in _INVISIBLE or category == "Cf" or "\u0300" <= character <= "\u036f":
        return ""
    if category == "No" and (part := unicodedata.numeric(character)) % 1:
        # "7½" is no page: the half stays a half.
        return f"{part:.3f}".lstrip("0")
    if category == "Nd":
        return str(unicodedata.decimal(character))
    plain = unicodedata.normalize("NFKC", character).casefold()
    parts = unicodedata.normalize("NFKD", plain)
    # Accents fall away in alphabets where writers drop them; elsewhere a mark is a letter.
    if parts and parts[0] < "\u0530":
        plain = "".join(
            _LEVELLED.get(part, part) for part in parts if not "\u0300" <= part <= "\u036f"
        )
    return plain if plain != "\u00a0" else " "


class _Levels(dict[str, str]):
    """Each character is levelled once."""

    def __missing__(self, character: str) -> str:
        plain = self[character] = _level(character)
        return plain


_LEVELS = _Levels()


class _Translation(dict[int, str]):
    """The same for `str.translate`, which asks by code point."""

    def __missing__(self, code: int) -> str:
        plain = self[code] = _LEVELS[chr(code)]
        return plain


_TRANSLATION = _Translation()


class Plain(NamedTuple):
    """Plain `text`; `starts[i]` and `ends[i]` bound what its character i stands for.

    None where plain and original run alike, as in most English comments, or where that is told
    from the original, `uneven`, once a span is asked for.
    """

    text: str
    starts: tuple[int, ...] | None = None
    ends: tuple[int, ...] | None = None
    uneven: str | None = None

    def original(self, start: int, end: int) -> tuple[int, int]:
        """The span of the original text that the plain span [start:end] was made of."""
        if self.uneven is not None:
            return _level_one_by_one(self.uneven).original(start, end)
        if self.starts is None or self.ends is None:
            return start, end
        if start >= end:
            return (self.starts[start], self.starts[start]) if start < len(self.starts) else (0, 0)
        return self.starts[start], self.ends[end - 1]


def plain_of(text: str) -> Plain:
    """The comment's text, levelled."""
    if text.isascii() and "&" not in text and "\r" not in text and "`" not in text:
        return Plain(text.lower())
    if _EVEN.issuperset(text):
        # Accents and emoji keep their places: plain and original run alike.
        return Plain(text.translate(_TRANSLATION))
    strange = set(text) - _EVEN
    if not strange.isdisjoint(_TOGETHER) or _NUMERO.search(text):
        return _level_one_by_one(text)
    even = {each for each in strange if len(_LEVELS[each]) == 1}
    _EVEN.update(even - _NUMERO_MARKS)
    return Plain(text.translate(_TRANSLATION), uneven=text if even < strange else None)


#: Characters that are one plain character each, whatever stands beside them; met ones are added.
_EVEN = set(map(chr, range(128))) - {"&"}
#: Those that may be read together with what stands beside them.
_TOGETHER = _COMPOSING.union(_OVERLAYS, "&")


def _level_one_by_one(text: str) -> Plain:
    pieces: list[str] = []
    starts: list[int] = []
    ends: list[int] = []
    at = 0
    while at < len(text):
        end = at + 1
        raw = text[at]
        if text[end : end + 1] in _OVERLAYS and end < len(text):
            raw = " "  # struck out, letter by letter
        if raw == "&" and (entity := _ENTITY.match(text, at)):
            end = entity.end()
            raw = html.unescape(entity.group())
        elif raw in "nN" and (numero := _NUMERO.match(text, at)):
            end = numero.end()
            raw = "№"
        elif end < len(text) and text[end] in _COMPOSING:
            while end < len(text) and text[end] in _COMPOSING:
                end += 1
            raw = unicodedata.normalize("NFKC", text[at:end])
        for character in raw:
            plain = _LEVELS[character]
            pieces.append(plain)
            starts.extend([at] * len(plain))
            ends.extend([end] * len(plain))
        at = end
    return Plain("".join(pieces), tuple(starts), tuple(ends))
