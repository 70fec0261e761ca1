"""The desk in Chromium: the demo game from set-up to reveal by mouse, by keyboard, without scripts."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from demo.play import FOLDER
from service.settings import DATABASE_FILE, Settings
from tests.browser.conftest import TELL_VIOLATIONS, Watched, watch
from tests.browser.playing import (
    DESK,
    GAME,
    PLAN,
    Keyboard,
    Mouse,
    announce,
    hand_in,
    open_round,
    play_round,
    rule,
    rule_on_guesses,
    set_up,
)
from tests.browser.serving import BAD_NAME, HARD_NAME, Served, serving

EXPECTED = json.loads((FOLDER / PLAN["expected"]).read_text("utf-8"))
NEW_STEPS = [f"/desk/new/{step}" for step in ("chart", "game", "rules", "answer", "review")]
AT = "/desk/games/windy-island"
PAGES = [
    "/desk",
    "/desk/ways-in",
    *NEW_STEPS,
    AT,
    f"{AT}/pages/12",
    f"{AT}/rounds/new",
    f"{AT}/rounds/1",
    f"{AT}/rounds/1/words",
    f"{AT}/rounds/1/comments?show=all",
    f"{AT}/rounds/1/batches/1",
    f"{AT}/rounds/2",
    f"{AT}/rounds/2/hand-in",
    f"{AT}/guesses?show=all",
    f"{AT}/settings",
    f"{AT}/pace",
    "/desk/games/hard-names",
    "/desk/games/hard-names/rounds/new",
    "/desk/games/counted/rounds/1",
]


@pytest.fixture
def fresh(tmp_path: Path, _session_sqlite: Path) -> Iterator[Served]:
    """A server without any game, for this test alone."""
    shutil.copy(_session_sqlite, tmp_path / DATABASE_FILE)
    with serving(Settings(data_folder=tmp_path)) as server:
        server.clock.now = server.clock.now.replace(day=12)
        yield server


@pytest.fixture
def window() -> Iterator[list[Watched]]:
    """The windows that a test opens, none of which may do what it must not."""
    opened: list[Watched] = []
    yield opened
    for one in opened:
        one.context.close()
    assert [each for one in opened for each in one.trouble] == []


def new_window(
    chromium: Browser, served: Served, opened: list[Watched], **options: object
) -> Watched:
    given = {"viewport": {"width": 1280, "height": 800}, "locale": "en-US"} | options
    context = chromium.new_context(base_url=served.url, **given)  # type: ignore[arg-type]
    context.add_init_script(TELL_VIOLATIONS)
    watched = Watched(context.new_page(), context)
    watch(watched, served.url)
    opened.append(watched)
    return watched


def assert_as_read_by_hand(served: Served) -> None:
    """Each round's winner and ballots are those that were read by hand."""
    for number, told in enumerate(EXPECTED["rounds"], start=1):
        result = served.ask("GET", f"/games/{GAME['slug']}/rounds/{number}/result")
        assert result["winner"] == told["after_rulings"]["winner"], number
        assert result["tally"] == told["after_rulings"]["tally"], number


def end_it(host: Mouse) -> None:
    """The winner announced, the answer revealed."""
    host.page.goto(f"{DESK}/guesses")
    host.press("button", "Announce the winner")
    host.page.wait_for_url("**/guesses?done=winner*")
    host.page.goto(f"{DESK}/guesses")
    host.press("button", "Reveal the answer")
    host.page.wait_for_url("**/guesses?done=revealed*")
    assert "The piece is The Accordion Harbour" in host.page.locator("#reveal").inner_text()


def test_the_demo_is_played_with_the_mouse(
    fresh: Served, chromium: Browser, window: list[Watched]
) -> None:
    host = Mouse(new_window(chromium, fresh, window).page, fresh)
    set_up(host)
    for number in (1, 2, 3):
        play_round(host, number)
    assert_as_read_by_hand(fresh)
    end_it(host)


def test_the_demo_is_played_without_scripts_on_a_phone(
    fresh: Served, chromium: Browser, window: list[Watched]
) -> None:
    options = {"java_script_enabled": False, "viewport": {"width": 360, "height": 740}}
    host = Mouse(new_window(chromium, fresh, window, **options).page, fresh)
    set_up(host)
    for number in (1, 2, 3):
        play_round(host, number)
    assert_as_read_by_hand(fresh)
    end_it(host)


def test_the_demo_is_played_with_the_keyboard_alone(
    fresh: Served, chromium: Browser, window: list[Watched]
) -> None:
    host = Keyboard(new_window(chromium, fresh, window).page, fresh)
    set_up(host)
    open_round(host, 1)
    hand_in(host, 1)
    rule(host, 1)
    rule_on_guesses(host, 1)
    announce(host, 1)
    result = fresh.ask("GET", f"/games/{GAME['slug']}/rounds/1/result")
    assert result["winner"] == EXPECTED["rounds"][0]["after_rulings"]["winner"]
    fresh.clock.go_on(days=40)
    host.sign_in()
    end_it(host)


def test_one_key_rules_and_the_next_comment_has_the_focus(
    fresh: Served, chromium: Browser, window: list[Watched]
) -> None:
    host = Mouse(new_window(chromium, fresh, window).page, fresh)
    set_up(host)
    open_round(host, 1)
    hand_in(host, 1)
    page = host.page
    page.goto(f"{DESK}/rounds/1/comments?show=look")
    first, second, third = (
        page.locator(".comment").nth(n).get_attribute("id") or "" for n in range(3)
    )
    page.locator(f"#{first}").focus()
    page.keyboard.press("j")
    assert page.evaluate("document.activeElement.id") == second
    page.keyboard.press("k")
    page.keyboard.press("0")
    page.wait_for_url(f"**#{second}")
    assert page.locator(f"#{first}").count() == 0
    assert page.evaluate("document.activeElement.id") == second
    page.keyboard.press("r")
    page.keyboard.type("t0l1")
    assert page.locator(f"#{second} input[name=reason]").input_value() == "t0l1"
    page.keyboard.press("Enter")
    page.locator(f"#{second} .fault").first.wait_for()
    assert "Name one page or more" in page.locator(f"#{second}").inner_text()
    assert page.locator(f"#{third}").count() == 1


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_wrong_on_the_desk_and_no_page_is_too_broad(
    served: Served, chromium: Browser, window: list[Watched], scheme: str
) -> None:
    watched = new_window(chromium, served, window, color_scheme=scheme, reduced_motion="reduce")
    Mouse(watched.page, served).sign_in()
    found: dict[str, object] = {}
    for path in PAGES:
        watched.page.goto(path)
        for details in watched.page.locator("details").all():
            details.evaluate("one => { one.open = true; }")
        for width in (1280, 768, 360):
            watched.page.set_viewport_size({"width": width, "height": 800})
            if watched.overflow():
                found[f"{path} at {width}"] = watched.overflow()
        if violations := watched.violations():
            found[path] = violations
    assert found == {}


def test_a_name_with_markup_in_it_is_text(
    served: Served, chromium: Browser, window: list[Watched]
) -> None:
    watched = new_window(chromium, served, window)
    Mouse(watched.page, served).sign_in()
    watched.page.goto(f"{AT}/rounds/1/comments?show=all")
    names = watched.page.locator(".comment h2").all_inner_texts()
    assert any(name.startswith(BAD_NAME[:10]) for name in names), names
    assert watched.page.locator("img[src=x]").count() == 0
    assert "<b>please</b>" in watched.page.locator(".comments").inner_text()
    watched.page.goto("/desk/games/hard-names")
    assert watched.page.locator("h1").inner_text() == HARD_NAME
    assert watched.page.title().startswith("<b>")


def test_the_picture_of_the_chart_follows_the_numbers(
    fresh: Served, chromium: Browser, window: list[Watched]
) -> None:
    host = Mouse(new_window(chromium, fresh, window).page, fresh)
    host.sign_in()
    host.page.goto("/desk/new/chart")
    host.fill("Columns of pages", "4")
    host.page.get_by_text("28 pages in 4 columns and 7 rows", exact=True).wait_for()
    assert host.page.locator("#live svg").count() == 1


def test_a_dropped_file_is_looked_at(
    fresh: Served, chromium: Browser, window: list[Watched]
) -> None:
    host = Mouse(new_window(chromium, fresh, window).page, fresh)
    set_up(host)
    open_round(host, 1)
    host.page.goto(f"{DESK}/rounds/1/hand-in")
    host.page.evaluate(
        """() => {
            const held = new DataTransfer();
            held.items.add(new File(["Name,Time,Comment\\nOdd,2026-03-13T19:00:00Z,13\\n"], "c.csv"));
            const drop = new DragEvent("drop", {dataTransfer: held, bubbles: true, cancelable: true});
            document.getElementById("hand-in").dispatchEvent(drop);
        }"""
    )
    host.page.get_by_role("button", name="Hand these comments in").wait_for()
    assert "c.csv" in host.page.locator("main").inner_text()
