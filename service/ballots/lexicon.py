"""The words of several languages, ready to be looked up beside a number."""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, fields
from functools import lru_cache

from service.ballots.language import Language, Phrase
from service.ballots.languages import LANGUAGES
from service.ballots.matching import AFTER, BEFORE, WILD, Found, Phrases, Tree, longest, tree_of
from service.ballots.met import Met
from service.ballots.numerals import ROMANS
from service.ballots.scanning import Token

_WORD_GROUPS = tuple(field.name for field in fields(Language) if field.type == "tuple[Phrase, ...]")

#: What a word is by itself: a number; a number or an ordinal; one that says nothing of a number in
#: its clause; an ordinal; written as a roman numeral is.
NUMBER, COUNTING, PLAIN, ORDINAL, ROMAN = (1 << place for place in range(5))
#: Words and marks that a rule asks for by themselves, in any language.
_SINGLE = ("for", "over", "(")
#: One bit a group and a single word ("=for"), so that a comment is searched only for what it holds.
GROUP_BITS = {
    name: ROMAN << place
    for place, name in enumerate((*_WORD_GROUPS, *(f"={word}" for word in _SINGLE)), start=1)
}


def bits_of(*groups: str) -> int:
    """The bits of these groups, for asking a comment for any of them at once."""
    return sum(GROUP_BITS[group] for group in groups)


#: The groups, as bits of GROUP_BITS, in which this word is a phrase, begins a longer one, and is
#: the second word of one.
Sign = tuple[int, int, int]
#: A number word with 's is at least so long ("seven's my pick"); "one's" and "two's" are words.
_LONG_ENOUGH = 5
#: Shorter words for a page are the beginnings of too many others.
_SHORTEST_HEAD = 4
#: What `before` and `after` tell where no phrase stands.
_NOTHING: Found = ("", 0)
#: So many mixtures of languages are kept ready, those asked for last. Each takes some ten megabytes,
#: and words of three languages at once make thousands: whoever writes such comments would fill it all.
_MIXTURES = 24


@dataclass(frozen=True, slots=True)
class Lexicon:
    """The merged words of `codes`, the first of them the comment's own language."""

    codes: tuple[str, ...]
    numbers: dict[str, int]
    ordinals: dict[str, int]
    ordinal_endings: frozenset[str]
    #: Whether things are many with an -s in the comment's own language.
    plural_s: bool
    homophones: dict[str, int]
    #: Words that people glue to a number: "pg42", "42please".
    glue_before: frozenset[str]
    glue_after: frozenset[str]
    #: Of those before it the page words; beginnings of what rules a glued page out: "pg31isgone".
    glue_pages: frozenset[str]
    doubting: tuple[str, ...]
    #: Words that people glue to a number word: "pagetwentytwo".
    heads: tuple[str, ...]
    #: Single words that say nothing of a number in their clause.
    plain_words: frozenset[str]
    #: Whether some tokens are read as others: "12. Seite", "linksboven".
    rewords: bool
    #: What a word is a sign of; None for a word of no phrase that counts nothing.
    signs: Met[Sign | None]
    _before: Tree
    _after: Tree
    _groups: dict[str, Phrases]
    #: All number words and ordinals in their order, from when they are first asked for.
    _spelled: list[str]

    def may_go_on(self, joined: str) -> bool:
        """Whether a number word or an ordinal begins so and has more letters."""
        if not self._spelled:
            self._spelled.extend(sorted({*self.numbers, *self.ordinals}))
        place = bisect_right(self._spelled, joined)
        return place < len(self._spelled) and self._spelled[place].startswith(joined)

    def group(self, name: str) -> Phrases:
        """The phrases of one group, named as in Language."""
        return self._groups[name]

    def before(self, tokens: Sequence[Token], at: int) -> tuple[str, int]:
        """The group and token count of the longest phrase that ends at `at`; "" and 0 for none."""
        return longest(self._before, tokens, at, -1) or _NOTHING

    def after(self, tokens: Sequence[Token], at: int) -> tuple[str, int]:
        """The group and token count of the longest phrase that begins at `at`."""
        return longest(self._after, tokens, at, 1) or _NOTHING


def _said_in(languages: Sequence[Language]) -> Iterator[tuple[Language, set[Phrase]]]:
    """Each language with its phrases that say nothing here.

    An everyday word of the comment's own language, the first, says there what it says in that
    language and nothing else ("die" and "also" in German, "same" and "do" in Polish).
    """
    own = set(languages[0].everyday) if languages else set()
    for place, language in enumerate(languages):
        yield language, own if place else set()


def _beside(languages: Sequence[Language], groups: Sequence[str], step: int) -> Tree:
    """Phrases of several groups by the word nearest the number, the weightiest group first."""
    found: dict[Phrase, str] = {}
    # What a phrase means in the comment's own language holds over what it means in another.
    for language, silent in _said_in(languages):
        for group in groups:
            for phrase in getattr(language, group):
                if phrase not in silent:
                    found.setdefault(phrase, group)
    weightiest = sorted(found.items(), key=lambda item: groups.index(item[1]))
    return tree_of((phrase[::step], group) for phrase, group in weightiest)


def _singles(languages: Sequence[Language], *groups: str) -> frozenset[str]:
    return frozenset(
        phrase[0]
        for language in languages
        for group in groups
        for phrase in getattr(language, group)
        if len(phrase) == 1
    )


def _beginnings(languages: Sequence[Language], *groups: str) -> tuple[str, ...]:
    """The first words of these groups' phrases, but single letters and marks."""
    words = {phrase[0] for one in languages for group in groups for phrase in getattr(one, group)}
    return tuple(sorted(word for word in words if len(word) > 1 and word.isalpha()))


def heads_of(languages: Sequence[Language]) -> tuple[str, ...]:
    """Words for a page that people glue to a number word."""
    found = _singles(languages, "page", "number")
    return tuple(sorted(head for head in found if len(head) >= _SHORTEST_HEAD))


def _phrases_of(languages: Sequence[Language], group: str) -> Iterator[Phrase]:
    for language, silent in _said_in(languages):
        yield from (phrase for phrase in getattr(language, group) if phrase not in silent)


def _signs(languages: Sequence[Language], plain_words: Collection[str]) -> dict[str, Sign]:
    alone, first, second = (defaultdict[str, int](int) for _ in range(3))
    for word in _SINGLE:
        alone[word] = GROUP_BITS[f"={word}"]
    for name in _WORD_GROUPS:
        bit = GROUP_BITS[name]
        for phrase in _phrases_of(languages, name):
            if len(phrase) == 1:
                alone[phrase[0]] |= bit
            elif phrase[1] in WILD:
                # Whatever follows; the scene looks at the words themselves.
                alone[phrase[0]] |= bit
            else:
                first[phrase[0]] |= bit
                second[phrase[1]] |= bit
    for language in languages:
        for word in language.ordinals:
            alone[word] |= ORDINAL
    for word in ROMANS:
        alone[word] |= ROMAN
    for word in plain_words:
        alone[word] |= PLAIN
    words = alone.keys() | first.keys() | second.keys()
    return {word: (alone.get(word, 0), first.get(word, 0), second.get(word, 0)) for word in words}


def parted_number(word: str, numbers: Collection[str], heads: tuple[str, ...]) -> tuple[str, str]:
    """What is glued before a number word, and the number word, "" for none.

    As in "pagetwentytwo" and "thirteen's".
    """
    if word in numbers:
        return "", word
    bare = word.removesuffix("'s")
    if len(bare) >= _LONG_ENOUGH and bare in numbers:
        return "", bare
    for head in heads if word.startswith(heads) else ():
        if word.startswith(head) and word[len(head) :] in numbers:
            return head, word[len(head) :]
    return "", ""


def _signs_of(
    signs: dict[str, Sign],
    numbers: Collection[str],
    ordinals: Collection[str],
    heads: tuple[str, ...],
) -> Met[Sign | None]:
    """The same for any word, with what it is as a number."""

    def find(word: str) -> Sign | None:
        bare = parted_number(word, numbers, heads)[1]
        counts = NUMBER | COUNTING if bare else COUNTING if word in ordinals else 0
        if not counts:
            return signs.get(word)
        alone, first, second = signs.get(word, (0, 0, 0))
        return alone | counts, first, second

    return Met(find)


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


@lru_cache(maxsize=_MIXTURES)
def lexicon_of(codes: tuple[str, ...]) -> Lexicon:
    """The words of these languages, the comment's own first."""
    languages = [LANGUAGES[code] for code in codes if code in LANGUAGES]
    numbers, ordinals = _counting_words(languages)
    plain_words = _singles(
        languages,
        "fillers",
        "neutral_before",
        "neutral_after",
        "choice_before",
        "choice_after",
        "page",
        "number",
    )
    heads = heads_of(languages[:1])
    return Lexicon(
        codes=codes,
        heads=heads,
        numbers=numbers,
        ordinals=ordinals,
        plural_s=bool(languages) and languages[0].plural_s,
        ordinal_endings=frozenset(end for one in languages for end in one.ordinal_endings),
        homophones={
            word: n
            for one, silent in _said_in(languages)
            for word, n in one.homophones.items()
            if (word,) not in silent
        },
        glue_before=_singles(languages, "page", "number", "voting"),
        glue_after=_singles(languages, "choice_after"),
        glue_pages=_singles(languages, "page"),
        doubting=_beginnings(languages, "not_after", "reported_after", "if_words", "either"),
        plain_words=plain_words,
        rewords=any(one.dotted or one.parted for one in languages),
        signs=_signs_of(_signs(languages, plain_words), numbers, ordinals, heads),
        _before=_beside(languages, BEFORE, -1),
        _after=_beside(languages, AFTER, 1),
        _groups={name: Phrases(_phrases_of(languages, name)) for name in _WORD_GROUPS},
        _spelled=[],
    )
