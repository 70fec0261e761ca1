"""Stitches are logged at the desk, and viewers see of the pace what the host chose."""

from __future__ import annotations

import pytest

from tests.api.asking import PATH, done, everything_kept, make_game
from tests.api.conftest import Service
from tests.pages.desk.conftest import Browser, words_in

DESK = "/desk/games/windy-island"
PACE = f"{DESK}/pace"
BOARD = "/games/windy-island"


@pytest.fixture
def in_hand(service: Service) -> Service:
    """A game with page 7 in hand, of 4,900 stitches."""
    make_game(service.host)
    done(service.host.put(f"{PATH}/pages/7", {"state": "in hand"}))
    done(service.host.put(f"{PATH}/pace/plan", {"every": 4900}))
    return service


def test_stitches_are_logged_and_taken_back(in_hand: Service, browser: Browser) -> None:
    first = browser.get(PACE)
    assert "Nothing is logged yet." in words_in(first)
    told = browser.post(
        f"{PACE}/log", {"amount": "1,200", "how": "on the day", "note": "<b>rain</b>"}
    )
    assert told.url.path == PACE
    assert "It is logged." in words_in(told)
    assert "page 7: 1,200 stitches" in words_in(told)
    assert "Page 7 has 1,200 of 4,900 stitches, 24.4 %." in words_in(told)
    assert "<b>rain" not in told.text
    [entry] = done(in_hand.host.get(f"{PATH}/pace/log"))
    assert (entry["page"], entry["stitches"], entry["day"]) == (7, 1200, "2026-03-01")
    back = browser.post(f"{PACE}/log/1/taken-back")
    assert "Nothing is logged yet." in words_in(back)
    assert len(done(in_hand.host.get(f"{PATH}/pace/log"))) == 2  # both stay on record


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        pytest.param({"amount": "-3"}, "-3", id="negative"),
        pytest.param({"amount": "many"}, "integer", id="no number"),
        pytest.param({"amount": ""}, "tells no stitches", id="nothing"),
        pytest.param({"amount": "5000"}, "4,900", id="more than the page has"),
        pytest.param({"amount": "30", "day": "2026-03-09"}, "2026-03-09", id="still to come"),
        pytest.param({"amount": "30", "day": "tomorrow"}, "date", id="no day"),
    ],
)
def test_what_cannot_be_is_said_in_place_and_changes_nothing(
    in_hand: Service, browser: Browser, fields: dict[str, str], says: str
) -> None:
    before = everything_kept(in_hand)
    told = browser.post(f"{PACE}/log", {"how": "on the day"} | fields)
    assert told.status_code == 422
    assert 'class="fault"' in told.text or "Not done:" in told.text
    assert says in words_in(told)
    assert f'value="{fields["amount"]}"' in told.text
    assert everything_kept(in_hand) == before


@pytest.mark.usefixtures("in_hand")
def test_percent_may_be_written_with_a_comma(browser: Browser) -> None:
    told = browser.post(f"{PACE}/log", {"amount": "24,5", "how": "percent", "first": "2026-02-20"})
    assert "page 7: 24.5 %" in words_in(told)


@pytest.mark.usefixtures("in_hand")
def test_viewers_see_nothing_until_the_host_says_so(browser: Browser) -> None:
    browser.post(f"{PACE}/log", {"amount": "1200", "how": "on the day"})
    assert "1,200" not in words_in(browser.get(BOARD))
    planned = {"round_days": "3", "margin_days": "1", "every": "4900", "shows": ["page", "chart"]}
    told = browser.post(f"{PACE}/plan", planned)
    assert "The plan is kept." in words_in(told)
    board = words_in(browser.get(BOARD))
    assert "Page 7 has 1,200 of 4,900 stitches, 24.4 %." in board
    assert "The whole chart is at" in board
    browser.post(f"{PACE}/plan", {"round_days": "3", "margin_days": "1", "every": "4900"})
    assert "1,200" not in words_in(browser.get(BOARD))


def test_the_desk_of_a_game_tells_what_is_next_of_its_pace(
    in_hand: Service, browser: Browser
) -> None:
    assert "Log stitches, see the forecast" in words_in(browser.get(DESK))
    for day in range(1, 29):
        done(
            in_hand.host.post(
                f"{PATH}/pace/log",
                {"entries": [{"day": f"2026-02-{day:02}", "page": 7, "stitches": 100}]},
            ),
            201,
        )
    # 28 days of 100 stitches leave 2,100 of 4,900: 21 more days of the same, until 21 March.
    assert "on Saturday 21 March 2026" in words_in(browser.get(DESK))
    assert "on Saturday 21 March 2026" in words_in(browser.get(PACE))
