"""Routes for the stitch log. The host alone: it tells of her other pieces too."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from fastapi import APIRouter, File, Path, UploadFile
from fastapi.responses import Response
from sqlmodel import Session

from service.api.pace_models import CorrectionIn, EntriesIn, EntryOut, TakenInOut
from service.api.problem_models import problems
from service.api.wiring import Now, Reading, Writing, host_only
from service.comments.decoding import decode
from service.errors import BadLog, BinaryExport, EmptyExport, NotFound
from service.pace.standing import standing_entries
from service.pace.table import table_of
from service.store.games import game_named
from service.store.stitch_log import add_entries, correct_entry, log_of, log_rows, take_in_table
from service.store.tables import GameRow

router = APIRouter(
    prefix="/api/games/{game}/pace/log",
    tags=["pace"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 422),
)

_TABLE = "entry,day,how,page,piece,stitches\r\n1,2026-03-16,on the day,41,,412\r\n"


class Csv(Response):
    """A table of comma-separated values (RFC 4180)."""

    media_type = "text/csv"


@router.post("", summary="Add entries to the log", status_code=201)
def post_entries(game: str, entries: EntriesIn, session: Writing, now: Now) -> list[EntryOut]:
    """Adds entries, all or none, each of a page in hand, of another piece, or a rest.

    An entry of a day, or of all days since the one before; a rest may be still to come.
    """
    kept = game_named(session, game)
    new = add_entries(session, kept, [entry.to_entry() for entry in entries.entries], now)
    return _shown(session, kept, [entry.number for entry in new])


@router.get("", summary="The stitch log")
def get_entries(game: str, session: Reading) -> list[EntryOut]:
    """All entries by their numbers, with those that were corrected or taken back."""
    kept = game_named(session, game)
    return _shown(session, kept, None)


@router.post("/{number}/corrections", summary="Correct an entry, or take it back", status_code=201)
def post_correction(
    game: str,
    number: Annotated[int, Path(ge=1, le=1_000_000, description="The entry's number.")],
    correction: CorrectionIn,
    session: Writing,
    now: Now,
) -> list[EntryOut]:
    """Adds an entry that stands in place of that one, which stays in the log."""
    kept = game_named(session, game)
    wrong = next((one for one in log_of(session, kept) if one.number == number), None)
    if wrong is None:
        raise NotFound("entry of the log", str(number), "look for its number in the log")
    new = correct_entry(session, kept, correction.to_entry(wrong), now)
    return _shown(session, kept, [entry.number for entry in new])


@router.get(
    "/table",
    summary="The stitch log as a table",
    response_class=Csv,
    responses={
        200: {"content": {"text/csv": {"schema": {"type": "string", "examples": [_TABLE]}}}}
    },
)
def get_table(game: str, session: Reading) -> Response:
    """Writes the log as CSV, which can be taken in again; no cell is a spreadsheet's formula."""
    kept = game_named(session, game)
    name = f'attachment; filename="{kept.slug}-stitch-log.csv"'
    return Csv(table_of(log_of(session, kept)), headers={"Content-Disposition": name})


@router.post(
    "/table",
    summary="Take a table of the log in",
    status_code=201,
    responses=problems(413),
)
def post_table(
    game: str,
    file: Annotated[UploadFile, File(description="The table, as CSV.", examples=[_TABLE])],
    session: Writing,
    now: Now,
) -> TakenInOut:
    """Takes a table in, all or nothing; rows that are in the log already change nothing.

    Its header names the columns `day` and `stitches` or `percent`; `how`, `page`, `piece`,
    `first day`, `fractional`, `backstitch`, `beads`, `entry`, `corrects`, `taken back` and `note`
    may be there.
    """
    kept = game_named(session, game)
    taken = take_in_table(session, kept, _text_of(file.file.read()), now)
    return TakenInOut(new=len(taken.new), known=taken.known)


def _text_of(content: bytes) -> str:
    """The text of a table, in whatever encoding.

    Raises:
        BadLog: it is empty, or no text.
    """
    try:
        return decode(content, "the stitch log").text
    except BinaryExport as trouble:
        raise BadLog(f"the stitch log is {trouble.kind}, not a table", "save it as CSV") from None
    except EmptyExport:
        raise BadLog("the stitch log is an empty file", "hand in a table that has rows") from None


def _shown(session: Session, game: GameRow, numbers: Sequence[int] | None) -> list[EntryOut]:
    """Those entries for JSON; all of them where no numbers are given."""
    standing = {one.entry.number for one in standing_entries(log_of(session, game))}
    return [
        EntryOut.of(row, stands=row.number in standing)
        for row in log_rows(session, game)
        if numbers is None or row.number in numbers
    ]
