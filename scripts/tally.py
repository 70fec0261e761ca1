"""Counts one round's comments: an export's, or a stored round's.

    python3 scripts/tally.py FILE --chart 9x7 --zone Europe/Lisbon --opens TIME --closes TIME
    python3 scripts/tally.py --game NAME --round N

FILE is an export, or - for pasted text on standard input. Prints the pages by votes, what was set
aside and why, what needs a look with the words it was read from, each tie-break step, the winner
and an announcement ready to paste. Nothing is stored. All options: --help.
"""

import environment

environment.enter("run")

import argparse
import json
import sys
from pathlib import Path
from urllib.parse import quote

from client import Json, chosen
from tally_options import make_options, question_of
from tally_shown import printing, show
from terminal import finish, read_file

from service.errors import BadInput

PASTED = "pasted text"


def export_of(name: str) -> tuple[str, bytes]:
    """The export's name for messages, and its bytes.

    Raises:
        BadExport: there is no such file, or it cannot be read.
    """
    if name == "-":
        return PASTED, sys.stdin.buffer.read()
    return Path(name).name, read_file(name)


def counted(given: argparse.Namespace) -> Json:
    """The count from the API, as data."""
    if given.game is None and given.round is not None:
        raise BadInput("--round is a round of a stored game", "add --game NAME")
    if given.game is not None:
        if given.file is not None:
            raise BadInput(
                "FILE and --game are two ways to say what to count", "give one of the two"
            )
        if given.round is None:
            raise BadInput("the stored game has several rounds", "add --round N")
        with chosen(given.server, given.token) as client:
            return client.get(f"/games/{quote(given.game, safe='')}/rounds/{given.round}/tally")
    if given.file is None:
        raise BadInput(
            "no export is named", "add FILE, or - for pasted text, or --game NAME --round N"
        )
    question = question_of(given)
    name, content = export_of(given.file)
    with chosen(given.server, given.token) as client:
        return client.hand_in("/tally", name, content, question=json.dumps(question))


def main() -> int:
    """Counts and shows."""
    given = make_options().read()
    count = counted(given)
    if given.json:
        print(json.dumps(count, ensure_ascii=False, indent=2))
    else:
        with printing() as console:
            show(count, console, everything=given.all)
    return 0


if __name__ == "__main__":
    finish(main)
