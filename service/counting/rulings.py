"""What a comment says once the host's rulings are heard."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from service.chart.grid import Chart
from service.counting.round import ReadComment, RoundRules, Ruling
from service.counting.wording import how_many, pages_in_words
from service.errors import BadRuling, PageNotOnChart

Kind = Literal["chooses", "withdraws", "look", "nothing"]


@dataclass(frozen=True, slots=True)
class Meaning:
    """What a comment says: its pages where it `chooses`, else those it may mean; and why.

    `ruled` says that the host decided it.
    """

    kind: Kind
    pages: tuple[int, ...]
    why: str
    ruled: bool = False


def check_ruling(ruling: Ruling, rules: RoundRules, chart: Chart) -> None:
    """Refuse a ruling that cannot be.

    A page that is on the chart but not votable may be ruled: the comment does say it, and is set
    aside for it.

    Raises:
        BadRuling: no reason; a page off the chart; a page twice; more pages than the round's
            choices; pages and a withdrawal in one.
    """
    pages = ruling.pages
    if not ruling.reason.strip():
        raise BadRuling("a ruling has no reason", "say in a few words why")
    for page in pages:
        if page not in chart.pages:
            raise BadRuling(
                f"a ruling names page {page}, which is not on the chart",
                str(PageNotOnChart(page, chart.page_count)).partition(": ")[2].rstrip("."),
            )
    if len(set(pages)) != len(pages):
        raise BadRuling(f"a ruling names {pages_in_words(pages)}", "name each page once")
    if len(pages) > rules.choices:
        raise BadRuling(
            f"a ruling names {pages_in_words(pages)}, but in this round a voter may choose "
            f"{how_many(rules.choices, 'page')}",
            "rule fewer pages, or that the comment chooses nothing",
        )
    if pages and ruling.withdraws:
        raise BadRuling(
            f"a ruling both chooses {pages_in_words(pages)} and takes a ballot back",
            "rule one of the two",
        )


def meaning_of(comment: ReadComment, rules: RoundRules, chart: Chart) -> Meaning:
    """What `comment` says: as the last ruling on it has it, else as it was read.

    Raises:
        BadRuling: the ruling that holds cannot be.
    """
    holding = _last_ruling_on_meaning(comment.rulings) if comment.rulings else None
    if holding is None:
        return _as_read(comment, rules)
    check_ruling(holding, rules, chart)
    why = f"The host's ruling: {holding.reason.strip()}"
    if holding.withdraws:
        return Meaning("withdraws", (), why, ruled=True)
    return Meaning("chooses" if holding.pages else "nothing", holding.pages, why, ruled=True)


def ruled_in_time(comment: ReadComment) -> Ruling | None:
    """The last ruling that says whether the comment was in time; None where none does."""
    return next((it for it in reversed(comment.rulings) if it.in_time is not None), None)


def _last_ruling_on_meaning(rulings: tuple[Ruling, ...]) -> Ruling | None:
    return next((it for it in reversed(rulings) if not _is_on_time_alone(it)), None)


def _is_on_time_alone(ruling: Ruling) -> bool:
    return ruling.in_time is not None and not ruling.pages and not ruling.withdraws


def _as_read(comment: ReadComment, rules: RoundRules) -> Meaning:
    reading = comment.reading
    if reading.outcome == "none":
        return Meaning("withdraws" if reading.reason == "withdrawn" else "nothing", (), reading.why)
    pages = tuple(dict.fromkeys(reading.pages))
    if reading.outcome == "look":
        return Meaning("look", pages, reading.why)
    if not pages or len(pages) > rules.choices:
        # A reading made for another question than this round's; counting some of its pages
        # would be a guess.
        names = pages_in_words(pages) if pages else "no page"
        allowed = how_many(rules.choices, "page")
        return Meaning("look", pages, f"It names {names} where a voter may choose {allowed}.")
    return Meaning("chooses", pages, reading.why)
