"""How far page and chart are, and what was stitched, in JSON."""

from __future__ import annotations

from datetime import date
from typing import Any

from service.api.shapes import Out, example
from service.pace.progress import ChartProgress, PageProgress, Since, Update

PAGE = {
    "page": 41,
    "done": 3412,
    "total": 4900,
    "left": 1488,
    "percent": 69.63,
    "state": "in work",
    "fractional": 0,
    "backstitch": 0,
    "beads": 0,
    "details_to_come": [],
}
CHART = {"pages_done": 0, "pages": 63, "done": 3412, "total": 308700, "percent": 1.11}


def cut(percent: float | None) -> float | None:
    """A percentage with two places, cut: only what is done reaches 100."""
    return None if percent is None else int(percent * 100 + 1e-9) / 100


class PageProgressOut(Out):
    """How far a page is. `total`, `left` and `percent` are empty where its stitches are not known."""

    model_config = example(PAGE)

    page: int
    done: int
    total: int | None
    left: int | None
    percent: float | None
    state: str
    fractional: int
    backstitch: int
    beads: int
    details_to_come: list[str]

    @classmethod
    def of(cls, page: PageProgress) -> PageProgressOut:
        """The page for JSON."""
        return cls(
            page=page.page,
            done=page.done,
            total=page.total,
            left=page.left,
            percent=cut(page.percent),
            state=page.state,
            fractional=page.details.fractional,
            backstitch=page.details.backstitch,
            beads=page.details.beads,
            details_to_come=list(page.details_to_come),
        )


class ChartProgressOut(Out):
    """How far the chart is: in crosses, or where they are not known in pages alone."""

    model_config = example(CHART)

    pages_done: int
    pages: int
    done: int | None
    total: int | None
    percent: float

    @classmethod
    def of(cls, chart: ChartProgress) -> ChartProgressOut:
        """The chart for JSON."""
        return cls(
            pages_done=chart.pages_done,
            pages=chart.pages,
            done=chart.done,
            total=chart.total,
            percent=cut(chart.percent) or 0.0,
        )


class UpdateOut(Out):
    """What one entry brought, and how far it took the page and the chart."""

    day: date
    page: int
    stitches: int
    done: int
    percent: float | None
    chart_percent: float | None

    @classmethod
    def of(cls, update: Update) -> UpdateOut:
        """The update for JSON."""
        return cls(
            day=update.day,
            page=update.page,
            stitches=update.stitches,
            done=update.done,
            percent=cut(update.percent),
            chart_percent=cut(update.chart_percent),
        )


class PieceTotalOut(Out):
    """The stitches on one piece; the game's own has no name."""

    piece: str
    stitches: int
    fractional: int
    backstitch: int
    beads: int


class ProgressOut(Out):
    """What was stitched in some days, on every piece, and every update until then."""

    model_config = example(
        {
            "first": "2026-03-12",
            "last": "2026-03-25",
            "of_game": 3412,
            "in_all": 4672,
            "share": 0.73,
            "a_day": 243.7,
            "pieces": [],
            "updates": [],
        }
    )

    first: date
    last: date
    of_game: int
    in_all: int
    share: float | None
    a_day: float
    pieces: list[PieceTotalOut]
    updates: list[UpdateOut]

    @classmethod
    def of(cls, told: Since, updates: tuple[Update, ...]) -> ProgressOut:
        """The progress for JSON."""
        pieces: list[dict[str, Any]] = [
            {
                "piece": one.piece,
                "stitches": one.stitches,
                "fractional": one.details.fractional,
                "backstitch": one.details.backstitch,
                "beads": one.details.beads,
            }
            for one in told.pieces
        ]
        return cls(
            first=told.first,
            last=told.last,
            of_game=told.of_game,
            in_all=told.in_all,
            share=None if told.share is None else round(told.share, 4),
            a_day=round(told.a_day, 1),
            pieces=[PieceTotalOut(**one) for one in pieces],
            updates=[UpdateOut.of(one) for one in updates],
        )


class ParagraphOut(Out):
    """Words for the update post; where they would tell the answer, why they are stopped."""

    model_config = example({"text": "The windy island's mystery: page 41 is done.", "stopped": ""})

    text: str
    stopped: str


class PictureOut(Out):
    """A picture as SVG, ready to stand in a page or a file."""

    model_config = example({"svg": "<svg xmlns='http://www.w3.org/2000/svg'></svg>"})

    svg: str
