"""Shows a count in the terminal, so that a person can follow how the result came about."""

import os
import re
import sys
import unicodedata
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from typing import Any

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

Json = Any

#: How many comments of one cause, and how many voters of one page, are shown without --all.
SHOWN_AT_ONCE = 25
#: The causes that only the host can settle.
LOOKS = ("needs a look", "cannot tell when")
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
    line = TURNING.sub("", " ⏎ ".join(filter(None, words.split("\n"))))
    return Text("".join("\ufffd" if unicodedata.category(sign) == "Cc" else sign for sign in line))


@contextmanager
def printing() -> Iterator[Console]:
    """A console to print a count on; into a pipe it leaves no blanks at the lines' ends."""
    console = make_console()
    if console.is_terminal:
        yield console
        return
    with console.capture() as printed:
        yield console
    print("\n".join(line.rstrip() for line in printed.get().split("\n")), end="")


def show(count: Json, console: Console, *, everything: bool) -> None:
    """Prints the whole count; `everything` shows also the long lists in full."""
    _show_intake(count, console, everything=everything)
    _show_rules(count, console)
    _show_votes(count, console, everything=everything)
    _show_set_aside(count, console, everything=everything)
    _show_looks(count, console)
    _show_steps(count["steps"], console)
    console.print()
    console.print(Text(count["why"], style="bold"))
    if count["figures"]["looks"]:
        console.print(plain(count["can_change_why"]))
    _show_announcement(count, console)


def pages_of(pages: Iterable[int]) -> str:
    """Pages as a list for people."""
    return ", ".join(str(page) for page in pages)


def runs_of(pages: list[int]) -> str:
    """Ascending pages for people, neighbours in number drawn together: 1 to 3, 7."""
    runs: list[list[int]] = []
    for page in pages:
        if runs and runs[-1][-1] == page - 1:
            runs[-1].append(page)
        else:
            runs.append([page])
    told = [f"{run[0]} to {run[-1]}" if len(run) > 2 else pages_of(run) for run in runs]
    return ", ".join(told) or "none"


def moment(instant: str) -> str:
    """An instant of the API for people: 2026-03-01 18:00 UTC."""
    return f"{instant[:16].replace('T', ' ')} UTC"


def _sentence(why: str) -> str:
    """A reason as the sentence that it is."""
    whole = why[:1].upper() + why[1:]
    return whole if whole.endswith((".", "?", "!")) else f"{whole}."


def _title(console: Console, words: str) -> None:
    console.print()
    console.print(Text(words, style="bold"))


def table(*headings: str) -> Table:
    """An empty table that folds long words and cuts none."""
    empty = Table(box=box.SIMPLE_HEAD, pad_edge=False, show_edge=False)
    for heading in headings:
        right = heading in {"Page", "Votes", "Entry", "Stitches", "Done"}
        empty.add_column(
            heading, justify="right" if right else "left", no_wrap=right, overflow="fold"
        )
    return empty


def _show_intake(count: Json, console: Console, *, everything: bool) -> None:
    """How the export was understood."""
    read = count["comments"]
    console.print(f"{read} comment{'' if read == 1 else 's'} read ({count['format']}).")
    if count["mapping"]:
        found = ", ".join(f"{meaning}={header}" for meaning, header in count["mapping"].items())
        console.print(plain(f"Columns: {found}"))
    for note in count["notes"]:
        console.print(plain(note))
    if count["unreadable_count"]:
        _title(console, f"Could not be read ({count['unreadable_count']})")
        rows = table("Where", "Words", "Why")
        shown = count["unreadable"] if everything else count["unreadable"][:SHOWN_AT_ONCE]
        for record in shown:
            rows.add_row(
                plain(record["place"]), plain(record["text"]), plain(_sentence(record["why"]))
            )
        if len(shown) < count["unreadable_count"]:
            rows.add_row("", f"and {count['unreadable_count'] - len(shown)} more", "")
        console.print(rows)


def _show_rules(count: Json, console: Console) -> None:
    """The chart and the rules that were counted by, to check the options against."""
    chart, rules = count["chart"], count["rules"]
    console.print(
        f"Chart of {chart['columns']} x {chart['rows']}, pages 1 to {chart['page_count']}; "
        f"votable: {runs_of(rules['votable'])}."
    )
    closes = moment(rules["closes"]) if rules["closes"] else "not closed yet"
    most = "1 page" if rules["choices"] == 1 else f"up to {rules['choices']} pages"
    console.print(
        f"Voting: {moment(rules['opens'])} to {closes}; {most} a voter, "
        f"the {rules['standing']} ballot stands."
    )


def _show_votes(count: Json, console: Console, *, everything: bool) -> None:
    ballots = count["figures"]["ballots"]
    _title(console, f"Votes ({ballots} ballot{'' if ballots == 1 else 's'})")
    if not count["tally"]:
        console.print("No page has a vote.")
        return
    rows = table("Page", "Votes", "Chosen by")
    for row in count["tally"]:
        voters = [each["author"] for each in count["ballots"] if row["page"] in each["pages"]]
        named = voters if everything else voters[:VOTERS_AT_ONCE]
        rows.add_row(str(row["page"]), str(row["votes"]), plain(_named(named, row["votes"])))
    console.print(rows)


def _named(voters: list[str], many: int) -> str:
    """The voters of a page that are named, and how many there are besides."""
    if len(voters) == many:
        return "; ".join(voters)
    if not voters:
        return f"{many} voters"
    named = voters[: VOTERS_AT_ONCE - 1] if len(voters) == VOTERS_AT_ONCE else voters
    return f"{'; '.join(named)} and {many - len(named)} more"


def _show_set_aside(count: Json, console: Console, *, everything: bool) -> None:
    looks = {comment["key"] for comment in count["looks"]}
    aside = [comment for comment in count["set_aside"] if comment["key"] not in looks]
    causes = {
        cause: many for cause, many in count["figures"]["set_aside"].items() if cause not in LOOKS
    }
    if not causes:
        return
    _title(console, f"Set aside ({sum(causes.values())})")
    rows = table("Author", "Words", "Why")
    for cause in dict.fromkeys([*(comment["cause"] for comment in aside), *causes]):
        of_cause = [comment for comment in aside if comment["cause"] == cause]
        shown = of_cause if everything else of_cause[:SHOWN_AT_ONCE]
        for comment in shown:
            rows.add_row(
                plain(comment["author"]), plain(comment["text"]), plain(_sentence(comment["why"]))
            )
        if len(shown) < causes[cause]:
            left = causes[cause] - len(shown)
            rows.add_row("", f"and {left} more ({cause}): --all shows them", "")
    console.print(rows)


def _show_looks(count: Json, console: Console) -> None:
    many = count["figures"]["looks"]
    if not many:
        return
    _title(console, f"Needs a look ({many})")
    rows = table("Author", "Words", "Read from", "May mean", "Why")
    for comment in count["looks"]:
        rows.add_row(
            plain(comment["author"]),
            plain(comment["text"]),
            plain(", ".join(dict.fromkeys(f"“{e['text']}”" for e in comment["evidence"]))),
            pages_of(comment["pages"]),
            plain(_sentence(comment["why"])),
        )
    if len(count["looks"]) < many:
        rows.add_row("", f"and {many - len(count['looks'])} more: --all shows them", "", "", "")
    console.print(rows)


def _show_steps(steps: list[Json], console: Console) -> None:
    for number, step in enumerate(steps, start=1):
        _title(console, f"Tie-break {number}: {step['rule']}")
        console.print(f"Tied: {pages_of(step['tied'])}. Kept: {pages_of(step['kept'])}.")
        for page, value in step["values"]:
            console.print(f"  page {page}: {value}")
        console.print(plain(step["why"]))


def _show_announcement(count: Json, console: Console) -> None:
    """The words to paste, exactly as they are, whatever the width."""
    words = count["announcement"].rstrip()
    if not words:
        return
    is_final = count["winner"] is not None and not count["can_change"] and count["rules"]["closes"]
    heading = "ready to paste" if is_final else "as it would read now"
    _title(console, f"Announcement, {heading}")
    console.print("-" * 28)
    console.out(words, highlight=False)
    console.print("-" * 28)
