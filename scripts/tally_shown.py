"""Shows a count in the terminal, so that a person can follow how the result came about."""

import os
import re
import sys
import unicodedata
from collections import Counter
from collections.abc import Iterable
from typing import Any

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

Json = Any

#: How many comments of one cause, and how many voters of one page, are shown without --all.
SHOWN_AT_ONCE = 25
VOTERS_AT_ONCE = 6
#: The width where no terminal tells one: a pipe or a file. Nothing is cut, long words are folded.
WIDTH_OF_A_PIPE = 120
#: Characters that turn the direction of a line: a name may not do that to the rest of a table.
TURNING = re.compile("[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]")


def make_console() -> Console:
    """A console of the terminal's width; into a pipe without colours."""
    if sys.stdout.isatty():
        return Console(highlight=False, emoji=False)
    width = os.environ.get("COLUMNS", "")
    return Console(
        width=int(width) if width.isdigit() and int(width) > 20 else WIDTH_OF_A_PIPE,
        color_system=None,
        highlight=False,
        emoji=False,
    )


def plain(words: str) -> Text:
    """A stranger's words as one line of text: no colours, no control characters, no direction."""
    line = TURNING.sub("", " ⏎ ".join(words.split("\n")))
    return Text("".join("\ufffd" if unicodedata.category(sign) == "Cc" else sign for sign in line))


def show(count: Json, console: Console, *, everything: bool) -> None:
    """Prints the whole count; `everything` shows also the long lists in full."""
    _show_intake(count, console)
    _show_votes(count, console, everything=everything)
    looks = {comment["key"] for comment in count["looks"]}
    aside = [comment for comment in count["set_aside"] if comment["key"] not in looks]
    _show_set_aside(aside, console, everything=everything)
    _show_looks(count["looks"], console)
    _show_steps(count["steps"], console)
    console.print()
    console.print(Text(count["why"], style="bold"))
    _show_announcement(count, console)


def pages_of(pages: Iterable[int]) -> str:
    """Pages as a list for people."""
    return ", ".join(str(page) for page in pages)


def _title(console: Console, words: str) -> None:
    console.print()
    console.print(Text(words, style="bold"))


def _table(*headings: str) -> Table:
    table = Table(box=box.SIMPLE_HEAD, pad_edge=False, show_edge=False)
    for heading in headings:
        right = heading in {"Page", "Votes"}
        table.add_column(
            heading, justify="right" if right else "left", no_wrap=right, overflow="fold"
        )
    return table


def _show_intake(count: Json, console: Console) -> None:
    """How the export was understood."""
    read = count["comments"]
    console.print(f"{read} comment{'' if read == 1 else 's'} read ({count['format']}).")
    found = ", ".join(f"{meaning}: {header}" for meaning, header in _pairs(count.get("mapping")))
    if found:
        console.print(Text("Columns: ").append_text(plain(found)))
    for note in count.get("notes") or ():
        console.print(plain(note))
    if count.get("unreadable"):
        _title(console, f"Could not be read ({len(count['unreadable'])})")
        table = _table("Where", "Words", "Why")
        for record in count["unreadable"]:
            table.add_row(plain(record["place"]), plain(record["text"]), plain(record["why"]))
        console.print(table)


def _pairs(mapping: Json) -> list[tuple[str, str]]:
    if isinstance(mapping, dict):
        return list(mapping.items())
    return [(name, value) for name, value in mapping or ()]


def _show_votes(count: Json, console: Console, *, everything: bool) -> None:
    _title(console, f"Votes ({len(count['ballots'])} ballots)")
    if not count["tally"]:
        console.print("No page has a vote.")
        return
    table = _table("Page", "Votes", "Chosen by")
    for row in count["tally"]:
        voters = [each["author"] for each in count["ballots"] if row["page"] in each["pages"]]
        table.add_row(str(row["page"]), str(row["votes"]), plain(_named(voters, everything)))
    console.print(table)


def _named(voters: list[str], everything: bool) -> str:  # noqa: FBT001 - one of two ways to say it
    if everything or len(voters) <= VOTERS_AT_ONCE:
        return ", ".join(voters)
    return f"{', '.join(voters[: VOTERS_AT_ONCE - 1])} and {len(voters) - VOTERS_AT_ONCE + 1} more"


def _show_set_aside(aside: list[Json], console: Console, *, everything: bool) -> None:
    if not aside:
        return
    _title(console, f"Set aside ({len(aside)})")
    causes = Counter(comment["cause"] for comment in aside)
    table = _table("Author", "Words", "Why")
    for cause in causes:
        of_cause = [comment for comment in aside if comment["cause"] == cause]
        shown = of_cause if everything else of_cause[:SHOWN_AT_ONCE]
        for comment in shown:
            table.add_row(plain(comment["author"]), plain(comment["text"]), plain(comment["why"]))
        if len(shown) < len(of_cause):
            left = len(of_cause) - len(shown)
            table.add_row("", f"and {left} more ({cause}): --all shows them", "")
    console.print(table)


def _show_looks(looks: list[Json], console: Console) -> None:
    if not looks:
        return
    _title(console, f"Needs a look ({len(looks)})")
    table = _table("Author", "Words", "Read from", "May mean", "Why")
    for comment in looks:
        table.add_row(
            plain(comment["author"]),
            plain(comment["text"]),
            plain(", ".join(dict.fromkeys(f"“{e['text']}”" for e in comment["evidence"]))),
            pages_of(comment["pages"]),
            plain(comment["why"]),
        )
    console.print(table)


def _show_steps(steps: list[Json], console: Console) -> None:
    for number, step in enumerate(steps, start=1):
        _title(console, f"Tie-break {number}: {step['rule']}")
        console.print(f"Tied: {pages_of(step['tied'])}. Kept: {pages_of(step['kept'])}.")
        for page, value in _pairs(step.get("values")):
            console.print(f"  page {page}: {value}")
        console.print(plain(step["why"]))


def _show_announcement(count: Json, console: Console) -> None:
    """The words to paste, exactly as they are, whatever the width."""
    words = count.get("announcement")
    if not words:
        return
    _title(console, "Announcement, ready to paste")
    console.print("-" * 28)
    # Not by way of the console: it would fold the lines.
    console.file.write(words.rstrip() + "\n")
    console.print("-" * 28)
