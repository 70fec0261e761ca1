"""Comparing names, hashing and canonical JSON against published values.

Names are compared by rapidfuzz's OSA distance; these tests show that its comparisons are the
published ones, that names are folded as Unicode says, and that the seal's parts (SHA-256,
canonical JSON) give the published values.
"""

from __future__ import annotations

import hashlib
import json
import struct
import unicodedata

import pytest
import rfc8785
from rapidfuzz.distance import OSA, Jaro, JaroWinkler

from service.mystery.names import fold

# W. E. Winkler, "Advanced Methods for Record Linkage", US Census Bureau, Statistical Research
# Report RR94/05 (1994), table 2.1: the pair, its Jaro and its Winkler comparison.
WINKLER_1994 = (
    ("SHACKLEFORD", "SHACKELFORD", 0.970, 0.982),
    ("DUNNINGHAM", "CUNNIGHAM", 0.896, 0.896),
    ("NICHLESON", "NICHULSON", 0.926, 0.956),
    ("JONES", "JOHNSON", 0.790, 0.832),
    ("ABROMS", "ABRAMS", 0.889, 0.922),
    ("HARDIN", "MARTINEZ", 0.722, 0.722),
    ("ITMAN", "SMITH", 0.467, 0.467),
    ("JERALDINE", "GERALDINE", 0.926, 0.926),
    ("MARHTA", "MARTHA", 0.944, 0.961),
    ("MICHELLE", "MICHAEL", 0.869, 0.921),
    ("JULIES", "JULIUS", 0.889, 0.933),
    ("TANYA", "TONYA", 0.867, 0.880),
    ("SEAN", "SUSAN", 0.783, 0.805),
    ("JON", "JOHN", 0.917, 0.933),
)

# Rows of the same table that the library does not give. MASSEY and DWAYNE: later tables print
# the values on the right. JON/JAN and 1ST/IST: 0.000 is held to be a misprint, Jaro's rule
# gives 0.778 for both.
PRINTED_OTHERWISE = (
    ("MASSEY", "MASSIE", "winkler", 0.944, 0.933),
    ("DWAYNE", "DUANE", "winkler", 0.858, 0.840),
    ("JON", "JAN", "jaro", 0.000, 0.778),
    ("1ST", "IST", "jaro", 0.000, 0.778),
)


def _pair(row: tuple[object, ...]) -> str:
    return f"{row[0]} {row[1]}"


@pytest.mark.parametrize("row", WINKLER_1994, ids=_pair)
def test_the_library_gives_winklers_published_comparisons(
    row: tuple[str, str, float, float],
) -> None:
    one, other, jaro, winkler = row
    assert Jaro.similarity(one, other) == pytest.approx(jaro, abs=0.0006)
    assert JaroWinkler.similarity(one, other) == pytest.approx(winkler, abs=0.0006)


def _slips(one: str, other: str) -> int:
    """Optimal string alignment by its textbook recurrence (from memory), to count by."""
    far = {(i, 0): i for i in range(len(one) + 1)} | {(0, j): j for j in range(len(other) + 1)}
    for i in range(1, len(one) + 1):
        for j in range(1, len(other) + 1):
            changed = one[i - 1] != other[j - 1]
            ways = [far[i - 1, j] + 1, far[i, j - 1] + 1, far[i - 1, j - 1] + changed]
            if i > 1 and j > 1 and one[i - 2 : i] == other[j - 2 : j][::-1]:
                ways.append(far[i - 2, j - 2] + 1)
            far[i, j] = min(ways)
    return far[len(one), len(other)]


@pytest.mark.parametrize("row", [*WINKLER_1994, *PRINTED_OTHERWISE], ids=_pair)
def test_slips_are_counted_as_the_recurrence_counts_them(row: tuple[str, str]) -> None:
    one, other, *_ = row
    assert OSA.distance(one, other) == _slips(one, other)
    assert OSA.distance(one, other, score_cutoff=2) == min(_slips(one, other), 3)


@pytest.mark.parametrize("row", PRINTED_OTHERWISE, ids=_pair)
def test_rows_printed_otherwise_are_known(row: tuple[str, str, str, float, float]) -> None:
    one, other, which, printed, given = row
    measure = Jaro if which == "jaro" else JaroWinkler
    assert measure.similarity(one, other) == pytest.approx(given, abs=0.0006)
    assert measure.similarity(one, other) != pytest.approx(printed, abs=0.0006)


def test_two_neighbours_swapped_are_one_slip_and_no_letter_is_touched_twice() -> None:
    # The textbook pairs of edit distance (kitten, saturday, intention: from memory), and the pair
    # that tells optimal string alignment (3) from the unrestricted Damerau distance (2).
    assert OSA.distance("kitten", "sitting") == 3
    assert OSA.distance("saturday", "sunday") == 3
    assert OSA.distance("intention", "execution") == 5
    assert OSA.distance("ca", "abc") == 3


# UAX 15, Unicode Normalization Forms, figures on canonical and compatibility equivalence
# (characters from memory; the forms are recomputed by Python's unicodedata).
NORMALISED = (
    ("\u212b", "NFC", "\u00c5"),  # the angstrom sign is the letter
    ("\u00c5", "NFD", "A\u030a"),
    ("\ufb01", "NFC", "\ufb01"),  # the ligature stays in NFC ...
    ("\ufb01", "NFKC", "fi"),  # ... and falls apart in NFKC
    ("2\u2075", "NFKC", "25"),
    ("\u1e9b\u0323", "NFC", "\u1e9b\u0323"),
    ("\u1e9b\u0323", "NFD", "\u017f\u0323\u0307"),
    ("\u1e9b\u0323", "NFKC", "\u1e69"),
    ("\u1e9b\u0323", "NFKD", "s\u0323\u0307"),
)


@pytest.mark.parametrize(("text", "form", "normalised"), NORMALISED)
def test_text_is_normalised_as_unicode_says(text: str, form: str, normalised: str) -> None:
    assert unicodedata.normalize(form, text) == normalised  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        # CaseFolding.txt, Unicode Character Database: its own example of full case folding.
        ("MASSE", "Maße"),
        # Both from the same file (from memory): final sigma, and the ligature.
        ("ΣΟΦΟΣ", "σοφος"),
        ("ΕΣ", "ες"),
        ("ﬁn", "FIN"),
        # UAX 15: canonically equivalent spellings are one name.
        ("\u212bngstr\u00f6m", "A\u030angstro\u0308m"),
        ("\u1e9b\u0323", "\u017f\u0323\u0307"),
    ],
)
def test_names_that_unicode_holds_equal_are_one_name(one: str, other: str) -> None:
    assert fold(one) == fold(other) != ""


# FIPS 180-4 examples; the same in RFC 6234 section 8.5. The last two are RFC 6234's repetitions.
SHA_256 = (
    (b"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
    (b"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"),
    (
        b"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
    ),
    (b"a" * 1_000_000, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"),
    (b"01234567" * 80, "594847328451bdfa85056225462cc1d867d877fb388df0ce35f25ab5562bfbb5"),
)


@pytest.mark.parametrize(("message", "digest"), SHA_256, ids=lambda v: str(v)[:12])
def test_sha_256_gives_the_published_digests(message: bytes, digest: str) -> None:
    assert hashlib.sha256(message).hexdigest() == digest


def test_canonical_json_gives_the_published_text() -> None:
    """RFC 8785 sections 3.2.2 to 3.2.4: the example, its output, and its bytes."""
    given = json.loads(
        r'{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],'
        r'"string":"\u20ac$\u000F\u000aA\u0027\u0042\u0022\u005c\\\"\/",'
        r'"literals":[null,true,false]}'
    )
    published = (
        '{"literals":[null,true,false],'
        '"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],'
        r'"string":"€$\u000f\nA' + "'" + r'B\"\\\\\"/"}'
    )
    made = rfc8785.dumps(given)
    assert made == published.encode()
    assert len(made) == 118
    assert made.hex().startswith("7b226c69746572616c73223a")
    assert made.hex().endswith("5c5c5c5c5c222f227d")


def test_canonical_json_orders_keys_by_utf_16() -> None:
    """RFC 8785 section 3.2.3: code-point order would swap the last two."""
    published = ["\r", "1", "\u0080", "ö", "€", "\U0001f600", "\ufb33"]
    made = rfc8785.dumps(dict.fromkeys(reversed(published), 0))
    assert list(json.loads(made)) == published
    assert sorted(published) != published


# RFC 8785 appendix B: the bits of a number, and how it is written.
NUMBERS = (
    ("4340000000000000", "9007199254740992"),
    ("4430000000000000", "295147905179352830000"),
    ("44b52d02c7e14af5", "9.999999999999997e+22"),
    ("44b52d02c7e14af6", "1e+23"),
    ("444b1ae4d6e2ef4f", "999999999999999900000"),
    ("444b1ae4d6e2ef50", "1e+21"),
    ("3eb0c6f7a0b5ed8c", "9.999999999999997e-7"),
    ("3eb0c6f7a0b5ed8d", "0.000001"),
    ("becbf647612f3696", "-0.0000033333333333333333"),
    ("43143ff3c1cb0959", "1424953923781206.2"),
    ("8000000000000000", "0"),
    ("0000000000000001", "5e-324"),
    ("7fefffffffffffff", "1.7976931348623157e+308"),
)


@pytest.mark.parametrize(("bits", "written"), NUMBERS)
def test_canonical_json_writes_numbers_as_published(bits: str, written: str) -> None:
    (number,) = struct.unpack(">d", bytes.fromhex(bits))
    assert rfc8785.dumps(number) == written.encode()


@pytest.mark.parametrize("number", [float("nan"), float("inf")])
def test_canonical_json_refuses_what_is_no_number(number: float) -> None:
    """RFC 8785 section 3.2.2.3 and appendix B: NaN and infinity are errors."""
    with pytest.raises(rfc8785.FloatDomainError):
        rfc8785.dumps(number)


def test_canonical_json_does_not_normalise_unicode() -> None:
    """RFC 8785 section 3.1: strings are kept as they are; the seal of Å is not that of A and ring."""
    assert rfc8785.dumps("A\u030a") != rfc8785.dumps("\u00c5")
