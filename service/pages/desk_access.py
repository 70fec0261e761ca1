"""Who is signed in to the desk: for every route of the desk, and for every form of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from fastapi import Depends, Request
from starlette.datastructures import FormData

from service.api.gate import caller_is
from service.api.wiring import Now, Parts
from service.errors import NotSignedIn
from service.pages.forms import LargeForm, check_form, cookie_name, form_token
from service.pages.frame import Frame
from service.store.columns import id_of
from service.store.desk import known_session

COOKIE = "loopstart_desk"


@dataclass(frozen=True, slots=True)
class SignedIn:
    """A session of the desk: its id, what the cookie holds, and how it was signed in."""

    number: int
    key: str
    way: str

    def frame(self, title: str, here: str = "") -> Frame:
        """The frame of a page of the desk."""
        return Frame(title, here, signed_in=True, form_token=form_token(self.key))


def desk_key(request: Request) -> str:
    """What the browser's cookie holds; nothing without one."""
    return request.cookies.get(cookie_name(request, COOKIE), "")


def _signed_in(request: Request, parts: Parts, now: Now) -> SignedIn:
    """The session that the request belongs to.

    Raises:
        NotSignedIn: there is none.
    """
    key = desk_key(request)
    if not key:
        raise NotSignedIn
    # A transaction of its own: it has ended before the route's begins.
    with parts.database.reading() as session:
        row = known_session(session, key, now)
        if row is None:
            raise NotSignedIn
        caller_is(request, "desk")
        return SignedIn(id_of(row), key, row.way)


#: For a page of the desk.
Desk = Annotated[SignedIn, Depends(_signed_in)]


def _desk_form(request: Request, desk: Desk, form: LargeForm) -> FormData:
    check_form(request, form, desk.key)
    return form


#: For whatever a page of the desk sends: the form, once it is known to come from there. The
#: session is asked for first, so that a stranger's form is not even read.
DeskForm = Annotated[FormData, Depends(_desk_form)]
