"""Routes for the ways into the desk: a link, the password, and putting everybody out."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter
from pydantic import Field

from service.api.problem_models import problems
from service.api.shapes import In, Out, example
from service.api.wiring import Now, Writing, host_only
from service.store.desk import LINK_LASTS, end_sessions, make_link
from service.store.passwords import LONGEST, set_password

#: The address of a one-time link, before its key.
LINK = "/desk/link"

router = APIRouter(
    prefix="/api/desk", tags=["the desk"], dependencies=[host_only], responses=problems(401, 403)
)


class LinkOut(Out):
    """A link that signs a browser in to the desk, once: the only time that it is shown."""

    model_config = example(
        {"path": f"{LINK}/pZ0Yl8m9nQ6c3kT5vB1xR7sW2dF4gH0jK9aL8eM6uNo", "minutes": 60}
    )

    path: str = Field(description="To be put after the service's own address.")
    minutes: int = Field(description="How long it waits to be used.")


class PasswordIn(In):
    """The desk's password."""

    model_config = example({"password": "gorse kettle lantern"})

    password: Annotated[str, Field(max_length=LONGEST)]


class SignedOutOut(Out):
    """How many browsers were signed out."""

    model_config = example({"signed_out": 2})

    signed_out: int


@router.post("/links", summary="Make a link into the desk", status_code=201)
def post_desk_link(session: Writing, now: Now) -> LinkOut:
    """Makes a link that signs one browser in, once. A link made before is useless from now on."""
    key = make_link(session, now)
    return LinkOut(path=f"{LINK}/{key}", minutes=int(LINK_LASTS.total_seconds()) // 60)


@router.put(
    "/password", summary="Set the desk's password", status_code=204, responses=problems(422)
)
def put_desk_password(new: PasswordIn, session: Writing, now: Now) -> None:
    """Sets the password that the desk can be signed in to with; every browser is signed out."""
    set_password(session, new.password, now)


@router.delete("/sessions", summary="Sign every browser out of the desk")
def delete_desk_sessions(session: Writing) -> SignedOutOut:
    """Ends every session of the desk."""
    return SignedOutOut(signed_out=end_sessions(session))
