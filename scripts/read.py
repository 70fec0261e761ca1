"""Shows how one text would be read as a vote, with the words that decide.

    python3 scripts/read.py "page 42 please" --chart 9x7
    python3 scripts/read.py "12 or 40" --game harbour

So a host can try a sentence before a round opens. - instead of the text reads it from standard
input. Nothing is kept.
"""

import environment

environment.enter("run")

import argparse
import json
import sys
from typing import Any
from urllib.parse import quote

from client import Client, Json, chosen
from rich.console import Console
from rich.text import Text
from tally_options import add_chart, chart_told, words_of
from tally_shown import pages_of, plain, printing, table
from terminal import Options, finish

from service.errors import BadInput

#: What tells a chart, of all that the API answers of one.
CHART_NAMES = ("columns", "rows", "order", "start", "back_and_forth", "no_page", "joined")


def make_options() -> Options:
    """The command line of read.py."""
    options = Options(
        prog="read.py",
        description="Shows how one text would be read as a vote, with the words that decide.",
        allow_abbrev=False,
    )
    options.add_argument("text", metavar="TEXT", help="what a viewer may write, or -")
    add_chart(options.add_argument_group("the chart"))
    group = options.add_argument_group("what is asked, and how it is shown")
    group.add_argument("--game", metavar="NAME", help="the chart and languages of this stored game")
    group.add_argument("--choices", type=int, metavar="N", help="pages one voter may name (1)")
    group.add_argument("--languages", type=words_of, metavar="en,fr", help="languages (en)")
    group.add_argument("--json", action="store_true", help="print the reading as data")
    options.add_server()
    return options


def game_told(client: Client, name: str) -> Json:
    """The chart and the languages of a stored game; the latter only its host may know."""
    game = client.get(f"/games/{quote(name, safe='')}")
    chart = {key: game["chart"][key] for key in CHART_NAMES}
    [languages] = [one["languages"] for one in client.get("/games") if one["slug"] == game["slug"]]
    return {"chart": chart, "languages": languages}


def asked_of(given: argparse.Namespace, client: Client, text: str) -> Json:
    """What is asked of the API.

    Raises:
        BadInput: the chart is not told, or told twice.
    """
    has_chart = given.chart is not None or given.design is not None
    if has_chart == (given.game is not None):
        raise BadInput(
            "how a text is read depends on the chart", "give one of --chart, --design and --game"
        )
    told = {"chart": chart_told(given)} if has_chart else game_told(client, given.game)
    more = {"choices": given.choices, "languages": given.languages}
    return told | {key: value for key, value in more.items() if value is not None} | {"text": text}


def marked(text: str, evidence: list[Json]) -> str:
    """The text with >> and << around the words that decided."""
    parts: list[str] = []
    done = 0
    for start, end in sorted({(each["start"], each["end"]) for each in evidence}):
        if start >= done and end > start:
            parts += [text[done:start], ">>", text[start:end], "<<"]
            done = end
    return "".join([*parts, text[done:]])


def verdict(reading: Json) -> str:
    """The outcome and its reason in a sentence."""
    pages, why = reading["pages"], reading["why"]
    listed = f"page{'s' if len(pages) > 1 else ''} {pages_of(pages)}"
    if reading["outcome"] == "counts":
        return f"It counts for {listed}; {why}."
    if reading["outcome"] == "look":
        return (
            f"It needs a look, it may mean {listed}: {why}."
            if pages
            else f"It needs a look: {why}."
        )
    taken_back = reading["reason"] == "withdrawn"
    return f"It {'takes a vote back' if taken_back else 'is no vote'}: {why}."


def show(text: str, reading: Json, console: Console) -> None:
    """Prints the text with its marks, the outcome, and what was read from which words."""
    shown = plain(marked(text, reading["evidence"]))
    shown.highlight_regex(r">>.*?<<", "bold")
    console.print(shown)
    console.print()
    console.print(Text(verdict(reading), style="bold"))
    if reading["evidence"]:
        rows = table("Words", "Read as", "Because")
        for each in reading["evidence"]:
            page = "" if each["page"] is None else f"page {each['page']}"
            rows.add_row(plain(each["text"]), page, plain(each["rule"]))
        console.print()
        console.print(rows)


def main() -> int:
    """Asks how the text is read and shows it."""
    given = make_options().read()
    text = given.text
    if text == "-":
        text = sys.stdin.buffer.read().decode("utf-8", errors="replace").rstrip("\r\n")
    with chosen(given.server, given.token) as client:
        reading: dict[str, Any] = client.post("/read", asked_of(given, client, text))
    if given.json:
        print(json.dumps(reading, ensure_ascii=False, indent=2))
    else:
        with printing() as console:
            show(text, reading, console)
    return 0


if __name__ == "__main__":
    finish(main)
