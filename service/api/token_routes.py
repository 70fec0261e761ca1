"""Routes for the host's tokens."""

from __future__ import annotations

from datetime import datetime

from fastapi import APIRouter

from service.api.problem_models import problems
from service.api.shapes import In, Out, Words, example
from service.api.wiring import Now, Reading, Writing, host_only
from service.store.tables import TokenRow
from service.store.tokens import Role, all_tokens, delete_token, make_token

router = APIRouter(
    prefix="/api/tokens",
    tags=["tokens"],
    dependencies=[host_only],
    responses=problems(401, 403),
)


class TokenIn(In):
    """A token to be made: a name to know it by, and what it may do."""

    model_config = example({"name": "comment collector", "role": "collector"})

    name: Words
    role: Role


class TokenOut(Out):
    """A token without its secret."""

    model_config = example(
        {"name": "comment collector", "role": "collector", "created": "2026-03-01T18:00:00Z"}
    )

    name: str
    role: Role
    created: datetime

    @classmethod
    def of(cls, row: TokenRow) -> TokenOut:
        """The row for JSON."""
        return cls.model_validate(row, from_attributes=True)


class NewTokenOut(Out):
    """A new token: the only time that it is shown."""

    model_config = example(
        {
            "name": "comment collector",
            "role": "collector",
            "token": "pZ0Yl8m9nQ6c3kT5vB1xR7sW2dF4gH0jK9aL8eM6uNo",
        }
    )

    name: str
    role: Role
    token: str


@router.post("", summary="Make a token", status_code=201, responses=problems(409, 422))
def post_token(new: TokenIn, session: Writing, now: Now) -> NewTokenOut:
    """Makes a token and shows it this once; only a digest of it is kept."""
    token = make_token(session, new.name, new.role, now)
    return NewTokenOut(name=new.name, role=new.role, token=token)


@router.get("", summary="List the tokens")
def get_tokens(session: Reading) -> list[TokenOut]:
    """All tokens by name, without their secrets."""
    return [TokenOut.of(row) for row in all_tokens(session)]


@router.delete(
    "/{name:path}", summary="Delete a token", status_code=204, responses=problems(404, 422)
)
def remove_token(name: str, session: Writing) -> None:
    """Makes a token useless from now on."""
    delete_token(session, name)
