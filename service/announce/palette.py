"""The colours of every picture: cloth, threads and inks, light and dark.

A colour has a role, and every shape names the role in its class: what is drawn with presentation
attributes stands alone as a file, and inline in a page the page's stylesheet may still replace the
colours (see `stylesheet`). No colour is the only sign of anything.
"""

from __future__ import annotations

from typing import Literal, get_args

Theme = Literal["light", "dark"]
THEMES: tuple[Theme, ...] = get_args(Theme)

#: How many depths of tone tell votes; tone 0 is a page without any.
TONES = 5

_LIGHT: dict[str, str] = {
    "ground": "#FBF7EE",
    "cloth": "#F1E9DA",
    "seam": "#CBBDA3",
    "weave": "#CDBFA6",
    "ink": "#2A2833",
    "soft-ink": "#635B4B",
    "patch": "#FBF7EE",
    "stitched": "#D5DECF",
    "stitched-thread": "#456B55",
    "in-hand": "#F6E0B4",
    "in-hand-thread": "#8B5A0A",
    "votable": "#FFFDF8",
    "votable-thread": "#34558F",
    "winner-thread": "#97283A",
    "tone-0": "#FFFDF8",
    "tone-1": "#DBE3F1",
    "tone-2": "#B4C5E3",
    "tone-3": "#86A1D0",
    "tone-4": "#4C6CA8",
    "tone-5": "#24407A",
    "on-tone": "#FFFFFF",
}
_DARK: dict[str, str] = {
    "ground": "#1D1B22",
    "cloth": "#2B2831",
    "seam": "#4C4653",
    "weave": "#47414F",
    "ink": "#F3EEE3",
    "soft-ink": "#B9B1A4",
    "patch": "#1D1B22",
    "stitched": "#25392E",
    "stitched-thread": "#93BE7C",
    "in-hand": "#45330F",
    "in-hand-thread": "#E9B457",
    "votable": "#15131A",
    "votable-thread": "#9DB8EC",
    "winner-thread": "#FF93A0",
    "tone-0": "#15131A",
    "tone-1": "#222D47",
    "tone-2": "#2E416C",
    "tone-3": "#405B99",
    "tone-4": "#8BAAEA",
    "tone-5": "#D3E0FC",
    "on-tone": "#15131A",
}
PALETTES: dict[Theme, dict[str, str]] = {"light": _LIGHT, "dark": _DARK}


def tone_of(votes: int, most: int) -> int:
    """The depth of tone for `votes` where the page with most has `most`: 0 to 5."""
    return 0 if votes <= 0 else max(1, -(-votes * TONES // max(most, votes)))


def ink_on_tone(tone: int) -> str:
    """The role of what is written on that tone, so that it can be read."""
    return "ink" if tone <= LAST_PALE_TONE else "on-tone"


def border_on_tone(tone: int) -> str:
    """The role of the border of a page that can be chosen, so that it is seen on its tone."""
    return "votable-thread" if tone < LAST_PALE_TONE else ink_on_tone(tone)


#: Up to this tone the usual ink is read on it, beyond it the other one.
LAST_PALE_TONE = 3


def stylesheet(theme: Theme, within: str = ".picture") -> str:
    """Rules that give inline pictures the colours of a theme; `within` selects the pictures.

    For a page's own stylesheet, as inside `@media (prefers-color-scheme: dark)`: a rule of a
    stylesheet goes before the presentation attributes of the picture itself. A linked page that
    has the focus gets a frame, as thick on a small screen as on a large one.
    """
    colours = PALETTES[theme]
    rules = [
        f"{within} .{kind}-{role} {{ {kind}: {colour}; }}"
        for role, colour in colours.items()
        for kind in ("fill", "stroke")
    ]
    focus = f"stroke: {colours['ink']}; stroke-width: 3px; vector-effect: non-scaling-stroke;"
    return "\n".join([*rules, f"{within} a:focus-visible .hit {{ {focus} }}"])
