"""The grid of a chart: which cell carries which page, and which pages are joined."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from service.errors import BadChart, PageNotOnChart

Order = Literal["across", "down"]
Corner = Literal["top left", "top right", "bottom left", "bottom right"]
Joined = Literal["edge", "edge or corner"]

ORDERS: tuple[Order, ...] = get_args(Order)
CORNERS: tuple[Corner, ...] = get_args(Corner)
JOINED: tuple[Joined, ...] = get_args(Joined)


@dataclass(frozen=True, slots=True, order=True)
class Cell:
    """A place on the grid, counted from 1 at the top left: `column` to the right, `row` down."""

    column: int
    row: int


@dataclass(frozen=True, slots=True)
class DesignSize:
    """A design's size and a full page's size, in stitches.

    `overlap` columns and rows of a page repeat its neighbour's as a guide; they are stitched
    once and counted once. Page sizes are given without the overlap.
    """

    stitches_wide: int
    stitches_high: int
    page_wide: int
    page_high: int
    overlap: int = 0
