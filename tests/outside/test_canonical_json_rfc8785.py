"""Both makers of canonical JSON, the library and verify.py's own, against RFC 8785 (June 2020)."""

from __future__ import annotations

import hashlib
import json
import math
import struct
from collections.abc import Callable
from typing import Any

import pytest
import rfc8785
from hypothesis import given, settings
from hypothesis import strategies as st
from verifying.canonical import NotCanonical, canonical, read_json

Maker = Callable[[Any], bytes]
BOTH = pytest.mark.parametrize(
    "make", [rfc8785.dumps, canonical], ids=["the library", "verify.py's own"]
)

#: Section 3.2.2, the input and its output.
INPUT = r"""{
  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}"""
OUTPUT = (
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],'
    '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}'
)


@BOTH
def test_the_example_of_section_3_2_2(make: Maker) -> None:
    assert make(json.loads(INPUT)).decode() == OUTPUT


@BOTH
def test_the_bytes_of_section_3_2_4(make: Maker) -> None:
    made = make(json.loads(INPUT))
    assert len(made) == 118
    assert made.hex().startswith("7b226c69746572616c73223a")
    assert made.hex().endswith("5c5c5c5c5c222f227d")
    # Worked out from those bytes; the RFC prints no hash.
    assert hashlib.sha256(made).hexdigest() == (
        "2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb"
    )


@BOTH
def test_the_order_of_names_of_section_3_2_3(make: Maker) -> None:
    """By UTF-16 code units: code points would put U+FB33 before the emoji."""
    names = ["€", "\r", "\ufb33", "1", "\U0001f600", "\u0080", "ö"]
    made = make(dict.fromkeys(names, 0)).decode()
    assert list(json.loads(made)) == ["\r", "1", "\u0080", "ö", "€", "\U0001f600", "\ufb33"]


#: Appendix B: the bits of an IEEE 754 double, and how it is written.
NUMBERS = {
    "0000000000000000": "0",
    "8000000000000000": "0",
    "0000000000000001": "5e-324",
    "7fefffffffffffff": "1.7976931348623157e+308",
    "4340000000000000": "9007199254740992",
    "4430000000000000": "295147905179352830000",
    "44b52d02c7e14af5": "9.999999999999997e+22",
    "44b52d02c7e14af6": "1e+23",
    "444b1ae4d6e2ef4f": "999999999999999900000",
    "444b1ae4d6e2ef50": "1e+21",
    "3eb0c6f7a0b5ed8c": "9.999999999999997e-7",
    "3eb0c6f7a0b5ed8d": "0.000001",
    "becbf647612f3696": "-0.0000033333333333333333",
    "43143ff3c1cb0959": "1424953923781206.2",
}


@BOTH
@pytest.mark.parametrize(("bits", "written"), NUMBERS.items(), ids=NUMBERS.keys())
def test_the_numbers_of_appendix_b(make: Maker, bits: str, written: str) -> None:
    [value] = struct.unpack(">d", bytes.fromhex(bits))
    assert make(value).decode() == written


@BOTH
@pytest.mark.parametrize(
    "value",
    [math.nan, math.inf, -math.inf, 2**53, {1: 2}, "\ud800"],
    ids=["no number", "infinite", "minus infinite", "too large", "no name", "half a character"],
)
def test_what_has_no_canonical_form_is_refused(make: Maker, value: Any) -> None:
    refusals = (NotCanonical, rfc8785.CanonicalizationError, UnicodeEncodeError)
    with pytest.raises(refusals):
        make(value)


@BOTH
def test_nothing_is_normalised(make: Maker) -> None:
    """Section 3.1: Unicode data must be kept as it is."""
    assert make("A\u030a") != make("\u00c5")


texts = st.text(st.characters(exclude_categories=["Cs"]), max_size=8)
values = st.recursive(
    st.none()
    | st.booleans()
    | st.integers(-(2**53) + 1, 2**53 - 1)
    | st.floats(allow_nan=False, allow_infinity=False)
    | texts,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(texts, inner, max_size=4),
    max_leaves=12,
)


@settings(max_examples=300, deadline=None)
@given(values)
def test_both_make_the_same_of_any_value(value: Any) -> None:
    assert canonical(value) == rfc8785.dumps(value)


@settings(max_examples=500, deadline=None)
@given(st.floats(allow_nan=False, allow_infinity=False))
def test_both_write_every_number_alike(value: float) -> None:
    assert canonical(value) == rfc8785.dumps(value)
    assert float(canonical(value)) == value


def test_a_name_that_is_there_twice_is_refused() -> None:
    """RFC 7493 section 2.3, which RFC 8785 builds on: names must not be there twice."""
    with pytest.raises(ValueError, match="'winner' is there twice"):
        read_json('{"winner": 3, "tally": [], "winner": 4}')
