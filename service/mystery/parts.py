"""Whether an offered phrase holds part of a title, or renders it in other words (rule 4)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from rapidfuzz.distance import OSA

from service.mystery.answer import Answer
from service.mystery.concepts import is_common, is_made_of_common, is_thing
from service.mystery.everyday import stems_of
from service.mystery.likeness import akin, alike, same_stem, spelt_alike
from service.mystery.names import ARTICLES, forms_of, words_of
from service.mystery.talk import FOREIGN_SMALL_WORDS, FOREIGN_TALK, GREETINGS, SMALL_WORDS
from service.mystery.wordlist import WORDS

#: What a viewer writes for the part of a title that they forgot.
_SOMETHING = frozenset(
    "somebody somebodys someone someones something summat thingy whatsit whatnot something-or-other blank".split()
)


@dataclass(frozen=True, slots=True)
class Title:
    """A title's telling words, and those of them that hardly stand elsewhere.

    `rare` words stand in no list of common words; `made` are two common words written as one.
    """

    words: tuple[str, ...]
    telling: tuple[str, ...]
    initials: frozenset[str]
    rare: frozenset[str]
    made: frozenset[str]


def _initials(text: str) -> frozenset[str]:
    """First letters of all words and of the telling ones, where they are three or more."""
    words = tuple(word.form for word in words_of(text))
    bare = forms_of(text)
    telling = tuple(word for word in bare if word not in SMALL_WORDS)
    initials = ("".join(word[0] for word in some) for some in (words, bare, telling))
    return frozenset(letters for letters in initials if len(letters) > 2)


@cache
def telling_titles(answer: Answer) -> tuple[Title, ...]:
    """The title and its aliases by their telling words."""
    titles = []
    for text in (answer.title, *answer.aliases):
        words = forms_of(text)
        telling = tuple(w for w in words if w not in SMALL_WORDS) or words
        uncommon = {w for w in telling if len(w) > 3 and not w.isdecimal() and not is_common(w)}
        made = {w for w in uncommon if is_made_of_common(w)}
        titles.append(
            Title(words, telling, _initials(text), frozenset(uncommon - made), frozenset(made))
        )
    return tuple(titles)


@cache
def _compound(word: str) -> tuple[str, ...]:
    """The parts of a word made of two of the known things ("Nattfärjan"), else none."""
    if len(word) < 8 or is_common(word):
        return ()
    for cut in range(3, len(word) - 2):
        if is_thing(word[:cut]) and is_thing(word[cut:]):
            return (word[:cut], word[cut:])
    return ()


def _runs(words: Sequence[str]) -> list[tuple[float, str]]:
    """The telling words, two or three neighbours written as one, and compounds taken apart.

    Each comes with its place; the second part of a compound stands half a place further.
    """
    runs: list[tuple[float, str]] = []
    for at, word in enumerate(words):
        if word not in SMALL_WORDS:
            runs.append((at, word))
        runs += [(at + half / 2, part) for half, part in enumerate(_compound(word))]
        runs += [(at, "".join(words[at : at + n])) for n in (2, 3) if at + n <= len(words)]
    return runs


def _places(title: Title, words: Sequence[str]) -> list[tuple[float, tuple[int, ...]]]:
    """Where each run of a phrase stands for a word of the title, or for two written as one."""
    pairs = ["".join(title.telling[at : at + 2]) for at in range(len(title.telling) - 1)]
    found: list[tuple[float, tuple[int, ...]]] = []
    for place, run in _runs(words):
        found += [
            (place, (at, at + 1))
            for at, pair in enumerate(pairs)
            if OSA.distance(pair, run, score_cutoff=1) <= 1
        ]
        found += [(place, (at,)) for at, word in enumerate(title.telling) if akin(word, run)]
    return found


def _in_order(title: Title, words: Sequence[str]) -> tuple[str, ...]:
    """The most telling words of the title that the phrase holds in the title's order."""
    best: list[tuple[int, ...]] = []
    reached: list[tuple[float, tuple[int, ...]]] = []
    for place, at in sorted(_places(title, words)):
        longest: tuple[int, ...] = ()
        for before, chain in reached:
            if before < place and chain[-1] < at[0] and len(chain) > len(longest):
                longest = chain
        reached.append((place, longest + at))
        best.append(longest + at)
    return tuple(title.telling[i] for i in max(best, key=len, default=()))


def _holds_all(title: Title, words: Sequence[str]) -> bool:
    """Whether all telling words stand in the phrase, or most and no other, in whatever order."""
    told = [word for word in words if word not in SMALL_WORDS]
    held = [w for w in title.telling if any(alike(w, own) for own in told)]
    most = len(held) > 1 and 3 * len(held) >= 2 * len(title.telling)
    if most and len(told) <= len(held):
        return True
    return len(title.telling) > 1 and all(
        any(alike(word, own) for own in words) for word in title.telling
    )


def _holds_a_run(title: Title, words: Sequence[str]) -> bool:
    """Whether three or more words running, and at least half, of the title stand in the phrase."""
    length = max(3, (len(title.words) + 1) // 2)
    phrase = " ".join(("", *words, ""))
    return any(
        " ".join(("", *title.words[at : at + length], "")) in phrase
        for at in range(len(title.words) - length + 1)
    )


def _is_one_word_again(word: str, words: Sequence[str]) -> bool:
    """Whether a title of one word stands in the phrase: another form, or a translation."""
    if "".join(reversed([own for own in words if own not in ARTICLES])) == word:
        return True
    return any(akin(word, own) and (own not in WORDS or same_stem(word, own)) for own in words)


def part_of_title(answer: Answer, words: Sequence[str]) -> str:
    """Why a phrase of these words may mean the title, "" where it does not."""
    half_known = not _SOMETHING.isdisjoint(words)
    for title in telling_titles(answer):
        matched = _in_order(title, words)
        greets = all(word in GREETINGS for word in matched)  # "good morning everyone"
        if len(matched) >= 2 and 2 * len(matched) >= len(title.telling) and not greets:
            return "most telling words of the title"
        if _holds_all(title, words):
            return "telling words of the title, in another order"
        if _holds_a_run(title, words):
            return "the greater part of the title"
        if half_known and matched:
            return "a word of the title and a gap"
        if len(title.telling) == 1 and _is_one_word_again(title.telling[0], words):
            return "another form of the title's word"
        own = [word for word in words if word not in SMALL_WORDS]
        told = {word for word in matched for _, run in _runs(words) if alike(word, run)}
        if told & title.rare or (told & title.made and len(own) == 1):
            return "an uncommon word of the title"
    return ""


def is_in_another_tongue(answer: Answer, words: Sequence[str]) -> bool:
    """Whether a bare name is of a language that no name of the answer is in, and may render it.

    A name whose words are all known, and none of them of the title's things, does not.
    """
    titles = telling_titles(answer)
    foreign = not FOREIGN_SMALL_WORDS.isdisjoint(words) and FOREIGN_TALK.isdisjoint(words)
    if not foreign or any(not FOREIGN_SMALL_WORDS.isdisjoint(title.words) for title in titles):
        return False
    own = [word for word in words if word not in SMALL_WORDS]
    things = {thing for title in titles for thing in title.telling}
    unknown = any(not is_common(word) for word in own)
    return unknown or any(akin(thing, word) for thing in things for word in own)


@dataclass(frozen=True, slots=True)
class RareWords:
    """The rare words of a title and its aliases, and the telling words of titles with such."""

    words: frozenset[str]
    with_uncommon: tuple[tuple[str, ...], ...]

    def has(self, form: str) -> bool:
        """Whether `form` is one of them, but for a slip or an ending."""
        return any(spelt_alike(word, form) or word in stems_of(form) for word in self.words)

    def all_in(self, forms: Sequence[str]) -> bool:
        """Whether all telling words of a title stand in a clause, an uncommon one among them."""
        return any(
            all(any(alike(word, form) for form in forms) for word in telling)
            for telling in self.with_uncommon
        )


@cache
def rare_words(answer: Answer) -> RareWords:
    """The words of the title and its aliases that stand in no list of common words."""
    titles = telling_titles(answer)
    uncommon = tuple(t.telling for t in titles if len(t.telling) > 1 and t.made | t.rare)
    return RareWords(frozenset(word for t in titles for word in t.rare), uncommon)
