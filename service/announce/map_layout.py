"""Where everything stands in a picture of a map: measures of the map, its words, its frame."""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush
from service.announce.map_blocks import HeadingBlock, LegendBlock
from service.announce.map_cells import ROOM_FOR_SIGN, Cells, Part
from service.announce.map_look import FRAMES, Look, Shape
from service.announce.page_map import PageMap
from service.announce.text_fit import width_of

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
class Natural:
    """The measures of a map of its own: its pages, words, margin, the width between margins."""

    cells: Cells
    words: Words
    margin: float
    inner: float

    @classmethod
    def of(cls, shown: PageMap, look: Look) -> Natural:
        """The measures for that look."""
        part = Part.whole(shown)
        wide = min(_BROADEST, max(_NARROWEST, 760 / max(part.columns, part.rows)))
        cells = Cells(shown, part, _page_size(shown, wide), look.links)
        bare = not (look.heading or look.legend)
        inner = cells.size[0] if bare else max(cells.size[0], _ROOM_FOR_WORDS)
        size = max(15.0, min(inner / 46, sqrt(inner * cells.size[1]) / 30))
        margin = wide * 0.22 if bare else size * 1.4
        return cls(cells, Words.of(shown, look, inner, size), margin, inner)

    @property
    def high(self) -> float:
        """The height between the margins."""
        return self.words.above + self.cells.size[1] + self.words.below

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of the picture."""
        return self.inner + 2 * self.margin, self.high + 2 * self.margin


@dataclass(frozen=True, slots=True)
class Frame:
    """How a frame is divided.

    `room` is what is left for the map beside the words, `corner` its top left; `part` is what of the
    chart is shown there, `page` a page's size. `note` says which part, empty for the whole.
    """

    size: tuple[float, float]
    margin: float
    words: Words
    corner: tuple[float, float]
    room: tuple[float, float]
    part: Part
    page: tuple[float, float]
    note: str
    letters: float

    def draw_note(self, brush: Brush, root: ET.Element, at: tuple[float, float]) -> None:
        """The note, centred below `at`; without a ground on a label of its own."""
        words, size = f"Only {self.note}", self.letters
        if self.words.plain:
            wide = width_of(words, size)
            box = {"x": at[0] - wide / 2, "y": at[1] + size * 0.25, "rx": size * 0.3}
            brush.shape(root, "rect", box | {"width": wide, "height": size * 1.4}, fill="ground")
        brush.text(root, words, (at[0], at[1] + size * 1.3, size), role="soft-ink")


def frame_of(shown: PageMap, look: Look) -> Frame:
    """How the frame of that look is divided for that map."""
    wide, high = (float(side) for side in FRAMES[look.shape])
    margin, size = high * _MARGIN, high / _LINES[look.shape]
    has_words, beside = look.heading or look.legend, look.shape != "square"
    room = (wide - 2 * margin, high - 2 * margin)
    column = room[0] * 0.34 if beside else room[0]
    words = Words.of(shown, look, column, size, beside=beside)
    if has_words and beside:
        room = (room[0] - column - margin, room[1])
    elif has_words:
        room = (room[0], room[1] - words.above - words.below)
    letters = size * 0.8
    part, page = _part_in(shown, room, letters * 2)
    note = ""
    if part != Part.whole(shown):
        room = (room[0], room[1] - letters * 2)
        columns = f"columns {part.column} to {part.column + part.columns - 1}"
        note = f"{columns} and rows {part.row} to {part.row + part.rows - 1}"
    corner = (wide - margin - room[0], margin + (0 if beside else words.above))
    return Frame((wide, high), margin, words, corner, room, part, page, note, letters)


def _page_size(shown: PageMap, wide: float) -> tuple[float, float]:
    """A page of that width, as high as its stitches make it, where they are known."""
    size = shown.chart.size
    side = 1.0 if size is None else size.page_high / size.page_wide
    return wide, wide * min(1 / _SLIMMEST, max(_SLIMMEST, side))


def _part_in(
    shown: PageMap, room: tuple[float, float], note: float
) -> tuple[Part, tuple[float, float]]:
    """What of the chart is shown in the room, and the size of a page there.

    It is the whole chart, unless its numbers could not be read: then it is what the round is
    about, with the pages around, and `note` is left below it to say so.
    """
    whole = Part.whole(shown)
    page = _page_size_in(shown, whole, room)
    near = _part_of_interest(shown)
    if page[0] >= ROOM_FOR_SIGN or near is None:
        return whole, page
    return near, _page_size_in(shown, near, (room[0], room[1] - note))


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
class Words:
    """Heading and legend of a picture, as far as they are wanted; `gap` parts them from the map."""

    heading: HeadingBlock | None
    legend: LegendBlock | None
    gap: float
    plain: bool

    @classmethod
    def of(
        cls, shown: PageMap, look: Look, wide: float, size: float, *, beside: bool = False
    ) -> Words:
        """The words that are wanted, as wide as they may be; `size` is that of their letters."""
        lines = _LINES_BESIDE if beside else _LINES_ABOVE
        heading = HeadingBlock(shown.title, shown.caption, wide, size, lines)
        legend = LegendBlock(shown, wide, size * (0.8 if beside else 0.9), beside)
        return cls(
            heading if look.heading else None, legend if look.legend else None, size, look.plain
        )

    @property
    def above(self) -> float:
        """What the heading takes above a map."""
        return 0.0 if self.heading is None else self.heading.height + self.gap

    @property
    def below(self) -> float:
        """What the legend takes below a map."""
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
