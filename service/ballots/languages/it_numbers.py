"""Italian number words: with the vowels that fall away or without, behind an article, slips."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import dozens, joined, with_slips

_SLIPS = (
    ("quaranta", "quarranta"), ("cinquanta", "cincuanta"), ("cinquanta", "cinquata"),
    ("sessanta", "sesanta"), ("settanta", "setanta"), ("ottanta", "otanta"), ("quattro", "quatro"),
    ("quattordici", "quatordici"), ("sedici", "seidici"), ("diciassette", "diciasette"),
    ("diciassette", "dicisette"), ("diciannove", "dicianove"), ("diciannove", "diciannnove"),
    ("diciotto", "dicciotto"), ("diciotto", "dicotto"), ("cinque", "cinqe"), ("venti", "vinti"),
    ("quindici", "quindicci"),
)  # fmt: skip
#: The article and the prepositions that lose their vowel before another: "l'otto", "dall'undici".
_CUT_SHORT = ("l", "dell", "all", "dall", "nell", "sull")


def _below_hundred() -> dict[str, int]:
    found = {joined(num2words(value, lang="it")): value for value in range(100)}
    for ten in range(20, 100, 10):
        word = joined(num2words(ten, lang="it"))
        # "Trentuno" and "trentotto" lose a vowel; many write it, or part the word.
        found |= {word + "uno": ten + 1, word + "otto": ten + 8, word[:-1] + "un": ten + 1}
        found[word[:-1] + "una"] = ten + 1
    return found


def numbers() -> dict[str, int]:
    """Number words to 999 by their joined spelling; those behind a cut article also with it."""
    small = _below_hundred()
    found = dict(small)
    for hundreds in range(1, 10):
        times = "" if hundreds == 1 else joined(num2words(hundreds, lang="it"))
        found[times + "cento"] = 100 * hundreds
        found |= dict.fromkeys((times + "centouna", times + "centuna"), 100 * hundreds + 1)
        for word, value in small.items():
            if value:
                found[times + "cento" + word] = 100 * hundreds + value
                found[times + "centoe" + word] = 100 * hundreds + value
            if word.startswith(("u", "o")):
                found[times + "cent" + word] = 100 * hundreds + value
    found = with_slips(found, _SLIPS)
    for word, value in list(found.items()):
        if word.startswith(("u", "o")) and value < 100:
            for article in _CUT_SHORT:
                found |= {f"{article}'{word}": value, article + word: value}
    return found | dozens("dozzina", "una", "mezza")


def ordinals() -> dict[str, int]:
    """Ordinals to 200th by their joined spelling, of either gender."""
    found = {joined(num2words(value, lang="it", to="ordinal")): value for value in range(1, 201)}
    found |= {"centounesimo": 101, "centunesimo": 101}
    for word, value in list(found.items()):
        if value < 100:
            found["cento" + word] = 100 + value
            if word.startswith(("u", "o")):
                found["cent" + word] = 100 + value
    return found | {word[:-1] + "a": value for word, value in found.items()}
