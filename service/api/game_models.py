"""Games in JSON: what everybody may see, and what only the host may."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Literal

from pydantic import Field

from service.api.chart_models import ChartIn, ChartOut
from service.api.shapes import In, Languages, MomentIn, Out, Page, Words, example
from service.chart.votable import NextFrom
from service.mystery.answer import Answer, Wants
from service.store.games import PageState

_CHART = {
    "columns": 9,
    "rows": 7,
    "page_count": 63,
    "order": "across",
    "start": "top left",
    "back_and_forth": False,
    "no_page": [],
    "joined": "edge",
    "size": None,
}
_PUBLIC = {
    "slug": "windy-island",
    "name": "The windy island's mystery",
    "zone": "Atlantic/Faroe",
    "chart": _CHART,
    "next_from": "the previous page",
    "wants": "title",
    "names_per_comment": 1,
    "guesses_per_voter": None,
    "guesses_open": "2026-03-01T18:00:00Z",
    "guesses_close": None,
    "seal": "9b1c5f0e6a0c4f7f5a0d1f3a4b8e2c6d7f8091a2b3c4d5e6f708192a3b4c5d6e",
    "pages": {"stitched": [12, 13], "in_hand": [22]},
    "rounds": [
        {
            "number": 1,
            "state": "announced",
            "opens": "2026-03-01T18:00:00Z",
            "closes": "2026-03-04T18:00:00Z",
            "winner": 12,
        }
    ],
}


class AnswerIn(In):
    """The answer to be sealed. It never leaves the service before the reveal."""

    model_config = example(
        {"title": "The Lamp Room", "designer": "Ines Orlay", "aliases": ["Lamp Room at Night"]}
    )

    title: Words
    designer: Annotated[str, Field(max_length=500)] = ""
    aliases: list[Words] = Field(default=[], max_length=50)

    def to_answer(self) -> Answer:
        """The answer itself."""
        return Answer(self.title, self.designer, tuple(self.aliases))


class GameIn(In):
    """A game to be made."""

    model_config = example(
        {
            "slug": "windy-island",
            "name": "The windy island's mystery",
            "zone": "Atlantic/Faroe",
            "chart": {"columns": 9, "rows": 7},
            "next_from": "the previous page",
            "hosts": ["Island Guild"],
            "languages": ["en"],
            "wants": "title",
            "guesses_open": "2026-03-01T18:00",
            "answer": {"title": "The Lamp Room", "designer": "Ines Orlay"},
        }
    )

    slug: str = Field(max_length=64, description="The game's short name in addresses.")
    name: Words
    zone: str = Field(max_length=64, description="The game's time zone by its IANA name.")
    chart: ChartIn
    next_from: NextFrom = "the previous page"
    hosts: list[Words] = Field(
        default=[], max_length=50, description="Names or author ids that the host comments under."
    )
    languages: Languages = Field(default=["en"], min_length=1)
    wants: Wants = "title"
    names_per_comment: int = Field(default=1, ge=1, le=100)
    guesses_per_voter: Annotated[int, Field(ge=1, le=10_000)] | None = Field(
        default=None, description="How many guesses one voter may make; any number if left out."
    )
    guesses_open: MomentIn | None = None
    guesses_close: MomentIn | None = None
    answer: AnswerIn | None = None
    stitched: list[Page] = Field(
        default=[], max_length=10_000, description="Pages stitched before the game came here."
    )


class GameChangeIn(In):
    """What may change of a game; what is left out stays as it was.

    Chart, zone and answer stay. Languages hold for rounds that are opened from now on.
    """

    model_config = example({"hosts": ["Island Guild", "p-0001"], "guesses_close": None})

    name: Words | None = None
    hosts: list[Words] | None = Field(default=None, max_length=50)
    languages: Annotated[Languages, Field(min_length=1)] | None = None
    guesses_open: MomentIn | None = None
    guesses_close: MomentIn | None = None


class PageIn(In):
    """The state of a page."""

    model_config = example({"state": "stitched"})

    state: PageState


class PageOut(Out):
    """A page and its state."""

    model_config = example({"page": 12, "state": "stitched"})

    page: int
    state: PageState


class PagesOut(Out):
    """The pages stitched and in hand; the others are unstitched."""

    stitched: list[int]
    in_hand: list[int]


class RoundInGameOut(Out):
    """A round as the game's facts list it."""

    number: int
    state: Literal["draft", "open", "closed", "announced"]
    opens: datetime | None
    closes: datetime | None
    winner: int | None


class GameOut(Out):
    """What everybody may know of a game."""

    model_config = example(_PUBLIC)

    slug: str
    name: str
    zone: str
    chart: ChartOut
    next_from: NextFrom
    wants: Wants
    names_per_comment: int
    guesses_per_voter: int | None
    guesses_open: datetime | None
    guesses_close: datetime | None
    seal: str | None
    pages: PagesOut
    rounds: list[RoundInGameOut]


class GameForHostOut(GameOut):
    """The same with what only the host may know; the answer is told to nobody."""

    model_config = example(_PUBLIC | {"hosts": ["Island Guild"], "languages": ["en"]})

    hosts: list[str]
    languages: list[str]
