"""What a host types while she sets a game up, and what the API would make of it, step by step.

Everything is typed words until the last step: what cannot be used yet is kept as it is, and said
beside its field.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal, get_args
from zoneinfo import available_timezones

from service.api.chart_models import ChartIn
from service.api.game_models import AnswerIn, GameIn
from service.api.round_models import RoundIn
from service.chart.grid import Chart
from service.comments.times import read_moment, zone_of
from service.errors import BadInput, BadTime, LoopstartError
from service.pages.form_reading import as_sentence, fault_of, lines_in, read_as, said
from service.store.games import check_short_name
from service.store.round_rules import DraftRules, check_draft

Step = Literal["chart", "game", "rules", "answer", "review"]
STEPS: tuple[Step, ...] = get_args(Step)
#: The fields of each step.
FIELDS: Mapping[Step, tuple[str, ...]] = {
    "chart": (
        *("size_by", "columns", "rows", "stitches_wide", "stitches_high", "page_wide"),
        *("page_high", "overlap", "order", "start", "back_and_forth", "no_page", "joined"),
    ),
    "game": ("name", "slug", "zone", "hosts", "languages", "stitched"),
    "rules": ("next_from", "choices", "standing", "first", "second", "third", "last"),
    "answer": (
        *("title", "designer", "aliases", "wants", "names_per_comment", "guesses_per_voter"),
        *("guesses_open", "guesses_close"),
    ),
    "review": (),
}
#: The tie-breaks in their order.
CHAIN = ("first", "second", "third", "last")
#: What is there before anything is typed.
AT_FIRST: Mapping[str, str] = {
    "size_by": "pages",
    "columns": "9",
    "rows": "7",
    "overlap": "0",
    "order": "across",
    "start": "top left",
    "joined": "edge",
    "zone": "UTC",
    "languages": "en",
    "next_from": "the previous page",
    "choices": "1",
    "standing": "latest",
    "first": "most joined edges",
    "second": "reached first",
    "last": "lowest number",
    "wants": "title",
    "names_per_comment": "1",
}
_CELL = re.compile(r"\s*(\d{1,4})\s*[/x:]\s*(\d{1,4})\s*")
#: The API's names where the form's differ.
_NAMES = {"tie_breaks": "last"}


@dataclass(frozen=True, slots=True)
class SetUp:
    """What can be made of the fields; a part is None where it cannot be. `faults` say why."""

    chart: Chart | None
    game: GameIn | None
    rules: DraftRules | None
    faults: Mapping[str, str] = field(default_factory=dict)

    def faults_in(self, step: Step) -> dict[str, str]:
        """The faults of one step's fields; of the review all."""
        if step == "review":
            return dict(self.faults)
        return {name: why for name, why in self.faults.items() if name in FIELDS[step]}


def zones() -> list[str]:
    """Every time zone by its IANA name."""
    return sorted(name for name in available_timezones() if "/" in name or name == "UTC")


def slug_from(name: str) -> str:
    """A short name for addresses, of what a name has of plain letters and digits."""
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")[:64].strip("-")


def set_up(words: Mapping[str, str]) -> SetUp:
    """What the fields make, and what is wrong with them."""
    faults: dict[str, str] = {}
    raw_chart = _raw_chart(words, faults)
    chart = _chart(raw_chart, words, faults)
    rules = _rules(words, chart, faults)
    zone_is_known = _check_times(words, faults)
    raw = _raw_game(words, raw_chart)
    answer = _answer(words, faults)
    game, wrong = read_as(GameIn, raw | ({"answer": answer} if answer else {}), _NAMES)
    for name, why in wrong.items():
        if name in {*FIELDS["game"], *FIELDS["rules"], *FIELDS["answer"]}:
            faults.setdefault(name, why)
    if raw["slug"] or words.get("name", "").strip():
        _check_slug(raw["slug"], faults)
    if chart is not None and game is not None:
        _check_stitched(game, chart, faults)
    return SetUp(chart, game if zone_is_known else None, rules, faults)


def _raw_chart(words: Mapping[str, str], faults: dict[str, str]) -> dict[str, Any]:
    """The chart as the API takes it."""
    by_stitches = words.get("size_by") == "stitches"
    sides = ("stitches_wide", "stitches_high", "page_wide", "page_high", "overlap")
    raw: dict[str, Any] = said(words, *(sides if by_stitches else ("columns", "rows")))
    for name in (*sides[:4],) if by_stitches else ("columns", "rows"):
        if name not in raw:
            faults[name] = "This is missing: give a whole number."
    raw |= said(words, "order", "start", "joined")
    raw["back_and_forth"] = words.get("back_and_forth") == "yes"
    cells = []
    for part in filter(str.strip, re.split(r"[,;\s]+", words.get("no_page", ""))):
        cell = _CELL.fullmatch(part)
        if cell is None:
            faults["no_page"] = (
                f"{part!r} is no cell: write column/row, such as 9/7, with commas between cells."
            )
        else:
            cells.append([int(cell[1]), int(cell[2])])
    return raw | {"no_page": cells}


def _chart(
    raw: Mapping[str, Any], words: Mapping[str, str], faults: dict[str, str]
) -> Chart | None:
    if any(name in FIELDS["chart"] for name in faults):
        return None
    given, wrong = read_as(ChartIn, raw)
    faults.update(wrong)
    if given is None:
        return None
    try:
        return given.to_chart()
    except LoopstartError as error:
        first = "stitches_wide" if words.get("size_by") == "stitches" else "columns"
        place = "no_page" if raw["no_page"] and "cell" in str(error) else first
        faults[place] = as_sentence(str(error))
        return None


def _rules(
    words: Mapping[str, str], chart: Chart | None, faults: dict[str, str]
) -> DraftRules | None:
    chain = [words[name] for name in CHAIN if words.get(name)]
    raw = {**said(words, "choices", "standing"), "tie_breaks": chain}
    given, wrong = read_as(RoundIn, raw, _NAMES)
    faults.update({name: why for name, why in wrong.items() if name in FIELDS["rules"]})
    if given is None or chart is None:
        return None
    rules = given.to_rules(zone_of("UTC"), DraftRules())
    try:
        check_draft(rules, chart)
    except LoopstartError as error:
        faults["choices" if "choose" in str(error) else "last"] = as_sentence(str(error))
        return None
    return rules


def _check_times(words: Mapping[str, str], faults: dict[str, str]) -> bool:
    """Whether the zone is known; and the times of guessing with it."""
    try:
        zone = zone_of(words.get("zone", "").strip())
    except BadTime as error:
        faults["zone"] = as_sentence(str(error))
        return False
    times: dict[str, datetime] = {}
    for name, text in said(words, "guesses_open", "guesses_close").items():
        try:
            times[name] = read_moment(text, zone)
        except BadInput as error:
            faults[name] = as_sentence(str(error))
    opens, closes = times.get("guesses_open"), times.get("guesses_close")
    if opens is not None and closes is not None and closes <= opens:
        faults["guesses_close"] = "Guessing would end before it begins: give a later time."
    return True


def _raw_game(words: Mapping[str, str], chart: Mapping[str, Any]) -> dict[str, Any]:
    raw: dict[str, Any] = said(
        words,
        *("name", "zone", "next_from", "wants", "names_per_comment"),
        *("guesses_per_voter", "guesses_open", "guesses_close"),
    )
    slug = words.get("slug", "").strip() or slug_from(words.get("name", ""))
    return raw | {
        "slug": slug,
        "chart": chart,
        "hosts": lines_in(words.get("hosts", "")),
        "languages": words.get("languages", "").split(),
        "stitched": re.findall(r"[^,;\s]+", words.get("stitched", "")),
    }


def _answer(words: Mapping[str, str], faults: dict[str, str]) -> dict[str, Any] | None:
    """The answer as the API takes it; None where none is given yet."""
    aliases = lines_in(words.get("aliases", ""))
    raw: dict[str, Any] = said(words, "title", "designer") | {"aliases": aliases}
    if not (raw.get("title") or raw.get("designer") or aliases):
        return None
    given, wrong = read_as(AnswerIn, raw)
    faults.update(wrong)
    if given is None:
        return None
    try:
        given.to_answer()
    except BadInput as error:
        faults["aliases" if "alias" in str(error) else "title"] = as_sentence(str(error))
        return None
    return raw


def _check_slug(slug: str, faults: dict[str, str]) -> None:
    try:
        check_short_name(slug)
    except BadInput as error:
        faults.setdefault("slug", as_sentence(str(error)))


def _check_stitched(game: GameIn, chart: Chart, faults: dict[str, str]) -> None:
    off = [page for page in game.stitched if page not in chart.pages]
    if off:
        told = f"Page {off[0]} is not on the chart: name pages from 1 to {chart.page_count}."
        faults["stitched"] = told


def _field_of(told: str) -> str:
    """Which field a sentence about the game's rules is about."""
    if "short name" in told:
        return "slug"
    return "name" if "the game's name" in told else "title"


def fault_in_making(error: LoopstartError, words: Mapping[str, str]) -> dict[str, str]:
    """What stood in the way of making the game, beside its field."""
    places = {
        "AlreadyThere": ("slug",),
        "BadRules": (_field_of(str(error)),),
        "BadTime": ("zone",),
        "ClosesBeforeOpening": ("guesses_close",),
        "PageNotOnChart": ("stitched",),
    }
    return fault_of(error, words, places)
