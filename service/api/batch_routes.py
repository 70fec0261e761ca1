"""Routes for batches: comments in, by the host or a collector."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Depends, File, Form, Path, Request, UploadFile
from pydantic import Json
from starlette.concurrency import run_in_threadpool

from service.api.batch_models import BatchOut, TakeBackIn
from service.api.hand_ins import hand_ins_of
from service.api.handing_in import HowToRead, Sent, hand_in_export
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.progress_routes import Watch
from service.api.shapes import Limit, MomentIn, Offset
from service.api.tally_in import WHERE_INSIDE, Columns
from service.api.uploads import Uploaded, name_of
from service.api.wiring import HostOrCollector, Now, Parts, Reading, Writing, host_only
from service.comments.formats import Format
from service.store.batches import first_report, some_batches
from service.store.taking_back import take_back

router = APIRouter(prefix="/api/games/{game}/rounds/{number}/batches", tags=["comments"])


async def _how_to_read(
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


async def _sent(
    file: Annotated[UploadFile, File(description="The export.")],
    how: Annotated[HowToRead, Depends(_how_to_read)],
    caller: HostOrCollector,
    now: Now,
) -> Sent:
    return Sent(name_of(file), Uploaded.of(file), caller.name, now, how)


@router.post(
    "",
    summary="Hand in comments",
    status_code=201,
    responses=problems(401, 403, 404, 409, 413, 422),
)
async def post_batch(
    request: Request, place: InRound, sent: Annotated[Sent, Depends(_sent)], parts: Parts
) -> BatchOut:
    """Reads an export into the round, all or nothing.

    The same bytes once more change nothing. Tables and JSON Lines may be of any size up to the
    limit for uploads; `watch` lets the caller ask how far it is.
    """
    hand_ins = hand_ins_of(request)
    if hand_ins.takes(sent):
        return await hand_ins.hand_in(place, sent)
    return await run_in_threadpool(
        lambda: BatchOut.of(*hand_in_export(parts, place, sent, hand_ins.is_busy))
    )


@router.get(
    "",
    summary="List a round's batches",
    responses=problems(401, 403, 404, 422),
    dependencies=[host_only],
)
def get_batches(
    place: InRound, session: Reading, limit: Limit = 1000, offset: Offset = 0
) -> list[BatchOut]:
    """The batches as they were reported when they were handed in, those taken back too."""
    _, row = place.found(session)
    found = some_batches(session, row, limit, offset)
    return [BatchOut.of(first_report(batch), row) for batch in found]


@router.post(
    "/{batch}/take-back",
    summary="Take a batch back",
    responses=problems(401, 403, 404, 409, 422),
    dependencies=[host_only],
)
def post_take_back(
    place: InRound,
    batch: Annotated[int, Path(ge=1, le=1_000_000, description="The batch's number.")],
    told: TakeBackIn,
    session: Writing,
    now: Now,
) -> BatchOut:
    """Takes the comments of the round's last batch out again: it was another export, or misread.

    It stays in the list with the reason. One that showed a comment of an earlier batch, of which a
    comment was ruled on, or whose round is announced, stays.
    """
    game, row = place.found(session)
    return BatchOut.of(first_report(take_back(session, game, row, batch, (told.reason, now))), row)
