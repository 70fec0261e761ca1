"""Every refusal as problem details (RFC 9457): one shape, one table of statuses, one sentence.

Sources: RFC 9457 (July 2023) sections 3 and 3.1 for the members, section 3's second example for
`errors` with JSON Pointers (RFC 6901).
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from http import HTTPStatus
from typing import Any
from urllib.parse import quote

from fastapi import Request
from fastapi.exceptions import RequestValidationError
from fastapi.responses import Response
from sqlalchemy.exc import DatabaseError
from sqlalchemy.exc import TimeoutError as NoConnection
from starlette.exceptions import HTTPException
from starlette.routing import Match

from service.api.database_trouble import BUSY, sentence_of
from service.errors import (
    AccessRefused,
    AlreadyThere,
    BadInput,
    BadSetting,
    CopyDiffers,
    ExportTooLarge,
    FormRefused,
    LoopstartError,
    NotFound,
    NotSignedIn,
    ProblemAnswered,
    SealBroken,
    ServerUnreachable,
    SignInRefused,
    TokenTooWeak,
    TooManyTries,
    WrongState,
)

MEDIA_TYPE = "application/problem+json"
TYPES = "/api/problems"

#: The nearest parent in the tree decides.
STATUSES: Mapping[type[LoopstartError], int] = {
    LoopstartError: 500,
    BadInput: 422,
    ExportTooLarge: 413,
    SealBroken: 409,
    WrongState: 409,
    NotFound: 404,
    AlreadyThere: 409,
    AccessRefused: 401,
    TokenTooWeak: 403,
    NotSignedIn: 403,
    SignInRefused: 403,
    FormRefused: 403,
    TooManyTries: 429,
    BadSetting: 503,
    CopyDiffers: 503,
    ServerUnreachable: 502,
    ProblemAnswered: 502,
}

_NOT_OWN = {"type", "title", "status", "detail", "instance", "errors"}

#: What pydantic says that a host would not understand, said otherwise.
_PLAINER = {
    "missing": "this is missing",
    "extra_forbidden": "there is no such name here",
    "json_invalid": "this is no JSON",
    "string_pattern_mismatch": "this does not have the form it must have",
    "model_attributes_type": "this must be an object of names and values",
}


@dataclass(frozen=True, slots=True)
class Problem:
    """One refusal: its status, its sentence, its kind and title, and its further members."""

    status: int
    detail: str
    kind: str = "about:blank"
    title: str = ""
    more: Mapping[str, Any] = field(default_factory=dict)


class ProblemAnswer(Response):
    """A problem as `application/problem+json`."""

    media_type = MEDIA_TYPE

    def __init__(
        self, request: Request, problem: Problem, headers: Mapping[str, str] | None = None
    ) -> None:
        content = {
            "type": problem.kind,
            "title": problem.title or HTTPStatus(problem.status).phrase,
            "status": problem.status,
            "detail": problem.detail,
            "instance": _address(request),
            **problem.more,
        }
        # Plain ASCII: what was sent and is told back may hold half a surrogate pair.
        super().__init__(json.dumps(content), problem.status, headers)


#: A problem, and the headers that its answer needs.
Told = tuple[Problem, Mapping[str, str]]
#: Shows a problem to whoever asked: as problem details, or as a page.
AnswerProblem = Callable[[Request, Problem, Mapping[str, str]], Response]


def _address(request: Request) -> str:
    """The path as it was sent, percent signs and all; a server need not tell it."""
    sent = request.scope.get("raw_path")
    if isinstance(sent, bytes):
        return sent.decode("latin-1")
    return quote(request.url.path, errors="replace")


def status_of(kind: type[LoopstartError]) -> int:
    """The HTTP status of that error."""
    return next(STATUSES[parent] for parent in kind.__mro__ if parent in STATUSES)


def title_of(kind: type[LoopstartError]) -> str:
    """The error's name in words: PageNotOnChart is "Page not on chart"."""
    return " ".join(re.findall(r"[A-Z][a-z]*", kind.__name__)).capitalize()


def address_of(kind: type[LoopstartError]) -> str:
    """Where this service explains the error, as the member `type` gives it."""
    return f"{TYPES}/{title_of(kind).lower().replace(' ', '-')}"


def problem_of(error: LoopstartError) -> Problem:
    """The error as a problem, with the data it holds."""
    kind = type(error)
    more = {name: held for name, held in vars(error).items() if name not in _NOT_OWN}
    return Problem(status_of(kind), str(error), address_of(kind), title_of(kind), more)


def _tell_own(request: Request, error: LoopstartError) -> Told:
    del request
    headers = {}
    if isinstance(error, AccessRefused) and status_of(type(error)) == 401:
        headers = {"WWW-Authenticate": "Bearer"}
    elif isinstance(error, TooManyTries):
        headers = {"Retry-After": str(error.minutes * 60)}
    return problem_of(error), headers


def _tell_invalid(request: Request, error: RequestValidationError) -> Told:
    del request
    errors = [_place_of(one) | {"detail": plain_sentence(one)} for one in error.errors()]
    first = errors[0]
    where = first.get("pointer") or first.get("parameter") or "the request"
    others = f" (and {len(errors) - 1} more)" if len(errors) > 1 else ""
    detail = f"the request is not valid at {where}: {first['detail']}{others}: see /docs."
    return Problem(422, detail, more={"errors": errors}), {}


def _place_of(one: Mapping[str, Any]) -> dict[str, str]:
    """Where in the request it is: a JSON Pointer into the body, or a parameter's name."""
    source, *steps = [str(step) for step in one["loc"]]
    if source != "body":
        return {"parameter": "/".join(steps)}
    if one["type"] == "json_invalid" and isinstance(one["loc"][-1], int):
        # That is the place in the body's text, not in its JSON: there is none.
        return {"pointer": "#"}
    escaped = [quote(step.replace("~", "~0").replace("/", "~1")) for step in steps]
    return {"pointer": "#" + "".join(f"/{step}" for step in escaped)}


def plain_sentence(one: Mapping[str, Any]) -> str:
    """What pydantic says of one mistake, in words for a person."""
    told = _PLAINER.get(one["type"], str(one["msg"]).removeprefix("Value error, "))
    return told[:1].lower() + told[1:]


def _tell_framework(request: Request, error: HTTPException) -> Told:
    if isinstance(error.__cause__, LoopstartError):
        return _tell_own(request, error.__cause__)
    if error.status_code == 404:
        detail = "there is nothing at this address: see /docs for those there are."
    elif error.status_code == 405:
        # Where files are shown there is no route of the service: they can only be got.
        allowed = _methods_at(request) or ["GET"]
        detail = f"{request.method} cannot be used at this address: use {' or '.join(allowed)}."
        return Problem(405, detail), {"Allow": ", ".join(allowed)}
    elif error.status_code == 400:
        detail = "the request's body cannot be read: check that it was sent whole, as /docs says."
    else:
        detail = error.detail
    return Problem(error.status_code, detail), error.headers or {}


def _methods_at(request: Request) -> list[str]:
    """Every method that the address takes: a route knows only its own."""
    return [
        method
        for method in ("GET", "POST", "PUT", "PATCH", "DELETE")
        if any(
            route.matches({**request.scope, "method": method})[0] is Match.FULL
            for route in request.app.router.routes
        )
    ]


def _tell_database(request: Request, error: DatabaseError) -> Told:
    del request
    detail = sentence_of(error)
    if detail is None:
        raise error  # a defect of this service, answered and logged as any other
    return Problem(503, detail), {}


def _tell_crowded(request: Request, error: NoConnection) -> Told:
    """So many requests at once that none of the process's connections became free in time."""
    del request, error
    return Problem(503, BUSY), {}


def _tell_failure(request: Request, error: Exception) -> Told:
    """A defect of this service; what it was is in the server's log and told to nobody else."""
    del request, error
    detail = "this service failed and changed nothing: try again; the server's log says why."
    return Problem(500, detail), {}


_TELLING: dict[type[Exception], Callable[[Request, Any], Told]] = {
    LoopstartError: _tell_own,
    RequestValidationError: _tell_invalid,
    HTTPException: _tell_framework,
    DatabaseError: _tell_database,
    NoConnection: _tell_crowded,
    Exception: _tell_failure,
}


def problem_handlers(
    answer: AnswerProblem,
) -> dict[int | type[Exception], Callable[[Request, Any], Response]]:
    """For the app: every error is told as a problem, and answered as `answer` shows it."""

    def handler(tell: Callable[[Request, Any], Told]) -> Callable[[Request, Any], Response]:
        return lambda request, error: answer(request, *tell(request, error))

    return {kind: handler(tell) for kind, tell in _TELLING.items()}
