"""Routes of the desk about its own doors: the password, and the browsers that are signed in."""

from __future__ import annotations

from datetime import datetime

from fastapi import APIRouter
from fastapi.responses import RedirectResponse, Response
from sqlmodel import Session

from service.api.wiring import Now, Parts, Reading, Writing
from service.errors import BadPassword, SignInRefused, TooManyTries
from service.pages.desk_access import Desk, DeskForm, SignedIn
from service.pages.forms import field_of
from service.pages.rendering import NOT_KEPT, answer_page
from service.pages.sign_in_contexts import SessionShown, WaysInPage
from service.store.columns import id_of
from service.store.desk import end_session, end_sessions, sessions_now
from service.store.passwords import (
    SHORTEST,
    check_password,
    has_password,
    set_password,
    take_try,
)

WAYS_IN = "/desk/ways-in"
_DONE = {
    "password": "The password is set. Every other browser is signed out.",
    "ended": "That browser is signed out.",
    "others": "Every other browser is signed out.",
}

router = APIRouter(include_in_schema=False)


@router.get(WAYS_IN)
def get_ways_in(desk: Desk, session: Reading, now: Now, done: str = "") -> Response:
    """The password, and the browsers that are signed in."""
    return answer_page(ways_in_page(session, desk, now, done=_DONE.get(done, "")))


@router.post(WAYS_IN + "/password")
def post_password(desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Sets the password; where there is one it has to be given too, however one came in."""
    try:
        with parts.database.reading() as session:
            is_first = not has_password(session)
        if not is_first:
            _check_current(parts, field_of(form, "current"), now)
        with parts.database.writing() as session:
            set_password(session, field_of(form, "password"), now, keeps=desk.number)
    except (BadPassword, SignInRefused, TooManyTries) as error:
        words = str(error)
        with parts.database.reading() as session:
            page = ways_in_page(session, desk, now, refused=words[:1].upper() + words[1:])
        return answer_page(page, 422)
    return _back("password")


@router.post(WAYS_IN + "/end")
def post_end(desk: Desk, form: DeskForm, session: Writing) -> Response:
    """Signs one browser out, or every other one."""
    number = field_of(form, "session")
    if number.isdecimal() and number.isascii() and len(number) < 10:
        end_session(session, int(number))
        return _back("ended")
    end_sessions(session, but=desk.number)
    return _back("others")


def ways_in_page(
    session: Session, desk: SignedIn, now: datetime, *, refused: str = "", done: str = ""
) -> WaysInPage:
    """What the page shows."""
    return WaysInPage(
        frame=desk.frame("Ways in", WAYS_IN),
        sessions=tuple(
            SessionShown(id_of(row), row.way, row.began, row.ends, id_of(row) == desk.number)
            for row in sessions_now(session, now)
        ),
        has_password=has_password(session),
        shortest=SHORTEST,
        refused=refused,
        done=done,
    )


def _check_current(parts: Parts, password: str, now: datetime) -> None:
    with parts.database.writing() as session:
        tried = take_try(session, now)
    if isinstance(tried, TooManyTries):
        raise tried
    check_password(tried, password)


def _back(done: str) -> Response:
    return RedirectResponse(f"{WAYS_IN}?done={done}", 303, dict(NOT_KEPT))
