"""Colours of the pages: every pair that is used, by WCAG 2.2's formula, light and dark.

4.5 to 1 for text (success criterion 1.4.3), 3 to 1 for what tells where a control is or where the
focus is (1.4.11, 2.4.13).
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import service.pages
from tests.announce.wcag import contrast

STYLE = (Path(service.pages.__path__[0]) / "static" / "style.css").read_text("utf-8")
COLOUR = re.compile(r"--([\w-]+):\s*(#[0-9a-f]{6});")
GROUNDS = ("ground", "cloth", "field")

TEXT = [
    *((ink, ground) for ink in ("ink", "soft-ink", "link") for ground in GROUNDS),
    *((ink, notice) for ink in ("ink", "link") for notice in ("refused", "done")),
    ("ink", "stitched"),
    ("ink", "in-hand"),
    ("on-button", "button"),
    ("on-button", "button-lit"),
]
PARTS = [
    *((line, ground) for line in ("edge", "focus", "button") for ground in GROUNDS),
    *((f"{of}-thread", "cloth") for of in ("stitched", "in-hand", "winner")),
    ("winner-thread", "refused"),
    ("stitched-thread", "done"),
    ("stitched-thread", "stitched"),
    ("in-hand-thread", "in-hand"),
]
#: Lines around what is told by its words and its ground anyway.
DECORATION = {"seam"}


def blocks() -> dict[str, dict[str, str]]:
    """The colours of each scheme by their roles."""
    light, dark = re.findall(
        r":root \{\n\s+color-scheme.*?\}|:root \{\n\s+--ground.*?\}", STYLE, re.DOTALL
    )
    return {"light": dict(COLOUR.findall(light)), "dark": dict(COLOUR.findall(dark))}


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_text_can_be_read_on_all_that_it_stands_on(scheme: str) -> None:
    colours = blocks()[scheme]
    measured = {pair: contrast(colours[pair[0]], colours[pair[1]]) for pair in TEXT}
    assert {pair: ratio for pair, ratio in measured.items() if ratio < 4.5} == {}


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_edges_and_focus_can_be_seen(scheme: str) -> None:
    colours = blocks()[scheme]
    measured = {pair: contrast(colours[pair[0]], colours[pair[1]]) for pair in PARTS}
    assert {pair: ratio for pair, ratio in measured.items() if ratio < 3} == {}


def test_every_colour_is_a_role_that_is_measured() -> None:
    found = blocks()
    roles = set(found["light"])
    assert roles == set(found["dark"])
    assert roles == {role for pair in TEXT + PARTS for role in pair} | DECORATION
    used = set(re.findall(r"var\(--([\w-]+)\)", STYLE))
    assert used == roles | {"patch"}


def test_the_overlays_words_can_be_read_on_their_patch() -> None:
    found = [dict(COLOUR.findall(block)) for block in re.findall(r"\.plain[\w.]* \{[^}]*\}", STYLE)]
    schemes = [colours for colours in found if colours]
    assert len(schemes) == 2
    for colours in schemes:
        assert contrast(colours["ink"], colours["patch"]) >= 7
        assert contrast(colours["soft-ink"], colours["patch"]) >= 4.5


def test_no_colour_stands_outside_of_the_roles() -> None:
    without_roles = COLOUR.sub("", STYLE)
    assert re.findall(r"#[0-9a-fA-F]{3,8}\b(?=[;\s])|rgba?\(|hsla?\(", without_roles) == []
