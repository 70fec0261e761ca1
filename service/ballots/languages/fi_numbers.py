"""Finnish number words and ordinals, as they are written and as they are spoken."""

from __future__ import annotations

from service.ballots.languages.spelling import joined

_UNITS = "nolla yksi kaksi kolme neljä viisi kuusi seitsemän kahdeksan yhdeksän kymmenen".split()
#: As it is spoken and typed: "kaks", "viis", "seittemän".
_SPOKEN = (
    (), ("yks", "yhen"), ("kaks", "kahen"), ("kol",), ("nelj", "nel"), ("viis",), ("kuus",),
    ("seittemän", "seitemän", "seitsen", "seittämän"), ("kaheksan", "kaheksa", "kahdeks"),
    ("yheksän", "yheksä"), ("kymppi", "kymmene"),
)  # fmt: skip
_TEN_ENDINGS = ("kymmentä", "kyt", "kymment", "kyment", "kymmenta", "kytä")
_ORDINALS = (
    "nollas ensimmäinen toinen kolmas neljäs viides kuudes seitsemäs kahdeksas yhdeksäs kymmenes "
    "yhdestoista kahdestoista kolmastoista neljästoista viidestoista kuudestoista "
    "seitsemästoista kahdeksastoista yhdeksästoista kahdeskymmenes"
).split()


def _ones() -> dict[str, int]:
    found = {joined(word): value for value, word in enumerate(_UNITS)}
    for value, words in enumerate(_SPOKEN):
        found |= {joined(word): value for word in words}
    return found


def _below_hundred() -> dict[str, int]:
    ones = {word: value for word, value in _ones().items() if 0 < value < 10}
    spoken_tens = {"nel": 4, "kol": 3, "seit": 7, "seittemän": 7, "yheksän": 9, "kaheksan": 8}
    tens = ones | {joined(word): value for word, value in spoken_tens.items()}
    found = dict(_ones())
    for word, value in ones.items():
        found |= {word + teen: 10 + value for teen in ("toista", "toist", "toistta")}
    for ten, value in tens.items():
        for ending in map(joined, _TEN_ENDINGS) if value > 1 else ():
            found[ten + ending] = 10 * value
            found |= {ten + ending + one: 10 * value + small for one, small in ones.items()}
    return found


def numbers() -> dict[str, int]:
    """Number words to 199 and round ones, joined as comments are levelled."""
    small = _below_hundred()
    found = dict(small)
    for hundred in ("sata", "yksisataa", "satan"):
        found |= {hundred + word: 100 + value for word, value in small.items() if value}
    return found | {"sata": 100, "kaksisataa": 200, "kolmesataa": 300, "viisisataa": 500}


def ordinals() -> dict[str, int]:
    """Ordinals to the 99th."""
    found = {joined(word): value for value, word in enumerate(_ORDINALS) if value}
    for tens in range(2, 10):
        ten = joined("kahdes" if tens == 2 else _ORDINALS[tens]) + "kymmenes"
        found[ten] = 10 * tens
        found |= {ten + joined(_ORDINALS[one]): 10 * tens + one for one in range(1, 10)}
    return found
