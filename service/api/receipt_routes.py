"""Receipts: for one voter all that they wrote, what became of it and why. For the host."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query
from pydantic import Field

from service.api.comment_models import CommentOut
from service.api.comments_out import comment_out
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.shapes import Out, example
from service.api.wiring import Reading, host_only
from service.counting.receipt import Entry, Receipt, receipts_of
from service.errors import NotFound
from service.store.counting import of_voters
from service.store.revisions import revisions_of
from service.store.rounds import name_of

router = APIRouter(
    prefix="/api/games/{game}/rounds/{number}",
    tags=["comments"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 409, 422),
)

_Voter = Annotated[
    str,
    Query(
        min_length=1,
        max_length=500,
        description="The author's name, case left aside, or the author's id.",
    ),
]


class ReceiptOut(Out):
    """What became of one voter's comments: the ballot that stands, if any, and why."""

    model_config = example(
        {
            "voter": "odd",
            "pages": [],
            "why": "No ballot stands; of the last comment: chooses no page.",
            "revision": 1,
            "comments": [],
        }
    )

    voter: str = Field(description="The author's id, or the name as names are compared.")
    pages: list[int] = Field(description="Those of the ballot that stands.")
    why: str
    revision: int | None = Field(description="The newest announced result, if there is one.")
    comments: list[CommentOut] = Field(description="Oldest first, each with why.")


@router.get("/receipts", summary="What became of one voter's comments")
def get_receipts(place: InRound, session: Reading, voter: _Voter) -> list[ReceiptOut]:
    """One receipt for each voter of that name or id, as the round counts now."""
    game, row = place.found(session)
    found = receipts_of(of_voters(session, game, row, voter))
    if not found:
        todo = f"write the name or the author's id as the comments of {name_of(row)} have it"
        raise NotFound("voter", voter, todo)
    revision = len(revisions_of(session, row)) or None
    return [_receipt_out(one, revision) for one in found]


def _receipt_out(receipt: Receipt, revision: int | None) -> ReceiptOut:
    return ReceiptOut(
        voter=receipt.voter,
        pages=[] if receipt.ballot is None else list(receipt.ballot.pages),
        why=receipt.why,
        revision=revision,
        comments=[_entry_out(entry) for entry in receipt.entries],
    )


def _entry_out(entry: Entry) -> CommentOut:
    return comment_out(entry.comment, entry.outcome).model_copy(update={"why": entry.why})
