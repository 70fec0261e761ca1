"""How wide a text is about, and how it is broken into lines or cut to fit."""

from __future__ import annotations

import unicodedata
from functools import lru_cache

_NARROW = frozenset("iljtfrI.,:;'’|!()[] ")
_BROAD = frozenset("mwMWQO@%&—")


@lru_cache(maxsize=1024)
def width_of(words: str, size: float) -> float:
    """About how wide the words are at that size of letters, rather too wide than too narrow.

    Measured on no font: a page may show a picture in another one.
    """
    return sum(map(_width, words)) * size


def broken(words: str, size: float, room: float, lines: int) -> list[str]:
    """The words in at most `lines` lines that fit into `room`; what is left is cut with "…"."""
    found: list[str] = []
    rest = words.split()
    while rest and len(found) < lines:
        line = rest.pop(0)
        while rest and width_of(f"{line} {rest[0]}", size) <= room:
            line += f" {rest.pop(0)}"
        if width_of(line, size) > room:
            line, beyond = _split(line, size, room)
            rest = [beyond, *rest]
        found.append(line)
    if rest and found:
        found[-1] = cut(f"{found[-1]} {' '.join(rest)}", size, room)
    return found


def cut(words: str, size: float, room: float) -> str:
    """The words, cut with "…" where they do not fit into `room`; between words if it can be."""
    if width_of(words, size) <= room:
        return words
    fitting = _split(words, size, room - width_of("…", size))[0]
    whole, space, _ = fitting.rpartition(" ")
    if space and not words[len(fitting)].isspace():
        fitting = whole
    return f"{fitting.rstrip(' ,;:.-')}…"


def _split(word: str, size: float, room: float) -> tuple[str, str]:
    """A word too long for a line, parted; at least one character stays."""
    used, many = 0.0, 0
    for letter in word:
        used += _width(letter) * size
        if many and used > room and not unicodedata.combining(letter):
            break
        many += 1
    return word[:many], word[many:]


def _width(letter: str) -> float:
    if unicodedata.combining(letter):
        return 0.0
    if letter in _NARROW:
        return 0.36
    if unicodedata.east_asian_width(letter) in "WF" or letter in _BROAD:
        return 1.0
    return 0.72 if letter.isupper() else 0.6
