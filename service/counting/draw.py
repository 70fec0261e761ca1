"""A draw that anybody can repeat: the selection of RFC 3797 (June 2004), section 4.

Numbers that nobody could know beforehand make a key string; the key decides the order in which the
numbered pool is drawn. Letters, which the RFC strongly advises against, are not taken.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable, Sequence
from fractions import Fraction

from service.errors import BadDraw

#: More numbers of one source are a slip: the largest lotteries draw a few dozen.
MOST_NUMBERS = 100
_NUMBER = re.compile(r"([0-9]{1,100})(?:[.]([0-9]{1,100}))?")


def plain_number(text: str) -> str:
    """A number as the key string has it, section 4.1: `9319`, `0.5`, `13.6875`.

    Leading zeros, and zeros that end a fraction, are taken off.

    Raises:
        BadDraw: it is no number of ASCII digits with at most one point.
    """
    found = _NUMBER.fullmatch(text.strip())
    if found is None:
        raise BadDraw(
            f"{text!r} is no number of a draw", "write it in digits, with a point before a fraction"
        )
    whole = found[1].lstrip("0") or "0"
    part = (found[2] or "").rstrip("0")
    return f"{whole}.{part}" if part else whole


def key_string(sources: Iterable[Sequence[str]]) -> str:
    """The key of a draw: the numbers of each source ascending, the sources in their named order.

    Each number ends in a point (a fraction has its own), each source in a slash.

    Raises:
        BadDraw: a number that is none, a source without numbers or with too many.
    """
    return "".join(f"{_of_source(numbers)}/" for numbers in sources)


def drawn_order(key: str, size: int) -> tuple[int, ...]:
    """The places 1 to `size` of the pool in the order in which they are drawn, all of them.

    Section 4.2: draw number i is MD5 of the counter i as two big-endian bytes, the key, and the
    same two bytes again, as a big-endian number; its remainder by how many are left, plus one, is
    the place among those that are left. MD5 only spreads the numbers here, it keeps no secret.
    """
    left = list(range(1, size + 1))
    return tuple(left.pop(draw_value(key, turn) % len(left)) for turn in range(size))


def draw_value(key: str, turn: int) -> int:
    """The number of draw `turn`, counted from 0."""
    counter = turn.to_bytes(2, "big")
    lot = hashlib.md5(counter + key.encode("ascii") + counter, usedforsecurity=False)
    return int.from_bytes(lot.digest(), "big")


def _of_source(numbers: Sequence[str]) -> str:
    if not 1 <= len(numbers) <= MOST_NUMBERS:
        raise BadDraw(
            f"a source of the draw has {len(numbers)} numbers", f"give 1 to {MOST_NUMBERS} of them"
        )
    ascending = sorted(map(plain_number, numbers), key=Fraction)
    return "".join(number if "." in number else f"{number}." for number in ascending)
