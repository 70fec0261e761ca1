"""The tally of a round as bars: the pages with votes, most votes first."""

from __future__ import annotations

from collections.abc import Sequence
from xml.etree import ElementTree as ET

from service.announce.drawing import Brush, picture, written
from service.announce.map_look import Look
from service.announce.map_stitches import star
from service.announce.text_fit import broken
from service.counting.wording import how_many

#: The pages that have a bar of their own; what follows is summed up in a line.
MOST_BARS = 20
_WIDE, _STEP = 640.0, 30.0


def bars_in_words(tally: Sequence[tuple[int, int]], winner: int | None) -> str:
    """The alternative text: every page that is drawn, with its votes."""
    if not tally:
        return "No page has a vote."
    told = "; ".join(
        f"page {page}: {how_many(votes, 'vote')}{', the winner' if page == winner else ''}"
        for page, votes in tally[:MOST_BARS]
    )
    left = _left_out(tally)
    return f"The votes by page. {told[0].upper()}{told[1:]}.{f' {left}.' if left else ''}"


def draw_tally(
    tally: Sequence[tuple[int, int]],
    winner: int | None,
    title: str,
    caption: str = "",
    look: Look | None = None,
) -> str:
    """The tally as SVG: a bar a page, its number before and its votes behind it."""
    look = look or Look(ids="tally")
    drawn = tally[:MOST_BARS]
    head = _head(title, caption)
    above = 26 + sum(size * 1.3 for _, size, _ in head)
    left = _below(tally)
    size = size_of_tally(tally, title, caption)
    root = picture(size, look.ids, (title, bars_in_words(tally, winner)))
    brush = Brush(look.theme, look.ids)
    if not look.plain:
        brush.shape(root, "rect", {"width": size[0], "height": size[1]}, fill="ground")
    y = 18.0
    for line, letters, role in head:
        y += letters * 1.3
        at = (24.0, y - letters * 0.3, letters)
        brush.text(root, line, at, role=role, anchor="start", bold=role == "ink")
    _draw_bars(brush, root, (drawn, winner), above)
    if left:
        at = (24.0, size[1] - 22, 14.0)
        brush.text(root, left, at, role="soft-ink", anchor="start")
    return written(root)


def size_of_tally(
    tally: Sequence[tuple[int, int]], title: str, caption: str = ""
) -> tuple[float, float]:
    """Width and height of the picture."""
    above = 26 + sum(size * 1.3 for _, size, _ in _head(title, caption))
    left = 26 if _below(tally) else 0
    return _WIDE, above + len(tally[:MOST_BARS]) * _STEP + left + 24


def _head(title: str, caption: str) -> list[tuple[str, float, str]]:
    """The lines above the bars, with their size and ink."""
    head = [(line, 22.0, "ink") for line in broken(title, 22.0, _WIDE - 48, 2)]
    return head + [(line, 15.0, "soft-ink") for line in broken(caption, 15.0, _WIDE - 48, 2)]


def _draw_bars(
    brush: Brush,
    root: ET.Element,
    told: tuple[Sequence[tuple[int, int]], int | None],
    above: float,
) -> None:
    """The bars from `above` down; `told` are the pages with their votes, and the winner."""
    drawn, winner = told
    most = max((votes for _, votes in drawn), default=1)
    for place, (page, votes) in enumerate(drawn):
        y = above + place * _STEP
        long = max(3.0, (_WIDE - 200) * votes / most)
        has_won = page == winner
        bar = {"x": 92.0, "y": y, "width": long, "height": _STEP - 8, "rx": 3, "stroke-width": 1.4}
        edge = "winner-thread" if has_won else "votable-thread"
        brush.shape(root, "rect", bar, fill="tone-2", stroke=edge)
        brush.text(root, str(page), (82, y + 17, 17), anchor="end", bold=True)
        brush.text(root, f"{votes:,}", (100 + long, y + 16.5, 15), anchor="start")
        if has_won:
            star(brush, root, (24.0, y + 1, 19.0))


def _below(tally: Sequence[tuple[int, int]]) -> str:
    """The line below the bars."""
    return _left_out(tally) if tally else "No page has a vote."


def _left_out(tally: Sequence[tuple[int, int]]) -> str:
    left = tally[MOST_BARS:]
    if not left:
        return ""
    votes = how_many(sum(votes for _, votes in left), "vote")
    return (
        f"{how_many(len(left), 'more page')} together {'has' if len(left) == 1 else 'have'} {votes}"
    )
