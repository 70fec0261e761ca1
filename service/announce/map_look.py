"""How a map is to look: its theme, its shape, what stands beside it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal, get_args

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
    links: Mapping[int, str] = field(default_factory=dict, hash=False)
