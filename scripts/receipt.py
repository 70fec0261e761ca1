"""Shows what became of one voter's comments: for "why was my vote not counted?".

    python3 scripts/receipt.py VOTER --game NAME --round N

VOTER is the author's name, in any case, or the author's id. Prints all their comments, how each was
read, what the host ruled, what stands and why. It is the host's to pass on: it names the voter and
quotes the comments. A viewer finds the same in the record, without words: scripts/verify.py.
"""

import environment

environment.enter("run")

import json
from urllib.parse import quote

from client import Json, chosen
from rich.console import Console
from rich.text import Text
from tally_shown import moment, pages_of, plain, printing
from terminal import Options, finish


def make_options() -> Options:
    """The command line of receipt.py."""
    options = Options(
        prog="receipt.py",
        description="Shows what became of one voter's comments, and why.",
        allow_abbrev=False,
    )
    options.add_argument("voter", metavar="VOTER", help="the author's name, or the author's id")
    options.add_argument("--game", metavar="NAME", required=True, help="the stored game")
    options.add_argument("--round", type=int, metavar="N", required=True, help="its round")
    options.add_argument("--json", action="store_true", help="print the receipts as data")
    options.add_server()
    return options


def show(receipts: list[Json], console: Console) -> None:
    """Prints the receipts; several where several voters have one name."""
    if len(receipts) > 1:
        console.print(f"{len(receipts)} voters have that name.")
    for receipt in receipts:
        console.print(Text.assemble("Voter ", (plain(receipt["voter"]).plain, "bold")))
        for comment in receipt["comments"]:
            _show_comment(comment, console)
        console.print(plain(receipt["why"]))
        if receipt["revision"] is not None:
            console.print(f"The announced result is revision {receipt['revision']}.")
        console.print()


def _show_comment(comment: Json, console: Console) -> None:
    written = comment["written"]
    when = moment(written["earliest"])
    if written["earliest"] != written["latest"]:
        when = f"between {when} and {moment(written['latest'])}"
    console.print()
    console.print(plain(f"{when}: “{comment['text']}”"))
    console.print(plain(f"  Read: {_reading_in_words(comment['reading'])}"))
    for ruling in comment["rulings"]:
        console.print(plain(f"  Ruled {moment(ruling['at'])}: {_ruling_in_words(ruling)}"))
    outcome = "counts" if comment["counts"] else f"set aside, {comment['cause']}"
    console.print(plain(f"  Outcome: {outcome}. {comment['why']}"))


def _reading_in_words(reading: Json) -> str:
    pages = f" {pages_of(reading['pages'])}" if reading["pages"] else ""
    words = ", ".join(dict.fromkeys(f"“{one['text']}”" for one in reading["evidence"]))
    return f"{reading['outcome']}{pages}{f' from {words}' if words else ''}. {reading['why']}"


def _ruling_in_words(ruling: Json) -> str:
    said = f"page {pages_of(ruling['pages'])}" if ruling["pages"] else "no page"
    if ruling["withdraws"]:
        said = "takes back what came before"
    elif ruling["in_time"] is not None and not ruling["pages"]:
        said = "in time" if ruling["in_time"] else "not in time"
    return f"{said}, because: {ruling['reason']}"


def main() -> int:
    """Asks and shows."""
    given = make_options().read()
    path = f"/games/{quote(given.game, safe='')}/rounds/{given.round}/receipts"
    with chosen(given.server, given.token) as client:
        receipts = client.get(path, voter=given.voter)
    if given.json:
        print(json.dumps(receipts, ensure_ascii=False, indent=2))
    else:
        with printing() as console:
            show(receipts, console)
    return 0


if __name__ == "__main__":
    finish(main)
