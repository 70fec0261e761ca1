"""What every picture is drawn with: elements of SVG, coloured by role, with all text escaped.

Nothing here writes a style attribute or a style element, so that a picture may stand inline in a
page with a strict Content-Security-Policy.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from xml.etree import ElementTree as ET

from service.announce.palette import PALETTES, Theme

FONTS = "Noto Sans, system-ui, sans-serif"
#: What XML 1.0 cannot hold (section 2.2, production 2).
NOT_IN_XML = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")

Value = str | float


class Brush:
    """Draws into one parent after another in the colours of a theme.

    `ids` begins the ids of the picture, so that several may stand in one page.
    """

    def __init__(self, theme: Theme, ids: str = "map") -> None:
        self.theme: Theme = theme
        self.ids = ids
        self._colours = PALETTES[theme]

    def shape(
        self,
        parent: ET.Element,
        name: str,
        where: Mapping[str, Value],
        *,
        fill: str | None = None,
        stroke: str | None = None,
    ) -> ET.Element:
        """An element in `parent`; `fill` and `stroke` are roles, "" for none of it."""
        attributes = {key: number(value) for key, value in where.items()}
        classes = []
        for kind, role in (("fill", fill), ("stroke", stroke)):
            if role:
                classes.append(f"{kind}-{role}")
                attributes[kind] = self._colours[role]
            elif role == "":
                attributes[kind] = "none"
        if classes:
            attributes["class"] = " ".join(classes)
        return ET.SubElement(parent, name, attributes)

    def text(
        self,
        parent: ET.Element,
        words: str,
        where: tuple[float, float, float],
        *,
        role: str = "ink",
        anchor: str = "middle",
        bold: bool = False,
    ) -> ET.Element:
        """A line of text at `where`: x, the baseline's y, the size."""
        x, y, size = where
        attributes: dict[str, Value] = {"x": x, "y": y, "font-size": size}
        if anchor != "start":
            attributes["text-anchor"] = anchor
        if bold:
            attributes["font-weight"] = "bold"
        line = self.shape(parent, "text", attributes, fill=role)
        line.text = clean(words)
        return line

    def url(self, what: str) -> str:
        """The reference to a pattern of this picture."""
        return f"url(#{self.ids}-{what})"


def number(value: Value) -> str:
    """A number as short as it can be written; text as it is, without what XML cannot hold."""
    if isinstance(value, str):
        return clean(value)
    return f"{value:.2f}".rstrip("0").rstrip(".")


def clean(words: str) -> str:
    """The words without characters that XML cannot hold."""
    return NOT_IN_XML.sub("", words)


def picture(
    size: tuple[float, float], ids: str, told: tuple[str, str], *, has_links: bool = False
) -> ET.Element:
    """The root of a picture of that size; `told` are its title and its alternative text.

    One with links is a group, since the parts of an image cannot be reached.
    """
    wide, high = (number(side) for side in size)
    root = ET.Element(
        "svg",
        {
            "xmlns": "http://www.w3.org/2000/svg",
            "viewBox": f"0 0 {wide} {high}",
            "width": wide,
            "height": high,
            "class": "picture",
            "role": "group" if has_links else "img",
            "aria-labelledby": f"{ids}-title",
            "aria-describedby": f"{ids}-desc",
            "font-family": FONTS,
        },
    )
    for name, words in zip(("title", "desc"), told, strict=True):
        ET.SubElement(root, name, {"id": f"{ids}-{name}"}).text = clean(words)
    return root


def written(root: ET.Element) -> str:
    """The picture as text, to stand in a page or in a file."""
    return ET.tostring(root, encoding="unicode")
