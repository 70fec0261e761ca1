"""Forms that only the desk's own pages can send: every route that takes one is tried."""

from __future__ import annotations

import pytest

from tests.api.conftest import Service
from tests.pages.conftest import (
    PASSWORD,
    browser_of,
    new_link,
    page_routes,
    signed_in,
    token_in,
    words_in,
)

ELSEWHERE = "https://elsewhere.example"


def ways_to_send() -> list[tuple[str, str]]:
    """Every way to send something to a page: its method and address."""
    return [
        (method, route.path)
        for route in page_routes()
        for method in sorted((route.methods or set()) - {"GET", "HEAD"})
    ]


def filled(path: str) -> str:
    return (
        path.replace("{key}", "some-key").replace("{game}", "windy-island").replace("{number}", "1")
    )


def test_pages_are_sent_forms_and_nothing_else() -> None:
    found = ways_to_send()
    assert {method for method, _ in found} == {"POST"}
    assert {path for _, path in found} >= {"/desk/sign-in", "/desk/sign-out", "/desk/link/{key}"}


def test_no_form_is_taken_without_its_token(service: Service) -> None:
    """Nor with one that is wrong, or another browser's."""
    desk = signed_in(service)
    other = token_in(signed_in(service).get("/desk"))
    own = token_in(desk.get("/desk"))
    assert own != other
    for _, path in ways_to_send():
        for token in (None, "", "0" * 64, other, own[:-1], own + "0", "ü"):
            form = {} if token is None else {"form_token": token}
            answer = desk.post(filled(path), form)
            assert answer.status_code == 403, (path, token)
            assert "open the page anew" in words_in(answer), path
    assert desk.get("/desk").status_code == 200


@pytest.mark.parametrize(
    "headers",
    [
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"Sec-Fetch-Site": "none"},
        {"Origin": ELSEWHERE},
        {"Origin": "null"},
        {"Sec-Fetch-Site": "same-origin", "Origin": ELSEWHERE},
    ],
    ids=lambda headers: "; ".join(f"{name}={value}" for name, value in headers.items()),
)
def test_no_form_is_taken_from_another_site(service: Service, headers: dict[str, str]) -> None:
    """Even with the right token, whatever the browser says of where it came from."""
    desk = signed_in(service)
    form = {"form_token": token_in(desk.get("/desk"))}
    for _, path in ways_to_send():
        assert desk.post(filled(path), form, headers=headers).status_code == 403, path
    assert desk.get("/desk").status_code == 200


@pytest.mark.parametrize(
    "headers",
    [{}, {"Sec-Fetch-Site": "same-origin"}, {"Origin": "http://loopstart.example"}],
    ids=["nothing said", "same origin", "origin"],
)
def test_a_form_is_taken_from_here(service: Service, headers: dict[str, str]) -> None:
    desk = signed_in(service)
    form = {"form_token": token_in(desk.get("/desk"))}
    assert desk.post("/desk/sign-out", form, headers=headers).status_code == 303


def test_signing_in_needs_a_form_of_this_browser_too(service: Service) -> None:
    """Else another site could sign somebody in to a desk that is not hers."""
    link, browser = new_link(service), browser_of(service)
    token = token_in(browser.get(link))
    assert browser_of(service).post(link, {"form_token": token}).status_code == 403
    assert browser.post(link, {"form_token": token}).status_code == 303


@pytest.mark.parametrize("path", ["/desk/sign-in", "/desk/link/x"])
def test_a_strangers_form_that_is_large_is_not_read(service: Service, path: str) -> None:
    browser = browser_of(service)
    form = {"form_token": token_in(browser.get("/desk/link/x")), "password": "x" * 30_000}
    answer = browser.post(path, form)
    assert answer.status_code == 413


def test_a_form_without_its_length_is_not_read(service: Service) -> None:
    async def endless() -> object:
        yield b"password="
        while True:
            yield b"x" * 1000

    browser = browser_of(service)
    answer = browser.post("/desk/sign-in", {}, content=endless())
    assert answer.status_code == 413


def test_files_and_strange_fields_in_the_form_of_signing_in_are_refused(service: Service) -> None:
    assert service.host.put("/desk/password", {"password": PASSWORD}).status_code == 204
    browser = browser_of(service)
    token = token_in(browser.get("/desk/sign-in"))
    answer = browser.post(
        "/desk/sign-in", {"form_token": token}, files={"password": ("p", PASSWORD.encode())}
    )
    assert answer.status_code in {400, 403}
