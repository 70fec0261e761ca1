"""Routes for batches: comments in, by the host or a collector."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Annotated

from fastapi import APIRouter, Depends, File, Form, UploadFile
from pydantic import Json

from service.api.batch_models import BatchOut
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.progress_routes import Watch
from service.api.shapes import MomentIn
from service.api.tally_in import WHERE_INSIDE, Columns
from service.api.uploads import Uploaded, name_of, open_as_before
from service.api.wiring import Caller, HostOrCollector, Now, Parts, Reading, host_only
from service.ballots.reading import Question
from service.comments.copying import time_of_copying
from service.comments.formats import Format, Meaning, Source
from service.comments.times import zone_of
from service.store.batches import (
    Delivery,
    batches_of,
    check_takes_comments,
    digest_of,
    first_report,
    hand_in,
)
from service.store.counting import question_of
from service.store.games import remember_columns
from service.store.readings_kept import VoteReader
from service.store.staging import Staged, staged

router = APIRouter(prefix="/api/games/{game}/rounds/{number}/batches", tags=["comments"])


@dataclass(frozen=True, slots=True)
class HowToRead:
    """What the caller says of an export beside it."""

    columns: dict[Meaning, str]
    copied_at: str | None
    format: Format | None
    at: str | None
    watch: str | None
    complete: bool


def _how_to_read(
    columns: Annotated[
        Json[Columns] | None,
        Form(
            description='As JSON, such as {"text": "Kommentar"}. Remembered for the game: a later '
            "export that has these columns is read by them."
        ),
    ] = None,
    copied_at: Annotated[MomentIn | None, Form(description="When the page was copied.")] = None,
    given_format: Annotated[
        Format | None, Form(alias="format", description="Where it is not found by itself.")
    ] = None,
    at: Annotated[str | None, Form(max_length=1000, description=WHERE_INSIDE)] = None,
    watch: Watch = None,
    *,
    complete: Annotated[
        bool,
        Form(
            description="Whether it shows every comment that there was when it was copied. Then "
            "comments of earlier batches that it lacks were deleted."
        ),
    ] = False,
) -> HowToRead:
    return HowToRead(columns or {}, copied_at, given_format, at, watch, complete)


@dataclass(frozen=True, slots=True)
class _Round:
    """What reading needs to know of the round."""

    zone: str
    question: Question
    remembered: dict[str, str]


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

    The same bytes once more change nothing. Tables and JSON Lines may be of any size up to the
    limit for uploads; `watch` lets the caller ask how far it is.
    """
    tell = parts.progress.teller(how.watch)
    of_round = _round_of(place, parts)
    source = _source(name_of(file), of_round.zone, how, now)
    content = Uploaded.of(file)
    opened = open_as_before(content, source, of_round.remembered, parts.settings.whole_limit)
    # Reading takes the longest by far, so it is done before the round is taken.
    with staged(opened, VoteReader(of_round.question), content.size, tell) as read:
        delivery = _delivery(read, content, source, how, caller, now)
        with parts.database.writing() as session:
            game, row = place.found(session)
            report = hand_in(session, row, delivery, tell)
            if how.columns and not report.repeated:
                remember_columns(session, game, dict(source.columns))
            out = BatchOut.of(report, row)
    tell("done", read.count, read.count)
    return out


def _round_of(place: InRound, parts: Parts) -> _Round:
    with parts.database.reading() as session:
        game, row = place.found(session)
        check_takes_comments(row)
        return _Round(game.zone, question_of(game, row), dict(game.columns or {}))


def _source(name: str, zone: str, how: HowToRead, now: datetime) -> Source:
    copied_at = time_of_copying(how.copied_at, zone_of(zone), now)
    return Source(name, zone, copied_at, tuple(how.columns.items()), how.format, how.at)


def _delivery(
    read: Staged, content: Uploaded, source: Source, how: HowToRead, caller: Caller, now: datetime
) -> Delivery:
    return Delivery(
        name=source.name,
        size=content.size,
        digest=digest_of(content),
        staged=read,
        copied_at=source.copied_at,
        by=caller.name,
        at=now,
        copied_told=how.copied_at is not None,
        complete=how.complete,
    )


@router.get(
    "",
    summary="List a round's batches",
    responses=problems(401, 403, 404, 422),
    dependencies=[host_only],
)
def get_batches(place: InRound, session: Reading) -> list[BatchOut]:
    """The batches as they were reported when they were handed in."""
    _, row = place.found(session)
    return [BatchOut.of(first_report(batch), row) for batch in batches_of(session, row)]
