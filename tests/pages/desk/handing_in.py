"""Comments handed in at the desk with its forms alone, and what its pages then hold."""

from __future__ import annotations

import re
from html import unescape

import httpx

from tests.pages.desk.conftest import Browser, words_in

DESK = "/desk/games/windy-island"
AT = f"{DESK}/rounds/1"


def handed_in(browser: Browser, content: str, name: str = "c.csv", **fields: str) -> httpx.Response:
    """Give a file, look at it, and keep it."""
    glance = browser.post(f"{AT}/hand-in", fields, files={"file": (name, content.encode())})
    assert glance.status_code == 200, words_in(glance)
    return browser.post(waiting(glance), kept_fields(glance) | {"do": "keep"} | fields)


def waiting(glance: httpx.Response) -> str:
    found = re.search(rf'action="({AT}/hand-in/[^"]+)"', glance.text)
    assert found is not None, words_in(glance)
    return found[1]


def offered_columns(page: httpx.Response) -> list[str]:
    return re.findall(r'<option value="([^"]*)"></option>', page.text)


def kept_fields(page: httpx.Response) -> dict[str, str]:
    """The text fields of a page as a browser would send them."""
    return {
        name: unescape(value)
        for name, value in re.findall(r'<input[^>]*name="(\w+)"[^>]*value="([^"]*)"', page.text)
        if name != "form_token" and 'type="checkbox"' not in name
    }


def keys(page: httpx.Response) -> list[str]:
    return re.findall(r'<article class="comment [^"]*" id="c-([^"]+)"', page.text)
