"""Signing in to the desk in Chromium: by mouse, by keyboard, with scripts and without."""

from __future__ import annotations

import pytest

from tests.browser.conftest import Open
from tests.browser.serving import Served

PASSWORD = "gorse kettle lantern seven"
SIZES = [360, 768, 1280]


def test_a_link_leads_to_the_desk_with_one_click(open_page: Open, served: Served) -> None:
    watched = open_page(served.new_link(), java_script_enabled=False)
    watched.page.get_by_role("button", name="Sign in").click()
    assert watched.page.url == f"{served.url}/desk"
    assert watched.page.get_by_role("heading", level=1).inner_text() == "Your games"
    [cookie] = [each for each in watched.context.cookies() if each["name"] == "loopstart_desk"]
    assert cookie["httpOnly"]
    assert cookie["sameSite"] == "Strict"
    watched.page.get_by_role("button", name="Sign out").click()
    assert watched.page.url == f"{served.url}/desk/sign-in"
    watched.page.goto("/desk")
    assert watched.page.url == f"{served.url}/desk/sign-in?then=/desk"


def test_a_link_needs_no_mouse(open_page: Open, served: Served) -> None:
    page = open_page(served.new_link()).page
    assert page.evaluate("document.activeElement.textContent") == "Sign in"
    page.keyboard.press("Enter")
    page.wait_for_url(f"{served.url}/desk")


def test_a_password_is_set_and_signs_in_by_keyboard_alone(open_page: Open, served: Served) -> None:
    page = open_page(served.new_link()).page
    page.keyboard.press("Enter")
    page.wait_for_url(f"{served.url}/desk")
    page.goto("/desk/ways-in")
    page.get_by_label("The new password").focus()
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url(f"{served.url}/desk/ways-in?done=password")
    assert "The password is set" in page.get_by_role("status").inner_text()

    other = open_page("/desk/ways-in", 360).page
    assert other.url == f"{served.url}/desk/sign-in?then=/desk/ways-in"
    field = other.get_by_label("Password of this desk")
    field.focus()
    other.keyboard.type("not the password")
    other.keyboard.press("Enter")
    other.get_by_role("alert").wait_for()
    assert "This is not the desk's password" in other.get_by_role("alert").inner_text()
    other.get_by_label("Password of this desk").focus()
    other.keyboard.type(PASSWORD)
    other.keyboard.press("Enter")
    other.wait_for_url(f"{served.url}/desk/ways-in")
    assert "(this one)" in other.locator("main").inner_text()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_wrong_at_the_desk(open_page: Open, served: Served, scheme: str) -> None:
    for _ in range(2):  # so that there is another browser to be signed out
        watched = open_page(served.new_link(), 360, color_scheme=scheme)
        assert watched.violations() == []
        watched.page.get_by_role("button", name="Sign in").click()
    for path in ("/desk", "/desk/ways-in", "/desk/ways-in?done=others"):
        watched.page.goto(path)
        assert watched.violations() == []
        for width in SIZES:
            watched.page.set_viewport_size({"width": width, "height": 800})
            assert (path, width, watched.overflow()) == (path, width, 0)
    current = watched.page.get_by_label("The password until now")
    if current.count():  # where another test has set one
        current.fill("no password of this desk")
    watched.page.get_by_label("The new password").fill("iloveyou1234")
    watched.page.get_by_role("button", name="Set it").or_(
        watched.page.get_by_role("button", name="Change it")
    ).click()
    watched.page.get_by_role("alert").wait_for()
    assert watched.violations() == []
