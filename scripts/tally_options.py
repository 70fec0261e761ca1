"""The options of tally.py, and the question to the API that they make."""

import argparse
import re
from typing import Any

from terminal import Options

from service.chart.grid import CORNERS, JOINED, ORDERS
from service.chart.votable import NEXT_FROM
from service.counting.round import STANDINGS, TIE_BREAKS
from service.errors import BadInput

Question = dict[str, Any]

EPILOG = """\
examples:
  python3 scripts/tally.py comments.csv --chart 9x7 --zone Atlantic/Faroe
      --opens 2026-02-27T18:00 --closes 2026-03-01T18:00 --host "Island Guild"
  python3 scripts/tally.py - --chart 9x7 --stitched 12,13 --in-hand 21 ...   (paste, then end input)
  python3 scripts/tally.py --game "Harbour" --round 2
"""


def make_options() -> Options:
    """The command line of tally.py."""
    options = Options(
        prog="tally.py",
        description="Counts one round's comments and shows how the result came about.",
        epilog=EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    options.add_argument(
        "file",
        nargs="?",
        metavar="FILE",
        help="the export; - reads pasted text from standard input",
    )
    add_chart(options.add_argument_group("the chart"))
    _add_round(options.add_argument_group("the round"))
    _add_export(options.add_argument_group("the export"))
    _add_where(options.add_argument_group("a stored game, and what is shown"))
    options.add_server()
    return options


def add_chart(group: argparse._ArgumentGroup) -> None:
    """The options that tell the chart."""
    group.add_argument("--chart", type=_pair, metavar="9x7", help="columns x rows of pages")
    group.add_argument(
        "--design", type=_pair, metavar="630x490", help="the design's size in stitches, with --page"
    )
    group.add_argument(
        "--page", type=_pair, metavar="70x70", help="a page's size in stitches, without the overlap"
    )
    group.add_argument(
        "--overlap", type=int, metavar="N", help="rows and columns that a page repeats of the next"
    )
    group.add_argument("--order", choices=ORDERS, help="how pages are numbered (across)")
    group.add_argument(
        "--start-corner", choices=CORNERS, metavar="CORNER",
        help=f"where page 1 is: {', '.join(CORNERS)} (top left)",
    )  # fmt: skip
    group.add_argument(
        "--back-and-forth", action="store_true", help="every second row or column runs back"
    )
    group.add_argument(
        "--no-page", type=_cell, action="append", metavar="COLUMN,ROW",
        help="a cell without a page; may be repeated",
    )  # fmt: skip
    group.add_argument(
        "--joined", choices=JOINED, metavar="HOW", help=f"{' | '.join(JOINED)} (edge)"
    )


def _add_round(group: argparse._ArgumentGroup) -> None:
    group.add_argument("--zone", help="the host's time zone, such as Europe/Lisbon")
    group.add_argument("--opens", metavar="TIME", help="opening, local or with an offset")
    group.add_argument("--closes", metavar="TIME", help="closing; without one, the count so far")
    group.add_argument("--stitched", type=_pages, metavar="1,2", help="pages stitched already")
    group.add_argument("--in-hand", type=_pages, metavar="3", help="pages being stitched")
    group.add_argument("--previous", type=int, metavar="PAGE", help="the page chosen last")
    group.add_argument(
        "--next-from", choices=NEXT_FROM, metavar="WHERE",
        help=f"what the next page is joined to: {' | '.join(NEXT_FROM)}",
    )  # fmt: skip
    group.add_argument(
        "--host", action="append", metavar="NAME",
        help="the host's own name in the comments; may be repeated",
    )  # fmt: skip
    group.add_argument("--choices", type=int, metavar="N", help="pages one voter may name (1)")
    group.add_argument("--standing", choices=STANDINGS, help="which ballot stands (latest)")
    group.add_argument(
        "--tie-break", action="append", choices=TIE_BREAKS, metavar="RULE",
        help=f"in this order, may be repeated: {', '.join(TIE_BREAKS)}",
    )  # fmt: skip
    group.add_argument(
        "--languages", type=words_of, metavar="en,fr", help="languages of numbers (en)"
    )


def _add_export(group: argparse._ArgumentGroup) -> None:
    group.add_argument(
        "--columns", type=_column, action="append", metavar="text=HEADER",
        help="where a column's meaning is not found: text, author, author_id, id, posted, edited or "
        "reply_to; a field of JSON also by a JSON Pointer, as in text=/body/0/raw; - is no column; "
        "may be repeated",
    )  # fmt: skip
    group.add_argument(
        "--at", metavar="PLACE",
        help="where the comments stand inside, where they are not found: a JSON Pointer to their "
        "list, as in /data/comments, or the name of a spreadsheet's sheet",
    )  # fmt: skip
    group.add_argument(
        "--copied-at", metavar="TIME", help="when the page was copied, for '3 days ago' (now)"
    )
    group.add_argument("--format", help="the export's format, where it is not found")


def _add_where(group: argparse._ArgumentGroup) -> None:
    group.add_argument("--game", metavar="NAME", help="count a round of this stored game")
    group.add_argument("--round", type=int, metavar="N", help="its number")
    group.add_argument("--json", action="store_true", help="print the result as data")
    group.add_argument("--all", action="store_true", help="show every comment set aside")


def question_of(given: argparse.Namespace) -> Question:
    """What the options ask of the API; only what was given, the API has the rest.

    Raises:
        BadInput: an option is missing or two do not go together.
    """
    missing = [f"--{name}" for name in ("zone", "opens") if getattr(given, name) is None]
    if given.chart is None and given.design is None:
        missing.insert(0, "--chart")
    if missing:
        last = " and ".join(filter(None, (", ".join(missing[:-1]), missing[-1])))
        raise BadInput(f"the count needs {last}", "add what is missing, or name a stored --game")
    asked = {
        "chart": chart_told(given),
        "zone": given.zone,
        "opens": given.opens,
        "closes": given.closes,
        "stitched": sorted({*(given.stitched or ()), *(given.in_hand or ())}) or None,
        "previous": given.previous,
        "next_from": given.next_from,
        "hosts": given.host,
        "choices": given.choices,
        "standing": given.standing,
        "tie_breaks": given.tie_break,
        "languages": given.languages,
        "columns": dict(given.columns) if given.columns else None,
        "copied_at": given.copied_at,
        "format": given.format,
        "at": given.at,
    }
    return {name: value for name, value in asked.items() if value is not None}


def chart_told(given: argparse.Namespace) -> Question:
    """The chart as the API takes it; only what was given.

    Raises:
        BadInput: two options do not go together.
    """
    if (given.chart is None) == (given.design is None):
        raise BadInput("--chart and --design both tell the chart", "give one of them")
    if (given.design is None) != (given.page is None):
        raise BadInput("--design and --page go together", "give both, or --chart alone")
    if given.overlap is not None and given.design is None:
        raise BadInput("--overlap belongs to --design and --page", "give those, or leave it out")
    names = ("columns", "rows") if given.chart else ("stitches_wide", "stitches_high")
    told = dict(zip(names, given.chart or given.design, strict=True))
    if given.page:
        told |= dict(zip(("page_wide", "page_high"), given.page, strict=True))
    more = {
        "overlap": given.overlap,
        "order": given.order,
        "start": given.start_corner,
        "back_and_forth": given.back_and_forth or None,
        "no_page": given.no_page,
        "joined": given.joined,
    }
    return told | {name: value for name, value in more.items() if value is not None}


def _pair(text: str) -> tuple[int, int]:
    found = re.fullmatch(r"\s*(\d{1,9})\s*[xX×]\s*(\d{1,9})\s*", text)
    if not found:
        raise argparse.ArgumentTypeError(f"{text!r} is not two numbers with an x, as in 9x7")
    return int(found[1]), int(found[2])


def _cell(text: str) -> list[int]:
    found = re.fullmatch(r"\s*(\d{1,9})\s*,\s*(\d{1,9})\s*", text)
    if not found:
        raise argparse.ArgumentTypeError(f"{text!r} is not a column and a row, as in 3,1")
    return [int(found[1]), int(found[2])]


def _pages(text: str) -> list[int]:
    parts = [part for part in re.split(r"[,\s]+", text) if part]
    if not all(re.fullmatch(r"\d{1,9}", part) for part in parts):
        raise argparse.ArgumentTypeError(f"{text!r} is no list of pages, as in 12,13")
    return [int(part) for part in parts]


def words_of(text: str) -> list[str]:
    """The words of a list such as "en,fr"."""
    return [word for word in re.split(r"[,\s]+", text) if word]


def _column(text: str) -> tuple[str, str]:
    meaning, is_sign, header = text.partition("=")
    if not is_sign or not meaning.strip() or not header.strip():
        raise argparse.ArgumentTypeError(f"{text!r} is no meaning and header, as in text=HEADER")
    return meaning.strip(), header.strip()
