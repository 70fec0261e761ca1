"""The demo's stitch log, handed in after its first round, gives what was worked out by hand."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

import pytest
from client import Client, in_process

from demo.play import FOLDER, Clock, Demo, PlayedLog
from service.settings import Settings

Json = dict[str, Any]
EXPECTED: Json = json.loads((FOLDER / "expected.json").read_text(encoding="utf-8"))["stitches"]


@pytest.fixture
def logged(settings: Settings) -> Iterator[tuple[Client, PlayedLog]]:
    clock = Clock()
    with in_process(settings, clock) as host:
        demo = Demo(host, clock)
        demo.make_game()
        demo.play_round(1)
        yield host, demo.log_stitches()


def test_progress_and_forecast_are_those_worked_out_by_hand(
    logged: tuple[Client, PlayedLog],
) -> None:
    _, told = logged
    [page] = told.pace["pages"]
    for name in ("done", "total", "left", "backstitch"):
        assert page[name] == EXPECTED[name]
    assert (told.pace["pace"]["rate"], told.pace["pace"]["days"]) == (
        EXPECTED["a_day"],
        EXPECTED["days"],
    )
    for name in ("earliest", "middle", "latest"):
        assert told.pace["finish"][name] == EXPECTED[name]
    opening = told.pace["opening"]
    assert (told.pace["today"], opening["sensible"]) == (EXPECTED["day"], EXPECTED["opens"])
    assert not opening["too_late"]


def test_the_update_post_names_the_other_piece_and_not_the_answer(
    logged: tuple[Client, PlayedLog],
) -> None:
    _, told = logged
    assert told.update["stopped"] == ""
    assert f"{EXPECTED['other_pieces']:,} on “The winter runner”" in told.update["text"]
    assert "ccordion" not in told.update["text"]


def test_the_board_shows_what_the_demo_s_host_chose(logged: tuple[Client, PlayedLog]) -> None:
    host, _ = logged
    seen = host.get("/games/gustray/progress")
    assert {name for name, what in seen.items() if what is None} == {"next_opening", "update"}
    assert "page 41" in seen["picture"]
