"""German number words and ordinals, in every spelling that people use."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import dozens
from service.ballots.normal import plain_of

_WRITTEN_OUT = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})
#: What is written for a part of a number word besides the right spelling.
_SLIPS = (
    ("sechzehn", "sechszehn"), ("siebzehn", "siebenzehn"), ("sechzig", "sechszig"),
    ("siebzig", "siebenzig"), ("dreißig", "dreizig"), ("dreißig", "dreisig"), ("zwei", "zwo"),
    ("zwanzig", "zwanzich"), ("vierzehn", "viertzehn"), ("vierzig", "viertzig"),
    ("fünf", "fümf"), ("fünfzig", "fuffzig"),
)  # fmt: skip
_ENDINGS = ("e", "er", "en", "es", "em")


def _spellings(word: str) -> set[str]:
    """A word levelled as comments are, with its umlauts dropped and written out, and slips."""
    words = {word} | {word.replace(right, slip) for right, slip in _SLIPS}
    words |= {one.translate(_WRITTEN_OUT) for one in words}
    return {plain_of(one).text for one in words}


def _hundreds(word: str) -> set[str]:
    """As in "einhundertfünf", also said "hundertfünf" and "hundertundfünf"."""
    words = {word}
    if word.startswith("einhundert"):
        words.add(word[3:])
    return words | {one.replace("hundert", "hundertund", 1) for one in words if "hundert" in one}


def numbers() -> dict[str, int]:
    """Number words to 999, joined as comments are levelled."""
    found = {"fuffzig": 50, "fuffzehn": 15}
    for value in (*range(200), *range(200, 1000, 50), 333, 444, 555, 666, 777, 888, 999):
        for word in _hundreds(num2words(value, lang="de")):
            found |= dict.fromkeys(_spellings(word), value)
    return found | dozens("dutzend", "ein", "halbes", "ein halbes")


def ordinals() -> dict[str, int]:
    """Ordinals to the 200th with their endings."""
    found: dict[str, int] = {}
    for value in range(1, 201):
        words = _hundreds(num2words(value, lang="de", to="ordinal"))
        # num2words writes "hundertste" alone, and the others as "einhundert...".
        words |= {"ein" + word for word in words if word.startswith("hundert")}
        for word in words:
            for ending in _ENDINGS:
                found |= dict.fromkeys(_spellings(word[:-1] + ending), value)
    return found
