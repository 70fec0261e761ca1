"""A picture as it is seen: what lies under each text and each sign, by their places."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from xml.etree import ElementTree as ET

from defusedxml.ElementTree import fromstring

_BOX = re.compile(r"M([-0-9.]+) ([-0-9.]+)h([-0-9.]+)v([-0-9.]+)h")
_PLACE = re.compile(r"translate\(([-0-9.]+) ([-0-9.]+)\)(?: scale\(([-0-9.]+)\))?")
_NOTHING = "nothing"


@dataclass(frozen=True, slots=True)
class Under:
    """What is drawn (a text, a line), its role, and the role of what lies under it."""

    what: str
    role: str
    ground: str


def seen_in(svg: str) -> Iterator[Under]:
    """Every text and every coloured line of a picture with its ground."""
    grounds: list[tuple[tuple[float, float, float, float], str]] = []
    for element, right, down, scale in _placed(fromstring(svg)):
        name = element.tag.rpartition("}")[2]
        roles = dict(each.split("-", 1) for each in element.get("class", "").split() if "-" in each)
        x, y = (float(element.get(each, element.get(each + "1", "0"))) for each in ("x", "y"))
        if name == "text":
            middle = (
                right + x * scale,
                down + (y - float(element.get("font-size", "0")) / 3) * scale,
            )
            if element.get("text-anchor") is None:
                middle = (middle[0] + 2, middle[1])
            elif element.get("text-anchor") == "end":
                middle = (middle[0] - 2, middle[1])
            yield Under("text", roles["fill"], _under(grounds, middle))
        elif name == "rect" and "stroke" in roles:
            yield Under(
                "line", roles["stroke"], _under(grounds, (right + x * scale, down + y * scale))
            )
        if name == "rect" and element.get("fill") not in (None, "none", "transparent"):
            size = (
                float(element.get("width", "0")) * scale,
                float(element.get("height", "0")) * scale,
            )
            grounds.append(((right + x * scale, down + y * scale, *size), _role(element, roles)))
        elif name == "path" and (boxes := _BOX.findall(element.get("d", ""))):
            if element.get("fill") == "none":
                continue
            for box in boxes:
                at = [float(each) for each in box]
                whole = (right + at[0], down + at[1], at[2], at[3])
                grounds.append((whole, _role(element, roles)))


def _role(element: ET.Element, roles: dict[str, str]) -> str:
    return roles.get("fill") or f"pattern {element.get('fill')}"


def _under(
    grounds: list[tuple[tuple[float, float, float, float], str]], at: tuple[float, float]
) -> str:
    for (x, y, wide, high), role in reversed(grounds):
        if x <= at[0] <= x + wide and y <= at[1] <= y + high:
            return role
    return _NOTHING


def _placed(
    parent: ET.Element, right: float = 0, down: float = 0, scale: float = 1
) -> Iterator[tuple[ET.Element, float, float, float]]:
    """The elements in the order they are drawn, each with where its own zero lies."""
    for child in parent:
        if child.tag.endswith("defs"):
            continue
        moved = _PLACE.match(child.get("transform", ""))
        here = (right, down, scale)
        if moved:
            here = (
                right + float(moved[1]) * scale,
                down + float(moved[2]) * scale,
                scale * float(moved[3] or 1),
            )
        yield child, *here
        yield from _placed(child, *here)
