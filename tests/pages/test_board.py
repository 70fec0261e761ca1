"""The board as viewers meet it: what it tells, what it hides, and that it is never out of date."""

from __future__ import annotations

import re
from datetime import timedelta
from html import unescape
from typing import Any

import httpx
import pytest
from sqlalchemy import event

from service.pages.board import board_page, plain_page
from service.pages.rendering import html_of
from service.store.games import game_named
from tests.api.asking import GAME, PATH, ROUND, csv, done, make_game, open_round, votes
from tests.api.conftest import Service
from tests.api.guessing import PRIZE, TITLE
from tests.pages.conftest import Browser, browser_of, words_in

Json = Any


def board(service: Service, query: str = "") -> httpx.Response:
    answer = browser_of(service).get(f"{PATH}{query}")
    assert answer.status_code == 200, answer.text
    return answer


def fresh(service: Service) -> tuple[str, str]:
    """Board and overlay made just now, whatever is kept."""
    wiring = service.app.state.wiring
    with wiring.database.reading() as session:
        game, now = game_named(session, "windy-island"), service.clock.now
        return (
            html_of(board_page(session, game, now)),
            html_of(plain_page(session, game, now, "light")),
        )


def close_and_announce(service: Service) -> None:
    done(service.host.post(f"{ROUND}/close"))
    done(service.host.post(f"{ROUND}/announce"))


def test_a_new_game_shows_its_map_and_its_seal(service: Service) -> None:
    made = make_game(service.host)
    words = words_in(board(service))
    assert "The windy island's mystery" in words
    assert "No vote is open The first round will be announced." in words
    assert made["seal"] in words
    assert "1 to 63" in words
    assert 'aria-describedby="map-desc"' in board(service).text


def test_an_open_round_tells_its_rules_and_when_it_closes(service: Service) -> None:
    done_zones = {"zones": ["America/Vancouver", "Australia/Sydney"]}
    open_round(service, closes="2026-03-04T18:00", tie_breaks=["most joined edges", "draw"])
    done(service.host.put(f"{PATH}/announcing", done_zones))
    words = words_in(board(service))
    assert "Round 1 is open" in words
    # 18:00 on Faroe is 18:00 UTC in winter; Vancouver is 8 hours behind, Sydney 11 ahead.
    for zone in (
        "Faroe time Wednesday 4 March 2026 at 18:00",
        "Vancouver time Wednesday 4 March 2026 at 10:00",
        "Sydney time Thursday 5 March 2026 at 05:00",
        "UTC Wednesday 4 March 2026 at 18:00",
    ):
        assert zone in words
    assert "Closes in 2 days and 22 hours" in words
    assert "the page that touches most stitched pages; then a draw" in words
    assert "No outside source was named" in words
    assert 'data-until="2026-03-04T18:00:00Z"' in board(service).text
    assert f'href="/api{ROUND}/closing.ics?alarm=120"' in board(service).text


def test_a_closing_that_has_come_is_told_as_past(service: Service) -> None:
    open_round(service, closes="2026-03-01T20:30")
    assert "Closes in 30 minutes" in words_in(board(service))
    service.clock.go_on(minutes=29, seconds=59)
    assert "Closes in less than a minute" in words_in(board(service))
    service.clock.go_on(seconds=1)
    assert "The time is over. The host closes the round." in words_in(board(service))
    done(service.host.post(f"{ROUND}/close"))
    words = words_in(board(service))
    assert "Round 1 has closed The comments are being read" in words
    assert "Voting closed" in words


def test_counts_are_hidden_while_the_round_is_open(service: Service) -> None:
    open_round(service)
    before = board(service).text, board(service, "?plain").text
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "12", "13")), 201)
    assert (board(service).text, board(service, "?plain").text) == before
    assert "The counts are told with the result." in words_in(board(service))


def test_counts_are_shown_while_open_where_the_host_chose_so(service: Service) -> None:
    open_round(service)
    done(service.host.put(f"{PATH}/announcing", {"counts_while_open": True}))
    assert "Nothing is counted yet." in words_in(board(service))
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "12", "13")), 201)
    assert "2 votes: page 12 1 vote: page 13" in words_in(board(service))
    assert "Page 12 has 2 votes; page 13 has 1 vote." in board(service, "?plain").text


def test_a_result_is_told_with_its_steps_and_its_record(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "13", "13", "12", "5")), 201)
    close_and_announce(service)
    page = board(service)
    words = words_in(page)
    assert "Round 1: page 13" in words
    assert "2 votes each: pages 12 and 13 1 vote: page 5" in words
    assert "5 ballots of 5 comments." in words
    assert "Pages 12 and 13 were tied, so “reached first”: Page 13 reached" in words
    [record] = re.findall(r'href="([^"]+/record[^"]*)" download', page.text)
    kept = service.viewer.ask("GET", record).json()
    assert kept["result"]["winner"] == 13
    assert kept["digest"] in words
    assert "Page 13 is in hand." in page.text
    files = re.findall(r'href="(/api[^"]+[.](?:png|svg|ics)[^"]*)"', page.text)
    assert len(files) == 8
    assert all(service.viewer.ask("GET", unescape(each)).status_code == 200 for each in files)


def test_every_announcement_of_a_result_stays(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "12")), 201)
    close_and_announce(service)
    late = csv(*((f"late {n}", "2026-03-01T19:30:00Z", "13") for n in range(3)))
    done(service.host.hand_in(f"{ROUND}/batches", late), 201)
    assert "Round 1: page 12" in words_in(board(service))
    done(service.host.post(f"{ROUND}/revisions", {"reason": "a second export"}), 201)
    page = board(service)
    assert "Round 1: page 13" in words_in(page)
    assert "Announcement 1, Sunday" in words_in(page)
    assert ": a second export" in words_in(page)
    records = re.findall(r'href="([^"]+/record[^"]*)" download', page.text)
    winners = [service.viewer.ask("GET", one).json()["result"]["winner"] for one in records]
    assert winners == [12, 13]


def test_a_runoff_is_told_as_one(service: Service) -> None:
    open_round(service, tie_breaks=["runoff", "lowest number"])
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "13")), 201)
    done(service.host.post(f"{ROUND}/close"))
    done(service.host.post(f"{ROUND}/runoff", {}), 201)
    assert "Round 1 has closed" in words_in(board(service))
    done(service.host.post(f"{PATH}/rounds/2/open"))
    words = words_in(board(service))
    assert "Round 2 is open" in words
    assert "It is the runoff of round 1, whose pages were tied." in words


def test_the_mystery_is_told_from_seal_to_reveal(service: Service) -> None:
    make_game(service.host, guesses_open=None, guesses_per_voter=2)
    assert "Guessing has not opened yet." in words_in(board(service))
    done(service.host.put(f"{PATH}/prize", PRIZE))
    done(service.host.post(f"{PATH}/guesses/open"))
    words = words_in(board(service))
    assert "Guessing is open since Sunday 1 March 2026 at 18:00" in words
    assert "Your first 2 guesses count; of each comment the first name counts." in words
    assert f"may have: {PRIZE['offer']} ." in words
    service.clock.go_on(hours=1)
    done(service.host.post(f"{PATH}/mystery/aliases", {"alias": "Gnomon of Uttermarch"}), 201)
    note = done(service.viewer.get(f"{PATH}/mystery"))["alias_notes"][0]
    assert note["seal"] in words_in(board(service))
    done(service.host.post(f"{PATH}/guesses/end"))
    assert "Guessing has ended" in words_in(board(service))
    assert TITLE not in board(service).text
    done(service.host.post(f"{PATH}/mystery/reveal"))
    words = words_in(board(service))
    assert f"Revealed: the piece is {TITLE} by Wenna Quarmby" in words
    assert "Gnomon of Uttermarch" in words


def test_no_voter_is_named(service: Service) -> None:
    open_round(service)
    done(service.host.put(f"{PATH}/announcing", {"counts_while_open": True}))
    named = csv(
        ("Eydis Underhill", "2026-03-01T19:00:00Z", "12"),
        ("Eydis Underhill", "2026-03-01T19:10:00Z", f"Is it {TITLE}?"),
        ("Brandr Quist", "2026-03-01T19:20:00Z", "13 or 14"),
    )
    done(service.host.hand_in(f"{ROUND}/batches", named), 201)
    told = [board(service).text]
    comments = done(service.host.get(f"{ROUND}/comments", filter="look"))
    ruling = {"pages": [], "reason": "Brandr told me that he meant neither"}
    done(service.host.post(f"{ROUND}/comments/{comments[0]['key']}/rulings", ruling), 201)
    close_and_announce(service)
    done(service.host.post(f"{PATH}/guesses/winner"), 201)
    told += [board(service).text, board(service, "?plain").text, browser_of(service).get("/").text]
    assert "Round 1: page 12" in words_in(board(service))
    for page in told:
        assert not re.search("Eydis|Underhill|Brandr|Quist", page)


def test_drafts_and_games_being_set_up_are_nobodys_business(service: Service) -> None:
    plain = GAME | {"slug": "draft-game", "name": "Still a secret", "answer": None}
    plain = {name: value for name, value in plain.items() if name != "answer"}
    done(service.host.post("/games", plain | {"guesses_open": None}), 201)
    make_game(service.host)
    front = browser_of(service).get("/").text
    assert "windy island" in front
    assert "Still a secret" not in front
    before = board(service).text
    done(service.host.post(f"{PATH}/rounds", {"choices": 3}), 201)
    assert board(service).text == before
    done(service.host.post("/games/draft-game/rounds", {}), 201)
    assert "Still a secret" not in browser_of(service).get("/").text
    done(service.host.post("/games/draft-game/rounds/1/open"))
    assert "Still a secret" in browser_of(service).get("/").text


MARKUP = '<script>alert("1")</script><b>Isle</b> & {{ 7 * 7 }} \u202eelsi'


def test_markup_in_a_name_is_shown_as_text(service: Service) -> None:
    make_game(service.host, name=MARKUP)
    done(service.host.put(f"{PATH}/prize", PRIZE | {"offer": "<i>yarn</i>"}))
    for page in (board(service), board(service, "?plain"), browser_of(service).get("/")):
        assert "<script>alert" not in page.text
        assert "&lt;script&gt;alert" in page.text
        assert "{{ 7 * 7 }}" in page.text
        assert "<b>" not in page.text
    assert "&lt;i&gt;yarn" in board(service).text


def test_the_examples_are_read_as_the_board_says(service: Service) -> None:
    """They are handed in as comments: what it says counts is counted, and nothing else."""
    open_round(service)
    rows = re.findall(
        r'<tr><td>“(.*?)”</td><td><span class="sign [\w-]+">(.*?)</span> (.*?)</td></tr>',
        board(service).text,
    )
    assert {sign for _, sign, _ in rows} == {"counts", "host looks", "no vote"}
    said = csv(
        *((sign, f"2026-03-01T19:00:{n:02}Z", text) for n, (text, sign, _) in enumerate(rows))
    )
    done(
        service.host.hand_in(
            f"{ROUND}/batches", re.sub('"(counts|host looks|no vote)"', _numbered(), said)
        ),
        201,
    )
    tally = done(service.host.get(f"{ROUND}/tally"))
    counted = {one["text"]: one["pages"] for one in tally["ballots"]}
    assert set(counted) == {text for text, sign, _ in rows if sign == "counts"}
    for text, sign, told in rows:
        if sign == "counts":
            assert told == f"A vote for page {counted[text][0]}."
    looks = {one["text"] for one in tally["looks"]}
    assert looks == {text for text, sign, _ in rows if sign == "host looks"}


def _numbered() -> Any:
    """Makes each author another one."""
    numbers = iter(range(100))
    return lambda found: f'"{found[1]} {next(numbers)}"'


def test_examples_of_a_round_with_several_choices_choose_several(service: Service) -> None:
    open_round(service, choices=2)
    assert "A vote for pages 22 and 63." in words_in(board(service))


def test_the_board_is_never_out_of_date(either_service: Service) -> None:
    """Whatever the host does, what is kept is what would be made now."""
    service = either_service
    host = service.host
    steps = [
        ("PUT", f"{PATH}/pages/1", {"state": "stitched"}),
        (
            "POST",
            f"{PATH}/rounds",
            {"closes": "2026-03-01T20:50", "tie_breaks": ["runoff", "draw"]},
        ),
        ("PATCH", f"{ROUND}", {"choices": 2}),
        ("POST", f"{ROUND}/open", None),
        ("PUT", f"{PATH}/announcing", {"zones": ["Asia/Tokyo"], "counts_while_open": True}),
        ("PATCH", PATH, {"name": "Another name"}),
        ("PUT", f"{PATH}/prize", PRIZE),
        ("POST", f"{PATH}/mystery/aliases", {"alias": "Gnomon of Uttermarch"}),
        ("batch", f"{ROUND}/batches", votes("2", "10", "2 or 10", "page 2", "10!")),
        ("ruling", ROUND, {"pages": [2], "reason": "she told me"}),
        ("ruling", ROUND, {"pages": [], "reason": "she took it back"}),
        ("wait", "", None),
        ("POST", f"{ROUND}/close", None),
        ("POST", f"{ROUND}/runoff", {"closes": "2026-03-02T01:00"}),
        ("POST", f"{PATH}/rounds/2/open", None),
        ("wait", "", None),
        ("POST", f"{PATH}/rounds/2/close", None),
        ("POST", f"{PATH}/rounds/2/announce", None),
        ("PUT", f"{PATH}/pages/2", {"state": "stitched"}),
        ("POST", f"{PATH}/guesses/end", None),
        ("POST", f"{PATH}/mystery/reveal", None),
    ]
    make_game(host)
    seen = set()
    for method, path, content in steps:
        service.clock.go_on(minutes=180 if method == "wait" else 11)
        assert (board(service).text, board(service, "?plain").text) == fresh(service)
        if method == "wait":
            continue
        if method == "batch":
            answer = host.hand_in(path, content)
        elif method == "ruling":
            comments = done(host.get(f"{path}/comments"))
            key = next(one["key"] for one in comments if one["text"] == "2 or 10")
            answer = host.post(f"{path}/comments/{key}/rulings", content)
        else:
            answer = host.ask(method, f"/api{path}", json=content)
        assert answer.is_success, (path, answer.text)
        # Not a second later: nothing but the change itself tells that the page is another one.
        assert (board(service).text, board(service, "?plain").text) == fresh(service), path
        seen.add(board(service).text)
    assert len(seen) > 12


def test_a_page_that_is_kept_is_not_kept_over_a_time_that_comes(service: Service) -> None:
    make_game(
        service.host, guesses_open="2026-03-01T18:00:20Z", guesses_close="2026-03-01T18:00:40Z"
    )
    found = []
    for _ in range(50):
        page = board(service).text
        assert page == fresh(service)[0]
        found.append(re.search(r"Guessing (is open|has ended|has not opened)", page)[1])  # type: ignore[index]
        service.clock.now += timedelta(seconds=1)
    assert found == ["has not opened"] * 20 + ["is open"] * 20 + ["has ended"] * 10


@pytest.mark.parametrize("shown", [False, True], ids=["hidden", "shown"])
def test_a_viewer_costs_no_look_at_the_comments(service: Service, *, shown: bool) -> None:
    open_round(service)
    done(service.host.put(f"{PATH}/announcing", {"counts_while_open": shown}))
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "13", "12")), 201)
    asked: list[str] = []
    engine = service.app.state.wiring.database.engine

    def note(*told: Any) -> None:
        asked.append(told[2])

    event.listen(engine, "before_cursor_execute", note)
    board(service)
    first = [one for one in asked if "comments" in one]
    assert bool(first) == shown
    asked.clear()
    for _ in range(3):
        service.clock.go_on(minutes=5)
        board(service)
        browser_of(service).get("/")
        board(service, "?plain")
    assert [one for one in asked if "comments" in one] == []
    asked.clear()
    board(service)
    assert len(asked) <= 4, asked


def test_a_copy_that_is_still_good_is_not_sent_again(service: Service) -> None:
    open_round(service)
    first = board(service)
    assert first.headers["cache-control"] == "no-cache"
    known = {"If-None-Match": first.headers["etag"]}
    again = browser_of(service).get(PATH, headers=known)
    assert (again.status_code, again.content) == (304, b"")
    assert again.headers["content-security-policy"] == first.headers["content-security-policy"]
    done(service.host.patch(PATH, {"name": "Another name"}))
    assert browser_of(service).get(PATH, headers=known).status_code == 200


#: What lies below a whole picture: a rectangle that begins at its corner.
GROUND = r'<rect width="[\d.]+" height="[\d.]+" fill="#\w+" class="fill-ground"'


def test_an_overlay_comes_in_two_colours(browser: Browser, service: Service) -> None:
    open_round(service, closes="2026-03-04T18:00")
    light, dark = (browser.get(f"{PATH}?plain{of}").text for of in ("", "=dark"))
    assert '<body class="plain light">' in light
    assert '<body class="plain dark">' in dark
    assert light != dark
    assert re.search(GROUND, board(service).text)
    for page in (light, dark):
        assert not re.search(GROUND, page)
        assert "Closes in" in page


def test_a_game_that_is_not_there_has_no_board(browser: Browser) -> None:
    for query in ("", "?plain"):
        assert browser.get(f"/games/none{query}").status_code == 404
