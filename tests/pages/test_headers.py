"""What goes with every answer: a strict policy, and files that may be kept for a year."""

from __future__ import annotations

import re
from hashlib import sha256

import pytest

from service.pages.statics import static_address, statics
from tests.api.asking import make_game
from tests.api.conftest import Service
from tests.pages.conftest import Browser, browser_of, signed_in

PAGES = ["/", "/games/windy-island", "/games/nowhere", "/desk/sign-in", "/desk/link/x", "/nowhere"]
DESK_PAGES = ["/desk", "/desk/ways-in"]
STRICT = {
    "default-src": "'none'",
    "script-src": "'self'",
    "style-src": "'self'",
    "font-src": "'self'",
    "img-src": "'self' data:",
    "connect-src": "'self'",
    "form-action": "'self'",
    "base-uri": "'none'",
    "frame-ancestors": "'none'",
}


def policy_of(answer: object) -> dict[str, str]:
    told = answer.headers["content-security-policy"]  # type: ignore[attr-defined]
    parts = (part.strip().partition(" ") for part in told.split(";"))
    return {name: value for name, _, value in parts}


@pytest.mark.parametrize("page", [*PAGES, *DESK_PAGES])
def test_pages_run_and_load_nothing_but_their_own_files(service: Service, page: str) -> None:
    make_game(service.host)
    answer = signed_in(service).get(page)
    assert answer.headers["content-type"] == "text/html; charset=utf-8"
    assert policy_of(answer) == STRICT
    assert answer.headers["x-content-type-options"] == "nosniff"
    assert answer.headers["referrer-policy"] == "same-origin"
    assert answer.headers["cross-origin-opener-policy"] == "same-origin"
    assert "camera=()" in answer.headers["permissions-policy"]
    for inline in (r"<style", r"\sstyle=", r"\son\w+=", r"<script(?![^>]*\ssrc=)", r"javascript:"):
        assert not re.search(inline, answer.text, re.IGNORECASE), inline
    addresses = re.findall(r'(?:src|href|action)="([^"]*)"', answer.text)
    assert [each for each in addresses if "//" in each] == []
    loaded = [each for each in addresses if each.startswith("/static/")]
    assert len(loaded) >= 3
    assert all(signed_in(service).get(each).status_code == 200 for each in loaded)


def test_an_overlay_may_be_framed_and_has_nothing_to_click_on(service: Service) -> None:
    make_game(service.host)
    browser = browser_of(service)
    for query in ("?plain", "?plain=dark", "?x=1&plain="):
        answer = browser.get(f"/games/windy-island{query}")
        assert policy_of(answer) == STRICT | {"frame-ancestors": "*"}
        assert not re.search(r"<(a|button|form|input)\b", answer.text)
    for query in ("", "?plains", "?x=plain", "?dark=plain"):
        assert policy_of(browser.get(f"/games/windy-island{query}")) == STRICT


def test_a_picture_may_stand_in_another_page_and_a_page_may_not(service: Service) -> None:
    make_game(service.host)
    browser = browser_of(service)
    picture = browser.get("/api/games/windy-island/map.svg")
    assert "cross-origin-resource-policy" not in picture.headers
    assert policy_of(picture) == STRICT
    for page in ("/", "/games/windy-island", "/desk/sign-in"):
        assert browser.get(page).headers["cross-origin-resource-policy"] == "same-origin"


@pytest.mark.parametrize("page", DESK_PAGES)
def test_nobody_keeps_a_page_of_the_desk(desk: Browser, page: str) -> None:
    assert desk.get(page).headers["cache-control"] == "no-store"


def test_browsers_on_a_safe_connection_stay_on_one(service: Service) -> None:
    safe = browser_of(service, "https").get("/").headers
    assert safe["strict-transport-security"] == "max-age=31536000"
    assert "strict-transport-security" not in browser_of(service).get("/").headers


@pytest.mark.parametrize("name", sorted(statics()))
def test_a_file_may_be_kept_since_its_address_tells_its_content(
    browser: Browser, name: str
) -> None:
    answer = browser.get(static_address(name))
    assert answer.status_code == 200
    assert answer.headers["cache-control"] == "public, max-age=31536000, immutable"
    digest = sha256(answer.content).hexdigest()
    assert static_address(name) == f"/static/{digest[:16]}/{name}"
    assert browser.get(f"/static/{'0' * 16}/{name}").status_code == 404
    kinds = {"css": "text/css", "js": "text/javascript", "svg": "image/svg+xml"}
    assert answer.headers["content-type"].startswith(kinds[name.rpartition(".")[2]])


@pytest.mark.parametrize("name", ["..%2Fapp.py", "%2e%2e/app.py", "style.css%00", "none.css"])
def test_nothing_else_is_served_from_the_folder(browser: Browser, name: str) -> None:
    digest = statics()["style.css"].digest
    assert browser.get(f"/static/{digest}/{name}").status_code == 404


def test_no_file_asks_another_host_for_anything() -> None:
    for name, one in statics().items():
        found = re.findall(rb"(?:https?:)?//[\w.-]+\.\w+", one.content)
        assert set(found) <= {b"http://www.w3.org"}, name  # the name of SVG, never fetched


@pytest.mark.parametrize(
    ("path", "status", "words"),
    [
        ("/nowhere", 404, "nothing at this address"),
        ("/games/none", 404, "There is no game &#39;none&#39; here"),
        ("/games/%00", 404, "There is no game"),
        ("/desk/ways-in/end", 405, "takes nothing of that kind"),
    ],
)
def test_what_is_wrong_is_said_in_a_sentence_on_a_page(
    browser: Browser, path: str, status: int, words: str
) -> None:
    answer = browser.get(path)
    assert answer.status_code == status
    assert answer.headers["content-type"] == "text/html; charset=utf-8"
    assert words in answer.text
    assert '<a href="/' in answer.text


def test_a_program_gets_problem_details(browser: Browser) -> None:
    for path in ("/api/nowhere", "/api/games/none"):
        answer = browser.get(path)
        assert answer.headers["content-type"] == "application/problem+json"
    answer = browser.get("/nowhere", headers={"Accept": "application/json"})
    assert answer.headers["content-type"] == "application/problem+json"
