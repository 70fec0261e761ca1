"""The words of several languages, ready to be looked up beside a number."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, fields
from functools import cache
from typing import Any

from service.ballots.language import Language, Phrase
from service.ballots.languages import LANGUAGES
from service.ballots.numerals import ROMANS
from service.ballots.scanning import DIGITS, WORD, Token

#: The mark in a phrase that stands for any one word, and for any one number in digits.
_WILD = {WORD: "*", DIGITS: "#"}


#: Phrases by their words one after another, so that thousands of them cost no more than their
#: longest. Under None stands which of its groups a phrase belongs to that ends there.
_Tree = dict[str | None, Any]


def _plant(tree: _Tree, words: Iterable[str], group: int) -> None:
    """Add a phrase; of two groups that have it, the one named first decides."""
    for word in words:
        tree = tree.setdefault(word, {})
    tree[None] = min(group, tree.get(None, group))


def _longest(tree: _Tree, tokens: Sequence[Token], at: int, step: int) -> tuple[int, int]:
    """The token count of the longest phrase from `at` on in steps, and its group; 0 for none."""
    found, count = (0, tree.get(None, 0)), 0
    while 0 <= at < len(tokens):
        token = tokens[at]
        near = tree.get(token.text)
        far = tree.get(_WILD[token.kind]) if token.kind in _WILD else None
        at, count = at + step, count + 1
        if near is not None and far is not None:
            ways = [_longest(way, tokens, at, step) for way in (near, far)]
            lengths = [
                (length + count, -group)
                for way, (length, group) in zip((near, far), ways, strict=True)
                if length or None in way
            ]
            best = max(lengths, default=(0, 0))
            return (best[0], -best[1]) if best[0] else found
        tree = near if near is not None else far  # type: ignore[assignment]
        if tree is None:
            break
        if None in tree:
            found = count, tree[None]
    return found


class Phrases:
    """A set of phrases that can be matched forwards or backwards from a place in the tokens."""

    __slots__ = ("_backwards", "_forwards", "firsts")

    def __init__(self, phrases: Iterable[Phrase]) -> None:
        self._forwards: _Tree = {}
        self._backwards: _Tree = {}
        for phrase in phrases:
            _plant(self._forwards, phrase, 0)
            _plant(self._backwards, reversed(phrase), 0)
        self.firsts = frozenset(word for word in self._forwards if word is not None)

    def after(self, tokens: Sequence[Token], at: int) -> int:
        """How many tokens from `at` on the longest matching phrase has; 0 for none."""
        return _longest(self._forwards, tokens, at, 1)[0]

    def before(self, tokens: Sequence[Token], at: int) -> int:
        """How many tokens up to and with `at` the longest matching phrase has; 0 for none."""
        return _longest(self._backwards, tokens, at, -1)[0]


_WORD_GROUPS = tuple(field.name for field in fields(Language) if field.type == "tuple[Phrase, ...]")

#: One bit a group, so that a comment is searched only for groups that it can hold.
GROUP_BITS = {name: 1 << place for place, name in enumerate(_WORD_GROUPS)}

#: The word is an ordinal, or is written as a roman numeral is.
ORDINAL = 1 << len(GROUP_BITS)
ROMAN = ORDINAL << 1

#: What stands right before a number; of two phrases of one length the group named first decides.
BEFORE = (
    "not_before", "above", "below", "later", "earlier", "relative_before", "between",
    "tally_before", "sum_before", "roughly_before", "lucky_before", "choice_before", "other_before", "page", "number",
    "fillers", "weak_before", "reported_before", "family_before", "neutral_before",
)  # fmt: skip
#: What stands right after one.
AFTER = (
    "other_after", "sum_after", "relative_after", "roughly_after", "not_after", "reported_after", "choice_after",
    "weak_after", "neutral_after",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Lexicon:
    """The merged words of `codes`, the first of them the comment's own language."""

    codes: tuple[str, ...]
    numbers: dict[str, int]
    ordinals: dict[str, int]
    ordinal_endings: frozenset[str]
    homophones: dict[str, int]
    #: Words that people glue to a number: "pg42", "42please".
    glue_before: frozenset[str]
    glue_after: frozenset[str]
    #: Single words that say nothing of a number in their clause.
    plain_words: frozenset[str]
    #: The groups in which a phrase begins with this word, as bits of GROUP_BITS.
    signs: dict[str, int]
    _before: _Tree
    _after: _Tree
    _groups: dict[str, Phrases]

    def group(self, name: str) -> Phrases:
        """The phrases of one group, named as in Language."""
        return self._groups[name]

    def before(self, tokens: Sequence[Token], at: int) -> tuple[str, int]:
        """The group and token count of the longest phrase that ends at `at`; "" and 0 for none."""
        count, group = _longest(self._before, tokens, at, -1)
        return (BEFORE[group], count) if count else ("", 0)

    def after(self, tokens: Sequence[Token], at: int) -> tuple[str, int]:
        """The group and token count of the longest phrase that begins at `at`."""
        count, group = _longest(self._after, tokens, at, 1)
        return (AFTER[group], count) if count else ("", 0)


def _said_in(languages: Sequence[Language]) -> Iterator[tuple[Language, set[Phrase]]]:
    """Each language with its phrases that say nothing here.

    An everyday word of the comment's own language, the first, says there what it says in that
    language and nothing else ("die" and "also" in German, "same" and "do" in Polish).
    """
    own = set(languages[0].everyday) if languages else set()
    for place, language in enumerate(languages):
        yield language, own if place else set()


def _beside(languages: Sequence[Language], groups: Sequence[str], step: int) -> _Tree:
    """Phrases of several groups by their words, from the one nearest the number on."""
    found: dict[Phrase, int] = {}
    # What a phrase means in the comment's own language holds over what it means in another.
    for language, silent in _said_in(languages):
        for place, group in enumerate(groups):
            for phrase in getattr(language, group):
                if phrase not in silent:
                    found.setdefault(phrase, place)
    tree: _Tree = {}
    for phrase, place in found.items():
        _plant(tree, phrase[::step], place)
    return tree


def _singles(languages: Sequence[Language], *groups: str) -> frozenset[str]:
    return frozenset(
        phrase[0]
        for language in languages
        for group in groups
        for phrase in getattr(language, group)
        if len(phrase) == 1
    )


def _phrases_of(languages: Sequence[Language], group: str) -> Iterator[Phrase]:
    for language, silent in _said_in(languages):
        yield from (phrase for phrase in getattr(language, group) if phrase not in silent)


def _signs(languages: Sequence[Language]) -> dict[str, int]:
    found: dict[str, int] = defaultdict(int)
    for name, bit in GROUP_BITS.items():
        for phrase in _phrases_of(languages, name):
            found[phrase[0]] |= bit
    for language in languages:
        for word in language.ordinals:
            found[word] |= ORDINAL
    for word in ROMANS:
        found[word] |= ROMAN
    return dict(found)


def _counting_words(languages: Sequence[Language]) -> tuple[dict[str, int], dict[str, int]]:
    """Number words and ordinals; where two languages differ on one, the first language's holds.

    A number word of another language that is an everyday word of the first is no number.
    """
    numbers: dict[str, int] = {}
    ordinals: dict[str, int] = {}
    for language in reversed(languages):
        if language is languages[0]:
            for phrase in language.everyday:
                numbers.pop(phrase[0], None)
        numbers.update(language.numbers)
        ordinals.update(language.ordinals)
    return numbers, ordinals


@cache
def lexicon_of(codes: tuple[str, ...]) -> Lexicon:
    """The words of these languages, the comment's own first."""
    languages = [LANGUAGES[code] for code in codes if code in LANGUAGES]
    numbers, ordinals = _counting_words(languages)
    return Lexicon(
        codes=codes,
        numbers=numbers,
        ordinals=ordinals,
        ordinal_endings=frozenset(end for one in languages for end in one.ordinal_endings),
        homophones={
            word: n
            for one, silent in _said_in(languages)
            for word, n in one.homophones.items()
            if (word,) not in silent
        },
        glue_before=_singles(languages, "page", "number"),
        glue_after=_singles(languages, "choice_after"),
        plain_words=_singles(
            languages,
            "fillers",
            "neutral_before",
            "neutral_after",
            "choice_before",
            "choice_after",
            "page",
            "number",
        ),
        signs=_signs(languages),
        _before=_beside(languages, BEFORE, -1),
        _after=_beside(languages, AFTER, 1),
        _groups={name: Phrases(_phrases_of(languages, name)) for name in _WORD_GROUPS},
    )
