"""Routes for batches: comments in, by the host or a collector."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from fastapi import APIRouter, Depends, File, Form, UploadFile
from pydantic import Json

from service.api.batch_models import BatchOut
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.shapes import MomentIn
from service.api.tally_in import UNNAMED, WHERE_INSIDE, Columns
from service.api.wiring import HostOrCollector, Now, Parts, Reading, host_only
from service.comments.copying import time_of_copying
from service.comments.entries import clean
from service.comments.formats import Format, Meaning, Source
from service.comments.intake import read_export
from service.comments.times import zone_of
from service.store.batches import Delivery, batches_of, check_takes_comments, first_report, hand_in

router = APIRouter(prefix="/api/games/{game}/rounds/{number}/batches", tags=["comments"])


@dataclass(frozen=True, slots=True)
class HowToRead:
    """What the caller says of an export beside it."""

    columns: dict[Meaning, str]
    copied_at: str | None
    format: Format | None
    at: str | None


def _how_to_read(
    columns: Annotated[
        Json[Columns] | None, Form(description='As JSON, such as {"text": "Kommentar"}.')
    ] = None,
    copied_at: Annotated[MomentIn | None, Form(description="When the page was copied.")] = None,
    given_format: Annotated[
        Format | None, Form(alias="format", description="Where it is not found by itself.")
    ] = None,
    at: Annotated[str | None, Form(max_length=1000, description=WHERE_INSIDE)] = None,
) -> HowToRead:
    return HowToRead(columns or {}, copied_at, given_format, at)


@router.post(
    "",
    summary="Hand in comments",
    status_code=201,
    responses=problems(401, 403, 404, 409, 413, 422),
)
def post_batch(
    place: InRound,
    file: Annotated[UploadFile, File(description="The export.")],
    how: Annotated[HowToRead, Depends(_how_to_read)],
    parts: Parts,
    caller: HostOrCollector,
    now: Now,
) -> BatchOut:
    """Reads an export into the round, all or nothing.

    The same bytes once more change nothing.
    """
    with parts.database.reading() as session:
        game, row = place.found(session)
        check_takes_comments(row)
        zone = game.zone
    source = Source(
        name=clean(file.filename or "") or UNNAMED,
        zone=zone,
        copied_at=time_of_copying(how.copied_at, zone_of(zone), now),
        columns=tuple(how.columns.items()),
        format=how.format,
        at=how.at,
    )
    content = file.file.read()
    # Reading takes the longest by far, so it is done before the round is taken.
    export = read_export(content, source)
    delivery = Delivery(source.name, content, export, source.copied_at, caller.name, now)
    with parts.database.writing() as session:
        return BatchOut.of(hand_in(session, place.found(session)[1], delivery))


@router.get(
    "",
    summary="List a round's batches",
    responses=problems(401, 403, 404, 422),
    dependencies=[host_only],
)
def get_batches(place: InRound, session: Reading) -> list[BatchOut]:
    """The batches as they were reported when they were handed in."""
    _, row = place.found(session)
    return [BatchOut.of(first_report(batch)) for batch in batches_of(session, row)]
