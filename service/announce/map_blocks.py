"""What stands beside a map: its heading and its legend, each as a block that knows its height."""

from __future__ import annotations

from dataclasses import dataclass
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush
from service.announce.map_cells import GROUNDS
from service.announce.map_stitches import needle, running_stitch, star
from service.announce.page_map import SIGNS, PageMap, Sign, meaning_of
from service.announce.palette import TONES
from service.announce.text_fit import broken, width_of

_LINE = 1.3


@dataclass(frozen=True, slots=True)
class HeadingBlock:
    """Title and caption in lines that fit into `wide`; `size` is that of the caption's letters."""

    title: str
    caption: str
    wide: float
    size: float
    lines: int = 2

    @property
    def _title_size(self) -> float:
        return self.size * 1.55

    @property
    def _title_lines(self) -> list[str]:
        return broken(self.title, self._title_size, self.wide, self.lines)

    @property
    def _caption_lines(self) -> list[str]:
        return broken(self.caption, self.size, self.wide, self.lines)

    @property
    def height(self) -> float:
        """How high the block is."""
        title = len(self._title_lines) * self._title_size
        return (title + len(self._caption_lines) * self.size) * _LINE

    @property
    def width(self) -> float:
        """How wide the lines are, about."""
        sizes = ((self._title_lines, self._title_size), (self._caption_lines, self.size))
        found = (width_of(line, size) for lines, size in sizes for line in lines)
        return min(self.wide, max(found, default=0.0))

    def draw(self, brush: Brush, parent: ET.Element, at: tuple[float, float]) -> None:
        """Draw the block with its top left corner at `at`."""
        x, y = at
        for lines, size, role in (
            (self._title_lines, self._title_size, "ink"),
            (self._caption_lines, self.size, "soft-ink"),
        ):
            for line in lines:
                y += size * _LINE
                where = (x, y - size * 0.32, size)
                brush.text(parent, line, where, role=role, anchor="start", bold=role == "ink")


@dataclass(frozen=True, slots=True)
class LegendBlock:
    """What the signs of a map mean, in rows that fit into `wide`; `size` is that of its letters.

    A sign is explained only where the map shows it.
    `stacked` gives each sign a row of its own.
    """

    shown: PageMap
    wide: float
    size: float
    stacked: bool = False

    @property
    def items(self) -> list[tuple[Sign, str]]:
        """The signs that the map shows, with what they mean and on how many pages they are."""
        found = []
        for sign in SIGNS:
            pages = len(self.shown.pages_shown_as(sign))
            if pages:
                meaning = meaning_of(self.shown, sign)
                counted = meaning if sign == "winner" else f"{meaning} ({pages:,})"
                found.append((sign, counted))
        return found

    @property
    def _rows(self) -> list[list[tuple[Sign | None, str, float]]]:
        """The items in rows, each with its width; None is the scale of votes."""
        items: list[tuple[Sign | None, str, float]] = [
            (sign, words, self.size * 2.4 + width_of(words, self.size))
            for sign, words in self.items
        ]
        if self.shown.votes is not None:
            scale = self.size * (1.5 * (TONES + 1) + 0.6)
            items.append((None, _SCALE, scale + width_of(_SCALE, self.size)))
        rows: list[list[tuple[Sign | None, str, float]]] = []
        used = 0.0
        for item in items:
            if not rows or self.stacked or used + item[2] > self.wide:
                rows.append([])
                used = 0.0
            rows[-1].append(item)
            used += item[2] + self.size * 1.2
        return rows

    @property
    def height(self) -> float:
        """How high the block is."""
        return len(self._rows) * self._step - self.size * 0.4

    @property
    def width(self) -> float:
        """How wide the rows are in fact."""
        gap = self.size * 1.2
        return max(sum(item[2] + gap for item in row) - gap for row in self._rows)

    @property
    def _step(self) -> float:
        return self.size * 2.1

    def draw(self, brush: Brush, parent: ET.Element, at: tuple[float, float]) -> None:
        """Draw the block with its top left corner at `at`."""
        group = ET.SubElement(parent, "g", {"aria-hidden": "true"})
        side = self.size * 1.7
        for step, row in enumerate(self._rows):
            x, y = at[0], at[1] + step * self._step
            for sign, words, wide in row:
                baseline = y + side / 2 + self.size * 0.36
                if sign is None:
                    beside = _scale(brush, group, (x, y, side), self.size)
                else:
                    draw_swatch(brush, group, (x, y, side), sign)
                    beside = side + self.size * 0.6
                where = (x + beside, baseline, self.size)
                brush.text(group, words, where, anchor="start")
                x += wide + self.size * 1.2


_SCALE = "no votes to most votes"


def draw_swatch(
    brush: Brush, parent: ET.Element, where: tuple[float, float, float], sign: Sign
) -> None:
    """One page as the legend shows it; `where` is x, y and its side."""
    x, y, side = where
    box = {"x": x, "y": y, "width": side, "height": side, "stroke-width": max(side * 0.03, 0.5)}
    ground = GROUNDS.get(sign, "votable")
    brush.shape(parent, "rect", box, fill=ground, stroke="seam")
    if sign in GROUNDS:
        brush.shape(parent, "rect", box | {"fill": brush.url(ground)})
    if sign == "votable":
        running_stitch(brush, parent, (x, y, side, side), side * 0.08)
    if sign == "in hand":
        needle(brush, parent, (x + side * 0.2, y + side * 0.2, side * 0.6))
    if sign == "winner":
        thick = side * 0.1
        inner = {"x": x + thick / 2, "y": y + thick / 2, "stroke-width": thick}
        sides = {"width": side - thick, "height": side - thick}
        brush.shape(parent, "rect", inner | sides, fill="", stroke="winner-thread")
        star(brush, parent, (x + side * 0.22, y + side * 0.22, side * 0.56))


def _scale(
    brush: Brush, parent: ET.Element, where: tuple[float, float, float], size: float
) -> float:
    """The depths of tone side by side; answers how wide they are with the gap after them."""
    x, y, side = where
    step = size * 1.5
    for tone in range(TONES + 1):
        box = {"x": x + tone * step, "y": y, "width": step, "height": side}
        brush.shape(
            parent, "rect", box | {"stroke-width": max(side * 0.03, 0.5)},
            fill=f"tone-{tone}", stroke="seam",
        )  # fmt: skip
    return step * (TONES + 1) + size * 0.6
