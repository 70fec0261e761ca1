"""Every colour of a picture can be told from what it lies on, by any eye; none is the only sign."""

from __future__ import annotations

import re
from datetime import date, timedelta
from itertools import combinations, pairwise
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from colorspacious import cspace_convert, deltaE

from service.announce.map_picture import SHAPES, Look, draw_map
from service.announce.page_map import PageMap
from service.announce.palette import PALETTES, THEMES, TONES, Theme, stylesheet
from service.announce.tally_bars import draw_tally
from service.announce.votes_by_day import VotesByDay, draw_days
from service.chart.grid import Cell, Chart
from tests.announce.seen import Under, seen_in
from tests.announce.wcag import contrast

VOTED = PageMap(
    Chart(9, 7, no_page=frozenset({Cell(9, 7)})),
    "The windy island",
    "Round 3",
    stitched=frozenset({1, 2, 3}),
    in_hand=frozenset({4}),
    votable=frozenset(range(20, 40)),
    winner=39,
    votes={page: page - 20 for page in range(20, 40)},
)
HIDDEN = PageMap(VOTED.chart, "The windy island", votable=frozenset({7}), in_hand=frozenset({8}))
DAYS = VotesByDay(
    tuple((date(2026, 3, 1) + timedelta(days=day), day) for day in range(9)), 2, ZoneInfo("UTC")
)
KINDS = ("protanomaly", "deuteranomaly", "tritanomaly")


def pictures(theme: Theme) -> list[str]:
    drawn = [
        draw_map(shown, Look(theme=theme, shape=shape, plain=plain))
        for shown in (VOTED, HIDDEN)
        for shape in SHAPES
        for plain in (False, True)
    ]
    look = Look(theme=theme)
    return [
        *drawn,
        draw_days(DAYS, "t", "c", look),
        draw_tally(((3, 2), (4, 1)), 3, "t", "c", look),
    ]


def seen(theme: Theme) -> set[Under]:
    return {each for drawn in pictures(theme) for each in seen_in(drawn)}


@pytest.mark.parametrize("theme", THEMES)
def test_every_text_is_read_on_its_ground(theme: Theme) -> None:
    """WCAG 2.2, success criterion 1.4.3 (AA): 4.5 to 1."""
    colours = PALETTES[theme]
    found = {(each.role, each.ground) for each in seen(theme) if each.what == "text"}
    assert len(found) >= 12
    assert {ground for _, ground in found} >= {f"tone-{tone}" for tone in range(TONES + 1)}
    bare = {pair for pair in found if pair[1] not in colours}
    # On bare cloth the few holes are beside the number; stitches never lie under one.
    assert {ground for _, ground in bare} <= {"pattern url(#map-cloth)"}
    checked = {(role, "cloth" if (role, ground) in bare else ground) for role, ground in found}
    low = {pair: contrast(colours[pair[0]], colours[pair[1]]) for pair in checked}
    assert {pair: ratio for pair, ratio in low.items() if ratio < 4.5} == {}


@pytest.mark.parametrize("theme", THEMES)
def test_every_line_that_tells_something_is_seen(theme: Theme) -> None:
    """WCAG 2.2, success criterion 1.4.11 (AA): 3 to 1 against what is beside it.

    A seam only parts two pages and tells nothing. A winner's frame may lie on any tone: a clean
    line inside it parts it from that, so it is compared with the line.
    """
    colours = PALETTES[theme]
    drawn = {(each.role, each.ground) for each in seen(theme) if each.what == "line"}
    told = {pair for pair in drawn if pair[0] not in ("seam", "patch", "winner-thread")}
    assert {ground for _, ground in told} >= {f"tone-{tone}" for tone in range(TONES + 1)}
    signs = [
        *(("stitched-thread", "stitched"), ("in-hand-thread", "in-hand"), ("ink", "in-hand")),
        *(("winner-thread", ground) for ground in ("patch", "cloth", "votable", "ground")),
        *(("votable-thread", ground) for ground in ("cloth", "ground")),
    ]
    low = {pair: contrast(colours[pair[0]], colours[pair[1]]) for pair in {*signs, *told}}
    assert {pair: ratio for pair, ratio in low.items() if ratio < 3} == {}


def as_seen(colour: str, kind: str | None) -> np.ndarray:
    plain = np.array([int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)])
    if kind is None:
        return plain
    space = {"name": "sRGB1+CVD", "cvd_type": kind, "severity": 100}
    return np.clip(cspace_convert(plain, space, "sRGB1"), 0, 1)  # type: ignore[no-any-return]


@pytest.mark.parametrize("kind", [None, *KINDS])
@pytest.mark.parametrize("theme", THEMES)
def test_states_are_told_apart_by_eyes_that_miss_a_colour(theme: Theme, kind: str | None) -> None:
    """Simulated by Machado, Oliveira and Fernandes (2009) at full severity, as colorspacious has it.

    The distance is that of CAM02-UCS; one of 1 can just be seen. 8 between threads and grounds is
    our own choice: besides, every state has its own stitches, border or sign.
    """
    colours = PALETTES[theme]
    states = ("stitched-thread", "in-hand-thread", "votable-thread", "cloth")
    for one, other in combinations(states, 2):
        apart = deltaE(as_seen(colours[one], kind), as_seen(colours[other], kind), "sRGB1")
        assert apart > 8, (one, other, apart)


@pytest.mark.parametrize("kind", [None, *KINDS])
@pytest.mark.parametrize("theme", THEMES)
def test_more_votes_are_deeper_for_every_eye(theme: Theme, kind: str | None) -> None:
    tones = [as_seen(PALETTES[theme][f"tone-{tone}"], kind) for tone in range(TONES + 1)]
    lightness = [float(cspace_convert(tone, "sRGB1", "JCh")[0]) for tone in tones]
    steps = [abs(after - before) for before, after in pairwise(lightness)]
    assert lightness in (sorted(lightness), sorted(lightness, reverse=True))
    assert min(steps) > 4, lightness


def test_the_two_themes_have_the_same_roles() -> None:
    assert PALETTES["light"].keys() == PALETTES["dark"].keys()


def test_a_stylesheet_can_give_a_picture_in_a_page_the_other_theme() -> None:
    rules = stylesheet("dark", ".map")
    classes = {f"{kind}-{role}" for drawn in pictures("light") for kind, role in roles_in(drawn)}
    assert len(classes) > 20
    for each in classes:
        kind, role = each.split("-", 1)
        assert f".map .{each} {{ {kind}: {PALETTES['dark'][role]}; }}" in rules


def roles_in(svg: str) -> set[tuple[str, str]]:
    named = re.findall(r'class="([^"]*)"', svg)
    return {
        (each.split("-", 1)[0], each.split("-", 1)[1])
        for classes in named
        for each in classes.split()
        if each.startswith(("fill-", "stroke-"))
    }
