"""What another site's page can do with a host's browser: nothing; and what answers say they are."""

from __future__ import annotations

import re

import httpx
import pytest

from service.app import PAGE_ROUTERS
from tests.api.asking import GAME, assert_problem, done, everything_kept, open_round
from tests.api.conftest import Service
from tests.api.test_every_route import FILLED, PUBLIC, address, operations, played
from tests.pages.conftest import browser_of, signed_in

ELSEWHERE = {"Origin": "https://elsewhere.example"}


def test_a_cookie_of_the_desk_is_no_token(service: Service) -> None:
    """So that nothing of the API can be done by a form or a picture of another site."""
    open_round(service)
    desk = signed_in(service)
    before = everything_kept(service)
    for method, path in sorted(set(operations(service)) - PUBLIC):
        answer = service._runner.run(desk.web.request(method.upper(), address(path)))
        assert_problem(answer, 401, "carries no token")
    assert everything_kept(service) == before


def test_no_other_origin_may_read_an_answer(service: Service) -> None:
    played(service)
    ask = service.host.ask
    answers = [ask(method.upper(), address(path), headers=ELSEWHERE) for method, path in PUBLIC]
    answers += [ask("GET", page, headers=ELSEWHERE) for page in ("/", "/desk", "/docs")]
    preflight = ELSEWHERE | {"Access-Control-Request-Method": "POST"}
    answers.append(ask("OPTIONS", "/api/games", headers=preflight))
    for answer in answers:
        assert not [name for name in answer.headers if name.startswith("access-control-")]


def test_looking_changes_nothing(service: Service) -> None:
    """Whatever GET and HEAD are sent to, by the host and at the desk, is as it was."""
    played(service)
    desk = signed_in(service)
    before = everything_kept(service)
    seen = 0
    for method, path in sorted(operations(service)):
        if method == "get":
            seen += service.host.ask("GET", address(path)).status_code < 500
    for route in (route for router in PAGE_ROUTERS for route in router.routes):
        path = getattr(route, "path", "")
        if "GET" in (getattr(route, "methods", None) or ()):
            filled = re.sub(r"{(\w+)(:path)?}", lambda name: FILLED[name[1]], path)
            seen += desk.get(filled).status_code < 500
    assert seen > 50
    assert everything_kept(service) == before


@pytest.mark.parametrize("method", ["TRACE", "CONNECT", "PROPFIND", "TRACK"])
def test_a_method_that_nobody_needs_is_not_taken(service: Service, method: str) -> None:
    for path in ("/", "/desk", "/api/games", "/api/health"):
        answer = service.viewer.ask(method, path, headers={"X-Secret": "echoed"})
        assert answer.status_code == 405
        assert "echoed" not in answer.text


def charset_is_told(answer: httpx.Response) -> bool:
    """JSON is always UTF-8 (RFC 8259, section 8.1) and PNG no text: all else must say so."""
    kind = answer.headers["content-type"]
    if kind in {"application/json", "application/problem+json", "image/png"}:
        return True
    return "charset=utf-8" in kind


def test_every_answer_says_what_it_is_and_how_it_is_encoded(service: Service) -> None:
    played(service)
    desk, browser = signed_in(service), browser_of(service)
    answers = {
        path: service.host.ask(method.upper(), address(path))
        for method, path in operations(service)
    }
    answers |= {
        path: browser.get(path) for path in ("/", "/games/windy-island", "/nowhere", "/x.y")
    }
    answers |= {path: desk.get(path) for path in ("/desk", "/desk/ways-in", "/docs", "/redoc")}
    board = answers["/games/windy-island"].text
    answers |= {path: browser.get(path) for path in re.findall(r'"(/static/[^"]+)"', board)}
    for path, answer in answers.items():
        if answer.content:
            assert charset_is_told(answer), (path, answer.headers["content-type"])
        assert answer.headers["x-content-type-options"] == "nosniff", path
        assert "object-src" not in answer.headers["content-security-policy"]
        assert re.search(r"default-src '(none|self)'", answer.headers["content-security-policy"])


def test_what_was_handed_in_is_never_served_again(service: Service) -> None:
    open_round(service)
    page = b"<html><script>alert(1)</script>Name,Time,Comment</html>"
    export = b"Name,Time,Comment\na,2026-03-01T19:00:00Z,13 <script>alert(1)</script>\n"
    service.host.hand_in("/games/windy-island/rounds/1/batches", page, "../../evil.html")
    done(service.host.hand_in("/games/windy-island/rounds/1/batches", export, "../evil.html"), 201)
    for path in ("/evil.html", "/static/evil.html", "/../evil.html", "/api/evil.html"):
        assert service.viewer.ask("GET", path).status_code == 404
    desk = signed_in(service)
    shown = desk.get("/desk/games/windy-island/rounds/1/comments").text
    assert "<script>alert" not in shown
    assert "&lt;script&gt;alert" in shown
    listed = service.host.get("/games/windy-island/rounds/1/comments")
    assert listed.headers["content-type"] == "application/json"


def test_a_file_has_a_name_that_is_ours(service: Service) -> None:
    """Made of a slug and a number, of which neither can hold what would break the header."""
    open_round(service, closes="2026-03-09T18:00")
    for path in ("map.svg", "rounds/1/map.png", "rounds/1/closing.ics"):
        told = service.viewer.get(f"/games/windy-island/{path}?filename=evil.exe").headers
        assert re.fullmatch(
            r'inline; filename="windy-island-[a-z0-9-]+\.(svg|png|ics)"',
            told["content-disposition"],
        )
    for slug in ('a"b', "a\r\nb", "a/b", "a;b", "ä", "../a"):
        assert service.host.post("/games", GAME | {"slug": slug}).status_code == 422


@pytest.mark.parametrize("path", ["/.git/config", "/.env", "/loopstart.sqlite3", "/pyproject.toml"])
def test_no_file_of_the_project_is_served(service: Service, path: str) -> None:
    for prefix in ("", "/static", "/static-offline-docs", "/static-offline-docs/.."):
        assert service.viewer.ask("GET", prefix + path).status_code == 404


@pytest.mark.parametrize("path", ["/static", "/static/", "/static-offline-docs/", "/api", "/api/"])
def test_no_folder_is_listed(service: Service, path: str) -> None:
    assert service.viewer.ask("GET", path).status_code == 404
