"""The map of a chart: what is drawn, what stays out, and the same in words."""

from __future__ import annotations

import re
from dataclasses import replace
from xml.etree import ElementTree as ET

import pytest
from defusedxml.ElementTree import fromstring
from hypothesis import given, settings
from hypothesis import strategies as st

from service.announce.map_picture import (
    FRAMES,
    SHAPES,
    Look,
    draw_map,
    picture_in_words,
    size_of,
)
from service.announce.page_map import PageMap, map_in_words, page_in_words
from service.announce.palette import TONES, tone_of
from service.chart.grid import Cell, Chart, DesignSize, chart_of_design

SMALL = PageMap(
    Chart(3, 2, no_page=frozenset({Cell(3, 2)})),
    "The windy island",
    "Round 2",
    stitched=frozenset({1}),
    in_hand=frozenset({2}),
    votable=frozenset({3, 5}),
    votes={3: 7, 5: 0},
)
MARKUP = '<script>alert("x")</script> & </svg>\x00\x0b\ud800'


def drawn(shown: PageMap, **look: object) -> ET.Element:
    return fromstring(draw_map(shown, Look(**look)))  # type: ignore[arg-type]


def texts(root: ET.Element) -> list[str]:
    return [each.text or "" for each in root.findall(".//{*}text")]


def test_a_map_shows_every_page_with_its_number_and_its_votes() -> None:
    found = texts(drawn(SMALL, heading=False, legend=False))
    assert found == ["1", "2", "3", "7", "4", "5"]


def test_a_cell_without_a_page_stays_empty() -> None:
    root = drawn(SMALL, heading=False, legend=False)
    seams = [
        each.get("d", "")
        for each in root.findall(".//{*}path")
        if "stroke-seam" in each.get("class", "")
    ]
    assert seams[0].count("M") == 5


def test_the_legend_explains_what_is_shown_and_nothing_else() -> None:
    found = texts(drawn(SMALL, heading=False))[6:]
    assert found == [
        "stitched (1)",
        "in hand (1)",
        "can be chosen (2)",
        "not stitched yet (1)",
        "no votes to most votes",
    ]
    hidden = replace(SMALL, votes=None, in_hand=frozenset(), winner=3)
    assert texts(drawn(hidden, heading=False))[-4:] == [
        "winner of the round",
        "stitched (1)",
        "can be chosen (2)",
        "not stitched yet (2)",
    ]


def test_states_differ_by_stitches_and_not_by_colour_alone() -> None:
    root = drawn(SMALL)
    lines = {each.get("id"): len(each) for each in root.findall(".//{*}pattern")}
    # A stitched page has both legs of the cross, one in hand the first.
    assert lines == {"map-cloth": 4, "map-stitched": 2, "map-in-hand": 1}
    fills = [each.get("fill", "") for each in root.findall(".//{*}path")]
    assert {"url(#map-stitched)", "url(#map-in-hand)", "url(#map-cloth)"} <= set(fills)
    dashed = [each for each in root.findall(".//{*}rect") if each.get("stroke-dasharray")]
    assert len(dashed) == 3  # two pages, and the legend


@pytest.mark.parametrize("shape", SHAPES)
def test_nothing_of_a_title_is_taken_for_markup(shape: str) -> None:
    shown = replace(SMALL, title=MARKUP, caption=MARKUP)
    svg = draw_map(shown, Look(shape=shape))  # type: ignore[arg-type]
    assert "<script" not in svg
    root = fromstring(svg)
    title = root.find("{*}title")
    assert title is not None
    assert title.text == '<script>alert("x")</script> & </svg>'


@pytest.mark.parametrize("shape", SHAPES)
def test_a_picture_may_stand_in_a_page_with_a_strict_policy(shape: str) -> None:
    """No style attribute, no style or script element, nothing fetched from anywhere."""
    links = dict.fromkeys(SMALL.chart.pages, "/desk?page=1&x=<y>")
    root = drawn(SMALL, shape=shape, links=links)
    for element in root.iter():
        assert element.tag.rpartition("}")[2] not in {
            "style",
            "script",
            "image",
            "foreignObject",
            "use",
        }
        for name, value in element.attrib.items():
            assert name != "style"
            assert not name.startswith("on")
            assert "url(" not in value or re.fullmatch(r"url\(#map-[a-z-]+\)", value)
            assert name == "xmlns" or "http" not in value


def test_ids_are_the_pictures_own() -> None:
    for ids in ("map", "round-2"):
        root = drawn(SMALL, ids=ids)
        found = [each.get("id", "") for each in root.iter() if each.get("id")]
        assert len(found) == len(set(found)) == 5
        assert all(each.startswith(f"{ids}-") for each in found)
        assert root.get("aria-labelledby") in found
        assert root.get("aria-describedby") in found


def test_pages_are_linked_in_their_order_and_named() -> None:
    root = drawn(SMALL, links={page: f"#page-{page}" for page in (1, 3, 4)})
    found = list(root.findall(".//{*}a"))
    assert [each.get("href") for each in found] == ["#page-1", "#page-3", "#page-4"]
    assert [each.get("aria-label") for each in found] == [
        "Page 1, stitched",
        "Page 3, can be chosen, 7 votes",
        "Page 4, not stitched yet",
    ]
    # The parts of an image cannot be reached by keyboard; those of a group can.
    assert root.get("role") == "group"
    assert drawn(SMALL).get("role") == "img"
    assert all(any(part.get("class") == "hit" for part in each) for each in found)


def test_a_plain_map_leaves_its_ground_to_the_video() -> None:
    def whole(root: ET.Element) -> list[ET.Element]:
        wide = root.get("width")
        return [each for each in root.findall(".//{*}rect") if each.get("width") == wide]

    assert len(whole(drawn(SMALL))) == 1
    assert whole(drawn(SMALL, plain=True)) == []


@pytest.mark.parametrize("shape", ["square", "wide", "video"])
def test_a_frame_has_its_size(shape: str) -> None:
    root = drawn(SMALL, shape=shape)
    assert (root.get("width"), root.get("height")) == tuple(map(str, FRAMES[shape]))  # type: ignore[index]


def test_a_post_of_a_big_chart_shows_what_the_round_is_about_and_says_so() -> None:
    big = PageMap(Chart(60, 60), "Big", votable=frozenset({1830, 1831}), stitched=frozenset({1770}))
    look = Look(shape="square")
    found = [each for each in texts(fromstring(draw_map(big, look))) if each.isdecimal()]
    # A page around the two that can be chosen, in rows of 60.
    assert found == [str(row * 60 + column) for row in (29, 30, 31) for column in (29, 30, 31, 32)]
    words = picture_in_words(big, look)
    assert words.endswith("The picture shows only columns 29 to 32 and rows 30 to 32.")
    assert picture_in_words(big, Look()) == map_in_words(big)
    assert "only" not in picture_in_words(SMALL, look)


def test_pages_are_as_high_as_their_stitches_make_them() -> None:
    portrait = PageMap(chart_of_design(DesignSize(140, 200, 70, 100)), "")
    wide, high = size_of(portrait, Look(heading=False, legend=False))
    square_wide, square_high = size_of(PageMap(Chart(2, 2), ""), Look(heading=False, legend=False))
    assert square_wide == square_high == wide
    assert high > wide


def test_maps_that_differ_in_votes_or_links_alone_are_drawn_apart() -> None:
    other = replace(SMALL, votes={3: 7, 5: 1})
    assert draw_map(SMALL) != draw_map(other)
    assert draw_map(SMALL, Look(links={1: "#a"})) != draw_map(SMALL, Look(links={1: "#b"}))
    assert draw_map(replace(SMALL, votes=dict(SMALL.votes or {}))) == draw_map(SMALL)


@pytest.mark.parametrize(
    ("votes", "most", "tone"),
    [
        (0, 0, 0),
        (0, 9, 0),
        (1, 1, 5),
        (1, 1000, 1),
        (2, 10, 1),
        (3, 10, 2),
        (9, 10, 5),
        (10, 10, 5),
    ],
)
def test_the_depth_of_tone_follows_the_votes(votes: int, most: int, tone: int) -> None:
    assert tone_of(votes, most) == tone


WORDS = [
    (
        SMALL,
        (
            "A map of 5 pages in 3 columns and 2 rows. Page 1 is stitched. Page 2 is in hand. Pages 3 "
            "and 5 can be chosen. 1 other page is not stitched yet. Page 3 has 7 votes."
        ),
    ),
    (
        PageMap(Chart(1, 1), "x"),
        "A map of 1 page in 1 column and 1 row. 1 page is not stitched yet.",
    ),
    (
        PageMap(Chart(2, 2), "x", stitched=frozenset({1, 2, 3}), winner=4, votable=frozenset({4})),
        (
            "A map of 4 pages in 2 columns and 2 rows. Page 4 is the winner of the round. Pages 1 to 3 "
            "are stitched. Page 4 can be chosen."
        ),
    ),
    (
        PageMap(
            Chart(7, 1), "x", votable=frozenset(range(1, 8)), votes=dict.fromkeys(range(1, 8), 1)
        ),
        (
            "A map of 7 pages in 7 columns and 1 row. Pages 1 to 7 can be chosen. Page 1 has 1 vote; "
            "page 2 has 1 vote; page 3 has 1 vote; page 4 has 1 vote; page 5 has 1 vote; 2 more pages "
            "together 2 votes."
        ),
    ),
    (
        PageMap(Chart(2, 1), "x", votable=frozenset({1}), votes={}),
        (
            "A map of 2 pages in 2 columns and 1 row. Page 1 can be chosen. 1 other page is not "
            "stitched yet. No page has a vote."
        ),
    ),
]


@pytest.mark.parametrize(("shown", "words"), WORDS)
def test_a_map_is_told_in_words(shown: PageMap, words: str) -> None:
    assert map_in_words(shown) == words
    desc = drawn(shown).find("{*}desc")
    assert desc is not None
    assert desc.text == words


def test_a_round_that_is_over_says_what_could_be_chosen() -> None:
    over = replace(SMALL, is_over=True)
    assert "Pages 3 and 5 could be chosen." in map_in_words(over)
    assert page_in_words(over, 3) == "Page 3, could be chosen, 7 votes"
    assert "could be chosen (2)" in texts(drawn(over))


def test_a_page_is_told_in_words() -> None:
    shown = replace(SMALL, winner=3)
    assert page_in_words(shown, 3) == "Page 3, can be chosen, winner of the round, 7 votes"
    assert page_in_words(shown, 2) == "Page 2, in hand"


@st.composite
def maps(draw: st.DrawFn) -> PageMap:
    columns, rows = draw(st.integers(1, 12)), draw(st.integers(1, 12))
    cells = [Cell(column + 1, row + 1) for column in range(columns) for row in range(rows)]
    empty = draw(st.sets(st.sampled_from(cells), max_size=len(cells) - 1))
    chart = Chart(columns, rows, no_page=frozenset(empty))
    pages = st.frozensets(st.sampled_from(chart.pages))
    votable = draw(pages)
    votes = (
        draw(st.dictionaries(st.sampled_from(sorted(votable)), st.integers(0, 10**6)))
        if votable
        else {}
    )
    return PageMap(
        chart,
        draw(st.text()),
        draw(st.text()),
        stitched=draw(pages),
        in_hand=draw(pages),
        votable=votable,
        winner=draw(st.none() | st.sampled_from(chart.pages)),
        votes=draw(st.sampled_from((None, votes))),
    )


@settings(deadline=None, max_examples=60)
@given(maps(), st.sampled_from(SHAPES), st.booleans(), st.booleans())
def test_any_map_can_be_drawn(shown: PageMap, shape: str, heading: bool, plain: bool) -> None:  # noqa: FBT001
    """It is XML, every tone is one of the six, and what is drawn lies within the picture."""
    look = Look(shape=shape, heading=heading, plain=plain)  # type: ignore[arg-type]
    root = fromstring(draw_map(shown, look))
    wide, high = (float(root.get(each, "")) for each in ("width", "height"))
    assert (wide, high) == pytest.approx(size_of(shown, look), abs=0.01)
    group = next(each for each in root if each.get("class") == "pages")
    moved = re.findall(r"[-0-9.]+", group.get("transform", ""))
    right, down = map(float, moved)
    for path in group.findall(".//{*}path"):
        for x, y, across, below in re.findall(
            r"M([-0-9.]+) ([-0-9.]+)h([-0-9.]+)v([-0-9.]+)h", path.get("d", "")
        ):
            assert right + float(x) >= -0.1
            assert right + float(x) + float(across) <= wide + 0.1
            assert down + float(y) >= -0.1
            assert down + float(y) + float(below) <= high + 0.1
    named = {each for part in root.iter() for each in part.get("class", "").split()}
    tones = {int(each[-1]) for each in named if each.startswith("fill-tone-")}
    assert tones <= set(range(TONES + 1))
    assert map_in_words(shown).startswith("A map of ")
