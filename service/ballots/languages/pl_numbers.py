"""Polish number words: cardinals, ordinals in their cases, and a number's own noun."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import joined

#: "Siódemka" is what a Pole calls the seven; in "siódemkę poproszę" it stands in its case.
_NOUNS = (
    "zerówk jedynk dwójk trójk czwórk piątk szóstk siódemk ósemk dziewiątk dziesiątk jedenastk "
    "dwunastk trzynastk czternastk piętnastk szesnastk siedemnastk osiemnastk dziewiętnastk"
).split()
_TEN_NOUNS = {
    20: "dwudziestk", 30: "trzydziestk", 40: "czterdziestk", 50: "pięćdziesiątk",
    60: "sześćdziesiątk", 70: "siedemdziesiątk", 80: "osiemdziesiątk", 90: "dziewięćdziesiątk",
}  # fmt: skip
_NOUN_ENDINGS = ("a", "ę", "ą", "i")
_FEMININE = {"jeden": "jedna", "dwa": "dwie"}


def _feminine(ordinal: str, ending: str) -> str:
    """A page is feminine: "czterdziesty drugi" becomes "czterdziesta druga", "-ej" in a case."""
    found = []
    for word in ordinal.split():
        if word.endswith("trzeci"):
            found.append(word + ending)
        elif word.endswith("y"):
            found.append(word[:-1] + ending)
        elif word == "drugi":
            found.append("drug" + ("iej" if ending == "ej" else ending))
        else:
            found.append(word)
    return " ".join(found)


def numbers() -> dict[str, int]:
    """Number words to 200 and round ones, joined as comments are levelled."""
    found: dict[str, int] = {}
    for value in (*range(201), 300, 400, 500, 999):
        word = num2words(value, lang="pl")
        found[joined(word)] = value
        *first, last = word.split()
        if last in _FEMININE:
            found[joined(" ".join([*first, _FEMININE[last]]))] = value
    ones = {stem + end: value for value, stem in enumerate(_NOUNS) for end in _NOUN_ENDINGS}
    tens = {stem + end: value for value, stem in _TEN_NOUNS.items() for end in _NOUN_ENDINGS}
    found |= {joined(word): value for word, value in (ones | tens).items() if value}
    for ten, value in tens.items():
        for one, small in ones.items():
            if 0 < small < 10 and ten[-1] == one[-1]:
                found[joined(ten + one)] = value + small
    return found


def ordinals() -> dict[str, int]:
    """Ordinals to the 199th: as they are given, and as they go with a page."""
    found: dict[str, int] = {}
    for value in range(1, 200):
        word = num2words(value, lang="pl", to="ordinal")
        for form in (word, _feminine(word, "a"), _feminine(word, "ej")):
            found[joined(form)] = value
    return found
