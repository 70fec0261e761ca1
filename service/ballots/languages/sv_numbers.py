"""Swedish number words and ordinals, in the spellings that people use."""

from __future__ import annotations

from service.ballots.languages.spelling import joined, with_slips

_UNITS = (
    "noll ett två tre fyra fem sex sju åtta nio tio elva tolv tretton fjorton femton sexton sjutton "
    "arton nitton"
).split()
_TENS = "tjugo trettio fyrtio femtio sextio sjuttio åttio nittio".split()
_ORDINALS = (
    "nollte första andra tredje fjärde femte sjätte sjunde åttonde nionde tionde elfte tolfte "
    "trettonde fjortonde femtonde sextonde sjuttonde artonde nittonde"
).split()
#: As it is spoken: "tjufem", "fyrti", "aderton".
_SPOKEN = (
    ("tjugo", "tjugi"), ("tjugo", "tju"), ("trettio", "tretti"), ("fyrtio", "fyrti"),
    ("fyrtio", "förtio"), ("femtio", "femti"), ("sextio", "sexti"), ("sjuttio", "sjutti"),
    ("åttio", "åtti"), ("nittio", "nitti"), ("arton", "aderton"),
)  # fmt: skip


def _below_hundred() -> dict[str, int]:
    found = {joined(word): value for value, word in enumerate(_UNITS)}
    for place, ten in enumerate(_TENS):
        found[joined(ten)] = 20 + 10 * place
        for unit in range(1, 10):
            found[joined(ten + _UNITS[unit])] = 20 + 10 * place + unit
        found[joined(ten + "en")] = 21 + 10 * place
    return found


def numbers() -> dict[str, int]:
    """Number words to 199 and round ones, joined as comments are levelled."""
    small = with_slips(_below_hundred(), [(joined(a), joined(b)) for a, b in _SPOKEN])
    found = dict(small)
    for hundred in ("hundra", "etthundra", "ett hundra"):
        found[joined(hundred)] = 100
        found |= {joined(hundred) + word: 100 + value for word, value in small.items() if value}
    return found | {"tvahundra": 200, "trehundra": 300, "femhundra": 500}


def ordinals() -> dict[str, int]:
    """Ordinals to the 99th."""
    found = {joined(word): value for value, word in enumerate(_ORDINALS) if value}
    for place, ten in enumerate(_TENS):
        found[joined(ten + "nde")] = 20 + 10 * place
        for unit in range(1, 10):
            found[joined(ten + _ORDINALS[unit])] = 20 + 10 * place + unit
    return found
