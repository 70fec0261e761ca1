"""A host who gets everything wrong once: each slip is one sentence, and nothing is half-written."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime
from functools import partial

import pytest
from client import Client, in_process

from demo.play import Clock, Json
from service.errors import ProblemAnswered
from service.settings import Settings

GAME = {
    "slug": "harbour",
    "name": "The harbour mystery",
    "zone": "Atlantic/Faroe",
    "chart": {"columns": 4, "rows": 3},
    "hosts": ["Harbour Guild"],
    "answer": {"title": "The Lamp Room"},
}
ROUND = {"opens": "2026-03-13T18:00", "closes": "2026-03-15T18:00"}
EXPORT = b"""author,posted,text
Maren,2026-03-13T19:00:00Z,page 7 please
Tove,2026-03-14T19:00:00Z,page 2 please
Odd,2026-03-14T20:00:00Z,2 or 7
"""
PATH = "/games/harbour/rounds/1"


def at(text: str) -> datetime:
    return datetime.fromisoformat(text)


@pytest.fixture
def clock() -> Clock:
    clock = Clock()
    clock.now = at("2026-03-13T18:00:00+00:00")
    return clock


@pytest.fixture
def host(settings: Settings, clock: Clock) -> Iterator[Client]:
    with in_process(settings, clock) as client:
        yield client


def refused(wish: Callable[[], Json]) -> tuple[int, str]:
    """The status of a refusal and its sentence, which must be one."""
    with pytest.raises(ProblemAnswered) as caught:
        wish()
    sentence = str(caught.value)
    assert sentence.endswith(".")
    assert "\n" not in sentence
    return caught.value.status, sentence


def test_every_slip_is_told_and_the_game_goes_on(host: Client, clock: Clock) -> None:
    _make_the_game_at_last(host)
    _open_the_round_at_last(host)
    _hand_in_at_last(host)
    clock.now = at("2026-03-15T18:30:00+00:00")
    _announce_at_last(host)


def _make_the_game_at_last(host: Client) -> None:
    status, sentence = refused(
        lambda: host.post("/games", GAME | {"chart": {"columns": 0, "rows": 3}})
    )
    assert (status, "column" in sentence) == (422, True)
    assert host.get("/games") == []
    host.post("/games", GAME)
    status, sentence = refused(lambda: host.post("/games", GAME))
    assert (status, "harbour" in sentence) == (409, True)
    status, sentence = refused(lambda: host.put("/games/harbour/pages/13", {"state": "stitched"}))
    assert (status, "page 13 is not on the chart" in sentence) == (422, True)
    assert host.get("/games/harbour")["pages"] == {"stitched": [], "in_hand": []}


def _open_the_round_at_last(host: Client) -> None:
    turned = {"opens": ROUND["closes"], "closes": ROUND["opens"]}
    status, sentence = refused(lambda: host.post("/games/harbour/rounds", turned))
    assert (status, "not after the opening" in sentence) == (422, True)
    assert host.get("/games/harbour")["rounds"] == []
    host.post("/games/harbour/rounds", ROUND)
    assert refused(lambda: _hand_in(host, EXPORT))[0] == 409
    host.post(f"{PATH}/open")
    status, sentence = refused(lambda: host.post(f"{PATH}/open"))
    assert (status, "open" in sentence) == (409, True)
    status, _ = refused(lambda: host.patch(PATH, {"choices": 2}))
    assert status == 409
    assert host.get(PATH)["choices"] == 1


def _hand_in_at_last(host: Client) -> None:
    for content in (b"", b"\x89PNG\r\n\x1a\n\x00\x00", b"likes,shares\n1,2\n"):
        status, sentence = refused(partial(_hand_in, host, content))
        assert (status, "comments.csv" in sentence) == (422, True)
    assert host.get(f"{PATH}/comments") == []
    assert host.get(f"{PATH}/batches") == []
    assert _hand_in(host, EXPORT)["new"] == 3
    again = _hand_in(host, EXPORT)
    assert (again["new"], again["unchanged"], again["edited"]) == (0, 3, 0)
    assert len(host.get(f"{PATH}/comments")) == 3


def _announce_at_last(host: Client) -> None:
    assert refused(lambda: host.post(f"{PATH}/announce"))[0] == 409
    host.post(f"{PATH}/close")
    # Maren and Tove are one each: what Odd meant decides.
    status, sentence = refused(lambda: host.post(f"{PATH}/announce"))
    assert (status, "look" in sentence) == (409, True)
    assert refused(lambda: host.get(f"{PATH}/result"))[0] == 409
    [look] = host.get(f"{PATH}/comments", filter="look")
    rulings = f"{PATH}/comments/{look['key']}/rulings"
    assert refused(lambda: host.post(rulings, {"pages": [13], "reason": "a slip"}))[0] == 422
    assert refused(lambda: host.post(rulings, {"pages": [7], "reason": ""}))[0] == 422
    host.post(rulings, {"pages": [7], "reason": "she said so in the hall"})
    assert host.post(f"{PATH}/announce")["winner"] == 7
    assert refused(lambda: host.post(f"{PATH}/announce"))[0] == 409
    again = f"{PATH}/revisions"
    assert refused(lambda: host.post(again, {"reason": "she is not sure"}))[0] == 409
    assert host.get(f"{PATH}/result")["tally"] == [{"page": 7, "votes": 2}, {"page": 2, "votes": 1}]
    assert host.get("/games/harbour")["pages"] == {"stitched": [], "in_hand": [7]}
    late = EXPORT + b"Nea,2026-03-14T21:00:00Z,2\nBrynja,2026-03-14T21:01:00Z,2\n"
    assert _hand_in(host, late)["new"] == 2
    assert host.get(f"{PATH}/result")["winner"] == 7
    assert refused(lambda: host.post(again, {"reason": " "}))[0] == 422
    assert host.post(again, {"reason": "two comments were left out"})["winner"] == 2
    assert host.get(f"{PATH}/result", revision=1)["winner"] == 7


def _hand_in(host: Client, content: bytes) -> Json:
    return host.hand_in(f"{PATH}/batches", "comments.csv", content)
