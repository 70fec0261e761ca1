"""JSON in canonical form, RFC 8785 (June 2020), and its SHA-256."""

from __future__ import annotations

import hashlib
import json
import math
import re
from typing import Any

#: Larger whole numbers are not the same everywhere (RFC 8785, section 3.2.2.3; RFC 7493).
LARGEST = 2**53 - 1

_SHORT = {
    '"': '\\"',
    "\\": "\\\\",
    "\b": "\\b",
    "\f": "\\f",
    "\n": "\\n",
    "\r": "\\r",
    "\t": "\\t",
}
_MUST_ESCAPE = re.compile(r'["\\\x00-\x1f]')


class NotCanonical(Exception):
    """This value has no canonical form."""


def canonical(value: Any) -> bytes:
    """A value of JSON as the bytes that everybody gets.

    Raises:
        NotCanonical: a number, a text or a name that has no such form.
    """
    try:
        return _text(value).encode("utf-8")
    except UnicodeEncodeError:
        raise NotCanonical("a text holds half a character") from None


def sha256(value: Any) -> str:
    """SHA-256 over the canonical form, in hexadecimal.

    Raises:
        NotCanonical: as canonical.
    """
    return hashlib.sha256(canonical(value)).hexdigest()


def read_json(text: str) -> Any:
    """A value of JSON; a name that is there twice in one object is refused.

    Raises:
        ValueError: it is no JSON, or a name is there twice.
    """
    return json.loads(text, object_pairs_hook=_each_once)


def _each_once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for name in names if names.count(name) > 1)
        raise ValueError(f"the name {twice!r} is there twice in one object")
    return found


def _text(value: Any) -> str:
    if value is None or isinstance(value, bool):
        return {None: "null", True: "true", False: "false"}[value]
    if isinstance(value, int):
        if abs(value) > LARGEST:
            raise NotCanonical(f"the number {value} is too large")
        return str(value)
    if isinstance(value, float):
        return number(value)
    if isinstance(value, str):
        return '"' + _MUST_ESCAPE.sub(_escaped, value) + '"'
    if isinstance(value, (list, tuple)):
        return "[" + ",".join(map(_text, value)) + "]"
    if isinstance(value, dict):
        if not all(isinstance(name, str) for name in value):
            raise NotCanonical("a name is no text")
        named = sorted(value.items(), key=lambda pair: _units(pair[0]))
        return "{" + ",".join(f"{_text(name)}:{_text(part)}" for name, part in named) + "}"
    raise NotCanonical(f"{type(value).__name__} is nothing of JSON")


def _units(name: str) -> bytes:
    """The order of names, section 3.2.3: by their UTF-16 code units."""
    return name.encode("utf-16-be", "surrogatepass")


def _escaped(found: re.Match[str]) -> str:
    """A character that cannot stand in a text as it is, section 3.2.2.2."""
    return _SHORT.get(found[0]) or f"\\u{ord(found[0]):04x}"


def number(value: float) -> str:
    """A number as ECMAScript writes it, section 3.2.2.3.

    Python's `repr` finds the same shortest digits; only where the point stands differs.

    Raises:
        NotCanonical: it is infinite or no number.
    """
    if math.isnan(value) or math.isinf(value):
        raise NotCanonical("a number is infinite, or none")
    if value == 0:
        return "0"
    sign = "-" if value < 0 else ""
    digits, _, exponent = repr(abs(value)).partition("e")
    whole, _, part = digits.partition(".")
    part = "" if part == "0" else part
    point = len(whole) + int(exponent or 0)
    digits = whole + part
    point -= len(digits) - len(digits.lstrip("0"))
    digits = digits.strip("0") if part or exponent else digits.lstrip("0")
    return sign + _placed(digits, point)


def _placed(digits: str, point: int) -> str:
    """The digits with the point after `point` of them, or with an exponent (ECMA-262, 6.1.6.1.20)."""
    if len(digits) <= point <= 21:
        return digits + "0" * (point - len(digits))
    if 0 < point <= 21:
        return f"{digits[:point]}.{digits[point:]}"
    if -6 < point <= 0:
        return "0." + "0" * -point + digits
    power = f"e{'+' if point > 0 else '-'}{abs(point - 1)}"
    return (f"{digits[0]}.{digits[1:]}" if len(digits) > 1 else digits) + power
