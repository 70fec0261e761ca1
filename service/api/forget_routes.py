"""Routes for forgetting: a voter's words and name on request, a whole game's after its end."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter
from pydantic import Field

from service.api.problem_models import problems
from service.api.shapes import In, Out, example
from service.api.wiring import Now, Parts, host_only
from service.store.forgetting import Forgot, forget_everybody, forget_voter
from service.store.games import game_named

router = APIRouter(
    prefix="/api/games/{game}/forgotten",
    tags=["comments"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 409, 422),
)


class VoterIn(In):
    """Who is to be forgotten."""

    model_config = example({"voter": "Maren"})

    # In the body, not in the address: addresses end up in logs.
    voter: Annotated[str, Field(min_length=1, max_length=500, pattern=r"\S")] = Field(
        description="The author's name, case left aside, or the author's id."
    )


class ForgottenOut(Out):
    """What was forgotten. Where the file was in use, ask again: `wiped` is then false."""

    model_config = example({"comments": 3, "rounds": [1, 2], "wiped": True})

    comments: int = Field(description="How many comments lost their words and names now.")
    rounds: list[int]
    wiped: bool = Field(description="Whether nothing of it is left in the database's files.")

    @classmethod
    def of(cls, forgot: Forgot, *, wiped: bool) -> ForgottenOut:
        """What was done, for JSON."""
        return cls(comments=forgot.comments, rounds=list(forgot.rounds), wiped=wiped)


@router.post("/voters", summary="Forget a voter's words and name")
def post_forgotten_voter(game: str, who: VoterIn, parts: Parts, now: Now) -> ForgottenOut:
    """Removes words, name and ids for good; counts and records stay, and can be checked as before.

    In rounds that were opened before, nothing of that voter is taken in again.
    """
    with parts.database.writing() as session:
        forgot = forget_voter(session, game_named(session, game), who.voter, now)
    parts.waiting.drop_of(game)
    return ForgottenOut.of(forgot, wiped=parts.database.wipe_deleted())


@router.post("/everybody", summary="Forget all words and names of a game that is over")
def post_forgotten_everybody(game: str, parts: Parts, now: Now) -> ForgottenOut:
    """The same for everybody, once all rounds are announced and the answer is revealed.

    From then on the game takes no comments.
    """
    with parts.database.writing() as session:
        forgot = forget_everybody(session, game_named(session, game), now)
    parts.waiting.drop_of(game)
    return ForgottenOut.of(forgot, wiped=parts.database.wipe_deleted())
