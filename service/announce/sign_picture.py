"""The sign of one state as a small picture, to stand before its name in a page."""

from __future__ import annotations

from functools import cache
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, written
from service.announce.map_blocks import draw_swatch
from service.announce.map_stitches import define_patterns
from service.announce.page_map import Sign
from service.announce.palette import Theme

_SIDE = 48.0


@cache
def draw_sign(sign: Sign, theme: Theme = "light") -> str:
    """The sign as SVG. It is decoration: what it means has to stand beside it."""
    root = ET.Element(
        "svg",
        {
            "xmlns": "http://www.w3.org/2000/svg",
            "viewBox": f"0 0 {_SIDE:.0f} {_SIDE:.0f}",
            "width": "24",
            "height": "24",
            "class": "picture swatch",
            "aria-hidden": "true",
        },
    )
    brush = Brush(theme, f"sign-{sign.replace(' ', '-')}")
    define_patterns(brush, root, (_SIDE, _SIDE))
    draw_swatch(brush, root, (0.0, 0.0, _SIDE), sign)
    return written(root)
