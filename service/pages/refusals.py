"""Problems as pages: whoever asks for a page reads one sentence, and a program gets its JSON."""

from __future__ import annotations

from collections.abc import Mapping
from urllib.parse import quote

from fastapi import Request
from fastapi.responses import RedirectResponse, Response

from service.api.problems import Problem, ProblemAnswer, address_of
from service.errors import NotSignedIn
from service.pages.frame import Frame
from service.pages.rendering import NOT_KEPT, answer_page
from service.pages.sign_in_contexts import RefusalPage

SIGN_IN = "/desk/sign-in"
_PAGES = ("/games", "/desk", "/static/")
_TITLES = {
    403: "This cannot be opened",
    404: "There is no such page",
    405: "This cannot be sent here",
    409: "Not at this time",
    413: "Too large",
    422: "This cannot be used",
    429: "Too often",
    431: "Too long",
    503: "Not at the moment",
}


def answer_problem(request: Request, problem: Problem, headers: Mapping[str, str]) -> Response:
    """A page for a person, problem details for a program."""
    if not wants_page(request):
        return ProblemAnswer(request, problem, headers)
    if problem.kind == address_of(NotSignedIn) and request.method in ("GET", "HEAD"):
        return RedirectResponse(_sign_in_for(request), 303, dict(NOT_KEPT))
    at_desk = request.url.path.startswith("/desk")
    page = RefusalPage(
        frame=Frame(_TITLES.get(problem.status, "Something went wrong")),
        status=problem.status,
        sentence=_plain_sentence(problem),
        to="/desk" if at_desk else "/",
        to_words="To the desk" if at_desk else "To the games",
    )
    return answer_page(page, problem.status, {**headers, **NOT_KEPT})


def wants_page(request: Request) -> bool:
    """Whether a page was asked for: by its address, or in a browser's words."""
    path = request.url.path
    if path.startswith("/api"):
        return False
    return (
        path == "/" or path.startswith(_PAGES) or "text/html" in request.headers.get("accept", "")
    )


def _plain_sentence(problem: Problem) -> str:
    """The sentence for a person who has never seen the API's pages."""
    if problem.status == 404 and not problem.more:
        return "There is nothing at this address: start from the list of games."
    if problem.status == 405:
        return "This address takes nothing of that kind: start from the list of games."
    return problem.detail[:1].upper() + problem.detail[1:]


def _sign_in_for(request: Request) -> str:
    wanted = request.url.path + (f"?{request.url.query}" if request.url.query else "")
    return f"{SIGN_IN}?then={quote(wanted, safe='/')}"
