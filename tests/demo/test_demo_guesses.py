"""The demo's guesses: gathered from all rounds, in the order of their times."""

from __future__ import annotations

from collections import Counter
from datetime import UTC, datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

Json = dict[str, Any]


@pytest.fixture(scope="module")
def in_order(demo_expected: Json) -> list[Json]:
    guesses: list[Json] = demo_expected["guesses"]["in_order"]
    return guesses


def _begins(guess: Json) -> datetime:
    return datetime.fromisoformat(guess["written"][0])


def _which(guess: Json) -> tuple[int, int]:
    return guess["round"], guess["place"]


def test_every_comment_that_offers_a_name_is_among_the_guesses(
    demo_expected: Json, in_order: list[Json]
) -> None:
    offered = {
        (one["number"], it["place"]): (it["guess"], it["written"], it["id"])
        for one in demo_expected["rounds"]
        for it in one["comments"]
        if it["guess"] != "none"
    }
    assert len(in_order) == len(offered)
    assert {_which(it): (it["outcome"], it["written"], it["id"]) for it in in_order} == offered


def test_the_guesses_are_in_the_order_of_their_times(in_order: list[Json]) -> None:
    begins = [_begins(it) for it in in_order]
    assert begins == sorted(begins)


def test_the_first_right_guess_comes_first_beyond_doubt(
    demo_expected: Json, in_order: list[Json]
) -> None:
    told = demo_expected["guesses"]
    right = [it for it in in_order if it["outcome"] == "right"]
    assert _which(right[0]) == _which(told["first_right"])
    assert _which(right[1]) == _which(told["next_right"])
    assert right[0]["written"] == [told["first_right"]["written"]] * 2
    assert 0 < (_begins(right[1]) - _begins(right[0])).total_seconds() < 60


def test_the_look_before_the_first_right_guess_is_ruled(
    demo_game: Json, demo_expected: Json, in_order: list[Json]
) -> None:
    told = demo_expected["guesses"]
    first = datetime.fromisoformat(told["first_right"]["written"])
    looks = [it for it in in_order if it["outcome"] == "look" and _begins(it) <= first]
    assert [_which(it) for it in looks] == [_which(it) for it in told["looks_before"]]
    ruled = {
        (one["number"], ruling["place"]): ruling["outcome"]
        for one in demo_game["rounds"]
        for ruling in one["guess_rulings"]
    }
    assert ruled == {_which(it): "wrong" for it in looks}


def test_all_guesses_lie_within_the_time_for_guessing(
    demo_game: Json, in_order: list[Json]
) -> None:
    zone = ZoneInfo(demo_game["game"]["zone"])
    opens, closes = (
        datetime.fromisoformat(demo_game["game"][end]).replace(tzinfo=zone).astimezone(UTC)
        for end in ("guesses_open", "guesses_close")
    )
    for it in in_order:
        assert opens <= _begins(it)
        assert datetime.fromisoformat(it["written"][1]) < closes


def test_each_round_has_right_wrong_and_doubtful_guesses(in_order: list[Json]) -> None:
    kinds = Counter((it["round"], it["outcome"]) for it in in_order)
    assert set(kinds) == {(n, kind) for n in (1, 2, 3) for kind in ("right", "wrong", "look")}
