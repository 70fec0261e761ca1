"""What a password may be and how it is changed, and what a sign-in leaves of what was before."""

from __future__ import annotations

import re
from datetime import timedelta

import httpx
import pytest
from zxcvbn.frequency_lists import FREQUENCY_LISTS

from service.errors import BadPassword
from service.pages.statics import statics
from service.store import passwords
from service.store.passwords import CONTEXT_WORDS, LONGEST, SHORTEST
from tests.api.conftest import Service
from tests.pages.conftest import PASSWORD, browser_of, new_link, signed_in
from tests.pages.test_sign_in import SIGN_IN, WAYS_IN, is_in, set_password

LONG = "a kettle of gorse and seven lanterns by the harbour wall, all of them painted blue twice"


def by_password(service: Service, password: str) -> httpx.Response:
    return browser_of(service).send(SIGN_IN, SIGN_IN, password=password)


@pytest.mark.parametrize(
    "password",
    [
        "8301 7742 9916 0385",
        "ゲームの部屋は青い灯台の下",
        "zqxjvkwpbmtd",
        LONG,
        "x9" * 4 + "é#" * 28 + LONG,
    ],
    ids=["digits", "no Latin letter", "small letters", "a sentence", "150 characters"],
)
def test_a_password_may_be_made_of_anything_and_is_taken_as_it_is(
    service: Service, password: str
) -> None:
    assert service.host.put("/desk/password", {"password": password}).status_code == 204
    assert by_password(service, password).status_code == 303
    # Neither cut off, nor in capitals, nor tidied up.
    for other in (password[:-1], password + "x", password + " ", password.swapcase()):
        if other != password:
            assert by_password(service, other).status_code == 403


def test_the_most_common_passwords_are_refused() -> None:
    long_enough = [each for each in FREQUENCY_LISTS["passwords"] if len(each) >= SHORTEST]
    # Of the 30,000 most common there are so few: the length alone keeps the others out.
    assert len(long_enough) > 50
    for password in (*long_enough, *(each + "1" for each in long_enough)):
        with pytest.raises(BadPassword):
            passwords._check(password)


@pytest.mark.parametrize("word", CONTEXT_WORDS)
def test_a_password_of_words_about_the_desk_is_refused(word: str) -> None:
    for password in (f"{word}{word}{word}", f"{word.title()}-loopstart1", f"loopstart {word} 2026"):
        if len(password) >= SHORTEST:
            with pytest.raises(BadPassword):
                passwords._check(password)


def test_a_password_is_good_until_it_is_changed(service: Service) -> None:
    set_password(service)
    service.clock.now += timedelta(days=3650)
    assert by_password(service, PASSWORD).status_code == 303


def test_the_password_is_changed_only_by_who_knows_it(service: Service) -> None:
    """A browser that was left signed in, by whichever way, is not enough."""
    set_password(service)
    desk = signed_in(service)
    change = f"{WAYS_IN}/password"
    assert 'name="current"' in desk.get(WAYS_IN).text
    assert desk.send(WAYS_IN, change, password=LONG).status_code == 422
    assert desk.send(WAYS_IN, change, password=LONG, current=LONG).status_code == 422
    assert by_password(service, PASSWORD).status_code == 303
    assert desk.send(WAYS_IN, change, password=LONG, current=PASSWORD).status_code == 303
    assert by_password(service, LONG).status_code == 303


def test_a_forgotten_password_is_replaced_with_the_hosts_token_alone(service: Service) -> None:
    set_password(service)
    body = {"password": LONG}
    assert service.viewer.put("/desk/password", body).status_code == 401
    assert service.collector().put("/desk/password", body).status_code == 403
    assert service.host.put("/desk/password", body).status_code == 204
    assert by_password(service, LONG).status_code == 303


def test_password_fields_hide_what_is_typed_and_let_a_manager_fill_them(service: Service) -> None:
    set_password(service)
    pages = browser_of(service).get(SIGN_IN).text + signed_in(service).get(WAYS_IN).text
    fields = re.findall(r"<input[^>]*password[^>]*>", pages)
    assert len(fields) == 3
    for field in fields:
        assert 'type="password"' in field
        assert re.search(r'autocomplete="(current|new)-password"', field)
        assert f'maxlength="{LONGEST}"' in field
    scripts = b"".join(one.content for name, one in statics().items() if name.endswith(".js"))
    assert b"paste" not in re.sub(rb"//[^\n]*", b"", scripts)
    # Nothing but the password is asked: no hint, no question.
    form = pages[: pages.index("</form>")]
    assert re.findall(r'name="(\w+)"', form[form.index("<form") :]) == [
        "form_token",
        "then",
        "password",
    ]


def test_signing_in_again_ends_the_session_before(service: Service) -> None:
    browser = signed_in(service)
    before = browser.web.cookies["loopstart_desk"]
    link = new_link(service)
    assert browser.send(link, link).status_code == 303
    assert is_in(browser)
    assert browser.web.cookies["loopstart_desk"] != before
    thief = browser_of(service)
    thief.web.cookies.set("loopstart_desk", before)
    assert not is_in(thief)


def test_signing_out_clears_what_the_browser_keeps(service: Service) -> None:
    answer = signed_in(service).send("/desk", "/desk/sign-out")
    assert answer.headers["clear-site-data"] == '"cache", "storage"'
    assert answer.headers["cache-control"] == "no-store"


def test_a_new_service_has_no_way_in_that_anybody_knows(service: Service) -> None:
    assert service.host.get("/tokens").json() == []
    for word in ("admin", "root", "host", "password", "loopstart"):
        assert service.caller(word).get("/games").status_code == 401
        assert by_password_without_one(service, word).status_code == 403


def by_password_without_one(service: Service, password: str) -> httpx.Response:
    browser = browser_of(service)
    link = new_link(service)
    found = re.search(r'name="form_token" value="(\w+)"', browser.get(link).text)
    assert found is not None
    return browser.post(SIGN_IN, {"form_token": found[1], "password": password})
