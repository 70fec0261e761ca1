"""The command line of pace.py: its commands and their options."""

import argparse

from terminal import Options

DETAILS = ("fractional", "backstitch", "beads")
#: The parts of the pace that everybody may see, as the API names them.
PARTS = ("page", "chart", "forecast", "next round", "picture", "update")


def make_options() -> Options:
    """The command line of pace.py."""
    options = Options(
        prog="pace.py",
        description="The stitch log and the pace: when the page is done, and when the next vote "
        "must open.",
        allow_abbrev=False,
    )
    commands = options.add_subparsers(dest="command", metavar="COMMAND", required=True)
    for name, (says, add) in COMMANDS.items():
        command = commands.add_parser(name, help=says, description=says, allow_abbrev=False)
        add(command)
        command.add_argument("--game", required=True, metavar="NAME", help="the game's short name")
        command.add_server()
    return options


def add_log(options: argparse.ArgumentParser) -> None:
    """The options of `log`."""
    _add_entry(options)
    options.add_argument("--page", type=int, metavar="N", help="the page (the one in hand)")
    options.add_argument("--piece", metavar="NAME", help="another piece instead")


def add_correct(options: argparse.ArgumentParser) -> None:
    """The options of `correct`."""
    options.add_argument("number", type=int, metavar="ENTRY", help="the entry's number in the log")
    _add_entry(options)
    options.add_argument("--take-back", action="store_true", help="let nothing stand for it")


def _add_entry(options: argparse.ArgumentParser) -> None:
    options.add_argument(
        "stitches", type=int, nargs="?", metavar="STITCHES", help="how many, on the day"
    )
    options.add_argument("--day", metavar="DAY", help="the day, as in 2026-03-16 (today)")
    how = options.add_mutually_exclusive_group()
    how.add_argument("--since-last", action="store_true", help="they are since the last entry")
    how.add_argument("--so-far", action="store_true", help="they are all of the page so far")
    how.add_argument("--percent", metavar="P", help="instead: how much of the page is done")
    options.add_argument("--first", metavar="DAY", help="the first day they are of")
    for name in DETAILS:
        options.add_argument(
            f"--{name}", type=int, default=0, metavar="N", help="beside the crosses"
        )
    options.add_argument("--note", default="", metavar="WORDS", help="for yourself alone")


def add_rest(options: argparse.ArgumentParser) -> None:
    """The options of `rest`."""
    options.add_argument("first", metavar="FIRST", help="its first day")
    options.add_argument("last", metavar="LAST", help="its last day")
    options.add_argument("--note", default="", metavar="WORDS", help="for yourself alone")


def add_asked(options: argparse.ArgumentParser) -> None:
    """The options of what is asked of the log."""
    options.add_argument("--today", metavar="DAY", help="as it stood on that day")
    options.add_argument("--confidence", metavar="C", help="how often a range holds (0.8)")


def add_since(options: argparse.ArgumentParser) -> None:
    """The options of `update` and `progress`."""
    add_asked(options)
    options.add_argument("--first", metavar="DAY", help="since that day (a fortnight)")


def add_rounds(options: argparse.ArgumentParser) -> None:
    """The options of `rounds`."""
    add_asked(options)
    options.add_argument("--most", type=int, default=12, metavar="N", help="at most so many (12)")


def add_needed(options: argparse.ArgumentParser) -> None:
    """The options of `needed`."""
    options.add_argument("by", metavar="DAY", help="the day by which it is to be done")
    options.add_argument("--chart", action="store_true", help="the whole chart, not the page")
    add_asked(options)


def add_out(options: argparse.ArgumentParser) -> None:
    """The options of `export`."""
    options.add_argument("--out", default="-", metavar="FILE", help="where to write it (printed)")


def add_picture(options: argparse.ArgumentParser) -> None:
    """The options of `picture`."""
    add_asked(options)
    options.add_argument("--page", type=int, metavar="N", help="the page (the one in hand)")
    add_out(options)


def add_import(options: argparse.ArgumentParser) -> None:
    """The options of `import`."""
    options.add_argument("file", metavar="FILE", help="a table, as `export` writes it")


def add_page(options: argparse.ArgumentParser) -> None:
    """The options of `page`."""
    options.add_argument("page", type=int, metavar="N", help="the page")
    options.add_argument("--crosses", type=int, metavar="N", help="how many crosses it has")
    for name in DETAILS:
        options.add_argument(f"--{name}", type=int, metavar="N", help="how many it has beside them")


def add_plan(options: argparse.ArgumentParser) -> None:
    """The options of `plan`."""
    options.add_argument("--every", type=int, metavar="N", help="stitches of every page")
    options.add_argument("--round-days", type=int, metavar="N", help="days a vote is open (2)")
    options.add_argument(
        "--margin-days", type=int, metavar="N", help="days from a closing to the finish (1)"
    )
    options.add_argument(
        "--show", action="append", choices=PARTS, metavar="PART",
        help=f"let everybody see it: {', '.join(PARTS)}; may be repeated",
    )  # fmt: skip
    options.add_argument("--show-nothing", action="store_true", help="let nobody see any of it")


def add_nothing(_: argparse.ArgumentParser) -> None:
    """A command without options of its own."""


#: Each command: what it does, and its options.
COMMANDS = {
    "log": ("Adds stitches to the log.", add_log),
    "rest": ("Adds days on which you rest from the piece.", add_rest),
    "correct": ("Corrects an entry of the log, which stays in it.", add_correct),
    "show": ("Shows the log.", add_nothing),
    "forecast": ("Tells when the page is done and the next vote must open.", add_asked),
    "rounds": ("Tells the rounds to come, as far as can be seen.", add_rounds),
    "needed": ("Tells what it would take to be done by a day.", add_needed),
    "progress": ("Tells the stitches by piece and by update.", add_since),
    "update": ("Writes the paragraph for the update post.", add_since),
    "picture": ("Draws the log with the forecast (SVG).", add_picture),
    "export": ("Writes the log as a table (CSV).", add_out),
    "import": ("Takes a table of the log in.", add_import),
    "page": ("Tells the stitches of a page by hand.", add_page),
    "plan": ("Plans the rounds and chooses what everybody sees.", add_plan),
}
