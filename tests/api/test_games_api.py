"""Games over the API: made by the host, public in what everybody may know."""

from __future__ import annotations

from typing import Any

import pytest

from tests.api.asking import GAME, PATH, assert_problem, done, everything_kept, make_game
from tests.api.conftest import Service

Json = Any


def test_a_game_is_made_and_shown(service: Service) -> None:
    made = make_game(service.host)
    shown = done(service.viewer.get(PATH))
    assert {name: made[name] for name in shown} == shown
    assert (shown["name"], shown["zone"]) == ("The windy island's mystery", "Atlantic/Faroe")
    assert shown["chart"]["page_count"] == 63
    assert shown["pages"] == {"stitched": [], "in_hand": []}
    assert shown["rounds"] == []
    assert len(bytes.fromhex(shown["seal"])) == 32


def test_the_public_facts_leave_out_hosts_and_languages(service: Service) -> None:
    made = make_game(service.host)
    assert (made["hosts"], made["languages"]) == (["Island Guild"], ["en"])
    assert not {"hosts", "languages", "answer"} & done(service.viewer.get(PATH)).keys()


def test_a_game_may_come_with_stitched_pages(service: Service) -> None:
    make_game(service.host, stitched=[3, 1])
    assert done(service.viewer.get(PATH))["pages"]["stitched"] == [1, 3]


def test_a_chart_may_come_from_stitches(service: Service) -> None:
    size = {"stitches_wide": 200, "stitches_high": 150, "page_wide": 80, "page_high": 60}
    made = make_game(service.host, chart=size | {"overlap": 2})
    assert (made["chart"]["columns"], made["chart"]["rows"]) == (3, 3)
    assert made["chart"]["size"] == size | {"overlap": 2}


def test_times_of_guessing_may_be_local(service: Service) -> None:
    """In July the Faroes are one hour ahead of UTC (summer time)."""
    made = make_game(service.host, guesses_open="2026-07-01T18:00")
    assert made["guesses_open"] == "2026-07-01T17:00:00Z"


def test_games_are_listed_for_the_host(service: Service) -> None:
    make_game(service.host)
    make_game(service.host, slug="a-second-one", answer=None)
    listed = done(service.host.get("/games"))
    assert [game["slug"] for game in listed] == ["a-second-one", "windy-island"]
    assert listed[0]["seal"] is None


def test_a_game_of_the_same_short_name_is_refused(service: Service) -> None:
    make_game(service.host)
    before = everything_kept(service)
    assert_problem(service.host.post("/games", GAME | {"name": "another"}), 409, "already")
    assert everything_kept(service) == before


BAD_GAMES: list[Any] = [
    pytest.param({"chart": {"columns": 0, "rows": 7}}, "has 0 columns", id="no pages"),
    pytest.param({"chart": {"columns": 9}}, "size is missing", id="half a chart"),
    pytest.param(
        {"chart": {"columns": 9, "rows": 7, "stitches_wide": 10}}, "incomplete", id="half a size"
    ),
    pytest.param(
        {
            "chart": {
                "columns": 9,
                "rows": 7,
                "stitches_wide": 10,
                "stitches_high": 10,
                "page_wide": 5,
                "page_high": 5,
            }
        },
        "give one of the two",
        id="two sizes",
    ),
    pytest.param({"zone": "Atlantic/Nowhere"}, "no such time zone", id="no zone"),
    pytest.param({"slug": "Windy Island"}, "cannot stand in an address", id="no short name"),
    pytest.param({"stitched": [64]}, "page 64 is not on the chart", id="a page off the chart"),
    pytest.param({"name": "  "}, "#/name", id="no name"),
    pytest.param({"name": "a\u0000b"}, "#/name", id="a NUL"),
    pytest.param({"languages": ["English"]}, "#/languages/0", id="no language code"),
    pytest.param({"languages": ["en", "xx"]}, r"'xx' is no language.* cs, da, de", id="unknown"),
    pytest.param({"languages": ["eng"]}, "use ar, cs", id="a slip of a language"),
    pytest.param({"languages": ["en", "fr", "en"]}, "'en' is there twice", id="a language twice"),
    pytest.param({"guesses_open": "soon"}, "no point in time", id="no time"),
    pytest.param({"answer": {"title": "!!"}}, "no letter", id="an answer of nothing"),
    pytest.param({"wants": "designer"}, "#/wants", id="an unknown wish"),
    pytest.param(
        {"wants": "title and designer", "answer": {"title": "The Lamp Room"}},
        "has no designer",
        id="a designer wanted and none given",
    ),
    pytest.param({"next_from": "anywhere"}, "#/next_from", id="an unknown rule"),
    pytest.param({"colour": "red"}, "#/colour", id="an unknown name"),
]


@pytest.mark.parametrize(("other", "says"), BAD_GAMES)
def test_a_game_that_cannot_be_is_refused_whole(service: Service, other: Json, says: str) -> None:
    before = everything_kept(service)
    assert_problem(service.host.post("/games", GAME | other), 422, says)
    assert everything_kept(service) == before


def test_a_game_that_is_not_there_is_not_found(service: Service) -> None:
    assert_problem(service.viewer.get("/games/no-such-game"), 404, "no game 'no-such-game'")
    assert_problem(service.viewer.get("/games/%00"), 404, "no game")
    assert_problem(service.viewer.get("/games/Windy-Island"), 404, "no game")


def test_an_answer_may_be_sealed_later_and_once(service: Service) -> None:
    make_game(service.host, answer=None)
    assert_problem(service.host.get(f"{PATH}/guesses"), 409, "seal its answer first")
    done(service.host.put(f"{PATH}/answer", GAME["answer"]), 204)
    seal = done(service.viewer.get(PATH))["seal"]
    assert len(bytes.fromhex(seal)) == 32
    before = everything_kept(service)
    other = service.host.put(f"{PATH}/answer", {"title": "Another Piece"})
    problem = assert_problem(other, 409, "sealed and cannot be changed")
    assert "Astrolabe" not in str(problem)
    assert "Another" not in str(problem)
    assert everything_kept(service) == before


def test_two_games_of_one_answer_have_two_seals(service: Service) -> None:
    one = make_game(service.host)
    other = make_game(service.host, slug="another")
    assert one["seal"] != other["seal"]


def test_pages_are_said_to_be_stitched(service: Service) -> None:
    make_game(service.host)
    answer = service.host.put(f"{PATH}/pages/12", {"state": "stitched"})
    assert done(answer) == {"page": 12, "state": "stitched"}
    done(service.host.put(f"{PATH}/pages/13", {"state": "in hand"}))
    done(service.host.put(f"{PATH}/pages/14", {"state": "unstitched"}))
    assert done(service.viewer.get(PATH))["pages"] == {"stitched": [12], "in_hand": [13]}


@pytest.mark.parametrize("page", ["0", "64", "-1", "9" * 40])
def test_a_page_that_is_not_on_the_chart_is_refused(service: Service, page: str) -> None:
    make_game(service.host)
    before = everything_kept(service)
    answer = service.host.put(f"{PATH}/pages/{page}", {"state": "stitched"})
    assert_problem(answer, 422, r"is not on the chart: name a page from 1 to 63\.")
    assert everything_kept(service) == before


def test_a_game_may_be_changed_in_part(service: Service) -> None:
    made = make_game(service.host, guesses_open="2026-03-01T18:00")
    change = {"hosts": ["p-0001"], "guesses_close": "2026-04-01T18:00"}
    changed = done(service.host.patch(PATH, change))
    assert changed == made | {"hosts": ["p-0001"], "guesses_close": "2026-04-01T17:00:00Z"}
    assert done(service.host.patch(PATH, {"guesses_close": None}))["guesses_close"] is None


BAD_CHANGES: list[Any] = [
    pytest.param({"guesses_close": "2026-02-01T18:00"}, "is not after the opening", id="backwards"),
    pytest.param({"name": None}, "cannot be left empty", id="no name"),
    pytest.param({"chart": {"columns": 1, "rows": 1}}, "#/chart", id="another chart"),
    pytest.param({"answer": {"title": "Another"}}, "#/answer", id="another answer"),
    pytest.param({"hosts": [""]}, "#/hosts/0", id="a host of no name"),
    pytest.param({"languages": ["xx"]}, "'xx' is no language", id="an unknown language"),
    pytest.param({"languages": ["fr", "fr"]}, "'fr' is there twice", id="a language twice"),
    pytest.param({"languages": []}, "#/languages", id="no language at all"),
]


@pytest.mark.parametrize(("change", "says"), BAD_CHANGES)
def test_a_change_that_cannot_be_is_refused(service: Service, change: Json, says: str) -> None:
    make_game(service.host, guesses_open="2026-03-01T18:00")
    before = everything_kept(service)
    assert_problem(service.host.patch(PATH, change), 422, says)
    assert everything_kept(service) == before
