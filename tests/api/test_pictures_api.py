"""Pictures and the calendar through the API: public, cached as far as they may be, without counts
that nobody may know yet."""

from __future__ import annotations

import io
import re
import struct
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from defusedxml.ElementTree import fromstring
from icalendar import Calendar

from tests.api.asking import PATH, ROUND, assert_problem, csv, done, make_game, open_round, votes
from tests.api.conftest import Service

Json = Any
PICTURE = f"/api{PATH}/map.svg"


def texts(svg: str) -> list[str]:
    """What is written in a picture, in its order."""
    return [each.text or "" for each in fromstring(svg).iter() if each.tag.endswith("}text")]


def size_of_png(content: bytes) -> tuple[int, int]:
    """From the header of a PNG (W3C PNG, third edition, section 11.2.1)."""
    assert content[:8] == b"\x89PNG\r\n\x1a\n"
    wide, high = struct.unpack(">II", content[16:24])
    return wide, high


def announced(service: Service, *words: str) -> None:
    open_round(service, closes="2026-03-01T21:00")
    done(service.host.hand_in(f"{ROUND}/batches", votes(*words)), 201)
    service.clock.go_on(hours=2)
    done(service.host.post(f"{ROUND}/close"))
    done(service.host.post(f"{ROUND}/announce"))


def test_a_map_is_there_from_the_making_of_the_game(service: Service) -> None:
    make_game(service.host)
    answer = service.viewer.ask("GET", PICTURE)
    assert answer.headers["content-type"] == "image/svg+xml; charset=utf-8"
    found = texts(answer.text)
    assert found[:2] == ["The windy island's mystery", "0 of 63 pages stitched"]
    assert [each for each in found if each.isdecimal()] == [str(page) for page in range(1, 64)]


def test_no_counts_are_shown_while_the_round_is_open(service: Service) -> None:
    open_round(service)
    before = service.viewer.ask("GET", f"/api{ROUND}/map.svg")
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "12", "13")), 201)
    for path in (PICTURE, f"/api{ROUND}/map.svg"):
        assert "vote" not in service.viewer.ask("GET", path).text
    assert service.viewer.ask("GET", f"/api{ROUND}/map.svg").content == before.content
    for what in ("tally", "votes-by-day"):
        answer = service.viewer.ask("GET", f"/api{ROUND}/{what}.svg")
        assert_problem(answer, 409, "its counts are told once it is announced")
    names = [one["name"] for one in done(service.viewer.get(f"{ROUND}/pictures"))["pictures"]]
    assert names == ["map", "map, square", "map, wide", "map, video"]


def test_counts_are_shown_while_open_where_the_host_chose_so(service: Service) -> None:
    open_round(service)
    done(service.host.put(f"{PATH}/announcing", {"counts_while_open": True}))
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "12", "13")), 201)
    words = done(service.viewer.get(f"{PATH}/pictures"))["pictures"][0]["alternative"]
    assert words.endswith("Page 12 has 2 votes; page 13 has 1 vote.")
    # Whatever comes in later is there at once.
    later = csv(
        ("one more", "2026-03-01T19:30:00Z", "page 13"), ("and", "2026-03-01T19:31:00Z", "13")
    )
    done(service.host.hand_in(f"{ROUND}/batches", later), 201)
    words = done(service.viewer.get(f"{ROUND}/pictures"))["pictures"]
    assert words[0]["alternative"].endswith("Page 13 has 3 votes; page 12 has 2 votes.")
    assert words[-1]["name"] == "votes by day"
    assert "Sunday 1 March: 5 votes." in words[-1]["alternative"]


def test_an_announced_round_is_shown_with_winner_and_votes(service: Service) -> None:
    announced(service, "12", "12", "13")
    found = done(service.viewer.get(f"{ROUND}/pictures"))
    by_name = {one["name"]: one for one in found["pictures"]}
    assert list(by_name)[-2:] == ["tally", "votes by day"]
    assert "Page 12 is the winner of the round." in by_name["map"]["alternative"]
    assert "page 12: 2 votes, the winner" in by_name["tally"]["alternative"].lower()
    for one in found["pictures"]:
        for ending in ("svg", "png"):
            answer = service.viewer.ask("GET", one[ending])
            assert answer.status_code == 200, one
            assert answer.headers["etag"]
        wide, high = size_of_png(service.viewer.ask("GET", one["png"]).content)
        assert abs(wide - one["width"]) <= 1
        assert abs(high - one["height"]) <= 1
        root = fromstring(service.viewer.ask("GET", one["svg"]).text)
        assert root.find("{*}desc").text == one["alternative"]  # type: ignore[union-attr]
    in_game = done(service.viewer.get(f"{PATH}/pictures"))["pictures"][0]["alternative"]
    assert "Page 12 is in hand." in in_game


def test_a_result_announced_stays_in_the_charts_until_it_is_announced_again(
    service: Service,
) -> None:
    announced(service, "12", "12", "13")
    before = service.viewer.ask("GET", f"/api{ROUND}/votes-by-day.svg").text
    late = csv(("found late", "2026-03-01T19:10:00Z", "12"))
    done(service.host.hand_in(f"{ROUND}/batches", late), 201)
    assert service.viewer.ask("GET", f"/api{ROUND}/votes-by-day.svg").text == before
    done(service.host.post(f"{ROUND}/revisions", {"reason": "a second export"}), 201)
    assert (
        "Sunday 1 March: 4 votes" in service.viewer.ask("GET", f"/api{ROUND}/votes-by-day.svg").text
    )


def test_a_copy_that_is_still_good_is_not_sent_again(service: Service) -> None:
    open_round(service)
    first = service.viewer.ask("GET", PICTURE)
    tag = first.headers["etag"]
    assert first.headers["cache-control"] == "public, no-cache"
    for known in (tag, f"W/{tag}", f'"another", {tag}', "*"):
        again = service.viewer.ask("GET", PICTURE, headers={"If-None-Match": known})
        assert (again.status_code, again.content) == (304, b"")
        assert again.headers["etag"] == tag
    done(service.host.put(f"{PATH}/pages/63", {"state": "unstitched"}))
    other = service.viewer.ask("GET", f"{PICTURE}?theme=dark", headers={"If-None-Match": tag})
    assert other.status_code == 200


def test_a_draft_is_shown_to_the_host_alone_and_kept_by_nobody_else(service: Service) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    for what in ("map.svg", "map.png", "pictures", "closing.ics", "votes-by-day.svg"):
        assert_problem(service.viewer.ask("GET", f"/api{ROUND}/{what}"), 404)
    answer = service.host.ask("GET", f"/api{ROUND}/map.svg")
    assert answer.headers["cache-control"] == "private, no-cache"
    assert texts(answer.text)[1] == "Round 1 as it would open: 63 pages can be chosen"


@pytest.mark.parametrize(
    ("query", "size"),
    [("square", (1080, 1080)), ("wide", (1200, 630)), ("video", (1920, 1080))],
)
def test_a_post_and_a_frame_have_their_sizes(
    service: Service, query: str, size: tuple[int, int]
) -> None:
    make_game(service.host)
    answer = service.viewer.ask("GET", f"/api{PATH}/map.png?shape={query}&theme=dark")
    assert answer.headers["content-type"] == "image/png"
    assert size_of_png(answer.content) == size


def test_a_png_holds_pixels_and_no_words(service: Service) -> None:
    """Only the chunks that pixels need (W3C PNG, third edition, section 5.6)."""
    make_game(service.host)
    held = io.BytesIO(service.viewer.ask("GET", f"/api{PATH}/map.png").content)
    held.seek(8)
    kinds = set()
    while head := held.read(8):
        length, kind = struct.unpack(">I4s", head)
        kinds.add(kind)
        held.seek(length + 4, io.SEEK_CUR)
    assert kinds <= {b"IHDR", b"sRGB", b"gAMA", b"pHYs", b"PLTE", b"tRNS", b"IDAT", b"IEND"}


@pytest.mark.parametrize("query", ["theme=pink", "shape=round", "plain=perhaps"])
def test_a_look_that_is_not_known_is_refused(service: Service, query: str) -> None:
    make_game(service.host)
    assert_problem(service.viewer.ask("GET", f"{PICTURE}?{query}"), 422)
    assert_problem(service.viewer.ask("GET", f"/api{PATH}/map.gif"), 422)


def test_the_closing_can_be_put_into_a_calendar(service: Service) -> None:
    open_round(service, closes="2026-03-04T18:00")
    answer = service.viewer.ask("GET", f"/api{ROUND}/closing.ics?alarm=90")
    assert answer.headers["content-type"].startswith("text/calendar")
    calendar: Any = Calendar.from_ical(answer.content)
    [event] = calendar.walk("VEVENT")
    assert event["DTSTART"].dt == datetime(2026, 3, 4, 18, tzinfo=UTC)
    assert event["SUMMARY"] == "The windy island's mystery, round 1: voting closes"
    [alarm] = event.walk("VALARM")
    assert alarm["TRIGGER"].dt == timedelta(minutes=-90)
    again = service.viewer.ask("GET", f"/api{ROUND}/closing.ics?alarm=90")
    assert again.content == answer.content
    assert re.fullmatch('"[0-9a-f]{32}"', again.headers["etag"])


def test_a_round_without_a_closing_has_no_calendar(service: Service) -> None:
    open_round(service)
    assert_problem(service.viewer.ask("GET", f"/api{ROUND}/closing.ics"), 409, "calendar")
    assert done(service.viewer.get(f"{ROUND}/pictures"))["calendar"] is None


def test_a_runoff_is_shown_with_the_pages_it_is_between(service: Service) -> None:
    open_round(service, closes="2026-03-01T21:00", tie_breaks=["runoff", "lowest number"])
    done(service.host.hand_in(f"{ROUND}/batches", votes("12", "40")), 201)
    service.clock.go_on(hours=2)
    done(service.host.post(f"{ROUND}/close"))
    words = done(service.viewer.get(f"{PATH}/pictures"))["pictures"][0]["alternative"]
    assert "Pages 1 to 63 could be chosen." in words
    assert "vote" not in words
    done(service.host.post(f"{ROUND}/runoff", {}), 201)
    done(service.host.post(f"{PATH}/rounds/2/open"))
    words = done(service.viewer.get(f"{PATH}/pictures"))["pictures"][0]["alternative"]
    assert "Pages 12 and 40 can be chosen." in words
