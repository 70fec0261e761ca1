"""A run of letters cut into the words that a language's data knows, where none part them.

Japanese and Chinese run all their words together, Korean glues particles to its words.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import fields, replace
from functools import cache
from itertools import takewhile
from typing import Any

from service.ballots.language import Language, Phrase

_KANA = "\u3041-\u30ff"
_HAN = "\u3005\u3007\u3400-\u9fff\uf900-\ufaff"
KANA = re.compile(f"[{_KANA}]")
#: Letters of scripts that part no words; and of Korean, which parts them, but not particles.
UNSPACED = re.compile(f"[{_KANA}{_HAN}]")
HANGUL = re.compile("[\uac00-\ud7a3]")
#: Runs of one kind of writing: the letters that Koreans laugh and cry with are words of their own.
RUNS = re.compile(f"[\uac00-\ud7a3]+|[{_KANA}{_HAN}]+|[^\uac00-\ud7a3{_KANA}{_HAN}]+")
_UNKNOWN_COST, _WORD_COST = 100, 1
HAN_NUMERALS = frozenset("零〇一二三四五六七八九十百千")
_PHRASE_FIELDS = tuple(
    field.name for field in fields(Language) if field.type == "tuple[Phrase, ...]"
)


def words_of(language: Language) -> frozenset[str]:
    """Every word in the language's data that is written in one of these scripts."""
    words = set(language.numbers.keys() | language.ordinals.keys())
    for name in _PHRASE_FIELDS:
        words.update(word for phrase in getattr(language, name) for word in phrase)
    return frozenset(word for word in words if UNSPACED.match(word) or HANGUL.match(word))


def as_cut(language: Language) -> Language:
    """The language with its phrases in the words that comments are cut into.

    Whoever writes the data parts words for the eye; a comment's words are found by the cutting.
    """
    words = words_of(language)
    changes: dict[str, Any] = {
        name: tuple(_recut(phrase, words) for phrase in getattr(language, name))
        for name in _PHRASE_FIELDS
    }
    return replace(language, **changes)


def _recut(phrase: Phrase, words: frozenset[str]) -> Phrase:
    found: list[str] = []
    run = ""
    for word in (*phrase, ""):
        if UNSPACED.match(word):
            run += word
            continue
        found += cut_unspaced(run, words) if run else []
        found += [word] if word else []
        run = ""
    return tuple(found)


def cut_unspaced(run: str, words: frozenset[str]) -> list[str]:
    """The words of a run of Han characters and kana; what belongs to no word stays together."""
    joined: list[tuple[str, bool]] = []
    pieces = _cut(run, words)
    for at, (piece, known) in enumerate(pieces):
        # A single numeral beside letters of no known word is part of that word, no number.
        follows_unknown = bool(joined) and not joined[-1][1]
        before_unknown = at + 1 < len(pieces) and not pieces[at + 1][1]
        lone = piece in HAN_NUMERALS and (follows_unknown or before_unknown)
        if follows_unknown and (lone or not known):
            joined[-1] = (joined[-1][0] + piece, False)
        else:
            joined.append((piece, known and not lone))
    return [piece for piece, _ in joined]


def cut_korean(
    run: str, words: frozenset[str], numbers: Collection[str], *, behind_digits: bool
) -> list[str]:
    """A word and its particles, where all of the run is known.

    Behind a number, or begun by one, also where only its beginning is. Else the run as it is:
    words are not looked for inside it.
    """
    pieces = _cut(run, words)
    begun = [piece for piece, _ in takewhile(lambda piece: piece[1], pieces)]
    if len(begun) == len(pieces):
        return begun
    if begun and (behind_digits or (len(begun) > 1 and begun[0] in numbers)):
        return [*begun, run[sum(map(len, begun)) :]]
    return [run]


@cache
def _longest(words: frozenset[str]) -> int:
    return max(map(len, words), default=1)


def _parts_a_number(run: str, at: int) -> bool:
    """Whether a number would be cut in two here: 十二番目 is 12, not 10 and "the second"."""
    return 0 < at < len(run) and run[at] in HAN_NUMERALS and run[at - 1] in HAN_NUMERALS


def _cut(run: str, words: frozenset[str]) -> list[tuple[str, bool]]:
    """The run's pieces, each with whether it is a known word.

    As few letters as can be belong to no word, and the words are as few, so as long, as can be.
    """
    size, longest = len(run), _longest(words)
    costs = [0] * (size + 1)
    steps = [1] * (size + 1)
    for at in range(size - 1, -1, -1):
        best, step = costs[at + 1] + _UNKNOWN_COST, -1
        reach = 0 if _parts_a_number(run, at) else min(longest, size - at)
        for length in range(1, reach + 1):
            if run[at : at + length] in words and not _parts_a_number(run, at + length):
                cost = costs[at + length] + _WORD_COST
                if cost <= best:
                    best, step = cost, length
        costs[at], steps[at] = best, step
    pieces: list[tuple[str, bool]] = []
    at = 0
    while at < size:
        known, length = steps[at] > 0, abs(steps[at])
        piece = run[at : at + length]
        if not known and pieces and not pieces[-1][1]:
            piece = pieces.pop()[0] + piece
        pieces.append((piece, known))
        at += length
    return pieces
