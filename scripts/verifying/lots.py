"""The draw of a record, repeated: RFC 3797 (June 2004), section 4."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from verifying.form import moment
from verifying.trouble import Trouble

#: Digits and point of the longest number that a source may have.
LONGEST = 201


def key_string(sources: list[list[str]]) -> str:
    """The numbers of each source ascending, each ended by a point, each source by a slash."""
    key = ""
    for numbers in sources:
        for number in sorted(numbers, key=Fraction):
            key += number if "." in number else f"{number}."
        key += "/"
    return key


def order_of(key: str, pool: list[int]) -> list[int]:
    """The pool in the order in which the key draws it."""
    left, drawn = sorted(pool), []
    for turn in range(len(pool)):
        counter = turn.to_bytes(2, "big")
        lot = hashlib.new("md5", counter + key.encode("ascii") + counter, usedforsecurity=False)
        drawn.append(left.pop(int.from_bytes(lot.digest(), "big") % len(left)))
    return drawn


def lots_of(record: dict[str, Any], ballots_digest: str) -> list[list[str]] | None:
    """The numbers that the draw goes by; None while it waits for some."""
    draw, closes = record["draw"], record["rules"]["closes"]
    if draw is None or closes is None:
        return None
    used = []
    for source in draw["sources"]:
        if moment(source["expected"]) < moment(closes):
            # Its numbers were known while there was still voting.
            continue
        if source["numbers"] is None:
            return None
        if source["numbers"]:
            used.append(source["numbers"])
    if used:
        return used
    if draw["value"] is None:
        return None
    return [[str(int(draw["value"], 16))], [str(int(ballots_digest, 16))]]


def troubles_of_draw(draw: dict[str, Any]) -> Iterator[Trouble]:
    """What in the sources or in the round's own value cannot be as it was announced."""
    value = draw["value"]
    if value is not None and hashlib.sha256(bytes.fromhex(value)).hexdigest() != draw["commitment"]:
        why = "its SHA-256 is not the commitment that was announced at the opening."
        yield Trouble("draw.value", why)
    for place, source in enumerate(draw["sources"]):
        path = f"draw.sources[{place}]"
        for number in source["numbers"] or ():
            if not _is_plain(number):
                why = f"{number!r} is no number without needless zeros."
                yield Trouble(f"{path}.numbers", why)
        if source["left_out"] is not None and source["if_late"] != "left out":
            why = "it was left out, but its next numbers were to be waited for."
            yield Trouble(f"{path}.left_out", why)
        if source["numbers"] == [] and source["left_out"] is None:
            yield Trouble(f"{path}.left_out", "it has no numbers, and no reason says why.")


def _is_plain(number: str) -> bool:
    if len(number) > LONGEST:
        return False
    whole, point, part = number.partition(".")
    if not all(sign in "0123456789" for sign in whole + part) or not whole:
        return False
    return (whole == "0" or whole[0] != "0") and (not point or bool(part and part[-1] != "0"))
