"""Draws, runoffs, odds, revisions, records and receipts as the API's callers meet them."""

from __future__ import annotations

from typing import Any

import pytest
from verifying.report import check

from tests.api.asking import PATH, ROUND, assert_problem, csv, done, make_game, open_round, votes
from tests.api.conftest import Service

Json = Any
LOTTERY = {"name": "the island lottery of 7 March", "expected": "2026-03-07T20:00"}


def closed_round(service: Service, *words: str, **rules: Json) -> None:
    """Round 1 of a new game with those comments, closed at 20:00 UTC."""
    open_round(service, **rules)
    if words:
        done(service.host.hand_in(f"{ROUND}/batches", votes(*words)), 201)
    done(service.host.post(f"{ROUND}/close"))


def test_a_record_verifies_and_everybody_may_have_it(service: Service) -> None:
    closed_round(service, "13", "21", "21")
    announced = done(service.host.post(f"{ROUND}/announce"))
    record = done(service.viewer.get(f"{ROUND}/record"))
    assert check(record, announced["digest"]).troubles == ()
    assert (announced["revision"], announced["reason"]) == (1, None)
    assert announced["digest"] in announced["announcement"]
    assert [one["digest"] for one in announced["revisions"]] == [announced["digest"]]
    raw = service.viewer.get(f"{ROUND}/record")
    assert raw.headers["content-type"] == "application/json"
    assert "windy-island-round-1-revision-1.json" in raw.headers["content-disposition"]
    assert "viewer 0" not in raw.text


def test_no_record_before_the_announcement(service: Service) -> None:
    closed_round(service, "13")
    assert_problem(service.viewer.get(f"{ROUND}/record"), 404, "its result is not announced")
    assert done(service.viewer.get(f"{ROUND}/revisions")) == []
    assert_problem(service.viewer.get(f"{ROUND}/result", revision=1), 409, "not announced")


def test_both_revisions_are_shown(service: Service) -> None:
    closed_round(service, "13", "21", "21")
    done(service.host.post(f"{ROUND}/announce"))
    late = csv(*((f"late {n}", f"2026-03-01T19:30:0{n}Z", "13") for n in range(3)))
    done(service.host.hand_in(f"{ROUND}/batches", late), 201)
    assert done(service.viewer.get(f"{ROUND}/result"))["winner"] == 21
    revised = done(service.host.post(f"{ROUND}/revisions", {"reason": "a second export"}), 201)
    assert (revised["revision"], revised["winner"]) == (2, 13)
    assert revised["reason"] == "a second export"
    assert [one["winner"] for one in done(service.viewer.get(f"{ROUND}/revisions"))] == [21, 13]
    assert done(service.viewer.get(f"{ROUND}/result"))["winner"] == 13
    assert done(service.viewer.get(f"{ROUND}/result", revision=1))["winner"] == 21
    records = [done(service.viewer.get(f"{ROUND}/record", revision=n)) for n in (1, 2)]
    assert [check(one).troubles for one in records] == [(), ()]
    assert records[1]["revision"]["before"] == records[0]["digest"]
    assert_problem(service.viewer.get(f"{ROUND}/record", revision=3), 404, "its result has 2")


@pytest.mark.parametrize("body", [None, {}, {"reason": ""}, {"reason": " "}])
def test_a_revision_without_a_reason_is_refused(service: Service, body: Json) -> None:
    closed_round(service, "13")
    done(service.host.post(f"{ROUND}/announce"))
    assert_problem(service.host.post(f"{ROUND}/revisions", body), 422)


def test_a_draw_is_announced_beforehand_and_held_afterwards(service: Service) -> None:
    opened = open_round(service, tie_breaks=["draw"], sources=[LOTTERY])
    assert opened["draw"]["sources"][0]["expected"] == "2026-03-07T20:00:00Z"
    assert len(opened["draw"]["commitment"]) == 64
    for words in (
        "1. the island lottery of 7 March, expected on Saturday 7 March 2026 at 20:00",
        "if they are late or cancelled, this source is left out",
        opened["draw"]["commitment"],
    ):
        assert words in opened["announcement"]
    done(service.host.hand_in(f"{ROUND}/batches", votes("13", "21")), 201)
    numbers = {"source": 1, "numbers": ["9", "18", "26"]}
    assert_problem(service.host.post(f"{ROUND}/draw", numbers), 409, "close it first")
    done(service.host.post(f"{ROUND}/close"))
    assert_problem(service.host.post(f"{ROUND}/draw", numbers), 422, "are expected at")
    service.clock.go_on(hours=24 * 7)
    assert_problem(service.host.post(f"{ROUND}/announce"), 409, "waits for the numbers of")
    told = done(service.host.post(f"{ROUND}/draw", numbers))
    assert told["sources"][0]["numbers"] == ["9", "18", "26"]
    assert done(service.viewer.get(f"{ROUND}/draw")) == told
    announced = done(service.host.post(f"{ROUND}/announce"))
    assert "the numbers of the island lottery of 7 March (9, 18, 26)" in announced["announcement"]
    record = done(service.viewer.get(f"{ROUND}/record"))
    assert record["draw"]["key"] == "9.18.26./"
    assert check(record).troubles == ()


def test_without_sources_the_announcement_says_that_the_own_value_drew(service: Service) -> None:
    closed_round(service, "13", "21", tie_breaks=["draw"])
    words = done(service.host.post(f"{ROUND}/announce"))["announcement"]
    assert "the round's own value, fixed before the opening, and the digest of the ballots" in words
    record = done(service.viewer.get(f"{ROUND}/record"))
    assert check(record).troubles == ()
    assert record["draw"]["value"]


def test_the_sources_are_frozen_at_the_opening(service: Service) -> None:
    make_game(service.host)
    rules = {"tie_breaks": ["draw"], "sources": [LOTTERY]}
    done(service.host.post(f"{PATH}/rounds", rules), 201)
    other = {"sources": [LOTTERY | {"name": "the ferry's passengers of 7 March"}]}
    changed = done(service.host.patch(ROUND, other))
    assert changed["draw"]["sources"][0]["name"] == "the ferry's passengers of 7 March"
    assert changed["draw"]["commitment"] is None
    done(service.host.post(f"{ROUND}/open"))
    assert_problem(service.host.patch(ROUND, {"sources": []}), 409, "frozen when it was opened")


@pytest.mark.parametrize(
    "source",
    [
        {"name": "x"},
        {"name": " ", "expected": "2026-03-07T20:00"},
        {"name": "x", "expected": "soon"},
        {"name": "x", "expected": "2026-03-07T20:00", "if_late": "guess"},
    ],
)
def test_a_source_that_cannot_be_is_refused(service: Service, source: Json) -> None:
    make_game(service.host)
    rules = {"tie_breaks": ["draw"], "sources": [source]}
    assert_problem(service.host.post(f"{PATH}/rounds", rules), 422)


def test_a_runoff_through_the_api(service: Service) -> None:
    closed_round(service, "13", "21", tie_breaks=["runoff", "lowest number"])
    drafted = done(service.host.post(f"{ROUND}/runoff", {}), 201)
    assert (drafted["number"], drafted["runoff_of"], drafted["state"]) == (2, 1, "draft")
    second = f"{PATH}/rounds/2"
    assert done(service.host.get(f"{second}/votable"))["pages"] == [13, 21]
    opened = done(service.host.post(f"{second}/open"))
    assert "this runoff is among them" in opened["announcement"]
    service.clock.go_on(hours=2)
    cast = csv(("Maren", "2026-03-01T20:30:00Z", "21"), ("Odd", "2026-03-01T20:40:00Z", "3"))
    done(service.host.hand_in(f"{second}/batches", cast), 201)
    done(service.host.post(f"{second}/close"))
    assert done(service.host.post(f"{second}/announce"))["winner"] == 21
    first = done(service.viewer.get(f"{ROUND}/result"))
    assert first["winner"] == 21
    assert "Page 21 won the runoff, round 2, with 1 vote." in first["announcement"]
    assert "round 3 comes next" in first["announcement"]


def test_the_odds_of_a_draft(service: Service) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    assert_problem(service.host.get(f"{ROUND}/odds"), 422, r"odds\?voters=30")
    odds = done(service.host.get(f"{ROUND}/odds", voters=30))
    assert (
        odds["why"] == "With 30 voters spread evenly over 63 pages, 56 of 100 rounds end in a tie."
    )
    assert round(odds["tie"]["share"], 6) == 0.564433
    assert [rule["rule"] for rule in odds["rules"]] == [
        "most joined edges",
        "reached first",
        "lowest number",
    ]
    assert odds["rules"][0]["decides"]["exact"] == "0"
    assert odds["rules"][1]["decides"] is None
    assert_problem(service.host.get(f"{ROUND}/odds", voters=401), 422)


def test_the_odds_expect_as_many_as_voted_last(service: Service) -> None:
    closed_round(service, "13", "21", "21")
    done(service.host.post(f"{ROUND}/announce"))
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    odds = done(service.host.get(f"{PATH}/rounds/2/odds"))
    assert (odds["voters"], odds["pages"]) == (3, 4)
    # Three voters over four pages: all differ in 24 of 64 ways, else one page has two or three.
    assert odds["tie"]["exact"] == "3/8"


def test_a_receipt_tells_one_voter_s_comments_and_why(service: Service) -> None:
    open_round(service)
    export = csv(
        ("Odd", "2026-03-01T19:00:00Z", "13 please"),
        ("Tove", "2026-03-01T19:01:00Z", "21"),
        ("ODD", "2026-03-01T19:02:00Z", "no, 14"),
        ("odd", "2026-03-01T19:03:00Z", "lovely thread"),
    )
    done(service.host.hand_in(f"{ROUND}/batches", export), 201)
    [receipt] = done(service.host.get(f"{ROUND}/receipts", voter="Odd"))
    assert (receipt["voter"], receipt["pages"], receipt["revision"]) == ("odd", [14], None)
    assert receipt["why"] == "A ballot stands: it gives page 14 one vote."
    assert [one["text"] for one in receipt["comments"]] == ["13 please", "no, 14", "lovely thread"]
    assert [one["cause"] for one in receipt["comments"]] == [
        "another ballot stands",
        None,
        "chooses no page",
    ]
    assert receipt["comments"][0]["why"] == "This voter wrote a later ballot."


def test_a_receipt_tells_the_ruling_that_decided(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("12 or 40")), 201)
    [waiting] = done(service.host.get(f"{ROUND}/receipts", voter="viewer 0"))
    assert waiting["why"] == "No ballot stands yet: 1 comment still to be looked at."
    key = waiting["comments"][0]["key"]
    ruling = {"pages": [12], "reason": "40 is her age"}
    done(service.host.post(f"{ROUND}/comments/{key}/rulings", ruling), 201)
    [ruled] = done(service.host.get(f"{ROUND}/receipts", voter="viewer 0"))
    assert ruled["comments"][0]["why"] == "The host's ruling: 40 is her age"
    assert ruled["pages"] == [12]


def test_a_voter_who_is_not_there_has_no_receipt(service: Service) -> None:
    open_round(service)
    answer = service.host.get(f"{ROUND}/receipts", voter="Nobody")
    assert_problem(answer, 404, "there is no voter 'Nobody' here")
    assert_problem(service.viewer.get(f"{ROUND}/receipts", voter="Odd"), 401)


def test_each_voter_of_one_name_has_a_receipt(service: Service) -> None:
    open_round(service)
    lines = "Name,Author id,Time,Comment\r\n"
    lines += "Odd,u1,2026-03-01T19:00:00Z,13\r\nOdd,u2,2026-03-01T19:01:00Z,21\r\n"
    columns = '{"author_id": "Author id"}'
    done(service.host.hand_in(f"{ROUND}/batches", lines, columns=columns), 201)
    both = done(service.host.get(f"{ROUND}/receipts", voter="odd"))
    assert [one["voter"] for one in both] == ["u1", "u2"]
    [one] = done(service.host.get(f"{ROUND}/receipts", voter="u2"))
    assert one["pages"] == [21]
