"""The names that count in a game, with the spellings under which a name may also be meant."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from itertools import chain
from typing import Literal

from num2words import num2words

from service.mystery.answer import Answer
from service.mystery.names import fold, forms_of
from service.mystery.talk import ANDS, FOREIGN_ARTICLES

NameOf = Literal["title", "designer"]

#: Languages whose number words are known beside the figures.
_NUMBER_LANGUAGES = ("en", "de", "fr", "es", "it", "pt", "nl", "sv", "da", "no", "pl")
_HIGHEST_NUMBER_WORD = 100
_TWO_LETTERS = {"ä": "ae", "ö": "oe", "ü": "ue", "ø": "oe", "å": "aa"}
_FIGURE = re.compile(r"\d+(?:st|nd|rd|th)?")
#: Cyrillic and Greek letters as they are usually written in Latin ones.
_ROMAN_LETTERS = str.maketrans({
    "а": "a", "б": "b", "в": "v", "г": "g", "д": "d", "е": "e", "ё": "e", "ж": "zh", "з": "z", "и": "i",
    "й": "y", "к": "k", "л": "l", "м": "m", "н": "n", "о": "o", "п": "p", "р": "r", "с": "s", "т": "t",
    "у": "u", "ф": "f", "х": "kh", "ц": "ts", "ч": "ch", "ш": "sh", "щ": "shch", "ъ": "", "ы": "y",
    "ь": "", "э": "e", "ю": "yu", "я": "ya", "і": "i", "ї": "yi", "є": "ye", "ґ": "g",
    "α": "a", "β": "v", "γ": "g", "δ": "d", "ε": "e", "ζ": "z", "η": "i", "θ": "th", "ι": "i", "κ": "k",
    "λ": "l", "μ": "m", "ν": "n", "ξ": "x", "ο": "o", "π": "p", "ρ": "r", "σ": "s", "ς": "s", "τ": "t",
    "υ": "y", "φ": "f", "χ": "ch", "ψ": "ps", "ω": "o", "ά": "a", "έ": "e", "ή": "i", "ί": "i", "ό": "o",
    "ύ": "y", "ώ": "o",
})  # fmt: skip
_ELISION = re.compile(r"^[ldLD]['’](?=\w)")


@dataclass(frozen=True, slots=True)
class Name:
    """A name to look for: its words as compared, and their letters in one run.

    `exact` is False for another spelling that may mean it (ue for ü, a figure for a number
    word): found in a comment, it is for the host to decide. `text` is the name as sealed.
    """

    words: tuple[str, ...]
    joined: str
    exact: bool
    of: NameOf
    text: str


@cache
def _number_words(number: int) -> frozenset[str]:
    """The number in words of the known languages, cardinal and English ordinal."""
    words = {fold(num2words(number, lang=language)) for language in _NUMBER_LANGUAGES}
    words.add(fold(num2words(number, to="ordinal")))
    return frozenset(words)


@cache
def _numbers_by_word() -> dict[str, str]:
    """Number words of the known languages to figures, 2 and up (one is an article in many)."""
    return {
        word: str(number)
        for number in range(_HIGHEST_NUMBER_WORD, 1, -1)
        for word in _number_words(number)
    }


def is_number(word: str) -> bool:
    """Whether a word is a figure or a number word, cardinal or ordinal."""
    return bool(_FIGURE.fullmatch(word)) or word == "first" or word in _numbers_by_word()


def _roman(number: int) -> str:
    tens, ones = divmod(number, 10)
    digits = ("", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix")
    return "x" * tens + digits[ones]


def _instead_of(word: str) -> frozenset[str]:
    """Other spellings of one word of a name: numbers, "and"."""
    if word.isdecimal() and len(word) < 5:
        number = int(word)
        return _number_words(number) | ({_roman(number)} if 0 < number < 40 else set())
    if word in _numbers_by_word():
        figure = _numbers_by_word()[word]
        return frozenset((figure, fold(num2words(int(figure), to="ordinal_num"))))
    if word == "and":
        return ANDS | {""}
    return frozenset(("and",)) if word in ANDS and len(word) > 1 else frozenset()


def _without_article(words: tuple[str, ...], text: str) -> str:
    """The letters without another language's leading article, "" where there is none."""
    elided = _ELISION.sub("", text)
    if elided != text:
        return "".join(forms_of(elided))
    return "".join(words[1:]) if len(words) > 1 and words[0] in FOREIGN_ARTICLES else ""


def _other_spellings(words: tuple[str, ...], text: str) -> frozenset[str]:
    """Letters under which the name may also be meant."""
    others = {_without_article(words, text)}
    for at, word in enumerate(words):
        for instead in _instead_of(word):
            others.add("".join((*words[:at], instead, *words[at + 1 :])))
        pair = "".join(words[at : at + 2])
        if len(words) > at + 1 and pair in _numbers_by_word():
            others.add("".join((*words[:at], _numbers_by_word()[pair], *words[at + 2 :])))
    lowered = text.casefold()
    for letter, letters in _TWO_LETTERS.items():
        lowered = lowered.replace(letter, letters)
    others.add("".join(forms_of(lowered)))
    others.add("".join(forms_of(text.casefold().translate(_ROMAN_LETTERS))))
    joined = "".join(words)
    for letters in ("ae", "oe", "ue"):
        others.add(joined.replace(letters, letters[0]))
    return frozenset(other for other in others if len(other) > 2) - {joined}


def _named(text: str, of: NameOf) -> tuple[Name, ...]:
    words = forms_of(text)
    joined = "".join(words)
    others = sorted(_other_spellings(words, text)) if of == "title" else []
    return (
        Name(words, joined, exact=True, of=of, text=text),
        # With its article, for a name run together ("#thenightferry").
        Name(("the", *words), "the" + joined, exact=True, of=of, text=text),
        *(Name((other,), other, exact=False, of=of, text=text) for other in others),
    )


@cache
def titles_of(answer: Answer) -> tuple[Name, ...]:
    """The title and its aliases, each with its other spellings."""
    return tuple(chain.from_iterable(_named(t, "title") for t in (answer.title, *answer.aliases)))


@cache
def designers_of(answer: Answer) -> tuple[Name, ...]:
    """The designer's whole name; empty where none is known."""
    return _named(answer.designer, "designer") if fold(answer.designer) else ()
