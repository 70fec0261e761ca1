"""The few elements of SVG that a picture of the pace is made of; texts are escaped by the library."""

from __future__ import annotations

from xml.etree.ElementTree import Element, SubElement

from service.announce.drawing import NOT_IN_XML, written

_NAMESPACE = "http://www.w3.org/2000/svg"

Number = float | int


class Drawing:
    """One SVG element being drawn, in the order of what lies below what.

    `name` begins its ids, so that several can stand on one page. `title` and `words` say in text
    what the picture shows (`title` and `desc`).
    """

    def __init__(self, name: str, size: tuple[int, int], title: str, words: str) -> None:
        self.name = name
        wide, high = size
        self._root = Element(
            "svg",
            {
                "xmlns": _NAMESPACE,
                "viewBox": f"0 0 {wide} {high}",
                "role": "img",
                "aria-labelledby": f"{name}-title {name}-desc",
                "font-family": "sans-serif",
                "font-size": "14",
            },
        )
        SubElement(self._root, "title", {"id": f"{name}-title"}).text = _plain(title)
        SubElement(self._root, "desc", {"id": f"{name}-desc"}).text = _plain(words)
        self._patterns = SubElement(self._root, "defs")

    def hatching(self, kind: str, colour: str) -> str:
        """A pattern of slanting lines, as a filling."""
        pattern = self._pattern(kind, 8, "rotate(45)")
        drawn = {"x1": "0", "y1": "0", "x2": "0", "y2": "8", "stroke": colour}
        SubElement(pattern, "line", drawn | {"stroke-width": "2.5"})
        return f"url(#{self.name}-{kind})"

    def dots(self, kind: str, colour: str) -> str:
        """A pattern of dots, as a filling."""
        pattern = self._pattern(kind, 6, "")
        SubElement(pattern, "circle", {"cx": "2", "cy": "2", "r": "1.2", "fill": colour})
        return f"url(#{self.name}-{kind})"

    def line(
        self, start: tuple[Number, Number], end: tuple[Number, Number], **how: Number | str
    ) -> None:
        """A straight line."""
        (x1, y1), (x2, y2) = start, end
        self._draw("line", x1=x1, y1=y1, x2=x2, y2=y2, **how)

    def lines(self, points: list[tuple[Number, Number]], **how: Number | str) -> None:
        """Lines from point to point, not filled."""
        self._draw("polyline", points=_joined(points), fill="none", **how)

    def area(self, points: list[tuple[Number, Number]], **how: Number | str) -> None:
        """The area within the points."""
        self._draw("polygon", points=_joined(points), **how)

    def box(
        self, corner: tuple[Number, Number], size: tuple[Number, Number], **how: Number | str
    ) -> None:
        """A rectangle by its top left corner."""
        (x, y), (width, height) = corner, size
        self._draw("rect", x=x, y=y, width=width, height=height, **how)

    def dot(self, at: tuple[Number, Number], radius: Number, **how: Number | str) -> None:
        """A filled circle."""
        self._draw("circle", cx=at[0], cy=at[1], r=radius, **how)

    def text(self, at: tuple[Number, Number], words: str, **how: Number | str) -> None:
        """Words, from `at` on to the right if `how` says nothing else."""
        self._draw("text", x=at[0], y=at[1], **how).text = _plain(words)

    def whole(self) -> str:
        """The element as text."""
        return written(self._root)

    def _pattern(self, kind: str, size: int, turned: str) -> Element:
        told = {
            "id": f"{self.name}-{kind}",
            "width": str(size),
            "height": str(size),
            "patternUnits": "userSpaceOnUse",
        }
        return SubElement(
            self._patterns, "pattern", told | ({"patternTransform": turned} if turned else {})
        )

    def _draw(self, kind: str, **how: Number | str) -> Element:
        named = {name.replace("_", "-"): str(value) for name, value in how.items()}
        return SubElement(self._root, kind, named)


def _plain(words: str) -> str:
    """The words without what no picture may hold: a name may be pasted from anywhere."""
    return NOT_IN_XML.sub("\ufffd", words)


def _joined(points: list[tuple[Number, Number]]) -> str:
    return " ".join(f"{x},{y}" for x, y in points)
