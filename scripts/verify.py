"""Checks the reveal of a game, with Python and nothing else.

    python3 scripts/verify.py REVEAL
    python3 scripts/verify.py REVEAL --seal HEX

REVEAL is the JSON of the reveal; - reads it from standard input. The program makes the seals anew
from answer and salt. HEX is the seal that was shown before the game, to be compared.

| status | means |
|---|---|
| 0 | everything fits |
| 1 | something does not fit |
| 2 | the command line or the reveal cannot be used |
"""

import sys

if sys.version_info < (3, 9):  # noqa: UP036 - whoever checks a reveal may have any Python
    sys.exit(f"This program needs Python 3.9 or newer, and this is {sys.version.split()[0]}.")

import argparse
import json
from pathlib import Path
from typing import Any, NoReturn

from verifying.reveal import FORMAT, check_reveal, is_reveal, show_reveal

FITS, DOES_NOT_FIT, CANNOT_BE_USED = 0, 1, 2


def make_options() -> argparse.ArgumentParser:
    """The command line of verify.py."""
    options = argparse.ArgumentParser(
        prog="verify.py",
        description="Makes the seals of a reveal anew and says whether everything fits.",
        allow_abbrev=False,
    )
    options.add_argument("reveal", metavar="REVEAL", help="the reveal, a file of JSON; - reads it")
    options.add_argument(
        "--seal", metavar="HEX", help="the seal that was shown before the game, to compare"
    )
    return options


def read_value(name: str) -> Any:
    """The value of JSON in a file, or from standard input for -."""
    try:
        content = sys.stdin.buffer.read() if name == "-" else Path(name).read_bytes()
    except (OSError, ValueError) as trouble:
        why = getattr(trouble, "strerror", None) or "its name cannot be one"
        stop(f"{name}: this file cannot be read ({why}): check the name and the folder.")
    try:
        return json.loads(content.decode("utf-8-sig"))
    except (ValueError, RecursionError) as trouble:
        stop(f"{name}: this is no JSON ({trouble}): get the reveal again.")


def stop(sentence: str) -> NoReturn:
    """Ends the program where it has nothing to check."""
    print(sentence, file=sys.stderr)
    sys.exit(CANNOT_BE_USED)


def main() -> int:
    """Checks and tells."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
    given = make_options().parse_args()
    value = read_value(given.reveal)
    if not is_reveal(value):
        stop(f"{given.reveal}: this is no reveal ({FORMAT!r}) that this program knows.")
    report = check_reveal(value, given.seal)
    show_reveal(report)
    return FITS if report.fits else DOES_NOT_FIT


if __name__ == "__main__":
    sys.exit(main())
