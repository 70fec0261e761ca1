"""Which language a comment is plainly written in, told by its everyday words."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Sequence
from dataclasses import fields
from functools import cache

from service.ballots.language import Language
from service.ballots.languages import LANGUAGES
from service.ballots.scanning import WORD, Token

#: A language that the round has not switched on needs this many of its words to be plain.
PLAINLY = 2
#: A word in letters beyond the Latin ones is plain by itself, whatever it says.
_BEYOND_LATIN = "\u0370"


@cache
def _words_by_language() -> dict[str, tuple[str, ...]]:
    """Every everyday, page and number word with the languages it belongs to."""
    found: dict[str, list[str]] = defaultdict(list)
    for code, language in LANGUAGES.items():
        words = {phrase[0] for phrase in (*language.everyday, *language.page) if len(phrase) == 1}
        words |= language.numbers.keys() | language.ordinals.keys()
        words |= {word for word in _words_of(language) if word >= _BEYOND_LATIN}
        for word in words:
            found[word].append(code)
    return {word: tuple(codes) for word, codes in found.items()}


def _words_of(language: Language) -> set[str]:
    groups = (field.name for field in fields(Language) if field.type == "tuple[Phrase, ...]")
    return {word for group in groups for phrase in getattr(language, group) for word in phrase}


def tongue_of(tokens: Sequence[Token], switched_on: tuple[str, ...]) -> tuple[str, ...]:
    """The languages to read by, the comment's own first; English helps to read every other.

    Without a word that tells, all the languages that the round has switched on.
    """
    known = _words_by_language()
    hits: Counter[str] = Counter()
    for token in tokens:
        if token.kind == WORD and token.text in known:
            hits.update(known[token.text] * (PLAINLY if token.text >= _BEYOND_LATIN else 1))
    if not hits:
        return switched_on
    home = max(switched_on, key=lambda code: hits[code], default="en")
    away = max((code for code in hits if code not in switched_on), key=hits.get, default=None)  # type: ignore[arg-type]
    own = home
    if away is not None and hits[away] > hits[home] and (hits[away] >= PLAINLY or not hits[home]):
        own = away
    return (own,) if own == "en" else (own, "en")
