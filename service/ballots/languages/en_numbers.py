"""English number words, with the misspellings people write."""

from __future__ import annotations

_UNITS = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen"
).split()
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
_ORDINAL_UNITS = (
    "zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth "
    "thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth"
).split()


def _held_too_long(words: dict[str, int]) -> dict[str, int]:
    """With the last letter twice, as of a key that was held: "sixx", "thirtyy"."""
    return {word + word[-1]: value for word, value in words.items()}


_UNITS_RIGHT = {word: value for value, word in enumerate(_UNITS)}
_TENS_RIGHT = {word: 20 + 10 * place for place, word in enumerate(_TENS)}
_SLIPS = _held_too_long(_UNITS_RIGHT) | {
    "thirten": 13, "thriteen": 13, "forteen": 14, "fourten": 14, "fiveteen": 15, "fiften": 15,
    "sixten": 16, "seventen": 17, "sevteen": 17, "eightteen": 18, "eighten": 18, "ninteen": 19,
    "nineten": 19, "ninetten": 19, "elevan": 11, "elevin": 11, "twelv": 12, "twelf": 12,
    "eigth": 8, "eigt": 8, "sevn": 7, "thre": 3, "foure": 4, "nien": 9,
}  # fmt: skip
_TENS_SLIPS = _held_too_long(_TENS_RIGHT) | {
    "twety": 20, "twenny": 20, "twentie": 20, "tweny": 20, "thirdy": 30, "thrity": 30,
    "therty": 30, "thirtie": 30, "fourty": 40, "fourthy": 40, "forthy": 40, "fivety": 50,
    "fity": 50, "fivty": 50, "fiftie": 50, "sixy": 60, "sixtie": 60, "sevnty": 70, "sevety": 70,
    "seventie": 70, "eigthy": 80, "eightty": 80, "eighy": 80, "ninty": 90, "nintey": 90,
    "ninetie": 90,
}  # fmt: skip


def _below_hundred() -> dict[str, int]:
    words = _UNITS_RIGHT | _SLIPS
    tens = _TENS_RIGHT | _TENS_SLIPS
    ones = {word: value for word, value in words.items() if 0 < value < 10}
    pairs = {ten + one: tens[ten] + ones[one] for ten in tens for one in ones}
    return words | tens | pairs


def numbers() -> dict[str, int]:
    """Number words to 999, joined as people write them, with and without "and".

    In those above 100 at most one part is misspelled; a second slip in one number is rare, and
    every pair of slips would be a word of its own.
    """
    small = _below_hundred()
    found = dict(small) | {
        "hundred": 100,
        "ahundred": 100,
        "nought": 0,
        "dozen": 12,
        "adozen": 12,
        "halfadozen": 6,
        "bakersdozen": 13,
        "abakersdozen": 13,
        "halfdozen": 6,
    }
    said = {word: value for word, value in small.items() if value and word not in _SLIPS}
    right = {word: said[word] for word in said if not word.startswith(tuple(_TENS_SLIPS))}
    right = {word: right[word] for word in right if not word.endswith(tuple(_SLIPS))}
    thousands = {word + "thousand": value * 1000 for word, value in right.items()}
    found |= thousands | {"thousand": 1000, "athousand": 1000}
    once = {"onehundred": 100, "ahundred": 100, "hundred": 100}
    more = {_UNITS[times] + "hundred": 100 * times for times in range(2, 10)}
    slipped = {
        word[: -len("hundred")] + slip: value
        for word, value in (once | more).items()
        for slip in ("hundered", "hunderd", "hundrad", "hundrid", "hunded")
    }
    found |= _with_rest(once, said) | _with_rest(more | slipped, right)
    # "one fifty-four" is said for 154; a bare "one four" is not one number.
    for rest, value in said.items():
        if value >= 10:
            found["one" + rest] = 100 + value
    return found


def _with_rest(hundreds: dict[str, int], small: dict[str, int]) -> dict[str, int]:
    """Hundreds alone and with every rest behind them."""
    found = dict(hundreds)
    for word, hundred in hundreds.items():
        for rest, value in small.items():
            found[word + rest] = found[word + "and" + rest] = hundred + value
            found[word + "an" + rest] = hundred + value
    return found


def ordinals() -> dict[str, int]:
    """Ordinals in words to 200th, with the misspellings people write."""
    units = {word: value for value, word in enumerate(_ORDINAL_UNITS) if value}
    units |= {"twelth": 12, "fith": 5, "nineth": 9, "eigth": 8, "fourtieth": 40}
    tens = {word[:-1] + "ieth": 20 + 10 * place for place, word in enumerate(_TENS)}
    found = units | tens
    for place, ten in enumerate(_TENS):
        for word, value in units.items():
            if value < 10:
                found[ten + word] = 20 + 10 * place + value
    hundred = {"hundredth": 100, "onehundredth": 100, "twohundredth": 200}
    for word, value in list(found.items()):
        hundred["hundred" + word] = hundred["onehundred" + word] = 100 + value
        hundred["hundredand" + word] = hundred["onehundredand" + word] = 100 + value
    return found | hundred
