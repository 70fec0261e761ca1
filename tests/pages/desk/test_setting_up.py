"""A game is set up in five steps: nothing typed is lost, nothing is written before the last."""

from __future__ import annotations

import logging
import re

import pytest

from tests.api.asking import done, everything_kept
from tests.api.conftest import Service
from tests.pages.desk.conftest import Browser, words_in

CHART = {"size_by": "pages", "columns": "5", "rows": "4", "order": "across", "start": "top left"}
GAME = {"name": "The Tin Box", "zone": "Atlantic/Faroe", "hosts": "Guild\r\np-1", "languages": "en"}
RULES = {"next_from": "any stitched page", "choices": "1", "standing": "latest", "last": "draw"}
SECRET = "The Whistling Gannet"
ANSWER = {"title": SECRET, "wants": "title", "names_per_comment": "1"}


def go(browser: Browser, step: str, fields: dict[str, str], status: int = 200) -> str:
    answer = browser.post(f"/desk/new/{step}", fields)
    assert answer.status_code == status, words_in(answer)
    return str(answer.url.path)


def fill_in(browser: Browser) -> None:
    assert go(browser, "chart", CHART | {"joined": "edge or corner"}) == "/desk/new/game"
    assert go(browser, "game", GAME | {"stitched": "3, 4"}) == "/desk/new/rules"
    assert go(browser, "rules", RULES | {"first": "reached first"}) == "/desk/new/answer"
    assert go(browser, "answer", ANSWER) == "/desk/new/review"


def test_a_game_is_made_with_all_that_was_said(service: Service, browser: Browser) -> None:
    fill_in(browser)
    made = browser.post("/desk/new/review")
    assert made.url.path == "/desk/games/the-tin-box"
    assert "Open round 1" in words_in(made)
    [game] = done(service.host.get("/games"))
    assert (game["name"], game["zone"]) == ("The Tin Box", "Atlantic/Faroe")
    assert game["hosts"] == ["Guild", "p-1"]
    assert (game["chart"]["columns"], game["chart"]["joined"]) == (5, "edge or corner")
    assert game["next_from"] == "any stitched page"
    assert game["pages"]["stitched"] == [3, 4]
    assert game["seal"]
    drafted = done(service.host.get("/games/the-tin-box/rounds/1"))
    assert drafted["tie_breaks"] == ["reached first", "draw"]
    assert drafted["state"] == "draft"


def test_nothing_is_lost_when_going_back_and_nothing_is_written(
    service: Service, browser: Browser
) -> None:
    fill_in(browser)
    kept = everything_kept(service)
    assert kept["games"] == [] == kept["answers"]
    back = browser.post("/desk/new/answer", ANSWER | {"do": "back"})
    assert back.url.path == "/desk/new/rules"
    for step, words in (
        ("chart", 'value="5"'),
        ("game", "The Tin Box"),
        ("rules", 'value="any stitched page" checked'),
        ("answer", SECRET),
    ):
        assert words in browser.get(f"/desk/new/{step}").text, step


def test_the_answer_is_in_no_address_and_no_log_and_gone_once_the_game_is_made(
    service: Service, browser: Browser, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.DEBUG)
    fill_in(browser)
    assert SECRET not in browser.get("/desk/new/review").text
    browser.post("/desk/new/review")
    told = " ".join((*browser.asked, caplog.text))
    assert "Gannet" not in told
    assert "chart" in told
    kept = everything_kept(service)
    assert "Gannet" not in str(kept["desk_sessions"])
    assert "Gannet" in str(kept["answers"])
    for page in ("/desk/games/the-tin-box", "/desk/new/answer", "/desk/new/review"):
        assert "Gannet" not in browser.get(page).text


def test_another_browser_sees_nothing_of_it(browser: Browser, other_browser: Browser) -> None:
    fill_in(browser)
    assert SECRET not in other_browser.get("/desk/new/answer").text


WRONG = [
    ("chart", CHART | {"columns": "x"}, "columns", "valid integer"),
    ("chart", CHART | {"columns": ""}, "columns", "This is missing"),
    ("chart", CHART | {"columns": "0"}, "columns", "column"),
    ("chart", CHART | {"no_page": "9-9"}, "no_page", "is no cell"),
    ("chart", CHART | {"no_page": "9/9"}, "no_page", "cell"),
    ("chart", {"size_by": "stitches", "stitches_wide": "90"}, "stitches_high", "missing"),
    ("game", GAME | {"zone": "Atlantic/Nowhere"}, "zone", "Nowhere"),
    ("game", GAME | {"name": " "}, "name", "missing"),
    ("game", GAME | {"slug": "A B"}, "slug", "small letters"),
    ("game", GAME | {"stitched": "3, 400"}, "stitched", "not on the chart"),
    ("game", {name: GAME[name] for name in ("name", "zone")}, "languages", "at least 1"),
    ("rules", RULES | {"last": "reached first"}, "last", "may leave a tie"),
    ("rules", RULES | {"first": "draw"}, "last", "named twice"),
    ("rules", RULES | {"choices": "400"}, "choices", "400 pages"),
    ("answer", ANSWER | {"title": "?!"}, "title", "no letter"),
    ("answer", ANSWER | {"title": "", "aliases": "Gannet"}, "title", "missing"),
    ("answer", ANSWER | {"guesses_open": "yesterday"}, "guesses_open", "yesterday"),
    (
        "answer",
        ANSWER | {"guesses_open": "2026-03-02T10:00", "guesses_close": "2026-03-01T10:00"},
        "guesses_close",
        "end before it begins",
    ),
]


@pytest.mark.parametrize(("step", "fields", "field", "says"), WRONG)
def test_a_mistake_is_said_beside_its_field_and_what_was_typed_stays(
    service: Service, browser: Browser, step: str, fields: dict[str, str], field: str, says: str
) -> None:
    answer = browser.post(f"/desk/new/{step}", fields)
    assert answer.status_code == 422
    fault = re.search(rf'id="set-up-{field}-fault">(.*?)</p>', answer.text, re.DOTALL)
    assert fault is not None, words_in(answer)
    assert says in fault[1]
    assert f"set-up-{field}-fault" in answer.text.split(fault[0])[0], "the field names its fault"
    for name, typed in fields.items():
        if name not in ("languages", "size_by", "order", "start", "wants", "standing", "next_from"):
            plain = " ".join(typed.split())
            assert plain in words_in(answer) or f'value="{plain}"' in answer.text, name
    assert everything_kept(service)["games"] == []


def test_the_picture_follows_what_is_typed(browser: Browser) -> None:
    shown = browser.post("/desk/new/chart", CHART | {"rows": "2", "do": "show"})
    assert shown.status_code == 200
    assert "10 pages in 5 columns and 2 rows" in words_in(shown)
    assert shown.text.count("<svg") == 1


def test_a_taken_short_name_is_said_and_the_answer_is_not_sealed_twice(
    service: Service, browser: Browser
) -> None:
    fill_in(browser)
    browser.post("/desk/new/review")
    fill_in(browser)
    before = everything_kept(service)
    refused = browser.post("/desk/new/review")
    assert refused.status_code == 409
    assert "the-tin-box" in words_in(refused)
    assert everything_kept(service) == before


def test_a_name_that_gives_the_answer_away_makes_no_game(
    service: Service, browser: Browser
) -> None:
    fill_in(browser)
    go(browser, "game", GAME | {"name": f"Guess {SECRET}"})
    refused = browser.post("/desk/new/review")
    assert refused.status_code == 422
    assert "the sealed answer or a part of it away" in words_in(refused)
    assert everything_kept(service)["games"] == []
