"""The board in Chromium: with scripts and without, on a phone and a wide screen, light and dark."""

from __future__ import annotations

import re
import struct
import zlib
from datetime import UTC, datetime

import pytest
from playwright.sync_api import FloatRect

from tests.browser.conftest import Open
from tests.browser.serving import HARD_NAME, Served

BOARD = "/games/windy-island"
PUBLIC = ["/", BOARD, "/games/counted", "/games/hard-names", "/games/none", "/desk/sign-in"]
SIZES = [360, 768, 1280]
SCHEMES = ["light", "dark"]
NOW = "2026-03-01T22:00:00Z"


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("path", PUBLIC)
def test_axe_finds_nothing_wrong(open_page: Open, path: str, scheme: str) -> None:
    watched = open_page(path, 360, color_scheme=scheme)
    for details in watched.page.locator("details").all():
        details.evaluate("one => { one.open = true; }")
    assert watched.violations() == []


def test_axe_finds_what_is_wrong(open_page: Open) -> None:
    """Else finding nothing would mean nothing."""
    watched = open_page(BOARD)
    watched.page.evaluate("""() => {
        document.documentElement.removeAttribute("lang");
        document.querySelector("h1").style.color = "#cccccc";
    }""")
    assert {one.partition(":")[0] for one in watched.violations()} >= {
        "html-has-lang",
        "color-contrast",
    }


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("path", [*PUBLIC, f"{BOARD}?plain", "/games/hard-names?plain=dark"])
def test_no_page_is_broader_than_its_window(open_page: Open, path: str, scheme: str) -> None:
    watched = open_page(path, color_scheme=scheme)
    for details in watched.page.locator("details").all():
        details.evaluate("one => { one.open = true; }")
    for width in SIZES:
        watched.page.set_viewport_size({"width": width, "height": 800})
        assert (width, watched.overflow()) == (width, 0)


def test_the_board_tells_everything_without_scripts(open_page: Open) -> None:
    page = open_page(BOARD, java_script_enabled=False).page
    assert page.get_by_role("heading", level=1).inner_text() == "The windy island's mystery"
    now = page.locator(".now").inner_text()
    assert "Round 2 is open" in now
    assert "2 days and 20 hours" in now
    assert re.search(r"Faroe time\s+Wednesday 4 March 2026 at 18:00", now)
    assert re.search(r"Vancouver time\s+Wednesday 4 March 2026 at 10:00", now)
    assert not page.locator(".own").is_visible()
    rules = page.get_by_text("All rules of this round")
    assert not page.get_by_text("A draw goes by RFC 3797").is_visible()
    rules.click()
    assert page.get_by_text("A draw goes by RFC 3797").is_visible()
    assert page.locator("svg.picture[role=img]").count() == 1


def test_scripts_add_the_viewers_own_zone_and_count_down(open_page: Open) -> None:
    page = open_page(BOARD, at=NOW, timezone_id="Asia/Tokyo").page
    # 18:00 UTC is 3 in the morning in Tokyo.
    assert page.locator(".own").inner_text().split("\t") == [
        "Where you are (Tokyo)",
        "Thursday 5 March at 03:00",
    ]
    count = page.locator(".count")
    assert count.inner_text() == "2 days, 20 hours, 0 minutes"
    page.clock.run_for(61_000)
    assert count.inner_text() == "2 days, 19 hours, 58 minutes"
    title = page.locator("#past ~ details time").first.get_attribute("title")
    assert title == "Where you are: Monday 2 March at 07:00"


def test_a_viewers_clock_that_is_wrong_does_not_move_the_closing(open_page: Open) -> None:
    """The server's clock says 22:00; a minute more or less is the age of the page."""
    count = open_page(BOARD, at="2026-03-01T23:30:00Z").page.locator(".count")
    assert count.inner_text() == "2 days, 20 hours, 0 minutes"
    count = open_page(BOARD, at="2026-03-01T22:01:00Z").page.locator(".count")
    assert count.inner_text() == "2 days, 19 hours, 59 minutes"


def test_the_last_day_is_counted_in_seconds_and_then_it_is_over(
    open_page: Open, served: Served
) -> None:
    served.clock.now = datetime(2026, 3, 4, 17, 59, 58, tzinfo=UTC)
    page = open_page(BOARD, at="2026-03-04T17:59:58Z", timezone_id="UTC").page
    served.clock.now = datetime.fromisoformat(NOW)
    assert page.locator(".count").inner_text() == "00:00:02"
    page.clock.run_for(1_000)
    assert page.locator(".count").inner_text() == "00:00:01"
    page.clock.run_for(1_000)
    assert page.locator(".left").inner_text() == "The time is over."


def test_names_with_markup_are_shown_as_text(open_page: Open) -> None:
    page = open_page("/games/hard-names", 360).page
    heading = page.get_by_role("heading", level=1)
    assert heading.inner_text() == HARD_NAME
    assert heading.locator("b").count() == 0
    box = heading.bounding_box()
    assert box is not None
    assert box["x"] >= 0
    assert box["x"] + box["width"] <= 360


def test_everything_is_reached_by_keyboard_and_the_focus_is_seen(open_page: Open) -> None:
    page = open_page(BOARD).page
    wanted = page.locator("a[href], summary, button, [tabindex='0']").count()
    seen = []
    for _ in range(wanted):
        page.keyboard.press("Tab")
        seen.append(
            page.evaluate("""() => {
                const one = document.activeElement, style = getComputedStyle(one);
                const box = one.getBoundingClientRect();
                return {
                    what: one.outerHTML.slice(0, 200),
                    outline: style.outlineStyle === "none" ? 0 : parseFloat(style.outlineWidth),
                    shown: box.width > 0 && box.bottom > 0 && box.top < innerHeight,
                };
            }""")
        )
    assert len({one["what"] for one in seen}) == len(seen) == wanted
    assert [one for one in seen if one["outline"] < 2 or not one["shown"]] == []
    assert 'class="skip"' in seen[0]["what"]


def test_the_skip_link_leads_to_the_page(open_page: Open) -> None:
    page = open_page(BOARD).page
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "main"


def test_nothing_moves_where_the_viewer_wants_it_so(open_page: Open) -> None:
    moving = """() => [...document.querySelectorAll("*")].filter((one) => {
        const style = getComputedStyle(one);
        return parseFloat(style.transitionDuration) > 0 || style.animationName !== "none";
    }).length"""
    assert open_page(BOARD, reduced_motion="reduce").page.evaluate(moving) == 0
    assert open_page(BOARD, reduced_motion="no-preference").page.evaluate(moving) > 0


@pytest.mark.parametrize("scheme", SCHEMES)
def test_the_map_takes_the_colours_of_the_scheme(open_page: Open, scheme: str) -> None:
    page = open_page(BOARD, color_scheme=scheme).page
    ground = page.locator(".map rect.fill-ground").first
    painted = ground.evaluate("one => getComputedStyle(one).fill")
    behind = page.evaluate("getComputedStyle(document.body).backgroundColor")
    assert painted == behind


def test_the_record_is_downloaded(open_page: Open, served: Served) -> None:
    page = open_page(BOARD).page
    with page.expect_download() as started:
        page.get_by_role("link", name=re.compile("^Download the record")).first.click()
    content = started.value.path().read_bytes()
    assert content == served.host.get(f"/api{BOARD}/rounds/1/record").content


def alpha_at_the_corner(picture: bytes) -> int:
    """How opaque the first pixel of a PNG is. Its filter adds nothing: it has no neighbours."""
    place, packed = 8, b""
    while place < len(picture):
        size, kind = struct.unpack(">I4s", picture[place : place + 8])
        if kind == b"IHDR":
            # W3C PNG, section 11.2.1: colour type 6 has an alpha channel, 2 has none.
            if picture[place + 17] == 2:
                return 255
            assert picture[place + 17] == 6
        if kind == b"IDAT":
            packed += picture[place + 8 : place + 8 + size]
        place += size + 12
    return zlib.decompress(packed)[4]


@pytest.mark.parametrize("theme", ["", "=dark"])
@pytest.mark.parametrize("scheme", SCHEMES)
def test_an_overlay_lets_the_video_through(open_page: Open, theme: str, scheme: str) -> None:
    page = open_page(f"{BOARD}?plain{theme}", color_scheme=scheme).page
    corner: FloatRect = {"x": 0, "y": 0, "width": 4, "height": 4}
    shot = page.screenshot(omit_background=True, clip=corner)
    assert alpha_at_the_corner(shot) == 0
    whole = open_page(BOARD, color_scheme=scheme).page
    assert alpha_at_the_corner(whole.screenshot(omit_background=True, clip=corner)) == 255


def test_an_overlay_is_renewed_by_itself(open_page: Open, served: Served) -> None:
    page = open_page("/games/counted?plain", at=NOW).page
    words = page.locator("svg desc")
    assert "Page 3 has 2 votes; page 5 has 1 vote." in words.text_content()  # type: ignore[operator]
    told = [(f"late {n}", f"2026-03-01T22:01:{n:02}Z", "6") for n in range(4)]
    served.hand_in("/games/counted/rounds/1", *told)
    page.clock.run_for(31_000)
    page.locator("svg desc", has_text="Page 6 has 4 votes").wait_for(state="attached")


def test_a_phone_can_read_a_broad_map_by_moving_it(open_page: Open) -> None:
    page = open_page("/games/hard-names", 360).page
    box = page.get_by_role("region", name=re.compile("^Map of the pages"))
    assert box.evaluate("one => one.scrollWidth > one.clientWidth")
    size = page.locator(".map svg text").first.evaluate(
        "one => parseFloat(one.getBoundingClientRect().height)"
    )
    assert size >= 9
