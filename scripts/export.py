"""Writes the guesses of a game as a table, oldest first, for the host alone.

    python3 scripts/export.py --game harbour
    python3 scripts/export.py --game harbour --out FOLDER

Before the reveal such a table tells the answer, since it says which guesses are right: its name and
its first line then say so. A file that is there already is not written over.
"""

import environment

environment.enter("run")

import csv
import io
from pathlib import Path
from urllib.parse import quote

from client import Json, chosen
from terminal import Options, finish

from service.errors import AlreadyThere, BadInput

MARK = "holds-the-answer"
COLUMNS = ("written from", "written to", "author", "text", "outcome", "counts", "cause", "why")
#: A cell that begins so would be taken for a formula by a spreadsheet.
FORMULAS = ("=", "+", "-", "@", "\t", "\r")


def make_options() -> Options:
    """The command line of export.py."""
    options = Options(
        prog="export.py", description="Writes a game's guesses as a table.", allow_abbrev=False
    )
    options.add_argument("--game", required=True, metavar="NAME", help="the game's short name")
    options.add_argument("--out", default=".", metavar="FOLDER", help="where to write it (here)")
    options.add_server()
    return options


def name_of(game: str, *, revealed: bool) -> str:
    """The file's name; until the reveal it says that the file holds the answer."""
    return f"{game}-guesses{'' if revealed else f'-{MARK}'}.csv"


def table_of(game: str, guesses: list[Json], *, revealed: bool) -> str:
    """The guesses as a table (RFC 4180); until the reveal a line before it warns of the answer."""
    with io.StringIO(newline="") as held:
        writer = csv.writer(held)
        if not revealed:
            warning = f"This file holds the answer of {game}: keep it to yourself until the reveal."
            writer.writerow([warning])
        writer.writerow(COLUMNS)
        for guess in guesses:
            outcome = guess["rulings"][-1]["outcome"] if guess["rulings"] else None
            written = guess["written"]
            cells = (
                *(written["earliest"], written["latest"], guess["author"], guess["text"]),
                *(outcome or guess["outcome"], guess["standing"], guess["cause"] or ""),
                guess["why"],
            )
            writer.writerow(plain(cell) for cell in cells)
        return held.getvalue()


def plain(cell: str) -> str:
    """A cell that no spreadsheet takes for a formula: viewers wrote it."""
    return f"'{cell}" if cell.startswith(FORMULAS) else cell


def write_new(file: Path, words: str, encoding: str = "utf-8-sig") -> None:
    """Writes a file that is not there yet, whole or not at all, for its owner alone.

    A table begins with the mark by which spreadsheets know UTF-8.

    Raises:
        AlreadyThere: there is such a file.
        BadInput: it cannot be written.
    """
    part = file.with_name(f"{file.name}.part")
    try:
        if file.exists():
            raise AlreadyThere("file", str(file), "move it away, or name another folder with --out")
        part.touch(mode=0o600)
        part.write_text(words, encoding, newline="")
        part.rename(file)
    except OSError as trouble:
        part.unlink(missing_ok=True)
        raise BadInput(
            f"{file} cannot be written ({trouble.strerror})", "name another folder with --out"
        ) from None


def main() -> int:
    """Asks and writes."""
    given = make_options().read()
    with chosen(given.server, given.token) as client:
        path = f"/games/{quote(given.game, safe='')}"
        revealed = client.get(f"{path}/mystery")["revealed"] is not None
        guesses = client.get(f"{path}/guesses")["guesses"]
    file = Path(given.out) / name_of(given.game, revealed=revealed)
    write_new(file, table_of(given.game, guesses, revealed=revealed))
    print(f"{len(guesses)} guesses written to {file}.")
    if not revealed:
        print("It holds the answer, as its name and its first line say: keep it to yourself.")
    return 0


if __name__ == "__main__":
    finish(main)
