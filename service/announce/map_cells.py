"""The pages of a map: cloth and stitches in layers, then each page's border, number and votes."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, Value, number
from service.announce.map_stitches import needle, running_stitch, star
from service.announce.page_map import PageMap, Sign, page_in_words
from service.announce.palette import border_on_tone, ink_on_tone, tone_of

#: The narrowest cell in which a number can be read, and that has room for a sign.
READABLE = 17.0
ROOM_FOR_SIGN = 26.0
#: What lies under each sign: the colour, and the pattern of stitches or of bare cloth on it.
GROUNDS: dict[Sign, str] = {"stitched": "stitched", "in hand": "in-hand", "unstitched": "cloth"}


@dataclass(frozen=True, slots=True)
class Part:
    """The part of a chart that a map shows: its first column and row, how many of each."""

    column: int
    row: int
    columns: int
    rows: int

    @classmethod
    def whole(cls, shown: PageMap) -> Part:
        """The whole chart."""
        return cls(1, 1, shown.chart.columns, shown.chart.rows)


@dataclass(frozen=True, slots=True)
class Cells:
    """A map's pages ready to be drawn: `page` is a page's size, `links` lead from page to page."""

    shown: PageMap
    part: Part
    page: tuple[float, float]
    links: Mapping[int, str] = field(default_factory=dict)
    most: int = field(init=False)

    def __post_init__(self) -> None:
        # Asked for with every page: counted once.
        most = max((self.shown.votes or {}).values(), default=0)
        object.__setattr__(self, "most", most)

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of the map."""
        return self.page[0] * self.part.columns, self.page[1] * self.part.rows

    @property
    def boxes(self) -> dict[int, tuple[float, float]]:
        """The top left corner of every page that is shown, by page number ascending."""
        found = {}
        for page in self.shown.chart.pages:
            cell = self.shown.chart.cell_of(page)
            right, down = cell.column - self.part.column, cell.row - self.part.row
            if 0 <= right < self.part.columns and 0 <= down < self.part.rows:
                found[page] = (right * self.page[0], down * self.page[1])
        return found

    def tone(self, page: int) -> int | None:
        """The depth of tone of a page's votes; None where no counts are shown."""
        votes = self.shown.votes
        return None if votes is None else tone_of(votes.get(page, 0), self.most)


def draw_pages(brush: Brush, root: ET.Element, cells: Cells, at: tuple[float, float]) -> None:
    """Draw the map with its top left corner at `at`, page after page, as the keyboard goes too."""
    place = f"translate({number(at[0])} {number(at[1])})"
    group = ET.SubElement(root, "g", {"transform": place, "class": "pages"})
    boxes = cells.boxes
    _draw_grounds(brush, group, cells, boxes)
    for page, corner in boxes.items():
        _Page(brush, cells, page, corner).draw(_linked(group, cells, page))
    if cells.shown.winner in boxes:
        x, y = boxes[cells.shown.winner]
        side = min(cells.page) * 0.46
        # On the page's corner and over its neighbours: the number keeps its room.
        star(brush, group, (x + cells.page[0] - side * 0.6, y - side * 0.4, side))


def _draw_grounds(
    brush: Brush, group: ET.Element, cells: Cells, boxes: dict[int, tuple[float, float]]
) -> None:
    """Colours, then stitches, then seams: each one path over all pages that have it.

    The colour lies under the stitches as a shape of its own, since patterns leave hairlines
    between their tiles.
    """
    wide, high = cells.page
    colours: dict[str, list[str]] = defaultdict(list)
    for page, (x, y) in boxes.items():
        sign, tone = cells.shown.sign_of(page), cells.tone(page)
        role = "votable" if tone is None else f"tone-{tone}"
        box = f"M{number(x)} {number(y)}h{number(wide)}v{number(high)}h{number(-wide)}z"
        colours[GROUNDS.get(sign, role)].append(box)
    for role, found in colours.items():
        brush.shape(group, "path", {"d": "".join(found)}, fill=role)
    for pattern in GROUNDS.values():
        if pattern in colours:
            path = {"d": "".join(colours[pattern]), "fill": brush.url(pattern)}
            brush.shape(group, "path", path)
    seams = "".join(box for found in colours.values() for box in found)
    line: dict[str, Value] = {"d": seams, "stroke-width": max(wide * 0.02, 0.4)}
    brush.shape(group, "path", line, fill="", stroke="seam")


def _linked(group: ET.Element, cells: Cells, page: int) -> ET.Element:
    """Where a page is drawn: in a link that says which page it is, where there is one."""
    href = cells.links.get(page)
    if href is None:
        return group
    words = page_in_words(cells.shown, page)
    return ET.SubElement(group, "a", {"href": href, "aria-label": words, "class": "page"})


@dataclass(frozen=True, slots=True)
class _Page:
    """One page on its way onto the map, with its top left corner."""

    brush: Brush
    cells: Cells
    page: int
    corner: tuple[float, float]

    def draw(self, parent: ET.Element) -> None:
        box = (*self.corner, *self.cells.page)
        wide, high = self.cells.page
        if self.page in self.cells.links:
            # A link is hit on its whole page, and shows there that it has the focus.
            sides = {"x": box[0], "y": box[1], "width": wide, "height": high}
            hit = self.brush.shape(parent, "rect", sides)
            hit.attrib |= {"fill": "transparent", "class": "hit"}
        thick = max(min(wide, high) * 0.045, 0.8)
        if self.page == self.cells.shown.winner:
            self._frame(parent, thick * 1.4)
        elif self.page in self.cells.shown.votable:
            role = border_on_tone(self.cells.tone(self.page) or 0)
            running_stitch(self.brush, parent, box, thick, role)
        if wide >= READABLE:
            self._numbers(parent)
        if self._has_needle:
            side = min(wide, high) * 0.33
            needle(self.brush, parent, (box[0] + side * 0.25, box[1] + side * 0.2, side))

    @property
    def _has_needle(self) -> bool:
        in_hand = self.cells.shown.sign_of(self.page) == "in hand"
        return in_hand and self.cells.page[0] >= ROOM_FOR_SIGN

    def _frame(self, parent: ET.Element, thick: float) -> None:
        """The winner's frame, with a line inside it that parts it from any tone."""
        (x, y), (wide, high) = self.corner, self.cells.page
        for inset, line, role in (
            (thick * 1.25, thick * 0.5, "patch"),
            (thick / 2, thick, "winner-thread"),
        ):
            sides = {"width": wide - 2 * inset, "height": high - 2 * inset}
            where = {"x": x + inset, "y": y + inset, "stroke-width": line}
            self.brush.shape(parent, "rect", where | sides, fill="", stroke=role)

    def _numbers(self, parent: ET.Element) -> None:
        (x, y), (wide, high) = self.corner, self.cells.page
        shown, sign = self.cells.shown, self.cells.shown.sign_of(self.page)
        votes = (shown.votes or {}).get(self.page, 0) if self.page in shown.votable else 0
        size = _fitting(str(self.page), wide * 0.8, min(wide, high) * 0.36)
        middle = y + high * (0.4 if votes else 0.6 if self._has_needle else 0.5)
        if sign in ("stitched", "in hand"):
            self._patch(parent, (x + wide / 2, middle), size)
        tone = self.cells.tone(self.page)
        role = "soft-ink" if sign == "unstitched" else "ink"
        if sign == "votable" and tone is not None:
            role = ink_on_tone(tone)
        where = (x + wide / 2, middle + size * 0.36, size)
        self.brush.text(parent, str(self.page), where, role=role, bold=sign != "unstitched")
        if votes:
            self._pill(parent, (x + wide / 2, y + high * 0.75), votes)

    def _patch(self, parent: ET.Element, middle: tuple[float, float], size: float) -> None:
        """A clean patch, so that a number can be read among stitches."""
        wide, high = size * (0.62 * len(str(self.page)) + 0.55), size * 1.25
        where = {"x": middle[0] - wide / 2, "y": middle[1] - high / 2, "width": wide}
        sides = {"height": high, "rx": size * 0.25}
        self.brush.shape(parent, "rect", where | sides, fill="patch")

    def _pill(self, parent: ET.Element, middle: tuple[float, float], votes: int) -> None:
        """The votes, on a label of their own."""
        words, wide = in_short(votes), self.cells.page[0]
        size = _fitting(words, wide * 0.62, wide * 0.25)
        across, high = size * (0.6 * len(words) + 0.9), size * 1.35
        where = {"x": middle[0] - across / 2, "y": middle[1] - high / 2, "width": across}
        is_pale = ink_on_tone(self.cells.tone(self.page) or 0) == "ink"
        label, ink = ("votable-thread", "on-tone") if is_pale else ("patch", "ink")
        self.brush.shape(parent, "rect", where | {"height": high, "rx": high / 2}, fill=label)
        at = (middle[0], middle[1] + size * 0.36, size)
        self.brush.text(parent, words, at, role=ink, bold=True)


def in_short(votes: int) -> str:
    """Votes as they fit into a page: in full to 9,999, then in thousands cut down."""
    return str(votes) if votes < 10_000 else f"{votes // 1000}k"


def _fitting(words: str, room: float, size: float) -> float:
    """The size of digits that fit into the room, at most `size`."""
    return min(size, room / (0.6 * len(words)))
