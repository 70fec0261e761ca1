"""The draw against RFC 3797 (June 2004), Publicly Verifiable Nominations Committee Selection."""

from __future__ import annotations

import math

import pytest

from service.counting.draw import draw_value, drawn_order, key_string, plain_number
from service.errors import BadDraw

#: Section 6: the three sources in their announced order.
SOURCES = (("9319",), ("2", "5", "12", "8", "10"), ("9", "18", "26", "34", "41", "45"))
KEY = "9319./2.5.8.10.12./9.18.26.34.41.45./"
#: Section 6: the MD5 of each draw, how many are left, the place drawn of the pool of 25.
ROWS = (
    ("990DD0A5692A029A98B5E01AA28F3459", 25, 17),
    ("3691E55CB63FCC37914430B2F70B5EC6", 24, 7),
    ("FE814EDF564C190AC1D25753979990FA", 23, 2),
    ("1863CCACEB568C31D7DDBDF1D4E91387", 22, 16),
    ("F4AB33DF4889F0AF29C513905BE1D758", 21, 25),
    ("13EAEB529F61ACFB9A29D0BA3A60DE4A", 20, 23),
    ("992DB77C382CA2BDB9727001F3CDCCD9", 19, 8),
    ("63AB4258ECA922976811C7F55C383CE7", 18, 24),
    ("DFBC5AC97CED01B3A6E348E3CC63F40D", 17, 19),
    ("31CB111C4A4EBE9287CEAE16FE51B909", 16, 13),
    ("07FA46C122F164C215BBC72793B189A3", 15, 22),
    ("AC52F8D75CCBE2E61AFEB3387637D501", 14, 5),
    ("53306F73E14FC0B2FBF434218D25948E", 13, 18),
    ("B5D1403501A81F9A47318BE7893B347C", 12, 9),
    ("85B10B356AA06663EF1B1B407765100A", 11, 1),
    ("3269E6CE559ABD57E2BA6AAB495EB9BD", 10, 4),
)


def test_the_key_string_of_section_6() -> None:
    assert key_string(SOURCES) == KEY
    assert len(KEY) == 37


@pytest.mark.parametrize(("turn", "row"), list(enumerate(ROWS)), ids=range(1, 17))
def test_each_draw_of_section_6(turn: int, row: tuple[str, int, int]) -> None:
    lot, left, place = row
    assert draw_value(KEY, turn) == int(lot, 16)
    assert left == 25 - turn
    assert drawn_order(KEY, 25)[turn] == place


def test_the_whole_order_is_an_order_of_the_pool() -> None:
    assert sorted(drawn_order(KEY, 25)) == list(range(1, 26))


#: Same key, other pools: worked out with another program from section 4, no published source.
DERIVED = {
    1: (1,),
    2: (2, 1),
    3: (3, 1, 2),
    4: (2, 1, 3, 4),
    5: (2, 4, 3, 5, 1),
    6: (6, 4, 3, 5, 1, 2),
    7: (3, 1, 5, 7, 6, 2, 4),
    8: (2, 5, 7, 8, 1, 6, 4, 3),
}


@pytest.mark.parametrize(("size", "order"), DERIVED.items(), ids=DERIVED.keys())
def test_small_pools(size: int, order: tuple[int, ...]) -> None:
    assert drawn_order(KEY, size) == order


def test_the_counter_is_two_bytes() -> None:
    """RFC 2777 (February 2000), which this one replaced, had one byte: 12 came first there."""
    old_key = "9.18.26.34.41.45./2.5.8.10.12./9319./13.6875/"
    old_sources = (SOURCES[2], SOURCES[1], SOURCES[0], ("13.6875",))
    assert key_string(old_sources) == old_key
    assert drawn_order(old_key, 25)[0] != 12


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("0", "0"),
        ("000", "0"),
        ("007", "7"),
        ("10", "10"),
        ("0.5", "0.5"),
        ("00.50", "0.5"),
        ("13.6875", "13.6875"),
        ("13.000", "13"),
    ],
)
def test_numbers_as_section_4_1_writes_them(text: str, plain: str) -> None:
    assert plain_number(text) == plain


@pytest.mark.parametrize("text", ["", "-1", "1,5", "1.", ".5", "1e3", "４", "1.2.3", "A"])
def test_what_is_no_number_is_refused(text: str) -> None:
    with pytest.raises(BadDraw, match="is no number of a draw"):
        plain_number(text)


def test_numbers_are_sorted_by_value() -> None:
    assert key_string([("10", "9", "9.5", "10")]) == "9.9.510.10./"


@pytest.mark.parametrize("numbers", [(), ("1",) * 101], ids=["none", "too many"])
def test_a_source_without_numbers_or_with_too_many_is_refused(numbers: tuple[str, ...]) -> None:
    with pytest.raises(BadDraw, match=f"has {len(numbers)} numbers"):
        key_string([numbers])


#: Section 3.3: bits of entropy needed to select ten of a pool, log2 of the number of selections.
@pytest.mark.parametrize(
    ("pool", "bits"),
    [(20, 18), (25, 22), (30, 25), (35, 28), (40, 30), (50, 34), (60, 37), (75, 40), (100, 44), (120, 47)],
)  # fmt: skip
def test_the_bits_of_section_3_3_are_far_below_what_the_own_value_has(pool: int, bits: int) -> None:
    assert math.ceil(math.log2(math.comb(pool, 10))) == bits < 256
