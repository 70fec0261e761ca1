"""Where a comment's words spell a name: the same, with one slip of typing, or nearly.

Distances are counted by rapidfuzz as optimal string alignment (OSA): a letter wrong, missing,
added or swapped with its neighbour is one slip.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Literal

from rapidfuzz.distance import OSA

from service.mystery.concepts import is_common, is_real
from service.mystery.everyday import stems_of
from service.mystery.names import ARTICLES, Word
from service.mystery.spellings import Name

#: How a name is spelt: as sealed, with a slip that changes nothing, or nearly (the host looks).
Spelling = Literal["same", "slip", "near"]

#: A title of fewer letters is not excused a slip, nor is a shorter word in it.
SHORTEST_EXCUSED_NAME = 10
SHORTEST_EXCUSED_WORD = 5
#: More slips in one name than this make another name.
MOST_SLIPS = 2

_NEIGHBOURS = {
    a: set(near)
    for a, near in (
        ("q", "wa"), ("w", "qeas"), ("e", "wrsd"), ("r", "etdf"), ("t", "ryfg"), ("y", "tugh"),
        ("u", "yihj"), ("i", "uojk"), ("o", "ipkl"), ("p", "ol"), ("a", "qwsz"), ("s", "awedxz"),
        ("d", "serfcx"), ("f", "drtgvc"), ("g", "ftyhbv"), ("h", "gyujnb"), ("j", "huikmn"),
        ("k", "jiolm"), ("l", "kop"), ("z", "asx"), ("x", "zsdc"), ("c", "xdfv"), ("v", "cfgb"),
        ("b", "vghn"), ("n", "bhjm"), ("m", "njk"),
    )
}  # fmt: skip
_OUR = re.compile("our(?=s?$|s?[^aeiou])")
_TWICE = re.compile(r"(.)\1")
_VOWELS = set("aeiouy")


@dataclass(frozen=True, slots=True)
class Mention:
    """Words first to last of a comment (both included) that spell `name`."""

    first: int
    last: int
    spelling: Spelling
    name: Name


@cache
def pieces_of(spelt: str, words: tuple[str, ...]) -> tuple[str, ...]:
    """`spelt` cut into one piece a word so that the pieces differ least from the words."""
    if len(words) == 1:
        return (spelt,)
    best: tuple[tuple[int, int], tuple[str, ...]] | None = None
    for length in range(max(0, len(words[0]) - 2), min(len(spelt), len(words[0]) + 2) + 1):
        cost = OSA.distance(spelt[:length], words[0])
        if cost > MOST_SLIPS:
            continue
        rest = pieces_of(spelt[length:], words[1:])
        slips = [(cost, words[0])]
        slips += [(OSA.distance(p, w), w) for p, w in zip(rest, words[1:], strict=False)]
        # Of two ways that cost the same, the slip is in the longer word: "baskett by".
        weight = (sum(slip for slip, _ in slips), sum(s for s, w in slips if len(w) < 5))
        if len(rest) == len(words) - 1 and (best is None or weight < best[0]):
            best = (weight, (spelt[:length], *rest))
    return best[1] if best else ()


def _american(word: str) -> str:
    """The American spelling of a British one, as far as a letter makes it ("harbor")."""
    return _OUR.sub("or", word)


def _is_usual_slip(word: str, piece: str) -> bool:
    """Whether one slip of typing turns `word` into `piece` without any other reading of it."""
    if any(char.isdigit() for char in word + piece):
        return False
    doubled = _TWICE.sub(r"\1", word) == _TWICE.sub(r"\1", piece) and not is_common(piece)
    if doubled or _american(word) == _american(piece):
        return True
    if len(piece) < SHORTEST_EXCUSED_WORD:
        return False  # most short runs of letters are words
    if is_real(piece) or word in stems_of(piece) or piece in stems_of(word):
        return False
    if len(word) != len(piece):
        return word[0] == piece[0] or len(word) >= 8
    changed = [(a, b) for a, b in zip(word, piece, strict=True) if a != b]
    if len(changed) == 2:  # two neighbours swapped
        return True
    wanted, typed = changed[0]
    if len(word) >= 8:
        return True
    # Another first letter, or one vowel for another, makes other words more than slips do.
    if word[0] != piece[0] or {wanted, typed} <= _VOWELS:
        return False
    return typed in _NEIGHBOURS.get(wanted, ()) or len(word) >= 6


def _spelling(spelt: str, name: Name) -> Spelling | None:
    """How the letters `spelt` spell `name`, None where they spell something else."""
    if spelt == name.joined:
        return "same" if name.exact else "near"
    pieces = pieces_of(spelt, name.words)
    if not name.exact or len(pieces) != len(name.words):
        return None
    slips = [(w, p, OSA.distance(w, p)) for w, p in zip(name.words, pieces, strict=True) if w != p]
    if any(_is_another_word(word, piece, cost) for word, piece, cost in slips):
        return None
    word, piece, cost = slips[0]
    own = name.words[1:] if name.words[0] in ARTICLES else name.words
    excused = (
        len(slips) == 1 and cost == 1 and len(own) > 1
        and sum(map(len, own)) >= SHORTEST_EXCUSED_NAME and len(word) >= SHORTEST_EXCUSED_WORD
    )  # fmt: skip
    return "slip" if excused and _is_usual_slip(word, piece) else "near"


def _is_another_word(word: str, piece: str, cost: int) -> bool:
    """Whether `piece` is plainly something else than `word`, not `word` with slips."""
    if cost == 1:
        return len(word) < 3 and not piece.startswith(word[:1])
    return len(word) < 6 or is_real(piece)


def _windows(words: Sequence[Word], name: Name) -> Iterable[tuple[int, int, str]]:
    """Runs of words whose letters are about as many as the name's: first, last, letters."""
    most = len(name.joined) + MOST_SLIPS
    for first, start in enumerate(words):
        joined = spelt = ""
        for last in range(first, len(words)):
            with_bare = joined + words[last].bare
            joined += words[last].form
            spelt += words[last].spelt
            if len(with_bare) > most:
                break
            if with_bare == name.joined:
                yield first, last, with_bare
                continue
            for letters in dict.fromkeys((joined, spelt)):
                if len(name.joined) - MOST_SLIPS <= len(letters) <= most:
                    yield first, last, letters
        if len(start.form) > most and len(name.joined) > 5 and name.joined in start.form:
            yield first, first, start.form


def find_mentions(words: Sequence[Word], names: Sequence[Name]) -> tuple[Mention, ...]:
    """Where `words` spell one of `names`, in order, never overlapping, the best spelling first."""
    found: list[tuple[int, int, Mention]] = []
    other_spellings = {name.joined for name in names if not name.exact}
    for name in names:
        short = len(name.joined) < 4
        for first, last, spelt in _windows(words, name):
            distance = 0 if spelt == name.joined else MOST_SLIPS + 1
            if not short and name.exact and distance:
                distance = OSA.distance(spelt, name.joined, score_cutoff=MOST_SLIPS)
            limit = MOST_SLIPS if len(name.joined) >= 8 else 1
            spelling: Spelling | None = None
            if spelt in other_spellings and distance:
                continue  # no slip, but another spelling, which has a name of its own
            if distance <= limit:
                spelling = _spelling(spelt, name)
            elif len(spelt) > len(name.joined) + MOST_SLIPS:
                spelling = "near"  # the name inside a longer word
            if spelling:
                found.append((distance, last - first, Mention(first, last, spelling, name)))
    return _without_overlaps(words, found)


_RANK: dict[Spelling, int] = {"same": 0, "slip": 1, "near": 2}


def _without_overlaps(
    words: Sequence[Word], found: list[tuple[int, int, Mention]]
) -> tuple[Mention, ...]:
    kept: list[Mention] = []
    taken: set[int] = set()
    for _, _, mention in sorted(
        found, key=lambda f: (_RANK[f[2].spelling], f[0], -f[1], f[2].first, f[2].name.text)
    ):
        span = set(range(mention.first, mention.last + 1))
        article = words[mention.first].form in ARTICLES and mention.first < mention.last
        if taken.isdisjoint(span) and not article:
            kept.append(mention)
            taken |= span
    return tuple(sorted(kept, key=lambda mention: mention.first))
