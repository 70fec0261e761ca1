"""A picture as PNG, drawn by resvg with fonts that come with the service: any computer will do."""

from __future__ import annotations

import re
from functools import lru_cache

import fontpkg_noto_sans
import fontpkg_noto_sans_arabic
import resvg_py

FAMILY = "Noto Sans"
#: No picture is drawn wider: a chart of thousands of pages would take seconds.
MOST_WIDE = 2000

_WIDTH = re.compile(r' width="([0-9.]+)"')
_FONTS = [
    str(package.ROOT / "files" / name)
    for package, name in (
        (fontpkg_noto_sans, "NotoSans[wdth,wght].ttf"),
        (fontpkg_noto_sans_arabic, "NotoSansArabic[wdth,wght].ttf"),
    )
]


@lru_cache(maxsize=64)
def png_of(svg: str) -> bytes:
    """The SVG as PNG, as wide as it is; one wider than 2,000 pixels is made smaller.

    The PNG holds its pixels and nothing else: no text, no name, no time.
    """
    wide = _WIDTH.search(svg)
    if wide is None:
        raise TypeError("a picture without a width cannot be drawn")
    return bytes(
        resvg_py.svg_to_bytes(
            svg_string=svg,
            width=min(round(float(wide[1])), MOST_WIDE),
            skip_system_fonts=True,
            font_files=_FONTS,
            font_family=FAMILY,
            sans_serif_family=FAMILY,
        )
    )
