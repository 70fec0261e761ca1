"""A round is played at the desk with forms and links alone, and what cannot be is said in place."""

from __future__ import annotations

import re
from html import unescape

import pytest

from tests.api.asking import PATH, ROUND, csv, done, everything_kept, make_game, open_round, votes
from tests.api.conftest import Service
from tests.pages.desk.conftest import Browser, words_in
from tests.pages.desk.handing_in import (
    AT,
    DESK,
    handed_in,
    kept_fields,
    keys,
    waiting,
)

MARKUP = "<img src=x onerror='alert(1)'><b>Odd</b>"


def test_a_round_is_drafted_opened_closed_and_announced(service: Service, browser: Browser) -> None:
    make_game(service.host)
    drafted = browser.post(
        f"{DESK}/rounds/new",
        {"closes": "2026-03-04T18:00", "choices": "1", "standing": "first", "last": "draw"},
    )
    assert drafted.url.path == AT
    assert "Open round 1" in words_in(drafted)
    rules = done(service.host.get(ROUND))
    assert (rules["closes"], rules["standing"]) == ("2026-03-04T18:00:00Z", "first")
    changed = browser.post(
        f"{AT}/rules",
        {"closes": "2026-03-03T18:00", "choices": "1", "standing": "latest", "last": "draw"},
    )
    assert changed.status_code == 200
    assert "56 of 100 rounds end in a tie" in words_in(browser.get(f"{AT}?voters=30"))
    opened = browser.post(f"{AT}/open")
    assert "The round is open" in words_in(opened)
    assert "Let round 1 run" in words_in(opened)
    early = browser.post(f"{AT}/close")
    assert early.status_code == 409
    assert "it closes at 2026-03-03T18:00:00Z" in words_in(early)
    service.clock.go_on(days=3)
    assert "Close round 1" in words_in(browser.get(AT))
    handed_in(browser, votes("13 please", "13", "40"))
    closed = browser.post(f"{AT}/close")
    assert "Announce round 1" in words_in(closed)
    announced = browser.post(f"{AT}/announce")
    assert announced.url.path == f"{AT}/words"
    assert "page 13 is next" in words_in(announced).lower()
    assert done(service.viewer.get(f"{ROUND}/result"))["winner"] == 13
    assert done(service.viewer.get(PATH))["pages"]["in_hand"] == [13]


def test_strangers_words_are_shown_as_text_with_what_decided_marked(
    opened: Service, browser: Browser
) -> None:
    del opened
    told = csv((MARKUP, "2026-03-01T19:00:00Z", "<script>alert(2)</script> page 13 please"))
    glance = browser.post(f"{AT}/hand-in", {}, files={"file": ("c.csv", told.encode())})
    assert MARKUP not in glance.text
    browser.post(waiting(glance), kept_fields(glance) | {"do": "keep"})
    shown = browser.get(f"{AT}/comments")
    assert MARKUP in unescape(shown.text)
    assert "<script>alert" not in shown.text
    assert "<img src=x" not in shown.text
    assert re.search(r"<mark title=\"[^\"]+\">(page )?13", shown.text)


def test_rulings_are_one_press_and_the_next_comment_follows(
    opened: Service, browser: Browser
) -> None:
    handed_in(browser, votes("12 or 40", "13 or 40", "14 or 40"))
    looks = browser.get(f"{AT}/comments?show=look")
    first, second, _ = keys(looks)
    ruled = browser.post(
        f"{AT}/comments/{first}/ruling",
        {"show": "look", "from": "", "next": second, "rule": "page 12", "reason": ""},
        follow=False,
    )
    assert ruled.headers["location"].endswith(f"#c-{second}")
    assert keys(browser.get(f"{AT}/comments?show=look")) == keys(looks)[1:]
    [kept] = [one for one in done(opened.host.get(f"{ROUND}/comments")) if one["rulings"]]
    assert kept["pages"] == [12]
    assert kept["rulings"][0]["reason"] == "The host read it as page 12."
    shown = browser.get(f"{AT}/comments?show=counts")
    assert "The host read it as page 12." in words_in(shown)


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ({"rule": "pages", "pages": ""}, "Name one page or more"),
        ({"rule": "pages", "pages": "400"}, "page 400, which is not on the chart"),
        ({"rule": "pages", "pages": "one"}, "valid integer"),
    ],
)
def test_a_ruling_that_cannot_be_is_said_beside_its_comment(
    opened: Service, browser: Browser, fields: dict[str, str], says: str
) -> None:
    handed_in(browser, votes("12 or 40"))
    [key] = keys(browser.get(f"{AT}/comments?show=look"))
    before = everything_kept(opened)
    refused = browser.post(
        f"{AT}/comments/{key}/ruling", {"show": "look", "reason": "she said so"} | fields
    )
    assert refused.status_code == 422
    assert says.lower() in words_in(refused).lower()
    assert f'id="c-{key}-pages-fault"' in refused.text
    assert 'value="she said so"' in refused.text
    assert everything_kept(opened) == before


def test_a_tie_is_broken_by_the_hosts_pick(service: Service, browser: Browser) -> None:
    open_round(service, tie_breaks=["host's pick"])
    handed_in(browser, votes("13", "40"))
    closed = browser.post(f"{AT}/close", {"at": ""})
    assert "Pick a page in round 1" in words_in(closed)
    refused = browser.post(f"{AT}/pick", {"page": "13", "reason": ""})
    assert refused.status_code == 422
    assert 'id="pick-reason-fault"' in refused.text
    picked = browser.post(f"{AT}/pick", {"page": "13", "reason": "its thread is wound"})
    assert "Announce round 1" in words_in(picked)


def test_a_runoff_is_drafted_among_the_tied(service: Service, browser: Browser) -> None:
    open_round(service, tie_breaks=["runoff", "lowest number"])
    handed_in(browser, votes("13", "40"))
    assert "Hold the runoff" in words_in(browser.post(f"{AT}/close", {"at": ""}))
    runoff = browser.post(f"{AT}/runoff", {"opens": "", "closes": ""})
    assert runoff.url.path == f"{DESK}/rounds/2"
    assert "Round 2, runoff of round 1" in words_in(runoff)
    assert "Open round 2" in words_in(browser.get(DESK))


def test_the_numbers_of_a_draw_are_told(service: Service, browser: Browser) -> None:
    make_game(service.host)
    rules = {
        "closes": "2026-03-04T18:00",
        "choices": "1",
        "standing": "latest",
        "last": "draw",
        "source_1_name": "the island lottery of 5 March",
        "source_1_expected": "2026-03-05T20:00",
    }
    browser.post(f"{DESK}/rounds/new", rules)
    browser.post(f"{AT}/open")
    handed_in(browser, votes("13", "40"))
    service.clock.go_on(days=5)
    handed_in(browser, votes("13", "40", "hello"))
    assert "numbers of the draw" in words_in(browser.post(f"{AT}/close"))
    refused = browser.post(f"{AT}/draw", {"source": "1", "numbers": "x y", "reason": ""})
    assert refused.status_code == 422
    told = browser.post(f"{AT}/draw", {"source": "1", "numbers": "9, 18 26", "reason": ""})
    assert "Told so far: 9, 18, 26" in words_in(told)
    assert "Announce round 1" in words_in(told)


def test_a_revision_follows_with_its_reason(opened: Service, browser: Browser) -> None:
    handed_in(browser, votes("13", "13", "40"))
    opened.clock.go_on(days=4)
    browser.post(f"{AT}/close")
    handed_in(browser, votes("13", "13", "40", "thanks"))
    browser.post(f"{AT}/announce")
    handed_in(browser, votes("13", "13", "40", "thanks", "40", "40", "40"))
    shown = browser.get(AT)
    assert "no longer what was announced" in words_in(shown)
    assert browser.post(f"{AT}/revise", {"reason": ""}).status_code == 422
    revised = browser.post(f"{AT}/revise", {"reason": "an export was found late"})
    assert revised.status_code == 200, words_in(revised)
    assert done(opened.viewer.get(f"{ROUND}/result"))["winner"] == 40
    assert "an export was found late" in words_in(browser.get(AT))


def test_a_pages_state_is_said_by_its_own_page(service: Service, browser: Browser) -> None:
    make_game(service.host)
    assert f'href="{DESK}/pages/12"' in browser.get(DESK).text
    assert "Pages joined to it: 3, 11, 13, 21" in words_in(browser.get(f"{DESK}/pages/12"))
    said = browser.post(f"{DESK}/pages/12", {"state": "stitched"})
    assert said.url.path == DESK
    assert done(service.viewer.get(PATH))["pages"]["stitched"] == [12]
    wrong = browser.post(f"{DESK}/pages/12", {"state": "burnt"})
    assert wrong.status_code == 422
    assert "stitched" in words_in(wrong)


def test_guesses_are_judged_and_the_prize_goes_its_way(service: Service, browser: Browser) -> None:
    make_game(service.host, guesses_open=None)
    guesses = f"{DESK}/guesses"
    set_up = browser.post(
        f"{DESK}/prize/set", {"offer": "a skein of wool", "choose_from": "", "claim_days": "7"}
    )
    assert "a skein of wool" in words_in(set_up)
    assert "giveaway" in words_in(browser.get(guesses))
    assert "Guessing is open" in words_in(browser.post(f"{guesses}/open", {"at": ""}))
    browser.post(
        f"{DESK}/rounds/new", {"choices": "1", "standing": "latest", "last": "lowest number"}
    )
    browser.post(f"{AT}/open")
    service.clock.go_on(hours=2)
    told = csv(
        ("Odd", "2026-03-01T19:00:00Z", "Is it The Tarnished Astrolabe of Skerrymouth? 13"),
        ("Asta", "2026-03-01T19:10:00Z", "The Tarnished Astrolabe of Skerrymouth! page 13"),
    )
    handed_in(browser, told)
    first = browser.get(guesses)
    assert "The first right guess is Odd's" in words_in(first)
    assert "<mark title=" in first.text
    assert "See who named the piece first" in words_in(browser.get(DESK))
    won = browser.post(f"{DESK}/prize/winner", {})
    assert "Winner 1: Odd" in words_in(won)
    asked = browser.post(f"{DESK}/prize/asked-for", {"asked_for": "the sea green one", "at": ""})
    assert "Asked for: the sea green one" in words_in(asked)
    assert "Send the prize" in words_in(asked)
    sent = browser.post(f"{DESK}/prize/sent", {"at": ""})
    assert "The prize: sent" in words_in(sent)
    revealed = browser.post(f"{guesses}/reveal")
    assert "The piece is The Tarnished Astrolabe of Skerrymouth" in words_in(revealed)
    assert done(service.viewer.get(f"{PATH}/mystery/reveal"))["seal"]


def test_a_guess_that_cannot_be_read_is_ruled_on(service: Service, browser: Browser) -> None:
    open_round(service)
    handed_in(browser, csv(("Odd", "2026-03-01T19:00:00Z", "The Tarnished Astrolabe maybe?")))
    shown = browser.get(f"{DESK}/guesses?show=all")
    [key] = re.findall(r'id="g-([a-z0-9]+)" aria', shown.text)
    nothing = browser.post(f"{DESK}/guesses/{key}/ruling", {"rule": "", "show": "all"})
    assert nothing.status_code == 422
    assert "Press one of the buttons" in words_in(nothing)
    ruled = browser.post(
        f"{DESK}/guesses/{key}/ruling", {"rule": "right", "reason": "near enough", "show": "all"}
    )
    assert "near enough" in words_in(ruled)
    assert "The first right guess is Odd's" in words_in(ruled)


def test_settings_are_kept_and_mistakes_said_in_place(service: Service, browser: Browser) -> None:
    make_game(service.host)
    settings = f"{DESK}/settings"
    wrong = browser.post(f"{settings}/announcing", {"zones": "Moon/Base", "locale": "en_GB"})
    assert wrong.status_code == 422
    assert 'id="announcing-zones-fault"' in wrong.text
    browser.post(
        f"{settings}/announcing",
        {"zones": "America/New_York\r\nAsia/Tokyo", "locale": "de", "counts_while_open": "yes"},
    )
    kept = done(service.host.get(f"{PATH}/announcing"))
    assert (kept["zones"], kept["counts_while_open"]) == (["America/New_York", "Asia/Tokyo"], True)
    bad = browser.post(f"{settings}/templates/reminder/short", {"text": "$nothing"})
    assert bad.status_code == 422
    assert 'id="reminder-short-text-fault"' in bad.text
    browser.post(f"{settings}/templates/reminder/short", {"text": "$heading!\r\nNow."})
    own = [one for one in done(service.host.get(f"{PATH}/templates")) if one["own"]]
    assert [one["text"] for one in own] == ["$heading!\nNow."]
    browser.post(f"{settings}/templates/reminder/short", {"do": "drop"})
    assert not [one for one in done(service.host.get(f"{PATH}/templates")) if one["own"]]
    telling = browser.post(
        f"{settings}/game", {"name": "The Tarnished Astrolabe", "hosts": "", "languages": "en"}
    )
    assert telling.status_code == 422
    assert 'id="game-name-fault"' in telling.text
    browser.post(f"{settings}/game", {"name": "Wind", "hosts": "Guild", "languages": "de"})
    [game] = done(service.host.get("/games"))
    assert (game["name"], game["hosts"], game["languages"]) == ("Wind", ["Guild"], ["de"])
