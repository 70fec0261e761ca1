"""Pictures in JSON: where each is, how large, and its alternative text."""

from __future__ import annotations

from pydantic import Field

from service.announce.map_picture import SHAPES, Look, picture_in_words, size_of
from service.announce.page_map import PageMap
from service.api.shapes import Out, example


class PictureOut(Out):
    """A picture: its addresses as SVG and PNG, its size in pixels, its alternative text."""

    model_config = example(
        {
            "name": "map, wide",
            "svg": "/api/games/windy-island/map.svg?shape=wide",
            "png": "/api/games/windy-island/map.png?shape=wide",
            "width": 1200,
            "height": 630,
            "alternative": "A map of 63 pages in 9 columns and 7 rows. Page 12 is in hand.",
        }
    )

    name: str
    svg: str
    png: str
    width: int
    height: int
    alternative: str = Field(description="For those who cannot see it; paste it with the picture.")

    @classmethod
    def of(
        cls, name: str, address: str, size: tuple[float, float], alternative: str, query: str = ""
    ) -> PictureOut:
        """A picture at `address`, which is without the ending."""
        return cls(
            name=name,
            svg=f"{address}.svg{query}",
            png=f"{address}.png{query}",
            width=round(size[0]),
            height=round(size[1]),
            alternative=alternative,
        )


class PicturesOut(Out):
    """All pictures of a game or a round, and the calendar file of the round's closing."""

    model_config = example(
        {
            "pictures": [],
            "calendar": "/api/games/windy-island/rounds/2/closing.ics",
        }
    )

    pictures: list[PictureOut]
    calendar: str | None = Field(description="Where there is a closing to put into a calendar.")


def maps_out(shown: PageMap, address: str) -> list[PictureOut]:
    """The map in every shape; `address` is that of the game or the round."""
    found = []
    for shape in SHAPES:
        look = Look(shape=shape)
        name = "map" if shape == "map" else f"map, {shape}"
        query = "" if shape == "map" else f"?shape={shape}"
        words = picture_in_words(shown, look)
        found.append(PictureOut.of(name, f"{address}/map", size_of(shown, look), words, query))
    return found
