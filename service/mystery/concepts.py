"""Whether two words may be said of the same thing, and whether a word is common.

Serves to recognise another rendering of a title, which the host then looks at, and to know a
common word from one that hardly stands elsewhere.
"""

from __future__ import annotations

from functools import cache

from service.mystery.everyday import is_english, is_rarer_english, stems_of
from service.mystery.names import fold
from service.mystery.talk import CHAT, GUESS_WORDS, OPENERS, SMALL_WORDS
from service.mystery.things import GROUPS, IRREGULAR
from service.mystery.things_at_home import GROUPS as MORE_GROUPS
from service.mystery.wordlist import WORDS


@cache
def _concepts() -> dict[str, frozenset[int]]:
    """Each word of the groups to the numbers of the groups it stands in."""
    found: dict[str, set[int]] = {}
    groups = [*(GROUPS + MORE_GROUPS).replace("\n    ", " ").split("\n"), *IRREGULAR]
    for number, group in enumerate(groups):
        for word in map(fold, group.split()):
            if len(word) > 2 and word not in SMALL_WORDS:
                found.setdefault(word, set()).add(number)
    return {word: frozenset(numbers) for word, numbers in found.items()}


@cache
def _concepts_of(form: str) -> frozenset[int]:
    return frozenset(n for stem in stems_of(form) for n in _concepts().get(stem, ()))


def is_thing(form: str) -> bool:
    """Whether `form` is a word for one of the table's things, in any language."""
    return bool(_concepts_of(form))


def same_thing(one: str, other: str) -> bool:
    """Whether two words may be said of the same thing, in one language or two."""
    return not _concepts_of(one).isdisjoint(_concepts_of(other))


@cache
def is_common(form: str) -> bool:
    """Whether `form` is a common word, of English or of the table's things in any language."""
    if is_rarer_english(form) and form not in WORDS:
        return False
    return form in SMALL_WORDS or bool(_concepts_of(form)) or is_english(form)


@cache
def _is_compound(form: str) -> bool:
    """Whether `form` is two English words of four letters or more ("doorstop")."""
    return any(is_english(form[:cut]) and is_english(form[cut:]) for cut in range(4, len(form) - 3))


@cache
def is_real(form: str) -> bool:
    """Whether `form` is a word that a slip of typing may make, common or not."""
    talked = form in CHAT or form in GUESS_WORDS or form in OPENERS
    return talked or is_common(form) or is_rarer_english(form) or _is_compound(form)


@cache
def is_made_of_common(form: str) -> bool:
    """Whether `form` is two common words written as one ("tollkeeper")."""
    return any(is_common(form[:cut]) and is_common(form[cut:]) for cut in range(3, len(form) - 2))
