"""Norwegian number words and ordinals, in the spellings that people use."""

from __future__ import annotations

from service.ballots.languages.spelling import joined

_UNITS = (
    "null en to tre fire fem seks sju åtte ni ti elleve tolv tretten fjorten femten seksten sytten "
    "atten nitten"
).split()
_ONES = {"en": 1, "ett": 1, "ein": 1, "syv": 7}
_TENS = (
    ("tjue", "tyve"), ("tretti", "tredve"), ("førti", "førr"), ("femti",), ("seksti",),
    ("sytti",), ("åtti",), ("nitti",),
)  # fmt: skip
_ORDINALS = (
    "nullte første andre tredje fjerde femte sjette sjuende åttende niende tiende ellevte tolvte "
    "trettende fjortende femtende sekstende syttende attende nittende"
).split()
_TENTHS = "tjuende trettiende førtiende femtiende sekstiende syttiende åttiende nittiende".split()


def _below_hundred() -> dict[str, int]:
    found = {joined(word): value for value, word in enumerate(_UNITS)} | _ONES
    ones = {word: value for word, value in found.items() if 0 < value < 10}
    for place, tens in enumerate(_TENS):
        for ten in map(joined, tens):
            found[ten] = 20 + 10 * place
            for one, value in ones.items():
                # "førtito" as it is taught, "toogførti" as many still say it.
                found[ten + one] = found[one + "og" + ten] = 20 + 10 * place + value
    return found


def numbers() -> dict[str, int]:
    """Number words to 199 and round ones, joined as comments are levelled."""
    small = _below_hundred()
    found = dict(small)
    for hundred in ("hundre", "etthundre", "enhundre"):
        found[hundred] = 100
        for word, value in small.items():
            if value:
                found[hundred + word] = found[hundred + "og" + word] = 100 + value
    return found | {"tohundre": 200, "trehundre": 300, "femhundre": 500}


def ordinals() -> dict[str, int]:
    """Ordinals to the 99th, but for the 8th and the 18th: levelled they are one word."""
    words = {joined(word): value for value, word in enumerate(_ORDINALS) if value} | {"syvende": 7}
    found = {word: value for word, value in words.items() if value not in {8, 18}}
    for place, tenth in enumerate(_TENTHS):
        ten = joined(_TENS[place][0])
        found[joined(tenth)] = 20 + 10 * place
        for word, value in {**words, "attende": 8}.items():
            if value < 10:
                found[ten + word] = 20 + 10 * place + value
    return found
