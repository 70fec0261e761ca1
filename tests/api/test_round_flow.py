"""A whole game over the API, from the first round to the next, on both databases."""

from __future__ import annotations

from typing import Any

import pytest

from tests.api.asking import (
    PATH,
    ROUND,
    assert_problem,
    csv,
    done,
    everything_kept,
    make_game,
    open_round,
    votes,
)
from tests.api.conftest import Service

Json = Any
MORE_ROUNDS = {"closes": "2026-03-01T22:00", "tie_breaks": ["lowest number"]}


def close(service: Service) -> Json:
    return done(service.host.post(f"{ROUND}/close"))


def test_a_game_is_played_from_round_to_round(either_service: Service) -> None:
    service = either_service
    host, viewer, clock = service.host, service.viewer, service.clock
    make_game(host)
    drafted = done(host.post(f"{PATH}/rounds", {"closes": "2026-03-02T18:00"}), 201)
    assert (drafted["number"], drafted["state"], drafted["votable"]) == (1, "draft", None)
    changed = done(host.patch(ROUND, {"tie_breaks": ["reached first", "lowest number"]}))
    assert (changed["closes"], changed["tie_breaks"][0]) == (
        "2026-03-02T18:00:00Z",
        "reached first",
    )
    opened = done(host.post(f"{ROUND}/open"))
    assert (opened["state"], opened["opens"]) == ("open", "2026-03-01T18:00:00Z")
    assert done(viewer.get(f"{ROUND}/votable"))["pages"] == list(range(1, 64))
    assert "the vote is open" in done(viewer.get(ROUND))["announcement"]

    clock.go_on(hours=25)
    batch = done(host.hand_in(f"{ROUND}/batches", votes("13", "21 please", "21", "3", "13!")), 201)
    assert (batch["batch"], batch["new"], batch["format"]) == (1, 5, "table")
    assert close(service)["state"] == "closed"

    tally = done(host.get(f"{ROUND}/tally"))
    assert tally["tally"] == [
        {"page": 13, "votes": 2},
        {"page": 21, "votes": 2},
        {"page": 3, "votes": 1},
    ]
    # 21 had its second vote two seconds before page 13.
    assert (tally["winner"], tally["steps"][0]["kept"]) == (21, [21])
    assert (tally["game"], tally["round"], tally["can_change"]) == ("windy-island", 1, False)

    announced = done(host.post(f"{ROUND}/announce"))
    assert (announced["game"], announced["round"], announced["winner"]) == ("windy-island", 1, 21)
    assert (announced["comments"], announced["ballots"], announced["set_aside"]) == (5, 5, {})
    assert "page 21 is next" in announced["announcement"]
    # On 9 columns, page 21 touches 12 above, 20 and 22 beside, 30 below.
    assert "12, 20, 22 and 30" in announced["announcement"]
    assert done(viewer.get(f"{ROUND}/result")) == announced
    assert done(viewer.get(PATH))["pages"] == {"stitched": [], "in_hand": [21]}

    second = done(host.post(f"{PATH}/rounds", {}), 201)
    assert second["number"] == 2
    assert done(host.get(f"{PATH}/rounds/2/votable"))["frozen"] is False
    done(host.post(f"{PATH}/rounds/2/open"))
    votable = done(viewer.get(f"{PATH}/rounds/2/votable"))
    assert (votable["pages"], votable["frozen"]) == ([12, 20, 22, 30], True)
    states = [(each["number"], each["state"]) for each in done(viewer.get(PATH))["rounds"]]
    assert states == [(1, "announced"), (2, "open")]


def test_a_ruling_changes_the_count_and_stays_on_record(either_service: Service) -> None:
    service = either_service
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("12 or 40", "13")), 201)
    [look] = done(service.host.get(f"{ROUND}/comments", filter="look"))
    assert (look["text"], look["pages"], look["needs_look"]) == ("12 or 40", [12, 40], True)
    assert [each["text"] for each in look["reading"]["evidence"]] == ["12", "40"]
    close(service)
    assert_problem(service.host.post(f"{ROUND}/announce"), 409, "rule on the comments")
    ruling = {"pages": [40], "reason": "she told me on the ferry"}
    ruled = done(service.host.post(f"{ROUND}/comments/{look['key']}/rulings", ruling), 201)
    assert (ruled["counts"], ruled["pages"], ruled["rulings"][0]["reason"]) == (
        True,
        [40],
        "she told me on the ferry",
    )
    tally = done(service.host.get(f"{ROUND}/tally"))
    assert tally["looks"] == []
    assert [ballot["ruled"] for ballot in tally["ballots"]] == [True, False]
    done(service.host.post(f"{ROUND}/announce"))


def test_comments_are_filtered_by_what_became_of_them(service: Service) -> None:
    open_round(service)
    export = csv(
        ("Maren", "2026-03-01T19:00:00Z", "13"),
        ("Tove", "2026-03-01T19:01:00Z", "12 or 40"),
        ("Odd", "2026-03-01T19:02:00Z", "what lovely thread"),
        ("island guild", "2026-03-01T19:03:00Z", "7"),
    )
    done(service.host.hand_in(f"{ROUND}/batches", export), 201)

    def shown(**query: Any) -> list[str]:
        return [each["author"] for each in done(service.host.get(f"{ROUND}/comments", **query))]

    assert shown() == ["Maren", "Tove", "Odd", "island guild"]
    assert shown(filter="counts") == ["Maren"]
    assert shown(filter="look") == ["Tove"]
    assert shown(filter="set-aside") == ["Odd", "island guild"]
    assert shown(limit=2, offset=1) == ["Tove", "Odd"]
    causes = {each["author"]: each["cause"] for each in done(service.host.get(f"{ROUND}/comments"))}
    assert causes == {
        "Maren": None,
        "Tove": "needs a look",
        "Odd": "chooses no page",
        "island guild": "the host's own",
    }


def test_a_tie_is_picked_by_the_host(service: Service) -> None:
    open_round(service, tie_breaks=["host's pick"])
    done(service.host.hand_in(f"{ROUND}/batches", votes("13", "21")), 201)
    close(service)
    assert done(service.host.get(f"{ROUND}/tally"))["undecided"] == [13, 21]
    pick = {"page": 21, "reason": "its thread is wound already"}
    assert_problem(service.host.post(f"{ROUND}/pick", pick | {"page": 3}), 422, "not among")
    done(service.host.post(f"{ROUND}/pick", pick))
    result = done(service.host.post(f"{ROUND}/announce"))
    assert result["winner"] == 21
    assert "its thread is wound already" in result["steps"][-1]["why"]


def test_the_page_in_hand_may_stay_in_hand(service: Service) -> None:
    make_game(service.host)
    done(service.host.put(f"{PATH}/pages/12", {"state": "in hand"}))
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    done(service.host.hand_in(f"{ROUND}/batches", votes("13")), 201)
    close(service)
    done(service.host.post(f"{ROUND}/announce", {"page_in_hand": "in hand"}))
    assert done(service.viewer.get(PATH))["pages"]["in_hand"] == [12, 13]


def test_a_patch_leaves_the_rest_as_it_was_and_null_takes_away(service: Service) -> None:
    make_game(service.host)
    rules = {"opens": "2026-03-02T18:00", "closes": "2026-03-04T18:00", "choices": 2}
    drafted = done(service.host.post(f"{PATH}/rounds", rules), 201)
    changed = done(service.host.patch(ROUND, {"closes": None, "standing": "first"}))
    assert changed == drafted | {"closes": None, "standing": "first"}


def test_a_draft_is_the_hosts_alone(service: Service) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    assert done(service.host.get(ROUND))["state"] == "draft"
    assert [each["state"] for each in done(service.host.get("/games"))[0]["rounds"]] == ["draft"]
    assert done(service.viewer.get(PATH))["rounds"] == []
    there = assert_problem(service.viewer.get(ROUND), 404)
    nowhere = assert_problem(service.viewer.get(f"{PATH}/rounds/2"), 404)
    assert there["detail"].replace("1'", "2'") == nowhere["detail"]
    assert_problem(service.viewer.get(f"{ROUND}/votable"), 404)
    assert_problem(service.collector().get(ROUND), 404)


def test_nothing_is_counted_in_public_before_it_is_announced(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("13", "13", "21")), 201)
    before = service.viewer.get(ROUND).text
    close(service)
    for address in (PATH, ROUND, f"{ROUND}/votable"):
        assert "votes" not in service.viewer.get(address).text
    assert '"winner":null' in before
    assert_problem(service.viewer.get(f"{ROUND}/result"), 409, "round 1 is closed")
    assert_problem(service.viewer.get(f"{ROUND}/tally"), 401)


WRONG_TIMES: list[Any] = [
    pytest.param({"opens": "2026-03-04T18:00", "closes": "2026-03-04T18:00"}, id="at once"),
    pytest.param({"opens": "2026-03-04T18:00", "closes": "2026-03-04T17:59"}, id="backwards"),
    pytest.param({"closes": "2026-02-01T18:00"}, id="already past"),
]


@pytest.mark.parametrize("rules", WRONG_TIMES)
def test_a_closing_before_the_opening_is_refused(service: Service, rules: Json) -> None:
    make_game(service.host)
    before = everything_kept(service)
    answer = service.host.post(f"{PATH}/rounds", rules)
    if "opens" in rules:
        problem = assert_problem(answer, 422, "is not after the opening .*: give a closing later")
        assert problem["title"] == "Closes before opening"
    else:
        done(answer, 201)
        before = everything_kept(service)
        assert_problem(service.host.post(f"{ROUND}/open"), 422, "is not after the opening")
    assert everything_kept(service) == before


def test_a_round_opened_twice_is_refused(service: Service) -> None:
    open_round(service)
    before = everything_kept(service)
    problem = assert_problem(service.host.post(f"{ROUND}/open"), 409, "round 1 is open and cannot")
    assert (problem["thing"], problem["state"], problem["wish"]) == ("round 1", "open", "opened")
    assert everything_kept(service) == before


def test_the_rules_of_an_open_round_are_frozen(service: Service) -> None:
    open_round(service)
    before = everything_kept(service)
    assert_problem(service.host.patch(ROUND, {"choices": 3}), 409, "frozen")
    assert everything_kept(service) == before


BAD_RULES: list[Any] = [
    pytest.param({"choices": 0}, "may choose 0 pages", id="no choice"),
    pytest.param({"tie_breaks": ["coin"]}, "#/tie_breaks/0", id="an unknown tie-break"),
    pytest.param({"tie_breaks": []}, "may leave a tie", id="no tie-break"),
    pytest.param({"previous": 99}, "page 99 is not on the chart", id="a page off the chart"),
    pytest.param({"opens": "2026-03-29T01:30"}, "show this local time never", id="a skipped time"),
    pytest.param({"opens": "2026-10-25T01:30"}, "show this local time twice", id="a doubled time"),
    pytest.param({"opens": "tomorrow-ish"}, "no point in time", id="no time"),
]


@pytest.mark.parametrize(("rules", "says"), BAD_RULES)
def test_rules_that_cannot_be_are_refused(service: Service, rules: Json, says: str) -> None:
    make_game(service.host)
    before = everything_kept(service)
    assert_problem(service.host.post(f"{PATH}/rounds", rules), 422, says)
    assert everything_kept(service) == before


def test_a_round_may_close_by_the_hosts_act_at_a_local_time(service: Service) -> None:
    open_round(service)
    assert_problem(service.host.post(f"{ROUND}/close", {"at": "2026-03-01T21:00"}), 422, "to come")
    closed = done(service.host.post(f"{ROUND}/close", {"at": "2026-03-01T19:30"}))
    assert closed["closes"] == "2026-03-01T19:30:00Z"


@pytest.mark.parametrize("number", ["0", "-1", "2", "999999", "1000001", "1" * 30])
def test_a_round_that_is_not_there_is_a_problem(service: Service, number: str) -> None:
    make_game(service.host)
    answer = service.host.post(f"{PATH}/rounds/{number}/open")
    assert answer.status_code in {404, 422}
    assert_problem(answer, answer.status_code)


@pytest.mark.parametrize(
    "host",
    ["p-0001", "  ISLAND   guild ", "@Island Guild"],
    ids=["author id", "name", "with a sign"],
)
def test_the_host_is_known_by_name_or_author_id(service: Service, host: str) -> None:
    make_game(service.host, hosts=[host])
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    export = (
        "Name,User id,Time,Comment\r\n"
        "Island Guild,p-0001,2026-03-01T19:00:00Z,13\r\n"
        "Island Guild of Elsewhere,p-0002,2026-03-01T19:01:00Z,21\r\n"
    )
    columns = '{"author_id": "User id"}'
    done(service.host.hand_in(f"{ROUND}/batches", export, columns=columns), 201)
    told = {each["author"]: each["is_host"] for each in done(service.host.get(f"{ROUND}/comments"))}
    assert told == {"Island Guild": True, "Island Guild of Elsewhere": False}


def test_the_host_is_known_where_her_comments_put_a_sign_before_her_name(service: Service) -> None:
    make_game(service.host, hosts=["Island Guild", "@"])
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    export = "Name,Time,Comment\r\n@Island Guild,2026-03-01T19:00:00Z,13\r\n@,2026-03-01T19:00:00Z,14\r\n"
    done(service.host.hand_in(f"{ROUND}/batches", export), 201)
    told = {each["author"]: each["is_host"] for each in done(service.host.get(f"{ROUND}/comments"))}
    assert told == {"@Island Guild": True, "@": True}
