"""What a word tells of the language that a comment is in.

Every word tells as much as it is a language's own: an everyday word or a number word that no other
language has tells most, one that many share tells little. English words tell a little more, since
most comments of most rounds are English and a foreign word in one makes it no foreign comment.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, fields
from functools import cache

from service.ballots.language import Language
from service.ballots.languages import LANGUAGES

ENGLISH = "en"
#: Letters from here on tell a language by themselves, whatever the word says.
_BEYOND_LATIN = "\u0370"
#: What a word tells of a language that alone has it, that shares it with one, with several.
OWN, SHARED, COMMON = 4, 2, 1
#: So many languages may be read at once where the words do not tell them apart.
TIED = 3
#: What an ordinal's ending is looked up by, apart from the words: "12e" is Dutch or French.
ENDING = "#"
_SPOKEN = tuple(
    field.name
    for field in fields(Language)
    if field.type == "tuple[Phrase, ...]" and field.name not in {"doubtful", "untelling"}
)
#: One bit a language, and one more for words without a letter said for longer.
BITS = {code: 1 << place for place, code in enumerate(LANGUAGES)}
PLAINLY_WRITTEN = 1 << len(LANGUAGES)


@dataclass(frozen=True, slots=True)
class Telling:
    """What one word tells: points for languages, and the languages that it is a number in."""

    points: tuple[tuple[str, int], ...]
    numeral_of: tuple[str, ...]
    #: An ordinary word elsewhere: it tells no language, and is a number only among few words.
    doubtful: bool = False
    #: The languages in which it joins two choices: "12 of 13" is Dutch before it is English.
    joins: frozenset[str] = frozenset()
    #: The language that it tells more than any other, if one; those that it tells as much as any.
    #: Both as bits, and PLAINLY_WRITTEN among the latter unless a letter is said for longer.
    mostly: int = 0
    allows: int = -1
    #: Its points for English, and the most points that it has for another language.
    english: int = 0
    abroad: int = 0


def _telling(
    points: dict[str, int],
    numeral_of: Sequence[str],
    *,
    doubtful: bool = False,
    joins: frozenset[str] = frozenset(),
) -> Telling:
    most = max(points.values(), default=0)
    foremost = [code for code in points if points[code] == most] or numeral_of
    allows = {code for code in foremost if not numeral_of or code in numeral_of}
    mostly = BITS[foremost[0]] if points and len(foremost) == 1 else 0
    allowed = PLAINLY_WRITTEN | sum(BITS[code] for code in allows)
    return Telling(
        tuple(points.items()),
        tuple(numeral_of),
        doubtful,
        joins,
        mostly,
        allowed,
        points.get(ENGLISH, 0),
        max((worth for code, worth in points.items() if code != ENGLISH), default=0),
    )


@cache
def tellings() -> dict[str, Telling]:
    """Every word that tells of a language, with what it tells."""
    languages = LANGUAGES.values()
    spoken = _by_word((language.code, _spoken(language)) for language in languages)
    everyday = _by_word((language.code, _everyday(language)) for language in languages)
    for word, codes in spoken.items():
        if word >= _BEYOND_LATIN:
            everyday[word] = list(dict.fromkeys(everyday.get(word, []) + codes))
    numerals = _by_word((language.code, _numerals(language)) for language in languages)
    untelling = _by_word((one.code, _singles(one, ("untelling",))) for one in languages)
    doubtful = _by_word((one.code, _singles(one, ("doubtful",))) for one in languages)
    joining = _by_word((one.code, _singles(one, ("either",))) for one in languages)
    english = _singles(LANGUAGES[ENGLISH], _SPOKEN)
    found = _plain_numerals(numerals, everyday, spoken, untelling, doubtful)
    for word in (everyday.keys() | spoken.keys() | numerals.keys()) - found.keys():
        numeral_of, heard = numerals.get(word, []), spoken.get(word, [])
        quiet = ENGLISH in heard and ENGLISH not in numeral_of
        silent = numeral_of if quiet else untelling.get(word, [])
        telling = [code for code in numeral_of if code not in silent] if silent else numeral_of
        usual = everyday.get(word, [])
        if word not in doubtful:
            points = _points(word, usual, heard, telling, in_english=word in english)
        else:
            points = {ENGLISH: SHARED} if ENGLISH in usual else {}
        if points or numeral_of:
            unsure = word in doubtful or len(telling) < len(numeral_of)
            joins = frozenset(joining.get(word, ())) & points.keys()
            found[word] = _telling(points, numeral_of, doubtful=unsure, joins=joins)
    return found | _endings()


def _plain_numerals(
    numerals: dict[str, list[str]], *others: dict[str, list[str]]
) -> dict[str, Telling]:
    """Most number words are nothing else: those of one length and language tell the same."""
    found: dict[str, Telling] = {}
    alike: dict[tuple[str, int, bool], Telling] = {}
    elsewhere = set[str]().union(*others)
    for word in numerals.keys() - elsewhere:
        codes = numerals[word]
        kind = (" ".join(codes), min(len(word), 5), word >= _BEYOND_LATIN)
        if kind not in alike:
            points = _points(word, [], [], codes, in_english=False)
            alike[kind] = _telling(points, codes)
        found[word] = alike[kind]
    return found


def _by_word(words_of: Iterable[tuple[str, set[str]]]) -> dict[str, list[str]]:
    """For each word the languages that have it, in their order."""
    found: dict[str, list[str]] = defaultdict(list)
    for code, words in words_of:
        for word in words:
            found[word].append(code)
    return dict(found)


def _endings() -> dict[str, Telling]:
    """What the endings of ordinals tell."""
    by_ending: dict[str, dict[str, int]] = defaultdict(dict)
    for code, language in LANGUAGES.items():
        for ending in language.ordinal_endings:
            by_ending[ENDING + ending][code] = COMMON
    return {ending: _telling(points, ()) for ending, points in by_ending.items()}


def _points(
    word: str, everyday: list[str], spoken: list[str], numerals: list[str], *, in_english: bool
) -> dict[str, int]:
    """How much the word tells of each language that has it."""
    claimed = list(dict.fromkeys(everyday + numerals))
    if not claimed:
        # A word met only in the phrases of few languages tells a little of them.
        few = len(spoken) == 1 or (len(spoken) <= TIED and ENGLISH not in spoken)
        return dict.fromkeys(spoken, COMMON) if few else {}
    worth = {1: OWN, 2: SHARED}.get(len(claimed), COMMON)
    if word >= _BEYOND_LATIN:
        worth *= 2
    found = dict.fromkeys(claimed, worth)
    for code in numerals:
        if code not in everyday and code != ENGLISH:
            found[code] = min(worth, _numeral_worth(word))
    if ENGLISH in everyday and len(claimed) > 1:
        found[ENGLISH] = SHARED
    elif in_english and word < _BEYOND_LATIN:
        # An English phrase has it: it tells the other language no more surely than English.
        found = {code: min(points, SHARED) for code, points in found.items()}
        found[ENGLISH] = SHARED
    return {code: points for code, points in found.items() if points}


def _numeral_worth(word: str) -> int:
    """Short number words are often another language's words, or names, in Latin letters."""
    if word >= _BEYOND_LATIN:
        return OWN
    return {1: 0, 2: 0, 3: 0, 4: SHARED}.get(len(word), OWN)


def _singles(language: Language, groups: Iterable[str]) -> set[str]:
    return {
        phrase[0] for group in groups for phrase in getattr(language, group) if len(phrase) == 1
    }


def _everyday(language: Language) -> set[str]:
    return _singles(language, ("everyday", "page"))


def _spoken(language: Language) -> set[str]:
    """Every word of its phrases but the shortest."""
    return {
        word
        for group in _SPOKEN
        for phrase in getattr(language, group)
        for word in phrase
        if len(word) > 2 or word >= _BEYOND_LATIN
    }


def _numerals(language: Language) -> set[str]:
    return set(language.numbers) | set(language.ordinals)
