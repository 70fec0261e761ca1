"""Routes of signing in to the desk and out of it: by a one-time link, or with the password."""

from __future__ import annotations

from datetime import datetime

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from service.api.desk_routes import LINK
from service.api.wiring import Now, Parts, Reading
from service.errors import SignInRefused, TooManyTries
from service.pages.desk_access import COOKIE, Desk, DeskForm, desk_key
from service.pages.forms import (
    SmallForm,
    check_form,
    cookie_name,
    drop_cookie,
    field_of,
    form_token,
    new_key,
    put_cookie,
)
from service.pages.frame import Frame
from service.pages.refusals import SIGN_IN
from service.pages.rendering import NOT_KEPT, Context, answer_page
from service.pages.sign_in_contexts import LinkPage, SignInPage
from service.store.desk import SESSION_LASTS, end_session, end_session_of, use_link
from service.store.passwords import begin_by_password, check_password, has_password, take_try

#: Ties the forms of signing in to a browser that has no session yet.
_FORM_COOKIE = "loopstart_form"

router = APIRouter(include_in_schema=False)


@router.get(SIGN_IN)
def get_sign_in(request: Request, session: Reading, then: str = "") -> Response:
    """The door of the desk."""
    key = _form_key(request)
    page = SignInPage(_frame("Sign in", key), has_password(session), safe_then(then), "")
    return _with_form_cookie(request, page, key)


@router.post(SIGN_IN)
def post_sign_in(request: Request, form: SmallForm, parts: Parts, now: Now) -> Response:
    """Signs in with the password."""
    key = _form_key(request)
    check_form(request, form, key)
    then = safe_then(field_of(form, "then"))
    try:
        opened = _by_password(parts, field_of(form, "password"), now)
    except (SignInRefused, TooManyTries) as error:
        page = SignInPage(_frame("Sign in", key), True, then, _sentence(error))  # noqa: FBT003
        return _with_form_cookie(
            request, page, key, 429 if isinstance(error, TooManyTries) else 403
        )
    return _signed_in(request, parts, opened, then)


@router.get(LINK + "/{key}")
def get_link(request: Request, key: str) -> Response:
    """What a one-time link opens: a button that uses it."""
    form_key = _form_key(request)
    page = LinkPage(_frame("Sign in", form_key), key, "")
    return _with_form_cookie(request, page, form_key)


@router.post(LINK + "/{key}")
def post_link(request: Request, key: str, form: SmallForm, parts: Parts, now: Now) -> Response:
    """Signs in by a one-time link, which is used up by it."""
    form_key = _form_key(request)
    check_form(request, form, form_key)
    try:
        with parts.database.writing() as session:
            opened = use_link(session, key, now)
    except SignInRefused as error:
        page = LinkPage(_frame("Sign in", form_key), "", _sentence(error))
        return _with_form_cookie(request, page, form_key, 403)
    return _signed_in(request, parts, opened, "/desk")


@router.post("/desk/sign-out")
def post_sign_out(request: Request, desk: Desk, form: DeskForm, parts: Parts) -> Response:
    """Ends this browser's session."""
    del form
    with parts.database.writing() as session:
        end_session(session, desk.number)
    answer = RedirectResponse(SIGN_IN, 303, dict(NOT_KEPT))
    drop_cookie(request, answer, COOKIE)
    answer.headers["Clear-Site-Data"] = '"cache", "storage"'
    return answer


def safe_then(then: str) -> str:
    """Where to go after signing in: a page of the desk, whatever was asked for."""
    is_plain = then.isascii() and then.isprintable() and "\\" not in then and "//" not in then
    at_desk = then == "/desk" or then.startswith(("/desk/", "/desk?"))
    return then if is_plain and at_desk and not then.startswith(SIGN_IN) else "/desk"


def _by_password(parts: Parts, password: str, now: datetime) -> str:
    """The key of a new session. The try is kept before the password is looked at."""
    with parts.database.writing() as session:
        tried = take_try(session, now)
    if isinstance(tried, TooManyTries):
        raise tried
    check_password(tried, password)
    with parts.database.writing() as session:
        return begin_by_password(session, tried, now)


def _signed_in(request: Request, parts: Parts, opened: str, then: str) -> Response:
    if before := desk_key(request):
        # Whoever had a copy of the cookie until now has nothing in it any more.
        with parts.database.writing() as session:
            end_session_of(session, before)
    answer = RedirectResponse(then, 303, dict(NOT_KEPT))
    put_cookie(request, answer, COOKIE, opened, int(SESSION_LASTS.total_seconds()))
    drop_cookie(request, answer, _FORM_COOKIE)
    return answer


def _form_key(request: Request) -> str:
    return request.cookies.get(cookie_name(request, _FORM_COOKIE), "") or new_key()


def _frame(title: str, key: str) -> Frame:
    return Frame(title, form_token=form_token(key))


def _with_form_cookie(request: Request, page: Context, key: str, status: int = 200) -> Response:
    answer = answer_page(page, status)
    put_cookie(request, answer, _FORM_COOKIE, key)
    return answer


def _sentence(error: Exception) -> str:
    words = str(error)
    return words[:1].upper() + words[1:]
