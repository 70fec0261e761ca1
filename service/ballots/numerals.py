"""Roman numerals: how they are written and what they are worth."""

from __future__ import annotations

_VALUES = {"i": 1, "v": 5, "x": 10, "l": 50, "c": 100}
#: Every roman numeral to 399 in small letters. `i` alone is never a number.
ROMANS = frozenset(
    hundreds + tens + ones
    for hundreds in ("", "c", "cc", "ccc")
    for tens in ("", "x", "xx", "xxx", "xl", "l", "lx", "lxx", "lxxx", "xc")
    for ones in ("", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix")
) - {"", "i"}

#: In small letters a numeral of so many letters is no word.
LOWER = 3


def roman_value(text: str) -> int:
    """What a roman numeral of ROMANS is worth."""
    total = 0
    for letter, following in zip(text, [*text[1:], "i"], strict=True):
        value = _VALUES[letter]
        total += -value if value < _VALUES[following] else value
    return total
