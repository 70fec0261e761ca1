"""A host at her desk in a real browser: by mouse, or by keyboard alone."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any
from zoneinfo import ZoneInfo

from playwright.sync_api import Locator, Page

from demo.play import FOLDER, read_plan
from tests.browser.serving import Served

PLAN = read_plan()
GAME = PLAN["game"]
DESK = f"/desk/games/{GAME['slug']}"
ZONE = ZoneInfo(GAME["zone"])
#: More stops than any page of the desk has.
_MOST_STOPS = 300


def instant(text: str) -> datetime:
    """A time of the demo's plan; without an offset it is the island's."""
    told = datetime.fromisoformat(text)
    return (told if told.tzinfo else told.replace(tzinfo=ZONE)).astimezone(UTC)


@dataclass
class Mouse:
    """Presses and fills in what it points at."""

    page: Page
    served: Served

    def press(self, role: Any, name: str, within: Locator | None = None) -> None:
        """Press the button or follow the link of that name."""
        where = self.page if within is None else within
        where.get_by_role(role, name=name, exact=role == "button").first.click()
        self.page.wait_for_load_state()

    def fill(self, label: str, words: str, within: Locator | None = None) -> None:
        """Fill in the field of that label."""
        (self.page if within is None else within).get_by_label(label, exact=True).first.fill(words)

    def when(self, label: str, at: datetime) -> None:
        """Fill in a time of the game's zone."""
        self.fill(label, at.astimezone(ZONE).strftime("%Y-%m-%dT%H:%M"))

    def tick(self, label: str) -> None:
        """Tick a box or choose one of several."""
        self.page.get_by_label(label, exact=True).check()

    def give(self, file: str) -> None:
        """Give an export as a file."""
        self.page.get_by_label("A file").set_input_files(FOLDER / file)

    def sign_in(self) -> None:
        """Come in by a new link."""
        self.page.goto(self.served.new_link())
        self.press("button", "Sign in")
        self.page.wait_for_url("**/desk")

    def next_step(self) -> str:
        """What the desk says is next."""
        return self.page.locator(".next-what").inner_text()


class Keyboard(Mouse):
    """The same with the keyboard alone; whatever it comes to must show that it has the focus."""

    def press(self, role: Any, name: str, within: Locator | None = None) -> None:
        """Go there with Tab, and press Enter."""
        where = self.page if within is None else within
        self._go_to(where.get_by_role(role, name=name, exact=role == "button").first)
        self.page.keyboard.press("Enter")
        self.page.wait_for_load_state()

    def fill(self, label: str, words: str, within: Locator | None = None) -> None:
        """Go there with Tab, and type."""
        self._go_to((self.page if within is None else within).get_by_label(label, exact=True).first)
        self.page.keyboard.press("Control+A")
        self.page.keyboard.insert_text(words)

    def when(self, label: str, at: datetime) -> None:
        """Type a time as the browser's field takes it, part by part."""
        self._go_to(self.page.get_by_label(label, exact=True).first)
        local = at.astimezone(ZONE)
        self.page.keyboard.type(local.strftime("%m%d%Y"))
        self.page.keyboard.press("ArrowRight")
        self.page.keyboard.type(local.strftime("%I%M%p"))

    def tick(self, label: str) -> None:
        """Go there with Tab, and press Space; the arrows go on to the choice wanted."""
        wanted = self.page.get_by_label(label, exact=True)
        if wanted.get_attribute("type") == "radio":
            group = self.page.locator(f"input[name='{wanted.get_attribute('name')}']:checked")
            self._go_to(group)
            for _ in range(10):
                if wanted.is_checked():
                    return
                self.page.keyboard.press("ArrowDown")
        self._go_to(wanted)
        self.page.keyboard.press("Space")

    def give(self, file: str) -> None:
        """Paste an export: a file is chosen in a window of the system."""
        self.fill("Or paste the comments", (FOLDER / file).read_text("utf-8"))

    def _go_to(self, wanted: Locator) -> None:
        wanted.wait_for(state="attached")
        for _ in range(_MOST_STOPS):
            if wanted.evaluate("one => one === document.activeElement"):
                assert self.page.evaluate(_SHOWS_FOCUS), wanted
                return
            self.page.keyboard.press("Tab")
        raise AssertionError(f"{wanted} is not reached with Tab on {self.page.url}")


_SHOWS_FOCUS = """() => {
    const style = getComputedStyle(document.activeElement);
    return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
}"""


def set_up(host: Mouse) -> None:
    """The game of the demo, in five steps."""
    host.sign_in()
    host.press("link", "Make your first game")
    host.fill("Columns of pages", str(GAME["chart"]["columns"]))
    host.fill("Rows of pages", str(GAME["chart"]["rows"]))
    host.press("button", "Go on")
    host.fill("Name of the game", GAME["name"])
    host.fill("Short name in addresses", GAME["slug"])
    host.fill("Your time zone", GAME["zone"])
    host.fill("Names that you comment under", "\n".join(GAME["hosts"]))
    for name in (
        "French (français)",
        "German (Deutsch)",
        "Spanish (español)",
        "Dutch (Nederlands)",
    ):
        host.tick(name)
    host.press("button", "Go on")
    host.tick("any stitched page")
    host.press("button", "Go on")
    host.fill("Title of the piece", GAME["answer"]["title"])
    host.fill("Designer, if there is one to name", GAME["answer"]["designer"])
    host.fill("Other names that are right too", "\n".join(GAME["answer"]["aliases"]))
    host.when("Guessing opens", instant(GAME["guesses_open"]))
    host.when("Guessing ends", instant(GAME["guesses_close"]))
    host.press("button", "Go on")
    host.press("button", "Make the game")


def open_round(host: Mouse, number: int) -> None:
    """Pages said by clicking the map, the round drafted with its times, and opened."""
    told = PLAN["rounds"][number - 1]
    host.served.clock.now = instant(told["opens"])
    host.sign_in()
    for page in told["pages_before"]:
        host.page.goto(DESK)
        host.press("link", f"Page {page['page']},")
        host.press("button", "Stitched" if page["state"] == "stitched" else "In hand")
    host.page.goto(DESK)
    assert host.next_step() == ("Open round 1" if number == 1 else "Draft the next round")
    host.press("link", host.next_step())
    host.when("Opens", instant(told["opens"]))
    host.when("Closes", instant(told["closes"]))
    host.press("button", "Keep the rules" if number == 1 else f"Draft round {number}")
    host.press("button", f"Open round {number}")
    assert host.page.locator("h1").inner_text() == f"Round {number} open"


def hand_in(host: Mouse, number: int) -> None:
    """The export given, looked at, kept, once the voting is over."""
    told = PLAN["rounds"][number - 1]
    host.served.clock.now = instant(told["export"]["copied_at"])
    host.page.goto(f"{DESK}/rounds/{number}/hand-in")
    host.give(told["export"]["file"])
    host.press("button", "Look how it is read")
    host.page.locator("#keep").wait_for()
    host.press("button", "Hand these comments in")
    host.page.wait_for_url("**/batches/*")
    host.page.goto(f"{DESK}/rounds/{number}")
    host.press("button", f"Close round {number}")
    host.page.wait_for_url(re.compile("done=closed"))


def rule(host: Mouse, number: int) -> None:
    """The rulings of the plan, each by its comment's own buttons."""
    for ruling in PLAN["rounds"][number - 1]["rulings"]:
        presses = []
        if "in_time" in ruling:
            presses.append("In time" if ruling["in_time"] else "Not in time")
        if ruling.get("in_time", True):
            presses.append(f"Page {ruling['pages'][0]}" if ruling["pages"] else "Chooses nothing")
        for name in presses:
            host.page.goto(f"{DESK}/rounds/{number}/comments?show=look")
            by = host.page.get_by_role("heading", name=ruling["author"], exact=True)
            comment = host.page.locator(".comment").filter(has=by)
            if comment.count() == 0:
                continue
            host.fill("Reason", ruling["reason"], comment)
            if name.startswith("Page ") and not comment.get_by_role("button", name=name).count():
                host.fill("Or other pages", str(ruling["pages"][0]), comment)
                name = "These pages"  # noqa: PLW2901 - the same wish by another button
            host.press("button", name, comment)
            host.page.wait_for_url(re.compile("ruled="))


def rule_on_guesses(host: Mouse, number: int) -> None:
    """The rulings of the plan on guesses."""
    for ruling in PLAN["rounds"][number - 1]["guess_rulings"]:
        host.page.goto(f"{DESK}/guesses?show=look")
        by = host.page.get_by_role("heading", name=ruling["author"], exact=True)
        guess = host.page.locator(".comment").filter(has=by)
        host.fill("Reason", ruling["reason"], guess)
        host.press("button", f"It is {ruling['outcome']}", guess)
        host.page.wait_for_url(re.compile("done=ruled"))


def announce(host: Mouse, number: int) -> None:
    """The result announced; its words are shown next."""
    host.page.goto(f"{DESK}/rounds/{number}")
    assert host.next_step() == f"Announce round {number}"
    host.press("button", f"Announce round {number}")
    host.page.wait_for_url("**/words?done=announced")


def play_round(host: Mouse, number: int) -> None:
    """A whole round of the demo."""
    open_round(host, number)
    hand_in(host, number)
    rule(host, number)
    rule_on_guesses(host, number)
    announce(host, number)
