"""Asks the API one thing and prints the answer, so that a whole game can be run from a terminal.

    python3 scripts/ask.py GET /games
    python3 scripts/ask.py POST /games game.json
    python3 scripts/ask.py POST /games/harbour/rounds/1/open
    python3 scripts/ask.py POST /games/harbour/rounds/1/batches --export comments.csv

The second word is an address of the API without /api; what is sent is JSON from a file, or from
standard input with -. The addresses are at /docs of a running Loopstart.
"""

import environment

environment.enter("run")

import argparse
import json
import sys
from pathlib import Path

from client import Json, chosen
from progress_shown import progress_bar
from terminal import Options, finish, open_file, read_file

from service.errors import BadInput

METHODS = ("GET", "POST", "PUT", "PATCH", "DELETE")


def make_options() -> Options:
    """The command line of ask.py."""
    options = Options(
        prog="ask.py", description="Asks the API one thing, prints the answer.", allow_abbrev=False
    )
    options.add_argument("method", choices=METHODS, metavar="METHOD", help=", ".join(METHODS))
    options.add_argument("path", metavar="PATH", help="such as /games/harbour/rounds/1")
    options.add_argument("content", nargs="?", metavar="JSON", help="a file of JSON to send, or -")
    options.add_argument("--export", metavar="FILE", help="an export of comments to hand in")
    options.add_argument(
        "--field", action="append", default=[], metavar="NAME=VALUE",
        help="a further field beside the export, such as copied_at=2026-03-01T20:00Z",
    )  # fmt: skip
    options.add_server()
    return options


def json_of(name: str) -> Json:
    """What the file holds, or standard input for -.

    Raises:
        BadInput: it cannot be read or is no JSON.
    """
    content = sys.stdin.buffer.read() if name == "-" else read_file(name)
    try:
        return json.loads(content)
    except (ValueError, RecursionError):
        raise BadInput(f"{name} holds no JSON", "mend it, or name another file") from None


def fields_of(given: argparse.Namespace) -> dict[str, str]:
    """The further fields beside an export."""
    parted = [field.partition("=") for field in given.field]
    if any(not sign or not name for name, sign, _ in parted):
        raise BadInput("a --field has no name and value", "write it as NAME=VALUE")
    return {name: value for name, _, value in parted}


def main() -> int:
    """Asks and prints."""
    given = make_options().read()
    if given.export and (given.content or given.method != "POST"):
        raise BadInput("--export is handed in with POST and no JSON", "leave the other out")
    path = "/" + given.path.removeprefix("/api").lstrip("/")
    sent = json_of(given.content) if given.content else None
    fields = fields_of(given)
    with chosen(given.server, given.token) as client:
        if given.export:
            with open_file(given.export) as content, progress_bar() as tell, client.telling(tell):
                answer = client.hand_in(path, Path(given.export).name, content, **fields)
        else:
            answer = client.ask(given.method, path, sent)
    if answer is not None:
        print(json.dumps(answer, ensure_ascii=False, indent=2))
    return 0


if __name__ == "__main__":
    finish(main)
