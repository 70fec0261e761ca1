"""Comments are handed in at the desk: looked at first, kept once, and taken back where misread."""

from __future__ import annotations

import re

import httpx

from tests.api.asking import ROUND, done, everything_kept, votes
from tests.api.conftest import Service
from tests.pages.desk.conftest import Browser, words_in
from tests.pages.desk.handing_in import (
    AT,
    handed_in,
    kept_fields,
    offered_columns,
    waiting,
)


def test_a_glance_writes_nothing_and_a_mapping_can_be_changed(
    opened: Service, browser: Browser
) -> None:
    table = "Who,When,Note,Said\nOdd,2026-03-01T19:00:00Z,13,40 please\n"
    before = everything_kept(opened)
    glance = browser.post(
        f"{AT}/hand-in", {}, files={"file": ("t.csv", table.encode())}, follow=False
    )
    assert glance.status_code in (200, 422)
    assert offered_columns(glance) == ["Who", "When", "Note", "Said", "-"]
    named = {"column_text": "Said", "column_author": "Who", "column_posted": "When"}
    again = browser.post(waiting(glance), kept_fields(glance) | named | {"do": "look"})
    assert "40 please" in words_in(again)
    assert everything_kept(opened) == before
    kept = browser.post(waiting(again), kept_fields(again) | {"do": "keep"})
    assert kept.url.path == f"{AT}/batches/1"
    assert "New comments 1" in words_in(kept)
    [comment] = done(opened.host.get(f"{ROUND}/comments"))
    assert comment["text"] == "40 please"
    more = table + "Odd,2026-03-01T19:05:00Z,13,41 please\n"
    assert "41 please" in words_in(
        browser.post(f"{AT}/hand-in", {}, files={"file": ("t.csv", more.encode())})
    ), "the columns are remembered"


def test_the_headers_are_offered_where_none_is_known_as_the_comments(
    opened: Service, browser: Browser
) -> None:
    del opened
    table = "Number,When\n1,2026-03-01T19:00:00Z\n2,2026-03-01T19:10:00Z\n"
    glance = browser.post(f"{AT}/hand-in", {}, files={"file": ("t.csv", table.encode())})
    assert glance.status_code == 422
    assert offered_columns(glance) == ["Number", "When", "-"]
    for name in ("text", "author", "posted"):
        assert re.search(rf'<input[^>]*name="column_{name}"[^>]*list="columns"', glance.text)


def test_a_batch_that_was_misread_is_taken_back_and_handed_in_again(
    opened: Service, browser: Browser
) -> None:
    table = "Who,When,Said\nOdd,2026-03-01T19:00:00Z,40 please\n"
    mixed = {"column_text": "Who", "column_author": "Said", "column_posted": "When"}
    right = {"column_text": "Said", "column_author": "Who", "column_posted": "When"}

    def given(columns: dict[str, str]) -> httpx.Response:
        glance = browser.post(f"{AT}/hand-in", {}, files={"file": ("t.csv", table.encode())})
        again = browser.post(waiting(glance), kept_fields(glance) | columns | {"do": "look"})
        return browser.post(waiting(again), kept_fields(again) | {"do": "keep"})

    assert "Take this batch back" in given(mixed).text
    back = browser.post(f"{AT}/batches/1/take-back", {"reason": "mixed up"})
    assert "Its comments are out of the round again" in words_in(back)
    assert "mixed up" in words_in(back)
    assert "Take this batch back" not in back.text
    assert "taken back" in words_in(browser.get(AT))
    again = browser.post(f"{AT}/batches/1/take-back")
    assert again.status_code == 409
    assert "taken back already" in words_in(again)
    assert given(right).url.path == f"{AT}/batches/2"
    [comment] = done(opened.host.get(f"{ROUND}/comments"))
    assert (comment["author"], comment["text"]) == ("Odd", "40 please")


def test_the_same_comments_twice_change_nothing(opened: Service, browser: Browser) -> None:
    handed_in(browser, votes("13", "40"))
    again = handed_in(browser, votes("13", "40"))
    assert "handed in before" in words_in(again)
    assert len(done(opened.host.get(f"{ROUND}/comments"))) == 2


def test_a_paste_is_read_and_stays_where_it_is_refused(opened: Service, browser: Browser) -> None:
    del opened
    empty = browser.post(f"{AT}/hand-in", {"paste": " "})
    assert empty.status_code == 422
    assert "paste comments or choose a file" in words_in(empty)
    markup = browser.post(f"{AT}/hand-in", {"paste": "<html><body>13</body></html>"})
    assert markup.status_code == 422
    assert "a page's markup" in words_in(markup)
    paste = "Odd\n2 hours ago\n13 please\n\nAsta\n1 hour ago\npage 40\n"
    glance = browser.post(f"{AT}/hand-in", {"paste": paste})
    assert "13 please" in words_in(glance)
    kept = browser.post(waiting(glance), kept_fields(glance) | {"do": "keep"})
    assert "New comments 2" in words_in(kept)


def test_an_export_that_waits_is_its_senders_alone(
    opened: Service, browser: Browser, other_browser: Browser
) -> None:
    del opened
    glance = browser.post(f"{AT}/hand-in", {"paste": votes("13")})
    refused = other_browser.post(waiting(glance), {"do": "keep"})
    assert refused.status_code == 404
    assert "choose the file again" in words_in(refused)


def test_how_far_an_import_is_can_be_asked(opened: Service, browser: Browser) -> None:
    del opened
    assert browser.get("/desk/progress/some-import-1").json()["step"] == "waiting"
    glance = browser.post(f"{AT}/hand-in", {"paste": votes("13", "40")})
    fields = kept_fields(glance) | {"do": "keep", "watch": "some-import-1"}
    assert browser.post(waiting(glance), fields).status_code == 200
    far = browser.get("/desk/progress/some-import-1").json()
    assert far == {"step": "done", "done": 2, "total": 2}


def test_an_export_waits_an_hour_and_makes_room_for_others(
    opened: Service, browser: Browser
) -> None:
    first = browser.post(f"{AT}/hand-in", {"paste": votes("13")})
    for number in range(6):
        browser.post(f"{AT}/hand-in", {"paste": votes("13", str(number + 1))})
    assert browser.post(waiting(first), {"do": "keep"}).status_code == 404
    last = browser.post(f"{AT}/hand-in", {"paste": votes("40")})
    opened.clock.go_on(hours=2)
    gone = browser.post(waiting(last), {"do": "keep"})
    assert gone.status_code == 404
    assert "choose the file again" in words_in(gone)
    assert done(opened.host.get(f"{ROUND}/comments")) == []


def test_of_very_many_batches_the_newest_are_listed(opened: Service, browser: Browser) -> None:
    """A collector that hands in each comment as it appears makes thousands."""
    for number in range(1, 53):
        export = f"id,author,posted,text\nc{number},V {number},2026-03-01T19:00:00Z,page 5\n"
        done(opened.host.hand_in(f"{ROUND}/batches", export), 201)
    page = browser.get(AT)
    words = words_in(page)
    assert "Batch 52" in words
    shown_at_once, unfolded = page.text.split("<details>")[-2:]
    assert ("Batch 47," in shown_at_once, "Batch 46," in shown_at_once) == (True, False)
    assert "Batch 46," in unfolded
    assert "Batch 3" in words
    assert "Batch 2," not in words
    assert "And 2 earlier batches, which the API lists." in words
