"""The map as a picture: alone in its natural size, or set into a frame for a post or a video."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal, get_args
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, picture, written
from service.announce.map_blocks import HeadingBlock, LegendBlock
from service.announce.map_cells import Cells, draw_pages
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


def _natural(shown: PageMap, look: Look) -> str:
    chart = shown.chart
    wide = min(_BROADEST, max(_NARROWEST, 760 / max(chart.columns, chart.rows)))
    cells = Cells(shown, _page_size(shown, wide), look.links)
    bare = not (look.heading or look.legend)
    inner = cells.size[0] if bare else max(cells.size[0], 420.0)
    size = max(15.0, inner / 46)
    margin = wide * 0.22 if bare else size * 1.4
    parts = _Parts.of(shown, look, inner, size)
    high = parts.above + cells.size[1] + parts.below
    whole = (inner + 2 * margin, high + 2 * margin)
    root, brush = _begun(shown, look, whole, cells)
    parts.draw_heading(brush, root, (margin, margin))
    middle = margin + (inner - cells.size[0]) / 2
    draw_pages(brush, root, cells, (middle, margin + parts.above))
    parts.draw_legend(brush, root, (margin, margin + high))
    return written(root)


def _framed(shown: PageMap, look: Look) -> str:
    wide, high = FRAMES[look.shape]
    margin, size = high * 0.045, high / 38
    room = (wide - 2 * margin, high - 2 * margin)
    beside = look.shape != "square"
    column = room[0] * 0.36 if beside else room[0]
    parts = _Parts.of(shown, look, column, size, lines=5 if beside else 2)
    if not (look.heading or look.legend):
        column = 0.0
    left = (room[0] - (column + margin if column and beside else 0), room[1])
    if not beside:
        left = (room[0], room[1] - parts.above - parts.below)
    cells = Cells(shown, _page_size_in(shown, left), look.links)
    root, brush = _begun(shown, look, (float(wide), float(high)), cells)
    parts.draw_heading(brush, root, (margin, margin))
    parts.draw_legend(brush, root, (margin, high - margin))
    x = wide - margin - left[0] + (left[0] - cells.size[0]) / 2
    y = margin + (0 if beside else parts.above) + (left[1] - cells.size[1]) / 2
    draw_pages(brush, root, cells, (x, y))
    return written(root)


def _begun(
    shown: PageMap, look: Look, size: tuple[float, float], cells: Cells
) -> tuple[ET.Element, Brush]:
    """The picture with its ground and its patterns."""
    told = (shown.title or "Map of the pages", map_in_words(shown))
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


def _page_size_in(shown: PageMap, room: tuple[float, float]) -> tuple[float, float]:
    """The largest page with which the whole map fits into the room."""
    across, down = _page_size(shown, 1.0)
    chart = shown.chart
    scale = min(room[0] / (across * chart.columns), room[1] / (down * chart.rows))
    return across * scale, down * scale


@dataclass(frozen=True, slots=True)
class _Parts:
    """Heading and legend of a picture, as far as they are wanted; `gap` parts them from the map."""

    heading: HeadingBlock | None
    legend: LegendBlock | None
    gap: float
    plain: bool

    @classmethod
    def of(
        cls, shown: PageMap, look: Look, wide: float, size: float, lines: int = 2
    ) -> _Parts:
        heading = HeadingBlock(shown.title, shown.caption, wide, size, lines)
        legend = LegendBlock(shown, wide, size * 0.9)
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
            self._label(brush, root, at, (self.heading.wide, self.heading.height))
            self.heading.draw(brush, root, at)

    def draw_legend(self, brush: Brush, root: ET.Element, at: tuple[float, float]) -> None:
        """The legend, its bottom left corner at `at`."""
        if self.legend is not None:
            top = (at[0], at[1] - self.legend.height)
            self._label(brush, root, top, (self.legend.wide, self.legend.height))
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
