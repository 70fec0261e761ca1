"""Routes for the host's work on comments: see how each was read, and rule."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query

from service.api.comment_models import CommentOut, Filter, RulingIn
from service.api.comments_out import comment_out, listed
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.shapes import Limit, Offset
from service.api.wiring import Now, Reading, Writing, host_only
from service.counting.result import Ballot, SetAside
from service.store.counting import count_stored, outcome_of
from service.store.rulings import rule_on_comment

router = APIRouter(
    prefix="/api/games/{game}/rounds/{number}/comments",
    tags=["comments"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 409, 422),
)


@router.get("", summary="A round's comments and how each was read")
def get_comments(
    place: InRound,
    session: Reading,
    wanted: Annotated[Filter | None, Query(alias="filter")] = None,
    limit: Limit = 1000,
    offset: Offset = 0,
) -> list[CommentOut]:
    """All comments, or those that need a look, are set aside, or count; oldest first."""
    game, row = place.found(session)
    counted = count_stored(session, game, row, offset + limit)
    found = [one for one in listed(counted) if _fits(one.outcome, wanted)]
    return [comment_out(one.comment, one.outcome) for one in found[offset : offset + limit]]


@router.post("/{key}/rulings", summary="Rule on a comment", status_code=201)
def post_ruling(
    place: InRound, key: str, ruling: RulingIn, session: Writing, now: Now
) -> CommentOut:
    """Adds a ruling with its reason. Earlier rulings stay on record; the last one holds."""
    game, row = place.found(session)
    rule_on_comment(session, game, row, key, ruling.to_ruling(now))
    ruled = outcome_of(session, game, row, key)
    return comment_out(ruled.comment, ruled.outcome)


def _fits(outcome: Ballot | SetAside, wanted: Filter | None) -> bool:
    if wanted is None:
        return True
    if isinstance(outcome, Ballot):
        return wanted == "counts"
    # What needs a look is set aside too, but the host sees it once, where she can act.
    return wanted == ("look" if outcome.needs_look else "set-aside")
