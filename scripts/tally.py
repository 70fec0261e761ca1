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
import shutil
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryFile
from typing import BinaryIO
from urllib.parse import quote

from client import Client, Json, chosen
from progress_shown import progress_bar
from tally_options import make_options, question_of
from tally_shown import printing, show
from terminal import finish, open_file

from service.errors import BadInput

PASTED = "pasted text"
#: More comments than there are.
EVERYTHING = 10_000_000


@contextmanager
def export_of(name: str) -> Iterator[tuple[str, BinaryIO]]:
    """The export's name for messages, and its bytes to be read piece by piece.

    Raises:
        BadExport: there is no such file, or it cannot be read.
    """
    if name != "-":
        with open_file(name) as file:
            yield Path(name).name, file
        return
    with TemporaryFile() as pasted:
        shutil.copyfileobj(sys.stdin.buffer, pasted)
        pasted.seek(0)
        yield PASTED, pasted


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
            place = f"/games/{quote(given.game, safe='')}/rounds/{given.round}"
            wanted = {"most": EVERYTHING} if is_whole(given) else {}
            return client.get(f"{place}/tally", **wanted)
    if given.file is None:
        raise BadInput(
            "no export is named", "add FILE, or - for pasted text, or --game NAME --round N"
        )
    question = question_of(given)
    place = f"/tally?most={EVERYTHING}" if is_whole(given) else "/tally"
    with export_of(given.file) as export, chosen(given.server, given.token) as client:
        return handed_in(client, place, export, json.dumps(question))


def handed_in(client: Client, place: str, export: tuple[str, BinaryIO], question: str) -> Json:
    """What a count of the export tells; meanwhile how far it is."""
    name, content = export
    with progress_bar() as tell, client.telling(tell):
        return client.hand_in(place, name, content, question=question)


def is_whole(given: argparse.Namespace) -> bool:
    """Whether every comment is to be listed, however many there are."""
    return bool(given.all or given.json)


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
