"""Signing in to the desk: by a link once, with the password a few times, and out again."""

from __future__ import annotations

import re
from datetime import timedelta

import pytest
from sqlalchemy import text

from service.store.desk import LINK_LASTS, SESSION_LASTS
from service.store.passwords import MOST_TRIES, TRIES_SPAN
from tests.api.conftest import Service
from tests.pages.conftest import (
    PASSWORD,
    Browser,
    browser_of,
    new_link,
    signed_in,
    token_in,
    words_in,
)

DESK = "/desk"
SIGN_IN = "/desk/sign-in"
WAYS_IN = "/desk/ways-in"


def is_in(browser: Browser) -> bool:
    """Whether the desk opens for this browser."""
    answer = browser.get(DESK)
    if answer.status_code == 303:
        assert answer.headers["location"] == f"{SIGN_IN}?then=/desk"
        return False
    assert answer.status_code == 200
    return "Your games" in answer.text


def set_password(service: Service) -> None:
    assert service.host.put("/desk/password", {"password": PASSWORD}).status_code == 204


def test_nobody_sees_the_desk_without_signing_in(service: Service) -> None:
    assert not is_in(browser_of(service))
    answer = browser_of(service).get(f"{WAYS_IN}?done=others")
    assert answer.headers["location"] == f"{SIGN_IN}?then=/desk/ways-in%3Fdone%3Dothers"


def test_a_link_signs_in_once(either_service: Service) -> None:
    service = either_service
    link = new_link(service)
    first, second = browser_of(service), browser_of(service)
    # Looking at it uses nothing up: programs look at links too.
    for _ in range(3):
        assert second.get(link).status_code == 200
    assert first.send(link, link).status_code == 303
    assert is_in(first)
    answer = second.send(link, link)
    assert answer.status_code == 403
    assert "used already" in words_in(answer)
    assert not is_in(second)


def test_a_link_is_good_for_an_hour_and_until_there_is_a_newer_one(service: Service) -> None:
    old, link = new_link(service), new_link(service)
    browser = browser_of(service)
    assert browser.send(old, old).status_code == 403
    service.clock.now += LINK_LASTS
    assert browser.send(link, link).status_code == 403
    assert not is_in(browser)
    link = new_link(service)
    service.clock.now += LINK_LASTS - timedelta(seconds=1)
    assert browser.send(link, link).status_code == 303
    assert is_in(browser)


def test_a_session_ends_after_a_week(service: Service) -> None:
    browser = signed_in(service)
    service.clock.now += SESSION_LASTS - timedelta(seconds=1)
    assert is_in(browser)
    service.clock.now += timedelta(seconds=1)
    assert not is_in(browser)
    answer = browser.post(f"{WAYS_IN}/end", {})
    assert answer.status_code == 403
    assert "sign in again" in words_in(answer)


@pytest.mark.parametrize("scheme", ["http", "https"])
def test_the_cookie_is_for_this_desk_alone(service: Service, scheme: str) -> None:
    link, browser = new_link(service), browser_of(service, scheme)
    cookies = browser.send(link, link).headers.get_list("set-cookie")
    [cookie] = [each for each in cookies if "loopstart_desk=" in each]
    parts = {part.strip().lower() for part in cookie.split(";")[1:]}
    assert {"httponly", "samesite=strict", "path=/"} <= parts
    assert not any(part.startswith("domain") for part in parts)
    assert ("secure" in parts) == (scheme == "https")
    assert cookie.startswith("__Host-") == (scheme == "https")
    assert is_in(browser)


def test_only_digests_and_hashes_are_kept(service: Service) -> None:
    link, browser = new_link(service), signed_in(service)
    unused = new_link(service)
    set_password(service)
    again = signed_in(service)
    secrets = [
        link.rpartition("/")[2],
        unused.rpartition("/")[2],
        PASSWORD,
        *(value for one in (browser, again) for value in one.web.cookies.values()),
    ]
    with service.app.state.wiring.database.engine.connect() as connection:
        for table in ("desk_links", "desk_sessions", "desk_passwords"):
            rows = connection.execute(text(f"SELECT * FROM {table}")).all()  # noqa: S608
            kept = str(rows)
            assert [secret for secret in secrets if secret in kept] == [], table
        [hashed] = connection.execute(text("SELECT hash FROM desk_passwords")).scalars()
    # RFC 9106: Argon2id; section 4 recommends 64 MiB and three passes where memory is short.
    assert re.match(r"\$argon2id\$v=19\$m=65536,t=3,p=4\$", hashed)


def test_signing_out_ends_the_session_and_not_only_the_cookie(service: Service) -> None:
    browser = signed_in(service)
    key = browser.web.cookies["loopstart_desk"]
    answer = browser.send(DESK, "/desk/sign-out")
    assert answer.headers["location"] == SIGN_IN
    assert not is_in(browser)
    thief = browser_of(service)
    thief.web.cookies.set("loopstart_desk", key)
    assert not is_in(thief)


def test_the_password_signs_in(either_service: Service) -> None:
    service = either_service
    browser = browser_of(service)
    assert "Password of this desk" not in words_in(browser.get(SIGN_IN))
    set_password(service)
    answer = browser.send(SIGN_IN, SIGN_IN, password=PASSWORD + " ", then=WAYS_IN)
    assert answer.status_code == 403
    assert "not the desk's password" in words_in(answer)
    answer = browser.send(SIGN_IN, SIGN_IN, password=PASSWORD, then=WAYS_IN)
    assert (answer.status_code, answer.headers["location"]) == (303, WAYS_IN)
    assert is_in(browser)


def test_the_password_is_tried_only_so_often(either_service: Service) -> None:
    service = either_service
    set_password(service)
    browser = browser_of(service)
    tries = [browser.send(SIGN_IN, SIGN_IN, password="wrong") for _ in range(MOST_TRIES + 2)]
    assert [each.status_code for each in tries] == [403] * MOST_TRIES + [429] * 2
    assert "wait 15 minutes" in words_in(tries[-1])
    # Another browser is no way around it, and the right password does not help either.
    other = browser_of(service)
    assert other.send(SIGN_IN, SIGN_IN, password=PASSWORD).status_code == 429
    # But nobody can lock the host out: a link still opens.
    assert is_in(signed_in(service))
    service.clock.now += TRIES_SPAN
    assert other.send(SIGN_IN, SIGN_IN, password=PASSWORD).status_code == 303


def test_the_right_password_forgets_the_wrong_ones(service: Service) -> None:
    set_password(service)
    for _ in range(3):
        browser = browser_of(service)
        for _ in range(MOST_TRIES - 1):
            assert browser.send(SIGN_IN, SIGN_IN, password="wrong").status_code == 403
        assert browser.send(SIGN_IN, SIGN_IN, password=PASSWORD).status_code == 303


@pytest.mark.parametrize(
    ("password", "words"),
    [
        ("", "0 characters"),
        ("gorse kettl", "11 characters"),
        ("x" * 1001, "1001 characters"),
        ("iloveyou1234", "guessed early"),
        ("password1234", "words that anybody would try here"),
        ("aaaaaaaaaaaaaaaa", "guessed early"),
        ("qwertyuiop123", "guessed early"),
    ],
    ids=["none", "short", "long", "known", "of the desk", "one letter", "keys in a row"],
)
def test_a_bad_password_is_refused(service: Service, password: str, words: str) -> None:
    desk = signed_in(service)
    answer = desk.send(WAYS_IN, f"{WAYS_IN}/password", password=password)
    assert answer.status_code == 422
    assert words in words_in(answer)
    assert "Password of this desk" not in words_in(browser_of(service).get(SIGN_IN))


def test_a_new_password_signs_all_others_out(service: Service) -> None:
    first, second = signed_in(service), signed_in(service)
    answer = first.send(WAYS_IN, f"{WAYS_IN}/password", password=PASSWORD)
    assert answer.headers["location"] == f"{WAYS_IN}?done=password"
    assert "The password is set" in words_in(first.get(answer.headers["location"]))
    assert is_in(first)
    assert not is_in(second)


def test_who_came_in_with_the_password_gives_it_again_to_change_it(service: Service) -> None:
    set_password(service)
    browser = browser_of(service)
    browser.send(SIGN_IN, SIGN_IN, password=PASSWORD)
    change = f"{WAYS_IN}/password"
    another = "herring barrow thimble nine"
    assert browser.send(WAYS_IN, change, password=another).status_code == 422
    assert browser.send(WAYS_IN, change, password=another, current=PASSWORD).status_code == 303
    other = browser_of(service)
    assert other.send(SIGN_IN, SIGN_IN, password=PASSWORD).status_code == 403
    assert other.send(SIGN_IN, SIGN_IN, password=another).status_code == 303


def test_other_browsers_are_signed_out_one_by_one_or_all(service: Service) -> None:
    first, second, third = (signed_in(service) for _ in range(3))
    page = first.get(WAYS_IN)
    numbers = re.findall(r'name="session" value="(\d+)"', page.text)
    assert len(numbers) == 2
    first.send(WAYS_IN, f"{WAYS_IN}/end", session=numbers[-1])
    assert [is_in(each) for each in (first, second, third)] == [True, False, True]
    answer = first.send(WAYS_IN, f"{WAYS_IN}/end", session=numbers[-1])
    assert answer.status_code == 404
    first.send(WAYS_IN, f"{WAYS_IN}/end")
    assert [is_in(each) for each in (first, second, third)] == [True, False, False]


def test_the_api_signs_every_browser_out(service: Service) -> None:
    browsers = [signed_in(service) for _ in range(2)]
    answer = service.host.delete("/desk/sessions")
    assert answer.json() == {"signed_out": 2}
    assert not any(is_in(each) for each in browsers)
    assert service.viewer.delete("/desk/sessions").status_code == 401
    assert service.collector().post("/desk/links").status_code == 403


@pytest.mark.parametrize(
    "then",
    [
        "https://elsewhere.example",
        "//elsewhere.example/desk",
        "/\\elsewhere.example",
        "/desk//elsewhere.example",
        "/desk/../../x\r\nSet-Cookie: a=b",
        "/deskx",
        "/games/one",
        SIGN_IN,
        "javascript:alert(1)",
        "",
    ],
)
def test_one_goes_nowhere_but_to_the_desk_after_signing_in(service: Service, then: str) -> None:
    set_password(service)
    browser = browser_of(service)
    page = browser.get(SIGN_IN, params={"then": then})
    assert 'name="then" value="/desk"' in page.text
    fields = {"form_token": token_in(page), "password": PASSWORD, "then": then}
    assert browser.post(SIGN_IN, fields).headers["location"] == DESK
