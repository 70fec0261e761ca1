"""The map as a picture: alone in its natural size, or set into a frame for a post or a video."""

from __future__ import annotations

from functools import lru_cache
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, picture, written
from service.announce.map_cells import Cells, draw_pages
from service.announce.map_layout import Natural, frame_of
from service.announce.map_look import FRAMES, SHAPES, Look, Shape
from service.announce.map_stitches import define_patterns
from service.announce.page_map import PageMap, map_in_words

__all__ = ["FRAMES", "SHAPES", "Look", "Shape", "draw_map", "picture_in_words", "size_of"]


# A board is asked for many times between two changes of its map. A large map is a megabyte.
@lru_cache(maxsize=16)
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
    note = frame_of(shown, look).note
    return f"{said} The picture shows only {note}." if note else said


def size_of(shown: PageMap, look: Look) -> tuple[float, float]:
    """Width and height of the map as it is drawn, in pixels."""
    if look.shape != "map":
        wide, high = FRAMES[look.shape]
        return float(wide), float(high)
    return Natural.of(shown, look).size


def _natural(shown: PageMap, look: Look) -> str:
    plan = Natural.of(shown, look)
    root, brush = _begun(shown, look, plan.size, plan.cells)
    plan.words.draw_heading(brush, root, (plan.margin, plan.margin))
    middle = plan.margin + (plan.inner - plan.cells.size[0]) / 2
    draw_pages(brush, root, plan.cells, (middle, plan.margin + plan.words.above))
    plan.words.draw_legend(brush, root, (plan.margin, plan.margin + plan.high))
    return written(root)


def _framed(shown: PageMap, look: Look) -> str:
    frame = frame_of(shown, look)
    cells = Cells(shown, frame.part, frame.page, look.links)
    root, brush = _begun(shown, look, frame.size, cells)
    frame.words.draw_heading(brush, root, (frame.margin, frame.margin))
    frame.words.draw_legend(brush, root, (frame.margin, frame.size[1] - frame.margin))
    x = frame.corner[0] + (frame.room[0] - cells.size[0]) / 2
    y = frame.corner[1] + (frame.room[1] - cells.size[1]) / 2
    draw_pages(brush, root, cells, (x, y))
    if frame.note:
        frame.draw_note(brush, root, (x + cells.size[0] / 2, y + cells.size[1]))
    return written(root)


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
