"""What the steps of setting a game up show."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from service.announce.map_picture import Look, draw_map
from service.announce.page_map import PageMap
from service.ballots.languages import LANGUAGES
from service.chart.grid import Chart
from service.counting.round import TIE_BREAKS
from service.counting.wording import how_many
from service.pages.form_reading import Typed, lines_in
from service.pages.frame import Frame
from service.pages.languages_named import language_name
from service.pages.rendering import Context, inline
from service.pages.setup_form import CHAIN, STEPS, SetUp, Step, slug_from, zones

#: More pages than these would make a picture that takes long and shows nothing.
_MOST_DRAWN = 2500
_TITLES: Mapping[Step, str] = {
    "chart": "The chart",
    "game": "The game",
    "rules": "Rules of voting",
    "answer": "The sealed answer",
    "review": "Look it over",
}
Options = tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class StepShown:
    """A step of the set-up in its list; `state` is done, here or to come."""

    title: str
    to: str
    is_here: bool
    is_right: bool


@dataclass(frozen=True, slots=True)
class ChartShown:
    """The chart as it would be: a picture, and its size in words."""

    picture: Markup
    words: str


@dataclass(frozen=True, slots=True)
class ReviewLine:
    """One thing that was said, and the step where it can be changed."""

    name: str
    words: str
    to: str


@dataclass(frozen=True, slots=True)
class SetUpPage(Context):
    """One step of setting a game up."""

    template: ClassVar[str] = "setup.html"

    frame: Frame
    step: Step
    number: int
    title: str
    steps: tuple[StepShown, ...]
    typed: Typed
    chart: ChartShown | None
    zones: tuple[str, ...]
    languages: Options
    tie_breaks: Options
    review: tuple[ReviewLine, ...]
    slug: str
    before: str


def setup_page(
    frame: Frame, step: Step, words: Mapping[str, str], made: SetUp, *, shows: bool
) -> SetUpPage:
    """The page of a step; it shows what is wrong only where `shows` says so."""
    number = STEPS.index(step)
    typed = Typed(
        "set-up",
        words,
        {"languages": tuple(words.get("languages", "").split())},
        made.faults_in(step) if shows else {},
    )
    return SetUpPage(
        frame=frame,
        step=step,
        number=number + 1,
        title=_TITLES[step],
        steps=tuple(
            StepShown(_TITLES[one], f"/desk/new/{one}", one == step, not made.faults_in(one))
            for one in STEPS
        ),
        typed=typed,
        chart=_chart(made.chart) if step in ("chart", "review") else None,
        zones=tuple(zones()) if step == "game" else (),
        languages=tuple((code, language_name(code)) for code in sorted(LANGUAGES)),
        tie_breaks=tuple((one, one[:1].upper() + one[1:]) for one in TIE_BREAKS),
        review=_review(words, made) if step == "review" else (),
        slug=slug_from(words.get("name", "")),
        before=f"/desk/new/{STEPS[number - 1]}" if number else "/desk",
    )


def _chart(chart: Chart | None) -> ChartShown | None:
    if chart is None:
        return None
    words = (
        f"{how_many(chart.page_count, 'page')} in {how_many(chart.columns, 'column')} "
        f"and {how_many(chart.rows, 'row')}"
    )
    if chart.page_count > _MOST_DRAWN:
        return ChartShown(Markup(""), f"{words}; too many to be drawn here")
    drawn = draw_map(PageMap(chart, "The chart", words), Look(heading=False, legend=False))
    return ChartShown(inline(drawn), words)


def _review(words: Mapping[str, str], made: SetUp) -> tuple[ReviewLine, ...]:
    """What was said, in short. Of the answer only that there is one: someone may look on."""
    chart, game = made.chart, made.game
    chain = ", then ".join(words[name] for name in CHAIN if words.get(name))
    hosts = ", ".join(lines_in(words.get("hosts", "")))
    lines: list[tuple[str, str, Step]] = [
        ("Chart", "not yet" if chart is None else how_many(chart.page_count, "page"), "chart"),
        ("Joined by", words.get("joined", ""), "chart"),
        ("Name", words.get("name", ""), "game"),
        ("Address", "" if game is None else f"/games/{game.slug}", "game"),
        ("Time zone", words.get("zone", ""), "game"),
        ("You comment as", hosts or "nobody", "game"),
        ("The next page is joined to", words.get("next_from", ""), "rules"),
        (
            "A voter chooses",
            how_many(int(words.get("choices") or 1), "page")
            if (words.get("choices") or "1").isdecimal()
            else "?",
            "rules",
        ),
        ("A tie is broken by", chain, "rules"),
        (
            "Answer",
            "kept, and sealed when you make the game"
            if words.get("title")
            else "none yet: it can be sealed later, before the first round",
            "answer",
        ),
    ]
    return tuple(ReviewLine(name, said, f"/desk/new/{step}") for name, said, step in lines)
