"""A real browser: Chromium, as the system has it, driven by Playwright."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from service.settings import DATABASE_FILE, Settings
from tests.browser.serving import Served, play, serving

NAMES = ("chromium", "chromium-browser", "google-chrome", "chrome")
FLAGS = (
    *("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync"),
)
#: Says in the page's own console what the policy would not let it do.
TELL_VIOLATIONS = """
document.addEventListener("securitypolicyviolation", (event) => {
  console.error(`policy violated: ${event.violatedDirective} ${event.blockedURI}`);
});
"""


@dataclass
class Watched:
    """A page in a browser of its own, and whatever it should not have done."""

    page: Page
    context: BrowserContext
    trouble: list[str] = field(default_factory=list)

    def violations(self) -> list[str]:
        """What axe-core finds wrong: every rule for WCAG up to 2.2 AA, and its good practice."""
        found = Axe().run(self.page, options={"resultTypes": ["violations"]}).response["violations"]
        return [
            f"{one['id']}: {node['target']} {node.get('failureSummary', '')}"
            for one in found
            for node in one["nodes"]
        ]

    def overflow(self) -> int:
        """By how many pixels the page is broader than the window."""
        wide = "document.documentElement.scrollWidth - document.documentElement.clientWidth"
        return int(self.page.evaluate(wide))


Open = Callable[..., Watched]


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    """The browser; tests that need it are skipped where there is none."""
    found = next(filter(None, map(shutil.which, NAMES)), None)
    if found is None:
        pytest.skip("no Chromium is here: install it, on Debian with 'apt-get install chromium'")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=found, args=list(FLAGS))
        yield browser
        browser.close()


@pytest.fixture(scope="module")
def served(tmp_path_factory: pytest.TempPathFactory, _session_sqlite: Path) -> Iterator[Served]:
    """A server with games that have been played for a while; one for the tests of a file."""
    folder = tmp_path_factory.mktemp("served")
    shutil.copy(_session_sqlite, folder / DATABASE_FILE)
    with serving(Settings(data_folder=folder)) as server:
        play(server)
        yield server


@pytest.fixture
def open_page(chromium: Browser, served: Served) -> Iterator[Open]:
    """Opens an address of the server in a window of its own; no page may do what it must not.

    With `at` the browser's time stands still there, until the test lets it run.
    """
    opened: list[Watched] = []

    def opening(path: str, width: int = 1280, *, at: str = "", **options: Any) -> Watched:
        context = chromium.new_context(
            viewport={"width": width, "height": 800}, base_url=served.url, **options
        )
        context.add_init_script(TELL_VIOLATIONS)
        if at:
            context.clock.install(time=datetime.fromisoformat(at) - timedelta(seconds=10))
            context.clock.pause_at(at)
        page = context.new_page()
        watched = Watched(page, context)
        opened.append(watched)
        watch(watched, served.url)
        page.goto(path)
        return watched

    yield opening
    for watched in opened:
        watched.context.close()
    assert [each for watched in opened for each in watched.trouble] == []


def watch(watched: Watched, url: str) -> None:
    """Notes errors, what the policy forbids, and whatever is asked of anybody else."""

    def asked(address: str) -> None:
        if not address.startswith((url, "data:")):
            watched.trouble.append(f"asked {address}")

    def said(kind: str, text: str) -> None:
        # Browsers say of themselves that a page was answered with a status of 400 and more.
        if kind in {"error", "warning"} and "Failed to load resource" not in text:
            watched.trouble.append(f"{kind}: {text}")

    watched.context.on("request", lambda request: asked(request.url))
    watched.page.on("console", lambda message: said(message.type, message.text))
    watched.page.on("pageerror", lambda error: watched.trouble.append(str(error)))
