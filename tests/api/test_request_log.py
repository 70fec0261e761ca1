"""Health, readiness, and the id of each request in its answer and in the log."""

from __future__ import annotations

import asyncio
import json
import logging
import sys
from pathlib import Path

import pytest
from logs import JsonLines, Plain
from starlette.types import Receive, Scope, Send

from service.api.metrics import Metrics
from service.api.request_log import RequestLog, request_id
from service.settings import Settings
from tests.api.asking import assert_problem, done
from tests.api.conftest import Service, running
from tests.conftest import Clock
from tests.pages.conftest import PASSWORD, browser_of, signed_in


def test_every_answer_has_an_id_of_its_own(service: Service) -> None:
    answers = [service.viewer.get("/health") for _ in range(2)]
    answers.append(service.viewer.get("/none"))
    ids = [answer.headers["X-Request-ID"] for answer in answers]
    assert len(set(ids)) == 3
    assert all(len(each) == 32 for each in ids)


@pytest.mark.parametrize(
    ("sent", "is_kept"),
    [
        ("a-proxys-own-id", True),
        ("short", False),
        ("a line\tbreak in it", False),
        ('{"level": "x"}', False),
        ("x" * 65, False),
    ],
)
def test_an_id_is_kept_only_if_it_can_be_nothing_else(
    service: Service, sent: str, *, is_kept: bool
) -> None:
    answer = service.viewer.ask("GET", "/api/health", headers={"X-Request-ID": sent})
    assert (answer.headers["X-Request-ID"] == sent) is is_kept


def test_the_log_tells_the_route_and_nothing_that_was_sent(
    service: Service, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.INFO, "loopstart")
    service.host.get("/games/a-slug/rounds/1/receipts", voter="Wilhelmina")
    service.host.delete("/tokens/Wilhelmina's own")
    service.viewer.ask("WILHELMINA", "/api/games/wilhelmina")
    told = [record for record in caplog.records if record.name == "loopstart.requests"]
    assert [record.getMessage() for record in told] == [
        "GET /api/games/{game}/rounds/{number}/receipts 404",
        "DELETE /api/tokens/{name:path} 404",
        "other /api/games/{game} 405",
    ]
    assert "wilhelmina" not in repr([vars(record) for record in told]).lower()


def lines(caplog: pytest.LogCaptureFixture) -> list[tuple[str, str]]:
    records = [record for record in caplog.records if record.name == "loopstart.requests"]
    told = [(record.getMessage(), vars(record)["told"]["who"]) for record in records]
    caplog.clear()
    return told


def test_the_log_tells_who_asked_as_a_role(
    service: Service, caplog: pytest.LogCaptureFixture
) -> None:
    collector = service.collector("Wilhelmina's own")
    desk = signed_in(service)
    caplog.set_level(logging.INFO, "loopstart")
    caplog.clear()
    for caller in (service.host, collector, service.viewer, service.caller("guessed")):
        caller.get("/games")
    desk.get("/desk")
    assert lines(caplog) == [
        ("GET /api/games 200", "host"),
        ("GET /api/games 403", "collector"),
        ("GET /api/games 401", "anybody"),
        ("GET /api/games 401", "anybody"),
        ("GET /desk 200", "desk"),
    ]


def test_sign_ins_right_and_wrong_are_lines_of_the_log(
    service: Service, caplog: pytest.LogCaptureFixture
) -> None:
    assert service.host.put("/desk/password", {"password": PASSWORD}).status_code == 204
    browser = browser_of(service)
    caplog.set_level(logging.INFO, "loopstart")
    for password in ("wrong", PASSWORD):
        browser.send("/desk/sign-in", "/desk/sign-in", password=password)
    browser.post("/desk/sign-out", {"form_token": "forged"})
    assert [line for line in lines(caplog) if line[0].startswith("POST")] == [
        ("POST /desk/sign-in 403", "anybody"),
        ("POST /desk/sign-in 303", "anybody"),
        ("POST /desk/sign-out 403", "desk"),
    ]


def test_what_an_app_raises_is_logged_under_the_request_s_id() -> None:
    """As a server does it: it logs what came out of the app, in the same task."""

    async def broken(scope: Scope, receive: Receive, send: Send) -> None:
        del scope, receive, send
        raise RuntimeError("a defect")

    async def serve() -> dict[str, str]:
        scope = {"type": "http", "method": "GET", "headers": [(b"x-request-id", b"this-request")]}
        try:
            await RequestLog(broken, Metrics("1"))(scope, None, None)  # type: ignore[arg-type]
        except RuntimeError:
            line = JsonLines().format(record("it failed", exc_info=sys.exc_info()))
            return dict(json.loads(line))
        raise AssertionError("it did not come out")

    told = asyncio.run(serve())
    assert told["request_id"] == "this-request"
    assert told["trouble"].endswith("RuntimeError: a defect")


def record(message: str, **more: object) -> logging.LogRecord:
    made = logging.LogRecord("loopstart.requests", logging.INFO, "x", 1, message, (), None)
    vars(made).update(more)
    return made


def test_a_line_of_json_holds_the_id_and_the_figures() -> None:
    set_before = request_id.set("abcdefgh")
    try:
        line = JsonLines().format(record("two\nlines “”", told={"status": 200, "ms": 1.5}))
        plain = Plain("%(message)s").format(record("it failed"))
    finally:
        request_id.reset(set_before)
    assert "\n" not in line
    told = json.loads(line)
    assert told.pop("time").endswith("Z")
    assert told == {
        "level": "info",
        "from": "loopstart.requests",
        "message": "two\nlines “”",
        "request_id": "abcdefgh",
        "status": 200,
        "ms": 1.5,
    }
    assert plain == "it failed (request abcdefgh)"


def test_ready_and_healthy(either_service: Service) -> None:
    assert done(either_service.viewer.get("/ready")) == {"ready": True}
    assert done(either_service.viewer.get("/health"))["status"] == "ready"


def test_a_database_that_is_not_set_up_is_not_ready(empty_settings: Settings) -> None:
    with running(empty_settings, Clock()) as service:
        assert done(service.viewer.get("/health"))["status"] == "not set up"
        assert_problem(service.viewer.get("/ready"), 503, "is not set up for this version")


def test_a_database_that_is_away_is_not_ready_but_the_service_lives() -> None:
    settings = Settings(database_url="postgresql://somebody@127.0.0.1:1/nothing", database_wait=2)
    with running(settings, Clock()) as service:
        assert done(service.viewer.get("/health"))["status"] == "no database"
        assert_problem(service.viewer.get("/ready"), 503, "the database does not answer")


def test_a_broken_file_is_not_ready_but_the_service_lives(tmp_path: Path) -> None:
    (tmp_path / "loopstart.sqlite3").write_text("no database at all, " * 20, "utf-8")
    with running(Settings(data_folder=tmp_path), Clock()) as service:
        assert done(service.viewer.get("/health"))["status"] == "no database"
        assert_problem(service.viewer.get("/ready"), 503, "cannot be read")


def test_the_figures_are_the_hosts_alone(service: Service) -> None:
    assert_problem(service.viewer.get("/metrics"), 401)
    assert_problem(service.collector().get("/metrics"), 403)
