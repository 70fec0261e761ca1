"""Recounts the record of a round, or checks the reveal of a game, with Python and nothing else.

    python3 scripts/verify.py RECORD
    python3 scripts/verify.py RECORD --digest HEX --voter NAME --runoff RECORD
    python3 scripts/verify.py REVEAL --seal HEX

RECORD is the JSON that a round's result was announced with. The program settles every comment anew,
counts, repeats the tie-breaks and the draw, checks the digest, and says in words what it checked.
Of a REVEAL it makes the seals anew from answer and salt. Where something does not fit it names the
field. It imports nothing of the service.

| status | means |
|---|---|
| 0 | everything fits |
| 1 | something does not fit |
| 2 | the command line, the record or the reveal cannot be used |
"""

import sys

if sys.version_info < (3, 9):  # noqa: UP036 - whoever checks a record may have any Python
    sys.exit(f"This program needs Python 3.9 or newer, and this is {sys.version.split()[0]}.")

import argparse
from pathlib import Path
from typing import Any, NoReturn

from verifying.canonical import NotCanonical, read_json
from verifying.report import Report, check, show
from verifying.reveal import check_reveal, is_reveal, show_reveal
from verifying.voter import show_voter

FITS, DOES_NOT_FIT, CANNOT_BE_USED = 0, 1, 2
MOST_TROUBLES = 20


def make_options() -> argparse.ArgumentParser:
    """The command line of verify.py."""
    options = argparse.ArgumentParser(
        prog="verify.py",
        description="Recounts the record of a round, or checks a reveal, and says whether all fits.",
        allow_abbrev=False,
    )
    options.add_argument(
        "record", metavar="RECORD", help="the record or the reveal, a file of JSON; - reads it"
    )
    options.add_argument(
        "--digest", metavar="HEX", help="the digest that was announced, to compare"
    )
    options.add_argument(
        "--voter", metavar="NAME", help="show what became of this voter's comments; a name or an id"
    )
    options.add_argument(
        "--runoff", metavar="RECORD", help="the record of the runoff, to be checked as well"
    )
    options.add_argument(
        "--seal",
        metavar="HEX",
        help="of a reveal, the seal that was shown before the game, to compare",
    )
    return options


def read_record(name: str) -> Any:
    """The value of JSON in a file, or from standard input for -."""
    try:
        content = sys.stdin.buffer.read() if name == "-" else Path(name).read_bytes()
    except (OSError, ValueError) as trouble:
        why = getattr(trouble, "strerror", None) or "its name cannot be one"
        stop(f"{name}: this file cannot be read ({why}): check the name and the folder.")
    try:
        return read_json(content.decode("utf-8-sig"))
    except (ValueError, RecursionError) as trouble:
        stop(f"{name}: this is no JSON as a record has it ({trouble}): get it again.")


def stop(sentence: str) -> NoReturn:
    """Ends the program where it has nothing to check."""
    print(sentence, file=sys.stderr)
    sys.exit(CANNOT_BE_USED)


def checked(record: Any, name: str, digest: "str | None") -> Report:
    """The report on one record."""
    try:
        return check(record, digest=digest)
    except (NotCanonical, RecursionError) as trouble:
        stop(f"{name}: this cannot be a record ({trouble}): get it again.")


def main() -> int:
    """Checks and tells."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
    given = make_options().parse_args()
    record = read_record(given.record)
    if is_reveal(record):
        revealed = check_reveal(record, given.seal)
        show_reveal(revealed)
        return FITS if revealed.fits else DOES_NOT_FIT
    report = checked(record, given.record, given.digest)
    if given.runoff is not None:
        second = read_record(given.runoff)
        report = report.with_runoff(record, second, checked(second, given.runoff, None))
    show(report, MOST_TROUBLES)
    if given.voter is not None and report.fits:
        print()
        show_voter(record, given.voter)
    return FITS if report.fits else DOES_NOT_FIT


if __name__ == "__main__":
    sys.exit(main())
