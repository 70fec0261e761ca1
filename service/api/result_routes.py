"""Routes for announced results: public, with every revision and its record."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query, Response

from service.api.places import InRound
from service.api.problem_models import problems
from service.api.revision_models import RecordOut, RevisionIn, RevisionOut
from service.api.tally_models import ResultOut
from service.api.wiring import AnyCaller, Now, Reading, Writing, host_only
from service.errors import WrongState
from service.store.announcing import revise_round
from service.store.revisions import record_text, revision_numbered, revisions_of
from service.store.rounds import name_of

router = APIRouter(prefix="/api/games/{game}/rounds/{number}", tags=["results"])

Revision = Annotated[
    int | None, Query(ge=1, le=1_000_000, description="Which revision; the newest if left out.")
]


@router.get("/result", summary="An announced result", responses=problems(401, 404, 409, 422))
def get_result(
    place: InRound, session: Reading, caller: AnyCaller, revision: Revision = None
) -> ResultOut:
    """The result with its tie-break steps, once it is announced. It names no voter."""
    _, row = place.shown(session, caller)
    if row.result is None:
        raise WrongState(name_of(row), row.state, "shown with its result", "it is not announced")
    found = revision_numbered(session, row, revision)
    return ResultOut.of(place.game, row, found, revisions_of(session, row))


@router.get("/revisions", summary="The revisions of a result", responses=problems(401, 404, 422))
def get_revisions(place: InRound, session: Reading, caller: AnyCaller) -> list[RevisionOut]:
    """Every result that was announced, oldest first. None is ever changed."""
    _, row = place.shown(session, caller)
    return [RevisionOut.of(one) for one in revisions_of(session, row)]


@router.post(
    "/revisions",
    summary="Announce a result counted again",
    status_code=201,
    responses=problems(401, 403, 404, 409, 422),
    dependencies=[host_only],
)
def post_revision(place: InRound, new: RevisionIn, session: Writing, now: Now) -> ResultOut:
    """Announces the count as it is now, with its reason. The revisions before it stay."""
    game, row = place.found(session)
    revise_round(session, game, row, new.reason, now)
    found = revisions_of(session, row)
    return ResultOut.of(place.game, row, found[-1], found)


@router.get(
    "/record",
    summary="The record of a result",
    response_model=RecordOut,
    responses=problems(401, 404, 422),
)
def get_record(
    place: InRound, session: Reading, caller: AnyCaller, revision: Revision = None
) -> Response:
    """Everything needed to recount it, without a name or a comment; scripts/verify.py does."""
    _, row = place.shown(session, caller)
    found = record_text(session, row, revision)
    name = f"{place.game}-round-{row.number}-revision-{found.number}.json"
    return Response(
        found.record,
        media_type="application/json",
        headers={"Content-Disposition": f'inline; filename="{name}"'},
    )
