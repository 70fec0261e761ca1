"""Czech number words: the tens first or the ones first, and ordinals in their cases."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import joined

_ONES = (
    (), ("jeden", "jedna", "jedno", "jedn", "jede"), ("dva", "dvě", "dvou"), ("tři",), ("čtyři", "čtyry"),
    ("pět",), ("šest",), ("sedm", "sedum"), ("osm", "osum"), ("devět",),
)  # fmt: skip
_INVERTED = ("", "jedna", "dva", "tři", "čtyři", "pěta", "šesta", "sedma", "osma", "devěta")
_TENS = "dvacet třicet čtyřicet padesát šedesát sedmdesát osmdesát devadesát".split()
_TEN_NOUNS = "dvacitka tricitka ctyricitka padesatka sedesatka sedmdesatka osmdesatka devadesatka"
_ORDINALS = (
    "nult prvn druh třet čtvrt pát šest sedm osm devát desát jedenáct dvanáct třináct čtrnáct "
    "patnáct šestnáct sedmnáct osmnáct devatenáct"
).split()
_TENTHS = "dvacát třicát čtyřicát padesát šedesát sedmdesát osmdesát devadesát".split()
_ENDINGS = ("á", "ou", "é", "ý", "ého", "ém")


def _below_hundred() -> dict[str, int]:
    found = {joined(num2words(value, lang="cs")): value for value in range(20)}
    found |= {joined(word): value for value, words in enumerate(_ONES) for word in words[:3]}
    teens = (
        "desitka jedenactka dvanactka trinactka ctrnactka patnactka sestnactka sedmnactka osmnactka "
        "devatenactka"
    )
    ones = "jednicka dvojka trojka ctyrka petka sestka sedmicka osmicka devitka"
    nouns = {word: value for value, word in enumerate(f"{ones} {teens}".split(), start=1)}
    for place, ten in enumerate(_TEN_NOUNS.split()):
        nouns[ten] = 20 + 10 * place
        for one in range(1, 10):
            for unit in {*_ONES[one], _INVERTED[one]}:
                nouns[joined(unit) + ten] = nouns[joined(unit) + "a" + ten] = nouns[ten] + one
    # "Sedmička" is what a Czech calls the seven; in "beru sedmičku" it stands in its case.
    found |= {word[:-1] + end: n for word, n in nouns.items() for end in ("a", "y", "u", "e", "ou")}
    for place, ten in enumerate(_TENS):
        value = 20 + 10 * place
        found[joined(ten)] = value
        for one in range(1, 10):
            for word in _ONES[one]:
                found[joined(ten + word)] = value + one
            # "dvaačtyřicet", and without the "a" in "jedenadvacet", "pětadvacet".
            for word in {
                *(unit + "a" for unit in _ONES[one]),
                _INVERTED[one],
                _INVERTED[one] + "a",
            }:
                found[joined(word + ten)] = value + one
    return found


def numbers() -> dict[str, int]:
    """Number words to 199 and round ones, joined as comments are levelled."""
    small = _below_hundred()
    found = dict(small) | {"sto": 100, "dveste": 200, "trista": 300, "petset": 500}
    for hundred in ("sto", "jednosto"):
        found |= {hundred + word: 100 + value for word, value in small.items() if value}
    return found


def _forms(stem: str) -> set[str]:
    if stem in {"prvn", "třet"}:
        return {joined(stem + ending) for ending in ("í", "ího", "ím")}
    return {joined(stem + ending) for ending in _ENDINGS}


def ordinals() -> dict[str, int]:
    """Ordinals to the 99th."""
    ones = {word: value for value, stem in enumerate(_ORDINALS) for word in _forms(stem) if value}
    found = dict(ones)
    for place, stem in enumerate(_TENTHS):
        value = 20 + 10 * place
        for ten in _forms(stem):
            found[ten] = value
            found |= {ten + one: value + small for one, small in ones.items() if small < 10}
            found |= {joined(_INVERTED[one]) + ten: value + one for one in range(1, 10)} | {
                joined(_INVERTED[one]) + "a" + ten: value + one for one in range(1, 10)
            }
    return found
