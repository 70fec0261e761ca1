"""Shows the pace in the terminal: progress, forecast, rounds to come, the log."""

from collections.abc import Iterable
from datetime import date
from typing import Any

from rich.console import Console
from rich.text import Text
from tally_shown import plain, table

from service.announce.instants import day_in_words, short_day
from service.announce.pace_words import often_in_words, percent_in_words
from service.counting.wording import how_many

Json = Any


def show_forecast(told: Json, console: Console, *, briefly: bool = False) -> None:
    """Prints how far it is, when it is finished, and when the next round is to open."""
    for one in told["pages"]:
        console.print(plain(_page_words(one)))
    if not briefly:
        for one in told["details_to_come"]:
            console.print(plain(f"Page {one['page']}: {one['state']} ({_listed(one)})."))
        console.print(plain(_chart_words(told["chart"])))
        if told["logged_until"] is not None:
            console.print(f"The log goes until {_day(told['logged_until'])}.")
        if told["pace"] is not None:
            console.print(plain(told["pace"]["words"]))
        console.print()
    console.print(Text(told["words"] or told["why_not"], style="bold"))
    if told["chart_finish"] is not None and not briefly:
        finish = told["chart_finish"]
        console.print(plain(f"The whole chart, as far as can be seen: {_finish(finish)}."))


def show_calendar(told: Json, console: Console) -> None:
    """Prints the rounds to come."""
    if told["why_not"]:
        console.print(Text(told["why_not"], style="bold"))
        return
    rounds = table("Round to come", "Opens", "At the latest", "Closes", "Its page is done", "Range")
    for one in told["rounds"]:
        days = (_short(one[name]) for name in ("opens", "latest", "closes"))
        rounds.add_row(str(one["number"]), *days, *_short_finish(one["finish"]))
    console.print(rounds)
    told_often = {one["finish"]["confidence"] for one in told["rounds"] if one["finish"]}
    often = "".join(f" A range holds {often_in_words(each)}." for each in told_often)
    console.print(
        f"{len(told['rounds'])} of the {told['of_all']} rounds that the chart still needs. Each range "
        f"holds all that may happen before it, so they widen.{often}"
    )


def show_needed(told: Json, console: Console) -> None:
    """Prints what it would take."""
    console.print(Text(told["words"], style="bold"))


def show_progress(told: Json, console: Console) -> None:
    """Prints the totals by piece, then every update."""
    console.print(Text(f"{_day(told['first'])} to {_day(told['last'])}", style="bold"))
    pieces = table("Piece", "Stitches", "Fractional", "Backstitch", "Beads")
    for one in told["pieces"]:
        counts = (f"{one[name]:,}" for name in ("stitches", "fractional", "backstitch", "beads"))
        pieces.add_row(plain(one["piece"] or "the mystery"), *counts)
    console.print(pieces)
    if told["share"] is not None:
        share = percent_in_words(100 * told["share"])
        console.print(f"The mystery had {share} of all stitches, {told['a_day']:,.0f} a day.")
    updates = table("Day", "Page", "Stitches", "Done", "Of the page", "Of the chart")
    for one in told["updates"]:
        shares = (_percent(one[name]) for name in ("percent", "chart_percent"))
        updates.add_row(
            _day(one["day"]), str(one["page"]), f"{one['stitches']:,}", f"{one['done']:,}", *shares
        )
    console.print()
    console.print(updates)


def show_log(entries: list[Json], console: Console) -> None:
    """Prints the log, with the entries that were corrected."""
    if not entries:
        console.print("Nothing is logged yet.")
        return
    console.print(_log_table(entries))


def show_logged(entries: list[Json], console: Console) -> None:
    """Prints the entries that were just added, each in a line."""
    for one in entries:
        console.print(plain(f"Entry {one['number']}: {_entry_words(one)}."))


def show_plan(told: Json, console: Console) -> None:
    """Prints the plan, and the stitches told by hand."""
    every = "not told" if told["every"] is None else f"{told['every']:,}"
    open_for, margin = (how_many(told[name], "day") for name in ("round_days", "margin_days"))
    console.print(f"A vote is open for {open_for} and closes {margin} before the page is finished.")
    console.print(f"Stitches of every page, where nothing else tells them: {every}.")
    for one in told["pages"]:
        named = ("crosses", "fractional", "backstitch", "beads")
        counts = [f"{one[name]:,} {name}" for name in named if one[name] is not None]
        console.print(f"Page {one['page']}: {', '.join(counts)}.")
    console.print(f"Everybody sees: {', '.join(told['shows']) or 'nothing of the pace'}.")


def _log_table(entries: Iterable[Json]) -> Any:
    shown = table("Entry", "Day", "What", "Stands", "Note")
    for one in entries:
        stands = "yes" if one["stands"] else "taken back" if one["taken_back"] else "no"
        corrects = "" if one["corrects"] is None else f" (for entry {one['corrects']})"
        words = plain(f"{_amount_words(one)}{corrects}")
        shown.add_row(str(one["number"]), _day(one["day"]), words, stands, plain(one["note"]))
    return shown


def _entry_words(one: Json) -> str:
    instead = "" if one["corrects"] is None else f", in place of entry {one['corrects']}"
    return f"{_day(one['day'])}, {_amount_words(one)}{instead}"


def _amount_words(one: Json) -> str:
    if one["taken_back"]:
        return f"entry {one['corrects']} taken back"
    if one["how"] == "rest":
        return f"rest from {_day(one['first'])}"
    what = f"page {one['page']}" if one["page"] is not None else f"“{one['piece']}”"
    amount = f"{one['percent']:g} %" if one["how"] == "percent" else f"{one['stitches']:,} stitches"
    details = "".join(
        f", {one[name]:,} {name}" for name in ("fractional", "backstitch", "beads") if one[name]
    )
    how = {"percent": " done", "on the day": ""}.get(one["how"], f" {one['how']}")
    return f"{what}: {amount}{how}{details}"


def _page_words(one: Json) -> str:
    words = f"Page {one['page']}: {one['done']:,}"
    if one["total"] is None:
        return f"{words} stitches, and it is not told how many it has."
    words += f" of {one['total']:,} stitches, {percent_in_words(one['percent'])}"
    return f"{words} ({one['state']})." if one["state"] != "in work" else f"{words}."


def _listed(one: Json) -> str:
    return ", ".join(one["details_to_come"])


def _chart_words(chart: Json) -> str:
    pages = f"{chart['pages_done']} of {chart['pages']} pages stitched"
    if chart["total"] is None:
        return f"The chart: {pages}."
    percent = percent_in_words(chart["percent"])
    return f"The chart: {pages}, {chart['done']:,} of {chart['total']:,} stitches, {percent}."


def _finish(finish: Json) -> str:
    often = often_in_words(finish["confidence"])
    latest = "an unknown day" if finish["latest"] is None else _day(finish["latest"])
    return f"{_day(finish['middle'])}, {often} {_day(finish['earliest'])} to {latest}"


def _short_finish(finish: Json | None) -> tuple[str, str]:
    if finish is None:
        return "-", "more than 20 years ahead"
    latest = "?" if finish["latest"] is None else _short(finish["latest"])
    return _short(finish["middle"]), f"{_short(finish['earliest'])} to {latest}"


def _percent(percent: float | None) -> str:
    return "" if percent is None else percent_in_words(percent)


def _day(text: str) -> str:
    """A day with its weekday, since weekends matter here."""
    return day_in_words(date.fromisoformat(text))


def _short(text: str) -> str:
    return short_day(date.fromisoformat(text), year=True)
