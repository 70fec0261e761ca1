"""Comments handed in one by one by many at the same time: each is a batch of its own."""

from __future__ import annotations

import asyncio
import json
from typing import Any

import httpx
import pytest

from service.api.hand_ins import HandIns
from service.store.database import Database
from tests.api.asking import ROUND, assert_problem, done, everything_kept, open_round
from tests.api.conftest import Caller, Service

Json = Any
BATCHES = f"/api{ROUND}/batches"


def one(number: int, words: str = "page 5") -> str:
    """An export of one comment, as JSON Lines."""
    told = {"id": f"c{number}", "author": f"Viewer {number}", "posted": "2026-03-01T19:00:00Z"}
    return json.dumps({**told, "text": words}) + "\n"


def at_once(caller: Caller, exports: list[str], address: str = BATCHES) -> list[httpx.Response]:
    """The answers to exports that are handed in at the same moment."""

    async def hand_in() -> list[httpx.Response]:
        return await asyncio.gather(
            *(
                caller._web.post(address, files={"file": ("one.jsonl", export.encode())})
                for export in exports
            )
        )

    return caller._runner.run(hand_in())


@pytest.fixture
def transactions(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Notes each transaction that writes."""
    noted: list[str] = []
    plainly = Database.writing

    def writing(database: Database) -> Any:
        noted.append("one")
        return plainly(database)

    monkeypatch.setattr(Database, "writing", writing)
    return noted


def test_many_at_once_are_kept_in_few_transactions(
    either_service: Service, transactions: list[str]
) -> None:
    open_round(either_service)
    collector = either_service.collector()
    transactions.clear()
    answers = at_once(collector, [one(number) for number in range(40)])
    assert len(transactions) <= 5
    reports = [done(answer, 201) for answer in answers]
    assert sorted(report["batch"] for report in reports) == list(range(1, 41))
    assert {(report["new"], report["repeated"]) for report in reports} == {(1, False)}
    tally = done(either_service.host.get(f"{ROUND}/tally"))
    assert [(page["page"], page["votes"]) for page in tally["tally"]] == [(5, 40)]


def test_each_is_told_what_is_wrong_with_its_own(either_service: Service) -> None:
    open_round(either_service)
    exports = [one(1), '{"id": "x"}\n', one(2), one(1), "\0\0\0", one(1, "page 6")]
    answers = at_once(either_service.host, exports)
    for wrong in (1, 4):
        assert_problem(answers[wrong], 422)
    reports = [done(answers[place], 201) for place in (0, 2, 3, 5)]
    told = [(report["new"], report["edited"], report["repeated"]) for report in reports]
    assert told == [(1, 0, False), (1, 0, False), (0, 0, True), (0, 1, False)]


def test_a_round_that_is_not_there_takes_nothing(service: Service) -> None:
    open_round(service)
    before = everything_kept(service)
    for answer in at_once(service.host, [one(1), one(2)], BATCHES.replace("/1/", "/7/")):
        assert_problem(answer, 404, "round")
    assert everything_kept(service) == before


def test_whoever_may_not_hand_in_is_refused_beside_the_others(service: Service) -> None:
    open_round(service)
    callers = [service.host, service.viewer, service.caller("no token of this service")]

    async def hand_in() -> list[httpx.Response]:
        return await asyncio.gather(
            *(
                caller._web.post(BATCHES, files={"file": ("one.jsonl", one(number).encode())})
                for number, caller in enumerate(callers)
            )
        )

    answers = service.host._runner.run(hand_in())
    assert [answer.status_code for answer in answers] == [201, 401, 401]


def test_a_large_export_and_one_with_columns_go_by_themselves(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_round(service)
    gathered: list[int] = []
    plainly = HandIns.hand_in

    async def noted(self: HandIns, place: Any, sent: Any) -> Any:
        gathered.append(sent.content.size)
        return await plainly(self, place, sent)

    monkeypatch.setattr(HandIns, "hand_in", noted)
    large = "".join(one(number) for number in range(200))
    done(service.host.hand_in(f"{ROUND}/batches", large, "many.jsonl"), 201)
    named = "Wer;Wann;Was\nTove;2026-03-01T19:00:00Z;page 9\n"
    columns = json.dumps({"author": "Wer", "posted": "Wann", "text": "Was"})
    done(service.host.hand_in(f"{ROUND}/batches", named, columns=columns), 201)
    assert gathered == []
    # The columns are remembered for the game: from now on a few comments need them no more.
    report = done(service.host.hand_in(f"{ROUND}/batches", named.replace("9", "8")), 201)
    assert report["new"] == 1
    assert gathered == [len(named)]


def test_while_comments_come_in_one_by_one_large_exports_are_told_so(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    time = [100.0]
    monkeypatch.setattr("service.api.hand_ins.monotonic", lambda: time[0])
    open_round(service)
    hand_ins: HandIns = service.app.state.hand_ins
    assert not hand_ins.is_busy()
    done(service.host.hand_in(f"{ROUND}/batches", one(1), "one.jsonl"), 201)
    assert hand_ins.is_busy()
    time[0] += 1.5
    assert not hand_ins.is_busy()
