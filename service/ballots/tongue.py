"""Which language a comment is plainly written in, told by its words.

Every word tells as much as it is a language's own: an everyday word or a number word that no other
language has tells most, one that many share tells little. English words tell a little more, since
most comments of most rounds are English and a foreign word in one makes it no foreign comment.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, fields
from functools import cache
from string import digits

from service.ballots.language import Language
from service.ballots.languages import LANGUAGES
from service.ballots.scanning import WORD, Token

ENGLISH = "en"
#: Letters from here on tell a language by themselves, whatever the word says.
_BEYOND_LATIN = "\u0370"
#: What a word tells of a language that alone has it, that shares it with one, with several.
_OWN, _SHARED, _COMMON = 4, 2, 1
#: A language that the round has not switched on must be told by more than a shared word.
PLAINLY = _SHARED + _COMMON
#: Among so few words a number word is one, even if it is an ordinary word elsewhere.
_FEW = 2
#: In so short a comment a number word and the words beside it are looked at together.
_SHORT = 4
#: So many languages may be read at once where the words do not tell them apart.
_TIED = 3
#: What an ordinal's ending is looked up by, apart from the words: "12e" is Dutch or French.
_ENDING = "#"
_SPOKEN = tuple(
    field.name
    for field in fields(Language)
    if field.type == "tuple[Phrase, ...]" and field.name not in {"doubtful", "untelling"}
)


@dataclass(frozen=True, slots=True)
class Telling:
    """What one word tells: points for languages, and the languages that it is a number in."""

    points: tuple[tuple[str, int], ...]
    numeral_of: tuple[str, ...]
    #: An ordinary word elsewhere: it tells no language, and is a number only among few words.
    doubtful: bool = False
    #: The languages in which it joins two choices: "12 of 13" is Dutch before it is English.
    joins: frozenset[str] = frozenset()
    #: The language that it tells more than any other; those that it tells as much as any.
    mostly: str = ""
    allows: frozenset[str] = frozenset()


def _telling(
    points: dict[str, int],
    numeral_of: Sequence[str],
    *,
    doubtful: bool = False,
    joins: frozenset[str] = frozenset(),
) -> Telling:
    most = max(points.values(), default=0)
    foremost = [code for code in points if points[code] == most] or numeral_of
    allows = frozenset(code for code in foremost if not numeral_of or code in numeral_of)
    mostly = foremost[0] if points and len(foremost) == 1 else ""
    return Telling(tuple(points.items()), tuple(numeral_of), doubtful, joins, mostly, allows)


def tongue_of(tokens: Sequence[Token], switched_on: tuple[str, ...]) -> tuple[str, ...]:
    """The languages to read by, the comment's own first; English helps to read every other.

    Without a word that tells, all the languages that the round has switched on. Of those, one is
    added where a number word of it stands in a comment of another language.
    """
    known = tellings()
    heard: list[Telling] = []
    words = 0
    for token in tokens:
        if token.kind == WORD:
            words += 1
            telling = known.get(token.text)
        elif token.kind == "ordinal":
            telling = known.get(_ENDING + token.text.lstrip(digits))
        else:
            continue
        if telling is not None:
            heard.append(telling)
    plainly = _plainly_one(heard, words, switched_on)
    if plainly:
        return (ENGLISH,) if plainly == ENGLISH else (plainly, ENGLISH)
    return _weighed(tokens, heard, words, switched_on)


def _weighed(
    tokens: Sequence[Token], heard: list[Telling], words: int, switched_on: tuple[str, ...]
) -> tuple[str, ...]:
    """The same where the words do not all tell one language."""
    points: dict[str, int] = {}
    numerals: list[str] = []
    doubtful: list[str] = []
    joining: frozenset[str] = frozenset()
    for telling in heard:
        for code, worth in telling.points:
            points[code] = points.get(code, 0) + worth
        (doubtful if telling.doubtful else numerals).extend(telling.numeral_of)
        joining |= telling.joins
    if words <= _FEW:
        numerals += doubtful
    covering = (
        _covering(tokens, tellings(), switched_on) if numerals and 1 < words <= _SHORT else ()
    )
    if not points and not covering:
        return _with_english(switched_on)
    own = covering or _own_languages(points, switched_on, joining)
    read = own if ENGLISH in own else (*own, ENGLISH)
    if numerals and not any(code in numerals for code in own):
        read += tuple(code for code in switched_on if code in numerals and code not in read)
    return read


def _plainly_one(heard: list[Telling], words: int, switched_on: tuple[str, ...]) -> str:
    """The language that a word tells most and none speaks against, as in most comments; "" if none.

    A word speaks against a language where it tells another more or is a number of others alone.
    """
    code = next((telling.mostly for telling in heard if telling.mostly), "")
    # Of so few words of another language one may be a number of a third.
    if code != ENGLISH and (code not in switched_on or words <= _SHORT):
        return ""
    return code if all(code in telling.allows for telling in heard) else ""


def _covering(
    tokens: Sequence[Token], known: dict[str, Telling], switched_on: tuple[str, ...]
) -> tuple[str, ...]:
    """The languages that have every word of it, a number word among them, if English has not.

    "Side tres" is Danish: "tres" is a number in Spanish too, but "side" is no Spanish word.
    """
    left: set[str] | None = None
    for token in tokens:
        if token.kind == WORD:
            telling = known.get(token.text, Telling((), ()))
            having = {code for code, _ in telling.points} | set(telling.numeral_of)
            left = having if left is None else left & having
    if not left or ENGLISH in left:
        return ()
    home = tuple(code for code in switched_on if code in left)
    return (home or tuple(code for code in LANGUAGES if code in left))[:_TIED]


def _with_english(codes: tuple[str, ...]) -> tuple[str, ...]:
    return codes if ENGLISH in codes else (*codes, ENGLISH)


def _own_languages(
    points: dict[str, int], switched_on: tuple[str, ...], joining: frozenset[str]
) -> tuple[str, ...]:
    """The language with most points, or those that cannot be told apart.

    On little evidence English is read first of those, otherwise last.
    """
    home = _with_english(switched_on)
    at_home = max(points.get(code, 0) for code in home)
    abroad = max((worth for code, worth in points.items() if code not in home), default=0)
    if abroad > at_home and (abroad >= PLAINLY or not at_home):
        return tuple(code for code in LANGUAGES if code not in home and points.get(code) == abroad)[
            :_TIED
        ]
    tied = [code for code in home if points.get(code, 0) == at_home]
    others = tuple(code for code in tied if code != ENGLISH)[:_TIED]
    if ENGLISH in tied and at_home <= _SHARED and joining.isdisjoint(others):
        return (ENGLISH, *others)
    return others or (ENGLISH,)


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
            points = {ENGLISH: _SHARED} if ENGLISH in usual else {}
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
            by_ending[_ENDING + ending][code] = _COMMON
    return {ending: _telling(points, ()) for ending, points in by_ending.items()}


def _points(
    word: str, everyday: list[str], spoken: list[str], numerals: list[str], *, in_english: bool
) -> dict[str, int]:
    """How much the word tells of each language that has it."""
    claimed = list(dict.fromkeys(everyday + numerals))
    if not claimed:
        # A word met only in the phrases of few languages tells a little of them.
        few = len(spoken) == 1 or (len(spoken) <= _TIED and ENGLISH not in spoken)
        return dict.fromkeys(spoken, _COMMON) if few else {}
    worth = {1: _OWN, 2: _SHARED}.get(len(claimed), _COMMON)
    if word >= _BEYOND_LATIN:
        worth *= 2
    found = dict.fromkeys(claimed, worth)
    for code in numerals:
        if code not in everyday and code != ENGLISH:
            found[code] = min(worth, _numeral_worth(word))
    if ENGLISH in everyday and len(claimed) > 1:
        found[ENGLISH] = _SHARED
    elif in_english and word < _BEYOND_LATIN:
        # An English phrase has it: it tells the other language no more surely than English.
        found = {code: min(points, _SHARED) for code, points in found.items()}
        found[ENGLISH] = _SHARED
    return {code: points for code, points in found.items() if points}


def _numeral_worth(word: str) -> int:
    """Short number words are often another language's words, or names, in Latin letters."""
    if word >= _BEYOND_LATIN:
        return _OWN
    return {1: 0, 2: 0, 3: 0, 4: _SHARED}.get(len(word), _OWN)


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
