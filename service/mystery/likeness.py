"""Whether one word may stand for another: slips, other forms, spelling by ear, the same thing."""

from __future__ import annotations

import re
from functools import cache

from rapidfuzz.distance import OSA, JaroWinkler

from service.mystery.concepts import is_common, same_thing
from service.mystery.everyday import stems_of
from service.mystery.spellings import is_number

#: Jaro-Winkler similarity from which one name may be meant by another ("Muriel", "Mireille").
LEAST_LIKENESS_OF_NAMES = 0.8

_SOUNDS = (
    (re.compile("ph"), "f"), (re.compile("ck|q"), "k"), (re.compile("c(?=[eiy])"), "s"), (re.compile("c"), "k"),
    (re.compile("^kn"), "n"), (re.compile("^wr"), "r"), (re.compile("wh"), "w"), (re.compile("gh(?=t|$)"), ""),
    (re.compile("x"), "ks"), (re.compile("z"), "s"), (re.compile(r"([^aeiouy])\1+"), r"\1"), (re.compile("(?<=..)e$"), ""),
)  # fmt: skip
_LONG_VOWELS = ((re.compile("[aeiouy]+"), "a"),)
_SHORT_VOWELS = (
    (re.compile("ee|ea|ie|y"), "i"), (re.compile("oo|ou"), "u"), (re.compile("oa|ow"), "o"), (re.compile("ai|ay"), "a"),
)  # fmt: skip


def spelt_alike(one: str, other: str) -> bool:
    """Whether two words are the same but for slips of typing."""
    if one == other:
        return True
    shorter = min(len(one), len(other))
    if shorter < 4:
        return False
    slips = OSA.distance(one, other, score_cutoff=2)
    if is_common(other) and (slips == 2 or is_common(one)):
        return False
    return slips == 1 or (slips == 2 and shorter >= 8)


def alike(one: str, other: str) -> bool:
    """Whether two words are one word, slips of typing and endings apart."""
    return spelt_alike(one, other) or same_stem(one, other)


def same_stem(one: str, other: str) -> bool:
    """Whether two words are forms of one word, by their endings or by a long common beginning."""
    if not stems_of(one).isdisjoint(stems_of(other)):
        return True
    shared = 0
    for a, b in zip(one, other, strict=False):
        if a != b:
            break
        shared += 1
    both_common = is_common(one) and is_common(other)
    return shared >= 5 and shared * 10 >= 6 * max(len(one), len(other)) and not both_common


@cache
def _sound_of(word: str, *, short: bool) -> str:
    """Roughly how an English word sounds, for a name written by ear ("seller", "cellar").

    In a short word the vowel tells more: "nite" is "night", "note" is not.
    """
    for letters, sound in (*_SOUNDS, *(_SHORT_VOWELS if short else _LONG_VOWELS)):
        word = letters.sub(sound, word)
    return word


def _sounds_alike(one: str, other: str) -> bool:
    length = min(len(one), len(other))
    short = length < 5
    return length > 3 and _sound_of(one, short=short) == _sound_of(other, short=short)


def _like_a_name(one: str, other: str) -> bool:
    """Whether two uncommon words are as alike as a name and the same name misremembered."""
    if min(len(one), len(other)) < 6 or is_common(one) or is_common(other):
        return False
    return JaroWinkler.similarity(one, other) >= LEAST_LIKENESS_OF_NAMES


def akin(one: str, other: str) -> bool:
    """Whether a word may stand for a title's word: a slip, another form, the same thing said."""
    return (
        spelt_alike(one, other)
        or (min(len(one), len(other)) > 2 and same_stem(one, other))
        or _like_a_name(one, other)
        or _sounds_alike(one, other)
        or same_thing(one, other)
        or (is_number(one) and is_number(other))
    )
