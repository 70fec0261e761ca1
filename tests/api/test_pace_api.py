"""The stitch log, the forecast and what is next through the API; what everybody sees of it."""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import Any

import pytest

from tests.api.asking import PATH, assert_problem, done, everything_kept, make_game
from tests.api.conftest import Service

Json = Any
PACE = f"{PATH}/pace"
LOG = f"{PACE}/log"
FIRST = date(2026, 3, 2)
HEADER = (
    "entry,day,how,page,piece,stitches,percent,first day,fractional,backstitch,beads,corrects,"
    "taken back,note"
)


def on(number: int) -> str:
    return (FIRST + timedelta(days=number - 1)).isoformat()


def begin(service: Service, **plan: Json) -> None:
    """A game with page 41 in hand and 4,900 stitches on a page, four weeks after it began."""
    make_game(service.host)
    done(service.host.put(f"{PATH}/pages/41", {"state": "in hand"}))
    done(service.host.put(f"{PACE}/plan", {"every": 4_900} | plan))
    service.clock.go_on(days=28)


def log(service: Service, *entries: Json) -> Json:
    told = [{"page": 41} | entry if "piece" not in entry else entry for entry in entries]
    return done(service.host.post(LOG, {"entries": told}), 201)


def log_four_weeks(service: Service, a_day: int = 100) -> None:
    """A log by day of the days 1 to 28; the clock stands on the 28th."""
    log(service, *({"day": on(number), "stitches": a_day} for number in range(1, 29)))


def test_entries_are_logged_shown_and_corrected(service: Service) -> None:
    begin(service)
    log(
        service,
        {"day": on(1), "stitches": 300, "backstitch": 12, "note": "rain"},
        {"day": on(3), "percent": 10.5, "how": "percent"},
        {"day": on(4), "piece": "The winter runner", "how": "since last time", "stitches": 900},
    )
    done(
        service.host.post(
            f"{LOG}/1/corrections", {"entry": {"day": on(1), "page": 41, "stitches": 310}}
        ),
        201,
    )
    done(service.host.post(f"{LOG}/3/corrections", {"note": "another runner"}), 201)
    told = done(service.host.get(LOG))
    assert [(one["number"], one["stands"], one["corrects"]) for one in told] == [
        (1, False, None),
        (2, True, None),
        (3, False, None),
        (4, True, 1),
        (5, False, 3),
    ]
    assert (told[0]["stitches"], told[0]["backstitch"], told[0]["note"]) == (300, 12, "rain")
    assert (told[1]["percent"], told[1]["stitches"]) == (10.5, None)
    assert (told[4]["taken_back"], told[4]["note"]) == (True, "another runner")
    progress = done(service.host.get(f"{PACE}/progress", first=on(1)))
    assert [(one["piece"], one["stitches"]) for one in progress["pieces"]] == [("", 515)]
    assert [(one["stitches"], one["percent"]) for one in progress["updates"]] == [
        (310, 6.32),
        (205, 10.51),
    ]


def test_the_pace_tells_how_far_it_is_and_what_is_next(service: Service) -> None:
    begin(service, round_days=4, margin_days=2)
    log_four_weeks(service)
    told = done(service.host.get(PACE))
    assert told["why_not"] == ""
    [page] = told["pages"]
    assert (page["done"], page["left"], page["percent"], page["state"]) == (
        2_800,
        2_100,
        57.14,
        "in work",
    )
    assert told["chart"]["percent"] == 0.9
    assert (told["pace"]["rate"], told["pace"]["days"], told["pace"]["rough"]) == (100, 28, False)
    # 2,100 at 100 a day after the 28th: on the 49th, and the vote six days before.
    assert told["finish"] == {
        "earliest": on(49),
        "middle": on(49),
        "latest": on(49),
        "confidence": 0.8,
    }
    assert told["opening"]["latest"] == on(43)
    assert told["opening"]["sensible"] == told["today"] == on(28)
    assert "Page 41 should be finished on" in told["words"]
    assert told["chart_finish"]["middle"] == on(28 + 21 + 62 * 49)


def test_the_pace_can_be_asked_as_of_a_day_and_with_another_confidence(service: Service) -> None:
    begin(service)
    log(service, *({"day": on(n), "stitches": 60 + 80 * (n % 2)} for n in range(1, 15)))
    usual = done(service.host.get(PACE, today=on(14)))
    wide = done(service.host.get(PACE, today=on(14), confidence=0.95))
    assert usual["finish"]["middle"] == wide["finish"]["middle"]
    assert usual["finish"]["earliest"] > wide["finish"]["earliest"]
    earlier = done(service.host.get(PACE, today=on(9)))
    assert earlier["finish"] is None
    assert "9 of the 10 days" in earlier["why_not"]


def test_the_calendar_of_rounds_and_what_it_would_take(service: Service) -> None:
    begin(service)
    log_four_weeks(service)
    calendar = done(service.host.get(f"{PACE}/rounds", most=3))
    assert calendar["of_all"] == 62
    assert [one["finish"]["middle"] for one in calendar["rounds"]] == [on(98), on(147), on(196)]
    assert [one["latest"] for one in calendar["rounds"]] == [on(46), on(95), on(144)]
    page = done(service.host.get(f"{PACE}/needed", by=on(38)))
    assert (page["stitches"], page["days"], page["a_day"], page["times_the_pace"]) == (
        2_100,
        10,
        210,
        2.1,
    )
    assert page["words"].startswith("To finish page 41 by")
    chart = done(service.host.get(f"{PACE}/needed", by=on(128), aim="chart"))
    assert chart["a_day"] == 3_059
    assert chart["words"].startswith("To finish the chart by")


def test_the_log_goes_out_as_a_table_and_comes_in_again(service: Service) -> None:
    begin(service)
    log(
        service,
        {"day": on(1), "stitches": 300},
        {"day": on(2), "piece": "=Runner", "stitches": 5},
        {"day": on(9), "first": on(5), "how": "rest", "page": None},
    )
    answer = service.host.get(f"{LOG}/table")
    assert answer.headers["content-type"] == "text/csv; charset=utf-8"
    assert "windy-island-stitch-log.csv" in answer.headers["content-disposition"]
    assert answer.text.splitlines() == [
        HEADER,
        f"1,{on(1)},on the day,41,,300,,,,,,,,",
        f"2,{on(2)},on the day,,'=Runner,5,,,,,,,,",
        f"3,{on(9)},rest,,,,,{on(5)},,,,,,",
    ]
    again = done(service.host.hand_in(f"{LOG}/table", answer.content, "log.csv"), 201)
    assert again == {"new": 0, "known": 3}
    more = answer.text + f"4,{on(3)},on the day,41,,50,,,,,,,,\r\n"
    assert done(service.host.hand_in(f"{LOG}/table", more, "log.csv"), 201) == {
        "new": 1,
        "known": 3,
    }


def test_stitches_of_a_page_told_by_hand_and_details_to_come(service: Service) -> None:
    begin(service)
    plan = done(service.host.put(f"{PACE}/pages/41", {"crosses": 400, "backstitch": 60}))
    assert plan["pages"] == [
        {"page": 41, "crosses": 400, "fractional": None, "backstitch": 60, "beads": None}
    ]
    log(service, {"day": on(1), "stitches": 400, "backstitch": 20})
    [page] = done(service.host.get(PACE))["pages"]
    assert (page["state"], page["details_to_come"]) == (
        "crosses done, details to come",
        ["backstitch"],
    )
    assert_problem(
        service.host.put(f"{PACE}/pages/41", {"crosses": 399}), 422, "400 stitches of the 399"
    )
    assert done(service.host.get(f"{PACE}/plan")) == plan


def test_the_paragraph_for_the_update_post(service: Service) -> None:
    begin(service)
    log_four_weeks(service)
    log(service, {"day": on(20), "piece": "The winter runner", "stitches": 700})
    told = done(service.host.get(f"{PACE}/update", first=on(15)))
    assert told["stopped"] == ""
    assert "1,400 stitches on the mystery, 700 on “The winter runner”, 2,100 in all" in told["text"]
    assert "the mystery had 66.6 % of them" in told["text"]


def test_a_piece_that_tells_the_answer_stops_the_paragraph_and_is_not_quoted(
    service: Service,
) -> None:
    begin(service, shows=["update", "page"])
    log(service, {"day": on(28), "piece": "Astrolabe in blue", "stitches": 700})
    told = done(service.host.get(f"{PACE}/update"))
    assert told["text"] == ""
    assert told["stopped"].startswith("the name of another piece gives the sealed answer")
    assert "strolabe" not in told["stopped"]
    assert done(service.viewer.get(f"{PATH}/progress"))["update"] is None


def test_everybody_sees_what_the_host_shows_and_nothing_else(service: Service) -> None:
    begin(service)
    log_four_weeks(service)
    nothing = {"pages", "chart", "finish", "next_opening", "picture", "update"}
    seen = done(service.viewer.get(f"{PATH}/progress"))
    assert seen == dict.fromkeys(nothing)
    shows = ["page", "forecast", "picture"]
    done(service.host.put(f"{PACE}/plan", {"every": 4_900, "shows": shows}))
    seen = done(service.viewer.get(f"{PATH}/progress"))
    assert {name for name, told in seen.items() if told is not None} == {
        "pages",
        "finish",
        "picture",
    }
    assert seen["pages"][0]["percent"] == 57.14
    assert seen["picture"].startswith("<svg")


def test_the_picture_of_a_page(service: Service) -> None:
    begin(service)
    assert_problem(service.host.get(f"{PACE}/picture"), 404, "log it first")
    log_four_weeks(service)
    svg = done(service.host.get(f"{PACE}/picture"))["svg"]
    assert re.search(r"<title[^>]*>The windy island's mystery: page 41</title>", svg)
    assert "8 times in 10" in svg
    assert_problem(service.host.get(f"{PACE}/picture", page=12), 404, "picture of page '12'")


ENTRY = {"day": on(1), "page": 41, "stitches": 5}
REFUSED: list[Any] = [
    pytest.param({"stitches": -5}, 422, "says -5 stitches", id="below 0"),
    pytest.param({"stitches": 4_901}, 422, "4,906 stitches of the 4,900", id="more than there are"),
    pytest.param({"day": on(29)}, 422, "still to come", id="to come"),
    pytest.param({"page": 12}, 422, "unstitched and not in hand", id="not in hand"),
    pytest.param({"page": 99}, 422, "page 99 is not on the chart", id="no such page"),
    pytest.param({"piece": "A runner"}, 422, "both a page and another piece", id="two things"),
    pytest.param({"percent": 5}, 422, "tells percent and is 'on the day'", id="percent beside"),
    pytest.param({"stitches": None}, 422, "tells no stitches", id="nothing told"),
    pytest.param({"how": "percent"}, 422, "tells stitches and is 'percent'", id="no percent"),
    pytest.param({"stitches": 1.5}, 422, "#/entries/1/stitches", id="half a stitch"),
    pytest.param({"day": "yesterday"}, 422, "#/entries/1/day", id="no day"),
    pytest.param({"note": "a\0b"}, 422, "NUL", id="what no database keeps"),
    pytest.param({"stitch": 5}, 422, "there is no such name", id="a slip in a name"),
]


@pytest.mark.parametrize(("wrong", "status", "says"), REFUSED)
def test_a_wrong_entry_is_one_sentence_and_changes_nothing(
    service: Service, wrong: Json, status: int, says: str
) -> None:
    begin(service)
    before = everything_kept(service)
    good = ENTRY | {"piece": None}
    later = ENTRY | {"day": on(2)} | wrong
    assert_problem(service.host.post(LOG, {"entries": [good, later]}), status, says)
    assert everything_kept(service) == before


def test_what_cannot_be_asked_is_one_sentence(service: Service) -> None:
    begin(service)
    log_four_weeks(service)
    for path, query, says in (
        ("", {"confidence": 2}, "ask for 0.5 to 0.99"),
        ("", {"today": "soon"}, "today"),
        ("/update", {"today": "0001-01-01"}, "today"),
        ("", {"today": "9999-12-31"}, "today"),
        ("/needed", {}, "by: this is missing"),
        ("/needed", {"by": on(1)}, "give a later day"),
        ("/progress", {"first": on(60)}, "is before"),
        ("/rounds", {"most": 0}, "most"),
    ):
        assert_problem(service.host.get(f"{PACE}{path}", **query), 422, says)
    nothing = service.host.post(f"{LOG}/99/corrections", {})
    assert_problem(nothing, 404, "no entry of the log '99'")
    assert_problem(service.host.get("/games/none/pace"), 404, "no game 'none'")
    before = everything_kept(service)
    wrong = service.host.hand_in(f"{LOG}/table", "day,stitches\nsoon,5\n", "log.csv")
    assert_problem(wrong, 422, "line 2: day is 'soon'")
    picture = service.host.hand_in(f"{LOG}/table", b"\x89PNG\r\n\x1a\n", "log.csv")
    assert_problem(picture, 422, r"is a picture \(PNG\), not a table: save it as CSV")
    assert_problem(service.host.hand_in(f"{LOG}/table", b"", "log.csv"), 422, "an empty file")
    assert everything_kept(service) == before


def test_once_the_crosses_are_done_the_next_round_is_to_open_at_once(service: Service) -> None:
    begin(service)
    log_four_weeks(service, 175)
    told = done(service.host.get(PACE))
    assert told["pages"][0]["state"] == "done"
    assert told["words"] == (
        "All crosses of page 41 are done. Open the next round: opened today it closes on Tuesday 31 "
        "March 2026."
    )


def test_while_a_round_is_under_way_no_other_is_to_be_opened(service: Service) -> None:
    begin(service, shows=["next round"])
    log_four_weeks(service)
    assert done(service.viewer.get(f"{PATH}/progress"))["next_opening"] == on(28)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{PATH}/rounds/1/open"))
    told = done(service.host.get(PACE))
    assert told["opening"] is None
    assert told["words"].endswith("Round 1 is open: announce it before another one is opened.")
    assert told["finish"]["middle"] == on(49)
    assert done(service.viewer.get(f"{PATH}/progress"))["next_opening"] is None


def test_before_anything_is_logged_every_address_says_so(service: Service) -> None:
    make_game(service.host)
    told = done(service.host.get(PACE))
    assert (told["pages"], told["pace"], told["finish"], told["opening"]) == ([], None, None, None)
    assert told["why_not"] == "No page is in hand: put one in hand first."
    assert done(service.host.get(f"{PACE}/rounds"))["why_not"] == told["why_not"]
    assert done(service.host.get(LOG)) == []
    assert done(service.host.get(f"{PACE}/progress"))["in_all"] == 0
    assert done(service.host.get(f"{PACE}/update"))["text"].startswith(
        "The windy island's mystery: no page is in hand. Nothing was stitched"
    )


def test_a_log_is_kept_on_either_database(either_service: Service) -> None:
    begin(either_service)
    log_four_weeks(either_service)
    assert done(either_service.host.get(PACE))["finish"]["middle"] == on(49)
