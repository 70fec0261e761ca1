"""Stitches as patterns, and the small signs that tell a page's state without any colour.

Full crosses cover a stitched page, half crosses a page in hand: every embroiderer reads that.
"""

from __future__ import annotations

from math import cos, pi, sin
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, Value

#: Stitches across one page at most, and the least width of a stitch: smaller ones run together.
_MOST_STITCHES = 6
_STITCH = 8.0


def define_patterns(brush: Brush, root: ET.Element, page: tuple[float, float]) -> None:
    """Put the patterns of cloth and stitches into the picture; `page` is a page's size.

    The patterns divide a page evenly, so that stitches run on from page to page.
    """
    defined = ET.SubElement(root, "defs")
    across = page[0] / min(_MOST_STITCHES, max(1, int(page[0] / _STITCH)))
    down = page[1] / max(1, round(page[1] / across))
    _cloth(brush, defined, (across, down))
    _crosses(brush, defined, (across, down), "stitched", both=True)
    _crosses(brush, defined, (across, down), "in-hand", both=False)


def _pattern(brush: Brush, defined: ET.Element, what: str, size: tuple[float, float]) -> ET.Element:
    where = {"id": f"{brush.ids}-{what}", "patternUnits": "userSpaceOnUse"}
    return brush.shape(defined, "pattern", where | {"width": size[0], "height": size[1]})


def _cloth(brush: Brush, defined: ET.Element, size: tuple[float, float]) -> None:
    """Cloth with its holes, where the threads cross."""
    wide, high = size
    pattern = _pattern(brush, defined, "cloth", size)
    hole = max(wide * 0.09, 0.3)
    corners = ((0.0, 0.0), (wide, 0.0), (0.0, high), (wide, high))
    for x, y in corners:
        brush.shape(pattern, "circle", {"cx": x, "cy": y, "r": hole}, fill="weave")


def _crosses(
    brush: Brush, defined: ET.Element, size: tuple[float, float], of: str, *, both: bool
) -> None:
    wide, high = size
    pattern = _pattern(brush, defined, of, size)
    left, right, top, low = wide * 0.2, wide * 0.8, high * 0.2, high * 0.8
    line: dict[str, Value] = {"stroke-width": wide * 0.19, "stroke-linecap": "round"}
    thread = f"{of}-thread"
    rising: dict[str, Value] = {"x1": left, "y1": low, "x2": right, "y2": top}
    brush.shape(pattern, "line", rising | line, stroke=thread)
    if both:
        falling: dict[str, Value] = {"x1": left, "y1": top, "x2": right, "y2": low}
        brush.shape(pattern, "line", falling | line, stroke=thread)


def needle(brush: Brush, parent: ET.Element, where: tuple[float, float, float]) -> None:
    """A threaded needle in a square at `where`: x, y and the side's length."""
    x, y, side = where
    group = _at(parent, x, y, side / 16)
    trail = "M3.1 3.1 C0.5 8 6 9 4 15"
    brush.shape(
        group,
        "path",
        {"d": trail, "stroke-width": 1.4, "stroke-linecap": "round"},
        fill="",
        stroke="in-hand-thread",
    )
    steel = "M1.6 1.2 C3.4 0.6 5 2 6 3.4 L15 15 L4.6 5.6 C2.6 4.4 0.8 3 1.6 1.2 Z"
    brush.shape(group, "path", {"d": steel}, fill="ink")
    brush.shape(group, "circle", {"cx": 3.3, "cy": 2.9, "r": 0.8}, fill="patch")


def star(brush: Brush, parent: ET.Element, where: tuple[float, float, float]) -> None:
    """An eight-pointed star, as samplers have them, in a square at `where`."""
    x, y, side = where
    tips = []
    for step in range(16):
        out = 8.0 if step % 2 == 0 else 4.1
        turn = pi * step / 8
        tips.append(f"{8 + out * sin(turn):.2f} {8 - out * cos(turn):.2f}")
    group = _at(parent, x, y, side / 16)
    outline: dict[str, Value] = {
        "d": f"M{' L'.join(tips)} Z",
        "stroke-width": 1.6,
        "stroke-linejoin": "round",
    }
    brush.shape(group, "path", outline, fill="patch", stroke="patch")
    brush.shape(group, "path", {"d": outline["d"]}, fill="winner-thread")


def running_stitch(
    brush: Brush,
    parent: ET.Element,
    box: tuple[float, float, float, float],
    thick: float,
    role: str = "votable-thread",
) -> None:
    """A border of running stitches just inside `box`: x, y, width, height."""
    x, y, wide, high = box
    inset = thick * 1.3
    brush.shape(
        parent,
        "rect",
        {
            "x": x + inset,
            "y": y + inset,
            "width": wide - 2 * inset,
            "height": high - 2 * inset,
            "rx": thick,
            "stroke-width": thick,
            "stroke-dasharray": f"{thick * 2.6:.2f} {thick * 1.7:.2f}",
            "stroke-linecap": "round",
        },
        fill="",
        stroke=role,
    )


def _at(parent: ET.Element, x: float, y: float, scale: float) -> ET.Element:
    return ET.SubElement(
        parent, "g", {"transform": f"translate({x:.2f} {y:.2f}) scale({scale:.4f})"}
    )
