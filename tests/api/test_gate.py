"""Too many requests and too many at once are refused in a sentence; the host is not counted."""

from __future__ import annotations

import asyncio
import re
from functools import partial
from typing import Any

import httpx
import pytest
from starlette.types import Message, Receive, Scope, Send

from service.api.allowance import Allowance
from service.api.gate import BYTES_A_REQUEST, Gate
from service.api.problems import ProblemAnswer
from service.settings import Settings
from tests.api.asking import assert_problem, done, make_game, open_round
from tests.api.conftest import HOST_TOKEN, Service, running
from tests.conftest import Clock

FEW = 5


@pytest.fixture(autouse=True)
def standing_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """However long a test takes, nothing comes back meanwhile."""
    monkeypatch.setattr("service.api.gate.Allowance", partial(Allowance, clock=lambda: 1000.0))


@pytest.fixture
def strict(sqlite: Settings, clock: Clock) -> Any:
    """A service that lets one address ask five times a minute."""
    with running(sqlite.model_copy(update={"rate_limit": FEW}), clock) as made:
        yield made


def from_address(service: Service, address: str, token: str | None = None) -> Any:
    """Asks as somebody with that network address."""

    def ask(path: str, method: str = "GET", **more: Any) -> httpx.Response:
        async def asked() -> httpx.Response:
            transport = httpx.ASGITransport(service.app, client=(address, 50_000))
            headers = {} if token is None else {"Authorization": f"Bearer {token}"}
            async with httpx.AsyncClient(
                transport=transport, base_url="http://loopstart.example", headers=headers
            ) as web:
                return await web.request(method, path, **more)

        return service._runner.run(asked())

    return ask


PUBLIC = [
    "/",
    "/games/windy-island",
    "/games/windy-island?plain",
    "/api/games/windy-island/map.svg",
    "/api/games/windy-island/rounds/1/closing.ics",
    "/api/games/windy-island/rounds/1/record",
    "/api/health",
    "/desk/sign-in",
    "/docs",
    "/nothing/here",
]


@pytest.mark.parametrize("path", PUBLIC)
def test_every_public_address_is_counted(strict: Service, path: str) -> None:
    open_round(strict, closes="2026-03-09T18:00")
    ask = from_address(strict, "192.0.2.7")
    assert [ask(path).status_code == 429 for _ in range(FEW + 1)] == [False] * FEW + [True]
    refused = ask(path)
    assert 1 <= int(refused.headers["Retry-After"]) <= 60
    assert refused.headers["X-Content-Type-Options"] == "nosniff"
    assert re.search(
        r"too many requests came from this network address", refused.text, re.IGNORECASE
    )
    assert from_address(strict, "192.0.2.8")(path).status_code != 429


def test_a_program_is_told_in_problem_details(strict: Service) -> None:
    ask = from_address(strict, "192.0.2.7")
    for _ in range(FEW):
        assert ask("/api/health").status_code == 200
    assert_problem(ask("/api/health"), 429, r"wait 12 seconds and try again\.$")


def test_a_token_that_is_known_is_not_counted_and_one_that_is_not_is(strict: Service) -> None:
    host = from_address(strict, "192.0.2.7", HOST_TOKEN)
    assert [host("/api/games").status_code for _ in range(3 * FEW)] == [200] * 3 * FEW
    guesser = from_address(strict, "192.0.2.9", "no token at all")
    told = [guesser("/api/games").status_code for _ in range(FEW + 1)]
    assert told == [401] * FEW + [429]


def test_a_crowd_behind_the_hosts_address_does_not_shut_the_host_out(strict: Service) -> None:
    viewer = from_address(strict, "192.0.2.7")
    while viewer("/api/health").status_code == 200:
        pass
    assert from_address(strict, "192.0.2.7", HOST_TOKEN)("/api/games").status_code == 200


def test_zero_is_no_limit(sqlite: Settings, clock: Clock) -> None:
    with running(sqlite.model_copy(update={"rate_limit": 0}), clock) as service:
        told = {service.viewer.get("/problems").status_code for _ in range(50)}
    assert told == {200}


def test_five_hundred_viewers_behind_one_address_may_all_look_twice_a_minute(
    service: Service,
) -> None:
    """The reason for the default: a hall, a school, a mobile network has one address."""
    open_round(service)
    page = service.viewer.ask("GET", "/games/windy-island").text
    files = set(re.findall(r'(?:src|href)="(/static/[^"]+|/api/[^"]+\.(?:svg|png))"', page))
    assert len(files) >= 3
    # Their browsers keep the files; the page is asked for anew.
    assert 500 * (1 + len(files)) + 500 <= Settings().rate_limit


def test_an_answer_of_megabytes_counts_as_many_requests() -> None:
    async def large(scope: Scope, receive: Receive, send: Send) -> None:
        del scope, receive
        await send({"type": "http.response.start", "status": 200, "headers": []})
        await send({"type": "http.response.body", "body": b"x" * (3 * BYTES_A_REQUEST)})

    told = ask_gate(Gate(large, Settings(rate_limit=FEW), ProblemAnswer), 3)
    assert told == [200, 200, 429]


def test_drawing_a_picture_anew_counts_as_many_requests_and_sending_it_again_does_not(
    sqlite: Settings, clock: Clock
) -> None:
    with running(sqlite.model_copy(update={"rate_limit": 10}), clock) as service:
        make_game(service.host)
        ask = from_address(service, "192.0.2.7")
        path = "/api/games/windy-island/map.png?theme=dark&shape=square"
        assert ask(path).status_code == 200
        assert ask(path).status_code == 429
        again = from_address(service, "192.0.2.8")
        assert [again(path).status_code for _ in range(5)] == [200] * 5


def test_so_many_at_once_are_answered_and_one_more_is_told_to_come_again() -> None:
    free = asyncio.Event()

    async def slow(scope: Scope, receive: Receive, send: Send) -> None:
        del scope, receive
        await free.wait()
        await send({"type": "http.response.start", "status": 200, "headers": []})

    async def crowd() -> tuple[list[int], int]:
        gate = Gate(slow, Settings(at_once=3), ProblemAnswer)
        begun = [asyncio.create_task(status_of(gate)) for _ in range(3)]
        await asyncio.sleep(0)
        refused = await status_of(gate)
        free.set()
        return [await each for each in begun] + [await status_of(gate)], refused

    assert asyncio.run(crowd()) == ([200] * 4, 503)


async def status_of(gate: Gate) -> int:
    statuses: list[int] = []

    async def send(message: Message) -> None:
        if message["type"] == "http.response.start":
            statuses.append(message["status"])
            if message["status"] in {429, 503}:
                assert (b"retry-after", b"1") in message["headers"] or message["status"] == 429

    async def receive() -> Message:
        return {"type": "http.request", "body": b"", "more_body": False}

    scope = {
        "type": "http",
        "method": "GET",
        "path": "/x",
        "query_string": b"",
        "headers": [],
        "client": ("192.0.2.1", 5),
        "server": ("loopstart.example", 80),
        "scheme": "http",
    }
    await gate(scope, receive, send)
    return statuses[0]


def ask_gate(gate: Gate, times: int) -> list[int]:
    async def asked() -> list[int]:
        return [await status_of(gate) for _ in range(times)]

    return asyncio.run(asked())


@pytest.mark.parametrize("where", ["address", "header"])
def test_a_head_that_is_too_long_is_refused(service: Service, where: str) -> None:
    long = "x" * 40_000
    if where == "address":
        answer = service.viewer.get("/games/windy-island", words=long)
    else:
        answer = service.viewer.ask("GET", "/api/health", headers={"X-Long": long})
    assert_problem(answer, 431, "too long")
    assert "x" * 1000 not in answer.text


def test_every_operation_says_that_it_may_refuse_for_a_while(service: Service) -> None:
    document = done(service.viewer.ask("GET", "/openapi.json"))
    for path, methods in document["paths"].items():
        for operation in methods.values():
            told = operation["responses"]
            assert "Retry-After" in told["429"]["headers"], path
            assert list(told["429"]["content"]) == ["application/problem+json"], path
            assert list(told["503"]["content"]) == ["application/problem+json"], path
            for status in ("408", "413") if "requestBody" in operation else ():
                assert list(told[status]["content"]) == ["application/problem+json"], path


def test_the_desk_is_not_counted_for_who_is_signed_in(strict: Service) -> None:
    make_game(strict.host)
    link = done(strict.host.post("/desk/links"), 201)["path"]

    async def sign_in_and_look() -> list[int]:
        transport = httpx.ASGITransport(strict.app, client=("192.0.2.30", 50_000))
        async with httpx.AsyncClient(
            transport=transport, base_url="http://loopstart.example"
        ) as web:
            shown = await web.get(link)
            token = re.search(r'name="form_token" value="([0-9a-f]+)"', shown.text)
            assert token is not None
            await web.post(link, data={"form_token": token[1]})
            return [(await web.get("/desk")).status_code for _ in range(3 * FEW)]

    assert strict._runner.run(sign_in_and_look()) == [200] * 3 * FEW
