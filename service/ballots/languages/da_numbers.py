"""Danish number words and ordinals, in the spellings that people use."""

from __future__ import annotations

from service.ballots.languages.spelling import joined

_UNITS = (
    "nul en to tre fire fem seks syv otte ni ti elleve tolv tretten fjorten femten seksten sytten "
    "atten nitten"
).split()
#: The tens as they are said, in full, and as they are often misspelled.
_TENS = (
    ("tyve",), ("tredive", "tredve"), ("fyrre", "fyrretyve", "fyre"),
    ("halvtreds", "halvtredsindstyve", "halvtres"), ("tres", "tresindstyve", "treds"),
    ("halvfjerds", "halvfjerdsindstyve", "halvfjers"), ("firs", "firsindstyve", "firsenstyve"),
    ("halvfems", "halvfemsindstyve", "halvfemds"),
)  # fmt: skip
_ORDINALS = (
    "nulte første anden tredje fjerde femte sjette syvende ottende niende tiende ellevte tolvte "
    "trettende fjortende femtende sekstende syttende attende nittende"
).split()
_TENTHS = (
    "tyvende", "tredivte", "fyrretyvende", "halvtredsindstyvende", "tresindstyvende",
    "halvfjerdsindstyvende", "firsindstyvende", "halvfemsindstyvende",
)  # fmt: skip


def _below_hundred() -> dict[str, int]:
    found = {joined(word): value for value, word in enumerate(_UNITS)} | {"et": 1}
    ones = {word: value for word, value in found.items() if 0 < value < 10}
    for place, tens in enumerate(_TENS):
        for ten in tens:
            found[ten] = 20 + 10 * place
            found |= {one + "og" + ten: 20 + 10 * place + value for one, value in ones.items()}
    return found


def numbers() -> dict[str, int]:
    """Number words to 199 and round ones, joined as comments are levelled."""
    small = _below_hundred()
    found = dict(small)
    for hundred in ("hundrede", "ethundrede"):
        found[hundred] = 100
        for word, value in small.items():
            if value:
                found[hundred + word] = found[hundred + "og" + word] = 100 + value
    return found | {"tohundrede": 200, "trehundrede": 300, "femhundrede": 500}


def ordinals() -> dict[str, int]:
    """Ordinals to the 99th."""
    found = {joined(word): value for value, word in enumerate(_ORDINALS) if value}
    ones = {joined(word): value for value, word in enumerate(_UNITS) if 0 < value < 10}
    for place, tenth in enumerate(_TENTHS):
        found[tenth] = 20 + 10 * place
        found |= {one + "og" + tenth: 20 + 10 * place + value for one, value in ones.items()}
    return found
