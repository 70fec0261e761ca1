"""The picture of the log: it is SVG, says in words what it shows, and needs no colours to be read."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, timedelta
from xml.etree.ElementTree import Element

import pytest
from defusedxml.ElementTree import fromstring
from hypothesis import given
from hypothesis import strategies as st

from service.announce import pace_picture as module
from service.announce.pace_picture import PacePicture, pace_picture, points_of
from service.pace.forecast import Finish

SVG = "{http://www.w3.org/2000/svg}"
FIRST = date(2026, 3, 16)
SHOWN = PacePicture(
    game="The harbour mystery",
    page=41,
    points=((date(2026, 3, 15), 0), (FIRST, 420), (date(2026, 3, 25), 3_412)),
    total=4_900,
    finish=Finish(date(2026, 3, 27), date(2026, 3, 28), date(2026, 3, 31)),
    confidence=0.8,
    rests=((date(2026, 3, 18), date(2026, 3, 19)),),
)


def drawn(shown: PacePicture) -> Element:
    root = fromstring(pace_picture(shown))
    assert isinstance(root, Element)
    return root


def texts(root: Element) -> list[str]:
    return [each.text or "" for each in root.iter(f"{SVG}text")]


def test_title_and_description_are_its_alternative_text() -> None:
    root = drawn(SHOWN)
    title, words = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title is not None
    assert words is not None
    assert root.get("role") == "img"
    assert root.get("aria-labelledby") == f"{title.get('id')} {words.get('id')}"
    assert title.text == "The harbour mystery: page 41"
    assert words.text == (
        "From Monday 16 March 2026 to Wednesday 25 March 2026 3,412 of 4,900 stitches were made, "
        "69.6 %. Page 41 should be finished around Saturday 28 March 2026; 8 times in 10 it is from "
        "Friday 27 March to Tuesday 31 March 2026."
    )


def test_what_is_done_the_middle_and_the_range_differ_without_colours_and_are_named() -> None:
    root = drawn(SHOWN)
    done = root.find(f"{SVG}polyline")
    area = root.find(f"{SVG}polygon")
    assert done is not None
    assert area is not None
    assert done.get("stroke-dasharray") is None
    assert area.get("fill") == "url(#pace-range)"
    assert [each for each in root.iter(f"{SVG}line") if each.get("stroke-dasharray")]
    assert {"stitched: 3,412, 69.6 %", "middle of the forecast", "rest", "28 Mar 2026"} <= set(
        texts(root)
    )
    assert "8 times in 10: 27 Mar to 31 Mar" in texts(root)


def test_what_is_not_known_is_neither_drawn_nor_named() -> None:
    bare = drawn(replace(SHOWN, finish=None, rests=()))
    assert bare.find(f"{SVG}polygon") is None
    assert [each for each in texts(bare) if "stitched" in each or "rest" in each] == [
        "stitched: 3,412, 69.6 %"
    ]
    finished = drawn(replace(SHOWN, total=3_412))
    assert finished.find(f"{SVG}polygon") is None


def luminance(colour: str) -> float:
    """WCAG 2.2, "relative luminance"."""
    parts = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    linear = [
        each / 12.92 if each <= 0.04045 else ((each + 0.055) / 1.055) ** 2.4 for each in parts
    ]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_ink_and_lines_have_their_contrast_on_the_ground() -> None:
    """WCAG 2.2: text 4.5 (1.4.3), what is needed to understand graphics 3 (1.4.11)."""
    assert f"{contrast('#000000', '#ffffff'):.4f}" == "21.0000"
    assert contrast(module.INK, module.GROUND) >= 7
    for colour in (module.DONE, module.RANGE, module.RULE):
        assert contrast(colour, module.GROUND) >= 4.5
    root = drawn(SHOWN)
    assert {each.get("fill") for each in root.iter(f"{SVG}text")} == {module.INK}


def test_names_of_the_host_are_text_and_never_markup() -> None:
    shown = replace(SHOWN, game="<script>alert(1)</script> & \"'")
    assert "<script" not in pace_picture(shown)
    assert drawn(shown)[0].text == "<script>alert(1)</script> & \"': page 41"


def test_a_character_that_no_xml_may_hold_is_shown_as_unknown() -> None:
    root = drawn(replace(SHOWN, game="The\x01 harbour\x0b \ufffe"))
    assert root[0].text == "The\ufffd harbour\ufffd \ufffd: page 41"


def test_two_pictures_on_one_page_have_their_own_ids() -> None:
    ids = [
        set(re.findall(r'id="([^"]+)"', pace_picture(replace(SHOWN, name=each)))) for each in "ab"
    ]
    assert len(ids[0]) == 4
    assert not ids[0] & ids[1]


def test_the_line_is_level_over_days_that_the_log_does_not_tell_of() -> None:
    points = points_of([(FIRST, FIRST, 400), (date(2026, 3, 20), date(2026, 3, 22), 900)])
    assert points == (
        (date(2026, 3, 15), 0),
        (FIRST, 400),
        (date(2026, 3, 19), 400),
        (date(2026, 3, 22), 900),
    )


DAYS = st.integers(0, 3_000).map(lambda number: timedelta(days=number))


@given(
    st.lists(st.integers(0, 900), min_size=1, max_size=30),
    st.integers(1, 100_000),
    DAYS,
    DAYS,
    st.none() | DAYS,
)
def test_any_log_is_drawn_within_the_picture(
    stitches: list[int], left: int, early: timedelta, more: timedelta, late: timedelta | None
) -> None:
    days = [FIRST + timedelta(days=number) for number in range(len(stitches))]
    done = [sum(stitches[: number + 1]) for number in range(len(stitches))]
    points = points_of([(each, each, after) for each, after in zip(days, done, strict=True)])
    earliest = days[-1] + early
    middle = earliest + more
    finish = Finish(earliest, middle, None if late is None else middle + late)
    root = drawn(replace(SHOWN, points=points, total=done[-1] + left, finish=finish))
    for each in root.iter():
        for name in ("x", "x1", "x2", "cx"):
            assert 0 <= float(each.get(name, "0")) <= module.WIDE
        for name in ("y", "y1", "y2", "cy"):
            assert 0 <= float(each.get(name, "0")) <= module.HIGH
        for place in re.findall(r"[-\d.]+,[-\d.]+", each.get("points", "")):
            x, y = map(float, place.split(","))
            assert 0 <= x <= module.WIDE
            assert 0 <= y <= module.HIGH


@pytest.mark.parametrize(
    ("about", "step"), [(1, 1), (1.5, 2), (4, 5), (7, 10), (1_225, 2_000), (0.2, 1)]
)
def test_lines_across_are_at_round_numbers(about: float, step: int) -> None:
    assert module._round_step(about) == step
