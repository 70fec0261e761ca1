"""The stitch log and the pace: when the page is done, and when the next vote must open.

    python3 scripts/pace.py plan --game harbour --every 4900
    python3 scripts/pace.py log 412 --game harbour
    python3 scripts/pace.py log 1260 --piece "The winter runner" --game harbour
    python3 scripts/pace.py forecast --game harbour
    python3 scripts/pace.py rounds --game harbour
    python3 scripts/pace.py needed 2026-04-03 --game harbour
    python3 scripts/pace.py import stitches.csv --game harbour

Each command tells its options with --help. Days are those of the game's zone.
"""

import environment

environment.enter("run")

import argparse
from pathlib import Path
from typing import Any
from urllib.parse import quote

from client import Client, chosen
from export import write_new
from pace_options import DETAILS, make_options
from pace_shown import (
    show_calendar,
    show_forecast,
    show_log,
    show_logged,
    show_needed,
    show_plan,
    show_progress,
)
from rich.console import Console
from tally_shown import plain, printing
from terminal import finish, read_file

from service.errors import BadInput

Json = Any


def log(client: Client, path: str, given: argparse.Namespace) -> None:
    """Adds an entry."""
    entry = _entry(client, path, given)
    if given.piece is not None:
        entry["piece"] = given.piece
    else:
        entry["page"] = given.page if given.page is not None else _in_hand(client, path)
    with printing() as console:
        show_logged(client.post(f"{path}/log", {"entries": [entry]}), console)
        _tell_next(client, path, console)


def correct(client: Client, path: str, given: argparse.Namespace) -> None:
    """Adds an entry that stands for another, or takes it back."""
    wrong = [one for one in client.get(f"{path}/log") if one["number"] == given.number]
    if given.take_back:
        sent: Json = {"note": given.note}
    else:
        entry = _entry(client, path, given)
        if wrong:
            entry |= {name: wrong[0][name] for name in ("page", "piece") if wrong[0][name]}
            entry["day"] = given.day or wrong[0]["day"]
        sent = {"entry": entry}
    with printing() as console:
        show_logged(client.post(f"{path}/log/{given.number}/corrections", sent), console)
        _tell_next(client, path, console)


def rest(client: Client, path: str, given: argparse.Namespace) -> None:
    """Adds a rest."""
    entry = {"day": given.last, "first": given.first, "how": "rest", "note": given.note}
    with printing() as console:
        show_logged(client.post(f"{path}/log", {"entries": [entry]}), console)


def show(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints the log."""
    del given
    with printing() as console:
        show_log(client.get(f"{path}/log"), console)


def forecast(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints progress, forecast and the next round's opening."""
    with printing() as console:
        show_forecast(client.get(path, **_asked(given)), console)


def rounds(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints the calendar of rounds."""
    with printing() as console:
        show_calendar(client.get(f"{path}/rounds", most=given.most, **_asked(given)), console)


def needed(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints what it would take."""
    aim = "chart" if given.chart else "page"
    with printing() as console:
        show_needed(client.get(f"{path}/needed", by=given.by, aim=aim, **_asked(given)), console)


def progress(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints the totals by piece and every update."""
    with printing() as console:
        show_progress(client.get(f"{path}/progress", **_since(given)), console)


def update(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints the paragraph for the update post.

    Raises:
        BadInput: it would tell the answer.
    """
    told = client.get(f"{path}/update", **_since(given))
    if told["stopped"]:
        what, _, todo = told["stopped"].rstrip(".").partition(": ")
        raise BadInput(what, todo)
    with printing() as console:
        console.print(plain(told["text"]))


def picture(client: Client, path: str, given: argparse.Namespace) -> None:
    """Writes the picture."""
    wanted = _asked(given)
    if given.page is not None:
        wanted["page"] = given.page
    _write(client.get(f"{path}/picture", **wanted)["svg"], given.out, "utf-8")


def export(client: Client, path: str, given: argparse.Namespace) -> None:
    """Writes the log as a table."""
    _write(client.text(f"{path}/log/table"), given.out, "utf-8-sig")


def import_(client: Client, path: str, given: argparse.Namespace) -> None:
    """Takes a table in."""
    content = read_file(given.file)
    taken = client.hand_in(f"{path}/log/table", Path(given.file).name, content)
    known = f", {taken['known']} were in the log already" if taken["known"] else ""
    with printing() as console:
        console.print(f"{taken['new']} new entries{known}.")
        _tell_next(client, path, console)


def page(client: Client, path: str, given: argparse.Namespace) -> None:
    """Tells the stitches of a page by hand."""
    told = {name: getattr(given, name) for name in ("crosses", *DETAILS)}
    with printing() as console:
        show_plan(client.put(f"{path}/pages/{given.page}", told), console)


def plan(client: Client, path: str, given: argparse.Namespace) -> None:
    """Prints the plan, changed where an option says so."""
    kept = client.get(f"{path}/plan")
    wanted = {name: kept[name] for name in ("every", "round_days", "margin_days", "shows")}
    told = {name: getattr(given, name) for name in ("every", "round_days", "margin_days")}
    told["shows"] = [] if given.show_nothing else given.show
    changed = {name: value for name, value in told.items() if value is not None}
    with printing() as console:
        show_plan(client.put(f"{path}/plan", wanted | changed) if changed else kept, console)


def _entry(client: Client, path: str, given: argparse.Namespace) -> dict[str, Json]:
    """The entry that the options tell; on the game's today, if no day is said."""
    how = "on the day"
    if given.percent is not None:
        how = "percent"
    elif given.since_last or given.so_far:
        how = "since last time" if given.since_last else "so far"
    entry: dict[str, Json] = {"how": how, "note": given.note, "first": given.first}
    entry["day"] = given.day or client.get(path)["today"]
    entry |= {name: getattr(given, name) for name in DETAILS}
    entry |= {"stitches": given.stitches, "percent": given.percent}
    return entry


def _in_hand(client: Client, path: str) -> int:
    """The page in hand.

    Raises:
        BadInput: there is none, or several.
    """
    pages = [int(one["page"]) for one in client.get(path)["pages"]]
    if len(pages) != 1:
        listed = ", ".join(map(str, pages)) or "none"
        raise BadInput(f"the page is not clear (in hand: {listed})", "name it with --page")
    return pages[0]


def _tell_next(client: Client, path: str, console: Console) -> None:
    """What is to be known after each entry: how far the page is, and when it is finished."""
    told = client.get(path)
    show_forecast(told, console, briefly=True)


def _asked(given: argparse.Namespace) -> dict[str, Json]:
    told = {"today": given.today, "confidence": given.confidence}
    return {name: value for name, value in told.items() if value is not None}


def _since(given: argparse.Namespace) -> dict[str, Json]:
    return _asked(given) | ({} if given.first is None else {"first": given.first})


def _write(words: str, out: str, encoding: str) -> None:
    if out == "-":
        print(words.replace("\r\n", "\n").rstrip("\n"))
        return
    write_new(Path(out), words, encoding)
    print(f"Written to {out}.")


#: How each command is run.
RUN = {
    "log": log,
    "rest": rest,
    "correct": correct,
    "show": show,
    "forecast": forecast,
    "rounds": rounds,
    "needed": needed,
    "progress": progress,
    "update": update,
    "picture": picture,
    "export": export,
    "import": import_,
    "page": page,
    "plan": plan,
}


def main() -> int:
    """Does what the command says."""
    given = make_options().read()
    path = f"/games/{quote(given.game, safe='')}/pace"
    with chosen(given.server, given.token) as client:
        RUN[given.command](client, path, given)
    return 0


if __name__ == "__main__":
    finish(main)
