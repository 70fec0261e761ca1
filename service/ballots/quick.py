"""The plainest comments, read without the whole way: nothing but a number among harmless words.

Most votes of most rounds are "42", "page 42 please" or "I vote for 42!". Whatever is told here
reads the same on the long way; a comment that holds anything else is left to it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from service.ballots.language import Phrase
from service.ballots.languages import LANGUAGES
from service.ballots.matching import AFTER
from service.ballots.reading import Evidence, Question, Reading

#: Any of these may change what a number means.
_TELLING_MARK = re.compile(
    r"[^\w\s.!,'’\u2600-\u27bf\U0001f300-\U0001f51e\U0001f520-\U0001faff\ufe0f#]"
)
_EDGES = ".!,'’"
_LONGEST = 80
_MOST_WORDS = 9
_LONGEST_COUNTED = 4

#: Groups of words that can stand before and after a choice without changing it.
_BEFORE = ("fillers", "neutral_before", "choice_before", "page")
_AFTER = ("neutral_after", "choice_after")
#: Words of choice so common that a telling phrase made of them alone has another sign as well.
_KEPT = frozenset(
    "i vote for page number please the my go with pick thanks i'd like would love is".split()
)
#: Groups that tell something only together with a number's neighbours that are none here, or
#: only in a question.
_PLAIN_GROUPS = frozenset(
    {
        *_BEFORE,
        *_AFTER,
        "number",
        "everyday",
        "topics",
        "question_before",
        "asking",
        "suggesting",
        "goes_on",
        "own_voice",
        "being",
        "also",
        "either",
        # These need a second number, a question, a 2 or a place.
        "again",
        "answered",
        "wondering",
        "winning",
        "torn",
        "any_of",
        "sounded_before",
        "sounded_too",
        "today",
        "sounded_after",
        "times",
        "plus",
        "minus",
        "part_of",
        "replacing",
        "replaced_by",
        "concluding",
        "others_choose",
        "crowds",
        "equally",
        "preferred_after",
    }
)
#: Begin a question even where the question mark is missing.
_ASKING = frozenset({"has", "is", "hasn't", "isn't", "anyone", "why"})


@dataclass(frozen=True, slots=True)
class Harmless:
    """English words none of which makes up a phrase that would tell something of a number."""

    words: frozenset[str]
    #: Those that may stand right before and right after the number.
    before: frozenset[str]
    after: frozenset[str]
    #: Page words: they cue the number right behind them, and nothing else here.
    cues: frozenset[str]
    #: What is counted by "2." in a language that writes ordinals so: "2. ladies".
    counted: frozenset[Phrase]


def _singles(*groups: str) -> set[str]:
    english = LANGUAGES["en"]
    return {phrase[0] for group in groups for phrase in getattr(english, group) if len(phrase) == 1}


@cache
def harmless() -> Harmless:
    """The harmless words of English, gathered once."""
    english = LANGUAGES["en"]
    words = _singles(*_BEFORE, *_AFTER) - english.numbers.keys() - _ASKING
    telling = [
        phrase
        for group in english.phrase_groups()
        if group not in _PLAIN_GROUPS
        for phrase in getattr(english, group)
    ]
    for phrase in telling:
        said = {word for word in phrase if word != "*" and not word.isdigit()}
        if len(phrase) > 1 and said and said <= words:
            loose = said - _KEPT or said
            words.discard(max(loose, key=lambda word: (len(word), word)))
    # What follows a number tells something only right behind it.
    words -= _singles(*(g for g in english.phrase_groups() if g not in _PLAIN_GROUPS | set(AFTER)))
    own = _singles("everyday")
    for language in LANGUAGES.values():
        # A word of another language may make the comment one of it.
        foreign = {phrase[0] for phrase in language.everyday if len(phrase) == 1} - own
        words -= language.numbers.keys() | foreign
    return Harmless(
        frozenset(words),
        frozenset(words & _singles(*_BEFORE)),
        frozenset(
            (words & _singles(*_AFTER))
            - _singles("sounded_after", "today", *(g for g in AFTER if g not in _AFTER))
        ),
        frozenset(words & _singles("page")),
        frozenset(
            phrase
            for language in LANGUAGES.values()
            for phrase in language.dotted + language.other_after
            if words.issuperset(phrase)
        ),
    )


def read_quickly(text: str, question: Question) -> Reading | None:
    """The reading of a comment that is nothing but one number among harmless words, else None."""
    if len(text) > _LONGEST:
        return None
    words = text.lower().replace("’", "'").split()
    if len(words) > _MOST_WORDS:
        return None
    digits = _only_number(words)
    # 1 and 2 are left to the long way: a rank, or the words "one" and "too", as often as a page.
    if not digits or not 3 <= int(digits[:6]) <= question.chart.page_count:
        return None
    if _TELLING_MARK.search(text):
        return None
    page = int(digits)
    start = text.index(digits)
    why = "stands among words that say nothing else"
    evidence = Evidence(start, start + len(digits), digits, page, why)
    return Reading("counts", (page,), None, f"chosen: {why}", (evidence,))


def _only_number(words: list[str]) -> str:
    """The digits of the one number among harmless words; "" where anything else stands."""
    known = harmless()
    digits = last = ""
    cued = False
    for at, word in enumerate(words):
        bare = word.strip(_EDGES)
        behind = bool(digits) and last == digits and word[0] not in _EDGES
        if behind and bare.isascii() and bare not in known.after:
            return ""
        if cued and not bare.lstrip("#").isdigit():
            return ""
        cued = bare in known.cues
        if bare.isdigit() or bare[:1] == "#":
            bare = bare.removeprefix("#")
            beside = last in known.before or not last
            if digits or not beside or not (bare.isascii() and bare.isdigit()):
                return ""
            digits = bare
            if word[-1] == "." and _counts(words[at + 1 : at + 1 + _LONGEST_COUNTED]):
                return ""
        elif bare not in known.words and not _is_emoji(bare):
            return ""
        last = bare if word[-1] not in _EDGES else ""
    return digits


def _counts(behind: list[str]) -> bool:
    """Whether the words behind a number and its full stop begin with what an ordinal counts."""
    bare = [word.strip(_EDGES) for word in behind]
    return any(tuple(bare[:size]) in harmless().counted for size in range(1, len(bare) + 1))


def _is_emoji(word: str) -> bool:
    return not word.isascii() and not any(character.isalnum() for character in word)
