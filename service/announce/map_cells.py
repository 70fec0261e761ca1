"""The pages of a map, each in its cell: cloth, stitches, border, number, votes, sign."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush
from service.announce.map_stitches import needle, running_stitch, star
from service.announce.page_map import PageMap, Sign, page_in_words
from service.announce.palette import ink_on_tone, tone_of

#: The narrowest cell in which a number can be read, and that has room for a sign.
READABLE = 17.0
ROOM_FOR_SIGN = 26.0


@dataclass(frozen=True, slots=True)
class Cells:
    """A map's pages ready to be drawn: `page` is a page's size, `links` lead from page to page."""

    shown: PageMap
    page: tuple[float, float]
    links: Mapping[int, str] = field(default_factory=dict)

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of the map."""
        return self.page[0] * self.shown.chart.columns, self.page[1] * self.shown.chart.rows


def draw_pages(brush: Brush, root: ET.Element, cells: Cells, at: tuple[float, float]) -> None:
    """Draw the map with its top left corner at `at`, page after page, as the keyboard goes too."""
    shown = cells.shown
    votes = dict(shown.votes or ())
    most = max(votes.values(), default=0)
    place = f"translate({at[0]:.2f} {at[1]:.2f})"
    group = ET.SubElement(root, "g", {"transform": place, "class": "pages"})
    for page in shown.chart.pages:
        depth = tone_of(votes.get(page, 0), most) if shown.votes is not None else None
        _Page(brush, cells, page, votes.get(page, 0), depth).draw(_linked(group, cells, page))
    if shown.winner is not None:
        _draw_star(brush, group, cells, shown.winner)


def _draw_star(brush: Brush, group: ET.Element, cells: Cells, winner: int) -> None:
    """The winner's star, on its page's corner and over its neighbours."""
    cell = cells.shown.chart.cell_of(winner)
    wide, high = cells.page
    side = min(wide, high) * 0.46
    where = (cell.column * wide - side * 0.6, (cell.row - 1) * high - side * 0.4, side)
    star(brush, group, where)


def _linked(group: ET.Element, cells: Cells, page: int) -> ET.Element:
    """Where a page is drawn: in a link that says which page it is, where there is one."""
    href = cells.links.get(page)
    if href is None:
        return group
    words = page_in_words(cells.shown, page)
    return ET.SubElement(group, "a", {"href": href, "aria-label": words, "class": "page"})


@dataclass(frozen=True, slots=True)
class _Page:
    """One page on its way onto the map; `tone` is None where no counts are shown."""

    brush: Brush
    cells: Cells
    page: int
    votes: int
    tone: int | None

    @property
    def sign(self) -> Sign:
        return self.cells.shown.sign_of(self.page)

    @property
    def box(self) -> tuple[float, float, float, float]:
        cell = self.cells.shown.chart.cell_of(self.page)
        wide, high = self.cells.page
        return (cell.column - 1) * wide, (cell.row - 1) * high, wide, high

    def draw(self, parent: ET.Element) -> None:
        self._ground(parent)
        x, y, wide, high = self.box
        thick = max(min(wide, high) * 0.045, 0.8)
        if self._has_won:
            self._frame(parent, thick * 1.4)
        elif self._is_votable:
            running_stitch(self.brush, parent, self.box, thick)
        if wide >= READABLE:
            self._numbers(parent)
        if self._has_needle:
            side = min(wide, high) * 0.3
            needle(self.brush, parent, (x + side * 0.25, y + side * 0.25, side))

    @property
    def _is_votable(self) -> bool:
        return self.page in self.cells.shown.votable

    @property
    def _has_needle(self) -> bool:
        return self.sign == "in hand" and self.cells.page[0] >= ROOM_FOR_SIGN

    @property
    def _has_won(self) -> bool:
        return self.page == self.cells.shown.winner

    def _ground(self, parent: ET.Element) -> None:
        x, y, wide, high = self.box
        fills = {"stitched": "stitched", "in hand": "in-hand", "unstitched": "cloth"}
        where = {"x": x, "y": y, "width": wide, "height": high}
        line = {"stroke-width": max(wide * 0.02, 0.4)}
        if self.sign == "votable":
            role = "votable" if self.tone is None else f"tone-{self.tone}"
            self.brush.shape(parent, "rect", where | line, fill=role, stroke="seam")
            return
        drawn = self.brush.shape(parent, "rect", where | line, stroke="seam")
        drawn.set("fill", self.brush.url(fills[self.sign]))

    def _frame(self, parent: ET.Element, thick: float) -> None:
        """The winner's frame, with a line inside it that parts it from any tone."""
        x, y, wide, high = self.box
        for inset, line, role in (
            (thick * 1.25, thick * 0.5, "patch"),
            (thick / 2, thick, "winner-thread"),
        ):
            sides = {"width": wide - 2 * inset, "height": high - 2 * inset}
            where = {"x": x + inset, "y": y + inset, "stroke-width": line}
            self.brush.shape(parent, "rect", where | sides, fill="", stroke=role)

    def _numbers(self, parent: ET.Element) -> None:
        x, y, wide, high = self.box
        size = _fitting(str(self.page), wide * 0.8, min(wide, high) * 0.36)
        has_votes = self.tone is not None and self._is_votable and self.votes > 0
        middle = y + high * (0.4 if has_votes else 0.6 if self._has_needle else 0.5)
        on_stitches = self.sign in ("stitched", "in hand")
        if on_stitches:
            self._patch(parent, (x + wide / 2, middle), size)
        role = "ink" if self.sign != "unstitched" else "soft-ink"
        if self.sign == "votable" and self.tone is not None:
            role = ink_on_tone(self.tone)
        where = (x + wide / 2, middle + size * 0.36, size)
        bold = self.sign != "unstitched"
        self.brush.text(parent, str(self.page), where, role=role, bold=bold)
        if has_votes:
            self._pill(parent, (x + wide / 2, y + high * 0.75), wide)

    def _patch(self, parent: ET.Element, middle: tuple[float, float], size: float) -> None:
        """A clean patch, so that a number can be read among stitches."""
        wide, high = size * (0.62 * len(str(self.page)) + 0.55), size * 1.25
        where = {"x": middle[0] - wide / 2, "y": middle[1] - high / 2, "width": wide}
        self.brush.shape(
            parent, "rect", where | {"height": high, "rx": size * 0.25}, fill="patch"
        )

    def _pill(self, parent: ET.Element, middle: tuple[float, float], wide: float) -> None:
        """The votes, on a label of their own."""
        words = in_short(self.votes)
        size = _fitting(words, wide * 0.62, wide * 0.25)
        across, high = size * (0.6 * len(words) + 0.9), size * 1.35
        where = {"x": middle[0] - across / 2, "y": middle[1] - high / 2, "width": across}
        pale = self.tone is not None and ink_on_tone(self.tone) == "ink"
        label, ink = ("votable-thread", "on-tone") if pale else ("patch", "ink")
        self.brush.shape(parent, "rect", where | {"height": high, "rx": high / 2}, fill=label)
        at = (middle[0], middle[1] + size * 0.36, size)
        self.brush.text(parent, words, at, role=ink, bold=True)


def in_short(votes: int) -> str:
    """Votes as they fit into a page: in full to 9,999, then in thousands cut down."""
    return str(votes) if votes < 10_000 else f"{votes // 1000}k"


def _fitting(words: str, room: float, size: float) -> float:
    """The size of digits that fit into the room, at most `size`."""
    return min(size, room / (0.6 * len(words)))
