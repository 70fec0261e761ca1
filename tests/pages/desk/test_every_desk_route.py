"""Every address of the desk: nobody without a session, no form of another site, no other game."""

from __future__ import annotations

import re

import pytest
from fastapi.routing import APIRoute

from service.app import PAGE_ROUTERS
from tests.api.asking import everything_kept, make_game, open_round
from tests.api.conftest import Service
from tests.pages.desk.conftest import Browser, words_in

FILLED = {
    "slug": "windy-island",
    "number": "1",
    "page": "1",
    "key": "c0",
    "batch": "1",
    "step": "chart",
    "watch": "some-request",
    "occasion": "opening",
    "length": "full",
}
#: The doors, which are for whoever is outside.
DOORS = ("/desk/sign-in", "/desk/link/{key}")


def routes() -> list[tuple[str, str]]:
    found = [
        (method, route.path)
        for router in PAGE_ROUTERS
        for route in router.routes
        if isinstance(route, APIRoute) and route.path.startswith("/desk")
        for method in sorted(route.methods or ())
        if route.path not in DOORS and method != "HEAD"
    ]
    assert len(found) > 40
    return found


def address(path: str, **other: str) -> str:
    return re.sub(r"{(\w+)}", lambda name: (FILLED | other)[name[1]], path)


def test_without_a_session_pages_lead_to_the_door_and_forms_change_nothing(
    service: Service, stranger: Browser
) -> None:
    open_round(service)
    before = everything_kept(service)
    for method, path in routes():
        at = address(path)
        if path == "/desk/new":
            continue
        if method == "GET":
            answer = stranger.get(at, follow=False)
            assert answer.status_code == 303, path
            assert answer.headers["location"].startswith("/desk/sign-in?then="), path
        else:
            answer = stranger.post(at, {"reason": "x", "at": ""}, follow=False)
            assert answer.status_code == 403, path
            assert "Sign in" in words_in(answer) or "signed in" in words_in(answer), path
    assert everything_kept(service) == before


def test_a_form_with_a_wrong_token_or_from_elsewhere_changes_nothing(
    service: Service, browser: Browser
) -> None:
    open_round(service)
    before = everything_kept(service)
    for method, path in routes():
        if method != "POST":
            continue
        at = address(path)
        for token in ("", "0" * 64):
            answer = browser.post(at, {"reason": "x"}, token=token, follow=False)
            assert answer.status_code == 403, path
        elsewhere = {"Origin": "https://elsewhere.example"}
        answer = browser.post(at, {"reason": "x"}, headers=elsewhere, follow=False)
        assert answer.status_code == 403, path
    assert everything_kept(service) == before


def test_a_game_or_a_round_that_is_not_there_is_a_page_that_says_so(
    service: Service, browser: Browser
) -> None:
    make_game(service.host)
    before = everything_kept(service)
    for method, path in routes():
        if "{slug}" not in path:
            continue
        wrong = [address(path, slug="another-game")]
        if "{number}" in path:
            wrong.append(address(path, number="7"))
        for at in wrong:
            if method == "GET":
                answer = browser.get(at, follow=False)
            else:
                answer = browser.post(at, ANYTHING, follow=False)
            assert answer.status_code in (404, 422), (method, at, answer.status_code)
            if answer.status_code == 422:
                assert "another-game" not in answer.text
            assert "Traceback" not in answer.text
    assert everything_kept(service) == before


#: Fields with which most forms would do something.
ANYTHING = {
    "reason": "x",
    "rule": "nothing",
    "page": "1",
    "state": "stitched",
    "title": "The Tin Whistle",
    "alias": "Whistle",
    "text": "$heading",
    "name": "A name",
    "languages": "en",
    "offer": "thread",
    "asked_for": "thread",
    "last": "lowest number",
    "source": "1",
    "numbers": "4",
    "paste": "13",
}


@pytest.mark.parametrize("page", ["0", "64", "x"])
def test_a_page_off_the_chart_is_refused(service: Service, browser: Browser, page: str) -> None:
    make_game(service.host)
    assert browser.get(f"/desk/games/windy-island/pages/{page}").status_code == 422


def test_no_page_of_the_desk_is_kept_by_anybody(service: Service, browser: Browser) -> None:
    open_round(service)
    for method, path in routes():
        if method == "GET" and "{watch}" not in path and "{batch}" not in path:
            answer = browser.get(address(path))
            assert answer.status_code == 200, path
            assert answer.headers["cache-control"] == "no-store", path
            assert "script-src 'self'" in answer.headers["content-security-policy"]
