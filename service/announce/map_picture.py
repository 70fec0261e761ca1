"""The map as a picture: alone in its natural size, or set into a frame for a post or a video."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from math import sqrt
from typing import Literal, get_args
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, picture, written
from service.announce.map_blocks import HeadingBlock, LegendBlock
from service.announce.map_cells import ROOM_FOR_SIGN, Cells, Part, draw_pages
from service.announce.map_stitches import define_patterns
from service.announce.page_map import PageMap, map_in_words
from service.announce.palette import Theme

Shape = Literal["map", "square", "wide", "video"]
SHAPES: tuple[Shape, ...] = get_args(Shape)

#: Width and height in pixels: a square post, a wide post, a frame of full HD video.
#: Common practice, no source.
FRAMES: dict[Shape, tuple[int, int]] = {
    "square": (1080, 1080),
    "wide": (1200, 630),
    "video": (1920, 1080),
}
#: A page's width in a map of its own.
_NARROWEST, _BROADEST = 44.0, 120.0
#: The least width of heading and legend.
_ROOM_FOR_WORDS = 420.0
#: The margin of a frame, as a share of its height.
_MARGIN = 0.05
#: Lines of a caption's size that a frame is high; lines of a title above and beside a map.
_LINES: dict[Shape, float] = {"square": 38.0, "wide": 27.0, "video": 32.0}
_LINES_ABOVE, _LINES_BESIDE = 3, 5
#: How far a page's sides may differ, so that numbers find room.
_SLIMMEST = 0.7


@dataclass(frozen=True, slots=True)
class Look:
    """How a map is drawn.

    `plain` leaves the ground transparent, to be laid over a video. `links` are addresses by page,
    which make the map one that can be clicked and reached by keyboard. `ids` begins all ids of the
    picture: give another one to each picture in a page.
    """

    theme: Theme = "light"
    shape: Shape = "map"
    plain: bool = False
    heading: bool = True
    legend: bool = True
    ids: str = "map"
    links: Mapping[int, str] = field(default_factory=dict)


def draw_map(shown: PageMap, look: Look | None = None) -> str:
    """The map as SVG, for a page (inline) and for a file alike.

    Its title is the map's own; its description is `map_in_words`.
    """
    look = look or Look()
    return _natural(shown, look) if look.shape == "map" else _framed(shown, look)


def picture_in_words(shown: PageMap, look: Look | None = None) -> str:
    """The alternative text of the map as it is drawn: it says where only a part is shown."""
    said = map_in_words(shown)
    if look is None or look.shape == "map":
        return said
    part = _plan(shown, look).part
    if part == Part.whole(shown):
        return said
    columns = f"columns {part.column} to {part.column + part.columns - 1}"
    rows = f"rows {part.row} to {part.row + part.rows - 1}"
    return f"{said} The picture shows only {columns} and {rows}."


def size_of(shown: PageMap, look: Look) -> tuple[float, float]:
    """Width and height of the map as it is drawn, in pixels."""
    if look.shape != "map":
        wide, high = FRAMES[look.shape]
        return float(wide), float(high)
    return _Natural.of(shown, look).size


@dataclass(frozen=True, slots=True)
class _Natural:
    """The measures of a map of its own: its pages, words, margin, the width between margins."""

    cells: Cells
    words: _Words
    margin: float
    inner: float

    @classmethod
    def of(cls, shown: PageMap, look: Look) -> _Natural:
        part = Part.whole(shown)
        wide = min(_BROADEST, max(_NARROWEST, 760 / max(part.columns, part.rows)))
        cells = Cells(shown, part, _page_size(shown, wide), look.links)
        bare = not (look.heading or look.legend)
        inner = cells.size[0] if bare else max(cells.size[0], _ROOM_FOR_WORDS)
        size = max(15.0, min(inner / 46, sqrt(inner * cells.size[1]) / 30))
        margin = wide * 0.22 if bare else size * 1.4
        return cls(cells, _Words.of(shown, look, inner, size), margin, inner)

    @property
    def high(self) -> float:
        return self.words.above + self.cells.size[1] + self.words.below

    @property
    def size(self) -> tuple[float, float]:
        return self.inner + 2 * self.margin, self.high + 2 * self.margin


def _natural(shown: PageMap, look: Look) -> str:
    plan = _Natural.of(shown, look)
    root, brush = _begun(shown, look, plan.size, plan.cells)
    plan.words.draw_heading(brush, root, (plan.margin, plan.margin))
    middle = plan.margin + (plan.inner - plan.cells.size[0]) / 2
    draw_pages(brush, root, plan.cells, (middle, plan.margin + plan.words.above))
    plan.words.draw_legend(brush, root, (plan.margin, plan.margin + plan.high))
    return written(root)


def _framed(shown: PageMap, look: Look) -> str:
    wide, high = FRAMES[look.shape]
    margin = high * _MARGIN
    plan = _plan(shown, look)
    cells = Cells(shown, plan.part, plan.page, look.links)
    root, brush = _begun(shown, look, (float(wide), float(high)), cells)
    plan.words.draw_heading(brush, root, (margin, margin))
    plan.words.draw_legend(brush, root, (margin, high - margin))
    x = wide - margin - plan.room[0] + (plan.room[0] - cells.size[0]) / 2
    above = plan.words.above if look.shape == "square" else 0.0
    y = margin + above + (plan.room[1] - cells.size[1]) / 2
    draw_pages(brush, root, cells, (x, y))
    return written(root)


@dataclass(frozen=True, slots=True)
class _Plan:
    """How a frame is divided: its words, the room left, what of the chart is shown, a page's size."""

    words: _Words
    room: tuple[float, float]
    part: Part
    page: tuple[float, float]


def _plan(shown: PageMap, look: Look) -> _Plan:
    wide, high = FRAMES[look.shape]
    margin, size = high * _MARGIN, high / _LINES[look.shape]
    has_words, beside = look.heading or look.legend, look.shape != "square"
    room = (wide - 2 * margin, high - 2 * margin)
    column = room[0] * 0.34 if beside else room[0]
    words = _Words.of(shown, look, column, size, beside=beside)
    if has_words and beside:
        room = (room[0] - column - margin, room[1])
    elif has_words:
        room = (room[0], room[1] - words.above - words.below)
    return _Plan(words, room, *_part_in(shown, room))


def _begun(
    shown: PageMap, look: Look, size: tuple[float, float], cells: Cells
) -> tuple[ET.Element, Brush]:
    """The picture with its ground and its patterns."""
    told = (shown.title or "Map of the pages", picture_in_words(shown, look))
    root = picture(size, look.ids, told, has_links=bool(look.links))
    brush = Brush(look.theme, look.ids)
    define_patterns(brush, root, cells.page)
    if not look.plain:
        brush.shape(root, "rect", {"width": size[0], "height": size[1]}, fill="ground")
    return root, brush


def _page_size(shown: PageMap, wide: float) -> tuple[float, float]:
    """A page of that width, as high as its stitches make it, where they are known."""
    size = shown.chart.size
    side = 1.0 if size is None else size.page_high / size.page_wide
    return wide, wide * min(1 / _SLIMMEST, max(_SLIMMEST, side))


def _part_in(shown: PageMap, room: tuple[float, float]) -> tuple[Part, tuple[float, float]]:
    """What of the chart is shown in the room, and the size of a page there.

    It is the whole chart, unless its numbers could not be read: then it is what the round is
    about, with the pages around.
    """
    whole = Part.whole(shown)
    page = _page_size_in(shown, whole, room)
    near = _part_of_interest(shown)
    if page[0] >= ROOM_FOR_SIGN or near is None:
        return whole, page
    return near, _page_size_in(shown, near, room)


def _part_of_interest(shown: PageMap) -> Part | None:
    """The pages that can be chosen, the winner and those in hand, with one page around them."""
    wanted = shown.votable | shown.in_hand | ({shown.winner} - {None})
    if not wanted:
        return None
    cells = [shown.chart.cell_of(page) for page in wanted if page is not None]
    left = max(1, min(cell.column for cell in cells) - 1)
    top = max(1, min(cell.row for cell in cells) - 1)
    right = min(shown.chart.columns, max(cell.column for cell in cells) + 1)
    low = min(shown.chart.rows, max(cell.row for cell in cells) + 1)
    return Part(left, top, right - left + 1, low - top + 1)


def _page_size_in(shown: PageMap, part: Part, room: tuple[float, float]) -> tuple[float, float]:
    """The largest page with which that part fits into the room."""
    across, down = _page_size(shown, 1.0)
    scale = min(room[0] / (across * part.columns), room[1] / (down * part.rows), _BROADEST * 2)
    return across * scale, down * scale


@dataclass(frozen=True, slots=True)
class _Words:
    """Heading and legend of a picture, as far as they are wanted; `gap` parts them from the map."""

    heading: HeadingBlock | None
    legend: LegendBlock | None
    gap: float
    plain: bool

    @classmethod
    def of(
        cls, shown: PageMap, look: Look, wide: float, size: float, *, beside: bool = False
    ) -> _Words:
        lines = _LINES_BESIDE if beside else _LINES_ABOVE
        heading = HeadingBlock(shown.title, shown.caption, wide, size, lines)
        legend = LegendBlock(shown, wide, size * (0.8 if beside else 0.9), beside)
        return cls(
            heading if look.heading else None, legend if look.legend else None, size, look.plain
        )

    @property
    def above(self) -> float:
        return 0.0 if self.heading is None else self.heading.height + self.gap

    @property
    def below(self) -> float:
        return 0.0 if self.legend is None else self.legend.height + self.gap

    def draw_heading(self, brush: Brush, root: ET.Element, at: tuple[float, float]) -> None:
        """The heading, its top left corner at `at`."""
        if self.heading is not None:
            self._label(brush, root, at, (self.heading.width, self.heading.height))
            self.heading.draw(brush, root, at)

    def draw_legend(self, brush: Brush, root: ET.Element, at: tuple[float, float]) -> None:
        """The legend, its bottom left corner at `at`."""
        if self.legend is not None:
            top = (at[0], at[1] - self.legend.height)
            self._label(brush, root, top, (self.legend.width, self.legend.height))
            self.legend.draw(brush, root, top)

    def _label(
        self, brush: Brush, root: ET.Element, at: tuple[float, float], size: tuple[float, float]
    ) -> None:
        """Without a ground words stand on a label, so that they can be read on any picture."""
        if self.plain:
            edge = self.gap * 0.4
            box = {"x": at[0] - edge, "y": at[1] - edge, "rx": edge}
            sides = {"width": size[0] + 2 * edge, "height": size[1] + 2 * edge}
            brush.shape(root, "rect", box | sides, fill="ground")
