"""Words put together: number words as hurried fingers spell them, phrases one after another."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from service.ballots.language import Language, Phrase, phrases
from service.ballots.normal import plain_of

#: Few charts have more pages, and every slip doubles the words.
_SLIPS_BELOW = 200


def joined(words: str) -> str:
    """Levelled as a comment is, without spaces, hyphens and apostrophes: "vingt et un", vingtetun."""
    return "".join(letter for letter in plain_of(words).text if letter.isalnum())


def with_slips(numbers: Mapping[str, int], slips: Iterable[tuple[str, str]]) -> dict[str, int]:
    """The numbers, and each below 200 with parts misspelled; a right word is never changed."""
    found = dict(numbers)
    for right, slip in slips:
        for word, value in list(found.items()):
            if value < _SLIPS_BELOW and right in word:
                found.setdefault(word.replace(right, slip), value)
    return found


def dozens(word: str, one: str, *halves: str) -> dict[str, int]:
    """A dozen and half of one, as "douzaine", "une douzaine", "demi-douzaine"."""
    half = {joined(before + word): 6 for before in halves}
    return {joined(word): 12, joined(one + word): 12} | half


def one_after_another(first: str, then: str) -> tuple[Phrase, ...]:
    """Every phrase of one block with every phrase of another behind it."""
    return tuple((*one, *other) for one in phrases(first) for other in phrases(then))


def extended(language: Language, groups: Mapping[str, tuple[Phrase, ...]]) -> Language:
    """The language with more phrases in some of its groups."""
    more: dict[str, Any] = {
        name: tuple(dict.fromkeys(getattr(language, name) + added))
        for name, added in groups.items()
    }
    return replace(language, **more)
